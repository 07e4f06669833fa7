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

## Sensoren eines Platzes: wie sie heißen, wie es ihnen geht, und ihr Schlüssel.

sensor-title = Sensoren
sensor-about = Ein Sensor, der über das Netz sendet, meldet Wärme und Luftfeuchte von selbst, mit einem eigenen Schlüssel.
sensor-none = Kein Sensor hier.
sensor-add = Sensor hinzufügen
sensor-file = Dateien: einlesen, sichern
sensor-name = Name des Sensors
sensor-unit = Er misst in
sensor-way = Er sendet
sensor-here = hierher, mit einem Schlüssel
sensor-through = über { $broker }
sensor-topic = Topic
sensor-topic-hint = Eines, das zu { $topics } passt
sensor-temperature-path = Wo darin die Temperatur steht
sensor-humidity-path = Wo darin die Luftfeuchte steht
sensor-path-hint = Namen mit Punkten dazwischen; nichts, wenn die Nachricht selbst die Zahl ist
sensor-make = Schlüssel erstellen
sensor-listen = Zuhören
sensor-once = Sein Schlüssel, nur jetzt zu sehen. Kopiere ihn in den Sensor:
sensor-copy = Schlüssel kopieren
sensor-copied = Kopiert.
sensor-address = Er sendet an { $url }
sensor-end = Beenden
sensor-end-sure = Der Schlüssel öffnet dann nichts mehr; was gemessen wurde, bleibt.
sensor-keep = Behalten
sensor-never = Noch kam nichts von ihm
sensor-heard = Zuletzt gehört: { $when }
sensor-away = Meldet sich offline seit { $when }
sensor-broken = Misst Unsinn seit { $when }: Sieh nach Kabel und Strom
sensor-now = In der letzten Stunde: { $what }
sensor-offline = Sensoren sind zu sehen, wenn eine Verbindung da ist.
