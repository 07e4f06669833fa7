### Warum der Server nicht tun konnte, worum er gebeten wurde. Jeder Satz sagt, was falsch war und was zu tun ist.
### Was auf einem Handy ist und nicht gesendet wurde, bleibt dort: Kein Satz darf klingen, als sei etwas verloren.

## Titel, nach der Art des Problems.

problem-title-failed = Auf dem Server ging etwas schief.
problem-title-bad-request = Diese Anfrage versteht diese Adresse nicht.
problem-title-signed-out = Dieses Handy ist nicht angemeldet.
problem-title-not-allowed = Das darfst du hier nicht.
problem-title-not-found = Unter dieser Adresse ist nichts.
problem-title-wrong-device = Die Sitzung gehört zu einem anderen Gerät; nichts wurde gespeichert.
problem-title-gone = Das ist zu Ende.
problem-title-too-large = Die Anfrage ist zu groß.
problem-title-wrong-media-type = Sende JSON (Content-Type: application/json).
problem-title-upgrade-required = Diese Kopie der App ist zu alt für den Server; lade sie neu. Auf dem Handy ist nichts verloren.
problem-title-store-full = Auf dem Server ist kein Platz mehr; nichts wurde gespeichert.
problem-title-busy = Der Server kann das gerade nicht; nichts wurde gespeichert.
problem-title-too-many = Zu viele Versuche; warte ein wenig.

## Der Server

problem-unforeseen = Nichts wurde gespeichert. Versuch es noch einmal; bleibt es so, sag dem, der den Server betreibt: { $reference }.
problem-disk-full = Die Platte des Servers ist voll; nichts wurde gespeichert.
problem-database-locked = Die Datenbank des Servers wird von einem anderen Programm festgehalten; nichts wurde gespeichert.
problem-database-away = Die Datenbank des Servers antwortet nicht; nichts wurde gespeichert.
problem-database-read-only = Der Server darf nicht in seine Datenbank schreiben; nichts wurde gespeichert.
problem-database-damaged = Ein Teil der Datenbank des Servers ist verloren; nichts wurde gespeichert.
problem-no-household = Diesen Haushalt gibt es auf diesem Server nicht.
problem-no-file = Diese Datei gehört zu keinem Build, der hier liegt; lade die App neu.
problem-foreign-origin = Diese Anfrage kommt nicht von { $url }. Öffne die App unter dieser Adresse, oder setz BROODSHELF_PUBLIC_URL auf die, die du benutzt.
problem-keepers-only = Das kann nur ein Halter dieses Haushalts.
problem-no-record = Diesen Eintrag gibt es in diesem Haushalt nicht.
problem-no-place = Diesen Platz gibt es nicht.
problem-no-place-yet = Diesen Platz gibt es nicht. Lass dieses Handy erst abgleichen, dann versuch es noch einmal.
problem-no-person-yet = Diese Person gibt es in diesem Haushalt nicht. Lass dieses Handy erst abgleichen, dann versuch es noch einmal.

## Handys, Codes und Sitzungen

