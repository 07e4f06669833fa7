"""What a colony's own checks teach about its appetite.

Appetite is a multiplier on the usual need, log-normal around 1. A check shows whether what was offered was gone
after so many hours. What a colony wants varies from day to day, so the chance that it is gone is a normal integral
in the logarithm; the posterior is kept on a grid and is exact up to its step of 8 %.

Learning without fooling oneself: a refusal is first the food's or the state's, at most 1.5 times per check, and
what was learnt fades when nobody checks. Spread of prior and of days, pace of eating: no source.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import accumulate
from typing import Final

from ..gauges import DAY_MS, Reason
from ..plan.state import Event
from ..quantities import Estimate, within

MOST_PER_CHECK: Final = 1.5
MOST_SURPRISE: Final = 2.0
REMEMBERED_CHECKS: Final = 16
KEPT_DAYS, FADED_DAYS = 7.0, 28.0
"""Without a check nothing fades for a week; after four weeks the prior is back (common practice, no source)."""
SETTLING_DAYS: Final = 7.0
"""After a nest move refusals mean nothing for so long (common practice, no source)."""
REFUSALS_IN_A_ROW: Final = 3
"""So many refusals on end, of at least two foods, are a low appetite and no longer the foods' fault (no source)."""
FIRST_SHARE: Final = 1 / 3
"""A new colony's prey starts at a third of the estimate (common practice, no source)."""
PRIOR_SD: Final = 0.8
"""SD of the logarithm: two colonies in three eat between 0.45 and 2.2 times the usual."""
DAY_SD: Final = 0.3
"""SD of the logarithm of what one colony wants from one day to another."""
EATING_H: Final = 8.0
"""Of what a colony wants, 63 % is gone after so long."""
USUAL_AFTER_H: Final = 24.0

_STEP: Final = 0.08
_HALF: Final = 24
_FINE: Final = 4
_LAPSE: Final = 0.02
"""The share of checks that tell nothing: a crumb overlooked, a spider that came by."""
_LOGS: Final = tuple(i * _STEP for i in range(-_HALF, _HALF + 1))
_FARTHEST: Final = 40 * _FINE


def _normalised(weights: Sequence[float]) -> list[float]:
    total = sum(weights)
    return [weight / total for weight in weights]


_PRIOR: Final = tuple(_normalised([math.exp(-0.5 * (x / PRIOR_SD) ** 2) for x in _LOGS]))
_GONE: Final = tuple(
    _LAPSE / 2 + (1 - _LAPSE) * 0.5 * (1 + math.erf(d * _STEP / _FINE / DAY_SD / math.sqrt(2)))
    for d in range(-_HALF * _FINE - _FARTHEST, _HALF * _FINE + _FARTHEST + 1)
)
"""The chance that an offer is gone, by log(appetite) - log(threshold) in quarter steps of the grid."""
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


Share = Callable[[Event], float | None]
"""Returns what a feeding offered over what a usual colony of this size takes of it; None: not known."""


def learnt(events: Sequence[Event], need: str, now_ms: int, share_of: Share | None = None) -> Learnt:
    """Return what the latest checks of ``need`` teach, as of ``now_ms``.

    ``events`` in the order of happening; the latest 16 checks count. A feeding whose ``share_of`` is not known is
    taken as served by the plan, which follows what was learnt by then. Raises ``OutOfRange`` for a share or
    ``after_h`` that is negative or not finite.
    """
    posterior: Sequence[float] = _PRIOR
    multiplier, checks, taken, as_of_ms = 1.0, 0, 0, None
    refusals = _Refusals()
    feedings: dict[object, Event] = {}
    for event in _latest(events, need, now_ms):
        if event.kind == "feeding":
            feedings[event.id] = event
            continue
        if event.kind != "check":
            refusals.note(event)
            continue
        feeding = feedings.get(event.values.get("feeding_id"))
        outcome = event.values["outcome"]
        if not refusals.speaks_of_appetite(event, outcome, feeding):
            continue
        if as_of_ms is not None:
            posterior, multiplier = _faded(posterior, multiplier, event.happened_ms - as_of_ms)
        share = share_of(feeding) if share_of is not None and feeding is not None else None
        column = _chances(
            outcome, multiplier if share is None else share, multiplier, event.values.get("after_h")
        )
        posterior = _normalised([p * chance for p, chance in zip(posterior, column, strict=True)])
        wanted = _quantile(posterior, 0.5)
        multiplier = min(multiplier * MOST_PER_CHECK, max(multiplier / MOST_PER_CHECK, wanted))
        checks, taken, as_of_ms = checks + 1, taken + (outcome == "all"), event.happened_ms
    if as_of_ms is not None:
        posterior, multiplier = _faded(posterior, multiplier, now_ms - as_of_ms)
    low, high = _quantile(posterior, 0.1), _quantile(posterior, 0.9)
    spread = Estimate(min(low, multiplier), multiplier, max(high, multiplier))
    return Learnt(spread, checks, taken, as_of_ms, _reasons(spread, checks, refusals))


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
        elif kind in ("count", "move"):
            found.append(event)
    found.reverse()
    ids = {event.id for event in found if event.kind == "feeding"}
    return [
        e for e in found if e.kind != "check" or e.values.get("need") or e.values.get("feeding_id") in ids
    ]


