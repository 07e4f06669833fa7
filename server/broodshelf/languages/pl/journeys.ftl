## Before the keeper goes away.

holiday-title = Przed wyjazdem
holiday-about = Dwie daty mówią, które kolonie nie potrzebują nikogo i co uzupełnić ostatniego dnia.
holiday-leave = Wyjazd
holiday-back = Powrót
holiday-go = Spójrz naprzód
holiday-none = Żadna kolonia nie ma jeszcze planu.
holiday-verdict-nobody = Nie potrzebuje nikogo.
holiday-verdict-nobody-after-top-up = Po uzupełnieniu nie potrzebuje nikogo.
holiday-visit = { $days ->
    [one] Potrzebuje wizyty codziennie.
    [few] Potrzebuje wizyty co { $days } dni.
    [many] Potrzebuje wizyty co { $days } dni.
   *[other] Potrzebuje wizyty co { $days } dnia.
  }
holiday-top-up = W twoim ostatnim dniu:
holiday-full = uzupełnij do pełna
holiday-travel = Gdy kolonia jedzie z tobą
holiday-pass = Utwórz przepustkę na wizyty
