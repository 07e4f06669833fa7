### Les boutons s’appellent « Fait » (round-done-short) et « Quelque chose ne va pas » (event-kind-fault).

reason-tube-step-still = Laisse le tube là où il est : ne le soulève pas, ne le penche pas, ne l’ouvre pas, ne le secoue pas.
reason-tube-step-find = Cherche le bouchon blanc dans le tube. Les fourmis vivent d’un côté, l’eau est de l’autre.
reason-tube-step-good = De l’eau claire touche le bouchon : tout va bien, touche « Fait ». Tu n’as rien à remplir.
reason-tube-step-bad = Il n’y a plus d’eau derrière le bouchon, ou il y a de l’eau du côté des fourmis : touche « Quelque chose ne va pas », et appelle.
reason-nest-step-look = Regarde de l’extérieur, sans rien ouvrir : le côté humide est-il encore plus foncé que le côté sec ? Alors touche « Fait ».
reason-nest-step-place = Cherche par où l’eau entre : un trou, un petit bac ou une éponge en dehors des chambres. Si tu ne trouves pas, appelle.
reason-nest-step-drip-ml = Prends { VOLUME($ml) } d’eau simple, à la température de la pièce, et laisse-la couler lentement.
reason-nest-step-drip = Laisse couler lentement un peu d’eau simple, à la température de la pièce, jusqu’à ce que l’éponge ou le plâtre y soit foncé.
reason-nest-step-stop = Arrête dès qu’elle n’entre plus. Puis touche « Fait ».
reason-nest-step-bad = Il y a de l’eau du côté des fourmis, ou le nid est sec et clair partout : touche « Quelque chose ne va pas », et appelle.
reason-helper-call = N’ouvre rien, ne déplace rien, ne secoue rien, et ne donne rien de plus. Appelle, et dis ce que tu vois.
reason-helper-wet = En attendant, mets du papier de cuisine autour, pour que rien ne coule dans les autres nids.
reason-helper-escape = En attendant, ferme le couvercle, et la porte de la pièce. Pousse doucement les fugueuses au pinceau dans une boîte fermée ; jamais dehors.
reason-helper-fridge = Ferme la porte du frigo. Si elle est fermée, vois si le frigo marche.
reason-helper-heater = En attendant, coupe le chauffage de l’étagère, et tire le rideau si le soleil tape dessus.
reason-helper-dead = Tue-la d’abord : rien de vivant n’entre pendant l’absence de l’éleveur.
reason-helper-glance = Regarde un moment de l’extérieur, sans rien ouvrir, soulever ni secouer. Elles bougent calmement ? Alors touche « Fait ».
