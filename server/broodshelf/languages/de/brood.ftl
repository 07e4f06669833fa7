## Was im Nest ist und was daraus wird: die Tage, die Frage und das Warum.

brood-first = Die ersten Arbeiterinnen
brood-next = Neue Arbeiterinnen

brood-days = { $high ->
    [one] In { $low } bis { $high } Tag.
   *[other] In { $low } bis { $high } Tagen.
  }
brood-days-about = { $days ->
    [one] In etwa { $days } Tag.
   *[other] In etwa { $days } Tagen.
  }
brood-between = Zwischen { $from } und { $to }
brood-on = Um { $day }
brood-any-by = Jeden Tag möglich, bis { $day }
brood-any = Jeden Tag möglich
brood-at-latest = { $days ->
    [one] Spätestens in { $days } Tag.
   *[other] Spätestens in { $days } Tagen.
  }
brood-not-before = Nicht vor { $day }
brood-likely = { $days ->
    [one] Am wahrscheinlichsten um { $best }, in { $days } Tag; vielleicht erst { $high }
   *[other] Am wahrscheinlichsten um { $best }, in { $days } Tagen; vielleicht erst { $high }
  }
brood-perhaps = Vielleicht erst { $high }

brood-no-end = Wie lange danach, lässt sich noch nicht sagen.

brood-warm = Bei { DEGREES($mean_c) }.
brood-none = Bei der jetzigen Wärme ist ein halbes Jahr lang nichts in Sicht.

brood-ask-by-seen = { $brood ->
    [eggs] Bis { $day } sollten Eier da sein: gesehen?
    [larvae] Bis { $day } sollten Larven da sein: gesehen?
   *[pupae] Bis { $day } sollten Puppen da sein: gesehen?
  }
brood-ask-by = { $brood ->
    [eggs] Bis { $day } sollten Eier da sein.
    [larvae] Bis { $day } sollten Larven da sein.
   *[pupae] Bis { $day } sollten Puppen da sein.
  }
brood-ask-now-seen = { $brood ->
    [eggs] Jetzt sollten Eier da sein: gesehen?
    [larvae] Jetzt sollten Larven da sein: gesehen?
   *[pupae] Jetzt sollten Puppen da sein: gesehen?
  }
brood-ask-now = { $brood ->
    [eggs] Jetzt sollten Eier da sein.
    [larvae] Jetzt sollten Larven da sein.
   *[pupae] Jetzt sollten Puppen da sein.
  }
brood-ask-yes = Ja
brood-ask-not-yet = Noch nicht
brood-ask-cannot-see = Nicht zu sehen
brood-ask-early = Schon gesehen
brood-ask-looked = Schon nachgesehen ({ $day }). Die nächste Frage kommt ab { $again }: Bis dahin hilft Ruhe mehr.
brood-ask-told = { $brood ->
    [eggs] Eier gesehen: { $day }
    [larvae] Larven gesehen: { $day }
   *[pupae] Puppen gesehen: { $day }
  }
brood-ask-waits = Die Tage werden neu berechnet, sobald wieder eine Verbindung da ist.

brood-ask-remark = { $brood ->
    [eggs] Nach Eiern gesehen, nichts zu erkennen
    [larvae] Nach Larven gesehen, nichts zu erkennen
   *[pupae] Nach Puppen gesehen, nichts zu erkennen
  }

brood-open = Die Brut auf einer Zeitlinie

brood-why-title = Warum diese Tage
brood-why-nothing = Noch hat nichts, was gesehen wurde, sie verschoben: Es sind die Tage dieser Art bei dieser Wärme.
brood-why-eight = Von zehn Kolonien wie dieser liegen acht in dieser Spanne.
brood-why-unmeasured = Niemand hat gemessen, wie lange die Stadien dieser Gruppe dauern. Die Tage beruhen auf gängiger Praxis, darum ist die Spanne weit. Was du siehst, macht sie enger.
brood-why-source = Ausgangspunkt: { $source }.

brood-why-line = { $day }: { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] keine Arbeiterinnen
    [one] { $count } Arbeiterin gezählt
   *[other] { $count } Arbeiterinnen gezählt
  }
brood-why-workers = Arbeiterinnen gezählt

brood-why-seen-none = { $brood ->
    [eggs] keine Eier
    [larvae] keine Larven
    [pupae] keine Puppen
   *[workers] keine Arbeiterinnen
  }
brood-why-seen-seen = { $brood ->
    [eggs] Eier gesehen
    [larvae] Larven gesehen
    [pupae] Puppen gesehen
   *[workers] Arbeiterinnen gesehen
  }
brood-why-seen-few = { $brood ->
    [eggs] wenige Eier
    [larvae] wenige Larven
    [pupae] wenige Puppen
   *[workers] wenige Arbeiterinnen
  }
brood-why-seen-some = { $brood ->
    [eggs] einige Eier
    [larvae] einige Larven
    [pupae] einige Puppen
   *[workers] einige Arbeiterinnen
  }
brood-why-seen-many = { $brood ->
    [eggs] viele Eier
    [larvae] viele Larven
    [pupae] viele Puppen
   *[workers] viele Arbeiterinnen
  }
