### Presas: cuáles, de qué tamaño, cómo se ofrecen.

reason-prey-size = Estas obreras retiran enteras presas de hasta unos { $longest_mm } mm; las más largas se cortan o se dejan fuera (práctica común).
reason-prey-first-third = Una primera ración es un tercio de lo que dice el tamaño de la colonia; crece la mitad cuando se lo llevan todo, despacio cuando nadie revisa (práctica común).
reason-portion-rises = Una ración sube paso a paso hasta lo que dice el tamaño de la colonia: como mucho la mitad tras «Se lo llevaron todo», despacio donde nadie revisó, nada si quedó algo (práctica común).
reason-portion-at-once =
    Nunca más de lo que necesitan para { $days ->
        [one] { $days } día
       *[other] { $days } días
    } de una vez, por mucho que falte hasta la próxima: lo que sobra se estropea (práctica común).
reason-portion-tiny = La primera comida de su vida es la ración más pequeña que hay (práctica común).
reason-prey-smallest =
    Es la ración más pequeña a mano; les da para { $days ->
        [one] cerca de { $days } día
       *[other] unos { $days } días
    }.
reason-prey-most = { $pieces } piezas son lo máximo que debería tener una ración (práctica común).
reason-prey-banked = Una colonia pequeña aprovecha una presa { $days } días como mucho, por grande que sea (práctica común).
reason-prey-dead = Mátala antes: una presa viva puede herir a obreras y cría, o esconderse (práctica común).
reason-prey-dead-small = Obreras pequeñas: solo recién muerta (práctica común).
reason-prey-dead-in-tube = En un tubo de ensayo solo presas recién muertas: nunca nada vivo.
reason-prey-too-big-alive = Cazan con la vista, pero esta presa es más larga que una obrera o hay que cortarla: mátala antes.
reason-prey-stunned = Cazan con la vista: una presa que aún se mueve se encuentra antes. Atúrdela para que no pueda morder ni patear (práctica común).
reason-prey-live = Viva porque lo pediste: más corta que una obrera, en una zona de forrajeo, nunca en un tubo. Retírala si no le hacen caso en una hora (práctica común).
reason-prey-piece = Una migaja: retírala antes de que se estropee.
reason-prey-uncounted = Nadie publica la proteína de este alimento, así que no se cuenta.
