## Plan kolonii i własny rytm hodowcy.

plan-own = Twój własny odstęp
plan-set = Ustaw własny odstęp
plan-every = { $days ->
    [one] Twoje ustawienie: codziennie.
    [few] Twoje ustawienie: co { $days } dni.
    [many] Twoje ustawienie: co { $days } dni.
   *[other] Twoje ustawienie: co { $days } dnia.
  }
plan-keep = Zostaw ten odstęp
plan-clear = Niech decyduje plan
plan-days = { $count ->
    [one] dzień
    [few] dni
    [many] dni
   *[other] dnia
  }
plan-spread = { $high ->
    [one] Pewnie za { $low } do { $high } dnia.
    [few] Pewnie za { $low } do { $high } dni.
    [many] Pewnie za { $low } do { $high } dni.
   *[other] Pewnie za { $low } do { $high } dnia.
  }
plan-kept = Twój odstęp jest ustawiony
plan-cleared = Znów decyduje plan

plan-rhythm-open = Dni, godzina albo przerwa
plan-rhythm-title = { $need }: dni i godzina
plan-rhythm-days = W te dni
plan-rhythm-hour = O tej godzinie
plan-rhythm-until = Przerwa do
plan-rhythm-daily = Codziennie
plan-rhythm-at = { $days }, { $hour }
plan-rhythm-paused = Przerwa do { $day }.
plan-rhythm-urgent = Bez wyboru decyduje plan. O tym, co pilne, jak przeciek, usłyszysz mimo to.
