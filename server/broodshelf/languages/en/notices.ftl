### What is told of a colony beside its tasks: its stage, its season, its doubts.

notice-plan-failed = This plan could not be made anew: what you see is an old one, an estimate. Go by what you see in the nest and the tubes. The server tries again within the hour; its log says where it failed.
notice-claustral = A founding queen lives on her reserves: no food and no disturbance, at most one quiet look a week. First food 2 to 7 days after the first workers (common practice).
notice-claustral-fungus = A founding queen lives on her reserves and grows her garden from the crumb of fungus that she brought: no leaves and no disturbance, at most one quiet look a week. First leaves 2 to 7 days after the first workers (common practice).
notice-stage-unknown = Nobody has said how far this colony is, so the plan is careful for both: only what does no harm to a founding queen and what a colony needs most. A stage or a count makes it right.
notice-settling = Settling: a few quiet days.
notice-resting = In winter rest.
notice-resting-summer = In its summer rest, with the nest closed: it takes no food, only its water is looked at (common practice).
notice-rest-window = This species rests { $low_months } to { $high_months } months at { DEGREES($low_c) } to { DEGREES($high_c) } (common practice). A range, not a rule.
notice-queen-lays = The queen is marked as in doubt, but eggs were counted last: if they become larvae, set its condition to well. Forecasts are off until then.
notice-queenless = The queen is in doubt: forecasts are off. Never dig for her.
notice-quarantine = Apart from the others: feed it last, with its own tweezers.
notice-length-clamped = The formulas for mass hold for workers up to a length below these { $given_mm } mm: it is reckoned as for { $used_mm } mm.
notice-mass-clamped-low = By their length some of these workers may weigh less than { $limit_mg } mg, the least for which the rates are known: that stands in.
notice-mass-clamped-high = By their length some of these workers may weigh more than { $limit_mg } mg, the most for which the rates are known: that stands in.
notice-temperature-clamped = The rates are known from { DEGREES(10) } to { DEGREES(40) }: at its { DEGREES($mean_c) } it is reckoned as at { DEGREES($used_c) }.
notice-colder-than-set = Colder than you set: by the sensor { DEGREES($measured_c) } in the last three days instead of { DEGREES($set_c) }. The plan goes by the sensor.
notice-warmer-than-set = Warmer than you set: by the sensor { DEGREES($measured_c) } in the last three days instead of { DEGREES($set_c) }. The plan goes by the sensor.
notice-species-unknown = The species is not in the list: the plan goes by worker length and common practice.
notice-quiet-for =
    Leave her in the dark for another { $days ->
        [one] { $days } day
       *[other] { $days } days
    } (common practice); then a quiet look is fine.
notice-quiet-look = A quiet look is fine today, then none for a week.
notice-fed-queens-choice = Your choice: claustral queens need no food, but in a published study (Lasius niger) fed queens raised more pupae and workers. If you feed, a tiny drop, seldom and without light or shaking.
notice-first-food-soon =
    The first workers are here. Wait { $low } to { $high ->
        [one] { $high } day
       *[other] { $high } days
    } with the first food (common practice).
notice-first-food-now =
    The first workers are here: time for the first food, within { $days ->
        [one] { $days } day
       *[other] { $days } days
    } (common practice); no more than its tasks say.
