### Platz, Umzüge und Blicke ins Nest.

reason-settling = Die Kolonie gewöhnt sich nach einem Umzug ein: Lass sie in Ruhe, Verschmähen bedeutet jetzt nichts.
reason-room-full = Etwa { $workers } Arbeiterinnen in einem Gefäß für etwa { $room } (gängige Praxis).
reason-barrier = Der Ausbruchschutz nutzt sich in 2 bis 8 Wochen ab: Sieh einmal in der Woche nach (gängige Praxis).
reason-glance =
    Seit { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } hat niemand nach dieser Kolonie gesehen.
reason-ask-stage = Niemand hat gesagt, wie weit diese Kolonie ist. Sieh heute einmal ruhig hin und trag eine Zählung ein: eine Königin allein, oder wie viele Arbeiterinnen und ob Larven da sind.
reason-ask-workers = Die letzte Zählung fand keine Arbeiterinnen, wo welche sein sollten. Sieh einmal ruhig hin und zähl noch einmal: War es ein Versehen, oder ist die Königin allein?
reason-room-fills =
    So ist das Nest mit etwa { $room } Arbeiterinnen (gängige Praxis) voll in { $best ->
        [one] { $best } Tag
       *[other] { $best } Tagen
    }, { $low } bis { $high }: Halte das nächste bereit.
reason-room-fills-perhaps =
    So ist das Nest mit etwa { $room } Arbeiterinnen (gängige Praxis) voll in { $best ->
        [one] { $best } Tag
       *[other] { $best } Tagen
    }, vielleicht viel später: Halte das nächste bereit.
reason-room-full-by-now =
    Nach ihrem Tempo kann das Nest für etwa { $room } Arbeiterinnen (gängige Praxis) schon voll sein; die letzte Zählung ist { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } alt: Zähl, und halte das nächste bereit.
reason-room-growth =
    Beim jetzigen Tempo verdoppelt sie sich in etwa { $doubling } Tagen ({ $counts ->
        [one] eine Zählung
       *[other] { $counts } Zählungen
    }).
reason-move-water-low = In diesem Reagenzglas ist wenig Wasser: Ein frisches gibt Wasser und Platz zugleich.
reason-move-mould = Schimmel ist nahe der Brut oder bedeckt ein Drittel der Watte.
reason-move-flood = Das Nest ist überflutet.
reason-move-dry = Der Wassertank ist trocken.
reason-move-beside = Leg das neue Reagenzglas oder Nest Öffnung an Öffnung neben das alte.
reason-move-darken = Dunkle das neue ab.
reason-move-light = Lass das alte im Licht, ohne Wärme.
reason-move-wait = Gib ihnen 1 bis 4 Wochen; sie wählen die Nacht (gängige Praxis).
reason-move-no-shaking = Schüttle oder kippe sie nie heraus.
reason-move-force = Du hast es trocken oder überflutet gesehen: Nur jetzt hilf mit der Hand. Klopf sie sanft ins neue Reagenzglas, Brut zuerst, und lass sie im Dunkeln.
reason-never-tilt = Kipp es nie: Speicherameisen, die fallen, sind verloren.
reason-offer-look =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } wurde ein Nest angeboten: Sieh nach, ob sie umgezogen sind, und trag es ein, wenn ja.
reason-offer-light = Noch im alten? Stell ein Licht ohne Wärme über das alte, und halte das neue dunkel und an einem Ende feucht (gängige Praxis).
reason-offer-last =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } wurde ein Nest angeboten: Vier Wochen reichen zum Wählen (gängige Praxis). Trag es ein, wenn sie umgezogen sind.
reason-offer-ends = Noch im alten? Dann passt es ihnen: Nimm das neue weg, sieh nach, ob es feucht und dunkel genug ist, und biete später ein anderes an (gängige Praxis).
reason-offer-water = Das alte Reagenzglas müsste fast trocken sein, und sie sind noch nicht umgezogen: Sieh nach seinem Wasser und trag ein, was du siehst. Nur was du trocken gesehen hast, wird mit der Hand geleert.
