## The past of a record: names of fields and values, who changed what, and what went.

history-title = History
history-offline = The history is kept on the server, so this needs a connection.
history-again = Try again
history-unsent = Not sent yet. Its history begins with the next connection.
history-somebody = Somebody

# Stands behind a name: “Anna noted it”.
history-made = { $who } noted it
history-changed = { $who } changed it
history-out = { $who } deleted it
history-back = { $who } brought it back

# The value that stood there before.
history-was = before: { $value }
history-not-stood = { $field }: “{ $value }” did not stand: a change on another phone was later.
history-bring = Bring “{ $value }” back
history-clear = Leave it empty again
history-brought = Brought back

history-gone-title = What went
history-gone-about = What was deleted or voided last. Each can be taken back, with all that was in it.
history-gone-none = Nothing was deleted.
history-gone-take-back = Take it back
history-gone-back = { $what } is back
history-gone-link = What went

# Who deleted it, and when.
history-gone-by = { $who }, { $when }

history-register-household = The house
history-register-person = Person
history-register-colony = Colony
history-register-vessel = Vessel
history-register-place = Place
history-register-lot = Food in the larder
history-register-rule = Own rhythm
history-register-tasting = Tasting
history-register-pass = Pass

history-field-resting-since = Resting since
history-field-condition-until = Until
history-field-came-from = Came from
history-field-went-to = Went to
history-field-died-of = Died of
history-field-host-species-code = Host
history-field-name = Name
history-field-stage = Stage
history-field-condition = Condition
history-field-number = Number
history-field-species-code = Species
history-field-species-name = Species
history-field-queens = Queens
history-field-gone = Deleted
history-field-worker-length-mm = Worker length in mm
history-field-guild = What it eats
history-field-founding-mode = How its queen founds
history-field-stings = Stings
history-field-vessel-id = Vessel
history-field-place-id = Place
history-field-interval-days = Your own intervals
history-field-amount = Amount
history-field-unit = Unit
history-field-text = Text
history-field-zone = Time zone
history-field-care-hours = Care hours
history-field-remark = Remark
history-field-happened-at = When
history-field-need = What for
history-field-food-code = Food
history-field-lot-id = Lot
history-field-origin = Where it comes from
history-field-size-class = Size
history-field-feeding-id = Feeding
history-field-outcome = What became of it
history-field-leftovers-removed = Leftovers taken out
history-field-level = Feeder level
history-field-colour-seen = Where the colour shows
history-field-tint = Food colour
history-field-action = What was done
history-field-reading = Level
history-field-level-mm = Level in mm
history-field-workers = Workers
history-field-workers-coarse = Workers, roughly
history-field-fault = What is wrong
history-field-resolved-at = Mended
history-field-colony-ids = Colonies
history-field-food-codes = Foods
history-field-started-on = First day
history-field-ended-on = Ended
history-field-use-by = Use by
history-field-got-on = Since
history-field-tasting-id = Tasting
history-field-despite = Logged despite
history-field-until = Put off until
history-field-why = Reason
history-field-day-temp-c = By day
history-field-night-temp-c = At night
history-field-temperature-c = Temperature
history-field-humidity-pct = Humidity, %
history-field-place-type = What it is
history-field-vessel-code = Vessel
history-field-has-outworld = Outworld
history-field-founded-on = Founded
history-field-acquired-on = With you since
history-field-finished-on = Used up
history-field-starts-on = First day
history-field-ends-on = Last day

history-value-empty = empty
history-value-yes = yes
history-value-no = no
history-value-elsewhere = not on this phone

# $need is what is fed or looked at, as sugar or water.
history-value-every = { $days ->
    [one] { $need } every { $days } day
   *[other] { $need } every { $days } days
  }
history-value-read = Read
