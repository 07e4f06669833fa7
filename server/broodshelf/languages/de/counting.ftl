counting-open = Auf dem Bild zählen
counting-again = Zählung noch einmal ansehen
counting-looking = Ameisen werden gesucht …
counting-range = Wahrscheinlich { $low } bis { $high }, mindestens { $least }
counting-crowded = Sie sitzen zu dicht, um alle zu sehen: mindestens { $least }, wahrscheinlich { $low } bis { $high }
counting-brood = Brut: { $count }
counting-plain = Wie deutlich eine Ameise sein muss
counting-tap = Ein Tipp setzt
counting-sets-worker = Ameisen
counting-sets-brood = Brut
counting-sets-frame = Rahmen
counting-sets-size = Größe
counting-hint-worker = Tippe auf eine Ameise ohne Punkt; tippe auf einen Punkt, um ihn wegzunehmen.
counting-hint-brood = Tippe auf Brut ohne Punkt; tippe auf einen Punkt, um ihn wegzunehmen.
counting-hint-frame = Zieh beide Ecken um das, was zählt.
counting-hint-size = Setz beide Enden auf etwas, dessen Länge bekannt ist.
counting-spans = Zwischen den Enden liegt
counting-spans-worker = Eine Arbeiterin
counting-spans-bore = Das Innere des Röhrchens
counting-spans-length = Eine Länge in mm
counting-length = Länge in mm
counting-corner = { $which ->
    [first] Ecke oben links
   *[other] Ecke unten rechts
  }
counting-end = { $which ->
    [first] Ein Ende
   *[other] Anderes Ende
  }
counting-picture = Bild mit { $count } Punkten. Bild auf und Bild ab gehen von Punkt zu Punkt, Pfeiltasten verschieben den gewählten, Entf nimmt ihn weg, Eingabe setzt einen.
counting-dot = Punkt { $at } von { $count }: { $what ->
    [brood] Brut
   *[worker] Arbeiterin
  }{ $sure ->
    [no] , nicht sicher
   *[yes] {""}
  }
counting-previous = Punkt davor
counting-next = Nächster Punkt
counting-take-away = Diesen Punkt wegnehmen
counting-nearer = Größer
counting-farther = Kleiner
counting-whole = Das ganze Bild
counting-part = Nur ein Teil des Nests ist zu sehen
counting-pale = Die Ameisen sind heller als ihr Untergrund
counting-keep = Diese Zählung behalten
counting-kept = Die Zählung ist gespeichert.
counting-failed = Dieses Bild ließ sich nicht untersuchen. Punkte lassen sich von Hand setzen.
counting-heic = Dieser Browser liest keine HEIC-Bilder; es wurde nichts gespeichert. Stell die Kamera auf JPEG oder sichere das Bild als JPEG und wähle es dann noch einmal.
counting-growth = Wachstum in Bildern
counting-film = Als Film teilen
counting-strip = Nebeneinander teilen
counting-making = Einen Moment …
counting-still = Dieses Telefon macht keine Filme; teile die Bilder nebeneinander.
counting-shown = Punkte zeigen
counting-few = Zähle auf zwei oder mehr Bildern, dann stehen sie hier nebeneinander.
