"""A tasting that the keeper started: what to offer next, and when not to.

Rules (common practice, no source): only while the trial runs; never while founding, settling or in winter rest,
when refusals mean nothing; never two new foods at once, and one new food a week; never an origin that is refused,
held or unknown.
"""

from __future__ import annotations

import datetime as dt
import random
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final

from ...model.facts import Tally
from ...model.kinds.plan import Reason
from ...model.tasks import reason
from .food_origin import origin_verdict
from .tasting import Acceptance, drawn, pooled_prior, tally_of

NEW_FOOD_EVERY_DAYS: Final = 7
NOT_WHILE: Final[frozenset[str]] = frozenset(
    {"founding", "settling", "resting", "queenless_suspected", "given_away", "dead"}
)
"""States in which a refusal means nothing."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """A food of the trial, with the origin of the lot that would be offered."""

    food_code: str
    origin: str
    got_on: str | None = None


@dataclass(frozen=True, slots=True)
class Offer:
    """One offer of the trial: the ISO day, the food, and what became of it (None: not checked yet)."""

    day: str
    food_code: str
    outcome: str | None = None


@dataclass(frozen=True, slots=True)
class Trial:
    """A tasting of one colony. ``likes``: the tallies of other colonies of its species and guild, by food."""

    started_on: str
    candidates: Sequence[Candidate]
    offers: Sequence[Offer] = ()
    ended_on: str | None = None
    likes: Mapping[str, Sequence[Tally]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Suggestion:
    """What to offer next; None with the reason why nothing is offered now."""

    food_code: str | None
    reasons: tuple[Reason, ...]


def acceptances(trial: Trial) -> dict[str, Acceptance]:
    """Return how often this colony accepts each food of the trial, with what its likes say as the prior."""
    return {
        candidate.food_code: pooled_prior(trial.likes.get(candidate.food_code, ())).after(
            tally_of(
                offer.outcome
                for offer in trial.offers
                if offer.food_code == candidate.food_code and offer.outcome is not None
            )
        )
        for candidate in trial.candidates
    }


def suggest(trial: Trial | None, *, today: str, states: frozenset[str], rng: random.Random) -> Suggestion:
    """Return the next food of a trial. ``states``: the colony's stage and condition; ``rng`` makes the draw.

    The same arguments and generator state give the same suggestion.
    """
    if trial is None or today < trial.started_on or (trial.ended_on is not None and today > trial.ended_on):
        return _nothing("tasting_not_started")
    if unfit := sorted(states & NOT_WHILE):
        return _nothing("tasting_not_now", state=unfit[0])
    safe = {
        c.food_code
        for c in trial.candidates
        if origin_verdict(c.origin, got_on=c.got_on, today=today).offerable
    }
    if not safe:
        return _nothing("tasting_no_safe_food")
    first_day = {
        offer.food_code: offer.day for offer in sorted(trial.offers, key=lambda o: o.day, reverse=True)
    }
    known = safe & first_day.keys()
    new_from = _new_food_from(trial, first_day)
    may_be_new = new_from is not None and today >= new_from
    if not known and not may_be_new:
        return _nothing("tasting_wait", until=new_from) if new_from else _nothing("tasting_check_first")
    allowed = safe if may_be_new else known
    rated = {food: rating for food, rating in acceptances(trial).items() if food in allowed}
    chosen = drawn(rated, rng)
    share = round(100 * rated[chosen].mean)
    if chosen not in known:
        new = reason("tasting_new_food", days=NEW_FOOD_EVERY_DAYS)
        taken = reason("tasting_likes", share=share)
        return Suggestion(chosen, (new, taken) if trial.likes.get(chosen) else (new,))
    offered = sum(1 for o in trial.offers if o.food_code == chosen and o.outcome is not None)
    return Suggestion(chosen, (reason("tasting_learn_more", share=share, offers=offered),))


def _new_food_from(trial: Trial, first_day: Mapping[str, str]) -> str | None:
    """Return from which day a new food may come; None while nobody has checked the last new one."""
    if not first_day:
        return trial.started_on
    latest = max(first_day, key=lambda food: first_day[food])
    if all(o.outcome is None for o in trial.offers if o.food_code == latest):
        return None
    return (dt.date.fromisoformat(first_day[latest]) + dt.timedelta(days=NEW_FOOD_EVERY_DAYS)).isoformat()


def _nothing(code: str, **args: Any) -> Suggestion:
    return Suggestion(None, (reason(code, **args),))
