## Unités et couleurs.

measure-unit-drop = { $count ->
    [one] goutte
   *[other] gouttes
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] pièce
   *[other] pièces
  }
measure-unit-leg = { $count ->
    [one] patte
   *[other] pattes
  }
measure-unit-slice = { $count ->
    [one] rondelle
   *[other] rondelles
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] graine
   *[other] graines
  }
measure-unit-leaf = { $count ->
    [one] feuille
   *[other] feuilles
  }

measure-amount-drop = { $count ->
    [one] { $count } goutte
   *[other] { $count } gouttes
  }
measure-amount-piece = { $count ->
    [one] { $count } pièce
   *[other] { $count } pièces
  }
measure-amount-leg = { $count ->
    [one] { $count } patte
   *[other] { $count } pattes
  }
measure-amount-slice = { $count ->
    [one] { $count } rondelle
   *[other] { $count } rondelles
  }
measure-amount-seed = { $count ->
    [one] { $count } graine
   *[other] { $count } graines
  }
measure-amount-leaf = { $count ->
    [one] { $count } feuille
   *[other] { $count } feuilles
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

measure-ask-drop = Combien, en gouttes
measure-ask-ml = Combien, en mL
measure-ask-fl-oz = Combien, en fl oz
measure-ask-piece = Combien, en pièces
measure-ask-leg = Combien, en pattes
measure-ask-slice = Combien, en rondelles
measure-ask-mg = Combien, en mg
measure-ask-seed = Combien, en graines
measure-ask-leaf = Combien, en feuilles
measure-fl-oz = fl oz

measure-tint-blue = Bleu
measure-tint-green = Vert
measure-tint-yellow = Jaune
measure-tint-red = Rouge
