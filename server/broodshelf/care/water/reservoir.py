"""The reservoir: how full, how fast it goes, how many days are left, whether it leaks; and its gauge."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final, NamedTuple

from ...model.facts import Event, Place, Vessel, tells
from ...model.gauges import DAY_MS, Gauge, level_at
from ...model.kinds.log import Check
from ...model.kinds.plan import Reason
from ...model.quantities import Estimate
from ...model.tasks import reason
from .drying_days import BY_SETTINGS, DryingDays
from .leak import LOOK_TODAY, explain, lost_per_day
from .loss_rate import (
    EYE_SHARE,
    GRID,
    READERS,
    UNREAD,
    Belief,
    after,
    anew,
    begins_anew,
    evidence,
    ratio,
    weights_of,
)
from .readings import Reading, lengths_read, readings_of
from .vessel_sizes import WaterSizes, lengthened, water_sizes

LOW_SHARE, LOW_DAYS = 0.25, 14.0
"""Low: a quarter full, or 14 days left (common practice, no source)."""
HALF_SHARE: Final = 0.5
"""More than half is never low, however fast it goes: a tube that lasts three weeks would be due all the time."""
URGENT_SHARE, URGENT_DAYS = 0.10, 4.0
MOST_READINGS: Final = 10
"""So many readings teach the rate; older ones have had their say (the loss changes with the seasons)."""


@dataclass(frozen=True, slots=True)
class Reservoir:
    """What is known about a reservoir as of ``as_of_ms``, the latest reading (or the start, taken as full).

    ``level_share`` and ``rate_per_day`` (80 % interval) in shares of the full reservoir, ``days_left`` until it is dry;
    ``leak_probability`` 0 to 1. ``learnt``: readings have told something about the rate. ``latest_id``: the reading.
    ``full_mm`` and ``full_ml``: length and content of the full reservoir, None where nobody knows them.
    ``seen_dry``: a person saw it empty, and nothing was filled since. ``line``: the instant and
    the level at which the gauge's line begins, to be right today where the days were not like the days to come.
    """

    level_share: float
    rate_per_day: Estimate
    days_left: Estimate
    leak_probability: float
    as_of_ms: int
    learnt: bool
    latest_id: str | None
    tube: bool
    full_mm: float | None
    full_ml: float | None
    reasons: tuple[Reason, ...]
    seen_dry: bool = False
    line: tuple[int, float] | None = None

    @property
    def look_today(self) -> bool:
        """Say whether the latest loss asks for a look today."""
        return self.leak_probability >= LOOK_TODAY


def reservoir(
    events: Sequence[Event], vessel: Vessel, place: Place, start_ms: int, dried: DryingDays = BY_SETTINGS
) -> Reservoir:
    """Return what the log says about the water. Odd readings follow the rules of ``readings``; nothing raises.

    ``dried``: how the days were between the looks; the rate is one of the days to come.
    """
    sizes = lengthened(water_sizes(vessel, place), lengths_read(events))
    readings, left_out = readings_of(events, sizes)
    if not dried.as_set:
        readings = tuple(r._replace(dried_ms=dried.until_ms(r.at_ms)) for r in readings)
    learnt = _learn(readings[-MOST_READINGS:], sizes.usual_per_day, sizes.reservoir_mm)
    latest = readings[-1] if readings else None
    leak = 0.0 if latest is not None and _looked_since(events, latest.at_ms) else learnt.leak
    by_settings = learnt.u.times(sizes.usual_per_day)
    per_day = by_settings.times(dried.to_come)
    if leak > 0 and learnt.lately is not None:
        per_day = _suspected(per_day, learnt.lately, leak)
    level = latest.share if latest else 1.0
    at_ms = latest.at_ms if latest else start_ms
    days_left = Estimate(*(level / rate for rate in (per_day.high, per_day.best, per_day.low)))
    reasons = [*_said(latest, level, per_day, learnt.any, sizes), *_suspicion(leak, days_left), *left_out]
    return Reservoir(
        level, per_day, days_left, leak, at_ms, learnt.any,
        latest.event_id if latest else None, sizes.tube, sizes.reservoir_mm, sizes.reservoir_ml, tuple(reasons),
        seen_dry=latest is not None and level == 0,
        line=_line(level, at_ms, by_settings.best, dried),
    )  # fmt: skip


def _line(level: float, at_ms: int, by_settings_per_day: float, dried: DryingDays) -> tuple[int, float]:
    """Return where the line begins that falls as in the days to come and is today where the level is by now.

    At the reading, or later where it would begin above a full reservoir.
    """
    if dried.as_set or at_ms >= dried.now_ms:
        return at_ms, level
    days_as_set = (dried.until_ms(dried.now_ms) - dried.until_ms(at_ms)) / DAY_MS
    as_to_come = dried.to_come * (dried.now_ms - at_ms) / DAY_MS
    begin = max(0.0, level + by_settings_per_day * (as_to_come - days_as_set))
    if begin <= 1:
        return at_ms, begin
    return at_ms + round((begin - 1) / (by_settings_per_day * dried.to_come) * DAY_MS), 1.0


def _looked_since(events: Sequence[Event], at_ms: int) -> bool:
    """Say whether somebody looked at the water after a reading and reported nothing wrong."""
    for event in reversed(events):
        if event.happened_ms < at_ms:
            return False
        if tells(event, Check) and event.said.need == "water":
            return True
    return False


def _suspected(usual: Estimate, lately: Estimate, leak: float) -> Estimate:
    """Return the rate under a suspicion: from the usual one to what was lost lately, the surer the nearer."""
    best = usual.best * max(1.0, lately.best / usual.best) ** leak
    low = min(best, usual.low * max(1.0, lately.low / usual.low) ** leak)
    high = max(best, usual.high * max(1.0, lately.high / usual.high) ** leak)
    return Estimate(low, best, high)


def _said(
    latest: Reading | None, level: float, per_day: Estimate, learnt: bool, sizes: WaterSizes
) -> list[Reason]:
    last = round(1 / per_day.best)
    said: list[Reason] = []
    if latest is None:
        said.append(reason("water_unread", last=last))
    else:
        reading = f"{round(level * 100)} %"
        said.append(reason("water_read", reading=reading, at_ms=latest.at_ms, last=last))
    if learnt:
        low, high = round(1 / per_day.high), round(1 / per_day.low)
        said.append(reason("water_learnt", low=low, high=high))
    else:
        said.append(reason("water_physics" if sizes.tube else "water_nest"))
    if sizes.guessed and sizes.reservoir_mm is not None:
        said.append(reason("water_length_guessed", mm=round(sizes.reservoir_mm)))
    return said


def _suspicion(leak: float, days_left: Estimate) -> list[Reason]:
    if leak < LOOK_TODAY:
        return []
    return [reason("leak_suspected", chance=round(100 * leak), days=round(days_left.best, 1))]


def gauge_of(known: Reservoir) -> Gauge:
    """Return the gauge in shares of the full reservoir.

    Due at a quarter, in a tube also when 14 days are left and it is at most half full.
    """
    rate = known.rate_per_day
    due = min(HALF_SHARE, max(LOW_SHARE, LOW_DAYS * rate.best)) if known.tube else LOW_SHARE
    as_of_ms, level = known.line or (known.as_of_ms, known.level_share)
    basis = "learnt" if known.learnt else "physics" if known.tube else "common_practice"
    return Gauge(
        "water", "share", level, 1.0, rate.best, rate.low, rate.high, as_of_ms, due, basis,
        None, known.reasons, known.full_mm,
    )  # fmt: skip


def is_urgent(gauge: Gauge, now_ms: int) -> bool:
    """Say whether a reservoir is nearly dry: at most a tenth, in a tube also at most four days.

    A nest that is watered every few days has no four-day rule; its due level is the bare quarter. (In a tube with that
    due level a tenth comes before the last four days.)
    """
    share = level_at(gauge, now_ms)
    soon = gauge.due_level > LOW_SHARE and share <= URGENT_DAYS * gauge.rate_per_day
    return share <= URGENT_SHARE or soon


class _Learnt(NamedTuple):
    """``u``: the rate as a multiple of the usual; ``any``: readings told something about it; ``leak``: 0 to 1;
    ``lately``: what was lost a day before the latest reading, None if it is a step."""

    u: Estimate
    any: bool
    leak: float
    lately: Estimate | None


@lru_cache(maxsize=1024)  # tests.bench.plan_cost: a fifth of a plan
def _learn(readings: tuple[Reading, ...], usual_per_day: float, reservoir_mm: float | None) -> _Learnt:
    """Return what readings teach.

    Careful and hasty readers are both thought of, each as far as it explains the readings.
    Most plans are made again because of another need, so what the same readings said is kept.
    """
    readers = READERS if any(r.measured and not r.fill for r in readings) else READERS[:1]
    weights, sound, leaking, learnt = [0.0] * GRID, 0.0, 0.0, False
    lately: Estimate | None = None
    for noise_mm, chance in readers:
        noise = noise_mm / reservoir_mm if reservoir_mm else EYE_SHARE
        belief = UNREAD
        run: list[tuple[Belief, Reading]] = []
        for reading in readings:
            if begins_anew(belief, reading, noise):
                belief, run = anew(belief, reading, noise), []
            else:
                run.append((belief, reading))
                belief = after(belief, reading, usual_per_day, noise)
        weights = [w + chance * more for w, more in zip(weights, weights_of(belief), strict=True)]
        explained = explain(run, usual_per_day, noise)
        alone = 1.0 if run else evidence(belief)
        sound += chance * explained.sound * alone
        leaking += chance * explained.leaking * alone
        learnt = learnt or belief.learnt
        if run and lately is None:
            lately = lost_per_day(readings[-2], readings[-1], noise)
    return _Learnt(ratio(weights), learnt, leaking / (leaking + sound) if leaking > 0 else 0.0, lately)
