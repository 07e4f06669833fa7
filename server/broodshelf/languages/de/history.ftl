## Die Vergangenheit eines Eintrags.

history-title = Verlauf
history-offline = Der Verlauf liegt auf dem Server, darum braucht er eine Verbindung.
history-again = Noch einmal versuchen
history-unsent = Noch nicht gesendet. Der Verlauf beginnt mit der nächsten Verbindung.
history-somebody = Jemand

history-made = { $who } hat es eingetragen
history-changed = { $who } hat es geändert
history-out = { $who } hat es gelöscht
history-back = { $who } hat es zurückgeholt

history-was = vorher: { $value }
history-not-stood = { $field }: „{ $value }“ galt nicht: Eine Änderung auf einem anderen Handy war später.
history-bring = „{ $value }“ zurückholen
history-clear = Wieder leeren
history-brought = Zurückgeholt

history-gone-title = Was weg ist
history-gone-about = Was zuletzt gelöscht oder ungültig gemacht wurde. Alles davon lässt sich zurückholen, mit allem, was darin war.
history-gone-none = Nichts wurde gelöscht.
history-gone-take-back = Zurückholen
history-gone-back = Wieder da: { $what }
history-gone-link = Was weg ist

history-gone-by = { $who }, { $when }

history-register-household = Das Haus
history-register-person = Person
history-register-colony = Kolonie
history-register-vessel = Gefäß
history-register-place = Platz
history-register-lot = Futter im Vorrat
history-register-rule = Eigener Rhythmus
history-register-tasting = Verkostung
history-register-pass = Pass

history-field-resting-since = In Ruhezeit seit
history-field-condition-until = Bis
history-field-came-from = Kam von
history-field-went-to = Ging an
history-field-died-of = Gestorben an
history-field-host-species-code = Wirt
history-field-name = Name
history-field-stage = Stadium
history-field-condition = Zustand
history-field-number = Nummer
history-field-species-code = Art
history-field-species-name = Art
history-field-queens = Königinnen
history-field-gone = Gelöscht
history-field-worker-length-mm = Länge einer Arbeiterin in mm
history-field-guild = Was sie frisst
history-field-founding-mode = Wie ihre Königin gründet
history-field-stings = Sticht
history-field-vessel-id = Gefäß
history-field-place-id = Platz
history-field-interval-days = Deine eigenen Abstände
history-field-amount = Menge
history-field-unit = Einheit
history-field-text = Text
history-field-zone = Zeitzone
history-field-care-hours = Pflegezeiten
history-field-remark = Bemerkung
history-field-happened-at = Wann
history-field-need = Wofür
history-field-food-code = Futter
history-field-lot-id = Packung
history-field-origin = Woher es kommt
history-field-size-class = Größe
history-field-feeding-id = Fütterung
history-field-outcome = Was daraus wurde
history-field-leftovers-removed = Futterreste entfernt
history-field-level = Stand im Futterspender
history-field-colour-seen = Wo die Farbe zu sehen ist
history-field-tint = Lebensmittelfarbe
history-field-action = Was getan wurde
history-field-reading = Stand
history-field-level-mm = Stand in mm
history-field-workers = Arbeiterinnen
history-field-workers-coarse = Arbeiterinnen, grob
history-field-fault = Was nicht stimmt
history-field-resolved-at = Behoben
history-field-colony-ids = Kolonien
history-field-food-codes = Futtersorten
history-field-started-on = Erster Tag
history-field-ended-on = Beendet
history-field-use-by = Verbrauchen bis
history-field-got-on = Seit
history-field-tasting-id = Verkostung
history-field-despite = Eingetragen trotz
history-field-until = Verschoben bis
history-field-why = Grund
history-field-day-temp-c = Am Tag
history-field-night-temp-c = In der Nacht
history-field-temperature-c = Temperatur
history-field-humidity-pct = Luftfeuchte, %
history-field-place-type = Was es ist
history-field-vessel-code = Gefäß
history-field-has-outworld = Arena
history-field-founded-on = Gegründet
history-field-acquired-on = Bei dir seit
history-field-finished-on = Verbraucht
history-field-starts-on = Erster Tag
history-field-ends-on = Letzter Tag

history-value-empty = leer
history-value-yes = ja
history-value-no = nein
history-value-elsewhere = nicht auf diesem Handy

history-value-every = { $days ->
    [one] { $need }: jeden Tag
   *[other] { $need }: alle { $days } Tage
  }
history-value-read = Gelesen
