### Por qué toca comida, y cuánta.

reason-interval-band = Lo normal para este tipo y tamaño: cada { $low } a { $high } días (práctica común).
reason-interval-keeper =
    Lo fijaste así: { $days ->
        [one] cada día
       *[other] cada { $days } días
    }.
reason-interval-chosen = En los días y a la hora que fijaste.
reason-last-fed =
    Ofrecido por última vez hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }.
reason-never-fed = Aún no hay ninguna comida anotada.
reason-no-larvae = No se vieron larvas: la proteína puede esperar más.
reason-slow-species = Esta especie come despacio: los intervalos son la mitad más largos (práctica común).
reason-ignored-did-not-count = A lo último ofrecido no le hicieron caso, así que no cuenta.
reason-leftovers =
    Ofrecido hace { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    }; retira el resto antes de que se estropee (práctica común: pasadas { $after } horas).
reason-crop-lasts =
    Un buche lleno dura, a { DEGREES($temp_c) }, { $days ->
        [one] cerca de { $days } día
       *[other] unos { $days } días
    }; la mitad se guarda de margen.
reason-freshness-rules =
    Lo ofrecido sigue bueno { $days ->
        [one] cerca de { $days } día
       *[other] unos { $days } días
    } (práctica común); más cantidad no dura más.
reason-amount-rules = Se ofrecieron { $mg } mg de azúcar y la colonia usa unos { $mg_per_day } mg al día, así que se acaba antes.
reason-band-rules =
    Según la estimación sería otro ritmo; se mantiene en { $days ->
        [one] { $days } día
       *[other] { $days } días
    }, entre la mitad y el doble de los { $low } a { $high } días normales (práctica común).
reason-brood-grows =
    { $larvae ->
        [one] Cerca de { $larvae } larva necesita
       *[other] Unas { $larvae } larvas necesitan
    } { $mg_per_day } mg de proteína al día a { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg de proteína son { $days ->
        [one] cerca de { $days } día
       *[other] unos { $days } días
    } de crecimiento.
reason-bank-rules =
    La cría no puede guardar proteína más de { $days ->
        [one] { $days } día
       *[other] unos { $days } días
    }, por grande que sea la presa (práctica común).
reason-no-brood-expected = No se esperan nuevas obreras, y nadie ha contado larvas en las últimas 4 semanas: solo un poco de proteína (práctica común).
reason-quiet-season = Según su reloj anual esta especie se frena ahora, y nadie ha contado larvas en las últimas 4 semanas: solo un poco de proteína. A las larvas que cuentes se les da comida (práctica común).
reason-maintenance-only = Sin larvas: basta un poco de proteína para mantener bien a las obreras.
reason-appetite-learnt =
    Aprendido de { $checks ->
        [one] { $checks } revisión
       *[other] { $checks } revisiones
    }: esta colonia come unas { $times } veces lo normal.
reason-appetite-at-least =
    Se lo llevaron todo en cada revisión que dice algo ({ $checks ->
        [one] una
       *[other] { $checks }
    }): esta colonia come al menos unas { $times } veces lo normal. Cuánto más, se verá cuando quede algo.
reason-appetite-at-most =
    Quedó algo en cada revisión que dice algo ({ $checks ->
        [one] una
       *[other] { $checks }
    }): esta colonia come como mucho unas { $times } veces lo normal. Cuánto menos, no se puede aprender mientras quede algo hasta de la ración más pequeña.
reason-appetite-hidden = Cuánto come esta colonia no se puede aprender de estas revisiones: apenas podían salir de otro modo, como una gota entera ante un puñado de hormigas. El plan se queda en lo normal para su tamaño.
reason-refusal-food = Dejaron lo último ofrecido: échale la culpa primero a la comida y prueba otra.
reason-refusal-state = Dejaron lo último ofrecido, pero la colonia se está adaptando, se frena antes de su reposo, o toda su cría son pupas: eso no dice nada de su apetito.
reason-protein-outweighs-sugar = Más proteína ({ $protein_mg } mg) que azúcar ({ $sugar_mg } mg) en { $weeks } semanas: una dieta así acortó la vida de las obreras (Dussutour y Simpson 2012). Ofrece más azúcar; las larvas suavizan el daño.
reason-census-guessed = Nadie ha contado aún: por la fase se suponen unas { $workers } obreras (práctica común).
reason-census-unknown = Nadie ha contado aún y no hay fase puesta: anota un recuento; hasta entonces las cantidades son a ojo.
reason-census-old =
    El último recuento tiene { $days ->
        [one] { $days } día
       *[other] { $days } días
    }; una mirada nueva daría más seguridad.
reason-workers-fell-to-zero = La última mirada no encontró obreras donde las había. Si fue un descuido, anota un recuento nuevo.
