"""Room: how full a vessel is, when a nest move is due, how to go about it, and how bad mould is.

All figures here are common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from ...model.gauges import Gauge
from ...model.kinds.plan import Reason
from ...model.needs import FAULTS, FaultCode
from ...model.quantities import Estimate, within
from ...model.tasks import reason

SMALL_MM: Final = 4.0
SIZE_EXPONENT: Final = 1.2
"""A tube that holds 50 to 100 workers of 4 mm holds 20 to 30 of 10 mm: (10 / 4)^1.2 = 3."""
ROOM_LOW, ROOM_HIGH = 2 / 3, 4 / 3
"""50 to 100 about a middle of 75."""
FULL_SHARE: Final = 0.1
"""The move is due when a tenth of the room is left: it takes 1 to 4 weeks."""
DEEP_MOULD_SHARE: Final = 1 / 3
"""Of the plug, from which mould means a new tube today (common practice, no source)."""
SLOWEST_RATE: Final = math.log(2) / 3650

MouldGrade = Literal["nothing", "watch", "offer"]


@dataclass(frozen=True, slots=True)
class Growth:
    """How fast the workers grow in the time to come [logarithm a day], and on how many counts that rests."""

    rate_per_day: Estimate
    counts: int

    @classmethod
    def between(cls, now: Estimate, later: Estimate, days: float, counts: int) -> Growth:
        """Return the growth from a number to another so many days on. Both ends of now speak of one colony."""
        low, best, high = (
            math.log(max(1.0, then) / max(1.0, at)) / days
            for then, at in ((later.low, now.low), (later.best, now.best), (later.high, now.high))
        )
        return cls(Estimate(min(low, best), best, max(best, high)), counts)

    @property
    def doubling_days(self) -> float | None:
        """How long a doubling takes; None where it does not grow, or by less than once in ten years."""
        rate = self.rate_per_day.best
        return math.log(2) / rate if rate > SLOWEST_RATE else None


@dataclass(frozen=True, slots=True)
class MoveAdvice:
    """Whether a nest move is due, whether it may be forced, why, and what to do, in order."""

    due: bool
    force: bool
    reasons: tuple[Reason, ...]
    checklist: tuple[Reason, ...]


def room_for(room_small_workers: float, worker_mm: float) -> Estimate:
    """Return for how many workers of a length a vessel has room; ``room_small_workers``: of 4 mm.

    Room falls with (length / 4 mm)^1.2, for 0.8 to 40 mm (outside: ``OutOfRange``). Example: a tube for 75 small
    workers has room for 25 of 10 mm, 17 to 33.
    """
    within("room_small_workers", room_small_workers, "workers", 1, 1e7)
    best = room_small_workers * (SMALL_MM / within("worker_mm", worker_mm, "mm", 0.8, 40)) ** SIZE_EXPONENT
    return Estimate(best * ROOM_LOW, best, best * ROOM_HIGH)


def room_gauge(workers: Estimate, room: Estimate, as_of_ms: int, growth: Growth | None = None) -> Gauge:
    """Return the gauge of free room in shares; it falls as the colony grows, if growth is known."""
    within("workers", workers.best, "workers", 0, 1e7)
    level = min(1.0, max(0.0, 1 - workers.best / room.best))
    low = best = high = 0.0
    basis = "common_practice"
    reasons = [reason("room_full", workers=round(workers.best), room=round(room.best))]
    if growth is not None:
        low, best, high = _rates(workers, room, growth)
        basis = "learnt"
        if growth.doubling_days is not None:
            reasons.append(reason("room_growth", doubling=round(growth.doubling_days), counts=growth.counts))
    return Gauge(
        "room", "share", level, 1.0, best, low, high, as_of_ms, FULL_SHARE, basis, None, tuple(reasons)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Dwelling:
    """Where a colony lives, and what is wrong there.

    ``water_low``: by the gauge of the water; ``seen_dry``: a person saw it dry.
    """

    workers: Estimate
    room: Estimate
    in_tube: bool
    guild: str = "omnivore"
    water_low: bool = False
    seen_dry: bool = False
    mould: MouldGrade = "nothing"
    open_faults: frozenset[FaultCode] = frozenset()


def move_advice(nest: Dwelling) -> MoveAdvice:
    """Return whether a move is due.

    Only a nest that a person saw dry or flooded may be emptied by force: what nobody looked at is unknown, not dry.
    Low water means a move in a tube only: a nest is filled up.
    """
    force = (nest.in_tube and nest.seen_dry) or any(FAULTS[fault].drives_out for fault in nest.open_faults)
    reasons = []
    if nest.workers.best >= nest.room.best * (1 - FULL_SHARE):
        reasons.append(reason("room_full", workers=round(nest.workers.best), room=round(nest.room.best)))
    if nest.in_tube and nest.water_low and not nest.seen_dry:
        reasons.append(reason("move_water_low"))
    if nest.mould == "offer":
        reasons.append(reason("move_mould"))
    if "flood" in nest.open_faults:
        reasons.append(reason("move_flood"))
    if nest.in_tube and nest.seen_dry:
        reasons.append(reason("move_dry"))
    return MoveAdvice(bool(reasons), force, tuple(reasons), move_steps(nest.guild, force=force))


def move_steps(guild: str, *, force: bool = False) -> tuple[Reason, ...]:
    """Return how to go about a nest move, in order; ``force``: only a dry or flooded nest may be emptied."""
    steps = ["move_beside", "move_darken", "move_light"]
    steps += ["move_force"] if force else ["move_wait", "move_no_shaking"]
    if guild == "honeypot":
        steps.append("never_tilt")
    return tuple(reason(step) for step in steps)


def mould_grade(*, yellow_only: bool, near_brood: bool, plug_share: float) -> MouldGrade:
    """Return ``nothing`` for yellow cotton alone, ``watch`` for distant spots, ``offer`` for a tube today.

    ``plug_share``: the part of the plug that is overgrown, 0..1; a third, or mould nearing the brood, means today.
    """
    share = within("plug_share", plug_share, "", 0, 1)
    if yellow_only:
        return "nothing"
    if near_brood or share >= DEEP_MOULD_SHARE:
        return "offer"
    return "watch" if share > 0 else "nothing"


def _rates(workers: Estimate, room: Estimate, growth: Growth) -> tuple[float, float, float]:
    """Share of the room that a day of growth takes; a shrinking colony frees none in the gauge."""
    slow, usual, fast = (
        max(0.0, rate) * workers.best / room.best
        for rate in (growth.rate_per_day.low, growth.rate_per_day.best, growth.rate_per_day.high)
    )
    return slow, usual, fast
