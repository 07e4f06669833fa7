### De onde partem os dias de um grupo de formigas. Nomes, anos, revistas e números ficam como foram publicados.

brood-source-lasius = Lasius niger a { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, em segunda mão: 13,5 dias como ovo, 7,5 como larva, 16 como pupa nas primeiras da primeira ninhada; as larvas repousam a { DEGREES(17) } (Kipyatkov et al. 2004, resumo); o outro limiar, o meio de uma ninhada e as ninhadas seguintes: prática comum
brood-source-tetramorium = Tetramorium e Pheidole, 38 dias a { DEGREES(25) }: prática comum, sem fonte
brood-source-solenopsis = 36 dias a { DEGREES(25) }: prática comum; crescimento de 0,04 por dia, Markin, Dillier & Collins 1973; primeira ninhada de memória (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, fase a fase, em segunda mão; ovos: Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 dias (Peacock & Baxter 1950, em segunda mão; de 25 a 54 dias, Fowler et al. 1993); postura e Tapinoma: prática comum
brood-source-camponotus = Camponotus japonicus: ovo 25 dias, do ovo à operária cerca de 60, temperatura não indicada (Japanese Ant Image Database); o resto: prática comum
brood-source-formica = 40 dias a { DEGREES(25) }: prática comum, sem fonte; sem larvas no inverno: Lopatina 2018, de memória
brood-source-myrmica = limiar por Q10 3,1 de { DEGREES(15, unit: "none") } a { DEGREES(25) }, Elmes & Wardlaw 1983; 60 dias a { DEGREES(25) }: prática comum
brood-source-messor = Messor e Pogonomyrmex, 45 dias a { DEGREES(25) }: prática comum, sem fonte
brood-source-slow-hunters = poneríneas e Myrmecia, 95 dias a { DEGREES(25) }: prática comum, sem fonte
brood-source-other = sem números para este gênero: um meio dos grupos, prática comum, sem fonte
