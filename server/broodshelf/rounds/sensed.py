"""Plans that sensors have overtaken: an alarm that began or ended since the plan was made.

Looked for every ten minutes where a sensor was heard lately. The plan itself says what is an alarm, so it is made and
compared; only one that says something else is written, and phones hear of nothing else.
"""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import suppress
from typing import Any, Final

from sqlalchemy import Connection, update

from ..care.plan.make import make_plan
from ..model.gauges import HOUR_MS
from ..model.tasks import SENSED
from ..records.ids import plan_id
from ..records.store import read_kind
from ..sensing.sensors import heard_since
from .colony_state import colony_states, read_shelf
from .tables import plan_times

LOOK_MS: Final = 10 * 60_000
HEARD_MS: Final = 4 * HOUR_MS
"""A little longer than a sensor's word holds, so that an alarm ends also when its sensor falls silent."""


def overtaken_households(connection: Connection, now_ms: int) -> list[str]:
    """Return the households of which a sensor was heard in the last four hours."""
    return heard_since(connection, now_ms - HEARD_MS)


def mark_overtaken(connection: Connection, household_id: str, now_ms: int) -> set[str]:
    """Count the plans of a household as stale whose alarms by sensors are others by now; return those colonies."""
    plans = {plan.id: plan for plan in read_kind(connection, household_id, "plan")}
    colonies = {colony.id for colony in read_kind(connection, household_id, "colony")}
    overtaken = set()
    for state in colony_states(read_shelf(connection, household_id, now_ms), colonies).told:
        if not state.hours:
            continue
        stored = plans.get(plan_id(state.id))
        # one that cannot be made fails when its turn comes, and tells it then
        with suppress(Exception):
            if stored is None or _alarms(stored.values) != _alarms(make_plan(state, now_ms).as_json()):
                overtaken.add(state.id)
    p = plan_times.c
    its = (p.household_id == household_id, p.colony_id.in_(sorted(overtaken)), p.valid_until_ms > now_ms)
    connection.execute(update(plan_times).where(*its).values(valid_until_ms=now_ms))
    return overtaken


def _alarms(plan: Mapping[str, Any]) -> set[str]:
    """Return the keys of the tasks that sensors begin and end."""
    return {task["key"] for task in plan.get("tasks") or () if task.get("what") in SENSED}
