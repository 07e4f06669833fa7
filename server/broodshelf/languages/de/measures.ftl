## Einheiten und Farben von Futter.

measure-unit-drop = { $count ->
    [one] Tropfen
   *[other] Tropfen
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] Stück
   *[other] Stück
  }
measure-unit-leg = { $count ->
    [one] Bein
   *[other] Beine
  }
measure-unit-slice = { $count ->
    [one] Scheibe
   *[other] Scheiben
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] Samenkorn
   *[other] Samenkörner
  }
measure-unit-leaf = { $count ->
    [one] Blatt
   *[other] Blätter
  }

measure-amount-drop = { $count ->
    [one] { $count } Tropfen
   *[other] { $count } Tropfen
  }
measure-amount-piece = { $count ->
    [one] { $count } Stück
   *[other] { $count } Stück
  }
measure-amount-leg = { $count ->
    [one] { $count } Bein
   *[other] { $count } Beine
  }
measure-amount-slice = { $count ->
    [one] { $count } Scheibe
   *[other] { $count } Scheiben
  }
measure-amount-seed = { $count ->
    [one] { $count } Samenkorn
   *[other] { $count } Samenkörner
  }
measure-amount-leaf = { $count ->
    [one] { $count } Blatt
   *[other] { $count } Blätter
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

measure-ask-drop = Wie viel, in Tropfen
measure-ask-ml = Wie viel, in mL
measure-ask-fl-oz = Wie viel, in fl oz
measure-ask-piece = Wie viel, in Stück
measure-ask-leg = Wie viel, in Beinen
measure-ask-slice = Wie viel, in Scheiben
measure-ask-mg = Wie viel, in mg
measure-ask-seed = Wie viel, in Samenkörnern
measure-ask-leaf = Wie viel, in Blättern
measure-fl-oz = fl oz

measure-tint-blue = Blau
measure-tint-green = Grün
measure-tint-yellow = Gelb
measure-tint-red = Rot
