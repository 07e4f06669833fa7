## Units and colours of food.

# The unit alone, beside a field with its number.
measure-unit-drop = { $count ->
    [one] drop
   *[other] drops
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] piece
   *[other] pieces
  }
measure-unit-leg = { $count ->
    [one] leg
   *[other] legs
  }
measure-unit-slice = { $count ->
    [one] slice
   *[other] slices
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] seed
   *[other] seeds
  }
measure-unit-leaf = { $count ->
    [one] leaf
   *[other] leaves
  }

# A number with its unit.
measure-amount-drop = { $count ->
    [one] { $count } drop
   *[other] { $count } drops
  }
measure-amount-piece = { $count ->
    [one] { $count } piece
   *[other] { $count } pieces
  }
measure-amount-leg = { $count ->
    [one] { $count } leg
   *[other] { $count } legs
  }
measure-amount-slice = { $count ->
    [one] { $count } slice
   *[other] { $count } slices
  }
measure-amount-seed = { $count ->
    [one] { $count } seed
   *[other] { $count } seeds
  }
measure-amount-leaf = { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

# How much of a food is in the house.
measure-ask-drop = How much, in drops
measure-ask-ml = How much, in mL
measure-ask-fl-oz = How much, in fl oz
measure-ask-piece = How much, in pieces
measure-ask-leg = How much, in legs
measure-ask-slice = How much, in slices
measure-ask-mg = How much, in mg
measure-ask-seed = How much, in seeds
measure-ask-leaf = How much, in leaves
measure-fl-oz = fl oz

measure-tint-blue = Blue
measure-tint-green = Green
measure-tint-yellow = Yellow
measure-tint-red = Red
