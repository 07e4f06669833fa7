## O plano de uma colônia e o ritmo próprio do criador.

plan-own = O seu próprio intervalo
plan-set = Definir o seu intervalo
plan-every = { $days ->
    [one] Você definiu: a cada { $days } dia.
   *[other] Você definiu: a cada { $days } dias.
  }
plan-keep = Ficar com este intervalo
plan-clear = Deixar o plano decidir

plan-days = { $count ->
    [one] dia
   *[other] dias
  }
plan-spread = { $high ->
    [one] Deve ser em { $low } a { $high } dia.
   *[other] Deve ser em { $low } a { $high } dias.
  }
plan-kept = O seu intervalo está definido
plan-cleared = O plano volta a decidir

plan-rhythm-open = Dias, hora ou uma pausa

plan-rhythm-title = { $need }: dias e hora
plan-rhythm-days = Nestes dias
plan-rhythm-hour = A esta hora
plan-rhythm-until = Pausa até
plan-rhythm-daily = Todos os dias

plan-rhythm-at = { $days }, hora: { $hour }
plan-rhythm-paused = Em pausa até { $day }
plan-rhythm-urgent = Sem escolha, o plano decide. O que é urgente, como um vazamento, é avisado mesmo assim.
