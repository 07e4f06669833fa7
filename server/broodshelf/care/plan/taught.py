"""What the checks of one colony taught about its appetite: its feedings, put before the learner."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Final

from ...model.facts import Logged
from ...model.gauges import DAY_MS
from ...model.kinds.log import Feeding
from ...model.needs import Need
from ...model.quantities import Estimate
from ..feeding.intake import Crop, Filling, sugar_appetite
from ..feeding.learning import Learnt, learnt, usual_intake
from ..feeding.removal import remove_after_h
from ..feeding.stores import KEPT_IN_HAND, crop_days
from .fed import Fed, content_of
from .known import Known

AT_ONCE_DAYS: Final = 4.0
"""No serving holds the need of more days: what is left spoils (common practice, no source)."""
LEAST_GAP_DAYS: Final = 0.5
LEAST_LACKING: Final = 0.2
"""Of a full crop: so much at least they lacked before an earlier feeding; before the first, nothing (no source)."""
CARRIED_FEEDINGS: Final = 4
"""So many feedings back what the crops lacked does not matter any more."""


def taught_by_checks(need: Need, known: Known, fed: list[Fed], *, use_mg: float, usual_days: float) -> Learnt:
    """Return what the checks of sugar or protein taught.

    ``use_mg``: the need a day of a colony of this size; ``usual_days``: between two feedings, where nobody knows.
    """
    order = [each.feeding for each in fed]
    place = {feeding.id: n for n, feeding in enumerate(order)}
    full_days = crop_days(known.worker_mg, known.temp_c, Estimate.exactly(1)).best
    at = 0 if need == "protein" else 1
    between_days = [(after.happened_ms - one.happened_ms) / DAY_MS for one, after in pairwise(order)]

    def days_offered(feeding: Logged[Feeding]) -> float | None:
        """How many days of the usual need a feeding held."""
        offered = content_of(known, feeding.said)[at]
        return None if offered is None or use_mg <= 0 else offered / use_mg

    fillings = tuple(
        Filling(days_offered(one) or 0.0, _fresh(one), until_next)
        for one, until_next in zip(order if need == "sugar" else (), between_days, strict=False)
    )

    def protein(feeding: Logged[Feeding], gone: float, hours: float, *, at_least: bool) -> float:
        """Brood banks what it missed, for four days at most."""
        n = place.get(feeding.id, 0)
        gap_days = between_days[n - 1] if n else usual_days
        hungry_days = min(AT_ONCE_DAYS, max(LEAST_GAP_DAYS, gap_days))
        return usual_intake((days_offered(feeding) or 0.0) / hungry_days, gone, hours, at_least=at_least)

    def sugar(feeding: Logged[Feeding], gone: float, hours: float, *, at_least: bool) -> float:
        """What the crops lacked before all of these nobody knows: half at most."""
        n = place.get(feeding.id, 0)
        before = fillings[max(0, n - CARRIED_FEEDINGS) : n]
        crop = Crop(full_days, full_days * (KEPT_IN_HAND if at_least else LEAST_LACKING if n else 0.0))
        offered = days_offered(feeding) or 0.0
        return sugar_appetite(before, offered, _fresh(feeding), crop, gone=gone, hours=hours)

    return learnt(
        known.state.events, need, known.now_ms, days_offered, intake=protein if need == "protein" else sugar,
        excused=known.switched.excused,
    )  # fmt: skip


def _fresh(feeding: Logged[Feeding]) -> float:
    """Return how many days a feeding stays; what nobody takes out is there to the next."""
    hours = remove_after_h(feeding.said)
    return math.inf if hours is None else hours / 24
