"""What a colony uses a day: sugar for its workers, protein for its brood.

**Sugar.** The resting rate of one worker, summed over workers (worker groups scale with mass^1: Waters et al.
2010, Ko et al. 2022), times an activity factor.

**The activity factor** is set so that the whole gives what Macom & Porter 1995 measured in fire-ant colonies
(abstract read): 1.14 +- 0.29 (SD) kcal per g of live colony and week, of which 0.106 g of dry cricket:

    prey     0.106 g x 4.55 kcal/g dry (Finke: 1.40 kcal/g fresh, 30.8 % dry)   = 0.48 kcal
    sugar    1.14 - 0.48 = 0.66 kcal = 166 mg of sucrose per g and week           = 4.55 mW per g of colony
    resting  3.97 mW per g of workers of 0.71 mg at 28 C (assumed; not in the abstract)
    workers  half of the colony's mass (Porter et al. 2015: 2-3 g workers with 2-3 g brood)
    factor   4.55 / (3.97 x 0.5)                                                  = 2.3

**Protein.** A larva becomes a worker in the larval days that the census gives its group, and takes the worker's body
protein over the efficiency. The same half gram of brood, with 10.1 larval and as many pupal days (the census's fire
ants at 28 C) and larvae half-grown on average, makes 0.5 / (10.1 + 10.1/2) = 33 mg of new workers a day; the crickets
hold 0.106 x 20.5/30.8 / 7 = 10 mg of protein:

    0.31 mg of protein eaten per mg of new worker; a worker holds 0.35 (dry share) x 0.55 (protein of dry matter,
    from memory) = 0.19 mg per mg: an efficiency of about six tenths.

Both figures are a calibration to one study of one species, not a test of the model.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from ...model.quantities import Estimate, within
from ..colony.body import FRESH_MG
from ..colony.census import MOST_WORKERS, Brood, LifeGroup, larval_days

TEMP_C: Final = (10.0, 40.0)
"""Temperatures for which the rates hold: *Camponotus vicinus* was measured at 10-40 C (Lighton 1988)."""
SUCROSE_J_PER_MG: Final = 16.5
ACTIVITY: Final = Estimate(2.3 * 0.75, 2.3, 2.3 * 1.25)
"""Intake over resting rate; its spread is the published SD of 25 %. Derived above."""
PROTEIN_PER_MG_WORKER: Final = Estimate(0.31 * 0.6, 0.31, 0.31 * 1.6)
"""mg of protein eaten per mg of new worker, fresh. Derived above; the spread is ours."""
PREY_WITHOUT_SUGAR: Final = 0.186 / 0.106
"""How much more prey a colony takes that gets no sugar: 43 % less where sugar is given (Macom & Porter 1995)."""

_DAY_S: Final = 86_400.0
_Q10: Final = Estimate(1.8, 2.0, 2.4)
"""1.79-1.84 (Lighton 1988, *Camponotus vicinus*) to 2.37 (Quinlan & Lighton 1999, *Pogonomyrmex*)."""
_EGG_DAYS_SHARE: Final = 0.7
"""Egg over larval days: 9 over 13, *Solenopsis invicta* (Vinson 1997, second-hand)."""
_EGG_MASS_SHARE: Final = 0.03
"""Mass of an egg over that of a worker (from memory)."""
_UPKEEP_PER_DAY: Final = Estimate(0.0002, 0.0004, 0.0008)
"""mg of protein per mg of worker and day without brood: about 0.2 % of its body protein (no source)."""


def resting_rate_uw(mass_g: float, temp_c: float) -> Estimate:
    """Return the resting rate [microwatt] of one ant of ``mass_g`` fresh [2e-5..0.5] at ``temp_c`` [10..40].

    906 x M^0.825 at 25 C (Lighton & Fielden 1995, ants, beetles and spiders), times Q10^((T - 25)/10).
    1 mg at 25 C: 3.03 microwatt. Raises ``OutOfRange``.
    """
    within("worker mass", mass_g * 1000, "mg", *FRESH_MG)
    tens = (within("temperature", temp_c, "C", *TEMP_C) - 25.0) / 10.0
    at_25_c = 906.0 * mass_g**0.825
    ends = sorted((at_25_c * _Q10.low**tens, at_25_c * _Q10.high**tens))
    return Estimate(ends[0], at_25_c * _Q10.best**tens, ends[1])


@lru_cache(maxsize=512)  # tests.bench.plan_cost: a tenth of a plan
def sugar_mg_per_worker_day(worker_mg: Estimate, temp_c: float) -> Estimate:
    """Return the sugar [mg sucrose per day] that one worker of ``worker_mg`` fresh uses. Raises ``OutOfRange``."""
    to_mg = _DAY_S / (SUCROSE_J_PER_MG * 1e6)
    return Estimate(
        resting_rate_uw(worker_mg.low / 1000, temp_c).low * ACTIVITY.low * to_mg,
        resting_rate_uw(worker_mg.best / 1000, temp_c).best * ACTIVITY.best * to_mg,
        resting_rate_uw(worker_mg.high / 1000, temp_c).high * ACTIVITY.high * to_mg,
    )


def sugar_mg_per_day(workers: Estimate, worker_mg: Estimate, temp_c: float) -> Estimate:
    """Return the sugar [mg sucrose per day] of a colony of ``workers`` [0..1e6]. Raises ``OutOfRange``."""
    return _checked(workers).times(sugar_mg_per_worker_day(worker_mg, temp_c))


def protein_mg_per_day(
    group: LifeGroup,
    brood: Brood,
    workers: Estimate,
    worker_mg: Estimate,
    temp_c: float,
    *,
    sugar_offered: bool = True,
) -> Estimate:
    """Return the protein [mg per day] for growing larvae, the queen's eggs and the upkeep of workers.

    ``worker_mg`` [fresh] is the mass of the workers that the brood will be. Where the larvae of its ``group`` do not
    grow only the upkeep is left. Without sugar, prey must feed the workers too (43 % less prey where sugar is given).
    Raises ``OutOfRange``.
    """
    within("temperature", temp_c, "C", *TEMP_C)
    for mg in (worker_mg.low, worker_mg.high):
        within("worker mass", mg, "mg", *FRESH_MG)
    need = _checked(workers).times(worker_mg).times(_UPKEEP_PER_DAY)
    days = larval_days(group, temp_c)
    if days is not None:
        eggs_as_larvae = _EGG_MASS_SHARE / _EGG_DAYS_SHARE
        growing = _checked(brood.larvae_n).plus(_checked(brood.eggs_n).times(eggs_as_larvae))
        a_day = Estimate(growing.low / days.high, growing.best / days.best, growing.high / days.low)
        need = need.plus(a_day.times(worker_mg).times(PROTEIN_PER_MG_WORKER))
    return need if sugar_offered else need.times(PREY_WITHOUT_SUGAR)


def _checked(number: Estimate) -> Estimate:
    for end in (number.low, number.high):
        within("number", end, "ants", 0, 2 * MOST_WORKERS)  # twice: brood may outnumber the workers
    return number
