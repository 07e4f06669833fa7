### 'broodshelf doctor': was angesehen wurde, und wie es steht. Gelesen als „was: was gefunden wurde“.

## Wie es steht: ein Zeichen vor jeder Zeile.

doctor-good = gut
doctor-look = prüfen
doctor-bad = FEHLER

## Was angesehen wurde.

doctor-about-data-folder = Datenordner
doctor-about-disk = Platte
doctor-about-revoked = zurückgenommene Handys und Pässe
doctor-about-marks = Merkzeichen
doctor-about-set-aside = beiseitegelegt
doctor-about-database = Datenbank
doctor-about-database-role = Rolle in der Datenbank
doctor-about-households = Haushalte
doctor-about-history = Verlauf
doctor-about-push-key = Push-Schlüssel
doctor-about-nudger = Erinnerer
doctor-about-mail = Mail
doctor-about-proxy = Proxy
doctor-about-public-address = öffentliche Adresse
doctor-about-certificate = Zertifikat
doctor-about-server = Server
doctor-about-clock = Uhr

## Was gefunden wurde.

doctor-folder-missing = { $path } ist noch nicht da; der erste Start legt ihn an
doctor-folder-good = { $path } ist beschreibbar
doctor-folder-locked = { $path } ist für diesen Benutzer nicht beschreibbar; ändere den Eigentümer
doctor-disk = { $mib } MiB sind frei; eine volle Platte weist Einträge ab
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } Zeile
       *[other] { $n } Zeilen
    } in { $path } nicht lesbar; der nächste Start behält eine Kopie und alles Lesbare. Bevor du eine ältere Sicherung zurückspielst, leg die Datei aus der neuesten zurück
doctor-mark-unreadable = { $path } ist nicht lesbar; beim nächsten Start bekommen die Handys alles neu
doctor-was-set-aside = { $path } war beschädigt und liegt beiseite; sieh es an, behalte es oder räum es weg
doctor-database-gone = sie fehlt, obwohl hier ein Regal war; 'broodshelf restore FILE' spielt eine Sicherung zurück
doctor-database-none = noch gibt es keine; der erste Start legt sie an
doctor-database-silent = sie antwortet nicht: { $error }; läuft sie?
doctor-database-damaged = sie ist beschädigt ({ $path }): Behalte die Datei, dann spiel eine Sicherung zurück
doctor-database-unsound = sie ist beschädigt: { $found }; spiel eine Sicherung zurück
doctor-database-schema = ihr Schema ist { $at }, diese Version will { $head }; 'broodshelf migrate' bringt das in Ordnung
doctor-database-empty = ihr Schema ist leer, diese Version will { $head }; 'broodshelf migrate' bringt das in Ordnung
doctor-database-good = sie antwortet, Tabellen: { $n }, Schema { $at }
doctor-role-free = diese Rolle darf die Zeilensicherheit (row-level security) umgehen; gib dem Server eine eigene (docs/self-hosting.md)
doctor-role-good = die Zeilensicherheit (row-level security) hält sie bei einem Haushalt auf einmal
doctor-households = { $n } auf diesem Server
doctor-history =
    { $households ->
        [one] in einem Jahr kamen { $n } Änderungen aus { $households } Haushalt; mit Verlauf und Antworten etwa { $kib } KiB Text, dazu Indizes (nach 400 Tagen ausgedünnt: self-hosting.md)
       *[other] in einem Jahr kamen { $n } Änderungen aus { $households } Haushalten; mit Verlauf und Antworten je etwa { $kib } KiB Text, dazu Indizes (nach 400 Tagen ausgedünnt: self-hosting.md)
    }
