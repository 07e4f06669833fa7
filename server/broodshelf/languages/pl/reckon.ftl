reckon-sugar-water = Woda z cukrem
reckon-dilute = Rozcieńczanie miodu, syropu lub dżemu
reckon-cooling = Kiedy ciepły roztwór dość ostygnie
reckon-prey = Zdobycz dla kolonii
reckon-tube-water = Woda w probówce
reckon-brood = Od jaja do robotnicy

reckon-formula-prey = sztuki = zapotrzebowanie na białko / (świeża masa x udział białka); zapotrzebowanie = 20 mg na g robotnic i dzień
reckon-formula-sugar-water = cukier = stężenie x masa; masa = objętość x gęstość(stężenie); mol/L = g/L / 342.2965
reckon-formula-dilute = słodki pokarm = stężenie x masa / udział cukrów w pokarmie; reszta to woda
reckon-formula-cooling = T(t) = pokój + (początek - pokój) exp(-k t)
reckon-formula-tube-water = dyfuzja Stefana pary przez powietrze i watę do pokoju, razy 2 dla używanej probówki
reckon-formula-brood = dni = stopniodni stadium / (temperatura - próg), dzień i noc po połowie

reckon-source-prey = Macom & Porter 1995; skład: Finke 2002/2013 i USDA SR26; rozmiary i sposób podania: praktyka hodowców
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, sacharoza, { DEGREES(20) } (z drugiej ręki); gęstość nasypowa cukru 0,85 g/mL (z pamięci)
reckon-source-dilute = skład: USDA SR26; gęstość jak sacharozy o tym stężeniu
reckon-source-cooling = prawo stygnięcia Newtona; k naczyń to nasz szacunek albo z twoich dwóch odczytów
reckon-source-tube-water = Bird, Stewart & Lightfoot (rurka dyfuzyjna); ciśnienie pary z dokładnością 0,1% do IAPWS; czynnik używanej probówki: praktyka hodowców, bez źródła
reckon-source-brood = według grupy gatunków; ostatni wiersz podaje źródło tej grupy

reckon-limits-prey = kolonia z rosnącym potomstwem i cukrem pod ręką, zmierzono jeden gatunek; inne kolonie różnią się dwukrotnie
reckon-limits-sugar-water = 0 do 67,09% masy, { DEGREES(20) }; objętościowo łyżka może mieć o jedną dziesiątą więcej lub mniej
reckon-limits-dilute = do zawartości cukrów samego pokarmu; cukry miodu różnią się od sacharozy o ok. 1% objętości
reckon-limits-cooling = spokojne powietrze, bez pokrywki; pokój co najmniej pół stopnia poniżej celu
reckon-limits-tube-water = od jednej trzeciej do trzykrotności tego czasu, zależnie od waty, obchodzenia się i przeciągu; odczyty twojej probówki są lepsze
reckon-limits-brood = w temperaturach zbadanych dla grupy; poza nimi odmawia

reckoned-water-days = Wystarcza na ok. { $best } dni, { $low } do { $high }
reckoned-water-loss = Traci ok. { $best } mm na dzień, { $low } do { $high }
reckoned-brood-whole = Od jaja do robotnicy ok. { $best } dni, { $low } do { $high }
reckoned-brood-eggs = Jako jajo ok. { $best } dni, { $low } do { $high }
reckoned-brood-larvae = Jako larwa ok. { $best } dni, { $low } do { $high }
reckoned-brood-pupae = Jako poczwarka ok. { $best } dni, { $low } do { $high }
reckoned-brood-source = Źródło dla tej grupy: { $source }
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
