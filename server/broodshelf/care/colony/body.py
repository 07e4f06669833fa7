"""How heavy a worker is: measured, or estimated from its length.

Length gives DRY mass in the published formulas, appetite needs FRESH mass: the two are kept apart by name.
"""

from __future__ import annotations

import math
from typing import Final

from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from ..catalogue import Species

LENGTH_MM: Final = (0.8, 35.0)
"""Body lengths of workers for which the formulas are used; the longest catalogued worker is 30 mm."""
WORKER_MM: Final = (0.8, 40.0)
"""Body lengths of workers that can be entered; beyond the formulas the nearest length stands in, and that is said."""
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
    the geometric mean of the shortest and longest worker, with lengths taken to the nearest for which the formulas
    hold. A mass outside ``FRESH_MG`` is taken to its nearest end. ``limits_said`` tells of both. Raises ``OutOfRange``
    for lengths or masses that no ant has.
    """
    mean = _reckoned_mg(species, nanitic=nanitic)
    return Estimate(*(min(FRESH_MG[1], max(FRESH_MG[0], mg)) for mg in (mean.low, mean.best, mean.high)))


def limits_said(species: Species, *, nanitic: bool) -> tuple[Reason, ...]:
    """Return what a person should know where a worker lies outside what the formulas are known for."""
    said = []
    mean = _reckoned_mg(species, nanitic=nanitic)
    if species.fresh_mg is None and (length := _mean_mm(species)) != (used := _formula_mm(length)):
        said.append(reason("length_clamped", given_mm=round(length, 1), used_mm=round(used, 1)))
    if mean.low < FRESH_MG[0]:
        said.append(reason("mass_clamped_low", limit_mg=FRESH_MG[0]))
    if mean.high > FRESH_MG[1]:
        said.append(reason("mass_clamped_high", limit_mg=round(FRESH_MG[1])))
    return tuple(said)


def _reckoned_mg(species: Species, *, nanitic: bool) -> Estimate:
    if species.fresh_mg is not None:
        smallest, usual, largest = (within("fresh mass", mg, "mg", *FRESH_MG) for mg in species.fresh_mg)
        mean = Estimate(math.sqrt(smallest * usual), usual, math.sqrt(usual * largest))
    else:
        dry = dry_mg(_formula_mm(_mean_mm(species)))
        mean = Estimate(dry.low / _DRY_SHARE.high, dry.best / _DRY_SHARE.best, dry.high / _DRY_SHARE.low)
    return mean.times(_NANITIC_SHARE) if nanitic else mean


def _mean_mm(species: Species) -> float:
    shortest, longest = (within("worker length", mm, "mm", *WORKER_MM) for mm in species.worker_mm)
    return shortest if shortest == longest else math.sqrt(shortest * longest)


def _formula_mm(length_mm: float) -> float:
    return min(LENGTH_MM[1], max(LENGTH_MM[0], length_mm))