problem-code-used-now = Dieser Code wurde gerade eben benutzt.
problem-claim-code-ended = Dieser Code ist nicht bekannt, schon benutzt oder abgelaufen. Frag, wer den Server betreibt, nach einem neuen ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = Dieser Server nimmt jetzt keine neuen Haushalte auf. Frag, wer ihn betreibt.
problem-signup-code-needed = Für einen neuen Haushalt braucht dieser Server einen Code. Bitte um eine Einladung, wer ihn betreibt.
problem-signup-address = Von hier wurden heute viele Haushalte angefangen. Versuch es morgen noch einmal oder bitte um eine Einladung, wer den Server betreibt.
problem-founding-incomplete = Ein neuer Haushalt braucht deinen Namen, seinen eigenen Namen und seine Zeitzone.
problem-too-many-phones-ask = Gerade wollen zu viele Handys herein; versuch es bald noch einmal.
problem-no-keeper = Diesen Halter gibt es in diesem Haushalt nicht.
problem-pairing-over = Dieser Code ist abgelaufen. Zeig einen neuen.
problem-pairing-used = Dieser Code wurde schon benutzt.
problem-pairing-unknown = Kein Handy zeigt gerade diesen Code. Codes gelten zehn Minuten.
problem-device-id-taken = Diese Gerätekennung ist vergeben; das Handy sollte eine neue erstellen.
problem-device-revoked = Ein Halter hat dieses Handy abgemeldet. Was es nicht gesendet hat, lässt sich exportieren.
problem-session-old = Diese Sitzung ist zu Ende, weil sie lange nicht benutzt wurde. Verbinde das Handy neu.
problem-person-removed = Ein Halter hat dich aus diesem Haushalt entfernt.
problem-no-phone = Dieses Handy gibt es in diesem Haushalt nicht.
problem-one-of-two = Gib entweder { $one } oder { $other } an.
problem-quota-address = Von dieser Adresse kam in dieser Stunde sehr viel. Was auf diesem Handy ist, bleibt dort und geht von selbst weiter.
problem-quota-pass = Dieser Pass hat so viel gesendet, wie ein Pass an einem Tag darf. Was auf diesem Handy ist, bleibt dort und geht morgen, oder mit einem neuen Pass.
problem-quota-household = Dieser Haushalt hat so viel gesendet, wie einer an einem Tag darf. Was auf diesem Handy ist, bleibt dort und geht morgen.
problem-room-records = Dieser Haushalt hat so viele Einträge, wie der Server ihm lässt ({ $most }). Was auf diesem Handy ist, bleibt da und geht los, wenn Platz ist: lösch, was niemand braucht, oder frag, wer den Server betreibt.
problem-room-pictures = Dieser Haushalt hat so viele Bilder, wie der Server ihm lässt ({ $most }). Dieses bleibt auf dem Handy und geht los, wenn Platz ist: lösch welche, oder frag, wer den Server betreibt.
problem-room-mib = Dieser Haushalt belegt so viel auf dem Server, wie er darf ({ $most } MiB). Was auf diesem Handy ist, bleibt da und geht los, wenn Platz ist: frag, wer den Server betreibt.
room-nearly-full = Dieser Haushalt hat { $percent } % seines Platzes auf dem Server gefüllt: { $records } von { $most_records } Einträgen, { $pictures } von { $most_pictures } Bildern, { $mib } von { $most_mib } MiB. Nichts ist verloren; bitte um mehr, bevor er voll ist.

## Pässe und Kalender

problem-no-pass = Diesen Pass gibt es nicht.
problem-no-pass-yet = Diesen Pass gibt es nicht. Lass dieses Handy erst abgleichen, dann versuch es noch einmal.
problem-pass-taken-back = Dieser Pass wurde zurückgenommen; erstelle einen neuen.
problem-pass-taken-back-here = Der Halter hat diesen Pass zurückgenommen. Was dieses Handy nicht gesendet hat, lässt sich exportieren.
problem-pass-unknown = Dieser Pass ist nicht bekannt oder wurde zurückgenommen. Bitte den Halter um einen neuen Link.
problem-pass-ended = Dieser Pass ist zu Ende ({ $on }).
problem-pass-ended-still-taken = Dieser Pass ist zu Ende ({ $on }). Was bis dahin eingetragen wurde, wird noch angenommen.
problem-pass-over = Dieser Pass ist zu Ende oder wurde zurückgenommen.
problem-pass-full = Handys, die diesen Pass schon geöffnet haben: { $n }. Der Halter kann eines davon entfernen.
problem-no-feed = Diese Kalenderadresse ist nicht bekannt oder beendet. Erstelle in der App eine neue.

## Mail und Erinnerungen