brood-why-seen-taken = Insekten angenommen
brood-why-seen-refused = Insekten verschmäht

brood-why-moved-census-more = mehr als erwartet
brood-why-moved-census-fewer = weniger als erwartet
brood-why-moved-census-sooner = also ist diese Brut schneller als gedacht
brood-why-moved-census-later = also ist diese Brut langsamer als gedacht

brood-why-none = obwohl welche zu erwarten waren

brood-why-larvae-census-more = also sind es mehr Larven als gedacht
brood-why-larvae-census-fewer = also sind es weniger Larven als gedacht

## Eine Gründung, die stockt, und was Halter dann tun.

stalled-title = Diese Gründung stockt wahrscheinlich
stalled-days = { $days ->
    [one] Bei neun von zehn Gründungen wie dieser wären spätestens vor { $days } Tag Arbeiterinnen gekommen.
   *[other] Bei neun von zehn Gründungen wie dieser wären spätestens vor { $days } Tagen Arbeiterinnen gekommen.
  }
stalled-about = Was Halter tun, in dieser Reihenfolge (gängige Praxis):
stalled-unfed-1 = Lass das Reagenzglas zwei Wochen dunkel und in Ruhe, mitten in der Wärme, die ihre Art mag. Viele Königinnen fressen ihre Brut, weil zu oft nachgesehen wird.
stalled-unfed-2 = Füttere sie in diesen Wochen nicht: Sie lebt von ihren Reserven, und Futter verdirbt neben ihr.
stalled-unfed-3 = Dann sieh einmal nach. Brut, die weiter ist, also Larven, wo Eier waren, braucht nur mehr Zeit.
stalled-unfed-4 = Keine Brut, oder weniger als vorher: Biete einen Tropfen Zuckerwasser und ein winziges Stück Insekt an, und nimm nach einem Tag heraus, was übrig ist. Eine Königin, die ihre Brut gefressen hat, legt vielleicht wieder.
stalled-fed-1 = Lass sie dunkel und in Ruhe, mitten in der Wärme, die ihre Art mag, und sieh höchstens einmal in der Woche nach.
stalled-fed-2 = Füttere weiter: alle 3 bis 5 Tage Zucker und ein kleines Insekt, und nimm nach einem Tag heraus, was übrig ist. Eine hungrige Königin frisst ihre Brut.
stalled-fed-3 = Sieh nach zwei Wochen genau nach. Brut, die weiter ist, also Larven, wo Eier waren, braucht nur mehr Zeit.
stalled-last-1 = Kein Wasser mehr, oder Schimmel nahe der Brut: Leg ein frisches Reagenzglas vor ihres und lass sie selbst umziehen.
stalled-last-2 = Sechs bis acht warme Wochen lang keine Eier: Sie ist wahrscheinlich nie begattet worden oder am Ende. Brut ihrer eigenen Art aus einer gesunden Kolonie ist das Letzte, was du versuchen kannst.

## Die Brut auf einer Zeitlinie.

brood-line-ahead = Wie weit voraus

brood-line-reach-56 = 8 Wochen
brood-line-reach-182 = Halbes Jahr

brood-line-stage-eggs = Eier
brood-line-stage-small-larvae = Kleine Larven
brood-line-stage-large-larvae = Große Larven
brood-line-stage-pupae = Puppen
brood-line-stage-workers = Arbeiterinnen

brood-line-day = Tag
brood-line-today = heute

brood-line-now = jetzt { $number }

brood-line-about = { $best } ({ $low }–{ $high })

brood-line-summary = { $best ->
    [one] Heute wahrscheinlich { $counts }. Bis { $day }: etwa { $best } Arbeiterin, wohl { $low } bis { $high }.
   *[other] Heute wahrscheinlich { $counts }. Bis { $day }: etwa { $best } Arbeiterinnen, wohl { $low } bis { $high }.
  }

brood-line-count-eggs = { $count ->
    [0] keine Eier
    [one] { $count } Ei
   *[other] { $count } Eier
  }
brood-line-count-small-larvae = { $count ->
    [0] keine kleinen Larven
    [one] { $count } kleine Larve
   *[other] { $count } kleine Larven
  }
brood-line-count-large-larvae = { $count ->
    [0] keine großen Larven
    [one] { $count } große Larve
   *[other] { $count } große Larven
  }
brood-line-count-pupae = { $count ->
    [0] keine Puppen
    [one] { $count } Puppe
   *[other] { $count } Puppen
  }
brood-line-count-workers = { $count ->
    [0] keine Arbeiterinnen
    [one] { $count } Arbeiterin
   *[other] { $count } Arbeiterinnen
  }

brood-line-mark-line = am wahrscheinlichsten; gestrichelt: kommt noch
brood-line-mark-band = acht von zehn
brood-line-mark-dot = du hast gezählt oder welche gesehen
brood-line-mark-hollow = du hast nachgesehen, es waren keine da
brood-line-mark-due = wann Arbeiterinnen schlüpfen

brood-line-scale = Jede Zeile hat ihre eigene Höhe. Die Vergangenheit ist gezeichnet, wie sie damals vermutet wurde.
