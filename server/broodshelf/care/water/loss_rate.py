"""What the readings say about how fast this tube loses water: a posterior on a grid, one reading at a time.

The unknown is u, the loss rate as a multiple of what physics and practice expect for this tube and place. The prior
is log-normal around 1. For each u of the grid the level is normal with mean ``start - used x u`` and one common
variance (a Kalman filter, whose mean stays linear in u), so a reading costs one pass over the grid:

* a reading in mm has the normal likelihood of a point, with the noise of its reader;
* a reading by eye has the probability of its range, blurred by the eye;
* no reading counts for more than ``WORST``: a slip of the pen must not outweigh all others.

For the suspicion of a leak the latest reading is weighed by its tail, not by its density: see ``leak``.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final, NamedTuple

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate
from .readings import Reading

PRIOR_LOG_SD: Final = 0.46
"""80 % of tubes lie within a factor 1.8 of what is expected: ``evaporation.IN_USE`` (common practice, no source)."""
GRID: Final = 32
LOG_RATIOS: Final = tuple(math.log(7) * (2 * i / (GRID - 1) - 1) for i in range(GRID))
"""Candidates from a seventh of the expected rate to seven times, evenly on a log scale, 13 % apart."""
RATIOS: Final = tuple(map(math.exp, LOG_RATIOS))
LOG_PRIOR: Final = tuple(-0.5 * (x / PRIOR_LOG_SD) ** 2 for x in LOG_RATIOS)
READERS: Final = ((1.0, 0.8), (2.5, 0.2))
"""Standard deviation in mm of careful and of hasty readers, and how common they are (common practice, no source)."""
EYE_SHARE: Final = 0.05
FILL_SHARE: Final = 0.03
"""Standard deviations of judging quarters by eye, and of what 'filled up' means (common practice, no source)."""
WANDER: Final = 0.15
"""The loss of one interval differs so much from the tube's own usual, with warmth and opening (common practice)."""
LEAK_WANDER: Final = 0.35
"""How much the extra loss of a leak differs from an assumed multiple, as a share of it: leaks come in all sizes."""
WORST: Final = -8.0
"""Log likelihood, relative to a perfect fit, below which a reading says no more: about 4 standard deviations."""
SETTLES_MS: Final = DAY_MS
LEAST_FILL: Final = 0.75
"""A reading within a day of a filling says how full it was made, not what was lost since; but nobody calls less than
this 'filled up', so what is below was lost (common practice, no source)."""
RISE_SD: Final = 3.0
"""A reading this far above the level before it is a step: water was added or the tube was tilted."""
UNTOLD: Final = -4.0
"""Log likelihood of a step that nobody logged; without it a careless reading would cost nothing."""
KEPT_BY_NEW_TUBE: Final = 0.3
"""The weight that old readings keep in a new tube: same keeper and place, another plug (common practice)."""
_ROOT2: Final = math.sqrt(2)


class Belief(NamedTuple):
    """Level at ``at_ms`` is normal around ``start - used x u`` with ``variance``; ``logs`` weigh u on the grid.

    ``learnt``: at least one reading has told something about the rate. ``filled``: nothing was read since a filling.
    ``clock_ms``: the instant by which the loss is reckoned.
    """

    at_ms: int
    start: float
    used: float
    variance: float
    logs: Sequence[float]
    learnt: bool = False
    filled: bool = False
    clock_ms: float = 0.0


UNREAD: Final = Belief(0, 1.0, 0.0, 1.0, (0.0,) * GRID)


def begins_anew(belief: Belief, reading: Reading, noise: float) -> bool:
    """Say whether a reading is a step that says nothing about the rate: a filling, its level, a rise."""
    if reading.fill or belief is UNREAD:
        return True
    if belief.filled and reading.at_ms - belief.at_ms < SETTLES_MS:
        return (reading.share if reading.measured else reading.high) >= LEAST_FILL
    blur = noise if reading.measured else EYE_SHARE
    seen = reading.share if reading.measured else reading.low
    return seen > belief.start + RISE_SD * math.sqrt(belief.variance + blur * blur)


def anew(belief: Belief, reading: Reading, noise: float) -> Belief:
    """Return the belief at a step: the level is what was read or filled, the rate is what it was."""
    if belief.filled and reading.share == 1 and not reading.fill:
        return belief._replace(
            at_ms=reading.at_ms, clock_ms=reading.clock_ms
        )  # 'full' after a filling: nothing new
    logs, learnt = belief.logs, belief.learnt
    if reading.fill == "new_tube":
        logs = [KEPT_BY_NEW_TUBE * log for log in logs]
    elif not reading.fill and not belief.filled:
        logs = [log + UNTOLD for log in logs]
    middle, variance = _as_normal(reading, noise)
    return Belief(reading.at_ms, middle, 0.0, variance, logs, learnt, bool(reading.fill), reading.clock_ms)