notice-semi-claustral = This queen hunts while she founds: sugar and small prey every { $low } to { $high } days (common practice).
notice-semi-claustral-harvester = This queen gathers while she founds: crushed seeds always within reach, small prey every { $low } to { $high } days (common practice).
notice-semi-claustral-fungus-grower = This queen goes out for leaves while she founds: fresh pieces for her garden every { $low } to { $high } days, no prey and no sugar (common practice).
notice-alone = A queen without workers, past her founding: her reserves are spent. Sugar and small prey every { $low } to { $high } days (common practice), little light, no shaking.
notice-alone-harvester = A queen without workers, past her founding: her reserves are spent. Crushed seeds within reach and small prey every { $low } to { $high } days (common practice), little light, no shaking.
notice-alone-fungus-grower = A queen without workers, past her founding: she must tend her garden alone. Fresh leaf pieces every { $low } to { $high } days (common practice), little light, no shaking.
notice-colony-empty = Neither a queen nor workers were counted: nothing is fed. If pupae are left, they may still hatch: log a count then. Else set the colony to dead, with the cause.
notice-parasitic = This queen cannot raise brood without workers of a host: give her some, or pupae of the host, as soon as you can. Until then a drop of sugar, no prey (common practice).
notice-parasitic-pupae = Pupae are with this queen: what hatches from a host's will feed her. Until then a drop of sugar, no prey (common practice).
notice-parasitic-hosts = Workers of the host feed this queen, and she lays.
notice-note-host = Note the host species, how many you gave her and from which colony.
notice-settles = It has just moved: leave it quiet for another { $low } to { $high } days. Refused food means nothing now (common practice).
notice-too-cold-for-protein = At { DEGREES($day_c) } there is no protein: below { DEGREES($limit_c) } it spoils uneaten (common practice).
notice-too-cold-perhaps-rest = At { DEGREES($day_c) } there is no protein: below { DEGREES($limit_c) } it spoils uneaten (common practice). If this is its winter rest, set its condition to resting.
notice-too-cold-for-species = At { DEGREES($day_c) } there is no protein: below { DEGREES($limit_c) } it spoils uneaten (common practice). This species has no yearly rest: bring it to a warmer place, at least { DEGREES(20) } (common practice).
notice-yearly-clock = Late in its year this species slows down even when it is warm: few eggs are no worry. Nobody has counted larvae in the last 4 weeks: only a little protein until somebody does.
notice-yearly-clock-larvae = Late in its year this species slows down even when it is warm; but larvae were counted, so they are fed. What is left uneaten is no worry now.
notice-yearly-clock-none = Late in its year this species slows down even when it is warm: no larvae and few eggs are no worry.
notice-yearly-clock-summer = This species slows down in summer: few eggs are no worry. Nobody has counted larvae in the last 4 weeks: only a little protein until somebody does.
notice-yearly-clock-larvae-summer = This species slows down in summer; but larvae were counted, so they are fed. What is left uneaten is no worry now.
notice-yearly-clock-none-summer = This species slows down in summer: no larvae and few eggs are no worry.
notice-queen-doubt = No eggs in your counts for { $weeks } active weeks (common practice: 6 to 8): the queen may be gone. Keep feeding, look again in two weeks; never dig for her.
notice-no-queen = No queen was counted: the workers live on for months, but no new workers come. Larvae that are there are fed, then only a little protein; forecasts are off. Never dig for her.
notice-gamergates = No queen was counted; in this species mated workers lay, so that may be in order: eggs and larvae tell.
notice-eggs-without-larvae = Eggs in your counts for { $weeks } active weeks and never a larva (common practice: doubt from 6 on): they may be unfertilised, or eaten. Leave her in peace and warm enough, and look again in two weeks.
notice-eggs-too-cold = Eggs in your counts for { $weeks } weeks and never a larva: its place is too cold for them to hatch. Warm it up slowly and look again in a month.
notice-males-only = Only males come out: the queen may be gone or unmated. Forecasts are off; never dig for her.
notice-quarantine-left = Keep it apart for another { $low } to { $high } days (common practice: 2 to 4 weeks).
notice-quarantine-over =
    Apart for { $days ->
        [one] { $days } day
       *[other] { $days } days
    } now: 2 to 4 weeks are usual. If nothing was seen, end it.
notice-keep-apart = New in the house: keep it apart from the others for another { $low } to { $high } days (common practice).
notice-granary = Seeds that sprout mean that the granary is too damp: give it a drier corner (common practice).
notice-cocoon-substrate = Its larvae spin cocoons: when they are large, offer a pinch of fine dry substrate (common practice).
notice-wakes-in =
    Wake it up in { $days ->
        [one] { $days } day
       *[other] { $days } days
    }.
notice-first-workers-in = First workers in about { $low } to { $high } days at { DEGREES($mean_c) }.
notice-next-workers-in = New workers in about { $low } to { $high } days at { DEGREES($mean_c) }.
notice-coming-wide-flight = These days lie far apart because nobody wrote down the day of her flight, and brood may be of any age: a look at larvae and pupae brings them closer.
notice-coming-wide-look = These days lie far apart because nobody has looked for its larvae and pupae in the last two weeks: a look brings them closer.
notice-coming-wide-kind = These days lie far apart because nobody has measured how long the brood of its kind takes (common practice stands in).
notice-founding-stalled =
    Its first workers are { $days ->
        [one] { $days } day
       *[other] { $days } days
    } late: this founding has probably stalled. Leave it dark and alone for two weeks, then look once (common practice).
