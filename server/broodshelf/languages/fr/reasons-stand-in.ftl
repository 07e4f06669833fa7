### Un bouton est nommé : « Quelque chose ne va pas » (event-kind-fault).

reason-tube-step-still = Laisse le tube là où il est : ne le soulève pas, ne le penche pas, ne l’ouvre pas, ne le secoue pas.
reason-tube-step-find = Cherche le bouchon blanc dans le tube. Les fourmis vivent d’un côté, l’eau est de l’autre.
reason-tube-step-good = De l’eau claire touche le bouchon : tout va bien. Tu n’as rien à remplir.
reason-tube-step-bad = Il n’y a plus d’eau derrière le bouchon, ou il y a de l’eau du côté des fourmis : touche « Quelque chose ne va pas », et appelle.
reason-nest-step-look = Regarde de l’extérieur, sans rien ouvrir : le côté humide est-il encore plus foncé que le côté sec ? Alors tout va bien.
reason-nest-step-place = Cherche par où l’eau entre : un trou, un petit bac ou une éponge en dehors des chambres. Si tu ne trouves pas, appelle.
reason-nest-step-drip-ml = Prends { VOLUME($ml) } d’eau simple, à la température de la pièce, et laisse-la couler lentement.
reason-nest-step-drip = Laisse couler lentement un peu d’eau simple, à la température de la pièce, jusqu’à ce que l’éponge ou le plâtre y soit foncé.
reason-nest-step-stop = Arrête dès qu’elle n’entre plus.
reason-nest-step-bad = Il y a de l’eau du côté des fourmis, ou le nid est sec et clair partout : touche « Quelque chose ne va pas », et appelle.
reason-helper-call = N’ouvre rien, ne déplace rien, ne secoue rien, et ne donne rien de plus. Appelle, et dis ce que tu vois.
reason-helper-wet = En attendant, mets du papier de cuisine autour, pour que rien ne coule dans les autres nids.
reason-helper-escape = En attendant, ferme le couvercle, et la porte de la pièce. Pousse doucement les fugueuses au pinceau dans une boîte fermée ; jamais dehors.
reason-helper-fridge = Ferme la porte du frigo. Si elle est fermée, vois si le frigo marche.
reason-helper-heater = En attendant, coupe le chauffage de l’étagère, et tire le rideau si le soleil tape dessus.
reason-helper-dead = Tue-la d’abord : rien de vivant n’entre pendant l’absence de l’éleveur.
reason-helper-glance = Regarde un moment de l’extérieur, sans rien ouvrir, soulever ni secouer. Est-ce qu’elles bougent calmement ?

reason-drop-step-take = Prends le flacon là où l’éleveur le garde, et une pipette propre. Laisse-le venir à la température de la pièce : jamais chaud.
reason-drop-step-place = Ouvre seulement la boîte où l’on nourrit, jamais le nid. Pose les gouttes sur la coupelle ou la feuille qui s’y trouve, pas sur une fourmi.
reason-drop-step-small = Ne donne pas plus que ce qui est écrit ici, et pas de gouttes plus grosses : les petites fourmis s’y noient.
reason-feeder-step-out = Sors l’abreuvoir avec une pince. Fais tomber doucement les fourmis au pinceau, dans la boîte.
reason-feeder-step-fill = Rince-le à l’eau simple, et remplis-le avec ce qui est nommé plus haut. À la température de la pièce : jamais chaud.
reason-feeder-step-back = Remets-le à sa place, bien droit, pour que rien ne coule.
reason-prey-step-take = Prends-la dans le congélateur ou la boîte que l’éleveur t’a montrés, et laisse-la dégeler dix minutes. Elle doit être morte.
reason-prey-step-cut = Coupe-la une fois au milieu, sur du papier, pour que les fourmis arrivent à l’intérieur tendre.
reason-prey-step-place = Ouvre seulement la boîte où l’on nourrit. Pose-la avec une pince près du chemin du nid, à un endroit sec.
reason-seed-step-take = Prends des graines sèches dans le sachet de l’éleveur, pas d’autres : les graines pour oiseaux du commerce peuvent être traitées.
reason-seed-step-place = Fais-les tomber dans la boîte où l’on nourrit, à un endroit sec, loin de l’eau.
reason-leaf-step-take = Coupe des feuilles de la plante que l’éleveur t’a montrée, pas d’autres : des feuilles traitées tuent la colonie.
reason-leaf-step-rinse = Rince-les à l’eau froide, et secoue-les bien.
reason-leaf-step-place = Pose-les dans la boîte où l’on nourrit, et retire les feuilles sèches de la dernière fois.
reason-piece-step-take = Prends-le là où l’éleveur le garde, et coupe-le aussi petit qu’il est écrit plus haut.
reason-piece-step-place = Ouvre seulement la boîte où l’on nourrit. Pose-le sur la coupelle ou la feuille qui s’y trouve, à un endroit sec.
reason-food-step-only = Rien d’autre : des insectes attrapés et des restes de cuisine peuvent porter du poison.
reason-food-step-close = Ferme tout de suite le couvercle, et regarde s’il y a une fourmi dehors.
reason-food-step-bad = Beaucoup de fourmis ne bougent plus, des fourmis sont dehors, ou tu as un doute ? Laisse fermé, et appelle.

reason-left-step-find = Regarde là où l’on a mis à manger : ce qui est sec, sombre ou poilu, des peaux vides, des gouttes collantes.
reason-left-step-take = Ouvre seulement la boîte où l’on nourrit. Retire-le avec une pince ; essuie une tache collante avec du papier humide.
reason-left-step-held = Des fourmis s’y accrochent ? Laisse-le une heure, et ne tire jamais.
reason-left-step-bin = Mets-le dans une poubelle fermée, pas au compost. Ferme tout de suite le couvercle.

reason-barrier-step-look = Regarde de l’extérieur tout le tour du bord de la boîte où l’on nourrit.
reason-barrier-step-bridge = Un cheveu, une feuille ou du coton passe par-dessus ? Enlève-le avec une pince.
reason-barrier-step-still = Ne touche pas le bord, et n’y mets rien de nouveau.
reason-barrier-step-bad = Des fourmis marchent sur le bord ou sont dehors : touche « Quelque chose ne va pas », et appelle.

reason-glance-step-calm = Quelques fourmis bougent, la plupart sont ensemble : tout va bien.
reason-glance-step-bad = Beaucoup ne bougent plus, beaucoup courent partout, ou une fourmi est dehors : touche « Quelque chose ne va pas », et appelle.
reason-air-step-open = Ouvre la boîte dans le frigo pendant une minute, et ne laisse pas la porte du frigo ouverte plus longtemps.
reason-air-step-still = Ne sors pas les fourmis, et ne les réchauffe pas dans ta main. Elles dorment : si rien ne bouge, c’est normal.
reason-air-step-close = Ferme la boîte et le frigo, et vérifie que la porte est bien fermée.
reason-risk-step-signs = Elles ont peut-être eu un mauvais aliment. Compte combien ne bougent plus, ou marchent en titubant.
reason-nest-step-still = Tu n’as pas à l’ouvrir, ni à remplir quoi que ce soit.
reason-helper-tell = Dis quelle colonie c’est, ce que tu vois, et depuis quand. Une photo aide.
