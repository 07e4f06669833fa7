"""How fast a colony grows: log-linear and logistic fits to the counts of one season, with 80 % intervals.

Early growth is exponential (Markin, Dillier & Collins 1973 Ann. Entomol. Soc. Am. 66:803-808), whole lives are
nearer to logistic (Tschinkel 1988 Behav. Ecol. Sociobiol. 22:103-115). Both are fitted to the logarithm of the
workers, since a count errs in proportion. The fit with the lower AICc is taken.
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate, within
from .day_length import shortest_day_near
from .history import Count
from .least_squares import fit_line, gauss_newton, student_t_80

FEWEST_COUNTS: Final = 3
LOGISTIC_COUNTS: Final = 6
"""AICc for a curve with three parameters and a variance needs six counts."""
BENT_SHARE: Final = 0.8
"""A logistic is tried when the later half of the counts grows at less than this share of the earlier half's pace."""
COUNT_NOISE: Final = 0.05
"""A count of moving ants errs by a twentieth at least (common practice, no source), however smooth the fit."""
LONGEST_DAYS: Final = 3650.0
"""Stands for 'perhaps never' at the high end of an interval."""
MOST_WORKERS: Final = 10_000_000.0

Point = tuple[int, float]
"""An instant in ms since 1970 UTC and a number of workers above 0."""


@dataclass(frozen=True, slots=True)
class Growth:
    """A fit. ``rate_per_day``: of the logarithm of the workers; ``ceiling``: of a logistic fit, else None.

    ``workers_now`` and ``as_of_ms``: where the fit stands at the last count.
    """

    model: str
    rate_per_day: Estimate
    workers_now: Estimate
    as_of_ms: int
    counts: int
    ceiling: float | None = None

    def doubling_days(self) -> Estimate | None:
        """Return how long a doubling takes; None when the colony does not grow. High end at most ten years."""
        rate = self.rate_per_day
        if rate.best <= 0:
            return None
        slowest = math.log(2) / rate.low if rate.low > 0 else LONGEST_DAYS
        best = min(LONGEST_DAYS, math.log(2) / rate.best)
        return Estimate(min(best, math.log(2) / rate.high), best, max(best, min(LONGEST_DAYS, slowest)))

    def workers_at(self, at_ms: int) -> Estimate:
        """Return the workers at an instant from the last count on; OutOfRange before it or after half a year."""
        days = within("days ahead", (at_ms - self.as_of_ms) / DAY_MS, "days", 0, 183)
        now, rate = self.workers_now, self.rate_per_day
        pairs = ((now.low, rate.low), (now.best, rate.best), (now.high, rate.high))
        low, best, high = (self._grown(start, speed, days) for start, speed in pairs)
        return Estimate(min(low, best), best, max(high, best))

    def full_in_days(self, room: float) -> Estimate | None:
        """Return in how many days after the last count the workers reach ``room``; None if they never will."""
        room = within("room", room, "workers", 1, MOST_WORKERS)
        best = self._reach(self.workers_now.best, self.rate_per_day.best, room)
        if best is None:
            return None
        early = self._reach(self.workers_now.high, self.rate_per_day.high, room) or 0.0
        late = self._reach(self.workers_now.low, self.rate_per_day.low, room)
        return Estimate(min(early, best), best, max(best, LONGEST_DAYS if late is None else late))

    def _grown(self, start: float, rate: float, days: float) -> float:
        grown = math.exp(min(50.0, rate * days))
        if self.ceiling is None:
            return start * grown
        return start * grown / (1 + start / self.ceiling * (grown - 1))

    def _reach(self, start: float, rate: float, room: float) -> float | None:
        if start >= room:
            return 0.0
        if rate <= 0 or (self.ceiling is not None and self.ceiling <= room):
            return None
        odds = room / start
        if self.ceiling is not None:
            odds *= (self.ceiling - start) / (self.ceiling - room) if start < self.ceiling else 1
        days = math.log(odds) / rate
        return days if days <= LONGEST_DAYS else None


def season_points(
    counts: Sequence[Count], now_ms: int, *, rests: bool, latitude_sign: int = 1, woke_ms: int | None = None
) -> tuple[Point, ...]:
    """Return the counted numbers of the season: since the shortest day for a species that rests, else of a year.

    ``woke_ms``: when its own last rest ended; that begins the season, wherever the shortest day lies.

    Coarse counts are no numbers and are left out; of two within an hour the later one stands. A count of zero
    begins anew: growth is not forecast across it.
    """
    today = dt.datetime.fromtimestamp(now_ms / 1000, dt.UTC).date()
    since_ms = now_ms - 365 * DAY_MS
    if rests:
        solstice = shortest_day_near(today, latitude_sign)
        if solstice > today:
            solstice = solstice.replace(year=solstice.year - 1)
        since_ms = (solstice.toordinal() - dt.date(1970, 1, 1).toordinal()) * DAY_MS
    if woke_ms is not None:
        since_ms = max(woke_ms, now_ms - 365 * DAY_MS)
    points: list[Point] = []
    for count in counts:
        if count.workers is None or not since_ms <= count.at_ms <= now_ms:
            continue
        if count.workers <= 0:
            points.clear()
            continue
        if points and count.at_ms - points[-1][0] < DAY_MS / 24:
            points.pop()
        points.append((count.at_ms, within("workers", count.workers, "workers", 0, MOST_WORKERS)))
    return tuple(points)


