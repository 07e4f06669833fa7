### Lo que se dice de una colonia junto a sus tareas: fase, estación, dudas.

notice-plan-failed = Este plan no se pudo rehacer: lo que ves es uno antiguo, una estimación. Guíate por lo que ves en el nido y en los tubos. El servidor lo intenta otra vez antes de una hora; su registro dice dónde falló.
notice-claustral = Una reina fundadora vive de sus reservas: ni comida ni molestias, como mucho un vistazo tranquilo por semana. Primera comida de 2 a 7 días después de las primeras obreras (práctica común).
notice-claustral-fungus = Una reina fundadora vive de sus reservas y cultiva su jardín con la migaja de hongo que trajo: ni hojas ni molestias, como mucho un vistazo tranquilo por semana. Primeras hojas de 2 a 7 días después de las primeras obreras (práctica común).
notice-stage-unknown = Nadie ha dicho en qué fase está esta colonia, así que el plan es prudente para ambas: solo lo que no daña a una reina fundadora y lo que más necesita una colonia. Una fase o un recuento lo corrige.
notice-settling = Adaptándose: unos días de calma.
notice-resting = En hibernación.
notice-resting-summer = En su reposo de verano, con el nido cerrado: no toma comida, solo se mira su agua (práctica común).
notice-rest-window = Esta especie reposa de { $low_months } a { $high_months } meses, de { DEGREES($low_c) } a { DEGREES($high_c) } (práctica común). Un margen, no una regla.
notice-queen-lays = La reina está marcada en duda, pero en el último recuento había huevos: si pasan a larvas, pon su estado en «Bien». Hasta entonces no hay previsiones.
notice-queenless = La reina está en duda: no hay previsiones. No escarbes nunca para buscarla.
notice-quarantine = Aparte de las demás: dale de comer la última, con sus propias pinzas.
notice-length-clamped = Las fórmulas de la masa no llegan a { $given_mm } mm de longitud: se calcula con { $used_mm } mm.
notice-mass-clamped-low = Por su longitud, algunas de estas obreras pueden pesar menos de { $limit_mg } mg, lo mínimo para lo que se conocen los valores: se usa ese.
notice-mass-clamped-high = Por su longitud, algunas de estas obreras pueden pesar más de { $limit_mg } mg, lo máximo para lo que se conocen los valores: se usa ese.
notice-temperature-clamped = Los valores se conocen de { DEGREES(10) } a { DEGREES(40) }: a sus { DEGREES($mean_c) } se calcula como a { DEGREES($used_c) }.
notice-colder-than-set = Más frío de lo que fijaste: según el sensor, { DEGREES($measured_c) } en los últimos tres días en vez de { DEGREES($set_c) }. El plan sigue al sensor.
notice-warmer-than-set = Más calor del que fijaste: según el sensor, { DEGREES($measured_c) } en los últimos tres días en vez de { DEGREES($set_c) }. El plan sigue al sensor.
notice-species-unknown = La especie no está en la lista: el plan sigue la longitud de las obreras y la práctica común.
notice-quiet-for =
    Déjala a oscuras { $days ->
        [one] { $days } día más
       *[other] { $days } días más
    } (práctica común); después va bien un vistazo tranquilo.
notice-quiet-look = Hoy va bien un vistazo tranquilo; después, ninguno en una semana.
notice-fed-queens-choice = Tú eliges: las reinas claustrales no necesitan comida, pero en un estudio publicado (Lasius niger) las reinas alimentadas sacaron adelante más pupas y obreras. Si le das, una gota diminuta, pocas veces y sin luz ni sacudidas.
notice-first-food-soon =
    Ya están las primeras obreras. Espera de { $low } a { $high ->
        [one] { $high } día
       *[other] { $high } días
    } con la primera comida (práctica común).
notice-first-food-now =
    Ya están las primeras obreras: es hora de la primera comida, antes de { $days ->
        [one] { $days } día
       *[other] { $days } días
    } (práctica común); no más de lo que dicen sus tareas.
