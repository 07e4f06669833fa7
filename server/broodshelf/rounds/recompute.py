"""Making plans and occurrences again, in the transaction that changed the records."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import Any, Final

from sqlalchemy import Connection, Insert, delete, select, update
from sqlalchemy.dialects import postgresql, sqlite

from ..care.plan.make import Plan, make_plan
from ..logs import say, say_failure
from ..model.gauges import HOUR_MS
from ..model.tasks import Task, reason
from ..records.database import is_about_one_row
from ..records.ids import plan_id
from ..records.store import Ledger
from ..records.zones import household_in
from .colony_state import colony_states, read_shelf
from .occurrence_rows import change_occurrences, read_occurrences, replace_waiting
from .occurrence_states import Occurrence
from .occurrences import ToDo, arrange, settle
from .own_rules import rules_by_colony
from .tables import plan_times
from .wall_clock import CareClock

RETRY_MS: Final = HOUR_MS
"""When a plan that failed is tried again, so that a bad row costs a try an hour and not one a tick."""
BUDGET_S: Final = 10.0
"""For so long one request makes plans under the household's lock; a shelf of a thousand colonies takes about half."""
FAILED: Final = "plan_failed"


def touched(
    ledger: Ledger, colony_ids: set[str], now_ms: int, monotonic: Callable[[], float] = time.monotonic
) -> None:
    """Make the plans and occurrences of these colonies anew. The caller flushes the ledger.

    A colony whose plan cannot be made keeps its log and its old plan, and the plan says so; the failure is logged,
    because losing a log to a fault of ours would be worse than an old plan. What there is no time for is left to
    the next tick of a nudger. ``monotonic``: seconds that only go forward.
    """
    deadline = monotonic() + BUDGET_S
    if _made_anew(ledger, colony_ids, now_ms, deadline, monotonic):
        return
    for colony_id in sorted(colony_ids):
        if len(colony_ids) == 1 or not _made_anew(ledger, {colony_id}, now_ms, deadline, monotonic):
            tell_failure(ledger, colony_id, now_ms)
            _remember_validity(ledger, {colony_id}, {colony_id: now_ms + RETRY_MS})


def _made_anew(
    ledger: Ledger, colony_ids: set[str], now_ms: int, deadline: float, monotonic: Callable[[], float]
) -> bool:
    """Make the plans of these colonies, all or none; say whether it could be done at all."""
    try:
        with ledger.savepoint():
            _make_anew(ledger, colony_ids, now_ms, deadline, monotonic)
    except Exception as error:
        if not is_about_one_row(error):
            raise
        say_failure("plans failed", error, household_id=ledger.household_id, colonies=len(colony_ids))
        return False
    return True


def _make_anew(
    ledger: Ledger, colony_ids: set[str], now_ms: int, deadline: float, monotonic: Callable[[], float]
) -> None:
    inputs_rev = ledger.rev
    household_id = ledger.household_id
    shelf = read_shelf(ledger.connection, household_id, now_ms)
    found = colony_states(shelf, colony_ids)
    states, failed = {state.id: state for state in found.told}, found.failed
    ledger.load([household_id, *map(plan_id, {*states, *failed})])
    clock = care_clock(ledger)
    rules = rules_by_colony(shelf.things["rule"])
    tasks: dict[str, tuple[Task, ...]] = dict.fromkeys(colony_ids - states.keys() - failed.keys(), ())
    valid_until: dict[str, int] = {}
    for state in states.values():
        if valid_until and monotonic() > deadline:
            valid_until[state.id] = now_ms  # stale: the nudger goes on from here
            continue
        try:
            plan = make_plan(state, now_ms)
        except Exception as error:  # noqa: BLE001 - see ``touched``
            failed[state.id] = error
            continue
        ledger.put(plan_id(state.id), "plan", plan.as_json(inputs_rev), now_ms=now_ms)
        tasks[state.id] = plan.tasks
        pauses = [rule.pause_ends_ms(clock) for rule in rules.get(state.id, {}).values()]
        valid_until[state.id] = min([plan.valid_until_ms, *(end for end in pauses if end > now_ms)])
    put_off = sum(until <= now_ms for until in valid_until.values())
    if put_off:
        say("plans are left to the nudger", logging.WARNING, household_id=household_id, colonies=put_off)
    for colony_id, why in failed.items():
        say_failure("plan failed", why, colony_id=colony_id)
        tell_failure(ledger, colony_id, now_ms)
        valid_until[colony_id] = now_ms + RETRY_MS
    _remember_validity(ledger, colony_ids, valid_until)
    todos = [
        ToDo(
            colony_id, todo, states[colony_id].events if colony_id in states else (), rules.get(colony_id, {})
        )
        for colony_id, todo in tasks.items()
    ]
    _rearrange(ledger, todos, clock, now_ms)


