"""What a colony's own checks teach about its appetite.

Appetite is a multiplier on the usual need, log-normal around 1. A check shows whether what was offered was gone
after so many hours, or between which levels a feeder stands. What a colony wants varies from day to day, so the chance
of that is a normal integral in the logarithm (``belief``).

Learning without fooling oneself: a refusal is first the food's or the state's, at most 1.5 times per check, and
what was learnt fades when nobody checks. A check that could hardly come out another way teaches nothing, and where all
of them point the same way only a bound is known. Spread of prior and of days, pace of eating: no source.
"""

from __future__ import annotations

import math
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final, Protocol

from ...model.facts import Event, Logged, only, tells
from ...model.gauges import HOUR_MS, READINGS
from ...model.kinds.log import Check, Count, Feeding
from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from .belief import Seen, believed, faded, quantile

REMEMBERED_CHECKS: Final = 12
REFUSALS_IN_A_ROW: Final = 3
"""So many refusals on end, of at least two foods, are a low appetite and no longer the foods' fault (no source)."""
EATING_H: Final = 8.0
"""Of what a colony wants, 63 % is gone after so long."""
USUAL_AFTER_H: Final = 24.0
TEACHING: Final = frozenset({"feeding", "check", "count"})
"""The kinds of events that say something about appetite."""
MOST_SHARE: Final = 1e6
"""A whole worm before one tiny ant is more than a million times the usual: what is beyond teaches no more than that."""
LEVEL_ERROR: Final = 0.125
"""A feeder's level is read in quarters, so it lies up to an eighth to either side."""


@dataclass(frozen=True, slots=True)
class Learnt:
    """A colony's appetite over the usual one, with 10 % and 90 % points as its spread.

    ``checks`` counted, ``as_of_ms`` the last of them, None: none did. ``bound``: what they say: ``about`` the
    multiplier, ``at_least`` or ``at_most`` where all of them point one way, None: nothing yet.
    """

    multiplier: Estimate
    checks: int
    as_of_ms: int | None
    reasons: tuple[Reason, ...]
    bound: str | None = None


class Spell(Protocol):
    """A spell of time whose refusals say nothing of appetite; the colony's own modules know which there are."""

    def holds(self, at_ms: float) -> bool:
        """Say whether an instant [ms since 1970 UTC] lies in it."""


Share = Callable[[Logged[Feeding]], float | None]
"""Returns what a feeding offered over what a usual colony of this size takes of it; None: not known."""


class Intake(Protocol):
    """From feeding, the share of it that is gone and hours: the appetite of a colony that takes just that.

    ``at_least``: the least such appetite where the model leaves a choice, else the most.
    """

    def __call__(self, feeding: Logged[Feeding], gone: float, hours: float, *, at_least: bool) -> float:
        """Return that appetite."""


def usual_intake(share: float, gone: float, hours: float, *, at_least: bool = True) -> float:
    """Return the appetite at which ``gone`` of an offer of ``share`` is eaten after ``hours``, by ``EATING_H``."""
    return share * gone / (1 - math.exp(-max(hours, 0.1) / EATING_H))


def learnt(
    events: Sequence[Event],
    need: str,
    now_ms: int,
    share_of: Share | None = None,
    *,
    intake: Intake | None = None,
    excused: Sequence[Spell] = (),
) -> Learnt:
    """Return what the latest checks of ``need`` teach, as of ``now_ms``.

    ``events`` in the order of happening; the latest 12 checks count. A feeding whose ``share_of`` is not known is
    taken as served by the plan, which follows what was learnt by then. ``intake``: how the food is taken, where
    ``usual_intake`` does not tell it. ``excused``: spells whose refusals the colony's condition explains (settling,
    slowing down before its rest). Raises ``OutOfRange`` for a share or ``after_h`` that is negative or not
    finite.
    """
    refusals = _Refusals(excused)
    seen: list[Seen] = []
    feedings: dict[str | None, Logged[Feeding]] = {}
    for event in _latest(events, need, now_ms):
        if tells(event, Feeding):
            feedings[event.id] = event
        elif tells(event, Count):
            refusals.note(event.said)
        elif tells(event, Check):
            feeding = feedings.get(event.said.feeding_id)
            if not refusals.excuse(event, feeding):
                told = _seen(event, feeding, share_of, intake)
                seen += [] if told is None else [told]
    hidden = len(seen) if all(each.foreseen for each in seen) else 0
    if hidden:
        seen = []  # the spread of the prior alone would move it, not the colony
    weights, multiplier = believed(tuple(seen))
    if seen:
        weights, multiplier = faded(weights, multiplier, now_ms - seen[-1].at_ms)
    low, high = quantile(weights, 0.1), quantile(weights, 0.9)
    bound = _bound(seen, multiplier)
    reasons: list[Reason] = []
    if bound is not None:
        code = "appetite_learnt" if bound == "about" else f"appetite_{bound}"
        reasons.append(reason(code, checks=len(seen), times=round(multiplier, 2)))
    elif hidden:
        reasons.append(reason("appetite_hidden", checks=hidden))
    if refusals.excused:
        reasons.append(reason(refusals.excused))
    return Learnt(
        Estimate(min(low, multiplier), multiplier, max(high, multiplier)),
        len(seen),
        seen[-1].at_ms if seen else None,
        tuple(reasons),
        bound,
    )


