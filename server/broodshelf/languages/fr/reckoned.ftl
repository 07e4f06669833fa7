### Ce qu’un calculateur a trouvé, ligne par ligne : seul le serveur le dit, où qu’on le lui demande.

reckoned-water-days = Dure environ { $best } jours, { $low } à { $high }
reckoned-water-loss = Perd environ { $best } mm par jour, { $low } à { $high }
reckoned-brood-whole = De l’œuf à l’ouvrière environ { $best } jours, { $low } à { $high }
reckoned-brood-eggs = Œuf pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-larvae = Larve pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-pupae = Nymphe pendant environ { $best } jours, { $low } à { $high }
reckoned-brood-source = Source pour ce groupe : { $brood_group }
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