## Why the days of the next workers moved. $seen: what was looked for, a code. $on: a day in words.

notice-census-more =
    More { $seen ->
        [eggs] eggs
        [larvae] larvae
        [pupae] pupae
       *[workers] workers
    } than expected were seen on { $on }.
notice-census-fewer =
    Fewer { $seen ->
        [eggs] eggs
        [larvae] larvae
        [pupae] pupae
       *[workers] workers
    } than expected were seen on { $on }.
notice-census-sooner =
    What was seen of the { $seen ->
        [eggs] eggs
        [larvae] larvae
        [pupae] pupae
       *[workers] workers
    } on { $on } says that this brood is fast.
notice-census-later =
    What was seen of the { $seen ->
        [eggs] eggs
        [larvae] larvae
        [pupae] pupae
       *[workers] workers
    } on { $on } says that this brood is slow.

## Seasons and the rest

notice-brood-no-forecast = No forecast for the brood at { DEGREES($value) }: the figures hold from { DEGREES($low_c) } to { DEGREES($high_c) }.
notice-rest-over =
    Its rest was to end { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago: warm it up, offer sugar first, and set its condition to well. Until then it counts as resting.
notice-rest-by-sensor = For { $days } days its sensor has measured { DEGREES($mean_c) } on average, in the season of its rest: it counts as resting, and nothing is fed. Set its condition to resting to say when it shall wake.
notice-rest-over-by-sensor = After { $cold } cold days its sensor has measured { DEGREES($mean_c) } for { $days } days: its rest is over by that, and it is fed again, sugar first. Set its condition to well.
notice-wakes-later =
    By its sensor { $warm } days of its rest were too warm to count, so it wakes up { $later ->
        [one] { $later } day
       *[other] { $later } days
    } later than was set.
notice-rest-unmarked = It stands at { DEGREES($mean_c) } in the season of its rest (usual: { DEGREES($low_c) } to { DEGREES($high_c) }, common practice): if it rests, set its condition to resting, and nothing is fed.
notice-rest-missed = This species rests { $low_months } to { $high_months } months in winter at { DEGREES($low_c) } to { DEGREES($high_c) } and should have begun by now; no rest is marked. A late one is better than none: cool it down over about { $ramp_days } days (common practice).
notice-rest-after-first = This species rests in winter and none is marked, but its first workers should come between { $low_on } and { $high_on }: leave it warm until they are there and have eaten, then cool it down to { DEGREES($low_c, unit: "none") } to { DEGREES($high_c) } over about { $ramp_days } days (common practice).
notice-rest-larvae-wait = About { $low } to { $high } larvae probably wait in the nest until it wakes; eggs and pupae fade in the cold. There is no need to look.
notice-rest-no-brood = Probably no brood is left in the nest: eggs and pupae fade in the cold, and it lays again when it is awake and warm. There is no need to look.
notice-rest-begins-summer = Its summer rest may begin in { $low } to { $high } days: it closes its nest and takes no food. When nothing is taken any more, set its condition to resting (common practice).
notice-rest-begins = Its winter rest may begin in { $low } to { $high } days, when the day is down to about { $hours } hours: cool it down to { DEGREES($low_c) } to { DEGREES($high_c) } over about { $ramp_days } days. A range, not a rule (common practice).
notice-rest-may-end =
    The rest may end now, at the latest in { $days ->
        [one] { $days } day
       *[other] { $days } days
    } (common practice).
notice-tint-offered = Coloured sugar water was offered: look after 1, 8, 24 and 72 hours through pale, stretched gasters and into the brood, and say in a check where it shows (common practice; dark ants hide it).
notice-tint-in-gasters = Colour in gasters: workers drank, and may have passed it to each other.
notice-tint-in-brood = Colour in the brood: what workers drank was passed on to larvae.
notice-tint-nowhere = No colour was seen. That says little: dark or empty gasters hide it.
