## Der Vorrat, und was zu besorgen ist.

larder-title = Der Vorrat
larder-empty = Noch kein Futter notiert. Notiere, was im Haus ist, dann wird es beim Eintragen einer Fütterung zuerst angeboten.
larder-used = Aufgebraucht
larder-left-now = Wie viel noch da ist

larder-by-logs = noch etwa { $left } von { $whole }, nach den eingetragenen Fütterungen
larder-no-amount = Gib eine Zahl ein.
larder-used-up = Als aufgebraucht markiert
larder-use-by = verbrauchen bis { $day }
larder-got = seit { $day }
larder-never = Nie anbieten.
larder-held = { $days ->
    [one] Gesperrt bis { $day }, noch { $days } Tag.
   *[other] Gesperrt bis { $day }, noch { $days } Tage.
  }
larder-over = Zu alt: Wirf es weg.
larder-left = { $days ->
    [0] Nimm es heute.
    [one] Noch { $days } Tag gut.
   *[other] Noch { $days } Tage gut.
  }
larder-add = Futter hinzufügen
larder-mix = Zuckerwasser mischen
larder-size = Größe
larder-size-open = Gemischt oder unbekannt
larder-tint = Lebensmittelfarbe darin
larder-no-tint = Keine
larder-tint-why = Um zu sehen, wer getrunken hat: blaue Lebensmittelfarbe ohne Karmin, so schwach, dass sie gerade zu sehen ist, eine Kolonie, ein Tag, mit ungefärbtem Zuckerwasser daneben. Gängige Praxis: Es wurde keine veröffentlichte Stärke, Verblasszeit oder Prüfung auf Sicherheit für Ameisen gefunden; Halter berichten von Toten durch eine rote Farbe.
larder-food = Futter
larder-origin = Woher es kommt
larder-name = Name
larder-use-by-field = Verbrauchen bis
larder-refused = Das kommt nicht in den Vorrat.
larder-go = Hinzufügen
larder-percent = Zucker
larder-of-weight = % Zucker nach Gewicht
larder-water = Wasser
larder-of-water = { $unit } Wasser

larder-recipe = Rühre { $sugar_g } g Zucker in warmes Wasser ({ VOLUME($water_ml) }): Das ergibt etwa { VOLUME($total_ml) }.
larder-cool = Lass es abkühlen, bis es sich am Handgelenk kalt anfühlt. An warmem Wasser kann man sich verbrühen: Halte es von Kindern fern.
larder-keeps = Im Kühlschrank etwa 7 Tage (gängige Praxis); wirf es weg, wenn es trüb ist.
larder-batch = In den Vorrat stellen

larder-batch-name = Zuckerwasser { $percent } %
larder-lots = Im Haus

larder-get-title = Was zu besorgen ist
larder-get-today = Besorge es heute.
larder-get-by = Bis { $day } besorgen
larder-get-spoils = Verdirbt zuerst

calculator-title = Rechner
