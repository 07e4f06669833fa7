### Catas: un alimento nuevo por semana.

reason-tasting-not-started = No hay ninguna cata en marcha: empieza una si quieres saber qué les gusta.
reason-tasting-not-now =
    { $state ->
        [founding] No mientras la reina funda: un rechazo no diría nada.
        [settling] No mientras la colonia se adapta: un rechazo no diría nada.
        [resting] No durante su reposo: un rechazo no diría nada.
        [queenless_suspected] No mientras la reina está en duda: un rechazo no diría nada.
       *[other] Ahora no: la colonia ya no está aquí.
    }
reason-tasting-no-safe-food = Ninguno de estos alimentos se puede ofrecer ahora, por su origen.
reason-tasting-wait = Un alimento nuevo por semana: el próximo, desde { $until }.
reason-tasting-check-first = Mira antes qué fue del último alimento nuevo.
reason-tasting-need-paused = Ahora no toca comida de este tipo, así que no se ofrece nada.
reason-tasting-new-food = Nuevo para esta colonia: nada más nuevo en { $days } días.
reason-tasting-likes = Colonias como esta lo toman quizá en un { $share } % de las veces.
reason-tasting-learn-more =
    Se espera que lo tome en un { $share } % de las veces ({ $offers ->
        [one] una revisada
       *[other] { $offers } revisadas
    }).
