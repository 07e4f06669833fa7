"""What a colony's own checks teach about its appetite.

Appetite is a multiplier on the usual need, log-normal around 1. A check shows whether what was offered was gone
after so many hours. What a colony wants varies from day to day, so the chance that it is gone is a normal integral
in the logarithm; the posterior is kept on a grid and is exact up to its step of 12 %.

Learning without fooling oneself: a refusal is first the food's or the state's, at most 1.5 times per check, and
what was learnt fades when nobody checks. Spread of prior and of days, pace of eating: no source.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate
from operator import mul
from typing import Final, Protocol

from ..gauges import DAY_MS, Reason
from ..plan.state import Event
from ..quantities import Estimate, within
from .prey import FIRST_SHARE

MOST_PER_CHECK: Final = 1.5
MOST_SURPRISE: Final = 2.0
REMEMBERED_CHECKS: Final = 12
KEPT_DAYS, FADED_DAYS = 7.0, 28.0
"""Without a check nothing fades for a week; after four weeks the prior is back (common practice, no source)."""
REFUSALS_IN_A_ROW: Final = 3
"""So many refusals on end, of at least two foods, are a low appetite and no longer the foods' fault (no source)."""
PRIOR_SD: Final = 0.8
"""SD of the logarithm: two colonies in three eat between 0.45 and 2.2 times the usual."""
DAY_SD: Final = 0.3
"""SD of the logarithm of what one colony wants from one day to another."""
EATING_H: Final = 8.0
"""Of what a colony wants, 63 % is gone after so long."""
USUAL_AFTER_H: Final = 24.0

_STEP: Final = 0.12
_HALF: Final = 16
_FINE: Final = 6
_LAPSE: Final = 0.02
"""The share of checks that tell nothing: a crumb overlooked, a spider that came by."""
_LOGS: Final = tuple(i * _STEP for i in range(-_HALF, _HALF + 1))
_FARTHEST: Final = 40 * _FINE
_PRIOR: Final = tuple(math.exp(-0.5 * (x / PRIOR_SD) ** 2) for x in _LOGS)
"""Weights along the grid; nothing here is normalised, since only shares of the whole are read."""
_GONE: Final = tuple(
    _LAPSE / 2 + (1 - _LAPSE) * 0.5 * (1 + math.erf(d * _STEP / _FINE / DAY_SD / math.sqrt(2)))
    for d in range(-_HALF * _FINE - _FARTHEST, _HALF * _FINE + _FARTHEST + 1)
)
"""The chance that an offer is gone, by log(appetite) - log(threshold) in sixths of a step."""
_LEFT: Final = tuple(1 - chance for chance in _GONE)


@dataclass(frozen=True, slots=True)
class Learnt:
    """A colony's appetite over the usual one, with 10 % and 90 % points as its spread.

    ``checks`` counted, ``taken`` of them gone entirely; ``as_of_ms`` the last check that counted, None: none did.
    """

    multiplier: Estimate
    checks: int
    taken: int
    as_of_ms: int | None
    reasons: tuple[Reason, ...]

    @property
    def serving_share(self) -> float:
        """Return the share of the estimate to serve: a third at first, 1.5 times more after each 'all taken'."""
        return float(min(1.0, FIRST_SHARE * MOST_PER_CHECK**self.taken))


class Spell(Protocol):
    """A spell of time whose refusals say nothing of appetite; the colony's own modules know which there are."""

    def holds(self, at_ms: float) -> bool:
        """Say whether an instant [ms since 1970 UTC] lies in it."""


_Seen = tuple[int, bool, float | None, float | None]
"""A check that counts: when, whether the offer was gone, the share offered, after how many hours."""
Share = Callable[[Event], float | None]
"""Returns what a feeding offered over what a usual colony of this size takes of it; None: not known."""


def learnt(
    events: Sequence[Event],
    need: str,
    now_ms: int,
    share_of: Share | None = None,
    *,
    excused: Sequence[Spell] = (),
) -> Learnt:
    """Return what the latest checks of ``need`` teach, as of ``now_ms``.

    ``events`` in the order of happening; the latest 12 checks count. A feeding whose ``share_of`` is not known is
    taken as served by the plan, which follows what was learnt by then. ``excused``: spells whose refusals
    the colony's condition explains (settling, slowing down before its rest). Raises ``OutOfRange`` for a
    share or ``after_h`` that is negative or not finite.
    """
    refusals = _Refusals(excused)
    seen: list[_Seen] = []
    feedings: dict[object, Event] = {}
    for event in _latest(events, need, now_ms):
        if event.kind == "feeding":
            feedings[event.id] = event
        elif event.kind != "check":
            refusals.note(event)
        else:
            feeding = feedings.get(event.values.get("feeding_id"))
            if not refusals.excuse(event, feeding):
                share = share_of(feeding) if share_of is not None and feeding is not None else None
                gone = event.values["outcome"] == "all"
                seen.append((event.happened_ms, gone, share, event.values.get("after_h")))
    weights, multiplier = _believed(tuple(seen))
    if seen:
        weights, multiplier = _faded(weights, multiplier, now_ms - seen[-1][0])
    low, high = _quantile(weights, 0.1), _quantile(weights, 0.9)
    reasons: list[Reason] = []
    if seen:
        args = {"checks": len(seen), "times": round(multiplier, 2)}
        reasons.append({"code": "appetite_learnt", "args": args})
    if refusals.excused:
        reasons.append({"code": refusals.excused, "args": {}})
    return Learnt(
        Estimate(min(low, multiplier), multiplier, max(high, multiplier)),
        len(seen),
        sum(gone for _, gone, _, _ in seen),
        seen[-1][0] if seen else None,
        tuple(reasons),
    )


