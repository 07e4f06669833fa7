### Erinnerungen: was ein Handy auf dem Sperrbildschirm zeigt, und die Zeilen einer Mail. Kurz.

nudge-one-food = { $need } für { $colony }
nudge-one-todo = { $todo }: { $colony }
nudge-same-need = { $need } für { $n } Kolonien
nudge-same-todo = { $todo }: { $n } Kolonien
nudge-one-colony = { $colony }: { $needs }
nudge-colonies = { $n } Kolonien: { $needs }
nudge-need-for = { $need } für { $n }
nudge-line = { $colony }: { $what }
nudge-more = und { $n } mehr

## Die Meldung in ihrer kürzesten Form, und der Test.

nudge-short-title = Die Runde ist fällig
nudge-short-body = Öffne die App und sieh, was deine Kolonien brauchen.
nudge-test-title = Erinnerungen kommen auf diesem Handy an
nudge-test-body = Das ist nur ein Test. Deshalb ist nichts fällig.

## Was andere Halter über das Haus erfahren.

nudge-new-phone-title = Ein neues Handy wurde hereingelassen
nudge-new-phone-body = { $phone }, für { $person }. War das niemand von euch, meldet es unter Haus ab.
nudge-link-made-title = Neuer Link: { $pass }
nudge-link-made-body = Erstellt von { $person }. Wer den Link hat, kann den Pass öffnen; ein neuer Link beendet ihn.
nudge-pass-opened-title = { $pass }: Pass geöffnet
nudge-pass-opened-body = Auf: { $phone }. Sollte das nicht sein, nimm den Pass zurück.
nudge-sensor-silent-title = { $sensor } meldet sich nicht mehr
nudge-sensor-silent-body =
    Seit { $hours ->
        [one] { $hours } Stunde
       *[other] { $hours } Stunden
    } kam nichts mehr von ihm ({ $place }). Sieh nach dem Strom und nach dem Weg zum Server. Bis er sich wieder meldet, gilt in den Plänen, was du abliest oder einstellst.
nudge-sensor-broken-title = { $sensor } misst Unsinn
nudge-sensor-broken-body = Was er sendet, kann nicht sein ({ $place }). Sieh nach Kabel und Strom. Was er sendet, wird weggelassen, bis es wieder Sinn hat.
