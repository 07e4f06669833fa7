"""Which prey, which size, how many, and in what state: whole, cut, twitching or, rarely and never in a tube, live.

The amount comes from the protein that the colony needs; the protein of a piece from its fresh mass and its
composition (catalogue/foods.toml names the sources). The rules of handling are common practice, no source: prey is
killed before it is offered; small species and test tubes get it freshly killed only; few workers get it cut; the
smallest serving is a fruit fly or a leg; what is more than a small colony can bank counts for four days at most.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final, Literal

from ..catalogue import Food, PreySize, foods
from ..quantities import Estimate, within

Form = Literal["whole_dead", "cut", "stunned", "live", "piece"]

FIRST_SHARE: Final = 1 / 3
"""A new colony starts at a third of what its physiology says."""
RISE_AT_MOST: Final = 1.5
"""And rises at most by half after everything was taken."""
BANKED_DAYS_SMALL: Final = 4.0
SMALL_COLONY: Final = 100
FEW_WORKERS: Final = 20
SMALL_WORKER_MM: Final = 4.0
HUNTER_WORKER_MM: Final = 8.0
"""From this length on, workers that hunt by sight may get prey that still twitches."""
UNCUT_MM: Final = 3.0
"""Up to this length nobody cuts prey: a fruit fly."""
LEG_FROM_MM: Final = 6.0
"""Shorter prey has legs too small to hold in tweezers."""
CUT_ANYTHING: Final = 1_000
"""From here on a colony empties any prey that is cut open."""
MOST_PIECES: Final = 40
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
class _Serving:
    food: Food
    size_class: str | None
    length_mm: float
    unit: Literal["piece", "leg"]
    protein_mg: Estimate
    form: Form
    rank: int

    def count(self, needed_mg: float) -> int:
        most = 6 if self.unit == "leg" else MOST_PIECES
        return max(1, min(most, round(needed_mg / self.protein_mg.best)))

    def cost(self, needed_mg: float) -> float:
        """Say how far from ideal this serving is: off the need, many pieces, cut, far down the list."""
        n = self.count(needed_mg)
        miss = abs(math.log(n * self.protein_mg.best / needed_mg))
        return (
            miss
            + 0.12 * math.log(n)
            + 0.1 * (self.form == "cut")
            + 0.3 * self.rank
            + 0.1 * (self.unit == "leg")
        )


def protein_mg_of(food: Food, size: PreySize | None = None) -> Estimate | None:
    """Return the crude protein (N x 6.25) in one piece, mg; None where mass or composition is unknown."""
    made_of = size.composition if size else food.composition
    mass = size.mass_mg if size else Estimate.exactly(food.mass_mg) if food.mass_mg else None
    if mass is None or made_of is None or made_of.protein_g is None:
        return None
    return mass.times(made_of.protein_g / 100)


def stepped_need_mg(full_mg: float, last_offered_mg: float | None, *, all_taken: bool) -> float:
    """Return the protein to offer a colony that is still being learnt: a third first, then at most half more.

    ``full_mg``: what physiology says; ``last_offered_mg`` None: a new colony. After an offer that was not wholly
    taken the amount stays, and it never passes ``full_mg``.
    """
    within("protein need", full_mg, "mg", 0, 1_000_000)
    if last_offered_mg is None:
        return full_mg * FIRST_SHARE
    within("protein offered", last_offered_mg, "mg", 0, 1_000_000)
    return min(full_mg, last_offered_mg * (RISE_AT_MOST if all_taken else 1))


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
    known = foods()
    listed = [known[code] for code in options if code in known and known[code].need == "protein"]
    if not listed:
        raise ValueError(f"none of {', '.join(options) or 'no options'} is a protein food of the catalogue")
    handled_mm = _handled_mm(worker_length_mm, workers, majors)
    servings = list(_servings(listed, handled_mm, worker_length_mm, workers, slow))
    if not servings:
        return _uncounted(listed[0])
    chosen = min(servings, key=lambda serving: serving.cost(aim))
    n = chosen.count(aim)
    served = chosen.protein_mg.times(n)
    lasts = served.best / per_day
    small = workers <= SMALL_COLONY
    days = min(lasts, BANKED_DAYS_SMALL) if small else lasts
    hunter = hunts_by_sight and not in_tube and worker_length_mm >= HUNTER_WORKER_MM
    form = _form(chosen, hunter, live_allowed, worker_length_mm)
    reasons = [_reason("prey_size", longest_mm=round(handled_mm, 1), worker_mm=worker_length_mm)]
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
        chosen.food.code, chosen.size_class, n, chosen.unit, form, served, tuple(reasons), round(days, 2)
    )  # fmt: skip


def _handled_mm(worker_length_mm: float, workers: float, majors: bool) -> float:
    lengths = next(times for most, times in _HANDLED_LENGTHS if workers <= most)
    return worker_length_mm * lengths * (1.5 if majors else 1)


def _servings(
    listed: Sequence[Food], handled_mm: float, worker_mm: float, workers: float, slow: bool
) -> Iterator[_Serving]:
    """Yield every serving that a colony can handle: whole, cut up to twice as long, and legs.

    A large colony gets any length cut open; where every prey of a food is too long, the shortest, cut open.
    """
    for rank, food in enumerate(listed):
        if not food.sizes:
            if (crumb := protein_mg_of(food)) is not None:
                yield _Serving(food, None, 0.0, "piece", crumb, "piece", rank)
            continue
        shortest = min(_middle_mm(size) for size in food.sizes)
        for size in food.sizes:
            protein, middle_mm = protein_mg_of(food, size), _middle_mm(size)
            if protein is None:
                continue
            code = size.code if len(food.sizes) > 1 else None
            if middle_mm <= max(2 * handled_mm, shortest) or workers > CUT_ANYTHING:
                form = _dead_form(middle_mm, handled_mm, worker_mm, workers, slow)
                yield _Serving(food, code, middle_mm, "piece", protein, form, rank)
            if food.leg_share is not None and middle_mm >= LEG_FROM_MM:
                leg = protein.times(food.leg_share)
                yield _Serving(food, code, middle_mm, "leg", leg, "cut", rank)


def _dead_form(middle_mm: float, handled_mm: float, worker_mm: float, workers: float, slow: bool) -> Form:
    if middle_mm <= UNCUT_MM:
        return "whole_dead"
    small = worker_mm < SMALL_WORKER_MM or (workers <= FEW_WORKERS and middle_mm > worker_mm)
    return "cut" if slow or small or middle_mm > handled_mm else "whole_dead"


def _middle_mm(size: PreySize) -> float:
    return sum(size.length_mm) / 2


def _form(chosen: _Serving, hunter: bool, live_allowed: bool, worker_mm: float) -> Form:
    if hunter and chosen.form == "whole_dead" and chosen.length_mm <= worker_mm:
        return "live" if live_allowed else "stunned"
    return chosen.form


def _why_form(form: Form, hunter: bool, in_tube: bool, worker_mm: float) -> str:
    if form in ("live", "stunned", "piece"):
        return f"prey_{form}"
    if in_tube:
        return "prey_dead_in_tube"
    if worker_mm < SMALL_WORKER_MM:
        return "prey_dead_small"
    return "prey_too_big_alive" if hunter else "prey_dead"


def _uncounted(food: Food) -> Prey:
    """Return one piece of a food whose protein nobody reports."""
    return Prey(food.code, None, 1, "piece", "piece", None, (_reason("prey_uncounted"),), 1.0)


def _reason(code: str, **args: Any) -> Mapping[str, Any]:
    return {"code": code, "args": args}