notice-semi-claustral = Esta reina caza mientras funda: azúcar y presas pequeñas cada { $low } a { $high } días (práctica común).
notice-semi-claustral-harvester = Esta reina recolecta mientras funda: semillas machacadas siempre a mano, presas pequeñas cada { $low } a { $high } días (práctica común).
notice-semi-claustral-fungus-grower = Esta reina sale a por hojas mientras funda: trozos frescos para su jardín cada { $low } a { $high } días, sin presas ni azúcar (práctica común).
notice-alone = Una reina sin obreras, pasada la fundación: sus reservas se han agotado. Azúcar y presas pequeñas cada { $low } a { $high } días (práctica común), poca luz, sin sacudidas.
notice-alone-harvester = Una reina sin obreras, pasada la fundación: sus reservas se han agotado. Semillas machacadas a mano y presas pequeñas cada { $low } a { $high } días (práctica común), poca luz, sin sacudidas.
notice-alone-fungus-grower = Una reina sin obreras, pasada la fundación: tiene que cuidar sola su jardín. Trozos de hoja frescos cada { $low } a { $high } días (práctica común), poca luz, sin sacudidas.
notice-colony-empty = No se contó ni reina ni obreras: no se da comida. Si quedan pupas, aún pueden nacer: anota entonces un recuento. Si no, pon la colonia en «Muerta», con la causa.
notice-parasitic = Esta reina no puede criar sin obreras de una hospedadora: dale algunas, o pupas de la hospedadora, lo antes que puedas. Hasta entonces una gota de azúcar, sin presas (práctica común).
notice-parasitic-pupae = Hay pupas con esta reina: lo que nazca de las de una hospedadora le dará de comer. Hasta entonces una gota de azúcar, sin presas (práctica común).
notice-parasitic-hosts = Obreras de la hospedadora dan de comer a esta reina, y ella pone.
notice-note-host = Anota la especie hospedadora, cuántas le diste y de qué colonia.
notice-settles = Se acaba de mudar: déjala en paz otros { $low } a { $high } días. Que rechace comida no dice nada ahora (práctica común).
notice-too-cold-for-protein = A { DEGREES($day_c) } no hay proteína: por debajo de { DEGREES($limit_c) } se estropea sin comer (práctica común).
notice-too-cold-perhaps-rest = A { DEGREES($day_c) } no hay proteína: por debajo de { DEGREES($limit_c) } se estropea sin comer (práctica común). Si es su hibernación, pon su estado en «En reposo».
notice-too-cold-for-species = A { DEGREES($day_c) } no hay proteína: por debajo de { DEGREES($limit_c) } se estropea sin comer (práctica común). Esta especie no tiene reposo anual: llévala a un lugar más cálido, al menos a { DEGREES(20) } (práctica común).
notice-yearly-clock = Tarde en su año esta especie se frena aunque haga calor: pocos huevos no preocupan. Nadie ha contado larvas en las últimas 4 semanas: solo un poco de proteína hasta que alguien lo haga.
notice-yearly-clock-larvae = Tarde en su año esta especie se frena aunque haga calor; pero se contaron larvas, así que reciben comida. Lo que quede sin comer no preocupa ahora.
notice-yearly-clock-none = Tarde en su año esta especie se frena aunque haga calor: no tener larvas y pocos huevos no preocupa.
notice-yearly-clock-summer = Esta especie se frena en verano: pocos huevos no preocupan. Nadie ha contado larvas en las últimas 4 semanas: solo un poco de proteína hasta que alguien lo haga.
notice-yearly-clock-larvae-summer = Esta especie se frena en verano; pero se contaron larvas, así que reciben comida. Lo que quede sin comer no preocupa ahora.
notice-yearly-clock-none-summer = Esta especie se frena en verano: no tener larvas y pocos huevos no preocupa.
notice-queen-doubt = Ningún huevo en tus recuentos desde hace { $weeks } semanas activas (práctica común: 6 a 8): quizá falte la reina. Sigue dando comida, mira otra vez en dos semanas; no escarbes nunca para buscarla.
notice-no-queen = No se contó reina: las obreras viven aún meses, pero no vienen nuevas. A las larvas que hay se les da comida, luego solo un poco de proteína; no hay previsiones. No escarbes nunca para buscarla.
notice-gamergates = No se contó reina; en esta especie ponen obreras fecundadas, así que puede estar bien: los huevos y las larvas lo dirán.
notice-eggs-without-larvae = Huevos en tus recuentos desde hace { $weeks } semanas activas y nunca una larva (práctica común: duda desde 6): pueden no estar fecundados, o se los comen. Déjala en paz y con calor suficiente, y mira otra vez en dos semanas.
notice-eggs-too-cold = Huevos en tus recuentos desde hace { $weeks } semanas y nunca una larva: su lugar es demasiado frío para que nazcan. Caliéntalo despacio y mira otra vez en un mes.
notice-males-only = Solo salen machos: quizá falte la reina o no esté fecundada. No hay previsiones; no escarbes nunca para buscarla.
notice-quarantine-left = Tenla aparte otros { $low } a { $high } días (práctica común: 2 a 4 semanas).
notice-quarantine-over =
    Aparte desde hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: lo normal son 2 a 4 semanas. Si no se vio nada, termínalo.
notice-keep-apart = Nueva en casa: tenla aparte de las demás otros { $low } a { $high } días (práctica común).
notice-granary = Si las semillas germinan, el granero está demasiado húmedo: dale un rincón más seco (práctica común).
notice-cocoon-substrate = Sus larvas hilan capullos: cuando sean grandes, ofrece una pizca de sustrato fino y seco (práctica común).
notice-wakes-in =
    Despertarla en { $days ->
        [one] { $days } día
       *[other] { $days } días
    }.
