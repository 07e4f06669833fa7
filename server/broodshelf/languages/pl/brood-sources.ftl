### Od czego zaczynają się dni grupy mrówek. Nazwiska, lata, czasopisma i liczby zostają tak, jak je opublikowano.

brood-source-lasius = Lasius niger w { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, z drugiej ręki: 13,5 dnia jako jajo, 7,5 jako larwa, 16 jako poczwarka u pierwszych z pierwszego czerwiu; larwy spoczywają w { DEGREES(17) } (Kipyatkov et al. 2004, streszczenie); drugi próg, środek czerwiu i późniejszy czerw: praktyka hodowców
brood-source-tetramorium = Tetramorium i Pheidole, 38 dni w { DEGREES(25) }: praktyka hodowców, bez źródła
brood-source-solenopsis = 36 dni w { DEGREES(25) }: praktyka hodowców; wzrost 0,04 na dobę, Markin, Dillier & Collins 1973; pierwszy czerw z pamięci (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, stadium po stadium, z drugiej ręki; jaja: Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 dni (Peacock & Baxter 1950, z drugiej ręki; od 25 do 54 dni, Fowler et al. 1993); składanie jaj i Tapinoma: praktyka hodowców
brood-source-camponotus = Camponotus japonicus: jajo 25 dni, od jaja do robotnicy około 60, temperatury nie podano (Japanese Ant Image Database); reszta: praktyka hodowców
brood-source-formica = 40 dni w { DEGREES(25) }: praktyka hodowców, bez źródła; zimą bez larw: Lopatina 2018, z pamięci
brood-source-myrmica = próg z Q10 3,1 od { DEGREES(15, unit: "none") } do { DEGREES(25) }, Elmes & Wardlaw 1983; 60 dni w { DEGREES(25) }: praktyka hodowców
brood-source-messor = Messor i Pogonomyrmex, 45 dni w { DEGREES(25) }: praktyka hodowców, bez źródła
brood-source-slow-hunters = Ponerinae i Myrmecia, 95 dni w { DEGREES(25) }: praktyka hodowców, bez źródła
brood-source-other = brak liczb dla tego rodzaju: środek grup, praktyka hodowców, bez źródła
