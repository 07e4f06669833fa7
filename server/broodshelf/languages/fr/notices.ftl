### « ouvrières », « reine » et « colonie » sont féminins : « elle » les reprend.

notice-plan-failed = Ce plan n’a pas pu être refait : tu vois un ancien plan, une estimation. Fie-toi à ce que tu vois dans le nid et les tubes. Le serveur réessaie dans l’heure ; son journal dit où il a échoué.
notice-claustral = Une reine en fondation vit de ses réserves : pas de nourriture, pas de dérangement, au plus un coup d’œil calme par semaine. Premier repas 2 à 7 jours après les premières ouvrières (usage courant).
notice-claustral-fungus = Une reine en fondation vit de ses réserves et cultive son jardin à partir de la miette de champignon qu’elle a apportée : pas de feuilles, pas de dérangement, au plus un coup d’œil calme par semaine. Premières feuilles 2 à 7 jours après les premières ouvrières (usage courant).
notice-stage-unknown = Personne n’a dit où en est cette colonie. Le plan reste donc prudent : seulement ce qui ne nuit pas à une reine en fondation et ce dont une colonie a le plus besoin. Un stade ou un comptage le corrige.
notice-settling = S’installe : quelques jours de calme.
notice-resting = En repos hivernal.
notice-resting-summer = En repos d’été, le nid fermé : elle ne prend pas de nourriture, on regarde seulement son eau (usage courant).
notice-rest-window = Cette espèce se repose { $low_months } à { $high_months } mois, entre { DEGREES($low_c) } et { DEGREES($high_c) } (usage courant). Une fourchette, pas une règle.
notice-queen-lays = La reine est marquée comme incertaine, mais des œufs ont été comptés la dernière fois : s’ils deviennent des larves, mets l’état sur « Va bien ». D’ici là, pas de prévisions.
notice-queenless = La reine est incertaine : pas de prévisions. Ne creuse jamais pour la chercher.
notice-quarantine = À l’écart des autres : nourris-la en dernier, avec sa propre pince.
notice-length-clamped = Les formules de masse valent pour des ouvrières plus courtes que ces { $given_mm } mm : le calcul prend { $used_mm } mm.
notice-mass-clamped-low = D’après leur longueur, certaines de ces ouvrières pèsent peut-être moins de { $limit_mg } mg, le minimum pour lequel les taux sont connus : le calcul prend cette valeur.
notice-mass-clamped-high = D’après leur longueur, certaines de ces ouvrières pèsent peut-être plus de { $limit_mg } mg, le maximum pour lequel les taux sont connus : le calcul prend cette valeur.
notice-temperature-clamped = Les taux sont connus de { DEGREES(10) } à { DEGREES(40) } : elle est à { DEGREES($mean_c) }, le calcul prend { DEGREES($used_c) }.
notice-colder-than-set = Plus froid que ton réglage : selon le capteur { DEGREES($measured_c) } ces trois derniers jours, au lieu de { DEGREES($set_c) }. Le plan suit le capteur.
notice-warmer-than-set = Plus chaud que ton réglage : selon le capteur { DEGREES($measured_c) } ces trois derniers jours, au lieu de { DEGREES($set_c) }. Le plan suit le capteur.
notice-species-unknown = L’espèce n’est pas dans la liste : le plan suit la longueur des ouvrières et l’usage courant.
notice-quiet-for =
    Laisse-la dans le noir encore { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } (usage courant) ; ensuite un coup d’œil calme est permis.
notice-quiet-look = Un coup d’œil calme est permis aujourd’hui, puis plus rien pendant une semaine.
notice-fed-queens-choice = À toi de choisir : une reine claustrale n’a pas besoin de manger, mais dans une étude publiée (Lasius niger) les reines nourries ont élevé plus de nymphes et d’ouvrières. Si tu la nourris : une goutte minuscule, rarement, sans lumière ni secousse.
notice-first-food-soon =
    Les premières ouvrières sont là. Attends { $low } à { $high ->
        [one] { $high } jour
       *[other] { $high } jours
    } avant le premier repas (usage courant).
