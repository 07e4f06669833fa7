### Was ein Rechner gefunden hat, Zeile für Zeile: nur der Server sagt es, wo immer man ihn fragt.

reckoned-water-days = Reicht etwa { $best } Tage, { $low } bis { $high }
reckoned-water-loss = Verliert etwa { $best } mm am Tag, { $low } bis { $high }
reckoned-brood-whole = Vom Ei zur Arbeiterin etwa { $best } Tage, { $low } bis { $high }
reckoned-brood-eggs = Als Ei etwa { $best } Tage, { $low } bis { $high }
reckoned-brood-larvae = Als Larve etwa { $best } Tage, { $low } bis { $high }
reckoned-brood-pupae = Als Puppe etwa { $best } Tage, { $low } bis { $high }
reckoned-brood-source = Quelle für diese Gruppe: { $brood_group }
reckoned-first-workers =
    Aus { $eggs ->
        [one] { $eggs } Ei
       *[other] { $eggs } Eiern
    } { $best ->
        [one] wird etwa { $best } Arbeiterin
       *[other] werden etwa { $best } Arbeiterinnen
    }, { $low } bis { $high } (Ito 1988: eine Art von Camponotus; bei anderen kann es ganz anders sein)
reckoned-weigh-sugar = Zucker: { $g } g
reckoned-weigh-sweet = { $food }: { $g } g
reckoned-weigh-water = Wasser: { $g } g, das sind { VOLUME($ml) }
reckoned-makes = Ergibt { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent } % der Masse, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL bei { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } nach { $by ->
        [volume] Volumen
       *[mass] Masse
    }: { $percent } % der Masse
reckoned-keeps = Hält im Kühlschrank etwa { $days } Tage, { $low } bis { $high } (gängige Praxis)
reckoned-wait = Warte etwa { $best } min, { $low } bis { $high }
reckoned-cool-already = Es ist schon kühl genug
reckoned-serve = { $portion }
reckoned-serving-protein =
    Etwa { $mg } mg Eiweiß, { $low } bis { $high }; die Kolonie braucht etwa { $need } mg in { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    }
reckoned-serving-unknown = Der Eiweißgehalt ist nicht bekannt
reckoned-lasts =
    Reicht ihnen etwa { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    }
