"""How long a feeding lasts: the crop for sugar, the brood for protein, freshness, and the trade's band over both.

One drop of 50 microlitres would feed a small colony for weeks, so its size seldom rules: the drop spoils, then
the workers live on what their crops hold. Half a crop is kept in hand; behind it stands the fat body, which is
not counted (starved *Lasius niger* lived about 1.5 weeks: Dussutour et al. 2016, second-hand).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any, Final

from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from ..colony.census import Brood
from .appetite import ACTIVITY, sugar_mg_per_worker_day

CROP_UL_PER_MG: Final = Estimate(0.35, 0.5, 1.0)
"""Full crop per mg of fresh worker. *Camponotus rufipes*: 6 microlitres weigh 6.8 mg, half of its mass: 0.44
(Schilman & Roces). *Lasius niger* holds more than 1 and less than 3 microlitres at about 1.75 mg: 0.6-1.7 as a
forager's largest load (Mailleux et al. 2000). No other species was found; the rest is scaled by mass."""
KEPT_IN_HAND: Final = 0.5
"""The share of the crop left when sugar is due (common practice, no source)."""
BANKED_DAYS: Final = 4.0
"""Protein lasts at most so long in a small colony's brood, however big the prey (common practice, no source)."""
USUAL_PERCENT_WW: Final = 30.0
PERCENT_WW: Final = (1.0, 67.0)
"""Sugar solutions: above 67 % w/w sucrose does not dissolve at 20 C."""
DAYS: Final = (0.25, 365.0)

_WATER_MG_PER_UL, _SUCROSE_MG_PER_UL = 0.9982, 1.5879
Band = tuple[float, float]


@dataclass(frozen=True, slots=True)
class FoodInterval:
    """Days until the next feeding with their spread; ``ruled`` is the code of the reason that set them."""

    days: float
    low_days: float
    high_days: float
    ruled: str
    reasons: tuple[Reason, ...]


def solution_mg(volume_ul: float, percent_ww: float) -> float:
    """Return the mass [mg] of ``volume_ul`` [0..1e7] of sucrose solution of ``percent_ww`` [0..67] at 20 C.

    Volumes added (sucrose 1.5879 g/mL); 0.35 % below the CRC table at most. 6 microlitres of 30 %: 6.8 mg.
    """
    within("volume", volume_ul, "microlitre", 0, 1e7)
    share = within("strength", percent_ww, "% w/w", 0, PERCENT_WW[1]) / 100
    return volume_ul / (share / _SUCROSE_MG_PER_UL + (1 - share) / _WATER_MG_PER_UL)


def sugar_mg(volume_ul: float, percent_ww: float) -> float:
    """Return the sucrose [mg] in ``volume_ul`` of a solution of ``percent_ww``; see ``solution_mg``."""
    return solution_mg(volume_ul, percent_ww) * percent_ww / 100


def crop_mg(worker_mg: Estimate, percent_ww: float = USUAL_PERCENT_WW) -> Estimate:
    """Return the sugar [mg] that one worker's full crop holds, by ``CROP_UL_PER_MG``."""
    within("strength", percent_ww, "% w/w", *PERCENT_WW)
    return worker_mg.times(CROP_UL_PER_MG).times(sugar_mg(1.0, percent_ww))


def store_mg(workers: Estimate, worker_mg: Estimate, percent_ww: float = USUAL_PERCENT_WW) -> Estimate:
    """Return the sugar [mg] that the whole colony holds when all crops are full: shared mouth to mouth."""
    return workers.times(crop_mg(worker_mg, percent_ww))


@lru_cache(maxsize=512)  # tests.bench.plan_cost: a few hundredths of a plan
def crop_days(
    worker_mg: Estimate, temp_c: float, multiplier: Estimate, percent_ww: float = USUAL_PERCENT_WW
) -> Estimate:
    """Return how long a full crop lasts [days]. The number of workers cancels; larger ants last longer.

    ``multiplier`` is the colony's appetite over the usual one [0.05..20]. Raises ``OutOfRange``.
    """
    within("appetite", multiplier.low, "times the usual", 0.05, 20)
    within("appetite", multiplier.high, "times the usual", 0.05, 20)
    use_mg = sugar_mg_per_worker_day(worker_mg, temp_c).best * multiplier.best
    best = crop_mg(worker_mg, percent_ww).best / use_mg
    # The mass is in crop and use alike and nearly cancels: the spread is that of the other factors, as independent.
    shorter = (
        CROP_UL_PER_MG.best / CROP_UL_PER_MG.low,
        ACTIVITY.high / ACTIVITY.best,
        multiplier.high / multiplier.best,
    )
    longer = (
        CROP_UL_PER_MG.high / CROP_UL_PER_MG.best,
        ACTIVITY.best / ACTIVITY.low,
        multiplier.best / multiplier.low,
    )
    down, up = (math.hypot(*map(math.log, factors)) for factors in (shorter, longer))
    return Estimate(best * math.exp(-down), best, best * math.exp(up))


@dataclass(frozen=True, slots=True)
class Drinkers:
    """Who drinks: workers, their fresh mass, the temperature around them, and what checks taught of their thirst."""

    workers: Estimate
    worker_mg: Estimate
    temp_c: float
    multiplier: Estimate = field(default_factory=lambda: Estimate.exactly(1))


