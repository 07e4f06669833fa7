## Wie es an einem Platz über die Zeit war, und die Dateien seiner Sensoren.

climate-which = Was gezeichnet wird
climate-span = Wie lange
climate-temperature = Temperatur
climate-humidity = Luftfeuchte

climate-span-of-days = Zwei Wochen
climate-span-of-weeks = Drei Monate
climate-span-of-year = Ein Jahr

climate-nothing = In dieser Zeit wurde hier nichts gemessen oder eingetragen, und nichts ist eingestellt.

climate-summary = Im Mittel { $mean }, { $low } bis { $high }.
climate-measured-all = Alles davon wurde gemessen oder abgelesen.
climate-measured = { $days ->
    [one] { $measured } von { $days } Tag gemessen oder abgelesen.
   *[other] { $measured } von { $days } Tagen gemessen oder abgelesen.
  }
climate-key = Die Fläche reicht vom kleinsten bis zum größten Wert eines Tages. Gestrichelt: angenommen, wie eingestellt.
climate-key-weeks = Die Fläche reicht vom kleinsten bis zum größten Wert einer Woche. Gestrichelt: angenommen, wie eingestellt.
climate-comfort = Der Streifen dahinter: was allen passt, die hier leben, { $low } bis { $high }.
climate-no-comfort = Keine Temperatur passt allen, die hier leben.

climate-degree-days = { $name }: { $sum } Gradtage über { $threshold } seit { $since }
climate-degree-days-assumed = { $name }: { $sum } Gradtage über { $threshold } seit { $since }; { $percent } % davon angenommen.
climate-day = Tag
climate-week = Woche ab
climate-mean = Mittel
climate-low = Kleinster
climate-high = Größter
climate-basis = Woher bekannt

climate-basis-measured = gemessen
climate-basis-typed = abgelesen
climate-basis-assumed = angenommen

climate-file = Eine Datei eines Sensors
climate-file-hint = eine Tabelle in CSV, die Überschriften in der ersten Zeile
climate-too-large = Diese Datei ist größer als 4 MB: Bring sie in Teilen, jeweils mit den Überschriften in der ersten Zeile.
climate-time-column = Spalte der Zeit
climate-temperature-column = Spalte der Temperatur
climate-humidity-column = Spalte der Luftfeuchte
climate-no-column = keine
climate-unit = Gemessen in
climate-dates = So stehen die Zeiten da

climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = Sekunden seit 1970

climate-zone = Zeiten gelten für

climate-zone-of-household = den Haushalt
climate-zone-of-utc = UTC

climate-look = Erst ansehen
climate-take = Übernehmen
climate-taken = { $hours ->
    [one] Übernommen: { $hours } Stunde. Die Tage sind in zehn Minuten gezeichnet.
   *[other] Übernommen: { $hours } Stunden. Die Tage sind in zehn Minuten gezeichnet.
  }
climate-found = { $rows ->
    [one] { $rows } Messung von { $from } bis { $until }
   *[other] { $rows } Messungen von { $from } bis { $until }
  }
climate-found-nothing = Keine Zeile ist lesbar.
climate-range = Von { $low } bis { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } Stunde, alles neu.
   *[other] { $hours } Stunden, alle neu.
  }
climate-new-hours = { $hours ->
    [one] { $hours } Stunde, davon neu: { $new }. Die anderen waren schon gemessen und bleiben, wie sie sind.
   *[other] { $hours } Stunden, davon neu: { $new }. Die anderen waren schon gemessen und bleiben, wie sie sind.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } Zeile ist nicht lesbar und wird ausgelassen:
   *[other] { $rows } Zeilen sind nicht lesbar und werden ausgelassen:
  }

climate-bad-line = Zeile { $line }: { $why }
climate-give-out = Alle Stunden als Datei sichern
