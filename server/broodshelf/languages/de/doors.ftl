## Who comes in: phones, mail, and what happened at the doors.

house-phones = Handys
house-this-one = { $phone } (dieses)
house-last-seen = zuletzt gesehen: { $when }
house-sign-out-other = { $name } abmelden?
house-new-phone = Neues Handy hereinlassen
house-new-phone-hint = gib den Code ein, den es zeigt
house-look-up = Finden
house-asks = Möchte dazukommen: { $phone }. Wem gehört es?
house-somebody-new = Jemand Neues
house-new-keeper = Name des neuen Halters
house-let-in = Das Handy ist hereingelassen
house-mail-title = Erinnerungen per Mail
house-mail-about = Für alle ohne Handy, das Erinnerungen annimmt. Eine Adresse gilt, sobald ihr Code hier eingegeben wurde.
house-mail-address = Adresse
house-mail-send = Code senden
house-mail-asked = Ein Code ist unterwegs. Er gilt eine Stunde.
house-mail-code = Der Code aus der Mail
house-mail-confirm = Bestätigen
house-mail-anew = Neuen Code senden
house-mail-comes = Erinnerungen kommen hierher.
house-mail-remove = Entfernen
house-mail-on = Erinnerungen gehen ab jetzt dorthin
house-mail-removed = Dorthin geht keine Mail mehr
house-mail-not-sent = Die Mail ließ sich nicht senden: { $why }.
house-doors-title = Was an den Türen geschah
house-doors-about = Handys, Links und Codes. Von einem neuen Handy, einem Link und einem geöffneten Pass erfahren die anderen Halter sofort.
house-doors-offline = Das liegt auf dem Server, darum braucht es eine Verbindung.
house-doors-all = Alle { $count } zeigen
house-door-new-phone = Neues Handy: { $phone }, für { $who }
house-door-new-phone-by-nobody = Neues Handy: { $phone }, für jemanden
house-door-phone-removed = { $who } hat ein Handy abgemeldet: { $phone }
house-door-phone-removed-by-nobody = Jemand hat ein Handy abgemeldet: { $phone }
house-door-person-removed = { $who } hat { $name } entfernt, mit allen Handys
house-door-person-removed-by-nobody = Jemand hat { $name } entfernt, mit allen Handys
house-door-way-back = Vom Betreiber des Servers: ein Link zurück ins Regal, für { $who }
house-door-way-back-by-nobody = Vom Betreiber des Servers: ein Link zurück ins Regal, für einen Halter
house-door-link-made = { $who } hat einen Link erstellt: { $pass }
house-door-link-made-by-nobody = Jemand hat einen Link erstellt: { $pass }
house-door-pass-opened = { $pass }: Der Pass wurde geöffnet, auf: { $phone }
house-door-pass-ended = { $who } hat einen Pass zurückgenommen: { $pass }
house-door-pass-ended-by-nobody = Jemand hat einen Pass zurückgenommen: { $pass }
house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } falscher Code für einen Weg zurück, eingegeben von { $who }
       *[other] { $count } falsche Codes für einen Weg zurück, eingegeben von { $who }
      }
    [pass] { $count ->
        [one] { $count } falscher Code für einen Pass, eingegeben von { $who }
       *[other] { $count } falsche Codes für einen Pass, eingegeben von { $who }
      }
    [pairing] { $count ->
        [one] { $count } falscher Code für ein neues Handy, eingegeben von { $who }
       *[other] { $count } falsche Codes für ein neues Handy, eingegeben von { $who }
      }
   *[mail] { $count ->
        [one] { $count } falscher Code für eine Mailadresse, eingegeben von { $who }
       *[other] { $count } falsche Codes für eine Mailadresse, eingegeben von { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } falscher Code für einen Weg zurück
       *[other] { $count } falsche Codes für einen Weg zurück
      }
    [pass] { $count ->
        [one] { $count } falscher Code für einen Pass
       *[other] { $count } falsche Codes für einen Pass
      }
    [pairing] { $count ->
        [one] { $count } falscher Code für ein neues Handy
       *[other] { $count } falsche Codes für ein neues Handy
      }
   *[mail] { $count ->
        [one] { $count } falscher Code für eine Mailadresse
       *[other] { $count } falsche Codes für eine Mailadresse
      }
  }
house-door-export = Der Betreiber des Servers hat einen Export geschrieben
house-door-import = Der Betreiber des Servers hat einen Export eingelesen
house-door-restore = Der Betreiber des Servers hat eine Sicherung zurückgespielt
