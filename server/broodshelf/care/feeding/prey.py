"""Which prey, which size, how many, and in what state: whole, cut, twitching or, rarely and never in a tube, live.

The amount comes from the protein that the colony needs; the protein of a piece from its fresh mass and its
composition (catalogue/foods.toml names the sources). The rules of handling are common practice, no source: prey is
killed before it is offered; small species and test tubes get it freshly killed only; few workers get it cut; the
smallest serving is a fruit fly or a leg; what is more than a small colony can bank counts for four days at most.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final, Literal

from ..catalogue import foods
from ..quantities import Estimate, within
from .servings import Serving, servings_of

Form = Literal["whole_dead", "cut", "stunned", "live", "piece"]

FIRST_SHARE: Final = 1 / 3
"""A new colony starts at a third of what its physiology says."""
BANKED_DAYS_SMALL: Final = 4.0
SMALL_COLONY: Final = 100
FEW_WORKERS: Final = 20
SMALL_WORKER_MM: Final = 4.0
HUNTER_WORKER_MM: Final = 8.0
"""From this length on, workers that hunt by sight may get prey that still twitches."""
UNCUT_MM: Final = 3.0
"""Up to this length nobody cuts prey: a fruit fly."""
CUT_ANYTHING: Final = 1_000
"""From here on a colony empties any prey that is cut open."""
MOST_PIECES: Final = 40
MOST_LEGS: Final = 6
USUAL_OPTIONS: Final = ("cricket", "fruit_fly", "mealworm", "roach_nymph")
_HANDLED_LENGTHS: Final = ((20, 1.0), (100, 2.0), (1_000, 3.0), (math.inf, 4.0))
"""Up to so many workers: the longest prey that they clear away whole, in worker lengths; majors manage half more."""


@dataclass(frozen=True, slots=True)
class Prey:
    """A serving. ``protein_mg`` None: its composition is unknown. ``share_over_days``: how long it feeds them."""

    food_code: str
    size_class: str | None
    amount: int
    unit: Literal["piece", "leg"]
    form: Form
    protein_mg: Estimate | None
    reasons: tuple[Mapping[str, Any], ...]
    share_over_days: float

    def as_portion(self) -> dict[str, Any]:
        """Return the portion of docs/http-api.md, "A plan"."""
        size = {"size_class": self.size_class} if self.size_class else {}
        return {
            "food_code": self.food_code,
            "amount": self.amount,
            "unit": self.unit,
            "form": self.form,
            **size,
        }


@dataclass(frozen=True, slots=True)
class _Eaters:
    """The colony as far as prey is concerned."""

    worker_mm: float
    workers: float
    majors: bool
    slow: bool
    hunter: bool

    @property
    def handled_mm(self) -> float:
        """The longest prey that they clear away whole."""
        lengths = next(times for most, times in _HANDLED_LENGTHS if self.workers <= most)
        return self.worker_mm * lengths * (1.5 if self.majors else 1)

    def can_empty(self, serving: Serving) -> bool:
        """Say whether they can empty it, whole or cut; what is too long in every size is cut all the same."""
        reach_mm = math.inf if self.workers > CUT_ANYTHING else 2 * self.handled_mm
        return serving.unit == "leg" or serving.shortest or serving.length_mm <= reach_mm

    def dead_form(self, serving: Serving) -> Form:
        """Return how they get it when it is dead."""
        if serving.length_mm == 0:
            return "piece"
        if serving.unit == "leg":
            return "cut"
        if serving.length_mm <= UNCUT_MM:
            return "whole_dead"
        few = self.workers <= FEW_WORKERS and serving.length_mm > self.worker_mm
        small = self.worker_mm < SMALL_WORKER_MM
        return "cut" if self.slow or few or small or serving.length_mm > self.handled_mm else "whole_dead"

    def form(self, serving: Serving, *, live_allowed: bool) -> Form:
        """Return how they get it: hunters twitching or live, if it is no longer than a worker and stays whole."""
        dead = self.dead_form(serving)
        if self.hunter and dead == "whole_dead" and serving.length_mm <= self.worker_mm:
            return "live" if live_allowed else "stunned"
        return dead

    def distance(self, serving: Serving, needed_mg: float) -> float:
        """Say how far from ideal a serving is: off the need, many pieces, legs, cutting, far down the list."""
        n = _count(serving, needed_mg)
        miss = abs(math.log(n * serving.protein_mg.best / needed_mg))
        fiddly = 0.1 * (serving.unit == "leg") + 0.1 * (self.dead_form(serving) == "cut")
        return miss + 0.12 * math.log(n) + fiddly + 0.3 * serving.rank


def seed_form(*, majors: bool) -> Literal["whole", "crushed"]:
    """Return how seeds are offered: lightly crushed where there are no majors (common practice, no source)."""
    return "whole" if majors else "crushed"


def prey_portion(
    protein_mg_needed: Estimate | float,
    *,
    worker_length_mm: float,
    majors: bool,
    workers: float,
    hunts_by_sight: bool,
    slow: bool,
    in_tube: bool,
    options: Sequence[str] = USUAL_OPTIONS,
    for_days: float = 1.0,
    first_third: bool = False,
    live_allowed: bool = False,
) -> Prey:
    """Return what to offer so that about this much protein arrives.

    ``protein_mg_needed`` for the whole colony over ``for_days`` (0.1..60 d); ``worker_length_mm`` of a usual worker
    (0.8..40); ``options`` food codes, the preferred first; ``live_allowed`` the keeper's own wish, heard only for
    large hunters outside tubes. Raises ``OutOfRange`` outside and ``ValueError`` when no option is a known food.
    """
    needed = (
        protein_mg_needed if isinstance(protein_mg_needed, Estimate) else Estimate.exactly(protein_mg_needed)
    )
    within("protein need", needed.low, "mg", 0, 100_000)
    within("protein need", needed.high, "mg", 0, 100_000)
    within("worker length", worker_length_mm, "mm", 0.8, 40)
    within("workers", workers, "workers", 0, 1_000_000)
    within("days", for_days, "d", 0.1, 60)
    per_day = max(needed.best / for_days, 1e-6)
    aim = max(needed.best * (FIRST_SHARE if first_third else 1), 1e-6)
    hunter = hunts_by_sight and not in_tube and worker_length_mm >= HUNTER_WORKER_MM
    eaters = _Eaters(worker_length_mm, workers, majors, slow, hunter)
    fitting = [serving for serving in servings_of(tuple(options)) if eaters.can_empty(serving)]
    if not fitting:
        return _uncounted(options)
    chosen = min(fitting, key=lambda serving: eaters.distance(serving, aim))
    n = _count(chosen, aim)
    served = chosen.protein_mg.times(n)
    lasts = served.best / per_day
    days = min(lasts, BANKED_DAYS_SMALL) if workers <= SMALL_COLONY else lasts
    form = eaters.form(chosen, live_allowed=live_allowed)
    reasons = [_reason("prey_size", longest_mm=round(eaters.handled_mm, 1), worker_mm=worker_length_mm)]
    if first_third:
        reasons.append(_reason("prey_first_third"))
    if served.best > 1.5 * aim:
        reasons.append(_reason("prey_smallest", days=round(days, 1)))
    elif served.best < aim / 1.5:
        reasons.append(_reason("prey_most", pieces=n))
    if lasts > days:
        reasons.append(_reason("prey_banked", days=BANKED_DAYS_SMALL))
    reasons.append(_reason(_why_form(form, hunter, in_tube, worker_length_mm)))
    return Prey(
        chosen.food_code, chosen.size_class, n, chosen.unit, form, served, tuple(reasons), round(days, 2)
    )  # fmt: skip


def _count(serving: Serving, needed_mg: float) -> int:
    most = MOST_LEGS if serving.unit == "leg" else MOST_PIECES
    return max(1, min(most, round(needed_mg / serving.protein_mg.best)))


def _why_form(form: Form, hunter: bool, in_tube: bool, worker_mm: float) -> str:
    if form in ("live", "stunned", "piece"):
        return f"prey_{form}"
    if in_tube:
        return "prey_dead_in_tube"
    if worker_mm < SMALL_WORKER_MM:
        return "prey_dead_small"
    return "prey_too_big_alive" if hunter else "prey_dead"


def _uncounted(options: Sequence[str]) -> Prey:
    """Return one piece of the first food whose protein nobody reports."""
    known = foods()
    code = next((code for code in options if code in known and known[code].need == "protein"), None)
    if code is None:
        raise ValueError(f"none of {', '.join(options) or 'no options'} is a protein food of the catalogue")
    return Prey(code, None, 1, "piece", "piece", None, (_reason("prey_uncounted"),), 1.0)


def _reason(code: str, **args: Any) -> Mapping[str, Any]:
    return {"code": code, "args": args}
