### El agua de un tubo o de un nido.

reason-water-read =
    Leído hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: { $reading }. Un depósito lleno dura aquí unos { $last } días.
reason-water-look = Nadie ha anotado cuánta agua hay, así que no se sabe: mira una vez. Si anotas el nivel, el plan puede decir cuándo toca.
reason-water-look-again =
    No se anotó nada de su agua desde hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }, más de lo que dura: otra vez no se sabe cuánta hay. Mira una vez y anota el nivel.
reason-water-unread = Nadie ha leído aún el agua; un depósito lleno debería durar aquí unos { $last } días.
reason-water-physics = Calculado con el tamaño del tubo y el calor y la sequedad de su lugar; tus lecturas lo harán más seguro.
reason-water-nest = Un nido así se humedece cada 3 a 10 días en una habitación, menos en el frío (práctica común).
reason-water-learnt = Aprendido de tus propias lecturas: un depósito lleno dura de { $low } a { $high } días.
reason-water-left-out = Se omitió una lectura del agua: un tubo de este tamaño no puede mostrarla.
reason-water-length-guessed = Nadie puso la longitud del depósito lleno: la lectura más larga, { $mm } mm, cuenta como lleno.
reason-water-length-unknown = Las lecturas en mm se omiten hasta que pongas la longitud del depósito lleno.
reason-water-fill = Se llena con unos { VOLUME($ml) }.
reason-water-damp-end = Mantén un extremo húmedo y otro seco: las hormigas eligen (práctica común).
reason-water-drinker = Tantas hormigas necesitan también un bebedero en la zona de forrajeo (práctica común).
reason-leak-suspected =
    Perdió más agua de la que explican secarse y beber: fuga probable al { $chance } %. A ese ritmo está seco en { $days ->
        [one] { $days } día
       *[other] { $days } días
    }. Mira hoy si el suelo o la cría están mojados; puede ser otra cosa.