doctor-history-some = in einem Jahr kamen etwa { $n } Änderungen aus etwa { $households } Haushalten, hochgerechnet aus { $looked } davon; mit Verlauf und Antworten je etwa { $kib } KiB Text, dazu Indizes (nach 400 Tagen ausgedünnt: self-hosting.md)
doctor-key-none = noch gibt es keinen; der erste Start legt ihn an
doctor-key-wrong = in { $file } ist kein P-256-Schlüssel in PEM; leg den alten aus der Sicherung zurück, sonst macht der nächste Start einen neuen, auf den noch kein Handy hört
doctor-key-changed =
    er wurde geändert: { $n ->
        [one] { $n } Handy hört nichts, bis dort die App geöffnet wird
       *[other] { $n } Handys hören nichts, bis dort die App geöffnet wird
    }; besser legst du { $file } aus der Sicherung zurück
doctor-key-good = { $key }…, nur für den Eigentümer lesbar
doctor-key-sealed = { $key }…, versiegelt in der Datenbank
doctor-nudger-never = hier lief er noch nie; 'broodshelf serve' startet einen
doctor-nudger-ahead = er lief zuletzt { $s } s in der Zukunft: Die Uhr dieser Maschine wurde zurückgestellt
doctor-nudger-good = er lief vor { $s } s, und nichts wartet
doctor-nudger-late = er lief zuletzt vor { $s } s, oder Erinnerungen warten; läuft 'broodshelf serve'?
doctor-mail-refused = { $server } nimmt uns nicht an: { $error }; siehe BROODSHELF_SMTP_*
doctor-mail-good = { $server } nimmt unsere Mail an
doctor-proxy-good = die Adresse des Besuchers gilt, wie die Proxys davor sie nennen: { $n }
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS ist 0, darum teilen sich alle Besucher der https-Adresse eine Grenze; setz es auf 1
doctor-address-good = { $url } ist https, wie Handys es brauchen
doctor-address-local = { $url } geht nur auf dieser Maschine; Handys brauchen https (docs/self-hosting.md)
doctor-server-silent = { $url } antwortet von hier aus nicht, wie dieser Server es täte ({ $error })
doctor-server-other = unter { $url } antwortet etwas anderes (Version { $version }, hier { $here })
doctor-server-good = Version { $version } antwortet unter { $url }
doctor-server-unwell = er sagt selbst, dass es ihm nicht gut geht: { $told }
doctor-clock = die Uhr des Servers und diese hier weichen um { $s } s ab
doctor-certificate-good =
    { $n ->
        [one] diese Maschine vertraut ihm, noch { $n } Tag gültig
       *[other] diese Maschine vertraut ihm, noch { $n } Tage gültig
    }
doctor-certificate-short = diese Maschine vertraut ihm; es gilt nur Tage oder Stunden und wird vom Proxy erneuert, wie von einer eigenen Zertifizierungsstelle
doctor-certificate-late =
    { $n ->
        [one] nur noch { $n } Tag gültig, und niemand hat es erneuert
       *[other] nur noch { $n } Tage gültig, und niemand hat es erneuert
    }; sieh ins Protokoll des Proxys: die Ports 80 und 443 des Namens müssen ihn erreichen (docs/https.md)
doctor-certificate-name = den Namen { $host } kennt hier niemand; trage ihn dort ein, wo du ihn hast, oder in deinem Router (docs/https.md)
doctor-certificate-port = { $host } antwortet von hier aus nicht auf Port { $port }; läuft der Proxy, und führt der Router den Port zu ihm?
doctor-certificate-plain = { $host } spricht auf Port { $port } unverschlüsselt (http): stelle einen Proxy mit Zertifikat davor (docs/https.md)
doctor-certificate-expired = das Zertifikat von { $host } ist abgelaufen, oder die Uhr dieser Maschine geht falsch; der Proxy muss es erneuern
doctor-certificate-other-name = das Zertifikat gehört zu einem anderen Namen als { $host }; gib dem Proxy diesen Namen, oder setze BROODSHELF_PUBLIC_URL auf seinen
doctor-certificate-authority = diese Maschine kennt nicht, wer das Zertifikat von { $host } unterschrieben hat; Telefone kennen es nur, wo du deine eigene Zertifizierungsstelle eingerichtet hast (docs/https.md, der fünfte Weg)
doctor-certificate-hello = { $host } hat auf Port { $port } abgebrochen, bevor es ein Zertifikat zeigte; sieh ins Protokoll des Proxys
