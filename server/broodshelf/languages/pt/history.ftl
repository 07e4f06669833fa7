## O passado de uma anotação.

history-title = Histórico
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
history-gone-link = O que saiu

history-gone-by = { $who }, { $when }

history-register-household = A casa
history-register-person = Pessoa
history-register-colony = Colônia
history-register-vessel = Recipiente
history-register-place = Lugar
history-register-lot = Comida na despensa
history-register-rule = Ritmo próprio
history-register-tasting = Degustação
history-register-pass = Passe

history-field-resting-since = Em repouso desde
history-field-condition-until = Até
history-field-came-from = Veio de
history-field-went-to = Foi para
history-field-died-of = Morreu de
history-field-host-species-code = Hospedeira
history-field-name = Nome
history-field-stage = Fase
history-field-condition = Estado
history-field-number = Número
history-field-species-code = Espécie
history-field-species-name = Espécie
history-field-queens = Rainhas
history-field-gone = Apagado
history-field-worker-length-mm = Comprimento de uma operária em mm
history-field-guild = O que come
history-field-founding-mode = Como a rainha funda
history-field-stings = Ferroa
history-field-vessel-id = Recipiente
history-field-place-id = Lugar
history-field-interval-days = Os seus próprios intervalos
history-field-amount = Quantidade
history-field-unit = Unidade
history-field-text = Texto
history-field-zone = Fuso horário
history-field-care-hours = Horas de cuidado
history-field-remark = Observação
history-field-happened-at = Quando
history-field-need = Para quê
history-field-food-code = Comida
history-field-lot-id = Lote
history-field-origin = De onde vem
history-field-size-class = Tamanho
history-field-feeding-id = Refeição
history-field-outcome = Em que deu
history-field-leftovers-removed = Restos retirados
history-field-level = Nível do comedouro
history-field-colour-seen = Onde se vê a cor
history-field-tint = Corante
history-field-action = O que foi feito
history-field-reading = Nível
history-field-level-mm = Nível em mm
history-field-workers = Operárias
history-field-workers-coarse = Operárias, mais ou menos
history-field-fault = O que está errado
history-field-resolved-at = Resolvido
history-field-colony-ids = Colônias
history-field-food-codes = Alimentos
history-field-started-on = Primeiro dia
history-field-ended-on = Terminado
history-field-use-by = Usar até
history-field-got-on = Desde
history-field-tasting-id = Degustação
history-field-despite = Anotado apesar de
history-field-until = Adiado até
history-field-why = Motivo
history-field-day-temp-c = De dia
history-field-night-temp-c = De noite
history-field-temperature-c = Temperatura
history-field-humidity-pct = Umidade, %
history-field-place-type = O que é
history-field-vessel-code = Recipiente
history-field-has-outworld = Arena
history-field-founded-on = Fundada
history-field-acquired-on = Com você desde
history-field-finished-on = Gasto
history-field-starts-on = Primeiro dia
history-field-ends-on = Último dia

history-value-empty = vazio
history-value-yes = sim
history-value-no = não
history-value-elsewhere = não está neste telefone

history-value-every = { $days ->
    [one] { $need }: a cada { $days } dia
   *[other] { $need }: a cada { $days } dias
  }
history-value-read = Lido
