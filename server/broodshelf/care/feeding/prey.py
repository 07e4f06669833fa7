"""Which prey, which size, how many, and in what state: whole, cut, twitching or, rarely and never in a tube, live.

The amount comes from the protein that the colony needs; the protein of a piece from its fresh mass and its
composition (catalogue/foods.toml names the sources). The rules of handling are common practice, no source: prey is
killed before it is offered; small species and test tubes get it freshly killed only; few workers get it cut, and few
pieces; the smallest serving is a fruit fly, a leg or a slice; what is in the house comes before what is not; the size
stays what it was while it still fits; what is more than a small colony can bank counts for four days at most.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Literal

from ...model.kinds.plan import Portion, Reason
from ...model.kinds.words import SizeClass
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from ..catalogue import foods
from .ramp import FIRST_SHARE
from .servings import Part, Serving, servings_of

Form = Literal["whole_dead", "cut", "stunned", "live", "piece"]

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
MOST_PIECES: Final = 12
"""More pieces than this nobody lays out at once, nor looks for the day after (common practice, no source)."""
MOST_PARTS: Final = 6
"""The same for legs and slices."""
PIECES_FOR_A_QUEEN, WORKERS_A_PIECE = 2, 4
"""A queen alone gets one or two small prey; a piece more for every four workers (common practice, no source)."""
LEAST_LENGTHS: Final = 0.3
"""Whole prey shorter than this share of a worker is not worth the way out (common practice, no source)."""
SAME_AGAIN: Final = 0.6
"""How much better another size must fit before the size changes: in the logarithm of the amount (no source)."""
AT_LEAST_OF_NEED: Final = 1 / 3
"""What is in the house counts where it reaches this share of the serving, else the plan names what would."""
USUAL_OPTIONS: Final = ("cricket", "fruit_fly", "mealworm", "roach_nymph")
_HANDLED_LENGTHS: Final = ((20, 1.0), (100, 2.0), (1_000, 3.0), (math.inf, 4.0))
"""Up to so many workers: the longest prey that they clear away whole, in worker lengths; majors manage half more."""


@dataclass(frozen=True, slots=True)
class Prey:
    """A serving. ``protein_mg`` None: its composition is unknown. ``share_over_days``: how long it feeds them."""

    food_code: str
    size_class: SizeClass | None
    amount: int
    unit: Part
    form: Form
    protein_mg: Estimate | None
    reasons: tuple[Reason, ...]
    share_over_days: float

    def as_portion(self) -> Portion:
        """Return the portion of docs/http-api.md, "A plan"."""
        made: Portion = {
            "food_code": self.food_code,
            "amount": self.amount,
            "unit": self.unit,
            "form": self.form,
        }
        return {**made, "size_class": self.size_class} if self.size_class else made


@dataclass(frozen=True, slots=True)
class Eaters:
    """The colony as far as prey is concerned: length of a usual worker (0.8..40 mm), their number, how they live."""

    worker_mm: float
    workers: float
    majors: bool = False
    slow: bool = False
    hunts_by_sight: bool = False
    in_tube: bool = False

    @property
    def hunter(self) -> bool:
        """Whether they may get prey that still moves."""
        return self.hunts_by_sight and not self.in_tube and self.worker_mm >= HUNTER_WORKER_MM

    @property
    def handled_mm(self) -> float:
        """The longest prey that they clear away whole."""
        if self.workers < 1:
            return self.worker_mm / 2  # a queen alone: small prey only
        lengths = next(times for most, times in _HANDLED_LENGTHS if self.workers <= most)
        return self.worker_mm * lengths * (1.5 if self.majors else 1)

    def most(self, unit: Part) -> int:
        """Return how many pieces or parts they get at once."""
        few = PIECES_FOR_A_QUEEN + int(self.workers // WORKERS_A_PIECE)
        return min(few, MOST_PIECES if unit == "piece" else MOST_PARTS)

    def worth_it(self, serving: Serving) -> bool:
        """Say whether prey is not absurdly small for them."""
        return serving.length_mm == 0 or serving.length_mm >= LEAST_LENGTHS * self.worker_mm

    def can_empty(self, serving: Serving) -> bool:
        """Say whether they can empty it, whole or cut; what is too long in every size is cut all the same."""
        by_cutting = 1 if self.workers < 1 else 2
        reach_mm = math.inf if self.workers > CUT_ANYTHING else by_cutting * self.handled_mm
        return serving.unit != "piece" or serving.shortest or serving.length_mm <= reach_mm

    def dead_form(self, serving: Serving) -> Form:
        """Return how they get it when it is dead."""
        if serving.length_mm == 0:
            return "piece"
        if serving.unit != "piece":
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

    def distance(self, serving: Serving, aim: _Aim) -> float:
        """Say how far from ideal a serving is: off the aim, many pieces, parts, cutting, far down, another size."""
        n = self.count(serving, aim)
        mg = n * serving.protein_mg.best
        miss = abs(math.log(mg / aim.mg)) + (mg > aim.most_mg * 1.01)
        fiddly = 0.4 * (serving.unit != "piece") + 0.1 * (self.dead_form(serving) == "cut")
        capped = n == self.most(serving.unit) and mg < aim.mg / 1.2
        same = not capped and (serving.food_code, serving.size_class, serving.unit) == aim.last
        return miss + 0.25 * math.log(n) + fiddly + 0.5 * serving.rank + 0.3 * capped - SAME_AGAIN * same

    def count(self, serving: Serving, aim: _Aim) -> int:
        """Return how many of it come closest to the aim, at least one and never more than may be offered."""
        piece_mg = serving.protein_mg.best
        allowed = min(aim.most_mg / piece_mg + 1e-9, self.most(serving.unit))
        return max(1, min(round(aim.mg / piece_mg), math.floor(allowed)))


@dataclass(frozen=True, slots=True)
class _Aim:
    """What a serving should hold and may hold at most [mg], and the food, size and unit of the last one."""

    mg: float
    most_mg: float
    last: tuple[str | None, str | None, str | None] | None


MAJORS_FROM_WORKERS: Final = 100
"""Young colonies of polymorphic kinds raise no majors before about so many workers (common practice, no source)."""


def has_majors(*, species_has: bool, workers: float, nanitics: bool) -> bool:
    """Say whether this colony has majors yet."""
    return species_has and not nanitics and workers >= MAJORS_FROM_WORKERS


def seed_form(*, majors: bool) -> Literal["whole", "crushed"]:
    """Return how seeds are offered: lightly crushed where there are no majors (common practice, no source)."""
    return "whole" if majors else "crushed"


@dataclass(frozen=True, slots=True)
class Wanted:
    """How much protein should arrive: for the whole colony over ``for_days`` (0.1..60 d).

    ``aim_mg`` and ``most_mg`` are what may be offered of the need at present (None: all of it).
    """

    needed_mg: Estimate
    for_days: float = 1.0
    aim_mg: float | None = None
    most_mg: float = math.inf
    first_third: bool = False


@dataclass(frozen=True, slots=True)
class Choice:
    """What there is to choose from: food codes, the preferred first.

    ``at_home``: foods with the size class in the house (None: any), whose pieces, legs and slices come first;
    ``last``: food, size class and unit of the last serving, which stays while it fits; ``live_allowed``: the keeper's
    own wish, heard only for large hunters outside tubes.
    """

    options: Sequence[str] = USUAL_OPTIONS
    at_home: frozenset[tuple[str, str | None]] = frozenset()
    last: tuple[str | None, str | None, str | None] | None = None
    live_allowed: bool = False


def prey_portion(wanted: Wanted, eaters: Eaters, choice: Choice | None = None) -> Prey:
    """Return what to offer so that about as much protein arrives as is wanted.

    Raises ``OutOfRange`` for a colony that cannot be and ``ValueError`` when no option is a known food.
    """
    choice = choice or Choice()
    options, at_home = choice.options, choice.at_home
    needed, workers, worker_mm = wanted.needed_mg, eaters.workers, eaters.worker_mm
    within("protein need", needed.low, "mg", 0, 100_000)
    within("protein need", needed.high, "mg", 0, 100_000)
    within("worker length", worker_mm, "mm", 0.8, 40)
    within("workers", workers, "workers", 0, 1_000_000)
    within("days", wanted.for_days, "d", 0.1, 60)
    per_day = max(needed.best / wanted.for_days, 1e-6)
    offered = needed.best * (FIRST_SHARE if wanted.first_third else 1)
    aim_mg = offered if wanted.aim_mg is None else wanted.aim_mg
    aim = _Aim(max(aim_mg, 1e-6), max(wanted.most_mg, 1e-6), choice.last)
    fitting = [serving for serving in servings_of(tuple(options)) if eaters.can_empty(serving)]
    if not fitting:
        return _uncounted(options)
    # nobody buys an insect for a slice of it; of what is there, a slice is as good as a leg
    fitting = [s for s in fitting if s.unit != "slice" or _is_here(s, at_home)]
    worth = [serving for serving in fitting if eaters.worth_it(serving)] or fitting
    here = [serving for serving in worth if _is_here(serving, at_home)]
    reached_mg = max((eaters.count(s, aim) * s.protein_mg.best for s in here), default=0.0)
    worth = here if here and reached_mg >= AT_LEAST_OF_NEED * aim.mg else worth
    chosen = min(worth, key=lambda serving: eaters.distance(serving, aim))
    n = eaters.count(chosen, aim)
    served = chosen.protein_mg.times(n)
    lasts = served.best / per_day
    days = min(lasts, BANKED_DAYS_SMALL) if workers <= SMALL_COLONY else lasts
    form = eaters.form(chosen, live_allowed=choice.live_allowed)
    reasons = []
    if form != "piece":
        reasons.append(reason("prey_size", longest_mm=round(eaters.handled_mm, 1), worker_mm=worker_mm))
    if wanted.first_third:
        reasons.append(reason("prey_first_third"))
    if n == 1 and served.best > 1.5 * aim.mg:
        reasons.append(reason("prey_smallest", days=round(days, 1)))
    elif n == eaters.most(chosen.unit) and served.best < aim.mg / 1.5:
        reasons.append(reason("prey_most", pieces=n))
    if lasts > days:
        reasons.append(reason("prey_banked", days=BANKED_DAYS_SMALL))
    reasons.append(reason(_why_form(form, eaters)))
    return Prey(
        chosen.food_code, chosen.size_class, n, chosen.unit, form, served, tuple(reasons), round(days, 4)
    )  # fmt: skip


def _is_here(serving: Serving, at_home: frozenset[tuple[str, str | None]]) -> bool:
    return (serving.food_code, serving.size_class) in at_home or (serving.food_code, None) in at_home


def _why_form(form: Form, eaters: Eaters) -> str:
    if form in ("live", "stunned", "piece"):
        return f"prey_{form}"
    if eaters.in_tube:
        return "prey_dead_in_tube"
    if eaters.worker_mm < SMALL_WORKER_MM:
        return "prey_dead_small"
    return "prey_too_big_alive" if eaters.hunter else "prey_dead"


def _uncounted(options: Sequence[str]) -> Prey:
    """Return one piece of the first food whose protein nobody reports."""
    known = foods()
    code = next((code for code in options if code in known and known[code].need == "protein"), None)
    if code is None:
        raise ValueError(f"none of {', '.join(options) or 'no options'} is a protein food of the catalogue")
    return Prey(code, None, 1, "piece", "piece", None, (reason("prey_uncounted"),), 1.0)
