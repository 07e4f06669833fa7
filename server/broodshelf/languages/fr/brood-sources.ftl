### D’où partent les jours d’un groupe de fourmis. Noms, années, revues et chiffres restent tels que publiés.

brood-source-lasius = Lasius niger à { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, de seconde main : 13,5 jours à l’état d’œuf, 7,5 de larve, 16 de nymphe pour les premières du premier couvain ; les larves se reposent à { DEGREES(17) } (Kipyatkov et al. 2004, résumé) ; l’autre seuil, le milieu d’un couvain et les couvains suivants : usage courant
brood-source-tetramorium = Tetramorium et Pheidole, 38 jours à { DEGREES(25) } : usage courant, sans source
brood-source-solenopsis = 36 jours à { DEGREES(25) } : usage courant ; croissance de 0,04 par jour, Markin, Dillier & Collins 1973 ; premier couvain de mémoire (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, stade par stade, de seconde main ; œufs : Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 jours (Peacock & Baxter 1950, de seconde main ; 25 à 54 jours, Fowler et al. 1993) ; ponte et Tapinoma : usage courant
brood-source-camponotus = Camponotus japonicus : œuf 25 jours, de l’œuf à l’ouvrière environ 60, température non indiquée (Japanese Ant Image Database) ; le reste : usage courant
brood-source-formica = 40 jours à { DEGREES(25) } : usage courant, sans source ; pas de larves en hiver : Lopatina 2018, de mémoire
brood-source-myrmica = seuil d’après un Q10 de 3,1 entre { DEGREES(15, unit: "none") } et { DEGREES(25) }, Elmes & Wardlaw 1983 ; 60 jours à { DEGREES(25) } : usage courant
brood-source-messor = Messor et Pogonomyrmex, 45 jours à { DEGREES(25) } : usage courant, sans source
brood-source-slow-hunters = ponérines et Myrmecia, 95 jours à { DEGREES(25) } : usage courant, sans source
brood-source-other = pas de chiffres pour ce genre : un milieu des groupes, usage courant, sans source
