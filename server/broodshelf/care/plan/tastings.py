"""The running tasting of a colony: what to offer next in it, and what it has told so far."""

from __future__ import annotations

import random
from collections.abc import Iterable, Sequence

from ...model.facts import Event, Logged, Tally, proposed
from ...model.kinds.log import Feeding
from ...model.kinds.plan import Reason, TastedFood
from ...model.tasks import Task, reason
from ..catalogue import foods
from ..colony.arrival import Settling, excused_feedings
from ..colony.history import local_day
from ..colony.outcomes import with_outcomes
from ..feeding.tasting import chance_of_being_best, tally_of
from ..feeding.trial import Candidate, Offer, Suggestion, Trial, acceptances, suggest
from .known import Known
from .portions import lot_of


def next_in_tasting(trial: Trial | None, known: Known) -> Suggestion | None:
    """Return what the running tasting would offer next, or None without one. The same all day long."""
    if trial is None:
        return None
    states = known.switched.not_now
    rng = random.Random(f"{known.state.id} {known.today} {len(trial.offers)}")  # noqa: S311 - a draw, no secret
    return suggest(trial, today=known.today, states=states, rng=rng)


def why_no_offer(tasting: Suggestion | None, tasks: Iterable[Task]) -> Reason | None:
    """Return why none of the tasks is an offer of the running tasting; None where one is, or no tasting runs."""
    if tasting is None:
        return None
    if tasting.food_code is None:
        return tasting.reasons[0]
    feedings = (proposed(task.suggested, Feeding) for task in tasks)
    if any(feeding is not None and feeding.tasting_id for feeding in feedings):
        return None
    return reason("tasting_need_paused")


def told(trial: Trial | None) -> list[TastedFood]:
    """Return for each food of the running tasting how often it is taken and the chance that it is the best.

    ``likes``: how many other colonies of its species or guild have a say in that.
    """
    if trial is None:
        return []
    rated = acceptances(trial)
    best = chance_of_being_best(rated) if len(rated) > 1 else dict.fromkeys(rated, 1.0)
    rows: list[TastedFood] = []
    for code, rating in rated.items():
        spread = rating.interval()
        offers = sum(1 for offer in trial.offers if offer.food_code == code)
        rows.append({
            "food_code": code, "offers": offers, "likes": len(trial.likes.get(code, ())),
            "best": round(best[code], 3), "low": round(spread.low, 3), "mean": round(spread.best, 3),
            "high": round(spread.high, 3),
        })  # fmt: skip
    return sorted(rows, key=lambda row: -row["best"])


def trial_of(known: Known) -> Trial | None:
    """Return the running tasting with its offers so far, or None."""
    tasting = known.state.tasting
    if tasting is None:
        return None
    offers = [
        Offer(
            local_day(feeding.happened_ms, known.state.utc_offset_min).isoformat(),
            str(feeding.said.food_code),
            outcome,
        )
        for feeding, outcome in _offers(known.state.events, known.switched.excused)
        if feeding.said.tasting_id == tasting.id
    ]
    candidates = []
    for code in tasting.food_codes:
        if code in foods():
            lot = lot_of(code, known)
            food = foods()[code]
            # the keeper would have to get one that is not in the larder
            origin = lot.origin if lot else food.origin or food.usual_origin
            candidates.append(Candidate(code, origin, lot.got_on if lot else None))
    return Trial(tasting.started_on, candidates, offers, tasting.ended_on, known.state.likes)


def taken_in_tastings(events: Iterable[Event], excused: Sequence[Settling] = ()) -> dict[str, Tally]:
    """Return by food what became of the checked offers of all tastings in a colony's log.

    What was ignored in an ``excused`` spell is no verdict on the food and left out. Other checks do not
    count: many are made because something was left, and a tasting leaves out rest and founding.
    """
    outcomes: dict[str, list[str]] = {}
    for feeding, outcome in _offers(events, excused):
        if outcome is not None:
            outcomes.setdefault(str(feeding.said.food_code), []).append(outcome)
    return {food: tally_of(each) for food, each in outcomes.items()}


def _offers(
    events: Iterable[Event], excused: Sequence[Settling] = ()
) -> list[tuple[Logged[Feeding], str | None]]:
    """Return the feedings that belong to a tasting, each with its last outcome (None: not checked yet)."""
    events = tuple(events)
    says_nothing = excused_feedings(events, excused)
    found: list[tuple[Logged[Feeding], str | None]] = [
        (feeding, None if check is None else check.said.outcome)
        for feeding, check in with_outcomes(events)
        if feeding.said.tasting_id and feeding.id not in says_nothing
    ]
    return found[::-1]
