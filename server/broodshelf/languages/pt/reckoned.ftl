### O que uma calculadora encontrou, linha a linha: só o servidor o diz, onde quer que se pergunte.

reckoned-water-days = Dura cerca de { $best } dias, { $low } a { $high }
reckoned-water-loss = Perde cerca de { $best } mm por dia, { $low } a { $high }
reckoned-brood-whole = De ovo a operária, cerca de { $best } dias, { $low } a { $high }
reckoned-brood-eggs = Como ovo, cerca de { $best } dias, { $low } a { $high }
reckoned-brood-larvae = Como larva, cerca de { $best } dias, { $low } a { $high }
reckoned-brood-pupae = Como pupa, cerca de { $best } dias, { $low } a { $high }
reckoned-brood-source = Fonte para este grupo: { $brood_group }
reckoned-first-workers =
    De { $eggs ->
        [one] { $eggs } ovo
       *[other] { $eggs } ovos
    } { $best ->
        [one] vem cerca de { $best } operária
       *[other] vêm cerca de { $best } operárias
    }, { $low } a { $high } (Ito 1988: uma espécie de Camponotus; em outras pode ser bem diferente)
reckoned-weigh-sugar = Açúcar: { $g } g
reckoned-weigh-sweet = { $food }: { $g } g
reckoned-weigh-water = Água: { $g } g, que são { VOLUME($ml) }
reckoned-makes = Dá { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent } % em massa, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL a { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } em { $by ->
        [volume] volume
       *[mass] massa
    }: { $percent } % em massa
reckoned-keeps = Aguenta no refrigerador cerca de { $days } dias, { $low } a { $high } (prática comum)
reckoned-wait = Espere cerca de { $best } min, { $low } a { $high }
reckoned-cool-already = Já esfriou o bastante
reckoned-serve = { $portion }
reckoned-serving-protein =
    Cerca de { $mg } mg de proteína, { $low } a { $high }; a colônia precisa de cerca de { $need } mg em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }
reckoned-serving-unknown = A proteína não é conhecida
reckoned-lasts =
    Chega para cerca de { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }
