## Before the keeper goes away.

holiday-title = Avant de partir
holiday-about = Deux dates disent quelles colonies n’ont besoin de personne, et quoi remplir le dernier jour.
holiday-leave = Tu pars
holiday-back = Tu reviens
holiday-go = Regarder plus loin
holiday-none = Aucune colonie n’a encore de plan.
holiday-verdict-nobody = N’a besoin de personne.
holiday-verdict-nobody-after-top-up = N’a besoin de personne, une fois remplie.
holiday-visit = { $days ->
    [1] Il faut passer tous les jours.
    [one] Il faut passer tous les { $days } jours.
   *[other] Il faut passer tous les { $days } jours.
  }
holiday-top-up = Ton dernier jour :
holiday-full = bien remplir
holiday-travel = Si une colonie voyage avec toi
holiday-pass = Créer un pass pour les visites
