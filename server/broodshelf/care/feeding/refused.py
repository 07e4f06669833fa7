"""Foods that a colony refused lately and that are not suggested to it for a while.

A refusal in a spell that explains it (settling, slowing down before its rest) bans nothing. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ..colony.arrival import Settling, excused_feedings
from ..gauges import DAY_MS
from ..plan.state import Event

BANNED_DAYS: Final = 60
"""For how long a refusal keeps a food from being suggested."""


def refused_foods(events: Sequence[Event], excused: Sequence[Settling], now_ms: int) -> frozenset[str]:
    """Return the foods whose last check in the last 60 days says that they were ignored, where that says something.

    ``events`` in the order in which they happened.
    """
    since_ms = now_ms - BANNED_DAYS * DAY_MS
    if not any(_ignored(event, since_ms) for event in reversed(events)):
        return frozenset()
    food_of = {event.id: event.values.get("food_code") for event in events if event.kind == "feeding"}
    says_nothing = excused_feedings(events, excused)
    verdict: dict[str, str] = {}
    for event in events:
        if event.kind != "check" or event.happened_ms < since_ms:
            continue
        feeding_id = event.values.get("feeding_id") or ""
        outcome, food = event.values.get("outcome"), food_of.get(feeding_id)
        if outcome and food and feeding_id not in says_nothing:
            verdict[food] = outcome
    return frozenset(food for food, outcome in verdict.items() if outcome == "ignored")


def _ignored(event: Event, since_ms: int) -> bool:
    return (
        event.kind == "check" and event.happened_ms >= since_ms and event.values.get("outcome") == "ignored"
    )
