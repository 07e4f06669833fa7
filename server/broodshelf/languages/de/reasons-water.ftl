### Das Wasser eines Reagenzglases oder Nestes.

reason-water-read =
    Abgelesen vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }: { $reading }. Ein voller Wassertank reicht hier etwa { $last } Tage.
reason-water-look = Niemand hat eingetragen, wie viel Wasser da ist, also ist es unbekannt: Sieh einmal nach. Trägst du den Stand ein, kann der Plan sagen, wann es fällig ist.
reason-water-look-again =
    Seit { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } wurde nichts über das Wasser eingetragen, länger als es reicht: Wie viel da ist, ist wieder unbekannt. Sieh einmal nach und trag den Stand ein.
reason-water-unread = Noch hat niemand das Wasser abgelesen; ein voller Wassertank sollte hier etwa { $last } Tage reichen.
reason-water-physics = Berechnet aus der Größe des Reagenzglases und der Wärme und Trockenheit des Platzes; was du abliest, macht es sicherer.
reason-water-nest = Ein solches Nest wird im Zimmer alle 3 bis 10 Tage befeuchtet, in der Kälte seltener (gängige Praxis).
reason-water-learnt = Gelernt aus dem, was du abgelesen hast: Ein voller Wassertank reicht { $low } bis { $high } Tage.
reason-water-left-out = Ein Wasserstand wurde weggelassen: Ein Reagenzglas dieser Größe kann ihn nicht zeigen.
reason-water-length-guessed = Niemand hat eingegeben, wie lang der volle Wassertank ist: Der größte Stand, { $mm } mm, gilt als voll.
reason-water-length-unknown = Stände in mm werden weggelassen, bis du eingibst, wie lang der volle Wassertank ist.
reason-water-fill = Etwa { VOLUME($ml) } füllen es auf.
reason-water-damp-end = Halte ein Ende feucht und eines trocken: Die Ameisen wählen (gängige Praxis).
reason-water-drinker = So viele Ameisen brauchen auch eine Tränke in der Arena (gängige Praxis).
reason-leak-suspected =
    Es verlor mehr Wasser, als Trocknen und Trinken erklären: mit { $chance } % Wahrscheinlichkeit ein Leck. So ist es trocken in { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }. Sieh heute nach, ob der Boden oder die Brut nass ist; es kann etwas anderes sein.
