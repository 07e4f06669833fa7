"""What a colony was fed lately, what it held and what became of it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from ...model.facts import Event
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

    feeding: Event
    before: Event | None
    protein_mg: float | None
    sugar_mg: float | None
    outcome: str | None


def recently_fed(need: Need, known: Known) -> list[Fed]:
    """Return the latest feedings of a need in the order of happening: one pass from the end, ended early."""
    found: list[Event] = []
    outcomes: dict[object, str] = {}
    for event in reversed(known.state.events):
        if event.kind == "check" and event.values.get("outcome"):
            outcomes.setdefault(event.values.get("feeding_id"), str(event.values["outcome"]))
        elif event.kind == "feeding" and event.values.get("need") == need:
            found.append(event)
            if len(found) > REMEMBERED_FEEDINGS:
                break
    found.reverse()
    return [
        Fed(feeding, before, *content_of(known, feeding.values), outcomes.get(feeding.id))
        for before, feeding in zip([None, *found], found, strict=False)
    ]


def eaten_share(feeding: Event, events: tuple[Event, ...]) -> float:
    """Return which share of a feeding was eaten, by its latest check."""
    for event in reversed(events):
        if event.happened_ms < feeding.happened_ms:
            break
        outcome = event.values.get("outcome") if event.kind == "check" else None
        if outcome and event.values.get("feeding_id") == feeding.id:
            return EATEN.get(str(outcome), 1.0)
    return 1.0


def last_counted_feeding(
    need: Need, events: tuple[Event, ...], excused: Sequence[Settling] = ()
) -> tuple[Event | None, bool]:
    """Return the last feeding that was taken, and whether a later one was ignored.

    What was ignored in an ``excused`` spell counts as offered: the refusal says nothing.
    """
    ignored_ids: set[object] = set()
    ignored = False
    for event in reversed(events):
        if event.kind == "check" and event.values.get("outcome") == "ignored":
            if not any(spell.holds(event.happened_ms) for spell in excused):
                ignored_ids.add(event.values.get("feeding_id"))
        elif event.kind == "feeding" and event.values.get("need") == need:
            if event.id not in ignored_ids or need != "protein":
                return event, ignored
            ignored = True
    return None, ignored


def feeding_content(known: Known, feeding: Event) -> tuple[float, float] | None:
    """Return protein and sugar [mg] of a feeding, or None where one of them is not known."""
    protein, sugar = content_of(known, feeding.values)
    return None if protein is None or sugar is None else (protein, sugar)


def content_of(known: Known, values: Mapping[str, Any]) -> tuple[float | None, float | None]:
    """Return protein and sugar [mg] of a feeding's fields; None: not known."""
    lot = next((lot for lot in known.state.lots if lot.id == values.get("lot_id")), None)
    return content_mg(values, lot.percent_ww if lot else None)