class _Refusals:
    """Judges whether a check speaks of appetite: a refusal is first the state's, then the food's."""

    def __init__(self) -> None:
        self._moved_ms: int | None = None
        self._larvae: object = None
        self._pupae: object = None
        self._foods: list[object] = []
        self.excused: str | None = None

    def note(self, event: Event) -> None:
        if event.kind == "move":
            self._moved_ms = event.happened_ms
            return
        self._larvae = event.values.get("larvae") or self._larvae
        self._pupae = event.values.get("pupae") or self._pupae

    def speaks_of_appetite(self, check: Event, outcome: str, feeding: Event | None) -> bool:
        self.excused = None
        if outcome != "ignored":
            self._foods.clear()
            return True
        settling = self._moved_ms is not None and check.happened_ms - self._moved_ms < SETTLING_DAYS * DAY_MS
        if settling or (self._larvae == "none" and self._pupae not in (None, "none")):
            self.excused = "refusal_state"
            return False
        self._foods.append(feeding.values.get("food_code") if feeding is not None else None)
        if len(self._foods) >= REFUSALS_IN_A_ROW and len(set(self._foods)) > 1:
            return True
        self.excused = "refusal_food"
        return False


def _chances(outcome: str, share: float, multiplier: float, after_h: float | None) -> Sequence[float]:
    """Return along the grid the chance of this outcome.

    The threshold is the appetite that would just carry the offer off in that time. An offer that is gone speaks
    for at most twice what was known: a larger surprise may be spilling, drying or hoarding.
    """
    within("share offered", share, "of the usual", 0, 1e6)
    hours = within("hours after the feeding", USUAL_AFTER_H if after_h is None else after_h, "h", 0, 1e5)
    threshold = max(share, 1e-6) / (1 - math.exp(-max(hours, 0.1) / EATING_H))
    if outcome == "all":
        threshold = min(threshold, MOST_SURPRISE * multiplier)
    offset = round(math.log(threshold) * _FINE / _STEP)
    start = _FARTHEST - min(_FARTHEST, max(-_FARTHEST, offset))
    chances = _GONE if outcome == "all" else _LEFT
    return chances[start : start + 2 * _HALF * _FINE + 1 : _FINE]


def _faded(posterior: Sequence[float], multiplier: float, gap_ms: int) -> tuple[Sequence[float], float]:
    """Return posterior and multiplier after a gap without checks: drawn back to the prior in the logarithm."""
    kept = min(1.0, max(0.0, (FADED_DAYS - gap_ms / DAY_MS) / (FADED_DAYS - KEPT_DAYS)))
    if kept == 1.0:
        return posterior, multiplier
    drawn = [p**kept * q ** (1 - kept) for p, q in zip(posterior, _PRIOR, strict=True)]
    return _normalised(drawn), multiplier**kept


def _quantile(posterior: Sequence[float], share: float) -> float:
    """Return the multiplier below which ``share`` of the posterior lies, between the points of the grid."""
    below = list(accumulate(posterior))
    i = min(bisect_left(below, share), len(below) - 1)
    within_cell = (share - (below[i] - posterior[i])) / posterior[i] - 0.5
    return math.exp(_LOGS[i] + within_cell * _STEP)


def _reasons(spread: Estimate, checks: int, refusals: _Refusals) -> tuple[Reason, ...]:
    made: list[Reason] = []
    if checks:
        args = {"checks": checks, "times": round(spread.best, 2)}
        made.append({"code": "appetite_learnt", "args": args})
    if refusals.excused:
        made.append({"code": refusals.excused, "args": {}})
    return tuple(made)
