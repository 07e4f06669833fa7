## Die Runde: was wann fällig ist, und was man damit macht.

round-due-never = nicht fällig
round-due-now = jetzt fällig
round-due-since = { $days ->
    [one] seit { $days } Tag fällig
   *[other] seit { $days } Tagen fällig
  }
round-due-hours = { $hours ->
    [one] in { $hours } Stunde fällig
   *[other] in { $hours } Stunden fällig
  }
round-due-days = { $days ->
    [one] in { $days } Tag fällig
   *[other] in { $days } Tagen fällig
  }

round-title = Die Runde
round-now = Jetzt
round-today = Heute noch
round-next = Nächste Tage
round-done = Erledigt
round-quiet = Jetzt ist nichts fällig.
round-next-at = Nichts bis { $day }
round-calm = Jedes Glas ist voll genug. Lass ihnen ihre Ruhe.
round-as-suggested = So erledigt
round-done-short = Erledigt
round-offered = Neues Nest angeboten
round-not-moved = Noch nicht umgezogen
round-moved = Sie sind umgezogen
round-other = Anders
round-count = Zählen
round-change = Kolonie ändern
round-later = Später
round-resolved = Behoben
round-urgent = dringend
round-why = Warum
round-all = { $count ->
    [one] So erledigt: { $colony }
   *[other] Alle { $count } so erledigt
  }
round-by = von { $who }
round-undo = Rückgängig
round-empty-shelf = Das Regal ist leer. Füge die erste Kolonie hinzu.
round-joining = Dein Regal ist unterwegs zu diesem Handy.
round-joined = { $count ->
    [0] Die ersten Einträge kommen gleich.
    [one] { $count } Eintrag bisher
   *[other] { $count } Einträge bisher
  }
round-progress = { $part } von { $whole } erledigt
round-finished = Die Runde ist fertig.
round-many = Mehrere auf einmal
round-add = Kolonie hinzufügen

## Das Regal und seine Liste von Kolonien.

shelf-title = Das Regal
shelf-search = Kolonie suchen
shelf-none = Keine Kolonie hat das im Namen oder in der Art.
shelf-labels = Etiketten
shelf-scan = Etikett scannen
shelf-species-unknown = Art nicht angegeben
shelf-no-plan = Der Plan kommt mit der nächsten Verbindung.
shelf-next = { $need } { $due }
shelf-level = { $need } { $level }

## What was put off or skipped, and why.

later-was-skipped = { $need }: diesmal ausgelassen ({ $why })
later-was-put-off = { $need }: verschoben
later-why-still-food = Es ist noch Futter da
later-why-leave-quiet = Sie sollen Ruhe haben
later-why-nothing-in-the-house = Nichts im Haus
later-why-other = Anderer Grund
