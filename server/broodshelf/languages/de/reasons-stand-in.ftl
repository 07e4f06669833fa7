### Schritte für eine Vertretung, die noch nie ein Reagenzglas mit Ameisen sah. Kurze Sätze, Alltagswörter, keine Fachwörter.
### Sie nennen einen Knopf: „Etwas stimmt nicht“ muss lauten wie darauf.

reason-tube-step-still = Lass das Glasröhrchen liegen, wo es liegt: nicht heben, kippen, öffnen oder schütteln.
reason-tube-step-find = Such den weißen Pfropfen im Röhrchen. Auf der einen Seite leben die Ameisen, auf der anderen steht das Wasser.
reason-tube-step-good = Klares Wasser berührt den Pfropfen: Alles ist gut. Du musst nichts auffüllen.
reason-tube-step-bad = Hinter dem Pfropfen ist kein Wasser mehr, oder Wasser ist dort, wo die Ameisen sind: Tippe auf „Etwas stimmt nicht“ und ruf an.
reason-nest-step-look = Sieh von außen hin, ohne etwas zu öffnen: Ist das feuchte Ende noch dunkler als das trockene? Dann ist alles gut.
reason-nest-step-place = Such die Stelle, wo das Wasser hineinkommt: eine Öffnung, eine Schale oder ein Schwamm außerhalb der Kammern. Findest du sie nicht, ruf an.
reason-nest-step-drip-ml = Zieh { VOLUME($ml) } einfaches Wasser mit Zimmertemperatur auf und lass es langsam hineinlaufen.
reason-nest-step-drip = Lass etwas einfaches Wasser mit Zimmertemperatur langsam hineinlaufen, bis der Schwamm oder der Gips dort dunkel ist.
reason-nest-step-stop = Hör auf, sobald es nicht mehr einzieht.
reason-nest-step-bad = Wasser steht, wo die Ameisen sind, oder das Nest ist überall trocken und hell: Tippe auf „Etwas stimmt nicht“ und ruf an.
reason-helper-call = Öffne, bewege und schüttle nichts, und gib nichts extra. Ruf an und sag, was du siehst.
reason-helper-wet = Leg bis dahin Küchenpapier darum, damit nichts in andere Nester läuft.
reason-helper-escape = Schließ bis dahin den Deckel und die Zimmertür. Streich Ausreißer mit einem weichen Pinsel in eine geschlossene Dose; nie nach draußen.
reason-helper-fridge = Mach die Tür des Kühlschranks zu. Ist sie zu, sieh nach, ob der Kühlschrank läuft.
reason-helper-heater = Schalt bis dahin die Heizung des Regals aus, und zieh den Vorhang zu, wenn die Sonne darauf scheint.
reason-helper-dead = Töte es vorher: Solange der Halter weg ist, kommt nichts Lebendes hinein.
reason-helper-glance = Sieh kurz von außen hin, ohne etwas zu öffnen, zu heben oder zu schütteln. Bewegen sie sich ruhig?

