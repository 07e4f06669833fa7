"""Foods that a colony refused lately and that are not suggested to it for a while.

A refusal in a spell that explains it (settling, slowing down before its rest) bans nothing. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ...model.facts import Event
from ...model.gauges import DAY_MS
from ..colony.arrival import Settling

BANNED_DAYS: Final = 60
"""For how long a refusal keeps a food from being suggested."""


def refused_foods(events: Sequence[Event], excused: Sequence[Settling], now_ms: int) -> frozenset[str]:
    """Return the foods whose last check in the last 60 days says that they were ignored, where that says something.

    ``events`` in the order in which they happened. One pass from the latest event, ended after 60 days and as many
    more as the checked feedings lie back.
    """
    since_ms = now_ms - BANNED_DAYS * DAY_MS
    outcome_of: dict[object, str | None] = {}
    verdict: dict[str, str] = {}
    for event in reversed(events):
        if event.happened_ms < since_ms and not outcome_of:
            break
        checked = event.values.get("feeding_id") if event.kind == "check" else None
        if checked and event.happened_ms >= since_ms and event.values.get("outcome"):
            outcome = str(event.values["outcome"])
            explained = outcome == "ignored" and any(spell.holds(event.happened_ms) for spell in excused)
            outcome_of.setdefault(checked, None if explained else outcome)
        elif event.kind == "feeding" and event.id in outcome_of:
            found, food = outcome_of.pop(event.id), event.values.get("food_code")
            if found is not None and food:
                verdict.setdefault(str(food), found)
    return frozenset(food for food, outcome in verdict.items() if outcome == "ignored")
