## Das Haus: Leute, Handys, Mail, und was an den Türen geschah.

house-title = Das Haus
house-look = Aussehen
house-language = Sprache
house-language-as-phone = Wie das Handy
house-good-to-know = Gut zu wissen

house-build = Build { $build }
house-advice = Broodshelf gibt allgemeine Ratschläge zur Haltung, keinen tierärztlichen und keinen ärztlichen Rat.
house-never = Lass nie Ameisen oder Futtertiere frei. Ob du eine Art halten und befördern darfst, regelt das Recht bei dir: Frag die Behörde.
house-hours = Namen und Zeiten
house-shelf-name = Name des Regals
house-zone = Zeitzone
house-first = Erste Pflegezeit
house-second = Zweite Pflegezeit
house-quiet-from = Ruhe von
house-quiet-to = Ruhe bis
house-backup-patience = Melden, wenn die letzte Sicherung älter ist als so viele Tage
house-backup-patience-hint = 0: nie. Wo nie eine gemacht wurde, wird nichts gemeldet.
house-save = Speichern
house-sign-out = Abmelden

house-on-this-phone = Auf diesem Handy
house-this-phone = dieses Handy
house-last-synced = Zuletzt abgeglichen: { $when }
house-not-synced = Noch nicht abgeglichen.
house-not-sent = Nicht gesendet: { $count }.
house-nothing-waits = Nichts wartet.
house-kept = Der Browser hat versprochen, die Daten zu behalten.
house-not-kept = Der Browser darf Daten von Apps löschen, die nicht benutzt werden; die Kopie auf dem Server ist die Sicherheit. Es hilft, die App auf den Startbildschirm zu legen.
house-sync-now = Jetzt abgleichen
house-export = Ungesendetes exportieren
house-left = Von { $who } auf diesem Handy, nicht gesendet: { $count }. Das geht von selbst, wenn sich { $who } hier wieder anmeldet.
house-leave = { $who } abmelden?
house-leave-unsent = { $count ->
    [one] { $count } Eintrag ist noch nicht gesendet und bleibt auf diesem Handy. Trotzdem abmelden?
   *[other] { $count } Einträge sind noch nicht gesendet und bleiben auf diesem Handy. Trotzdem abmelden?
  }

## Wie die App aussieht.

look-light = Licht
look-degrees = Temperaturen in
look-volumes = Mengen in
look-as-phone = Wie das Handy
look-day = Hell
look-dark = Dunkel
look-red = Schwaches Rot
look-red-why = Schwaches Rot ist zum Hineinsehen in ein dunkles Nest: Ameisen sehen tiefes Rot kaum (gängige Praxis).
look-all-parts = Alle Teile der App ansehen
