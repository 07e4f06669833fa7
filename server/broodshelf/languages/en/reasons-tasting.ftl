### Tastings: one new food a week.

reason-tasting-not-started = No tasting is running: start one if you want to find out what they like.
# $state: the stage or the condition of the colony, a code.
reason-tasting-not-now =
    { $state ->
        [founding] Not while the queen founds: a refusal would mean nothing.
        [settling] Not while the colony settles: a refusal would mean nothing.
        [resting] Not during its rest: a refusal would mean nothing.
        [queenless_suspected] Not while the queen is in doubt: a refusal would mean nothing.
       *[other] Not now: the colony is not here any more.
    }
reason-tasting-no-safe-food = None of these foods may be offered now, for their origin.
# $until: a day in words.
reason-tasting-wait = One new food a week: the next new one from { $until }.
reason-tasting-check-first = Check first what became of the last new food.
reason-tasting-need-paused = Food of this kind is not due now, so nothing is offered.
reason-tasting-new-food = New to this colony: nothing else new for { $days } days.
reason-tasting-likes = Colonies like this one may take it in about { $share } % of offers.
reason-tasting-learn-more =
    Expected to take it in about { $share } % of offers ({ $offers ->
        [one] one
       *[other] { $offers }
    } checked).
