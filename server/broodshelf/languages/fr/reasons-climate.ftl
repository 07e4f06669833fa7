reason-too-hot = { DEGREES($temperature_c) } : au-dessus de { DEGREES($limit_c) } cette espèce est en danger ({ $source }). Coupe le chauffage, sors-la du soleil, donne-lui un côté frais et un côté humide. Pas de frigo. Note une nouvelle mesure quand il fait plus frais.
reason-too-cold = { DEGREES($temperature_c) } : sous { DEGREES($limit_c) } cette espèce est en danger tant qu’elle est éveillée ({ $source }). Mets-la aujourd’hui dans un endroit plus chaud et laisse-la se réchauffer lentement. Note une nouvelle mesure quand il fait plus chaud.
reason-overheating = Le capteur mesure { DEGREES($temperature_c) } : au-dessus de { DEGREES($limit_c) } cette espèce est en danger ({ $source }). Coupe le chauffage, sors-la du soleil, donne-lui un côté frais et un côté humide. Pas de frigo.
reason-freezing = Le capteur mesure { DEGREES($temperature_c) } : l’eau gèle et le tube peut éclater. Mets-la dans un endroit frais au-dessus de { DEGREES($limit_c) }, sans hâte et sans chauffage.
reason-rest-colder = Le capteur mesure { DEGREES($temperature_c) }, sous les { DEGREES($limit_c) } que cette espèce supporte au repos (usage courant). Mets-la dans un endroit frais au-dessus de cela, sans hâte et sans chauffage.
reason-rising-fast = Il fait { DEGREES($temperature_c) } et cela monte de { DEGREES_APART($rise_c) } par heure : à ce rythme, { DEGREES($limit_c) } seront dépassés d’ici deux heures, et cette espèce y est en danger ({ $source }). Vois si le soleil tape dessus ou si le chauffage ne s’arrête pas, et coupe-le.
reason-heater-on = Depuis { $hours } heures il fait { DEGREES_APART($by_c) } de plus que d’habitude à ce moment : { DEGREES($temperature_c) } maintenant. Si un chauffage la tient au chaud, vois si son thermostat est bloqué ; sinon cherche le soleil ou un radiateur.
reason-heater-off = Depuis { $hours } heures il fait { DEGREES_APART($by_c) } de moins que d’habitude à ce moment : { DEGREES($temperature_c) } maintenant. Si un chauffage la tient au chaud, vois s’il marche encore ; sinon cherche une fenêtre ouverte.
reason-fridge-open = Il fait { DEGREES($temperature_c) } dans le frigo au lieu de { DEGREES($usual_c) } : vois si la porte est fermée et si le frigo tourne. Une colonie qui se réchauffe pendant son repos use ce dont elle vit.
reason-dry-air = L’air a { $humidity_pct } % d’humidité au lieu de { $usual_pct } % : le nid sèche plus vite qu’avant. Regarde son côté humide et humidifie-le s’il est sec.
reason-rest-water =
    Vu il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }. Pendant son repos, on regarde l’eau tous les { $low } à { $high } jours (usage courant).
reason-rest-airing = Ouvre la boîte du frigo une minute une fois par semaine : l’air y est usé (usage courant). Dernière aération il y a { $days } jours.
reason-wake-up = Son repos finit ce jour-là : réchauffe-la sur environ { $ramp_days } jours, offre d’abord du sucre (usage courant), et mets l’état sur « Va bien ».
reason-wake-up-summer = Son repos d’été finit ce jour-là : mets l’état sur « Va bien » et offre à nouveau du sucre et de petites proies (usage courant).
reason-rest-too-warm = Elle est marquée au repos, mais à son emplacement il fait { DEGREES($mean_c) } ; au-dessus de { DEGREES($limit_c) } elle est éveillée et mange ses réserves (usage courant). Soit elle est dans un endroit plus frais : choisis cet emplacement. Soit tu la refroidis. Soit tu mets l’état sur « Va bien ». D’ici là on lui offre à manger comme si elle était éveillée.
reason-rest-not-for-species = Elle est marquée au repos, mais cette espèce n’a pas de repos annuel : garde-la à { DEGREES($least_c) } au moins (usage courant ; maintenant { DEGREES($mean_c) }) et mets l’état sur « Va bien ». D’ici là on la nourrit comme si elle était éveillée.
reason-rest-frost = Trop froid pendant son repos : { DEGREES($coldest_c) }. Mets-la aujourd’hui dans un endroit au-dessus de { DEGREES($limit_c) }, sans la réchauffer (usage courant).

source-common-practice = usage courant
