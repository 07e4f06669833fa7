"""How heavy a worker is: measured, or estimated from its length.

Length gives DRY mass in the published formulas, appetite needs FRESH mass: the two are kept apart by name.
"""

from __future__ import annotations

import math
from typing import Final

from ..catalogue import Species
from ..quantities import Estimate, within

LENGTH_MM: Final = (0.8, 35.0)
"""Body lengths of workers for which the formulas are used; the longest catalogued worker is 30 mm."""
FRESH_MG: Final = (0.02, 500.0)
"""Fresh masses of workers that the care core accepts: from *Pheidole* minors to above *Paraponera*."""

_ROGERS: Final = (-4.029, 2.572)
_DRY_FORMULAS: Final = (_ROGERS, (-3.997, 2.489), (-4.727, 2.919), (-3.730, 2.103), (-3.1415, 2.3447))
"""ln(dry mg) = a + b ln(mm) for ants: Rogers et al. 1977, Gowing & Recher 1984, Sample et al. 1993, Johnson &
Strong 2000, Ganihar 1997 (about twice the others); coefficients second-hand, from the pollimetry R package."""
_DRY_SHARE: Final = Estimate(0.30, 0.35, 0.40)
"""Dry as a share of fresh mass (derived from dry and live masses of the same species; from memory)."""
_NANITIC_SHARE: Final = Estimate(0.4, 0.6, 0.8)
"""Fresh mass of a nanitic as a share of a later worker's (common practice, no source)."""


def dry_mg(length_mm: float) -> Estimate:
    """Return the dry mass [mg] of an ant of ``length_mm`` [0.8..35]: Rogers 1977, other authors as the spread.

    Rogers gives 0.63 mg at 4 mm, where *Lasius niger* was weighed at 0.58 mg (Jensen & Nielsen 1975).
    """
    log_mm = math.log(within("worker length", length_mm, "mm", *LENGTH_MM))
    masses = [math.exp(a + b * log_mm) for a, b in _DRY_FORMULAS]
    return Estimate(min(masses), masses[0], max(masses))


def worker_fresh_mg(species: Species, *, nanitic: bool) -> Estimate:
    """Return the fresh mass [mg] of the colony's mean worker.

    From ``fresh_mg`` where the species has it: the mean worker lies well inside the range of single workers,
    so the ends are the geometric means of the usual with the smallest and with the largest. Otherwise from
    the geometric mean of the shortest and longest worker. Raises ``OutOfRange`` for lengths or masses that
    no ant has.
    """
    if species.fresh_mg is not None:
        smallest, usual, largest = (within("fresh mass", mg, "mg", *FRESH_MG) for mg in species.fresh_mg)
        mean = Estimate(math.sqrt(smallest * usual), usual, math.sqrt(usual * largest))
    else:
        shortest, longest = (within("worker length", mm, "mm", *LENGTH_MM) for mm in species.worker_mm)
        dry = dry_mg(math.sqrt(shortest * longest))
        mean = Estimate(dry.low / _DRY_SHARE.high, dry.best / _DRY_SHARE.best, dry.high / _DRY_SHARE.low)
    return mean.times(_NANITIC_SHARE) if nanitic else mean
