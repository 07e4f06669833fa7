"""Making plans and occurrences again, in the transaction that changed the records."""

from __future__ import annotations

import logging
from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Final

from sqlalchemy import Connection, delete, insert, select, update

from ..care.plan.make import make_plan
from ..care.plan.state import ColonyState
from ..care.plan.tasks import Task
from ..logs import say
from ..records.ids import plan_id
from ..records.store import Ledger
from .colony_state import colony_states, read_things
from .occurrence_rows import change_occurrences, read_occurrences, replace_waiting
from .occurrences import Occurrence, arrange, settle
from .own_rules import OwnRule, rules_by_colony
from .tables import plan_times
from .wall_clock import CareClock

RETRY_MS: Final = 3_600_000
"""When a plan that failed is tried again, so that a bad row costs a try an hour and not one a tick."""


def touched(ledger: Ledger, colony_ids: set[str], now_ms: int) -> None:
    """Make the plans and occurrences of these colonies anew. The caller flushes the ledger.

    A colony whose plan cannot be made keeps its log and its old plan; the failure is logged, because losing
    a log to a fault of ours would be worse than an old plan.
    """
    inputs_rev = ledger.rev
    connection, household_id = ledger.connection, ledger.household_id
    things = read_things(connection, household_id)
    states = {s.id: s for s in colony_states(connection, household_id, colony_ids, now_ms, things)}
    ledger.load([household_id, *map(plan_id, states)])
    clock = care_clock(ledger)
    rules = rules_by_colony(things["rule"])
    tasks: dict[str, tuple[Task, ...]] = dict.fromkeys(colony_ids - states.keys(), ())
    valid_until: dict[str, int] = {}
    for state in states.values():
        try:
            plan = make_plan(state, now_ms)
        except Exception as error:  # noqa: BLE001 - see the docstring
            _log_failure(state, error)
            valid_until[state.id] = now_ms + RETRY_MS
            continue
        values = {**plan.as_json(), "inputs_rev": inputs_rev}
        ledger.put(plan_id(state.id), "plan", values, now_ms=now_ms)
        tasks[state.id] = plan.tasks
        pauses = [rule.pause_ends_ms(clock) for rule in rules.get(state.id, {}).values()]
        valid_until[state.id] = min([plan.valid_until_ms, *(end for end in pauses if end > now_ms)])
    _remember_validity(ledger, colony_ids, valid_until)
    _rearrange(ledger, states, tasks, clock, rules, now_ms)


def stale(ledger: Ledger, now_ms: int) -> None:
    """Make the plans of a household anew that no longer hold. The caller flushes the ledger."""
    query = select(plan_times.c.colony_id).where(
        plan_times.c.household_id == ledger.household_id, plan_times.c.valid_until_ms <= now_ms
    )
    colony_ids = set(ledger.connection.scalars(query))
    if colony_ids:
        touched(ledger, colony_ids, now_ms)


def stale_households(connection: Connection, now_ms: int, most: int) -> list[str]:
    """Return the households of the ``most`` plans that have been stale longest, in that order."""
    query = (
        select(plan_times.c.household_id)
        .where(plan_times.c.valid_until_ms <= now_ms)
        .order_by(plan_times.c.valid_until_ms)
        .limit(most)
    )
    return list(dict.fromkeys(connection.scalars(query)))


def all_stale(connection: Connection) -> None:
    """Count every plan as stale: the server's clock was set back, so what was planned under it does not hold."""
    connection.execute(update(plan_times).values(valid_until_ms=0))


def care_clock(ledger: Ledger) -> CareClock:
    """Return the household's zone, care hours and quiet hours."""
    household = ledger.get(ledger.household_id)
    return CareClock.of(household.values if household is not None else {})


def _remember_validity(ledger: Ledger, colony_ids: Iterable[str], valid_until: Mapping[str, int]) -> None:
    ledger.connection.execute(
        delete(plan_times).where(
            plan_times.c.household_id == ledger.household_id, plan_times.c.colony_id.in_(sorted(colony_ids))
        )
    )
    if valid_until:
        ledger.connection.execute(
            insert(plan_times),
            [
                {"household_id": ledger.household_id, "colony_id": colony_id, "valid_until_ms": until}
                for colony_id, until in valid_until.items()
            ],
        )


def _rearrange(
    ledger: Ledger,
    states: Mapping[str, ColonyState],
    tasks: Mapping[str, tuple[Task, ...]],
    clock: CareClock,
    rules: Mapping[str, Mapping[str, OwnRule]],
    now_ms: int,
) -> None:
    """Bring the occurrences of these colonies in line with their plans."""
    connection = ledger.connection
    rows = {
        colony_id: [_under_this_clock(row, now_ms) for row in found]
        for colony_id, found in read_occurrences(
            connection, ledger.household_id, tasks, clock.local_date(now_ms)
        ).items()
    }
    settled: list[Occurrence] = []
    wanted: list[Occurrence] = []
    for colony_id, todo in tasks.items():
        events = states[colony_id].events if colony_id in states else ()
        changed = {row.id: row for row in settle(rows.get(colony_id, ()), todo, events, now_ms)}
        standing = [changed.get(row.id, row) for row in rows.get(colony_id, ())]
        settled += changed.values()
        wanted += arrange(colony_id, standing, todo, events, clock, now_ms, rules.get(colony_id, {}))
    change_occurrences(connection, settled)
    before = [row for colony_rows in rows.values() for row in colony_rows]
    replace_waiting(connection, ledger.household_id, before, wanted, now_ms)


def _under_this_clock(row: Occurrence, now_ms: int) -> Occurrence:
    """What counts as missed in the future was missed under a clock that ran ahead: it waits again."""
    return replace(row, state="waiting") if row.state == "missed" and row.at_ms > now_ms else row


def _log_failure(state: ColonyState, error: Exception) -> None:
    say("plan failed", logging.ERROR, colony_id=state.id, error=f"{type(error).__name__}: {error}")
    logging.getLogger("broodshelf").error("traceback of plan %s", state.id, exc_info=error)
