## Catas: qué le gusta a una colonia.

tasting-title = Qué les gusta
tasting-about = Una cata averigua qué comida prefieren: la ronda las ofrece por turno y tú dices qué fue de cada una. Un alimento nuevo por semana, nunca mientras fundan o se adaptan.

tasting-not-now = Ahora no ({ $state }): un rechazo no diría nada.
tasting-kind = Tipo de comida
tasting-foods = Alimentos, de 2 a 5
tasting-pick = Elige de 2 a 5 alimentos.
tasting-go = Empezar la cata
tasting-started = La cata ha empezado
tasting-none = De lo que comen no hay dos alimentos que comparar.
tasting-since = Desde { $day }.
tasting-told = Lo que ha dicho hasta ahora
tasting-wait = El plan elige el primer alimento con la próxima conexión.
tasting-not-offered = Aún no ofrecido

tasting-next = Siguiente: { $food }, { $due }.

tasting-taken = Lo toman en un { $mean } %, { $low } a { $high }
tasting-offers = { $count ->
    [one] { $count } vez ofrecido
   *[other] { $count } veces ofrecido
  }
tasting-offers-and-likes = { $count ->
    [one] { $others ->
        [one] { $count } vez ofrecido y lo que tomó { $others } colonia parecida
       *[other] { $count } vez ofrecido y lo que tomaron { $others } colonias parecidas
      }
   *[other] { $others ->
        [one] { $count } veces ofrecido y lo que tomó { $others } colonia parecida
       *[other] { $count } veces ofrecido y lo que tomaron { $others } colonias parecidas
      }
  }
tasting-best = favorito probable al { $percent } %
tasting-range = La barra es la estimación; la línea, su margen.
tasting-food = Comida
tasting-offered = Ofrecido
tasting-share = Tomado
tasting-spread = Margen
tasting-favourite = Favorito
tasting-end = Terminar la cata
tasting-ended = La cata ha terminado
tasting-part = Parte de la cata: { $name }
tasting-here = Esto cuenta para la cata en marcha.
tasting-earlier = Catas anteriores
tasting-days = { $from } a { $to }
tasting-tally = { $checked ->
    [one] { $food }: tomado { $taken } de { $checked } vez
   *[other] { $food }: tomado { $taken } de { $checked } veces
  }
tasting-unchecked = { $food }: nunca revisado
