### Con qué empiezan los días de un grupo de hormigas. Nombres, años, revistas y cifras quedan como se publicaron.

brood-source-lasius = Lasius niger a { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, de segunda mano: 13,5 días como huevo, 7,5 como larva y 16 como pupa en las primeras de la primera puesta; las larvas descansan a { DEGREES(17) } (Kipyatkov et al. 2004, resumen); el otro umbral, la mitad de una puesta y las puestas siguientes: práctica común
brood-source-tetramorium = Tetramorium y Pheidole, 38 días a { DEGREES(25) }: práctica común, sin fuente
brood-source-solenopsis = 36 días a { DEGREES(25) }: práctica común; crecimiento de 0,04 al día, Markin, Dillier & Collins 1973; la primera puesta, de memoria (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, fase por fase, de segunda mano; huevos: Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 días (Peacock & Baxter 1950, de segunda mano; de 25 a 54 días, Fowler et al. 1993); la puesta y Tapinoma: práctica común
brood-source-camponotus = Camponotus japonicus: huevo 25 días, de huevo a obrera unos 60, sin indicar la temperatura (Japanese Ant Image Database); lo demás: práctica común
brood-source-formica = 40 días a { DEGREES(25) }: práctica común, sin fuente; sin larvas en invierno: Lopatina 2018, de memoria
brood-source-myrmica = umbral por Q10 3,1 de { DEGREES(15, unit: "none") } a { DEGREES(25) }, Elmes & Wardlaw 1983; 60 días a { DEGREES(25) }: práctica común
brood-source-messor = Messor y Pogonomyrmex, 45 días a { DEGREES(25) }: práctica común, sin fuente
brood-source-slow-hunters = ponerinas y Myrmecia, 95 días a { DEGREES(25) }: práctica común, sin fuente
brood-source-other = sin cifras para este género: un punto medio de los grupos, práctica común, sin fuente
