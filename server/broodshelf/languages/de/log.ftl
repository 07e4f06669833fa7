## Das Blatt zum Eintragen.

log-food = Futter
log-more = Mehr Futter
log-amount = Menge
log-size = Größe
log-from = Woher es kommt
log-lot = Welche Packung
log-no-lot = Von anderswo
log-go = Fütterung eintragen
log-despite = Schon geschehen: trotzdem eintragen

log-stop-refuse = Biete das nicht an.
log-stop-wait = Noch nicht.
log-stop-hold = Halte es erst zurück.

log-outcome-later = { $hours ->
    [one] Was daraus wurde, kann warten: Die Runde fragt nach etwa { $hours } Stunde nach den Resten.
   *[other] Was daraus wurde, kann warten: Die Runde fragt nach etwa { $hours } Stunden nach den Resten.
  }
log-which-feeding = Welche Fütterung
log-feeder-level = Wie voll ist der Futterspender
log-offered-in = Angeboten als

log-vessel-drop = Tropfen
log-vessel-feeder = Im Futterspender

log-colour-seen = Wo die Farbe zu sehen ist
log-colour-only = Nur die Farbe eintragen
log-colour-when = Sieh nach 1, 8, 24 und 72 Stunden nach: durch helle, gedehnte Hinterleiber und in die Brut. Dunkle Ameisen verbergen sie (gängige Praxis).
log-what-became = Was daraus wurde
log-leftovers = Futterreste entfernt
log-calm = Nachgesehen, alles ruhig
log-barrier-good = Der Ausbruchschutz ist gut
log-level = Wasserstand
log-drag = Zieh den Stand, bis er dem echten Reagenzglas gleicht, oder nimm die Pfeiltasten.
log-bubble = In einem liegenden Reagenzglas schwimmt eine Luftblase über dem Wasser: Lies das Ende an der Watte ab.
log-mm = Oder gib ihn in mm ein
log-read = Diesen Stand eintragen
log-filled = Aufgefüllt
log-new-tube = Neues Glas angeboten
log-hydrate = Nest befeuchtet
log-wrong = Was nicht stimmt
log-report = Melden
log-workers = Arbeiterinnen gesehen
log-guess = (geschätzt reicht)
log-count = Zählung eintragen
log-more-brood = Eier, Puppen, Königinnen
log-move-words = Biete das neue Reagenzglas neben dem alten an, dunkle es ab und lass Licht auf das alte. Gib ihnen 1 bis 4 Wochen (gängige Praxis). Schüttle sie nie heraus, außer das alte ist überflutet oder trocken.
log-offered = Neues Nest angeboten
log-moved = Sie sind umgezogen
log-note = Notiz
log-keep-note = Notiz behalten
log-mould-where = Wo ist er

log-mould-far = Flecken weg von der Brut
log-mould-near = Nahe der Brut oder ein Drittel der Watte (gängige Praxis)

log-queens = Königinnen gesehen
log-queens-hint = (leer lassen, wenn du nicht nachgesehen hast; 0 heißt: keine mehr da)
log-males-only = Es kamen nur Männchen
log-donor = Aus welcher Kolonie
log-from-elsewhere = Von anderswo
log-which-brood = Was zugesetzt wurde
log-how-many = Wie viele
log-boost = Brut eintragen
log-boost-words = Nur Brut derselben Art (bei einer parasitischen Königin: ihres Wirts), aus einer gesunden Kolonie. Puppen werden am besten angenommen (gängige Praxis).

## Eine Aufgabe verschieben oder mit einem Grund auslassen.

later-title = Später, oder diesmal nicht
later-when = Wieder in der Runde
later-hour = In einer Stunde
later-evening = Heute Abend
later-tomorrow = Morgen
later-skip = Oder diesmal auslassen, weil

later-own = Dein Grund
later-go = Auslassen
later-cannot-wait = Das kann höchstens über Nacht warten: Jemand muss nachsehen.

## Mehrere Kolonien auf einmal.

several-title = Mehrere auf einmal
several-what = Was sie bekamen
several-who = Welche Kolonien
several-none = Wähle mindestens eine Kolonie.
several-water = Aufgefüllt
several-look = Nachgesehen, alles ruhig
several-go = { $count ->
    [one] Für { $count } Kolonie eintragen
   *[other] Für { $count } Kolonien eintragen
  }
