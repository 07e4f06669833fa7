nudge-one-food = { $need } pour { $colony }
nudge-one-todo = { $todo } : { $colony }
nudge-same-need = { $n ->
    [one] { $need } pour { $n } colonie
   *[other] { $need } pour { $n } colonies
  }
nudge-same-todo = { $n ->
    [one] { $todo } : { $n } colonie
   *[other] { $todo } : { $n } colonies
  }
nudge-one-colony = { $colony } : { $needs }
nudge-colonies = { $n ->
    [one] { $n } colonie : { $needs }
   *[other] { $n } colonies : { $needs }
  }
nudge-need-for = { $need } pour { $n }
nudge-line = { $colony } : { $what }
nudge-more = et { $n } de plus

nudge-short-title = C’est l’heure de la tournée
nudge-short-body = Ouvre l’app pour voir ce qu’il faut à tes colonies.
nudge-test-title = Les rappels marchent sur ce téléphone
nudge-test-body = Ce n’est qu’un essai. Il n’y a rien à faire pour cela.

nudge-new-phone-title = Un nouveau téléphone est entré
nudge-new-phone-body = { $phone }, pour { $person }. Si ce n’est aucun de vous, déconnecte-le sous Maison.
nudge-link-made-title = Nouveau lien pour { $pass }
nudge-link-made-body = Créé par { $person }. Qui a le lien peut ouvrir le pass ; un nouveau lien y met fin.
nudge-pass-opened-title = { $pass } : le pass a été ouvert
nudge-pass-opened-body = Sur { $phone }. Si cela ne devait pas être, reprends le pass.
nudge-sensor-silent-title = { $sensor } ne dit plus rien
nudge-sensor-silent-body =
    Rien n’est venu de lui depuis { $hours ->
        [one] { $hours } heure
       *[other] { $hours } heures
    } ({ $place }). Regarde son alimentation et son chemin vers le serveur ; d’ici là, les plans suivent ce que tu relèves ou règles.
nudge-sensor-broken-title = { $sensor } mesure n’importe quoi
nudge-sensor-broken-body = Ce qu’il envoie est impossible ({ $place }). Regarde son câble et son alimentation ; ce qu’il envoie est laissé de côté tant que cela n’a pas de sens.
