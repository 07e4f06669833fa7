## The larder, and what to get.

larder-title = The larder
larder-empty = No food is noted. Note what is in the house, and logging a feeding offers it first.
larder-used = Used up
larder-left-now = How much is left

# $left is a number, $whole an amount with its unit.
larder-by-logs = about { $left } left of { $whole }, by the feedings logged
larder-no-amount = Type a number.
larder-used-up = Marked as used up
larder-use-by = use by { $day }
larder-got = since { $day }
larder-never = Never offer this.
larder-held = { $days ->
    [one] On hold until { $day }, { $days } more day.
   *[other] On hold until { $day }, { $days } more days.
  }
larder-over = Past its day: throw it away.
larder-left = { $days ->
    [0] Use it today.
    [one] Good for { $days } more day.
   *[other] Good for { $days } more days.
  }
larder-add = Add a food
larder-mix = Mix sugar water
larder-size = Size
larder-size-open = Mixed or not known
larder-tint = Food colour in it
larder-no-tint = None
larder-tint-why = To see who drank: a blue food colour without carmine, the weakest tint that shows, one colony, one day, with undyed sugar water beside it. Common practice: no published strength, fading time or safety test for ants was found; keepers tell of deaths with a red one.
larder-food = Food
larder-origin = Where it comes from
larder-name = Name
larder-use-by-field = Use by
larder-refused = This does not go into the larder.
larder-go = Add it
larder-percent = Sugar
larder-of-weight = % sugar by weight
larder-water = Water
# $unit: mL or fl oz.
larder-of-water = { $unit } of water

# $sugar_g is a weight in grams.
larder-recipe = Stir { $sugar_g } g of sugar into { VOLUME($water_ml) } of warm water: about { VOLUME($total_ml) }.
larder-cool = Let it cool until it feels cold on your wrist. Warm water can scald: keep it away from children.
larder-keeps = In the fridge about 7 days (common practice); throw it away when it is cloudy.
larder-batch = Keep this batch in the larder

# The name of a food that was mixed at home.
larder-batch-name = sugar water { $percent } %
larder-lots = In the house

larder-get-title = What to get
larder-get-today = Get it today.
larder-get-by = Get it by { $day }.
larder-get-spoils = Spoils first

calculator-title = Calculators
