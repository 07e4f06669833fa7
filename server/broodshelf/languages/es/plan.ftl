## El plan de una colonia y el ritmo propio del criador.

plan-own = Tu propio intervalo
plan-set = Fijar tu propio intervalo
plan-every = { $days ->
    [one] Lo fijaste en cada día.
   *[other] Lo fijaste en cada { $days } días.
  }
plan-keep = Quedarse con este intervalo
plan-clear = Que decida el plan

plan-days = { $count ->
    [one] día
   *[other] días
  }
plan-spread = { $high ->
    [one] Seguramente toca en { $low } a { $high } día.
   *[other] Seguramente toca en { $low } a { $high } días.
  }
plan-kept = Tu intervalo está fijado
plan-cleared = El plan vuelve a decidir

plan-rhythm-open = Días, hora o una pausa

plan-rhythm-title = { $need }: días y hora
plan-rhythm-days = En estos días
plan-rhythm-hour = A esta hora
plan-rhythm-until = Pausa hasta
plan-rhythm-daily = Cada día

plan-rhythm-at = { $days }, hora: { $hour }
plan-rhythm-paused = En pausa hasta { $day }
plan-rhythm-urgent = Si no eliges, decide el plan. Lo urgente, como una fuga, se avisa igualmente.
