### Lo que una calculadora encontró, línea a línea: solo lo dice el servidor, se le pregunte donde se le pregunte.

reckoned-water-days = Dura unos { $best } días, { $low } a { $high }
reckoned-water-loss = Pierde unos { $best } mm al día, { $low } a { $high }
reckoned-brood-whole = De huevo a obrera, unos { $best } días, { $low } a { $high }
reckoned-brood-eggs = Como huevo, unos { $best } días, { $low } a { $high }
reckoned-brood-larvae = Como larva, unos { $best } días, { $low } a { $high }
reckoned-brood-pupae = Como pupa, unos { $best } días, { $low } a { $high }
reckoned-brood-source = Fuente para este grupo: { $brood_group }
reckoned-first-workers =
    De { $eggs ->
        [one] { $eggs } huevo
       *[other] { $eggs } huevos
    } { $best ->
        [one] sale cerca de { $best } obrera
       *[other] salen unas { $best } obreras
    }, { $low } a { $high } (Ito 1988: una especie de Camponotus; en otras puede ser muy distinto)
reckoned-weigh-sugar = Azúcar: { $g } g
reckoned-weigh-sweet = { $food }: { $g } g
reckoned-weigh-water = Agua: { $g } g, que son { VOLUME($ml) }
reckoned-makes = Salen { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent } % en masa, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL a { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } en { $by ->
        [volume] volumen
       *[mass] masa
    }: { $percent } % en masa
reckoned-keeps = Aguanta en la nevera unos { $days } días, { $low } a { $high } (práctica común)
reckoned-wait = Espera unos { $best } min, { $low } a { $high }
reckoned-cool-already = Ya está bastante fría
reckoned-serve = { $portion }
reckoned-serving-protein =
    Unos { $mg } mg de proteína, { $low } a { $high }; la colonia necesita unos { $need } mg en { $days ->
        [one] { $days } día
       *[other] { $days } días
    }
reckoned-serving-unknown = No se conoce su proteína
reckoned-lasts =
    Les da de comer { $days ->
        [one] cerca de { $days } día
       *[other] unos { $days } días
    }
