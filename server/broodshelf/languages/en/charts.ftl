## The words of the charts.

chart-growth = Growth
chart-water = Water
chart-feeding = Food
chart-which = Chart
chart-day = Day
chart-workers = Workers
chart-level = Level
chart-share = Share as a picture
chart-no-picture = The picture could not be made.
chart-few = A chart needs at least two counts with a number.
chart-few-water = No water reading yet.
chart-few-food = No feeding logged yet.
chart-week = Week of
chart-sugar = Sugar
chart-protein = Protein and other food

# $first and $last are numbers of workers.
chart-growth-words = Workers counted: from { $first } to { $last }.
chart-water-words = { $days ->
    [one] At this pace { $days } day left until it is due.
   *[other] At this pace { $days } days left until it is due.
  }
chart-never = The level does not fall at present.
chart-due-now = The water is due now.
chart-food-words = { $count ->
    [one] { $count } feeding in the last half year.
   *[other] { $count } feedings in the last half year.
  }
chart-estimate = The dashed line is an estimate, the shade its range.
chart-growth-ahead = At this pace about { $best } by { $day }, likely { $low } to { $high }.
chart-behind = The shape behind: how warm its place was as measured, { $low } to { $high }.