problem-mail-off = Dieser Server sendet keine Mail; wer ihn betreibt, kann das einrichten (docs/self-hosting.md).
problem-no-mail-address = Das ist keine brauchbare Mailadresse, z. B. name@example.org.
problem-no-mail-code = Für diese Person ist kein Code offen; fordere einen neuen an.
problem-mail-code-over = Dieser Code ist abgelaufen; fordere einen neuen an.
problem-mail-code-wrong = Das ist nicht der Code, der gesendet wurde.
problem-not-subscribed = Dieses Handy hört noch nicht zu; schalte erst seine Erinnerungen ein.
problem-push-too-long = Diese Push-Adresse ist nicht brauchbar: Sie ist länger als { $most } Zeichen.
problem-push-not-https = Diese Push-Adresse ist nicht brauchbar: Sie ist keine einfache https-Adresse auf Port 443.
problem-push-unknown = Diese Push-Adresse ist nicht brauchbar: Sie gehört zu keinem bekannten Push-Dienst. Wer den Server betreibt, kann weitere Push-Dienste erlauben.
problem-push-private = Diese Push-Adresse ist nicht brauchbar: Ihr Name führt in ein privates Netz.
problem-push-other-key = Das Handy hört auf einen älteren Schlüssel dieses Servers; schalte die Erinnerungen neu ein.
problem-push-taken = An dieser Adresse hört ein anderes Handy; schalte die Erinnerungen neu ein, dann bekommst du eine eigene.
problem-push-too-many = Handys, die schon für dich zuhören: { $n }. Melde erst eines davon ab.

## Bilder

problem-picture-slow = Dieses Bild zu lesen dauert zu lange.
problem-picture-not-now = Der Server konnte dieses Bild gerade nicht ansehen.
problem-picture-busy = Der Server ist mit Bildern beschäftigt.
problem-picture-scans = Dieses Bild ist in zu vielen Durchgängen gespeichert.
problem-picture-unreadable = Das ist kein lesbares JPEG-Bild.
problem-picture-pixels = Dieses Bild hat zu viele Bildpunkte.
problem-picture-damaged = Das Bild kam beschädigt an; sende es noch einmal.
problem-pictures-full = Die Bilder dieses Haushalts füllen ihren Speicher; lösch einige, oder frag, wer den Server betreibt.
problem-picture-not-sent = Dieses Bild wurde von seinem Handy noch nicht gesendet.
problem-no-picture = Dieses Bild gibt es in diesem Haushalt nicht.
problem-picture-itself = Sende das Bild selbst (Content-Type: image/jpeg).
problem-picture-large = Ein Bild darf höchstens { $most } Bytes haben.

## Sensoren und ihre Tabellen

problem-broker-and-topic = Gib Broker und Topic an, oder keines von beiden.
problem-no-broker = Der Server hört auf keinen Broker dieses Namens.
problem-topic-not-yours = Gib ein ganzes Topic an, das zu { $wanted } passt.
problem-too-many-sensors = Ein Haushalt hat höchstens { $most } Sensoren. Beende erst einen.
problem-topic-taken = Auf dieses Topic hört schon ein Sensor.
problem-bad-token = Sende den Schlüssel eines Sensors, der noch gilt ('Authorization: Bearer …'). Unter Haus, Plätze gibt es neue.
problem-no-sensor = Diesen Sensor gibt es in diesem Haushalt nicht.
problem-no-csv = Zeile { $line } ist kein CSV: { $why }. Speichere die Datei noch einmal als CSV.
problem-no-such-column =
    { $n ->
        [0] Keine Spalte heißt '{ $name }'; nenn eine aus der ersten Zeile.
        [one] { $n } Spalte heißt '{ $name }'; nenn eine aus der ersten Zeile.
       *[other] { $n } Spalten heißen '{ $name }'; nenn eine aus der ersten Zeile.
    }
problem-name-a-column = Nenn die Spalte der Temperatur oder der Luftfeuchte.

