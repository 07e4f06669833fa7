## Was ein Eintrag im Tagebuch sagt.

event-kind-feeding = Fütterung
event-kind-check = Nachgesehen
event-kind-water = Wasser
event-kind-fault = Etwas stimmt nicht
event-kind-count = Zählung
event-kind-move = Umzug
event-kind-boost = Brut zugesetzt
event-kind-note = Notiz
event-kind-climate = Klima
event-kind-photo = Foto
event-kind-later = Verschoben

event-colony = Eine Kolonie

event-repeat = { $told } (vielleicht doppelt, nicht gezählt)

event-brood-added = { $brood ->
    [eggs] Brut zugesetzt: Eier
    [larvae] Brut zugesetzt: Larven
   *[pupae] Brut zugesetzt: Puppen
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Brut zugesetzt: { $count } Ei
       *[other] Brut zugesetzt: { $count } Eier
      }
    [larvae] { $count ->
        [one] Brut zugesetzt: { $count } Larve
       *[other] Brut zugesetzt: { $count } Larven
      }
   *[pupae] { $count ->
        [one] Brut zugesetzt: { $count } Puppe
       *[other] Brut zugesetzt: { $count } Puppen
      }
  }
event-leftovers = Futterreste entfernt
event-mended = { $fault } (behoben)
event-read = Wasserstand: { $level }
event-read-mm = Wasserstand: { $mm } mm
event-feeder = Futterspender: { $level }

event-colour = Nach Farbe gesehen: { $where }
event-colour-nowhere = Nach Farbe gesehen: nirgends

event-water-refill = Wasser aufgefüllt
event-water-new-tube = Neues Glas angeboten
event-water-hydrate = Nest befeuchtet

event-counted = Gezählt: { $seen }
event-counted-nothing = Gezählt: Brut

event-counted-eggs = { $amount ->
    [none] Eier: keine
    [seen] Eier: gesehen
    [few] Eier: wenige
    [some] Eier: einige
   *[many] Eier: viele
  }
event-counted-larvae = { $amount ->
    [none] Larven: keine
    [seen] Larven: gesehen
    [few] Larven: wenige
    [some] Larven: einige
   *[many] Larven: viele
  }
event-counted-pupae = { $amount ->
    [none] Puppen: keine
    [seen] Puppen: gesehen
    [few] Puppen: wenige
    [some] Puppen: einige
   *[many] Puppen: viele
  }
event-workers = { $count ->
    [one] { $count } Arbeiterin
   *[other] { $count } Arbeiterinnen
  }
event-workers-at-least = mindestens { $seen }
event-queens = { $count ->
    [one] { $count } Königin
   *[other] { $count } Königinnen
  }
event-males-only = nur Männchen

event-workers-roughly = { $amount ->
    [none] Keine Arbeiterinnen
    [few] Wenige Arbeiterinnen
    [some] Einige Arbeiterinnen
   *[many] Viele Arbeiterinnen
  }

event-stage-larvae = Larven
event-stage-eggs = Eier
event-stage-pupae = Puppen

event-outcome-all = Alles genommen
event-outcome-some = Etwas genommen
event-outcome-ignored = Verschmäht

event-reading-full = Voll
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Leer

event-colour-seen-gasters = Im Hinterleib: Arbeiterinnen haben getrunken
event-colour-seen-brood = In der Brut: es wurde weitergegeben

event-coarse-none = Keine
event-coarse-few = Wenige
event-coarse-some = Einige
event-coarse-many = Viele

event-brood-seen-none = Keine
event-brood-seen-seen = Gesehen
event-brood-seen-few = Wenige
event-brood-seen-some = Einige
event-brood-seen-many = Viele

## Das Tagebuch.

diary-empty = Noch nichts eingetragen.
diary-earlier = Früher
diary-void = Ungültig machen
diary-search = Im Tagebuch suchen
diary-kind = Zeigen
diary-all = Alles
diary-none = Nichts dergleichen im Tagebuch.
diary-looking = Suche zurück bis { $day } …
diary-today = Heute
diary-yesterday = Gestern

## Bilder.

photo-title = Bilder
photo-take = Bild aufnehmen
photo-busy = Einen Moment …
photo-remove = Dieses Bild entfernen
photo-unreadable = Dieses Bild ließ sich nicht lesen. Nimm ein anderes, oder mach es noch einmal.
photo-too-large = Dieses Bild ließ sich nicht klein genug machen.
photo-of = { $name }, { $day }
photo-large = Bild ansehen: { $day }
photo-older = Ältere
photo-newer = Neuere
photo-elsewhere = Dieses Bild ist noch auf dem Handy, das es aufgenommen hat.
