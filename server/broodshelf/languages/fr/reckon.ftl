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

reckoned-water-days = Dure environ { $best } jours, { $low } à { $high }
reckoned-water-loss = Perd environ { $best } mm par jour, { $low } à { $high }
reckoned-brood-whole = De l’œuf à l’ouvrière environ { $best } jours, { $low } à { $high }
reckoned-brood-eggs = Œuf pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-larvae = Larve pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-pupae = Nymphe pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-source = Source pour ce groupe : { $source }
reckoned-first-workers =
    De { $eggs ->
        [one] { $eggs } œuf
       *[other] { $eggs } œufs
    }, environ { $best ->
        [one] { $best } ouvrière
       *[other] { $best } ouvrières
    }, { $low } à { $high } (Ito 1988 : une espèce de Camponotus ; chez d’autres cela peut être tout différent)
reckoned-weigh-sugar = Sucre : { $g } g
reckoned-weigh-sweet = { $food } : { $g } g
reckoned-weigh-water = Eau : { $g } g, soit { VOLUME($ml) }
reckoned-makes = Donne { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent } % en masse, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL à { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } en { $by ->
        [volume] volume
       *[mass] masse
    } : { $percent } % en masse
reckoned-keeps = Se garde environ { $days } jours au frigo, { $low } à { $high } (usage courant)
reckoned-wait = Attends environ { $best } min, { $low } à { $high }
reckoned-cool-already = C’est déjà assez froid
reckoned-serve = { $portion }
reckoned-serving-protein =
    Environ { $mg } mg de protéines, { $low } à { $high } ; la colonie a besoin d’environ { $need } mg en { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }
reckoned-serving-unknown = Ses protéines ne sont pas connues
reckoned-lasts =
    Les nourrit environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }
