## Der Rahmen um jede Ansicht.

frame-name = Broodshelf

frame-opening = Das Regal wird geöffnet. Bleibt dieser Text stehen, sind in diesem Browser JavaScript oder Module abgeschaltet, oder er ist zu alt: Broodshelf braucht Chrome 91, Safari 16.4 oder Firefox 147 oder neuer. Was du auf diesem Handy eingetragen hast, bleibt darauf.
frame-description = Pflege für ein Regal voller Ameisenkolonien, am Regal auch ohne Netz.
frame-close = Schließen
frame-loading = Einen Moment …
frame-missing = Dieser Teil der App ließ sich nicht laden. Lade sie neu; nichts, was du eingetragen hast, ist verloren.
frame-screens = Ansichten

frame-nav-round = Runde
frame-nav-shelf = Regal
frame-nav-larder = Vorrat
frame-nav-handover = Übergabe
frame-nav-settings = Haus

frame-banner-unsent = Nicht gesendete Einträge
frame-banner-sign-in = Wieder anmelden
frame-banner-update = Eine neue Version ist bereit.
frame-banner-update-waits = Die neue Version kommt, wenn du gespeichert oder verlassen hast, was du hier schreibst.
frame-banner-use-it = Jetzt nehmen
frame-banner-emptied = Der Browser hatte seinen Speicher auf diesem Handy geleert, darum wurde das Regal neu vom Server geholt. Was hier vorher eingetragen und nicht gesendet war, ist verloren: Bitte sieh das Tagebuch durch und trag nach, was fehlt.
frame-banner-understood = Gelesen
frame-banner-signed-out = Dieses Handy ist abgemeldet. Was es nicht gesendet hat, bleibt hier.

frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Minute vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Minuten vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
    [hours] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Stunde vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Stunden vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
   *[days] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Tag vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Tage vor. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Minute nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Minuten nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
    [hours] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Stunde nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Stunden nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
   *[days] { $count ->
        [one] Die Uhr dieses Handys geht { $count } Tag nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
       *[other] Die Uhr dieses Handys geht { $count } Tage nach. Was fällig ist und wann du etwas einträgst, richtet sich nach der Uhr des Servers.
      }
  }

frame-banner-ended-pass-revoked = Der Halter hat diesen Pass zurückgenommen. Was dieses Handy nicht gesendet hat, bleibt hier zum Exportieren.
frame-banner-ended-pass-ended = Dieser Pass ist zu Ende. Danke! Was dieses Handy nicht gesendet hat, bleibt hier zum Exportieren.
frame-banner-ended-device-revoked = Ein Halter hat dieses Handy abgemeldet. Was es nicht gesendet hat, bleibt hier zum Exportieren.
frame-banner-ended-session-old = Die Anmeldung dieses Handys ist abgelaufen. Was es nicht gesendet hat, bleibt hier.

## Die Teile, aus denen viele Ansichten bestehen.

part-table = Die Zahlen in einer Tabelle
part-needs-server = Das braucht den Server, und gerade ist keine Verbindung da.
part-again = Noch einmal versuchen

part-labelled = { $label }: { $value }
part-labelled-twice = { $label }: { $first }, { $second }
part-percent = { $percent } %

part-less = { $label }: weniger
part-more = { $label }: mehr

## Wo ein Eintrag steht.

saving-saved = Auf diesem Handy gespeichert
saving-not-saved = Nicht gespeichert: Dieses Handy konnte es nicht ablegen. Mach etwas Platz frei oder schließ andere Tabs, dann versuch es noch einmal.
saving-no-connection = Keine Verbindung zum Server. Was du einträgst, bleibt auf diesem Handy.
saving-asks-sign-in = Etwas zwischen diesem Handy und dem Server verlangt eine Anmeldung.
saving-failed = Der Server konnte das nicht.
saving-not-signed-in = Dieses Handy ist nicht angemeldet.

saving-unsent-title = Nicht gesendete Einträge von Broodshelf
saving-taken-back = Zurückgenommen

saving-state-synced = Abgeglichen
saving-state-saved = Auf diesem Handy
saving-state-attention = Braucht dich

saving-waiting = { $count } auf diesem Handy gespeichert
saving-attention = { $count ->
    [one] { $count } Eintrag braucht dich
   *[other] { $count } Einträge brauchen dich
  }
saving-synced = Alles abgeglichen
saving-joining = Dein Regal wird geholt
saving-offline = Keine Verbindung
saving-syncing = Gleicht ab …

saving-told-database-damaged = Beim täglichen Prüfen fand der Server seine Datenbank beschädigt. Sag es dem, der den Server betreibt: Eine Sicherung muss zurückgespielt werden.
saving-told-backup-old = Die letzte Sicherung des Servers ist alt ({ $day }). Sag es dem, der den Server betreibt, oder stell unter Haus ein, wie alt sie sein darf.

saving-problem-disk-full = Die Platte des Servers ist voll. Was du einträgst, bleibt auf diesem Handy; sag es dem, der den Server betreibt.
saving-problem-database-locked = Der Server ist gerade aufgehalten. Was du einträgst, bleibt auf diesem Handy und wird später gesendet.
saving-problem-database-away = Der Server erreicht seine Daten nicht. Was du einträgst, bleibt auf diesem Handy und wird später gesendet.
saving-problem-database-read-only = Der Server kann nicht schreiben. Was du einträgst, bleibt auf diesem Handy; sag es dem, der den Server betreibt.
saving-problem-database-damaged = Der Server hat einen Teil seiner Daten verloren. Was du einträgst, bleibt auf diesem Handy; sag es dem, der den Server betreibt.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = So erledigt
phone-nudges-in-an-hour = In einer Stunde
phone-nudges-something = Im Regal ist etwas fällig.