def after(belief: Belief, reading: Reading, usual_per_day: float, noise: float, haste: float = 1.0) -> Belief:
    """Return the belief after a reading, losing ``haste`` times as fast since the last one (1: no leak)."""
    expected, variance = _expected(belief, reading, usual_per_day, haste)
    used = belief.used + haste * expected
    middle, blur = _as_normal(reading, noise)
    if reading.measured:
        spread, off = variance + blur, middle - belief.start
        factor, height = -0.5 / spread, -0.5 * math.log(spread)
        logs = [
            log + height + (fit if (fit := factor * (off + used * u) ** 2) > WORST else WORST)
            for log, u in zip(belief.logs, RATIOS, strict=True)
        ]
    else:
        logs = _ranged(belief, reading, used, variance)
    gain = variance / (variance + blur)
    return Belief(
        reading.at_ms,
        belief.start + gain * (middle - belief.start),
        used * (1 - gain),
        variance * (1 - gain),
        logs,
        learnt=True,
        clock_ms=reading.clock_ms,
    )


def weights_of(belief: Belief) -> list[float]:
    """Return the posterior weight of each u of the grid; only ratios mean anything."""
    return [math.exp(log + prior) for log, prior in zip(belief.logs, LOG_PRIOR, strict=True)]


def evidence(belief: Belief) -> float:
    """Return how well everything read was foretold, averaged over the prior; only ratios mean anything."""
    return sum(weights_of(belief))


def weight_of_at_most(belief: Belief, reading: Reading, usual_per_day: float, noise: float) -> float:
    """Return the weight of a loss at least as great as a reading shows: it falls the worse the loss, without end."""
    level = reading.share if reading.measured else reading.high
    return _tail(belief, _ahead(belief, reading, usual_per_day, noise), level, -1.0)


def weight_of_at_least(
    belief: Belief, reading: Reading, usual_per_day: float, noise: float, haste: float
) -> float:
    """Return the weight of a tube that loses at least ``haste`` times as fast: it grows the worse the loss."""
    level = reading.share if reading.measured else reading.low
    return _tail(belief, _ahead(belief, reading, usual_per_day, noise, haste), level, 1.0)


class _Ahead(NamedTuple):
    """What a tube of the usual rate will have lost by a reading, and the variance of what is read then."""

    used: float
    variance: float


def _ahead(
    belief: Belief, reading: Reading, usual_per_day: float, noise: float, haste: float = 1.0
) -> _Ahead:
    expected, variance = _expected(belief, reading, usual_per_day, haste)
    blur = noise if reading.measured else EYE_SHARE
    return _Ahead(belief.used + haste * expected, variance + blur * blur)


def _tail(belief: Belief, ahead: _Ahead, level: float, side: float) -> float:
    """Return the weight of all levels above (``side`` 1) or below (-1) ``level`` that the belief expects."""
    scale, used = side / (_ROOT2 * math.sqrt(ahead.variance)), ahead.used
    weights = weights_of(belief)
    if not math.isfinite(level):
        return sum(weights) if level * side < 0 else 0.0
    # erfc keeps the far tail, where 1 - erf would be nothing at all
    return sum(
        weight * 0.5 * math.erfc((level - max(0.0, belief.start - used * u)) * scale)
        for weight, u in zip(weights, RATIOS, strict=True)
    )


def _expected(belief: Belief, reading: Reading, usual_per_day: float, haste: float) -> tuple[float, float]:
    """Return what a tube of the usual rate loses until a reading, and the variance of the level by then."""
    expected = usual_per_day * (reading.clock_ms - belief.clock_ms) / DAY_MS
    return expected, (
        belief.variance + (WANDER * expected) ** 2 + (LEAK_WANDER * (haste - 1) * expected) ** 2
    )


def ratio(weights: Sequence[float]) -> Estimate:
    """Return u as median and 80 % interval."""
    total = sum(weights)
    low, best, high = (math.exp(_quantile(weights, share * total)) for share in (0.1, 0.5, 0.9))
    return Estimate(low, best, high)


def _as_normal(reading: Reading, noise: float) -> tuple[float, float]:
    """Return mean and variance of the level that a reading by itself speaks of."""
    if reading.fill:
        return 1.0, FILL_SHARE**2
    if reading.measured:
        return reading.share, noise * noise
    low, high = max(0.0, reading.low), min(1.0, reading.high)
    return (low + high) / 2, (high - low) ** 2 / 12 + EYE_SHARE**2


def _ranged(belief: Belief, reading: Reading, used: float, variance: float) -> list[float]:
    scale = 1 / (_ROOT2 * math.sqrt(variance + EYE_SHARE**2))
    high, low = (reading.high - belief.start) * scale, (reading.low - belief.start) * scale
    step, floor, erf, log_of = used * scale, 2 * math.exp(WORST), math.erf, math.log
    return [
        log + log_of(0.5 * max(floor, erf(high + step * u) - erf(low + step * u)))
        for log, u in zip(belief.logs, RATIOS, strict=True)
    ]


def _quantile(weights: Sequence[float], wanted: float) -> float:
    """Return the log ratio below which ``wanted`` weight lies; each weight is spread evenly over its step."""
    step = LOG_RATIOS[1] - LOG_RATIOS[0]
    reached = 0.0
    for weight, log_ratio in zip(weights, LOG_RATIOS, strict=True):
        if reached + weight >= wanted:
            return log_ratio + step * ((wanted - reached) / weight - 0.5)
        reached += weight
    return LOG_RATIOS[-1]