# Wie man Futter gibt. Die Portion, etwa „2 Tropfen Zuckerwasser“, steht über den Schritten.
reason-drop-step-take = Hol die Flasche, wo der Halter sie aufbewahrt, und eine saubere Pipette. Lass es zimmerwarm werden: nie heiß.
reason-drop-step-place = Öffne nur die Futterbox, nie das Nest. Setz die Tropfen auf das Schälchen oder die Folie darin, nicht auf eine Ameise.
reason-drop-step-small = Gib nicht mehr, als hier steht, und keine größeren Tropfen: Kleine Ameisen ertrinken darin.
reason-feeder-step-out = Heb den Futterspender mit der Pinzette heraus. Streich Ameisen sanft ab, zurück in die Box.
reason-feeder-step-fill = Spül ihn mit klarem Wasser aus und füll ein, was oben steht. Zimmerwarm: nie heiß.
reason-feeder-step-back = Stell ihn zurück, wo er stand, gerade, damit nichts tropft.
reason-prey-step-take = Nimm es aus dem Gefrierfach oder der Dose, die der Halter dir gezeigt hat, und lass es zehn Minuten auftauen. Es muss tot sein.
reason-prey-step-cut = Schneide es auf Papier einmal in der Mitte durch, damit die Ameisen an das Weiche innen kommen.
reason-prey-step-place = Öffne nur die Futterbox. Leg es mit der Pinzette nahe an den Weg zum Nest, auf eine trockene Stelle.
reason-seed-step-take = Nimm trockene Samen aus dem Beutel des Halters, keine anderen: Gekauftes Vogelfutter kann behandelt sein.
reason-seed-step-place = Streu sie in die Futterbox, auf eine trockene Stelle weit weg vom Wasser.
reason-leaf-step-take = Schneide Blätter von der Pflanze, die der Halter dir gezeigt hat, keine anderen: Gespritzte Blätter töten die Kolonie.
reason-leaf-step-rinse = Spül sie mit kaltem Wasser ab und schüttle sie trocken.
reason-leaf-step-place = Leg sie in die Futterbox und nimm die trockenen vom letzten Mal heraus.
reason-piece-step-take = Hol es, wo der Halter es aufbewahrt, und schneide es so klein, wie es oben steht.
reason-piece-step-place = Öffne nur die Futterbox. Leg es auf das Schälchen oder die Folie darin, auf eine trockene Stelle.
reason-food-step-only = Nichts anderes: Gefangene Insekten und Essen aus der Küche können Gift tragen.
reason-food-step-close = Schließ sofort den Deckel und sieh nach, ob eine Ameise draußen ist.
reason-food-step-bad = Viele Ameisen liegen still, Ameisen sind draußen, oder du bist nicht sicher? Lass zu und ruf an.

# Wie man Futterreste entfernt.
reason-left-step-find = Sieh nach, wo Futter lag: was trocken, dunkel oder pelzig ist, leere Hüllen, klebrige Tropfen.
reason-left-step-take = Öffne nur die Futterbox. Heb es mit der Pinzette heraus; wisch eine klebrige Stelle mit feuchtem Papier ab.
reason-left-step-held = Halten Ameisen es fest? Lass es eine Stunde liegen, und zieh nie.
reason-left-step-bin = Wirf es in einen geschlossenen Mülleimer, nicht auf den Kompost. Schließ sofort den Deckel.

# Wie man nach dem Ausbruchschutz sieht: dem glatten Rand, der die Ameisen drinnen hält.
reason-barrier-step-look = Sieh dir den Rand der Futterbox von außen an, einmal ringsum.
reason-barrier-step-bridge = Liegt ein Haar, ein Blatt oder Watte darüber? Heb das mit der Pinzette weg.
reason-barrier-step-still = Fass den Rand nicht an und trag nichts Neues auf.
reason-barrier-step-bad = Ameisen laufen auf dem Rand oder sind draußen: Tippe auf „Etwas stimmt nicht“ und ruf an.

# Wie man einen Blick wirft, die Kühlschrankbox lüftet und nach zweifelhaftem Futter hinsieht.
reason-glance-step-calm = Einige Ameisen bewegen sich, die meisten sitzen beisammen: Alles ist gut.
reason-glance-step-bad = Viele liegen still, viele rennen umher, oder eine Ameise ist draußen: Tippe auf „Etwas stimmt nicht“ und ruf an.
reason-air-step-open = Öffne die Box im Kühlschrank eine Minute lang; die Kühlschranktür bleibt nicht länger offen als das.
reason-air-step-still = Nimm die Ameisen nicht heraus und wärme sie nicht in der Hand. Sie schlafen: Es ist gut, wenn sich nichts bewegt.
reason-air-step-close = Schließ die Box und den Kühlschrank, und sieh nach, ob die Tür zu ist.
reason-risk-step-signs = Vielleicht haben sie schlechtes Futter bekommen. Zähl, wie viele still liegen oder wie betrunken laufen.
reason-nest-step-still = Du musst es nicht öffnen und nichts auffüllen.
reason-helper-tell = Sag, welche Kolonie es ist, was du siehst und seit wann. Ein Bild hilft.
