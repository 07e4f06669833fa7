## A ronda: o que é preciso e quando, e o que se faz.

round-due-never = não é preciso
round-due-now = para agora
round-due-since = { $days ->
    [one] pendente há { $days } dia
   *[other] pendente há { $days } dias
  }
round-due-hours = { $hours ->
    [one] em { $hours } hora
   *[other] em { $hours } horas
  }
round-due-days = { $days ->
    [one] em { $days } dia
   *[other] em { $days } dias
  }

round-title = A ronda
round-now = Agora
round-today = Hoje mais tarde
round-next = Próximos dias
round-done = Feito
round-quiet = Agora não há nada a fazer.
round-next-at = Nada até { $day }
round-calm = Cada tubo tem o bastante. Deixe em sossego.
round-as-suggested = Feito assim
round-done-short = Feito
round-offered = Ninho novo oferecido
round-not-moved = Ainda não mudaram
round-moved = Já mudaram
round-other = De outra forma
round-count = Contar
round-change = Mudar a colônia
round-later = Mais tarde
round-resolved = Está resolvido
round-urgent = urgente
round-why = Por quê
round-all = { $count ->
    [one] Feito assim: { $colony }
   *[other] As { $count } feitas assim
  }
round-by = por { $who }
round-undo = Desfazer
round-empty-shelf = A estante está vazia. Adicione a primeira colônia.
round-joining = A sua estante vem a caminho deste telefone.
round-joined = { $count ->
    [0] As primeiras entradas já vêm.
    [one] { $count } entrada até agora
   *[other] { $count } entradas até agora
  }
round-progress = { $part } de { $whole } feitas
round-finished = A ronda está feita.
round-many = Várias de uma vez
round-add = Adicionar uma colônia

## A estante e a sua lista de colônias.

shelf-title = A estante
shelf-search = Procurar uma colônia
shelf-none = Nenhuma colônia tem isto no nome ou na espécie.
shelf-labels = Etiquetas de tubos
shelf-scan = Ler etiqueta
shelf-species-unknown = Espécie não indicada
shelf-no-plan = O plano vem com a próxima conexão.
shelf-next = { $need }: { $due }
shelf-level = { $need }: { $level }

## What was put off or skipped, and why.

later-was-skipped = { $need }: saltado desta vez ({ $why })
later-was-put-off = { $need }: adiado
later-why-still-food = Ainda há comida
later-why-leave-quiet = Deixar em paz
later-why-nothing-in-the-house = Não há nada em casa
later-why-other = Outro motivo
