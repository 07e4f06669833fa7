"""What a colony was fed lately, what it held and what became of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import islice
from typing import Final

from ...model.facts import Event, Logged
from ...model.kinds.log import Feeding
from ...model.needs import Need
from ..colony.arrival import Settling, holds
from ..colony.outcomes import with_outcomes
from ..feeding.content import content_mg
from ..feeding.ramp import REMEMBERED_FEEDINGS
from .known import Known

EATEN: Final = {"all": 1.0, "some": 0.5}
"""Of a feeding that was checked: common practice, no source. One that nobody checked counts as eaten."""


@dataclass(frozen=True, slots=True)
class Fed:
    """A feeding with the one of its need before it, what it held [mg; None: unknown] and its latest outcome."""

    feeding: Logged[Feeding]
    before: Logged[Feeding] | None
    protein_mg: float | None
    sugar_mg: float | None
    outcome: str | None


def recently_fed(need: Need, known: Known) -> list[Fed]:
    """Return the latest feedings of a need in the order of happening, and what became of them."""
    of_need = (pair for pair in with_outcomes(known.state.events) if pair[0].said.need == need)
    found = list(islice(of_need, REMEMBERED_FEEDINGS + 1))[::-1]
    before = [None, *(feeding for feeding, _ in found)]
    return [
        Fed(feeding, last, *content_of(known, feeding.said), check.said.outcome if check else None)
        for last, (feeding, check) in zip(before, found, strict=False)
    ]


def eaten_share(feeding: Logged[Feeding], events: Sequence[Event]) -> float:
    """Return which share of a feeding was eaten, by its latest check."""
    check = next((check for fed, check in with_outcomes(events) if fed.id == feeding.id), None)
    return 1.0 if check is None else EATEN.get(str(check.said.outcome), 1.0)


def last_counted_feeding(
    need: Need, events: Sequence[Event], excused: Sequence[Settling] = ()
) -> tuple[Logged[Feeding] | None, bool]:
    """Return the last feeding that was taken, and whether a later one was ignored, by the latest check of each.

    What was ignored in an ``excused`` spell counts as offered: the refusal says nothing.
    """
    ignored = False
    for feeding, check in with_outcomes(events):
        if feeding.said.need != need:
            continue
        refused = (
            check is not None and check.said.outcome == "ignored" and not holds(excused, check.happened_ms)
        )
        if need != "protein" or not refused:
            return feeding, ignored
        ignored = True
    return None, ignored


def feeding_content(known: Known, feeding: Feeding) -> tuple[float, float] | None:
    """Return protein and sugar [mg] of a feeding, or None where one of them is not known."""
    protein, sugar = content_of(known, feeding)
    return None if protein is None or sugar is None else (protein, sugar)


def content_of(known: Known, feeding: Feeding) -> tuple[float | None, float | None]:
    """Return protein and sugar [mg] of a feeding; None: not known."""
    lot = next((lot for lot in known.state.lots if lot.id == feeding.lot_id), None)
    return content_mg(feeding, lot.percent_ww if lot else None)
