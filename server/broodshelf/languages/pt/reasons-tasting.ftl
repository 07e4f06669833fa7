### Degustações: um alimento novo por semana.

reason-tasting-not-started = Nenhuma degustação em curso: comece uma se quiser saber de que gostam.
reason-tasting-not-now =
    { $state ->
        [founding] Não enquanto a rainha funda: uma recusa não diria nada.
        [settling] Não enquanto a colônia se adapta: uma recusa não diria nada.
        [resting] Não durante o repouso: uma recusa não diria nada.
        [queenless_suspected] Não enquanto a rainha está em dúvida: uma recusa não diria nada.
       *[other] Agora não: a colônia já não está aqui.
    }
reason-tasting-no-safe-food = Nenhum destes alimentos pode ser oferecido agora, pela sua origem.
reason-tasting-wait = Um alimento novo por semana: a partir de { $until } o próximo.
reason-tasting-check-first = Veja antes em que deu o último alimento novo.
reason-tasting-need-paused = Agora não é hora de comida deste tipo, por isso nada é oferecido.
reason-tasting-new-food = Novo para esta colônia: nada mais de novo por { $days } dias.
reason-tasting-likes = Colônias como esta tomam talvez em { $share } % das vezes.
reason-tasting-learn-more =
    Espera-se que tome em { $share } % das vezes ({ $offers ->
        [one] { $offers } verificada
       *[other] { $offers } verificadas
    }).
