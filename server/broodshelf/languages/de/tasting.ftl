## Verkostungen: was eine Kolonie mag.

tasting-title = Was sie mögen
tasting-about = Eine Verkostung findet heraus, welches Futter sie am liebsten mögen: Die Runde bietet eines nach dem anderen an, du sagst, was daraus wurde. Jede Woche ein neues Futter, nie während sie gründen oder sich eingewöhnen.

tasting-not-now = Nicht jetzt ({ $state }): Verschmähen würde nichts bedeuten.
tasting-kind = Art des Futters
tasting-foods = Futter, 2 bis 5
tasting-pick = Wähle 2 bis 5 Futter.
tasting-go = Verkostung starten
tasting-started = Die Verkostung läuft
tasting-none = Von dem, was sie fressen, gibt es keine zwei Futter zum Vergleichen.
tasting-since = Seit { $day }
tasting-told = Was sie bisher verrät
tasting-wait = Der Plan wählt das erste Futter mit der nächsten Verbindung.
tasting-not-offered = Noch nicht angeboten

tasting-next = Als Nächstes: { $food }, { $due }.

tasting-taken = Genommen bei etwa { $mean } %, { $low } bis { $high }
tasting-offers = { $count ->
    [one] { $count } Angebot
   *[other] { $count } Angebote
  }
tasting-offers-and-likes = { $count ->
    [one] { $others ->
        [one] { $count } Angebot und was { $others } ähnliche Kolonie nahm
       *[other] { $count } Angebot und was { $others } ähnliche Kolonien nahmen
      }
   *[other] { $others ->
        [one] { $count } Angebote und was { $others } ähnliche Kolonie nahm
       *[other] { $count } Angebote und was { $others } ähnliche Kolonien nahmen
      }
  }
tasting-best = mit { $percent } % Wahrscheinlichkeit der Liebling
tasting-range = Der Balken ist die Schätzung, die Linie ihre Spanne.
tasting-food = Futter
tasting-offered = Angebote
tasting-share = Genommen
tasting-spread = Spanne
tasting-favourite = Liebling
tasting-end = Verkostung beenden
tasting-ended = Die Verkostung ist beendet
tasting-part = Teil der Verkostung: { $name }
tasting-here = Das zählt für die laufende Verkostung.
tasting-earlier = Frühere Verkostungen
tasting-days = { $from } bis { $to }
tasting-tally = { $checked ->
    [one] { $food }: { $taken } von { $checked } Mal genommen
   *[other] { $food }: { $taken } von { $checked } Malen genommen
  }
tasting-unchecked = { $food }: nie nachgesehen
