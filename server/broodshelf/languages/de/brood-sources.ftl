### Womit die Tage einer Gruppe von Ameisen beginnen. Namen, Jahre, Zeitschriften und Zahlen bleiben, wie sie veröffentlicht sind.

brood-source-lasius = Lasius niger bei { DEGREES(25) }, Matte & Billen 2021 Asian Myrmecol. 13:e013003, aus zweiter Hand: 13,5 Tage als Ei, 7,5 als Larve, 16 als Puppe bei den ersten der ersten Brut; Larven ruhen bei { DEGREES(17) } (Kipyatkov et al. 2004, Zusammenfassung); die andere Schwelle, die Mitte einer Brut und spätere Bruten: gängige Praxis
brood-source-tetramorium = Tetramorium und Pheidole, 38 Tage bei { DEGREES(25) }: gängige Praxis, keine Quelle
brood-source-solenopsis = 36 Tage bei { DEGREES(25) }: gängige Praxis; Wachstum 0,04 am Tag, Markin, Dillier & Collins 1973; erste Brut aus dem Gedächtnis (Markin, Collins & Dillier 1972)
brood-source-linepithema = Abril, Oliveras & Gómez 2010 J. Insect Sci. 10:97, Stadium für Stadium, aus zweiter Hand; Eier: Keller 1988
brood-source-monomorium = Monomorium pharaonis 38 Tage (Peacock & Baxter 1950, aus zweiter Hand; 25 bis 54 Tage, Fowler et al. 1993); Eiablage und Tapinoma: gängige Praxis
brood-source-camponotus = Camponotus japonicus: Ei 25 Tage, vom Ei zur Arbeiterin etwa 60, Temperatur nicht genannt (Japanese Ant Image Database); der Rest: gängige Praxis
brood-source-formica = 40 Tage bei { DEGREES(25) }: gängige Praxis, keine Quelle; keine Larven über den Winter: Lopatina 2018, aus dem Gedächtnis
brood-source-myrmica = Schwelle aus Q10 3,1 bei { DEGREES(15, unit: "none") } bis { DEGREES(25) }, Elmes & Wardlaw 1983; 60 Tage bei { DEGREES(25) }: gängige Praxis
brood-source-messor = Messor und Pogonomyrmex, 45 Tage bei { DEGREES(25) }: gängige Praxis, keine Quelle
brood-source-slow-hunters = Urameisen und Myrmecia, 95 Tage bei { DEGREES(25) }: gängige Praxis, keine Quelle
brood-source-other = keine Zahlen für diese Gattung: eine Mitte der Gruppen, gängige Praxis, keine Quelle
