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
