### Zuckerwasser: mischen und abkühlen.

reason-sugar-near-saturation = Fast so viel, wie Wasser halten kann ({ $limit } % bei { DEGREES(20) }): Es kristallisiert in Röhrchen und Futterspendern.
reason-sugar-thick = Dicker als das, was Kröpfe am besten füllt (43 % bei einer Rossameise: Josens et al. 1998): trinkt sich langsam.
reason-sugar-thin = Dünn: Ameisen trinken es, aber es füllt den Kropf mit wenig Zucker und verdirbt eher.
reason-sugar-good-range = Im Bereich, den Ameisen gut trinken: Bei einer Rossameise ging die Aufnahme bei 31 % am schnellsten, und die Kröpfe waren bei 43 % am vollsten (Josens et al. 1998).
reason-sugar-dissolve-warm = Wenn du es zum Lösen des Zuckers erwärmst, lass es auf { DEGREES(30) } oder weniger abkühlen, bevor du es anbietest. Heißer Sirup verbrennt Hände und tötet Ameisen.
reason-cooling-check = Prüf vor dem Anbieten: ein Thermometer bei { DEGREES(30) } oder weniger, oder keine Wärme an der Innenseite des Handgelenks (gängige Praxis).
reason-cooling-spread = Ein Deckel, eine weite Schale oder ein Luftzug ändert das stark: Zwei Messungen an deinem eigenen Gefäß sind besser.
