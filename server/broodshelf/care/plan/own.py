"""The keeper's own rhythm for a need, as the plan takes it: days, a pause, and the words for them.

Water, room, faults and heat follow what was seen and measured: an interval that hid a dry reservoir would kill.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ...model.facts import Event, only, tells
from ...model.kinds.log import Check, Later
from ...model.kinds.plan import Reason
from ...model.needs import Need
from ...model.tasks import reason
from .known import Known


class Own(NamedTuple):
    """What the keeper wants of a need. ``days`` None: nothing of their own; ``paused``: not asked for at present;
    ``resumed_on``: the day (ISO) on which a pause ended, None without one.
    """

    days: float | None
    paused: bool
    reasons: tuple[Reason, ...]
    resumed_on: str | None = None


def own_rhythm(need: Need, known: Known, last_ms: int | None) -> Own:
    """Return the keeper's own rhythm: a rule first, else the interval that stands in the colony.

    ``last_ms``: when the need was last met, and from when its days are counted; None: it never was.
    """
    rule = next((rule for rule in known.state.rules if rule.need == need), None)
    ruled = None if rule is None else rule.every_days
    if rule is not None and rule.days_after is not None and last_ms is not None:
        ruled = rule.days_after(last_ms)
    days = ruled or known.state.interval_days.get(need)
    until = None if rule is None else rule.paused_until
    paused = until is not None and known.today < until
    resumed_on = None if paused else until
    if rule is not None and rule.days_after is not None:
        return Own(days, paused, (reason("interval_chosen"),), resumed_on)
    return Own(days, paused, () if days is None else (reason("interval_keeper", days=days),), resumed_on)


def last_look(need: Need, events: Sequence[Event]) -> Event | None:
    """Return the event that last met a regular look: a check of that need; for a glance anything but a putting off.

    ``events`` in the order in which they happened.
    """
    if need == "glance":
        return next((event for event in reversed(events) if not tells(event, Later)), None)
    return next((check for check in reversed(only(Check, events)) if check.said.need == need), None)
