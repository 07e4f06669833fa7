## How a place was over time, and the files of its sensors.

climate-which = What is drawn
climate-span = For how long
climate-temperature = Temperature
climate-humidity = Humidity

climate-span-of-days = Two weeks
climate-span-of-weeks = Three months
climate-span-of-year = A year

climate-nothing = Nothing was measured or logged here in this time, and nothing is set.

# $mean, $low and $high are a warmth or a dampness with its unit.
climate-summary = { $mean } on average, { $low } to { $high }.
climate-measured-all = All of it was measured or read.
climate-measured = { $days ->
    [one] { $measured } of { $days } day measured or read.
   *[other] { $measured } of { $days } days measured or read.
  }
climate-key = The shade goes from the least to the most of a day. Dashed: assumed, as it is set.
climate-key-weeks = The shade goes from the least to the most of a week. Dashed: assumed, as it is set.
climate-comfort = The strip behind: what suits all who live here, { $low } to { $high }.
climate-no-comfort = No temperature suits all who live here.

# $name is what is awaited, $threshold a warmth, $since a day.
climate-degree-days = { $name }: { $sum } degree-days above { $threshold } since { $since }.
climate-degree-days-assumed = { $name }: { $sum } degree-days above { $threshold } since { $since }; { $percent } % of it assumed.
climate-day = Day
climate-week = Week of
climate-mean = Mean
climate-low = Least
climate-high = Most
climate-basis = How it is known

climate-basis-measured = measured
climate-basis-typed = read
climate-basis-assumed = assumed

climate-file = A file of a sensor
climate-file-hint = a table in CSV, its headings in the first line
climate-too-large = This file is larger than 4 MB: bring it in parts, the headings in the first line of each.
climate-time-column = Column of the time
climate-temperature-column = Column of the temperature
climate-humidity-column = Column of the humidity
climate-no-column = none
climate-unit = Measured in
climate-dates = Times are written

# Ways to write a time, each shown by an example: leave the figures.
climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = seconds since 1970

climate-zone = Times are of

climate-zone-of-household = the household
climate-zone-of-utc = UTC

climate-look = Look at it first
climate-take = Take it in
climate-taken = { $hours ->
    [one] Taken in: { $hours } hour. The days are drawn within ten minutes.
   *[other] Taken in: { $hours } hours. The days are drawn within ten minutes.
  }
climate-found = { $rows ->
    [one] { $rows } reading from { $from } to { $until }.
   *[other] { $rows } readings from { $from } to { $until }.
  }
climate-found-nothing = No row can be read.
climate-range = From { $low } to { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } hour, all of them new.
   *[other] { $hours } hours, all of them new.
  }
climate-new-hours = { $hours ->
    [one] { $hours } hour, { $new } of them new: the others were measured already and stay as they are.
   *[other] { $hours } hours, { $new } of them new: the others were measured already and stay as they are.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } row cannot be read and will be left out:
   *[other] { $rows } rows cannot be read and will be left out:
  }

# $why is a sentence.
climate-bad-line = Line { $line }: { $why }
climate-give-out = Save all hours as a file