def _bound(seen: Sequence[Seen], multiplier: float) -> str | None:
    """Return what the checks say together: a bound only, where nothing but a slip contradicts it."""
    if not seen:
        return None
    likely = [each for each in seen if not each.slip(multiplier)] or seen
    if all(each.above is None for each in likely):
        return "at_most"
    return "at_least" if all(each.below is None for each in likely) else "about"


def _seen(
    check: Logged[Check], feeding: Logged[Feeding] | None, share_of: Share | None, intake: Intake | None
) -> Seen | None:
    """Return what a check shows, None: nothing. A feeder that is not empty yet is as it should be."""
    said = check.said
    level = READINGS.get(said.level or "")
    if level is None:
        if said.outcome != "all" and feeding is not None and feeding.said.form == "feeder":
            return None
        most_left = 0.0
    else:
        most_left = min(1.0, level + LEVEL_ERROR)
    above = 1 - most_left if said.outcome == "all" or (level is not None and most_left < 1) else None
    below = None if level == 0 or (level is None and above) else 1 - max(0.0, (level or 0) - LEVEL_ERROR)
    share = share_of(feeding) if share_of is not None and feeding is not None else None
    if share is not None:
        share = min(MOST_SHARE, within("share offered", share, "of the usual", 0, sys.float_info.max))
    hours = said.after_h
    if hours is None:
        since_ms = None if feeding is None else max(0, check.happened_ms - feeding.happened_ms)
        hours = USUAL_AFTER_H if since_ms is None else since_ms / HOUR_MS
    within("hours after the feeding", hours, "h", 0, 1e5)

    def appetite(gone: float | None, *, at_least: bool) -> float | None:
        if gone is None:
            return None
        if share is None or intake is None or feeding is None:
            return usual_intake(1.0 if share is None else max(share, 1e-6), gone, hours)
        return intake(feeding, gone, hours, at_least=at_least)

    return Seen(
        check.happened_ms,
        appetite(above, at_least=True),
        appetite(below, at_least=False),
        relative=share is None,
    )


def _latest(events: Sequence[Event], need: str, now_ms: int) -> list[Event]:
    """Return what matters for the latest checks, in the order of happening: one pass from the end."""
    found: list[Event] = []
    unplaced: set[str | None] = set()  # feedings of checks that do not name their need
    checks = 0
    for event in reversed(events):
        if event.happened_ms > now_ms or event.kind not in TEACHING:
            continue
        said = event.said
        if isinstance(said, Feeding):
            if said.need == need:
                checks += event.id in unplaced
                found.append(event)
        elif isinstance(said, Check):
            named = said.need
            if named not in (need, None) or (said.outcome is None and said.level is None):
                continue
            if checks >= REMEMBERED_CHECKS:
                break
            if named is None:
                unplaced.add(said.feeding_id)
            else:
                checks += 1
            found.append(event)
        else:
            found.append(event)
    found.reverse()
    ids = {feeding.id for feeding in only(Feeding, found)}
    return [e for e in found if not tells(e, Check) or e.said.need or e.said.feeding_id in ids]


class _Refusals:
    """Judges refusals: first they are the state's, then the food's, and only then a low appetite."""

    def __init__(self, excused: Sequence[Spell]) -> None:
        self._excused = excused
        self._larvae: str | None = None
        self._pupae: str | None = None
        self._foods: list[str | None] = []
        self.excused: str | None = None

    def note(self, count: Count) -> None:
        """Take in a count."""
        self._larvae = count.larvae or self._larvae
        self._pupae = count.pupae or self._pupae

    def excuse(self, check: Logged[Check], feeding: Logged[Feeding] | None) -> bool:
        """Say whether the check tells nothing about appetite; ``excused`` then names why."""
        self.excused = None
        if check.said.outcome != "ignored":
            self._foods.clear()
            return False
        all_pupae = self._larvae == "none" and self._pupae not in (None, "none")
        if all_pupae or any(spell.holds(check.happened_ms) for spell in self._excused):
            self.excused = "refusal_state"
            return True
        self._foods.append(feeding.said.food_code if feeding is not None else None)
        if len(self._foods) < REFUSALS_IN_A_ROW or len(set(self._foods)) == 1:
            self.excused = "refusal_food"
        return self.excused is not None
