## Ce qu'il y a dans le nid et ce qui en sortira.

brood-first = Les premières ouvrières
brood-next = Nouvelles ouvrières
brood-days = { $high ->
    [one] Dans { $low } à { $high } jour.
   *[other] Dans { $low } à { $high } jours.
  }
brood-days-about = { $days ->
    [one] Dans { $days } jour environ.
   *[other] Dans { $days } jours environ.
  }
brood-between = Entre le { $from } et le { $to }
brood-on = Vers le { $day }
brood-any-by = D’un jour à l’autre, d’ici au { $day }
brood-any = D’un jour à l’autre
brood-at-latest = { $days ->
    [one] Au plus tard dans { $days } jour.
   *[other] Au plus tard dans { $days } jours.
  }
brood-not-before = Pas avant le { $day }
brood-likely = { $days ->
    [one] Sans doute vers le { $best }, dans { $days } jour ; peut-être seulement le { $high }.
   *[other] Sans doute vers le { $best }, dans { $days } jours ; peut-être seulement le { $high }.
  }
brood-perhaps = Peut-être seulement le { $high }.
brood-no-end = Combien de temps après, on ne peut pas encore le dire.
brood-warm = À { DEGREES($mean_c) }.
brood-none = Aucune en vue avant six mois, à la chaleur actuelle.

brood-ask-by-seen = { $brood ->
    [eggs] Des œufs devraient être là d’ici au { $day } : tu en as vu ?
    [larvae] Des larves devraient être là d’ici au { $day } : tu en as vu ?
   *[pupae] Des nymphes devraient être là d’ici au { $day } : tu en as vu ?
  }
brood-ask-by = { $brood ->
    [eggs] Des œufs devraient être là d’ici au { $day }.
    [larvae] Des larves devraient être là d’ici au { $day }.
   *[pupae] Des nymphes devraient être là d’ici au { $day }.
  }
brood-ask-now-seen = { $brood ->
    [eggs] Des œufs devraient déjà être là : tu en as vu ?
    [larvae] Des larves devraient déjà être là : tu en as vu ?
   *[pupae] Des nymphes devraient déjà être là : tu en as vu ?
  }
brood-ask-now = { $brood ->
    [eggs] Des œufs devraient déjà être là.
    [larvae] Des larves devraient déjà être là.
   *[pupae] Des nymphes devraient déjà être là.
  }
brood-ask-yes = Oui
brood-ask-not-yet = Pas encore
brood-ask-cannot-see = Pas visible
brood-ask-early = Déjà vu
brood-ask-looked = Quelqu’un a regardé le { $day }. La question revient à partir du { $again } : d’ici là, le calme aide davantage.
brood-ask-told = { $brood ->
    [eggs] Œufs vus le { $day }.
    [larvae] Larves vues le { $day }.
   *[pupae] Nymphes vues le { $day }.
  }
brood-ask-waits = Les jours seront recalculés à la prochaine connexion.
brood-ask-remark = { $brood ->
    [eggs] Recherche d’œufs : rien de visible
    [larvae] Recherche de larves : rien de visible
   *[pupae] Recherche de nymphes : rien de visible
  }

brood-open = Le couvain sur une ligne de temps

brood-why-title = Pourquoi ces jours
brood-why-nothing = Rien de ce qui a été vu ne les a encore déplacés : ce sont ceux de son espèce à cette chaleur.
brood-why-eight = Sur dix colonies comme celle-ci, huit tombent dans cette fourchette.
brood-why-unmeasured = Personne n’a mesuré la durée des stades dans son groupe. Les jours reposent sur l’usage courant, donc la fourchette est large. Ce que tu vois la resserre.
brood-why-source = Point de départ : { $source }.
brood-why-line = { $day } : { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] aucune ouvrière
    [one] { $count } ouvrière comptée
   *[other] { $count } ouvrières comptées
  }
brood-why-workers = ouvrières comptées
brood-why-seen-none = { $brood ->
    [eggs] pas d’œufs
    [larvae] pas de larves
    [pupae] pas de nymphes
   *[workers] pas d’ouvrières
  }
brood-why-seen-seen = { $brood ->
    [eggs] œufs vus
    [larvae] larves vues
    [pupae] nymphes vues
   *[workers] ouvrières vues
  }
brood-why-seen-few = { $brood ->
    [eggs] peu d’œufs
    [larvae] peu de larves
    [pupae] peu de nymphes
   *[workers] peu d’ouvrières
  }
brood-why-seen-some = { $brood ->
    [eggs] quelques œufs
    [larvae] quelques larves
    [pupae] quelques nymphes
   *[workers] quelques ouvrières
  }