notice-first-food-now =
    Les premières ouvrières sont là : c’est l’heure du premier repas, d’ici { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } (usage courant) ; pas plus que ce que disent ses tâches.
notice-semi-claustral = Cette reine chasse pendant sa fondation : du sucre et de petites proies tous les { $low } à { $high } jours (usage courant).
notice-semi-claustral-harvester = Cette reine récolte pendant sa fondation : des graines en brisures toujours à portée, de petites proies tous les { $low } à { $high } jours (usage courant).
notice-semi-claustral-fungus-grower = Cette reine sort chercher des feuilles pendant sa fondation : des morceaux frais pour son jardin tous les { $low } à { $high } jours, ni proies ni sucre (usage courant).
notice-alone = Une reine sans ouvrières, après sa fondation : ses réserves sont épuisées. Du sucre et de petites proies tous les { $low } à { $high } jours (usage courant), peu de lumière, pas de secousse.
notice-alone-harvester = Une reine sans ouvrières, après sa fondation : ses réserves sont épuisées. Des graines en brisures à portée et de petites proies tous les { $low } à { $high } jours (usage courant), peu de lumière, pas de secousse.
notice-alone-fungus-grower = Une reine sans ouvrières, après sa fondation : elle doit soigner son jardin seule. Des morceaux de feuilles fraîches tous les { $low } à { $high } jours (usage courant), peu de lumière, pas de secousse.
notice-colony-empty = Ni reine ni ouvrières n’ont été comptées : on ne nourrit rien. S’il reste des nymphes, elles peuvent encore éclore : note alors un comptage. Sinon mets l’état sur « Morte », avec la cause.
notice-parasitic = Cette reine ne peut pas élever de couvain sans ouvrières d’un hôte : donne-lui-en, ou des nymphes de l’hôte, dès que tu peux. D’ici là une goutte de sucre, pas de proies (usage courant).
notice-parasitic-pupae = Des nymphes sont avec cette reine : celles d’un hôte, une fois écloses, la nourriront. D’ici là une goutte de sucre, pas de proies (usage courant).
notice-parasitic-hosts = Des ouvrières de l’hôte nourrissent cette reine, et elle pond.
notice-note-host = Note l’espèce de l’hôte, combien tu lui en as donné et de quelle colonie.
notice-settles = Elle vient de déménager : laisse-la au calme encore { $low } à { $high } jours. Un repas refusé ne veut rien dire maintenant (usage courant).
notice-too-cold-for-protein = À { DEGREES($day_c) }, pas de protéines : sous { DEGREES($limit_c) } elles se gâtent sans être mangées (usage courant).
notice-too-cold-perhaps-rest = À { DEGREES($day_c) }, pas de protéines : sous { DEGREES($limit_c) } elles se gâtent sans être mangées (usage courant). Si c’est son repos hivernal, mets l’état sur « Au repos ».
notice-too-cold-for-species = À { DEGREES($day_c) }, pas de protéines : sous { DEGREES($limit_c) } elles se gâtent sans être mangées (usage courant). Cette espèce n’a pas de repos annuel : mets-la dans un endroit plus chaud, au moins { DEGREES(20) } (usage courant).
notice-yearly-clock = Tard dans son année, cette espèce ralentit même au chaud : peu d’œufs n’est pas un souci. Personne n’a compté de larves ces 4 dernières semaines : un peu de protéines seulement, jusqu’au prochain comptage.
notice-yearly-clock-larvae = Tard dans son année, cette espèce ralentit même au chaud ; mais des larves ont été comptées, donc on les nourrit. Ce qui reste non mangé n’est pas un souci maintenant.
notice-yearly-clock-none = Tard dans son année, cette espèce ralentit même au chaud : pas de larves et peu d’œufs, ce n’est pas un souci.
notice-yearly-clock-summer = Cette espèce ralentit en été : peu d’œufs n’est pas un souci. Personne n’a compté de larves ces 4 dernières semaines : un peu de protéines seulement, jusqu’au prochain comptage.
notice-yearly-clock-larvae-summer = Cette espèce ralentit en été ; mais des larves ont été comptées, donc on les nourrit. Ce qui reste non mangé n’est pas un souci maintenant.
notice-yearly-clock-none-summer = Cette espèce ralentit en été : pas de larves et peu d’œufs, ce n’est pas un souci.
notice-queen-doubt = Pas d’œufs dans tes comptages depuis { $weeks } semaines actives (usage courant : 6 à 8) : la reine n’est peut-être plus là. Continue à nourrir, regarde à nouveau dans deux semaines ; ne creuse jamais pour la chercher.
notice-no-queen = Aucune reine n’a été comptée : les ouvrières vivent encore des mois, mais il n’en vient plus. On nourrit les larves présentes, puis un peu de protéines seulement ; pas de prévisions. Ne creuse jamais pour chercher la reine.
notice-gamergates = Aucune reine n’a été comptée ; chez cette espèce des ouvrières fécondées pondent, tout peut donc être en ordre : œufs et larves le diront.
notice-eggs-without-larvae = Des œufs dans tes comptages depuis { $weeks } semaines actives et jamais de larve (usage courant : doute à partir de 6) : ils ne sont peut-être pas fécondés, ou ils sont mangés. Laisse-la tranquille et assez au chaud, et regarde à nouveau dans deux semaines.
notice-eggs-too-cold = Des œufs dans tes comptages depuis { $weeks } semaines et jamais de larve : il fait trop froid pour qu’ils éclosent. Réchauffe lentement et regarde à nouveau dans un mois.
notice-males-only = Il ne naît que des mâles : la reine n’est peut-être plus là, ou pas fécondée. Pas de prévisions ; ne creuse jamais pour la chercher.
notice-quarantine-left = Garde-la à l’écart encore { $low } à { $high } jours (usage courant : 2 à 4 semaines).
notice-quarantine-over =
    À l’écart depuis { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : 2 à 4 semaines sont l’usage. Si rien n’a été vu, tu peux y mettre fin.
notice-keep-apart = Nouvelle à la maison : garde-la à l’écart des autres encore { $low } à { $high } jours (usage courant).
notice-granary = Des graines qui germent montrent que le grenier est trop humide : offre-lui un coin plus sec (usage courant).
notice-cocoon-substrate = Ses larves tissent des cocons : quand elles sont grandes, offre une pincée de substrat fin et sec (usage courant).
notice-wakes-in =
    À réveiller dans { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }.
notice-first-workers-in = Premières ouvrières dans { $low } à { $high } jours environ à { DEGREES($mean_c) }.
notice-next-workers-in = Nouvelles ouvrières dans { $low } à { $high } jours environ à { DEGREES($mean_c) }.
notice-coming-wide-flight = La fourchette est large parce que personne n’a noté le jour de son vol, et le couvain peut avoir tout âge : un regard sur les larves et les nymphes la resserre.
notice-coming-wide-look = La fourchette est large parce que personne n’a regardé ses larves et ses nymphes ces deux dernières semaines : un regard la resserre.
notice-coming-wide-kind = La fourchette est large parce que personne n’a mesuré le temps que met le couvain de son espèce (l’usage courant sert à la place).
notice-founding-stalled =
    Ses premières ouvrières ont { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } de retard : cette fondation est sans doute en panne. Laisse-la dans le noir et au calme deux semaines, puis regarde une fois (usage courant).

notice-census-more =
    Le { $on }, on a vu plus { $seen ->
        [eggs] d’œufs
        [larvae] de larves
        [pupae] de nymphes
       *[workers] d’ouvrières
    } que prévu.
notice-census-fewer =
    Le { $on }, on a vu moins { $seen ->
        [eggs] d’œufs
        [larvae] de larves
        [pupae] de nymphes
       *[workers] d’ouvrières
    } que prévu.
notice-census-sooner =
    Ce qui a été vu le { $on } ({ $seen ->
        [eggs] œufs
        [larvae] larves
        [pupae] nymphes
       *[workers] ouvrières
    }) dit que ce couvain est rapide.
notice-census-later =
    Ce qui a été vu le { $on } ({ $seen ->
        [eggs] œufs
        [larvae] larves
        [pupae] nymphes
       *[workers] ouvrières
    }) dit que ce couvain est lent.

notice-brood-no-forecast = Pas de prévision pour le couvain à { DEGREES($value) } : les chiffres valent de { DEGREES($low_c) } à { DEGREES($high_c) }.
notice-rest-over =
    Son repos devait finir il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : réchauffe-la, offre d’abord du sucre, et mets l’état sur « Va bien ». D’ici là elle compte comme au repos.
notice-rest-by-sensor = Depuis { $days } jours son capteur mesure { DEGREES($mean_c) } en moyenne, à la saison de son repos : elle compte comme au repos, et on ne la nourrit pas. Mets l’état sur « Au repos » pour dire quand elle doit se réveiller.
notice-rest-over-by-sensor = Après { $cold } jours froids, son capteur mesure { DEGREES($mean_c) } depuis { $days } jours : son repos est donc fini, et on la nourrit à nouveau, du sucre d’abord. Mets l’état sur « Va bien ».
notice-wakes-later =
    Selon son capteur, { $warm } jours de son repos étaient trop chauds pour compter : elle se réveille donc { $later ->
        [one] { $later } jour
       *[other] { $later } jours
    } plus tard que prévu.
notice-rest-unmarked = Elle est à { DEGREES($mean_c) } à la saison de son repos (habituel : { DEGREES($low_c) } à { DEGREES($high_c) }, usage courant) : si elle se repose, mets l’état sur « Au repos », et on ne la nourrit pas.
notice-rest-missed = Cette espèce se repose { $low_months } à { $high_months } mois en hiver, entre { DEGREES($low_c) } et { DEGREES($high_c) }, et devrait avoir commencé ; aucun repos n’est marqué. Mieux vaut tard que jamais : refroidis-la sur environ { $ramp_days } jours (usage courant).
notice-rest-after-first = Cette espèce se repose en hiver et aucun repos n’est marqué, mais ses premières ouvrières devraient éclore entre le { $low_on } et le { $high_on } : laisse-la au chaud jusqu’à ce qu’elles soient là et aient mangé, puis refroidis-la à { DEGREES($low_c, unit: "none") } – { DEGREES($high_c) } sur environ { $ramp_days } jours (usage courant).
notice-rest-larvae-wait = Environ { $low } à { $high } larves attendent sans doute dans le nid jusqu’au réveil ; œufs et nymphes dépérissent au froid. Inutile de regarder.
notice-rest-no-brood = Il ne reste sans doute plus de couvain dans le nid : œufs et nymphes dépérissent au froid, et la ponte reprend quand elle est réveillée et au chaud. Inutile de regarder.
notice-rest-begins-summer = Son repos d’été peut commencer dans { $low } à { $high } jours : elle ferme son nid et ne prend plus de nourriture. Quand plus rien n’est pris, mets l’état sur « Au repos » (usage courant).
notice-rest-begins = Son repos hivernal peut commencer dans { $low } à { $high } jours, quand le jour ne dure plus que { $hours } heures environ : refroidis-la à { DEGREES($low_c) } – { DEGREES($high_c) }, sur environ { $ramp_days } jours. Une fourchette, pas une règle (usage courant).
notice-rest-may-end =
    Le repos peut finir maintenant, au plus tard dans { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } (usage courant).
notice-tint-offered = De l’eau sucrée colorée a été offerte : regarde après 1, 8, 24 et 72 heures à travers les gastres clairs et gonflés et dans le couvain, et dis dans un contrôle où elle se voit (usage courant ; les fourmis sombres la cachent).
notice-tint-in-gasters = Couleur dans les gastres : des ouvrières ont bu, et se le sont peut-être partagé.
notice-tint-in-brood = Couleur dans le couvain : ce que les ouvrières ont bu est passé aux larves.
notice-tint-nowhere = Aucune couleur vue. Cela dit peu : des gastres sombres ou vides la cachent.
