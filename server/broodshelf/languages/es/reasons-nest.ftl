### Espacio, mudanzas y vistazos.

reason-settling = La colonia se está adaptando tras una mudanza: déjala en paz, que rechace comida no dice nada ahora.
reason-room-full = Unas { $workers } obreras en un recipiente para unas { $room } (práctica común).
reason-barrier = El antifugas se gasta en 2 a 8 semanas: míralo una vez por semana (práctica común).
reason-glance =
    Nadie ha mirado esta colonia desde hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }.
reason-ask-stage = Nadie ha dicho en qué fase está esta colonia. Echa hoy un vistazo tranquilo y anota un recuento: una reina sola, o cuántas obreras y si hay larvas.
reason-ask-workers = El último recuento no encontró obreras donde debería haberlas. Echa un vistazo tranquilo y cuenta otra vez: ¿fue un descuido, o está sola la reina?
reason-room-fills =
    A este ritmo el nido está lleno, con unas { $room } obreras (práctica común), en { $best ->
        [one] { $best } día
       *[other] { $best } días
    }, { $low } a { $high }: ten listo el siguiente.
reason-room-fills-perhaps =
    A este ritmo el nido está lleno, con unas { $room } obreras (práctica común), en { $best ->
        [one] { $best } día
       *[other] { $best } días
    }, quizá mucho más tarde: ten listo el siguiente.
reason-room-full-by-now =
    Por su ritmo, el nido, para unas { $room } obreras (práctica común), puede estar ya lleno; el último recuento tiene { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: cuenta, y ten listo el siguiente.
reason-room-growth =
    Al ritmo de ahora se duplica en unos { $doubling } días ({ $counts ->
        [one] un recuento
       *[other] { $counts } recuentos
    }).
reason-move-water-low = A este tubo le queda poca agua: un tubo nuevo es agua y espacio a la vez.
reason-move-mould = Hay moho cerca de la cría o cubre un tercio del algodón.
reason-move-flood = El nido está inundado.
reason-move-dry = El depósito está seco.
reason-move-beside = Pon el tubo o nido nuevo boca con boca junto al viejo.
reason-move-darken = Oscurece el nuevo.
reason-move-light = Deja el viejo a la luz, sin calor.
reason-move-wait = Dales de 1 a 4 semanas; ellas eligen la noche (práctica común).
reason-move-no-shaking = No las saques nunca a sacudidas ni volcando.
reason-move-force = Lo viste seco o inundado: solo ahora ayuda con la mano. Pásalas con golpecitos suaves al tubo nuevo, primero la cría, y déjalas a oscuras.
reason-never-tilt = No lo inclines nunca: las repletas que caen se pierden.
reason-offer-look =
    Se ofreció un nido hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: mira si se han mudado, y anótalo si es así.
reason-offer-light = ¿Aún en el viejo? Pon una luz sobre el viejo, sin calor, y mantén el nuevo oscuro y húmedo en un extremo (práctica común).
reason-offer-last =
    Se ofreció un nido hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: cuatro semanas bastan para elegir (práctica común). Anótalo si se han mudado.
reason-offer-ends = ¿Aún en el viejo? Entonces les va bien: quita el nuevo, mira si está bastante húmedo y oscuro, y ofrece otro más adelante (práctica común).
reason-offer-water = El tubo viejo debería estar casi seco, y aún no se han mudado: mira su agua y anota lo que ves. Solo se vacía con la mano lo que viste seco.
