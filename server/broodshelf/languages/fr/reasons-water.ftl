reason-water-read =
    Relevé ({ $reading }) il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } ; un réservoir plein dure ici environ { $last } jours.
reason-water-look = Personne n’a noté combien d’eau il y a, on ne le sait donc pas : regarde une fois. Si tu notes le niveau, le plan saura dire quand il faut y voir.
reason-water-look-again =
    Rien n’a été noté sur son eau depuis { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }, plus longtemps qu’elle ne dure : on ne sait plus combien il en reste. Regarde une fois, et note le niveau.
reason-water-unread = Personne n’a encore relevé l’eau ; un réservoir plein devrait durer ici environ { $last } jours.
reason-water-physics = Calculé d’après la taille du tube, la chaleur et la sécheresse de son emplacement ; tes relevés le rendront plus sûr.
reason-water-nest = Un nid comme celui-ci s’humidifie tous les 3 à 10 jours dans une pièce, plus rarement au froid (usage courant).
reason-water-learnt = Appris de tes propres relevés : un réservoir plein dure { $low } à { $high } jours.
reason-water-left-out = Un relevé d’eau a été laissé de côté : un tube de cette taille ne peut pas le montrer.
reason-water-length-guessed = Personne n’a indiqué la longueur du réservoir plein : le plus long relevé, { $mm } mm, compte comme plein.
reason-water-length-unknown = Les relevés en mm sont laissés de côté tant que tu n’as pas indiqué la longueur du réservoir plein.
reason-water-fill = Pour le remplir : environ { VOLUME($ml) }.
reason-water-damp-end = Garde un côté humide et un côté sec : les fourmis choisissent (usage courant).
reason-water-drinker = Pour tant de fourmis, il faut aussi un abreuvoir dans l’aire de chasse (usage courant).
reason-leak-suspected =
    Plus d’eau est partie que n’expliquent le séchage et la soif : fuite probable à { $chance } %. À ce rythme le tube est à sec dans { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }. Regarde aujourd’hui si le sol ou le couvain est mouillé ; c’est peut-être autre chose.
