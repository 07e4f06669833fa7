### O que só um e-mail diz.

mail-code-title = { $code } é o seu código
mail-code-body = Digite no app, e os avisos chegam também a este endereço. Vale uma hora. · Se ninguém na sua casa pediu, não faça nada: não vem mais e-mail.
mail-foot = Este e-mail vem porque este endereço foi confirmado em Casa; um criador pode retirar o endereço lá.
