### Was einem Menschen oder einer Kolonie schaden kann. Der erste Satz ist immer zu sehen, der Rest auf Tippen.

caution-stings = Diese Art sticht.
    .more = Allergiker brauchen hier die Hilfe anderer; Atemnot, Schwellung, Ohnmachtsgefühl oder Erbrechen nach einem Stich: Wähl sofort den Notruf.
caution-blade = Futtertiere auf einem Brett schneiden, weg von den Fingern.
caution-dead-only = Nur frisch getötete Futtertiere: in ein Reagenzglas nie etwas Lebendes.
caution-never-tilt = Dieses Nest nie kippen oder drehen: Die Speicherameisen hängen an der Decke und sind der Vorrat.
caution-sting-allergy = Stiche dieser Art sind für schwere allergische Reaktionen bekannt.
    .more = Leg die Person flach hin, benutze den Adrenalin-Pen, wenn einer da ist, und wähl den Notruf. Arbeite nie allein an dieser Kolonie.
caution-bites = Große Arbeiterinnen beißen durch die Haut: Nimm Pinzette oder Pinsel, nicht die Finger.
caution-tint = Lebensmittelfarbe: blau ohne Karmin, so schwach, dass sie gerade zu sehen ist, eine Kolonie, ein Tag, mit ungefärbtem Zuckerwasser daneben.
    .more = Es wurde keine veröffentlichte Stärke, Verblasszeit oder Prüfung auf Sicherheit für Ameisen gefunden, und Halter berichten von Toten durch eine rote Farbe (gängige Praxis, keine Quelle).
caution-sprays = Sie spritzt Ameisensäure: Halte die Augen von der Öffnung fern und lüfte den Raum.