@dataclass(frozen=True, slots=True)
class Drink:
    """What is offered: ``fresh`` [days] until it is taken out; ``offered_mg`` of sugar, None: plenty.

    A feeder is meant to be ``always_there``; a drop or a piece is not.
    """

    fresh: Estimate
    always_there: bool = False
    offered_mg: float | None = None
    percent_ww: float = USUAL_PERCENT_WW


def sugar_interval(drinkers: Drinkers, drink: Drink, band: Band) -> FoodInterval:
    """Return how long a sugar feeding lasts.

    A feeder is due when it spoils or is empty; a drop or a piece when, after it spoiled, the crops are down to half.
    The result lies between half of ``band`` [days] and its end. Raises ``OutOfRange``.
    """
    worker_mg, temp_c, multiplier = drinkers.worker_mg, drinkers.temp_c, drinkers.multiplier
    full = crop_days(worker_mg, temp_c, multiplier, drink.percent_ww)
    reasons: list[Reason] = []
    if drink.always_there:
        lasting, ruled = drink.fresh, "freshness_rules"
    else:
        half = full.times(1 - KEPT_IN_HAND)
        lasting = drink.fresh.plus(half)
        ruled = "crop_lasts" if half.best >= drink.fresh.best else "freshness_rules"
        reasons.append(_reason("crop_lasts", days=full.best, temp_c=temp_c))
    reasons.append(_reason("freshness_rules", days=drink.fresh.best))
    if drink.offered_mg is not None and drinkers.workers.best > 0:
        mg = within("sugar offered", drink.offered_mg, "mg", 0, 1e8)
        eaters = max(
            1.0, drinkers.workers.best
        )  # an estimate below one worker would divide by next to nothing
        use = sugar_mg_per_worker_day(worker_mg, temp_c).times(multiplier).times(eaters)
        # at its due date half a crop is still in hand, so all that is offered is used before it is due again
        eaten_days = Estimate(mg / use.high, mg / use.best, mg / use.low)
        if eaten_days.best < lasting.best:
            lasting, ruled = _shorter(eaten_days, lasting), "amount_rules"
            reasons.append(_reason("amount_rules", mg=mg, mg_per_day=use.best))
    return _in_band(lasting, ruled, reasons, band, most=band[1])


def protein_interval(
    *,
    brood: Brood,
    need_mg_per_day: Estimate,
    temp_c: float,
    band: Band,
    eaten_mg: float | None = None,
) -> FoodInterval:
    """Return how long a protein feeding lasts.

    ``need_mg_per_day`` is the colony's need with its learnt multiplier; ``eaten_mg`` [mg of protein] what was
    eaten or will be (what is left uneaten counts as nothing; None: not known, so the middle of the band is the
    plan). Growing brood banks at most 4 days; without larvae the band is the plan. Within half to twice
    ``band`` [days].
    """
    if brood.larvae == "none":
        middle = Estimate(band[0], (band[0] + band[1]) / 2, band[1])
        return _in_band(middle, "maintenance_only", [_reason("maintenance_only")], band)
    bank = Estimate.exactly(BANKED_DAYS)
    reasons = [
        _reason(
            "brood_grows",
            larvae=max(1, round(brood.larvae_n.best)),
            mg_per_day=need_mg_per_day.best,
            temp_c=temp_c,
        )
    ]
    if eaten_mg is None:
        usual = Estimate(band[0], (band[0] + band[1]) / 2, band[1])
        lasting, ruled = _shorter(usual, bank), "interval_band"
        reasons.append(_reason("interval_band", low=band[0], high=band[1]))
    else:
        within("protein eaten", eaten_mg, "mg", 0, 1e8)
        need = need_mg_per_day
        within("protein need", need.best, "mg/day", 1e-9, 1e8)
        # A need of nothing at the low end: nobody looked, and there may be no brood.
        ends = (
            min(BANKED_DAYS, eaten_mg / mg) if mg > 0 else BANKED_DAYS
            for mg in (need.high, need.best, need.low)
        )
        lasting, ruled = Estimate(*ends), "prey_rules"
        reasons.append(_reason("prey_rules", mg=eaten_mg, days=eaten_mg / need.best))
    if lasting.best == BANKED_DAYS:
        ruled = "bank_rules"
        reasons.append(_reason("bank_rules", days=BANKED_DAYS))
    return _in_band(lasting, ruled, reasons, band)


def _shorter(one: Estimate, other: Estimate) -> Estimate:
    return Estimate(min(one.low, other.low), min(one.best, other.best), min(one.high, other.high))


def _in_band(
    lasting: Estimate, ruled: str, reasons: list[Reason], band: Band, most: float | None = None
) -> FoodInterval:
    """Hold an interval between half of the trade's band and ``most`` (None: twice it); say where that changed it."""
    low = within("band", band[0], "days", *DAYS)
    high = within("band", band[1], "days", low, DAYS[1])
    longest = 2 * high if most is None else most
    days, low_days, high_days = (
        min(longest, max(low / 2, value)) for value in (lasting.best, lasting.low, lasting.high)
    )
    if days != lasting.best:
        ruled = "band_rules"
        reasons.append(_reason("band_rules", low=low, high=high, days=days))
    return FoodInterval(days, low_days, high_days, ruled, tuple(reasons))


def _reason(code: str, **args: Any) -> Reason:
    return reason(code, **{name: _shown(value) for name, value in args.items()})


def _shown(value: float) -> float:
    """Round to two significant digits: more would claim a precision that nobody has."""
    rounded = float(f"{value:.2g}")
    return int(rounded) if rounded.is_integer() else rounded