@lru_cache(maxsize=1024)
def fit_growth(points: tuple[Point, ...]) -> Growth | None:
    """Return the better fit to counts in time order, or None with fewer than three or within one week.

    Remembered by its points: a plan is made anew with every log, but counts are few.
    """
    if len(points) < FEWEST_COUNTS or points[-1][0] - points[0][0] < 7 * DAY_MS:
        return None
    line = fit_log_line(points)
    if len(points) < LOGISTIC_COUNTS or not _bends(points):
        return line[0]
    curve = fit_logistic(points)
    return curve[0] if curve is not None and curve[1] < line[1] else line[0]


def _bends(points: Sequence[Point]) -> bool:
    """Say whether the later half grows slower than the earlier one: without that a ceiling is not to be seen."""
    half = (len(points) + 1) // 2
    early, late = points[:half], points[half - 1 :]
    return _slope(late) < BENT_SHARE * _slope(early)


def _slope(points: Sequence[Point]) -> float:
    first_ms = points[0][0]
    return fit_line([(at - first_ms) / DAY_MS for at, _ in points], [math.log(n) for _, n in points]).slope


def fit_log_line(points: Sequence[Point]) -> tuple[Growth, float]:
    """Fit ln N = a + r t by least squares; return it with its AICc. The interval of r is Student's, 80 %."""
    last_ms = points[-1][0]
    days = [(at - last_ms) / DAY_MS for at, _ in points]
    logs = [math.log(workers) for _, workers in points]
    line = fit_line(days, logs)
    spread = max(COUNT_NOISE, math.sqrt(line.squares / (len(points) - 2)))
    t = student_t_80(len(points) - 2)
    rate = _around(line.slope, t * spread * line.slope_unit)
    now = _around(line.intercept, t * spread * line.intercept_unit)
    growth = Growth("log_linear", rate, _exp(now), last_ms, len(points))
    return growth, _aicc(len(points), line.squares, 2)


def fit_logistic(points: Sequence[Point]) -> tuple[Growth, float] | None:
    """Fit ln N = ln K - ln(1 + exp(-r (t - m))) by Gauss-Newton; None where it does not settle on a ceiling.

    Return it with its AICc. The ceiling must lie above the largest count and below a thousand times it.
    """
    last_ms = points[-1][0]
    days = [(at - last_ms) / DAY_MS for at, _ in points]
    logs = [math.log(workers) for _, workers in points]
    top = max(logs)
    start_rate = max(1e-4, fit_line(days[: len(days) // 2 + 1], logs[: len(days) // 2 + 1]).slope)
    middle = min(days, key=lambda d: abs(logs[days.index(d)] - (top - math.log(2))))
    fit = gauss_newton(_logistic, (top + 0.1, start_rate, middle), days, logs)
    if fit is None:
        return None
    log_k, rate, _ = fit.parameters
    if rate <= 0 or not top - 0.5 < log_k < top + math.log(1000):
        return None
    spread = max(COUNT_NOISE, math.sqrt(fit.squares / (len(points) - 3)))
    t = student_t_80(len(points) - 3)
    now, slopes = _logistic(fit.parameters, 0.0)
    rate_unit, now_unit = fit.unit_of((0.0, 1.0, 0.0)), fit.unit_of(slopes)
    if not math.isfinite(rate_unit + now_unit):
        return None
    growth = Growth(
        "logistic",
        _around(rate, t * spread * rate_unit),
        _exp(_around(now, t * spread * now_unit)),
        last_ms,
        len(points),
        math.exp(log_k),
    )
    return growth, _aicc(len(points), fit.squares, 3)


def _logistic(parameters: Sequence[float], day: float) -> tuple[float, tuple[float, ...]]:
    """Return ln N and its slopes by ln K, r and m."""
    log_k, rate, mid = parameters
    x = max(-50.0, min(50.0, -rate * (day - mid)))
    grown = math.exp(x)
    below = grown / (1 + grown)
    return log_k - math.log1p(grown), (1.0, below * (day - mid), -below * rate)


def _aicc(n: int, squares: float, parameters: int) -> float:
    k = parameters + 1
    noise = max(squares / n, COUNT_NOISE**2)
    small = 2 * k * (k + 1) / (n - k - 1) if n > k + 1 else math.inf
    return n * math.log(noise) + 2 * k + small


def _around(best: float, half: float) -> Estimate:
    return Estimate(best - half, best, best + half)


def _exp(logs: Estimate) -> Estimate:
    low, best, high = (math.exp(min(math.log(MOST_WORKERS), x)) for x in (logs.low, logs.best, logs.high))
    return Estimate(low, best, high)
