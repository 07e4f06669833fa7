## Unidades y colores de la comida.

measure-unit-drop = { $count ->
    [one] gota
   *[other] gotas
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] pieza
   *[other] piezas
  }
measure-unit-leg = { $count ->
    [one] pata
   *[other] patas
  }
measure-unit-slice = { $count ->
    [one] rodaja
   *[other] rodajas
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] semilla
   *[other] semillas
  }
measure-unit-leaf = { $count ->
    [one] hoja
   *[other] hojas
  }

measure-amount-drop = { $count ->
    [one] { $count } gota
   *[other] { $count } gotas
  }
measure-amount-piece = { $count ->
    [one] { $count } pieza
   *[other] { $count } piezas
  }
measure-amount-leg = { $count ->
    [one] { $count } pata
   *[other] { $count } patas
  }
measure-amount-slice = { $count ->
    [one] { $count } rodaja
   *[other] { $count } rodajas
  }
measure-amount-seed = { $count ->
    [one] { $count } semilla
   *[other] { $count } semillas
  }
measure-amount-leaf = { $count ->
    [one] { $count } hoja
   *[other] { $count } hojas
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

measure-ask-drop = Cuánto, en gotas
measure-ask-ml = Cuánto, en mL
measure-ask-fl-oz = Cuánto, en fl oz
measure-ask-piece = Cuánto, en piezas
measure-ask-leg = Cuánto, en patas
measure-ask-slice = Cuánto, en rodajas
measure-ask-mg = Cuánto, en mg
measure-ask-seed = Cuánto, en semillas
measure-ask-leaf = Cuánto, en hojas
measure-fl-oz = fl oz

measure-tint-blue = Azul
measure-tint-green = Verde
measure-tint-yellow = Amarillo
measure-tint-red = Rojo
