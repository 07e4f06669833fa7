"""From due occurrences to nudges and the messages that carry them, in one transaction under the household's lock.

Logs close occurrences under the same lock, so what is told here was not done a moment before.
"""

from __future__ import annotations

import json
import secrets
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import asdict, replace
from typing import Any, Final, Literal

from sqlalchemy import Connection, func, insert, select

from ..records.ids import plan_id, uuid7
from ..records.store import Ledger
from ..rounds.occurrence_rows import add_occurrences, as_occurrence, change_occurrences, read_occurrences
from ..rounds.occurrences import Occurrence, after_told
from ..rounds.tables import occurrences
from ..rounds.wall_clock import CareClock
from .audience import hearers
from .grouping import Item
from .house import House, fault_id_of, matters_of, read_house
from .tables import deliveries, nudge_items, nudges

HOUR_MS: Final = 3_600_000
LATE_MS: Final = 12 * HOUR_MS
"""What is later than this is not told any more but marked missed; the next care hour tells it as it then is."""
ON_TIME_MS: Final = 15 * 60_000
"""A care hour that lies in the quiet hours is kept if the server is on time; a late nudge waits for their end."""

Verdict = Literal["tell", "miss", "wait", "leave"]


def verdict(row: Occurrence, clock: CareClock, now_ms: int) -> Verdict:
    """Return what to do with a due occurrence: tell it, count it as missed, wait for morning, or leave it told."""
    if row.state == "sent":  # the household's patience is over
        late = clock.is_quiet(now_ms) or clock.local_date(now_ms).isoformat() != row.local_date
        return "leave" if late else "tell"
    if now_ms - row.at_ms > LATE_MS:
        return "miss"
    return "wait" if clock.is_quiet(now_ms) and now_ms - row.at_ms > ON_TIME_MS else "tell"


def make_nudges(ledger: Ledger, key_ids: Collection[str], now_ms: int) -> int:
    """Tell what is due in this household; return how many nudges were made.

    ``key_ids``: who listens with one of these is reachable: the present push key and, where mail is set up, ``mail``.
    """
    due = _due(ledger, now_ms)
    if not due:
        return 0
    house = read_house(ledger, key_ids, now_ms)
    changed: list[Occurrence] = []
    heard: dict[tuple[str, bool], list[Occurrence]] = defaultdict(list)
    matters = matters_of(ledger, due, house, now_ms)
    for row in due:
        decided = verdict(row, house.clock, now_ms)
        if decided == "tell":
            people = hearers(matters[row.id], house.people, house.passes, house.today)
            for person_id in people:
                heard[person_id, row.urgent].append(row)
            flagger_knows = matters[row.id].flagger is not None and not row.follows
            changed.append(_told(row, house, now_ms) if people or flagger_knows else _missed(row))
        elif decided == "miss":
            changed.append(_missed(row))
        elif decided == "wait":
            changed.append(replace(row, wake_ms=house.clock.after_quiet(now_ms)))
        else:
            changed.append(replace(row, wake_ms=None))
    change_occurrences(ledger.connection, changed)
    _add_followers(ledger, changed, house.clock, now_ms)
    _write_nudges(ledger, heard, house, now_ms)
    return len(heard)


def due_households(connection: Connection, now_ms: int, most: int) -> list[str]:
    """Return the households of the ``most`` occurrences that have waited longest, in that order."""
    query = (
        select(occurrences.c.household_id)
        .where(occurrences.c.wake_ms <= now_ms)
        .order_by(occurrences.c.wake_ms)
        .limit(most)
    )
    return list(dict.fromkeys(connection.scalars(query)))


def _due(ledger: Ledger, now_ms: int) -> list[Occurrence]:
    query = (
        select(occurrences)
        .where(occurrences.c.household_id == ledger.household_id, occurrences.c.wake_ms <= now_ms)
        .order_by(occurrences.c.urgent.desc(), occurrences.c.at_ms, occurrences.c.due_ms, occurrences.c.id)
    )
    return [as_occurrence(row) for row in ledger.connection.execute(query)]


def _told(row: Occurrence, house: House, now_ms: int) -> Occurrence:
    again_ms = now_ms + house.patience_ms
    same_day = house.clock.local_date(again_ms).isoformat() == row.local_date
    wake_ms = again_ms if row.steps == 0 and same_day and not house.clock.is_quiet(again_ms) else None
    return replace(row, state="sent", steps=row.steps + 1, told_ms=now_ms, wake_ms=wake_ms)


def _missed(row: Occurrence) -> Occurrence:
    """Nobody heard of it: the server was away for long, or nobody's phone listens."""
    return replace(row, state="missed" if row.steps == 0 else row.state, wake_ms=None)


