### What the days of a group of ants begin with. Names, years, journals and figures stay as they are published.

brood-source-lasius = Lasius niger at { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, second-hand: 13.5 days as eggs, 7.5 as larvae, 16 as pupae for the first of a first brood; larvae rest at { DEGREES(17) } (Kipyatkov et al. 2004, abstract); the other threshold, the middle of a brood and later broods: common practice
brood-source-tetramorium = Tetramorium and Pheidole, 38 days at { DEGREES(25) }: common practice, no source
brood-source-solenopsis = 36 days at { DEGREES(25) }: common practice; growth of 0.04 a day, Markin, Dillier & Collins 1973; first brood from memory (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, stage by stage, second-hand; eggs: Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 days (Peacock & Baxter 1950, second-hand; 25 to 54 days, Fowler et al. 1993); laying and Tapinoma: common practice
brood-source-camponotus = Camponotus japonicus: egg 25 days, egg to worker about 60, temperature not stated (Japanese Ant Image Database); the rest: common practice
brood-source-formica = 40 days at { DEGREES(25) }: common practice, no source; no larvae over winter: Lopatina 2018, from memory
brood-source-myrmica = threshold from Q10 3.1 at { DEGREES(15, unit: "none") } to { DEGREES(25) }, Elmes & Wardlaw 1983; 60 days at { DEGREES(25) }: common practice
brood-source-messor = Messor and Pogonomyrmex, 45 days at { DEGREES(25) }: common practice, no source
brood-source-slow-hunters = ponerines and Myrmecia, 95 days at { DEGREES(25) }: common practice, no source
brood-source-other = no figures for this genus: a middle of the groups, common practice, no source