brood-why-seen-many = { $brood ->
    [eggs] beaucoup d’œufs
    [larvae] beaucoup de larves
    [pupae] beaucoup de nymphes
   *[workers] beaucoup d’ouvrières
  }
brood-why-seen-taken = insectes acceptés
brood-why-seen-refused = insectes refusés

brood-why-moved-census-more = plus que prévu
brood-why-moved-census-fewer = moins que prévu
brood-why-moved-census-sooner = ce couvain est donc plus rapide que prévu
brood-why-moved-census-later = ce couvain est donc plus lent que prévu

brood-why-none = là où on en attendait

brood-why-larvae-census-more = il y a donc plus de larves que prévu
brood-why-larvae-census-fewer = il y a donc moins de larves que prévu

stalled-title = Cette fondation est sans doute en panne
stalled-days = { $days ->
    [one] Dans neuf fondations sur dix comme celle-ci, des ouvrières seraient nées il y a { $days } jour ou plus.
   *[other] Dans neuf fondations sur dix comme celle-ci, des ouvrières seraient nées il y a { $days } jours ou plus.
  }
stalled-about = Ce que font les éleveurs, dans cet ordre (usage courant) :
stalled-unfed-1 = Laisse le tube dans le noir et au calme deux semaines, au milieu de la chaleur qu’aime son espèce. Beaucoup de reines mangent leur couvain parce qu’on les regarde souvent.
stalled-unfed-2 = Ne la nourris pas pendant ces semaines : elle vit de ses réserves, et la nourriture pourrit à côté d’elle.
stalled-unfed-3 = Regarde ensuite une fois. Si le couvain a avancé, par exemple des larves à la place des œufs, il lui faut seulement plus de temps.
stalled-unfed-4 = Pas de couvain, ou moins qu’avant : offre une goutte d’eau sucrée et une miette d’insecte, et retire les restes après un jour. Une reine qui a mangé son couvain peut pondre à nouveau.
stalled-fed-1 = Laisse-la dans le noir et au calme, au milieu de la chaleur qu’aime son espèce, et regarde au plus une fois par semaine.
stalled-fed-2 = Continue à la nourrir : du sucre et un petit insecte tous les 3 à 5 jours, et retire les restes après un jour. Une reine qui a faim mange son couvain.
stalled-fed-3 = Après deux semaines, regarde de près. Si le couvain a avancé, par exemple des larves à la place des œufs, il lui faut seulement plus de temps.
stalled-last-1 = Plus d’eau, ou de la moisissure près du couvain : pose un tube neuf devant le sien et laisse-la déménager toute seule.
stalled-last-2 = Pas d’œufs pendant six à huit semaines chaudes : elle n’a sans doute jamais été fécondée, ou elle est épuisée. Du couvain de sa propre espèce, venu d’une colonie saine, est la dernière chose à essayer.

brood-line-ahead = Jusqu’où

brood-line-reach-56 = 8 semaines
brood-line-reach-182 = Six mois

brood-line-stage-eggs = Œufs
brood-line-stage-small-larvae = Petites larves
brood-line-stage-large-larvae = Grandes larves
brood-line-stage-pupae = Nymphes
brood-line-stage-workers = Ouvrières

brood-line-day = Jour
brood-line-today = aujourd’hui
brood-line-now = auj. { $number }
brood-line-about = { $best } ({ $low }–{ $high })
brood-line-summary = { $best ->
    [one] Aujourd’hui sans doute { $counts }. Le { $day } : environ { $best } ouvrière, probablement { $low } à { $high }.
   *[other] Aujourd’hui sans doute { $counts }. Le { $day } : environ { $best } ouvrières, probablement { $low } à { $high }.
  }
brood-line-count-eggs = { $count ->
    [0] aucun œuf
    [one] { $count } œuf
   *[other] { $count } œufs
  }
brood-line-count-small-larvae = { $count ->
    [0] aucune petite larve
    [one] { $count } petite larve
   *[other] { $count } petites larves
  }
brood-line-count-large-larvae = { $count ->
    [0] aucune grande larve
    [one] { $count } grande larve
   *[other] { $count } grandes larves
  }
brood-line-count-pupae = { $count ->
    [0] aucune nymphe
    [one] { $count } nymphe
   *[other] { $count } nymphes
  }
brood-line-count-workers = { $count ->
    [0] aucune ouvrière
    [one] { $count } ouvrière
   *[other] { $count } ouvrières
  }

brood-line-mark-line = le plus probable ; en pointillé : à venir
brood-line-mark-band = huit sur dix
brood-line-mark-dot = tu as compté, ou tu en as vu
brood-line-mark-hollow = tu as regardé, et il n’y en avait pas
brood-line-mark-due = naissance d’ouvrières

brood-line-scale = Chaque ligne a sa propre hauteur. Le passé est dessiné tel qu’on l’estimait alors.