def _add_followers(ledger: Ledger, changed: Iterable[Occurrence], clock: CareClock, now_ms: int) -> None:
    """Make the next date's occurrence of what was told for the first time or missed."""
    begun = [
        row for row in changed if (row.state == "sent" and row.told_ms == now_ms and row.steps == 1)
        or row.state == "missed"
    ]  # fmt: skip
    if not begun:
        return
    there = read_occurrences(
        ledger.connection, ledger.household_id, {row.subject_id for row in begun}, clock.local_date(now_ms)
    )
    taken = {row.place for rows in there.values() for row in rows}
    waiting = {(r.subject_id, r.task_key) for rows in there.values() for r in rows if r.state == "waiting"}
    made = []
    for row in begun:
        follower = after_told(row, clock, now_ms)
        if follower.place not in taken and (row.subject_id, row.task_key) not in waiting:
            taken.add(follower.place)
            waiting.add((row.subject_id, row.task_key))
            made.append(follower)
    add_occurrences(ledger.connection, ledger.household_id, made, now_ms)


def _write_nudges(
    ledger: Ledger, heard: Mapping[tuple[str, bool], list[Occurrence]], house: House, now_ms: int
) -> None:
    if not heard:
        return
    told = {row.id: row for rows in heard.values() for row in rows}
    items = _items(ledger, told.values())
    steps = _steps_so_far(
        ledger.connection, {person_id for person_id, _ in heard}, house.today, told.values()
    )
    for (person_id, urgent), rows in heard.items():
        latest = max(rows, key=lambda row: row.at_ms)
        key = (person_id, latest.local_date, latest.slot)
        steps[key] = steps.get(key, 0) + 1
        nudge_id = uuid7(now_ms)
        ledger.connection.execute(
            insert(nudges).values(
                id=nudge_id,
                household_id=ledger.household_id,
                person_id=person_id,
                local_date=latest.local_date,
                slot=latest.slot,
                step=steps[key],
                urgent=urgent,
                made_ms=now_ms,
            )
        )
        ledger.connection.execute(
            insert(nudge_items),
            [
                {"nudge_id": nudge_id, "occurrence_id": row.id, "position": n, "item": items[row.id]}
                for n, row in enumerate(rows)
            ],
        )
        ledger.connection.execute(
            insert(deliveries),
            [
                {
                    "id": secrets.token_urlsafe(32),
                    "nudge_id": nudge_id,
                    "subscription_id": subscription_id,
                    "state": "waiting",
                    "wake_ms": now_ms,
                    "made_ms": now_ms,
                    "due_ms": max(row.wake_ms or now_ms for row in rows),
                    "useless_ms": now_ms + LATE_MS,
                }
                for subscription_id in house.phones[person_id]
            ],
        )


def _steps_so_far(
    connection: Connection, people: set[str], today: str, told: Iterable[Occurrence]
) -> dict[tuple[str, str, str], int]:
    """Return the last step of each person's nudges of these rounds."""
    dates = {today, *(row.local_date for row in told)}
    rows = connection.execute(
        select(nudges.c.person_id, nudges.c.local_date, nudges.c.slot, func.max(nudges.c.step).label("step"))
        .where(nudges.c.person_id.in_(sorted(people)), nudges.c.local_date.in_(sorted(dates)))
        .group_by(nudges.c.person_id, nudges.c.local_date, nudges.c.slot)
    )
    return {(row.person_id, row.local_date, row.slot): row.step for row in rows}


def _items(ledger: Ledger, rows: Iterable[Occurrence]) -> dict[str, str]:
    """Return, by occurrence, what the message says of it, from the colonies' plans as they stand."""
    rows = list(rows)
    ledger.load(i for row in rows for i in (row.subject_id, plan_id(row.subject_id)))
    made = {}
    for row in rows:
        colony, plan = ledger.get(row.subject_id), ledger.get(plan_id(row.subject_id))
        tasks: list[dict[str, Any]] = plan.values.get("tasks") or [] if plan is not None else []
        task = next((t for t in tasks if t["key"] == row.task_key), {})
        reasons = task.get("reasons") or [{}]
        item = Item(
            occurrence_id=row.id,
            colony_id=row.subject_id,
            colony=str(colony.values.get("name")) if colony is not None else "",
            need=row.need,
            task_key=row.task_key,
            fault=reasons[0].get("code") if fault_id_of(row) is not None else None,
            portion=task.get("portion"),
            suggested=task.get("suggested"),
        )
        made[row.id] = json.dumps(asdict(item), ensure_ascii=False)
    return made