notice-first-workers-in = Primeras obreras en unos { $low } a { $high } días a { DEGREES($mean_c) }.
notice-next-workers-in = Nuevas obreras en unos { $low } a { $high } días a { DEGREES($mean_c) }.
notice-coming-wide-flight = Estos días están muy separados porque nadie anotó el día de su vuelo, y la cría puede tener cualquier edad: mirar las larvas y pupas los acerca.
notice-coming-wide-look = Estos días están muy separados porque nadie ha mirado sus larvas y pupas en las últimas dos semanas: una mirada los acerca.
notice-coming-wide-kind = Estos días están muy separados porque nadie ha medido cuánto tarda la cría de su tipo (en su lugar vale la práctica común).
notice-founding-stalled =
    Sus primeras obreras llevan { $days ->
        [one] { $days } día
       *[other] { $days } días
    } de retraso: esta fundación probablemente se ha parado. Déjala a oscuras y en paz dos semanas, y luego mira una vez (práctica común).
## Por qué se movieron los días de las próximas obreras.

notice-census-more =
    Se vieron más { $seen ->
        [eggs] huevos
        [larvae] larvas
        [pupae] pupas
       *[workers] obreras
    } de lo esperado ({ $on }).
notice-census-fewer =
    Se vieron menos { $seen ->
        [eggs] huevos
        [larvae] larvas
        [pupae] pupas
       *[workers] obreras
    } de lo esperado ({ $on }).
notice-census-sooner =
    Lo que se vio de { $seen ->
        [eggs] los huevos
        [larvae] las larvas
        [pupae] las pupas
       *[workers] las obreras
    } ({ $on }) dice que esta cría va deprisa.
notice-census-later =
    Lo que se vio de { $seen ->
        [eggs] los huevos
        [larvae] las larvas
        [pupae] las pupas
       *[workers] las obreras
    } ({ $on }) dice que esta cría va despacio.

## Estaciones y reposo

notice-brood-no-forecast = Sin previsión para la cría a { DEGREES($value) }: las cifras valen de { DEGREES($low_c) } a { DEGREES($high_c) }.
notice-rest-over =
    Su reposo debía terminar hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: caliéntala, ofrece primero azúcar y pon su estado en «Bien». Hasta entonces cuenta como en reposo.
notice-rest-by-sensor = Desde hace { $days } días su sensor mide { DEGREES($mean_c) } de media, en la época de su reposo: cuenta como en reposo y no se da comida. Pon su estado en «En reposo» para decir cuándo debe despertar.
notice-rest-over-by-sensor = Tras { $cold } días fríos su sensor mide { DEGREES($mean_c) } desde hace { $days } días: con eso su reposo ha terminado, y recibe comida otra vez, primero azúcar. Pon su estado en «Bien».
notice-wakes-later =
    Según su sensor, { $warm } días de su reposo fueron demasiado cálidos para contar, así que despierta { $later ->
        [one] { $later } día
       *[other] { $later } días
    } más tarde de lo fijado.
notice-rest-unmarked = Está a { DEGREES($mean_c) } en la época de su reposo (lo normal: { DEGREES($low_c) } a { DEGREES($high_c) }, práctica común): si reposa, pon su estado en «En reposo», y no se dará comida.
notice-rest-missed = Esta especie reposa de { $low_months } a { $high_months } meses en invierno, de { DEGREES($low_c) } a { DEGREES($high_c) }, y ya debería haber empezado; no hay reposo marcado. Más vale tarde que nunca: enfríala a lo largo de unos { $ramp_days } días (práctica común).
notice-rest-after-first = Esta especie reposa en invierno y no hay reposo marcado, pero sus primeras obreras deberían nacer entre el { $low_on } y el { $high_on }: déjala caliente hasta que estén y hayan comido; después enfríala hasta { DEGREES($low_c, unit: "none") } a { DEGREES($high_c) } a lo largo de unos { $ramp_days } días (práctica común).
notice-rest-larvae-wait = Probablemente unas { $low } a { $high } larvas esperan en el nido hasta que despierte; los huevos y las pupas se pierden con el frío. No hace falta mirar.
notice-rest-no-brood = Probablemente ya no queda cría en el nido: los huevos y las pupas se pierden con el frío, y la reina vuelve a poner cuando la colonia está despierta y caliente. No hace falta mirar.
notice-rest-begins-summer = Su reposo de verano puede empezar en { $low } a { $high } días: cierra su nido y no toma comida. Cuando ya no tome nada, pon su estado en «En reposo» (práctica común).
notice-rest-begins = Su hibernación puede empezar en { $low } a { $high } días, cuando el día baje a unas { $hours } horas: enfríala hasta { DEGREES($low_c) } a { DEGREES($high_c) } a lo largo de unos { $ramp_days } días. Un margen, no una regla (práctica común).
notice-rest-may-end =
    El reposo puede terminar ya, como muy tarde en { $days ->
        [one] { $days } día
       *[other] { $days } días
    } (práctica común).
notice-tint-offered = Se ofreció agua azucarada con color: mira a las 1, 8, 24 y 72 horas a través de gásteres claros y estirados y en la cría, y di en una revisión dónde se ve (práctica común; las hormigas oscuras lo esconden).
notice-tint-in-gasters = Color en el gáster: las obreras bebieron, y quizá se lo han pasado entre ellas.
notice-tint-in-brood = Color en la cría: lo que bebieron las obreras llegó a las larvas.
notice-tint-nowhere = No se vio color. Eso dice poco: los gásteres oscuros o vacíos lo esconden.
