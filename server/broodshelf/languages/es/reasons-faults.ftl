### Primeros pasos cuando algo va mal, y tras una comida que puede llevar veneno.

reason-leak = Comunicado: gotea. Primeros pasos: pon el tubo de pie sobre un platillo con el algodón hacia arriba, mira si hay cría mojada, pon un tubo nuevo al lado. No lo sacudas.
reason-flood = Primeros pasos: inclínalo para que el agua se aleje de la cría, recógela con algodón, ofrece un tubo seco.
reason-mould = Manchas lejanas: haz una foto y mira otra vez en 7 días (práctica común). Cerca de la cría o un tercio del algodón: ofrece hoy un tubo nuevo. El algodón amarillo por sí solo no es nada.
reason-mould-far = Una mancha lejana no es alarma: haz una foto ahora y mira en 7 días si ha crecido (práctica común). El algodón amarillo por sí solo no es nada.
reason-mould-look =
    Hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    } se comunicó una mancha de moho: compárala con la foto. No es mayor: déjala. Más cerca de la cría o un tercio del algodón: comunícala otra vez como cercana (práctica común).
reason-mould-near = Primeros pasos: ofrece hoy un tubo nuevo, boca con boca junto a este, y deja el viejo a la luz. No rasques, no rocíes, no sacudas (práctica común).
reason-fault-over =
    Comunicado hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }, y nadie ha dicho desde entonces que haya pasado. Si ha pasado, márcalo como resuelto; si no, comunícalo otra vez.
reason-escape = Primeros pasos: cierra la tapa, renueva el antifugas, recoge a las fugadas con un pincel suave. No las sueltes nunca fuera.
reason-mites = Primeros pasos: da de comer a esta colonia la última, usa sus propias pinzas, tenla aparte, anota de qué lote comió.
reason-many-dead = Primeros pasos: deja de dar la última comida ofrecida, retírala, revisa el agua y la temperatura, y apunta lo que ves.
reason-heater = Primeros pasos: apaga el calefactor, lleva la colonia a un lugar de { DEGREES(20) } a { DEGREES(25) } (práctica común), no la enfríes con una nevera.
reason-risk-out =
    Se dio aunque estaba rechazado, u otra colonia recibió lo mismo del mismo lote: puede llevar veneno. Retira enseguida todo lo que quede, { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    } después de ofrecerlo.
reason-risk-look =
    Aquí se dio comida que puede llevar veneno hace { $days ->
        [one] { $days } día
       *[other] { $days } días
    }: mira una vez al día durante { $of } días; este es el día { $day }.
reason-risk-times = Tiempos publicados hasta morir la mitad de las obreras: 1 a 4 días con dosis fuertes de tres venenos de cebo (Rust et al. 2004), 8 días con una dosis débil de ácido bórico (Klotz et al. 1997).
reason-risk-signs = Muchas muertas, obreras lentas o con espasmos: comunica «Muchas muertas», y da agua limpia y agua azucarada fresca (práctica común).
