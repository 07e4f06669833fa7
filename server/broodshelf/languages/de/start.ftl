## Die Wörter des ersten Starts.

start-welcome = Jede Kolonie gefüttert, getränkt und angesehen.
start-what = Broodshelf führt die Runde an deinem Ameisenregal: was fällig ist, wie viel und warum. Es geht auch ohne Netz.
start-have-code = Ich habe den Code des Servers
start-join-one = Zu einem Regal dazukommen
start-have-pass = Ich habe einen Pass bekommen
start-back = Zurück
start-claim = Dieses Regal übernehmen
start-code = Code
start-code-hint = aus einer Einladung oder vom Server
start-your-name = Dein Name
start-more = Name des Regals und Zeitzone
start-shelf-name = Name des Regals
start-our-shelf = Unser Regal
start-zone = Zeitzone
start-claim-it = Übernehmen
start-known = Willkommen zurück, { $name }
start-come-in = Hereinkommen
start-join = Zu einem Regal dazukommen
start-join-how = Öffne auf einem angemeldeten Handy „Haus“ und gib diesen Code ein, oder scanne ihn dort.
start-waiting = Wartet auf einen Halter …
start-pass = Pass öffnen
start-pass-hint = vom Halter
start-open-pass = Pass öffnen
start-language = Sprache

start-phone-name = { $system }: Handy oder Browser
start-phone-unnamed = Handy oder Browser
start-handed = Dir wurde ein Regal übergeben
start-handed-what = Mit diesem Handy kannst du ein paar Tage nach einigen Kolonien sehen. Du brauchst kein Konto.
start-only-a-look = { $count ->
    [one] Du bist als Halter angemeldet, das ist also nur ein Blick: Der Pass gilt für { $count } Kolonie ({ $from } bis { $to }).
   *[other] Du bist als Halter angemeldet, das ist also nur ein Blick: Der Pass gilt für { $count } Kolonien ({ $from } bis { $to }).
  }

## Nach der ersten Kolonie: ihr Plan, und der Startbildschirm.

welcome-title = { $name } steht im Regal
welcome-plan = Der Plan
welcome-wait = Der Plan kommt mit der nächsten Verbindung.
welcome-nothing = Nichts ist fällig. Lass ihnen ihre Ruhe.
welcome-install = Leg die App auf den Startbildschirm
welcome-why-install = Dann öffnet sie sich wie jede App, geht am Regal auch ohne Netz, und deine Einträge sind sicher vor Browsern, die aufräumen.
welcome-installed = Sie liegt schon auf diesem Startbildschirm.
welcome-go = Zur Runde
welcome-again = Noch eine Kolonie
welcome-ios-1 = Tippe in Safari auf Teilen (das Quadrat mit dem Pfeil).
welcome-ios-2 = Wähle „Zum Home-Bildschirm“, dann „Hinzufügen“.
welcome-ios-3 = Öffne Broodshelf von dort. Die App hat dort ein eigenes Gedächtnis: Übernimm das Regal oder komm dazu, oder lass sie von Safari aus herein, unter Haus, „Neues Handy hereinlassen“.
welcome-android-1 = Öffne das Menü des Browsers (drei Punkte).
welcome-android-2 = Wähle „App installieren“ oder „Zum Startbildschirm hinzufügen“.
welcome-android-3 = Öffne Broodshelf von dort.
welcome-desktop-1 = Chrome oder Edge: der Installieren-Knopf am Ende der Adresszeile.
welcome-desktop-2 = Safari auf einem Mac: Ablage, dann „Zum Dock hinzufügen“.
welcome-desktop-3 = Firefox auf einem Rechner: Ein Lesezeichen reicht.
welcome-now = Jetzt installieren
