reason-leak = Fuite signalée. Premiers gestes : mets le tube debout au-dessus d’une soucoupe, le coton en haut, vois si le couvain est mouillé, pose un tube neuf à côté. Ne secoue pas.
reason-flood = Premiers gestes : penche pour que l’eau s’éloigne du couvain, absorbe-la avec du coton, offre un tube sec.
reason-mould = Taches éloignées : prends une photo et regarde à nouveau dans 7 jours (usage courant). Près du couvain ou un tiers du coton : offre un tube neuf aujourd’hui. Un coton seulement jaune n’est rien.
reason-mould-far = Une tache éloignée n’est pas une alarme : prends une photo maintenant, et regarde dans 7 jours si elle a grandi (usage courant). Un coton seulement jaune n’est rien.
reason-mould-look =
    Une tache de moisissure a été signalée il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : compare-la avec la photo. Pas plus grande : laisse-la. Plus près du couvain ou un tiers du coton : signale-la à nouveau comme proche (usage courant).
reason-mould-near = Premiers gestes : offre un tube neuf aujourd’hui, bouche contre bouche à côté de celui-ci, et laisse l’ancien à la lumière. Ne gratte pas, ne pulvérise rien, ne secoue pas (usage courant).
reason-fault-over =
    Signalé il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }, et personne n’a dit depuis que c’est fini. Si c’est fini, marque-le comme réglé ; sinon, signale-le à nouveau.
reason-escape = Premiers gestes : ferme le couvercle, refais l’anti-évasion, ramasse les fugueuses avec un pinceau doux. Ne les relâche jamais dehors.
reason-mites = Premiers gestes : nourris cette colonie en dernier, avec sa propre pince, garde-la à l’écart, note de quel lot elle a mangé.
reason-many-dead = Premiers gestes : arrête l’aliment offert en dernier, retire-le, vérifie l’eau et la température, et écris ce que tu vois.
reason-heater = Premiers gestes : coupe le chauffage, mets la colonie dans un endroit de { DEGREES(20) } à { DEGREES(25) } (usage courant), ne la refroidis pas au frigo.
reason-risk-out =
    Cela a été donné malgré le refus, ou une autre colonie a reçu ainsi le même lot : il peut porter du poison. Retire tout de suite tout ce qui reste, { $hours ->
        [one] { $hours } heure
       *[other] { $hours } heures
    } après l’avoir offert.
reason-risk-look =
    Un aliment qui peut porter du poison a été donné ici il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : regarde une fois par jour pendant { $of } jours ; aujourd’hui, jour { $day }.
reason-risk-times = Temps publiés jusqu’à la mort de la moitié des ouvrières : 1 à 4 jours à fortes doses de trois poisons d’appât (Rust et al. 2004), 8 jours à faible dose d’acide borique (Klotz et al. 1997).
reason-risk-signs = Beaucoup de mortes, des ouvrières lentes ou qui tremblent : signale « beaucoup de mortes », et donne de l’eau propre et de l’eau sucrée fraîche (usage courant).