def _latest(events: Sequence[Event], need: str, now_ms: int) -> list[Event]:
    """Return what matters for the latest checks, in the order of happening: one pass from the end."""
    found: list[Event] = []
    unplaced: set[object] = set()  # feedings of checks that do not name their need
    checks = 0
    for event in reversed(events):
        if event.happened_ms > now_ms:
            continue
        kind, values = event.kind, event.values
        if kind == "feeding":
            if values.get("need") == need:
                checks += event.id in unplaced
                found.append(event)
        elif kind == "check":
            named = values.get("need")
            if named not in (need, None) or values.get("outcome") is None:
                continue
            if checks >= REMEMBERED_CHECKS:
                break
            if named is None:
                unplaced.add(values.get("feeding_id"))
            else:
                checks += 1
            found.append(event)
        elif kind == "count":
            found.append(event)
    found.reverse()
    ids = {event.id for event in found if event.kind == "feeding"}
    return [
        e for e in found if e.kind != "check" or e.values.get("need") or e.values.get("feeding_id") in ids
    ]


class _Refusals:
    """Judges refusals: first they are the state's, then the food's, and only then a low appetite."""

    def __init__(self, excused: Sequence[Spell]) -> None:
        self._excused = excused
        self._larvae: object = None
        self._pupae: object = None
        self._foods: list[object] = []
        self.excused: str | None = None

    def note(self, event: Event) -> None:
        """Take in a count."""
        self._larvae = event.values.get("larvae") or self._larvae
        self._pupae = event.values.get("pupae") or self._pupae

    def excuse(self, check: Event, feeding: Event | None) -> bool:
        """Say whether the check tells nothing about appetite; ``excused`` then names why."""
        self.excused = None
        if check.values["outcome"] != "ignored":
            self._foods.clear()
            return False
        all_pupae = self._larvae == "none" and self._pupae not in (None, "none")
        if all_pupae or any(spell.holds(check.happened_ms) for spell in self._excused):
            self.excused = "refusal_state"
            return True
        self._foods.append(feeding.values.get("food_code") if feeding is not None else None)
        if len(self._foods) < REFUSALS_IN_A_ROW or len(set(self._foods)) == 1:
            self.excused = "refusal_food"
        return self.excused is not None


@lru_cache(maxsize=1024)
def _believed(seen: tuple[_Seen, ...]) -> tuple[Sequence[float], float]:
    """Return posterior and multiplier after these checks, as of the last; kept, since a plan asks again and again.

    The threshold of a check is the appetite that would just carry the offer off in that time. An offer that is
    gone speaks for at most twice what was known: a larger surprise may be spilling, drying or hoarding.
    """
    weights: Sequence[float] = _PRIOR
    multiplier, last_ms = 1.0, seen[0][0] if seen else 0
    for at_ms, gone, share, after_h in seen:
        weights, multiplier = _faded(weights, multiplier, at_ms - last_ms)
        offered = multiplier if share is None else within("share offered", share, "of the usual", 0, 1e6)
        hours = within("hours after the feeding", USUAL_AFTER_H if after_h is None else after_h, "h", 0, 1e5)
        threshold = max(offered, 1e-6) / (1 - math.exp(-max(hours, 0.1) / EATING_H))
        if gone:
            threshold = min(threshold, MOST_SURPRISE * multiplier)
        weights = list(map(mul, weights, _chances(gone, threshold)))
        median = _quantile(weights, 0.5)
        multiplier = min(multiplier * MOST_PER_CHECK, max(multiplier / MOST_PER_CHECK, median))
        last_ms = at_ms
    return weights, multiplier


def _chances(gone: bool, threshold: float) -> Sequence[float]:
    """Return along the grid the chance that an offer at this threshold is gone, or that it is not."""
    offset = round(math.log(threshold) * _FINE / _STEP)
    start = _FARTHEST - min(_FARTHEST, max(-_FARTHEST, offset))
    return (_GONE if gone else _LEFT)[start : start + 2 * _HALF * _FINE + 1 : _FINE]


def _faded(weights: Sequence[float], multiplier: float, gap_ms: int) -> tuple[Sequence[float], float]:
    """Return posterior and multiplier after a gap without checks: drawn back to the prior, in the logarithm."""
    kept = min(1.0, max(0.0, (FADED_DAYS - gap_ms / DAY_MS) / (FADED_DAYS - KEPT_DAYS)))
    if kept == 1.0:
        return weights, multiplier
    return [p**kept * q ** (1 - kept) for p, q in zip(weights, _PRIOR, strict=True)], multiplier**kept


def _quantile(weights: Sequence[float], share: float) -> float:
    """Return the multiplier below which ``share`` of the posterior lies, between the points of the grid."""
    below = list(accumulate(weights))
    wanted = share * below[-1]
    i = bisect_left(below, wanted)
    within_cell = (wanted - below[i]) / weights[i] + 0.5
    return math.exp(_LOGS[i] + within_cell * _STEP)