## Rechner und Reisen

problem-holiday-days = Wähle für die Rückkehr einen Tag nach der Abreise, innerhalb eines Jahres.
problem-no-calculator = Diesen Rechner gibt es nicht.
problem-input-wrong = Damit lässt sich nicht rechnen: { $why }.
problem-no-input = { $calculator } hat keine Eingabe { $name }.
problem-input-number = { $name } muss eine Zahl sein.
problem-input-choice = { $name } muss eine der Möglichkeiten sein.
problem-input-yes-no = { $name } muss ja oder nein sein.
problem-out-of-range = { $what }: { $value } { $unit } geht nicht; möglich sind { $low } { $unit } bis { $high } { $unit }.
problem-not-a-choice = { $name } ist { $value }; möglich sind { $choices }.
problem-parts-by = Sag, ob die Teile nach Masse ({ $mass } %) oder nach Volumen ({ $volume } %) sind.

## Zwischen App und Server: für alle, die Programme dafür schreiben.

problem-no-json = Der Inhalt ist nicht das JSON, das diese Adresse nimmt: { $why }.
problem-not-an-object = { $where } muss ein Objekt sein.
problem-body-not-an-object = Der Inhalt muss ein JSON-Objekt sein.
problem-not-a-list = '{ $where }' muss eine Liste sein.
problem-not-a-uuid = '{ $where }' muss eine UUID in Kleinbuchstaben sein.
problem-address-not-a-uuid = Die id in der Adresse ist keine UUID.
problem-not-a-whole-number = '{ $where }' muss eine ganze Zahl von { $low } bis { $high } sein.
problem-not-a-short-text = { $where } muss ein kurzer Text sein.
problem-not-a-flag = { $where } muss true oder false sein.
problem-not-a-pair = { $where } muss je [ms, device] enthalten.
problem-empty-set = { $where } muss ein Objekt mit mindestens einem Feld sein.
problem-too-many-fields = { $where } hat mehr als { $most } Felder.
problem-wrong-cursor = 'cursor' muss sein, was die letzte Antwort gab, oder null.
problem-wrong-fields = Diese Felder sind falsch oder fehlen: { $names }.
problem-wrong-auth-key = { $where } muss 16 Bytes in base64url sein.
problem-wrong-point-key = { $where } muss ein unkomprimierter P-256-Punkt (65 Bytes) in base64url sein.
problem-app-newer = Die App dieses Handys ist neuer als der Server; aktualisiere den Server.
problem-too-many-operations = Höchstens { $most } Vorgänge je Anfrage; sende den Rest in der nächsten.
problem-too-many-bytes = Hier werden höchstens { $most } Bytes angenommen.

refused-one-household = Ein Haushalt hat einen Eintrag von sich selbst, und den gibt es schon.
refused-household-stays = Der Haushalt selbst lässt sich nicht löschen.
refused-let-in = Personen kommen dazu, indem ein Handy hereingelassen wird oder durch einen Pass.
refused-no-role = Eine Person ist Halter oder Vertretung; diese ist keins von beiden.
refused-last-keeper = Der letzte Halter kann nicht entfernt werden. Lass zuerst einen anderen Halter herein.

problem-row-no-number = „{ $cell }“ ist keine Zahl.
problem-row-no-time = „{ $cell }“ ist keine Zeit in der gewählten Form.
problem-row-too-early = Die Zeit liegt vor dem Jahr 2000.
problem-row-not-a-number = Darin steht keine Zahl.
problem-row-nothing-measured = Darin steht weder eine Temperatur noch eine Feuchte.
problem-row-broken-temperature = Die Temperatur kann an keinem Ort herrschen.
problem-row-broken-humidity = Die Feuchte liegt außerhalb von 0 bis 100 %.
problem-row-too-old = Das ist zu alt.
problem-row-in-the-future = Das liegt in der Zukunft.
