reckon-sugar-water = Eau sucrée
reckon-dilute = Diluer miel, sirop ou confiture
reckon-cooling = Quand une solution tiède est assez froide
reckon-prey = Proies pour une colonie
reckon-tube-water = Eau d’un tube à essai
reckon-brood = De l’œuf à l’ouvrière

reckon-formula-prey = pièces = besoin de protéines / (masse fraîche x part de protéines) ; besoin = 20 mg par g d’ouvrières et par jour
reckon-formula-sugar-water = sucre = concentration x masse ; masse = volume x densité(concentration) ; mol/L = g/L / 342.2965
reckon-formula-dilute = aliment sucré = concentration x masse / part de sucres de l’aliment ; le reste est de l’eau
reckon-formula-cooling = T(t) = pièce + (départ - pièce) exp(-k t)
reckon-formula-tube-water = diffusion de Stefan de la vapeur par l’air et le coton vers la pièce, fois 2 pour un tube en usage
reckon-formula-brood = jours = degrés-jours d’un stade / (température - seuil), jour et nuit chacun pour moitié

reckon-source-prey = Macom & Porter 1995 ; compositions : Finke 2002/2013 et USDA SR26 ; tailles et gestes : usage courant
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, saccharose, { DEGREES(20) } (de seconde main) ; densité apparente du sucre 0,85 g/mL (de mémoire)
reckon-source-dilute = compositions : USDA SR26 ; densité comme celle du saccharose à cette concentration
reckon-source-cooling = loi de refroidissement de Newton ; k des récipients : notre propre estimation, ou tes deux mesures
reckon-source-tube-water = Bird, Stewart & Lightfoot (tube de diffusion) ; pression de vapeur à 0,1 % près de l’IAPWS ; facteur d’un tube en usage : usage courant, sans source
reckon-source-brood = par groupe d’espèces ; la dernière ligne nomme la source de celui-ci

reckon-limits-prey = une colonie avec un couvain en croissance et du sucre à disposition, une seule espèce mesurée ; d’autres colonies diffèrent du simple au double
reckon-limits-sugar-water = 0 à 67,09 % en masse, { DEGREES(20) } ; en volume, une cuillère peut tenir un dixième de plus ou de moins
reckon-limits-dilute = jusqu’aux sucres de l’aliment lui-même ; les sucres du miel diffèrent du saccharose d’environ 1 % en volume
reckon-limits-cooling = air calme, sans couvercle ; la pièce au moins un demi-degré sous le but
reckon-limits-tube-water = d’un tiers à trois fois ce temps, selon le coton, les gestes et les courants d’air ; des relevés de ton tube valent mieux
reckon-limits-brood = dans les températures étudiées pour le groupe ; en dehors, le calcul refuse
