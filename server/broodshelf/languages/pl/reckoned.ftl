### Co wyliczył kalkulator, wiersz po wierszu: mówi to tylko serwer, gdziekolwiek się go pyta.

reckoned-water-days = Wystarcza na ok. { $best } dni, { $low } do { $high }
reckoned-water-loss = Traci ok. { $best } mm na dzień, { $low } do { $high }
reckoned-brood-whole = Od jaja do robotnicy ok. { $best } dni, { $low } do { $high }
reckoned-brood-eggs = Jako jajo ok. { $best } dni, { $low } do { $high }
reckoned-brood-larvae = Jako larwa ok. { $best } dni, { $low } do { $high }
reckoned-brood-pupae = Jako poczwarka ok. { $best } dni, { $low } do { $high }
reckoned-brood-source = Źródło dla tej grupy: { $brood_group }
reckoned-first-workers =
    Jaja: { $eggs }. Robotnice z nich: ok. { $best }, { $low } do { $high } (Ito 1988: jeden gatunek Camponotus; u innych może być zupełnie inaczej)
reckoned-weigh-sugar = Cukier: { $g } g
reckoned-weigh-sweet = { $food }: { $g } g
reckoned-weigh-water = Woda: { $g } g, czyli { VOLUME($ml) }
reckoned-makes = Razem: { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent }% masy, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL przy { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } { $by ->
        [volume] objętościowo
       *[mass] wagowo
    }: { $percent }% masy
reckoned-keeps = Trzyma się w lodówce ok. { $days } dni, { $low } do { $high } (praktyka hodowców)
reckoned-wait = Poczekaj ok. { $best } min, { $low } do { $high }
reckoned-cool-already = Jest już dość chłodne
reckoned-serve = { $portion }
reckoned-serving-protein =
    Ok. { $mg } mg białka, { $low } do { $high }; kolonia potrzebuje ok. { $need } mg na { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }
reckoned-serving-unknown = Zawartość białka nie jest znana
reckoned-lasts =
    Wystarcza im na ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }
