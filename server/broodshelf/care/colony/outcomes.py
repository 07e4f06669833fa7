"""What became of a feeding. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ...model.facts import Event, Logged, tells
from ...model.kinds.log import Check, Feeding


def with_outcomes(events: Sequence[Event]) -> Iterator[tuple[Logged[Feeding], Logged[Check] | None]]:
    """Yield the feedings from the last one back, each with its latest check that says what became of it.

    ``events`` in the order in which they happened. What an earlier check said is overruled: ignored at first, then
    eaten, is eaten. Whoever stops early reads no further.
    """
    latest: dict[str | None, Logged[Check]] = {}
    for event in reversed(events):
        if tells(event, Check):
            if event.said.outcome:
                latest.setdefault(event.said.feeding_id, event)
        elif tells(event, Feeding):
            yield event, latest.get(event.id)
