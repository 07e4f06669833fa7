### Die Rechner. Quellen bleiben, wie sie veröffentlicht sind.

reckon-sugar-water = Zuckerwasser
reckon-dilute = Honig, Sirup oder Marmelade verdünnen
reckon-cooling = Wann eine warme Lösung kühl genug ist
reckon-prey = Futtertiere für eine Kolonie
reckon-tube-water = Wasser im Reagenzglas
reckon-brood = Vom Ei zur Arbeiterin

## Wie jeder rechnet.

reckon-formula-prey = Stück = Bedarf an Eiweiß / (Frischmasse x Anteil Eiweiß); Bedarf = 20 mg je g Arbeiterinnen und Tag
reckon-formula-sugar-water = Zucker = Stärke x Masse; Masse = Volumen x Dichte(Stärke); mol/L = g/L / 342,2965
reckon-formula-dilute = süßes Futter = Stärke x Masse / Anteil Zucker im Futter; der Rest ist Wasser
reckon-formula-cooling = T(t) = Raum + (Anfang - Raum) exp(-k t)
reckon-formula-tube-water = Stefan-Diffusion von Dampf durch Luft und Watte in den Raum, mal 2 für ein Reagenzglas in Gebrauch
reckon-formula-brood = Tage = Gradtage eines Stadiums / (Temperatur - Schwelle), Tag und Nacht je zur Hälfte

## Woher Formel und Zahlen stammen.

reckon-source-prey = Macom & Porter 1995; Zusammensetzung nach Finke 2002/2013 und USDA SR26; Größen und Umgang: gängige Praxis
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, Saccharose, { DEGREES(20) } (aus zweiter Hand); Schüttdichte von Zucker 0,85 g/mL (aus dem Gedächtnis)
reckon-source-dilute = Zusammensetzung nach USDA SR26; Dichte wie Saccharose derselben Stärke
reckon-source-cooling = Newtons Abkühlungsgesetz; k der Gefäße ist unsere eigene Schätzung oder kommt aus deinen zwei Messungen
reckon-source-tube-water = Bird, Stewart & Lightfoot (Diffusionsrohr); Dampfdruck auf 0,1 % genau nach IAPWS; der Faktor für ein Reagenzglas in Gebrauch: gängige Praxis, keine Quelle
reckon-source-brood = je nach Gruppe von Arten; die letzte Zeile nennt die Quelle für diese

## Wo es gilt, und wie weit es daneben liegen kann.

reckon-limits-prey = eine Kolonie mit wachsender Brut und Zucker im Angebot, an einer Art gemessen; andere Kolonien weichen bis zum Doppelten ab
reckon-limits-sugar-water = 0 bis 67,09 % der Masse, { DEGREES(20) }; nach Volumen kann ein Löffel ein Zehntel mehr oder weniger fassen
reckon-limits-dilute = bis zum Zuckergehalt des Futters selbst; der Zucker von Honig weicht im Volumen etwa 1 % von Saccharose ab
reckon-limits-cooling = ruhige Luft, kein Deckel; der Raum mindestens ein halbes Grad unter dem Ziel
reckon-limits-tube-water = ein Drittel bis dreimal so lang, je nach Watte, Umgang und Luftzug; Stände deines eigenen Reagenzglases sind besser
reckon-limits-brood = innerhalb der Temperaturen, die für die Gruppe untersucht wurden; außerhalb gibt er keine Antwort
