## Unidades e cores da comida.

measure-unit-drop = { $count ->
    [one] gota
   *[other] gotas
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] unidade
   *[other] unidades
  }
measure-unit-leg = { $count ->
    [one] pata
   *[other] patas
  }
measure-unit-slice = { $count ->
    [one] fatia
   *[other] fatias
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] semente
   *[other] sementes
  }
measure-unit-leaf = { $count ->
    [one] folha
   *[other] folhas
  }

measure-amount-drop = { $count ->
    [one] { $count } gota
   *[other] { $count } gotas
  }
measure-amount-piece = { $count ->
    [one] { $count } unidade
   *[other] { $count } unidades
  }
measure-amount-leg = { $count ->
    [one] { $count } pata
   *[other] { $count } patas
  }
measure-amount-slice = { $count ->
    [one] { $count } fatia
   *[other] { $count } fatias
  }
measure-amount-seed = { $count ->
    [one] { $count } semente
   *[other] { $count } sementes
  }
measure-amount-leaf = { $count ->
    [one] { $count } folha
   *[other] { $count } folhas
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

measure-ask-drop = Quanto, em gotas
measure-ask-ml = Quanto, em mL
measure-ask-fl-oz = Quanto, em fl oz
measure-ask-piece = Quanto, em unidades
measure-ask-leg = Quanto, em patas
measure-ask-slice = Quanto, em fatias
measure-ask-mg = Quanto, em mg
measure-ask-seed = Quanto, em sementes
measure-ask-leaf = Quanto, em folhas
measure-fl-oz = fl oz

measure-tint-blue = Azul
measure-tint-green = Verde
measure-tint-yellow = Amarelo
measure-tint-red = Vermelho
