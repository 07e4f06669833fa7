### Lo que se dice antes de que el criador se vaya.

reason-lasts-too-short =
    { $need }: tras rellenar dura { $lasts ->
        [one] cerca de { $lasts } día
       *[other] unos { $lasts } días
    }.
reason-needs-nobody =
    No necesita a nadie durante { $days ->
        [one] { $days } día
       *[other] { $days } días
    }.
reason-mostly-nobody = La mayoría de las colonias pequeñas no necesitan a nadie de 7 a 10 días (práctica común); una mirada entre medias no hace daño.
reason-mend-before = Arregla esto antes de irte: { $fault }.
