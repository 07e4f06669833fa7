## O passado de uma anotação.

history-offline = O histórico fica no servidor, por isso precisa de conexão.
history-again = Tentar de novo
history-unsent = Ainda por enviar. O histórico começa com a próxima conexão.
history-somebody = Alguém

history-made = { $who } anotou
history-changed = { $who } mudou
history-out = { $who } apagou
history-back = { $who } recuperou

history-was = antes: { $value }
history-not-stood = { $field }: “{ $value }” não valeu: houve uma mudança posterior em outro telefone.
history-bring = Recuperar “{ $value }”
history-clear = Deixar vazio de novo
history-brought = Recuperado

history-gone-title = O que saiu
history-gone-about = O que foi apagado ou anulado por último. Tudo pode ser recuperado, com o que tinha dentro.
history-gone-none = Nada foi apagado.
history-gone-take-back = Recuperar
history-gone-back = De volta: { $what }

history-gone-by = { $who }, { $when }
