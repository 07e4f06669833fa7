reason-interval-band = Habituel pour cette espèce et cette taille : tous les { $low } à { $high } jours (usage courant).
reason-interval-keeper =
    Ton réglage : { $days ->
        [1] tous les jours
        [one] tous les { $days } jours
       *[other] tous les { $days } jours
    }.
reason-interval-chosen = Les jours et à l’heure que tu as choisis.
reason-last-fed =
    Dernier repas offert il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }.
reason-never-fed = Aucun nourrissage n’est encore noté.
reason-no-larvae = Pas de larves vues : les protéines peuvent attendre plus longtemps.
reason-slow-species = Cette espèce mange lentement : les intervalles sont une fois et demie plus longs (usage courant).
reason-ignored-did-not-count = Le dernier repas a été ignoré, il ne compte donc pas.
reason-leftovers =
    Offert il y a { $hours ->
        [one] { $hours } heure
       *[other] { $hours } heures
    } ; retire le reste avant qu’il se gâte (usage courant : après { $after } heures).
reason-crop-lasts =
    Un jabot plein dure environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } à { DEGREES($temp_c) } ; la moitié est gardée en réserve.
reason-freshness-rules =
    Ce qui est offert reste bon environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } (usage courant) ; en donner plus ne dure pas plus.
reason-amount-rules = { $mg } mg de sucre ont été offerts et la colonie en use environ { $mg_per_day } mg par jour : cela s’épuise donc d’abord.
reason-band-rules =
    L’estimation donnerait un autre rythme ; il est tenu à { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }, entre la moitié et le double des { $low } à { $high } jours habituels (usage courant).
reason-brood-grows =
    Environ { $larvae ->
        [one] { $larvae } larve demande
       *[other] { $larvae } larves demandent
    } { $mg_per_day } mg de protéines par jour à { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg de protéines font environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } de croissance.
reason-bank-rules =
    Le couvain ne peut pas stocker de protéines plus d’environ { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }, même si la proie est grosse (usage courant).
reason-no-brood-expected = Aucune nouvelle ouvrière n’est à attendre, et personne n’a compté de larves ces 4 dernières semaines : seulement un peu de protéines (usage courant).
reason-quiet-season = D’après son horloge annuelle cette espèce ralentit maintenant, et personne n’a compté de larves ces 4 dernières semaines : seulement un peu de protéines. Les larves que tu comptes sont nourries (usage courant).
reason-maintenance-only = Pas de larves : un peu de protéines suffit pour garder les ouvrières en forme.
reason-appetite-learnt =
    Appris de { $checks ->
        [one] { $checks } contrôle
       *[other] { $checks } contrôles
    } : cette colonie mange environ { $times } fois l’habituel.
reason-appetite-at-least =
    Tout a été pris à chaque contrôle qui dit quelque chose ({ $checks }) : cette colonie mange au moins { $times } fois l’habituel environ. On saura combien de plus quand il restera quelque chose.
reason-appetite-at-most =
    Il restait quelque chose à chaque contrôle qui dit quelque chose ({ $checks }) : cette colonie mange au plus { $times } fois l’habituel environ. On ne peut pas apprendre combien de moins tant qu’il reste même de la plus petite portion.
reason-appetite-hidden = De tels contrôles ne disent pas combien cette colonie mange : ils pouvaient à peine finir autrement, comme une goutte entière devant une poignée de fourmis. Le plan garde l’habituel pour sa taille.
reason-refusal-food = Le dernier repas a été laissé : mets d’abord en cause l’aliment, et essaies-en un autre.
reason-refusal-state = Le dernier repas a été laissé, mais la colonie s’installe, ralentit avant son repos, ou tout son couvain est en nymphes : cela ne dit rien de son appétit.
reason-protein-outweighs-sugar = Plus de protéines ({ $protein_mg } mg) que de sucre ({ $sugar_mg } mg) en { $weeks } semaines : un tel régime a raccourci la vie d’ouvrières (Dussutour and Simpson 2012). Offre plus de sucre ; des larves adoucissent le mal.
reason-census-guessed = Personne n’a encore compté : environ { $workers } ouvrières sont supposées d’après le stade (usage courant).
reason-census-unknown = Personne n’a encore compté et aucun stade n’est choisi : note un comptage, d’ici là les quantités sont devinées.
reason-census-old =
    Le dernier comptage date de { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } ; un nouveau regard rendrait cela plus sûr.
reason-workers-fell-to-zero = Au dernier regard, plus d’ouvrières là où il y en avait. Si c’était une erreur, note un nouveau comptage.
