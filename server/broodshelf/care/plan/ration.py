"""How much at once and when next: decided here for every food need; gauge, task and portion ask.

A serving is what can be eaten before it must be taken out: the need of the days until the next one, and of at most four
days, however long that is (common practice, no source). Longer intervals mean less food, never a heap. It starts at a
third (``feeding.ramp``), follows what checks taught (``feeding.learning``), and how long it lasts is the physiology's
word inside the trade's band.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from ...model.facts import Logged
from ...model.kinds.log import Feeding
from ...model.kinds.plan import Reason
from ...model.needs import Need
from ...model.quantities import Estimate
from ...model.tasks import reason
from ..catalogue.bands import Interval, interval
from ..colony.census import Brood, life_group
from ..feeding.appetite import protein_mg_per_day, sugar_mg_per_day
from ..feeding.learning import Learnt
from ..feeding.ramp import FIRST_SHARE, Ramp, Served, ramp
from ..feeding.removal import fresh_days
from ..feeding.stores import Drink, Drinkers, FoodInterval, protein_interval, sugar_interval
from .fed import Fed, content_of, recently_fed
from .known import Known
from .taught import AT_ONCE_DAYS, taught_by_checks

OPEN_DROP: Final = Feeding(need="sugar", food_code="sugar_water", form="drop")

Reasons = tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Ration:
    """What a food need comes to for one colony at present.

    ``mg_per_day``: what it uses, with what its checks taught; None: not counted in mg (seeds, leaves). ``days``: how
    long a serving should last; ``aim_mg``, ``most_mg``: what it should hold and may hold; ``tiny``: the first food of
    their lives. ``reasons``: why the serving is as large as it is.
    """

    need: Need
    usual: Interval
    taught: Learnt | None
    mg_per_day: Estimate | None
    days: float
    ramp: Ramp | None
    aim_mg: float
    most_mg: float
    tiny: bool
    last: Logged[Feeding] | None
    reasons: Reasons


def ration_of(
    need: Need, known: Known, own_days: float | None, last: Logged[Feeding] | None = None
) -> Ration:
    """Return the ration of a food need.

    ``own_days``: the keeper's own interval, where there is one; ``last``: the last feeding that counted.
    """
    usual = _usual(need, known)
    tiny = known.switched.first_food is not None
    until = own_days or (usual.high_days if need == "sugar" else usual.days)
    days = min(AT_ONCE_DAYS, until)
    if need not in ("sugar", "protein"):
        return Ration(need, usual, None, None, until, None, 0.0, 0.0, tiny, last, ())
    usual_mg = _mg_per_day(need, known)
    fed = recently_fed(need, known)
    taught = taught_by_checks(need, known, fed, use_mg=usual_mg.best, usual_days=usual.days)
    per_day = usual_mg.times(taught.multiplier)
    wanted_mg = per_day.best * days
    if taught.bound == "at_least":
        # nothing was ever left: how much more they want shows only if more is offered
        wanted_mg = min(usual_mg.best * taught.multiplier.high * days, per_day.best * AT_ONCE_DAYS)
    steps = ramp(
        _served(need, fed), usual_mg.best * days, wanted_mg, first_share=FIRST_SHARE if need == "protein" else 1.0
    )  # fmt: skip
    aim_mg = 0.0 if tiny else min(wanted_mg, steps.most_mg)
    # a first third may be rounded to the nearest piece, a rise may not
    most_mg = min(steps.most_mg if steps.feedings else math.inf, per_day.best * AT_ONCE_DAYS)
    why = _why_so_much(need, tiny=tiny, steps=steps, until=until)
    return Ration(need, usual, taught, per_day, days, steps, aim_mg, most_mg, tiny, last, why)


def _why_so_much(need: Need, *, tiny: bool, steps: Ramp, until: float) -> Reasons:
    if tiny:
        return (reason("portion_tiny"),)
    why = []
    if steps.rising:
        why.append(reason("portion_rises" if steps.feedings or need == "sugar" else "prey_first_third"))
    if until > AT_ONCE_DAYS and need == "protein":
        why.append(reason("portion_at_once", days=AT_ONCE_DAYS))
    return tuple(why)


def lasts(ration: Ration, known: Known, feeding: Feeding, share: float) -> FoodInterval:
    """Return how long a feeding lasts, of which ``share`` was or will be eaten."""
    usual, taught, per_day = ration.usual, ration.taught, ration.mg_per_day
    band = (usual.low_days, usual.high_days)
    seeds_feed_the_brood = ration.need == "protein" and known.species.guild == "harvester"
    if taught is None or per_day is None or seeds_feed_the_brood or known.switched.queen_fed:
        why = reason("interval_band", low=usual.low_days, high=usual.high_days)
        return FoodInterval(usual.days, usual.low_days, usual.high_days, "interval_band", (why,))
    protein, sugar = content_of(known, feeding)
    if ration.need == "sugar":
        fresh = fresh_days(feeding) or fresh_days(OPEN_DROP) or Estimate.exactly(1)
        drinkers = Drinkers(known.census.workers, known.worker_mg, known.temp_c, taught.multiplier)
        return sugar_interval(drinkers, Drink(fresh, feeding.form == "feeder", sugar), band)
    # while servings are still growing towards the estimate, their size says little: the trade's band rules
    grown = ration.ramp is not None and not ration.ramp.rising and not ration.tiny
    counted = protein is not None and per_day.best > 0 and grown
    return protein_interval(
        brood=_brood(known),
        need_mg_per_day=per_day,
        temp_c=known.temp_c,
        band=band,
        eaten_mg=protein * share if protein is not None and counted else None,
    )


def _usual(need: Need, known: Known) -> Interval:
    larvae = _brood(known).larvae
    return interval(
        need,
        known.species,
        known.workers,
        has_larvae=None if larvae is None else larvae != "none",
        queen_fed=known.switched.queen_fed,
    )


def _brood(known: Known) -> Brood:
    """Return the brood that protein is for: in the quiet part of its year a colony only keeps itself."""
    brood = known.census.brood
    return (
        replace(brood, larvae="none", larvae_n=Estimate.exactly(0))
        if known.switched.protein_maintenance
        else brood
    )


def _mg_per_day(need: Need, known: Known) -> Estimate:
    """Return what a colony of this size uses a day before its own checks. Seeds are carbohydrate like sugar."""
    if need == "sugar":
        return sugar_mg_per_day(known.census.workers, known.worker_mg, known.temp_c)
    sweet = "sugar" not in known.switched.off or "seeds" not in known.switched.off
    return protein_mg_per_day(
        life_group(known.species.genus), _brood(known), known.census.workers, known.brood_mg, known.temp_c,
        sugar_offered=sweet,
    )  # fmt: skip


def _served(need: Need, fed: list[Fed]) -> list[Served]:
    return [
        Served(
            each.protein_mg if need == "protein" else each.sugar_mg,
            each.feeding.said.amount,
            each.outcome,
        )
        for each in fed
    ]
