### Schritte für eine Vertretung, die noch nie ein Reagenzglas mit Ameisen sah. Kurze Sätze, Alltagswörter, keine Fachwörter.
### Sie nennen die Knöpfe: „Erledigt“ und „Etwas stimmt nicht“ müssen lauten wie auf den Knöpfen.

reason-tube-step-still = Lass das Glasröhrchen liegen, wo es liegt: nicht heben, kippen, öffnen oder schütteln.
reason-tube-step-find = Such den weißen Pfropfen im Röhrchen. Auf der einen Seite leben die Ameisen, auf der anderen steht das Wasser.
reason-tube-step-good = Klares Wasser berührt den Pfropfen: Alles ist gut, tippe auf „Erledigt“. Du musst nichts auffüllen.
reason-tube-step-bad = Hinter dem Pfropfen ist kein Wasser mehr, oder Wasser ist dort, wo die Ameisen sind: Tippe auf „Etwas stimmt nicht“ und ruf an.
reason-nest-step-look = Sieh von außen hin, ohne etwas zu öffnen: Ist das feuchte Ende noch dunkler als das trockene? Dann tippe auf „Erledigt“.
reason-nest-step-place = Such die Stelle, wo das Wasser hineinkommt: eine Öffnung, eine Schale oder ein Schwamm außerhalb der Kammern. Findest du sie nicht, ruf an.
reason-nest-step-drip-ml = Zieh { VOLUME($ml) } einfaches Wasser mit Zimmertemperatur auf und lass es langsam hineinlaufen.
reason-nest-step-drip = Lass etwas einfaches Wasser mit Zimmertemperatur langsam hineinlaufen, bis der Schwamm oder der Gips dort dunkel ist.
reason-nest-step-stop = Hör auf, sobald es nicht mehr einzieht. Dann tippe auf „Erledigt“.
reason-nest-step-bad = Wasser steht, wo die Ameisen sind, oder das Nest ist überall trocken und hell: Tippe auf „Etwas stimmt nicht“ und ruf an.
reason-helper-call = Öffne, bewege und schüttle nichts, und gib nichts extra. Ruf an und sag, was du siehst.
reason-helper-wet = Leg bis dahin Küchenpapier darum, damit nichts in andere Nester läuft.
reason-helper-escape = Schließ bis dahin den Deckel und die Zimmertür. Streich Ausreißer mit einem weichen Pinsel in eine geschlossene Dose; nie nach draußen.
reason-helper-fridge = Mach die Tür des Kühlschranks zu. Ist sie zu, sieh nach, ob der Kühlschrank läuft.
reason-helper-heater = Schalt bis dahin die Heizung des Regals aus, und zieh den Vorhang zu, wenn die Sonne darauf scheint.
reason-helper-dead = Töte es vorher: Solange der Halter weg ist, kommt nichts Lebendes hinein.
reason-helper-glance = Sieh kurz von außen hin, ohne etwas zu öffnen, zu heben oder zu schütteln. Bewegen sie sich ruhig? Dann tippe auf „Erledigt“.
