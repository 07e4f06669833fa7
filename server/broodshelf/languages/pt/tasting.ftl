## Degustações: de que gosta uma colônia.

tasting-title = De que gostam
tasting-about = Uma degustação descobre de que comida gostam mais: a ronda oferece uma de cada vez e você diz em que deu. Um alimento novo por semana, nunca enquanto fundam ou se adaptam.

tasting-not-now = Agora não ({ $state }): uma recusa não diria nada.
tasting-kind = Tipo de comida
tasting-foods = Alimentos, de 2 a 5
tasting-pick = Escolha de 2 a 5 alimentos.
tasting-go = Começar a degustação
tasting-started = A degustação começou
tasting-none = Do que comem não há dois alimentos para comparar.
tasting-since = Desde { $day }
tasting-told = O que disse até agora
tasting-wait = O plano escolhe o primeiro alimento com a próxima conexão.
tasting-not-offered = Ainda não oferecido

tasting-next = A seguir: { $food }, { $due }.

tasting-taken = Tomado em cerca de { $mean } %, { $low } a { $high }
tasting-offers = { $count ->
    [one] { $count } oferta
   *[other] { $count } ofertas
  }
tasting-offers-and-likes = { $count ->
    [one] { $others ->
        [one] { $count } oferta e o que tomou { $others } colônia parecida
       *[other] { $count } oferta e o que tomaram { $others } colônias parecidas
      }
   *[other] { $others ->
        [one] { $count } ofertas e o que tomou { $others } colônia parecida
       *[other] { $count } ofertas e o que tomaram { $others } colônias parecidas
      }
  }
tasting-best = favorito provável a { $percent } %
tasting-range = A barra é a estimativa; a linha, a sua faixa.
tasting-food = Comida
tasting-offered = Ofertas
tasting-share = Tomado
tasting-spread = Faixa
tasting-favourite = Favorito
tasting-end = Terminar a degustação
tasting-ended = A degustação terminou
tasting-part = Parte da degustação: { $name }
tasting-here = Isto conta para a degustação em curso.
tasting-earlier = Degustações anteriores
tasting-days = { $from } a { $to }
tasting-tally = { $checked ->
    [one] { $food }: tomado { $taken } de { $checked } vez
   *[other] { $food }: tomado { $taken } de { $checked } vezes
  }
tasting-unchecked = { $food }: nunca verificado
