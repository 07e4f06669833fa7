"""Foods that a colony refused lately and that are not suggested to it for a while.

A refusal in a spell that explains it (settling, slowing down before its rest) bans nothing. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ...model.facts import Event, tells
from ...model.gauges import DAY_MS
from ...model.kinds.log import Check, Feeding
from ..colony.arrival import Settling, holds

BANNED_DAYS: Final = 60
"""For how long a refusal keeps a food from being suggested."""


def refused_foods(events: Sequence[Event], excused: Sequence[Settling], now_ms: int) -> frozenset[str]:
    """Return the foods whose last check in the last 60 days says that they were ignored, where that says something.

    ``events`` in the order in which they happened. One pass from the latest event, ended after 60 days and as many
    more as the checked feedings lie back.
    """
    since_ms = now_ms - BANNED_DAYS * DAY_MS
    outcome_of: dict[str, str | None] = {}
    verdict: dict[str, str] = {}
    for event in reversed(events):
        if event.happened_ms < since_ms and not outcome_of:
            break
        if tells(event, Check):
            checked, outcome = event.said.feeding_id, event.said.outcome
            if not checked or not outcome or event.happened_ms < since_ms:
                continue
            explained = outcome == "ignored" and holds(excused, event.happened_ms)
            outcome_of.setdefault(checked, None if explained else outcome)
        elif tells(event, Feeding) and event.id in outcome_of:
            found, food = outcome_of.pop(event.id), event.said.food_code
            if found is not None and food:
                verdict.setdefault(food, found)
    return frozenset(food for food, outcome in verdict.items() if outcome == "ignored")
