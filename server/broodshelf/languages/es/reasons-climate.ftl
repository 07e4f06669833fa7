### Calor, sequedad y el reposo anual: por qué hay que hacer algo.

reason-too-hot = { DEGREES($temperature_c) }: por encima de { DEGREES($limit_c) } esta especie está en peligro ({ $source }). Apaga la calefacción, apártala del sol, dale un extremo fresco y uno húmedo. Nada de nevera. Anota una lectura nueva cuando esté más fresco.
reason-too-cold = { DEGREES($temperature_c) }: por debajo de { DEGREES($limit_c) } esta especie está en peligro mientras está despierta ({ $source }). Llévala hoy a un lugar más cálido y deja que se caliente despacio. Anota una lectura nueva cuando haga más calor.
reason-overheating = El sensor mide { DEGREES($temperature_c) }: por encima de { DEGREES($limit_c) } esta especie está en peligro ({ $source }). Apaga la calefacción, apártala del sol, dale un extremo fresco y uno húmedo. Nada de nevera.
reason-freezing = El sensor mide { DEGREES($temperature_c) }: el agua se congela y el tubo puede reventar. Llévala a un lugar fresco por encima de { DEGREES($limit_c) }, sin prisa y sin calefacción.
reason-rest-colder = El sensor mide { DEGREES($temperature_c) }, menos de los { DEGREES($limit_c) } que aguanta esta especie en su reposo (práctica común). Llévala a un lugar fresco por encima de eso, sin prisa y sin calefacción.
reason-rising-fast = Está a { DEGREES($temperature_c) } y sube { DEGREES_APART($rise_c) } por hora: a este ritmo pasa en dos horas de { DEGREES($limit_c) }, donde esta especie está en peligro ({ $source }). Mira si le da el sol o la calefacción no tiene fin, y quita eso.
reason-heater-on = Desde hace { $hours } horas está { DEGREES_APART($by_c) } más caliente de lo normal a esta hora: ahora { DEGREES($temperature_c) }. Si la calienta un calefactor, mira si el termostato se ha atascado; si no, busca el sol o un radiador.
reason-heater-off = Desde hace { $hours } horas está { DEGREES_APART($by_c) } más fría de lo normal a esta hora: ahora { DEGREES($temperature_c) }. Si la calienta un calefactor, mira si aún funciona; si no, busca una ventana abierta.
reason-fridge-open = En la nevera hay { DEGREES($temperature_c) } en vez de { DEGREES($usual_c) }: mira si la puerta está cerrada y la nevera funciona. Una colonia que se calienta en su reposo gasta aquello de lo que vive.
reason-dry-air = El aire tiene { $humidity_pct } % de humedad en vez de { $usual_pct } %: el nido se seca más deprisa que antes. Mira su extremo húmedo y dale agua si está seco.
reason-rest-water =
    Mirado hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }. En el reposo se mira el agua cada { $low } a { $high } días (práctica común).
reason-rest-airing = Abre la caja de la nevera un minuto una vez por semana: el aire de dentro está gastado (práctica común). Aireada por última vez hace { $days } días.
reason-wake-up = Este día termina su reposo: caliéntala a lo largo de unos { $ramp_days } días, ofrece primero azúcar (práctica común) y pon su estado en «Bien».
reason-wake-up-summer = Este día termina su reposo de verano: pon su estado en «Bien» y ofrece de nuevo azúcar y presas pequeñas (práctica común).
reason-rest-too-warm = Está marcada en reposo, pero su lugar tiene { DEGREES($mean_c) }; a más de { DEGREES($limit_c) } está despierta y se come sus reservas (práctica común). O está en un sitio más fresco: elige ese lugar. O enfríala. O pon su estado en «Bien». Hasta entonces se le ofrece comida como si estuviera despierta.
reason-rest-not-for-species = Está marcada en reposo, pero esta especie no tiene reposo anual: tenla al menos a { DEGREES($least_c) } (práctica común; ahora { DEGREES($mean_c) }) y pon su estado en «Bien». Hasta entonces se le da comida como si estuviera despierta.
reason-rest-frost = Demasiado frío para su reposo: { DEGREES($coldest_c) }. Llévala hoy a un lugar por encima de { DEGREES($limit_c) }, sin calentarla (práctica común).

source-common-practice = práctica común
