reason-prey-size = Ces ouvrières emportent entières des proies jusqu’à { $longest_mm } mm environ ; les plus longues sont coupées ou écartées (usage courant).
reason-prey-first-third = Une première portion est un tiers de ce que dit la taille de la colonie ; elle grandit de moitié quand tout est pris, lentement quand personne ne contrôle (usage courant).
reason-portion-rises = Une portion monte pas à pas jusqu’à ce que dit la taille de la colonie : au plus de moitié après « tout pris », lentement là où personne n’a contrôlé, pas quand il est resté quelque chose (usage courant).
reason-portion-at-once =
    Jamais plus que le besoin de { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } d’un coup, même si la prochaine fois est loin : ce qui reste se gâte (usage courant).
reason-portion-tiny = Le tout premier repas est la plus petite portion possible (usage courant).
reason-prey-smallest =
    C’est la plus petite portion possible ; elle les nourrit environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }.
reason-prey-most = { $pieces } pièces : une portion ne devrait pas en avoir plus (usage courant).
reason-prey-banked = Une petite colonie garde une proie { $days } jours au plus, même grosse (usage courant).
reason-prey-dead = Tue-la d’abord : une proie vivante peut blesser les ouvrières et le couvain, ou se cacher (usage courant).
reason-prey-dead-small = Petites ouvrières : seulement fraîchement tuée (usage courant).
reason-prey-dead-in-tube = Dans un tube à essai seulement des proies fraîchement tuées : jamais rien de vivant.
reason-prey-too-big-alive = Elles chassent à la vue, mais cette proie est plus longue qu’une ouvrière ou doit être coupée : tue-la d’abord.
reason-prey-stunned = Elles chassent à la vue : une proie qui bouge encore est trouvée plus tôt. Étourdis-la pour qu’elle ne puisse ni mordre ni donner de coups (usage courant).
reason-prey-live = Vivante parce que tu l’as demandé : plus courte qu’une ouvrière, dans une aire de chasse, jamais dans un tube. Retire-la si elle est ignorée pendant une heure (usage courant).
reason-prey-piece = Une miette : retire-la avant qu’elle se gâte.
reason-prey-uncounted = Personne n’indique les protéines de cet aliment, elles ne sont donc pas comptées.
