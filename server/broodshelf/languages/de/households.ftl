### Was 'broodshelf household' ausgibt.

command-of-households = Haushalte dieses Servers: wer da ist, Einladungen, Mitnehmen, Löschen, Zurückspielen
command-household-list = wer da ist, wann sich zuletzt ein Handy gemeldet hat, wie viel jeder belegt
command-household-invite = Links machen, die einmal gelten, jeder für einen eigenen Haushalt
command-invite-count = wie viele
command-invite-days = wie viele Tage sie gelten
command-invite-sheet = ein Blatt zum Drucken schreiben, mit einem QR-Code für jede
command-invite-take-back = keine machen; die beenden, die noch niemand benutzt hat
command-household-export = alle Einträge und Bilder eines Haushalts in eine .zip-Datei oder einen Ordner schreiben
command-household-delete = einen Haushalt mit allem löschen, was er hat
command-household-restore = einen Haushalt aus einer Sicherung des ganzen Servers zurückspielen
command-household-id = seine Kennung, wie 'household list' sie zeigt
command-list-name = Name
command-list-id = Kennung
command-list-people = Leute
command-list-seen = zuletzt (UTC)
command-list-records = Einträge
command-list-pictures = Bilder
command-list-mib = MiB
command-list-share = Anteil
command-list-invitations = Einladungen: { $open } offen, { $used } benutzt, { $expired } abgelaufen.
command-invite-closed = BROODSHELF_SIGNUP ist closed, also würde keine Einladung etwas öffnen: setz es auf invited, für den Server und für diesen Befehl.
command-invite-range = { $name }: gib eine ganze Zahl von 1 bis { $most } an.
command-invite-done =
    { $n ->
        [one] Dieser Link öffnet
       *[other] Jeder dieser Links öffnet
    } einen Haushalt, einmal, innerhalb von { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }. Er wird nicht noch einmal gezeigt.
command-invite-sheet-done =
    { $n ->
        [one] { $n } Einladung steht
       *[other] { $n } Einladungen stehen
    } in { $path }. Öffne das Blatt im Browser und druck es; jede lässt jemanden herein, also behalt es für dich.
command-invite-taken-back =
    { $n ->
        [one] { $n } offene Einladung wurde
       *[other] { $n } offene Einladungen wurden
    } zurückgenommen.
sheet-title = Broodshelf: Einladungen
sheet-number = Einladung { $number }
sheet-how = Mit der Kamera des Handys abfotografieren: damit fängt ein eigenes Regal an, einmal.
sheet-until = Gilt bis einschließlich { $on }.
sheet-or-code = Oder { $server } öffnen und diesen Code eintippen:
signup-begin = Ein eigenes Regal anfangen
household-export-no-json = Bilder passen nicht in ein JSON-Dokument: nenn eine Datei, die auf .zip endet, oder einen neuen Ordner.
household-export-done = Geschrieben nach { $path }: { $n } Einträge, { $pictures } Bilder. Schlüssel und angemeldete Handys sind nicht dabei.
household-unknown = Hier gibt es keinen Haushalt { $id }; 'broodshelf household list' zeigt, welche es gibt.
household-delete-would = Das würde { $name } löschen: { $n } Einträge, { $pictures } Bilder, die Handys, Links und den Verlauf. Nimm vorher alles heraus ('household export'); mit --yes geschieht es.
household-delete-done = Gelöscht: { $n } Zeilen, die Bilder und was neben der Datenbank vermerkt war. Ältere Sicherungen haben den Haushalt noch; wer eine zurückspielt, bekommt ihn nicht wieder.
household-not-in-backup = { $path } hat den Haushalt { $id } nicht; darin sind { $households }.
household-restore-done = Zurückgespielt: { $n } Zeilen. Seine Handys schicken beim nächsten Verbinden, was der Sicherung fehlt; die anderen Haushalte sind, wie sie waren.
command-move = alles in eine andere Datenbank kopieren, von SQLite zu PostgreSQL oder zurück, bei angehaltenem Server
command-move-to = die andere Datenbank: sqlite:///PFAD oder postgresql://NUTZER@RECHNER/NAME
move-same = Das ist die Datenbank, die der Server schon benutzt.
move-foreign = Die andere Datenbank hat Haushalte, die diese nicht kennt ({ $n }, der erste: { $first }); nenn eine leere oder eine, die ein früherer Umzug zu füllen begann.
move-connected = Mit der Datenbank { $name } ist noch jemand verbunden: halt Server und Erinnerer an, dann zieh um.
move-differs = Die beiden unterscheiden sich in der Tabelle { $table }: hier { $here } Zeilen, dort { $there }. Hier wurde nichts geändert; fang den Umzug noch einmal an.
move-step = { $number } von { $of }: { $id }, { $n } Zeilen
move-there = { $number } von { $of }: { $id } ist schon dort, Zeile für Zeile
move-done = Umgezogen: { $n } Zeilen; jede Tabelle wurde verglichen und ist gleich. Setz { $setting } auf die andere Datenbank und starte den Server. Die hier bleibt, wie sie war.
