"""What a colony was fed lately, what it held and what became of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from ...model.facts import Event, Logged, tells
from ...model.kinds.log import Check, Feeding
from ...model.needs import Need
from ..colony.arrival import Settling
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
    """Return the latest feedings of a need in the order of happening: one pass from the end, ended early."""
    found: list[Logged[Feeding]] = []
    outcomes: dict[str | None, str] = {}
    for event in reversed(known.state.events):
        if tells(event, Check):
            if event.said.outcome:
                outcomes.setdefault(event.said.feeding_id, event.said.outcome)
        elif tells(event, Feeding) and event.said.need == need:
            found.append(event)
            if len(found) > REMEMBERED_FEEDINGS:
                break
    found.reverse()
    return [
        Fed(feeding, before, *content_of(known, feeding.said), outcomes.get(feeding.id))
        for before, feeding in zip([None, *found], found, strict=False)
    ]


def eaten_share(feeding: Logged[Feeding], events: tuple[Event, ...]) -> float:
    """Return which share of a feeding was eaten, by its latest check."""
    for event in reversed(events):
        if event.happened_ms < feeding.happened_ms:
            break
        if tells(event, Check) and event.said.outcome and event.said.feeding_id == feeding.id:
            return EATEN.get(event.said.outcome, 1.0)
    return 1.0


def last_counted_feeding(
    need: Need, events: tuple[Event, ...], excused: Sequence[Settling] = ()
) -> tuple[Logged[Feeding] | None, bool]:
    """Return the last feeding that was taken, and whether a later one was ignored.

    What was ignored in an ``excused`` spell counts as offered: the refusal says nothing.
    """
    ignored_ids: set[str | None] = set()
    ignored = False
    for event in reversed(events):
        if tells(event, Check):
            refused = event.said.outcome == "ignored"
            if refused and not any(spell.holds(event.happened_ms) for spell in excused):
                ignored_ids.add(event.said.feeding_id)
        elif tells(event, Feeding) and event.said.need == need:
            if event.id not in ignored_ids or need != "protein":
                return event, ignored
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
