## Jednostki i kolory pokarmu.

measure-unit-drop = { $count ->
    [one] kropla
    [few] krople
    [many] kropli
   *[other] kropli
  }
measure-unit-ml = mL
measure-unit-piece = { $count ->
    [one] sztuka
    [few] sztuki
    [many] sztuk
   *[other] sztuki
  }
measure-unit-leg = { $count ->
    [one] noga
    [few] nogi
    [many] nóg
   *[other] nogi
  }
measure-unit-slice = { $count ->
    [one] plasterek
    [few] plasterki
    [many] plasterków
   *[other] plasterka
  }
measure-unit-mg = mg
measure-unit-seed = { $count ->
    [one] nasiono
    [few] nasiona
    [many] nasion
   *[other] nasiona
  }
measure-unit-leaf = { $count ->
    [one] liść
    [few] liście
    [many] liści
   *[other] liścia
  }

measure-amount-drop = { $count ->
    [one] { $count } kropla
    [few] { $count } krople
    [many] { $count } kropli
   *[other] { $count } kropli
  }
measure-amount-piece = { $count ->
    [one] { $count } sztuka
    [few] { $count } sztuki
    [many] { $count } sztuk
   *[other] { $count } sztuki
  }
measure-amount-leg = { $count ->
    [one] { $count } noga
    [few] { $count } nogi
    [many] { $count } nóg
   *[other] { $count } nogi
  }
measure-amount-slice = { $count ->
    [one] { $count } plasterek
    [few] { $count } plasterki
    [many] { $count } plasterków
   *[other] { $count } plasterka
  }
measure-amount-seed = { $count ->
    [one] { $count } nasiono
    [few] { $count } nasiona
    [many] { $count } nasion
   *[other] { $count } nasiona
  }
measure-amount-leaf = { $count ->
    [one] { $count } liść
    [few] { $count } liście
    [many] { $count } liści
   *[other] { $count } liścia
  }
measure-amount-ml = { VOLUME($count) }
measure-amount-mg = { $count } mg
measure-mm = { $mm } mm

measure-ask-drop = Ile, w kroplach
measure-ask-ml = Ile, w mL
measure-ask-fl-oz = Ile, w fl oz
measure-ask-piece = Ile, w sztukach
measure-ask-leg = Ile, w nogach
measure-ask-slice = Ile, w plasterkach
measure-ask-mg = Ile, w mg
measure-ask-seed = Ile, w nasionach
measure-ask-leaf = Ile, w liściach
measure-fl-oz = fl oz

measure-tint-blue = Niebieski
measure-tint-green = Zielony
measure-tint-yellow = Żółty
measure-tint-red = Czerwony
