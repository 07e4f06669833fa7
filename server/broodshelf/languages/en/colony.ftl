## A colony: its screen, its stages and conditions.

colony-gone = Not here
colony-gone-why = This colony is not on this phone. It may have been deleted, or this phone has not synced yet.
colony-change = Change
colony-new = A new colony
colony-log = Log
colony-plan = The plan
colony-diary = Diary
colony-charts = Over the months
colony-paper = Print its record
colony-past = Its history
colony-no-plan = The plan comes with the next connection to the server. Logging works at once.

colony-stage-founding = Founding queen
colony-stage-nanitics = Nanitics
colony-stage-growing = Growing
colony-stage-mature = Mature

colony-condition-well = Well
colony-condition-settling = Settling
colony-condition-resting = Resting
colony-condition-queenless-suspected = Queen in doubt
colony-condition-quarantine = Quarantine
colony-condition-given-away = Given away
colony-condition-dead = Dead

## What a keeper says of a colony.

colony-form-change = Change { $name }
colony-form-name = Name
colony-form-number = Number on the vessel

# Behind the name of a field.
colony-form-optional = (optional)
colony-form-species = Species
colony-form-species-hint = from the list, or your own words
colony-form-length = Worker length in mm
colony-form-length-hint = (needed only for a species that is not in the list)
colony-form-lives = Lives in
colony-form-not-listed = not in the list
colony-form-outworld = It has an outworld
colony-form-stage = Stage
colony-form-condition = Condition
colony-form-roughly = Workers, roughly
colony-form-few = Few (under 20)
colony-form-some = Some (20 to 100)
colony-form-many = Many
colony-form-larvae = Larvae
colony-form-needed = Give the colony a name.
colony-form-save = Save
colony-form-add = Add the colony
colony-form-more = Vessel, number and more
colony-form-stings = This species stings. Allergic people need help from others here.

colony-form-fate-rests-since = Resting since
colony-form-fate-wakes-on = Wake it up on
colony-form-fate-went-to = To whom it went
colony-form-fate-died-of = What it died of, if known
colony-form-fate-came-from = Where it came from
colony-form-fate-host = Species of the host

colony-form-own-species = Your own species
colony-form-own-eats = It eats
colony-form-own-founds = Its queen founds
colony-form-own-stings = It stings

colony-form-own-guild-omnivore = Sugar and insects
colony-form-own-guild-predator = Mostly insects
colony-form-own-guild-harvester = Seeds
colony-form-own-guild-honeypot = Stores sugar in repletes
colony-form-own-guild-fungus-grower = Leaves for its fungus

colony-form-own-founding-claustral = Alone, without food
colony-form-own-founding-semi-claustral = Goes out for food
colony-form-own-founding-parasitic = With host workers

colony-form-own-vessel = Your own vessel
colony-form-own-bore = Inner width or bore in mm
colony-form-own-vessel-length = Length in mm