def tell_failure(ledger: Ledger, colony_id: str, now_ms: int) -> None:
    """Say in a colony's plan that it could not be made; what stood in it stays, as the estimate that it now is."""
    record = ledger.get(plan_id(colony_id))
    if record is None and ledger.get(colony_id) is None:
        return
    before = record.values if record is not None else {}
    stood = (
        before if before.get("notices") is not None else Plan(colony_id, now_ms, now_ms).as_json(ledger.rev)
    )
    others = [notice for notice in stood["notices"] if notice.get("code") != FAILED]
    values = {"inputs_rev": ledger.rev, **stood, "notices": [reason(FAILED), *others]}
    ledger.put(plan_id(colony_id), "plan", values, now_ms=now_ms)


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
    return CareClock.of(household_in(ledger.get(ledger.household_id)))


def _remember_validity(ledger: Ledger, colony_ids: Iterable[str], valid_until: Mapping[str, int]) -> None:
    over = sorted(set(colony_ids) - valid_until.keys())
    if over:
        ledger.connection.execute(
            delete(plan_times).where(
                plan_times.c.household_id == ledger.household_id, plan_times.c.colony_id.in_(over)
            )
        )
    if valid_until:
        ledger.connection.execute(
            _holds_until(ledger.connection.dialect.name),
            [
                {"household_id": ledger.household_id, "colony_id": colony_id, "valid_until_ms": until}
                for colony_id, until in valid_until.items()
            ],
        )


@cache  # made once: tests.bench.sync_cost, a twentieth of one log
def _holds_until(dialect: str) -> Insert:
    made: Any = (postgresql if dialect == "postgresql" else sqlite).insert(plan_times)
    keys, until = ["household_id", "colony_id"], made.excluded.valid_until_ms
    written: Insert = made.on_conflict_do_update(index_elements=keys, set_={"valid_until_ms": until})
    return written


def _rearrange(ledger: Ledger, todos: Sequence[ToDo], clock: CareClock, now_ms: int) -> None:
    """Bring the occurrences of these colonies in line with their plans."""
    connection = ledger.connection
    rows = {
        colony_id: [_under_this_clock(row, now_ms) for row in found]
        for colony_id, found in read_occurrences(
            connection, ledger.household_id, [todo.colony_id for todo in todos], clock.local_date(now_ms)
        ).items()
    }
    settled: list[Occurrence] = []
    wanted: list[Occurrence] = []
    for todo in todos:
        present = rows.get(todo.colony_id, [])
        try:
            changed = {row.id: row for row in settle(present, todo, now_ms)}
            standing = [changed.get(row.id, row) for row in present]
            arranged = arrange(standing, todo, clock, now_ms)
        except Exception as error:  # noqa: BLE001 - the other colonies are told all the same
            say_failure("occurrences failed", error, colony_id=todo.colony_id)
            arranged, changed = [row for row in present if row.state == "waiting"], {}
        settled += changed.values()
        wanted += arranged
    change_occurrences(connection, ledger.household_id, settled)
    before = [row for colony_rows in rows.values() for row in colony_rows]
    replace_waiting(connection, ledger.household_id, before, wanted, now_ms)


def _under_this_clock(row: Occurrence, now_ms: int) -> Occurrence:
    """What counts as missed in the future was missed under a clock that ran ahead: it waits again."""
    return replace(row, state="waiting") if row.state == "missed" and row.at_ms > now_ms else row
