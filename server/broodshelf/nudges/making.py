"""From due occurrences to nudges and the messages that carry them, in one transaction under the households' locks.

Logs close occurrences under the same locks, so what is told here was not done a moment before. Many households go
into one transaction: at a common hour a commit for each would take longer than all the rest.
"""

from __future__ import annotations

import datetime as dt
import secrets
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from typing import Any, Final, Literal

from sqlalchemy import Connection, and_, func, or_, select

from ..records.ids import plan_id, uuid7
from ..records.many_rows import are_among, insert_rows, is_among
from ..records.store import lock_idle
from ..rounds.occurrence_rows import COLUMNS, LOOK_BACK_DAYS, as_occurrence, as_row, tell_occurrences
from ..rounds.occurrences import Occurrence, after_told
from ..rounds.tables import occurrences
from ..rounds.wall_clock import CareClock
from .audience import hearers
from .grouping import Item
from .house import Due, Facts, House, fault_id_of, read_facts, read_houses
from .tables import deliveries, nudge_items, nudges

HOUR_MS: Final = 3_600_000
LATE_MS: Final = 12 * HOUR_MS
"""What is later than this is not told any more but marked missed; the next care hour tells it as it then is."""
ON_TIME_MS: Final = 15 * 60_000
"""A care hour that lies in the quiet hours is kept if the server is on time; a late nudge waits for their end."""

Verdict = Literal["tell", "miss", "wait", "leave"]
Heard = dict[tuple[str, str, bool], list[Occurrence]]
"""What each person hears: by household, person and whether it is urgent."""


def verdict(row: Occurrence, clock: CareClock, now_ms: int) -> Verdict:
    """Return what to do with a due occurrence: tell it, count it as missed, wait for morning, or leave it told."""
    if row.state == "sent":  # the household's patience is over
        late = clock.is_quiet(now_ms) or clock.local_date(now_ms).isoformat() != row.local_date
        return "leave" if late else "tell"
    if now_ms - row.at_ms > LATE_MS:
        return "miss"
    return "wait" if clock.is_quiet(now_ms) and now_ms - row.at_ms > ON_TIME_MS else "tell"


def make_nudges(
    connection: Connection, household_ids: Iterable[str], key_ids: Collection[str], now_ms: int
) -> dict[str, int]:
    """Tell what is due in these households; return how many nudges were made, by household.

    One that somebody else holds is left out: another nudger is telling it, or a log comes in this moment. It is
    still due at the next tick, if it is.

    ``key_ids``: who listens with one of these is reachable: the present push key and, where mail is set up, ``mail``.
    """
    due = _due(connection, lock_idle(connection, household_ids), now_ms)
    if not due:
        return {}
    houses = read_houses(connection, due, key_ids, now_ms)
    facts = read_facts(connection, due, houses, now_ms)
    changed: dict[str, list[Occurrence]] = {}
    heard: Heard = defaultdict(list)
    for household_id, rows in due.items():
        changed[household_id] = [
            _decide(household_id, row, houses[household_id], facts, heard, now_ms) for row in rows
        ]
    tell_occurrences(connection, changed)
    _add_followers(connection, changed, houses, now_ms)
    _write_nudges(connection, heard, houses, facts, now_ms)
    made: dict[str, int] = defaultdict(int)
    for household_id, _, _ in heard:
        made[household_id] += 1
    return made


def _decide(
    household_id: str, row: Occurrence, house: House, facts: Facts, heard: Heard, now_ms: int
) -> Occurrence:
    """Return what becomes of a due occurrence, and enter those who hear of it into ``heard``."""
    decided = verdict(row, house.clock, now_ms)
    if decided == "miss":
        return _missed(row)
    if decided == "wait":
        return replace(row, wake_ms=house.clock.after_quiet(now_ms))
    if decided == "leave":
        return replace(row, wake_ms=None)
    matter = facts.matter(household_id, row)
    people = hearers(matter, house.people, house.passes, house.today)
    for person_id in people:
        heard[household_id, person_id, row.urgent].append(row)
    flagger_knows = matter.flagger is not None and not row.follows
    return _told(row, house, now_ms) if people or flagger_knows else _missed(row)


def due_households(connection: Connection, now_ms: int, most: int) -> list[str]:
    """Return the households of the ``most`` occurrences that have waited longest, in that order."""
    query = (
        select(occurrences.c.household_id)
        .where(occurrences.c.wake_ms <= now_ms)
        .order_by(occurrences.c.wake_ms)
        .limit(most)
    )
    return list(dict.fromkeys(connection.scalars(query).all()))


def _due(connection: Connection, household_ids: Collection[str], now_ms: int) -> dict[str, list[Occurrence]]:
    o = occurrences.c
    query = (
        select(o.household_id, *COLUMNS)
        .where(is_among(connection, o.household_id, household_ids), o.wake_ms <= now_ms)
        .order_by(o.urgent.desc(), o.at_ms, o.due_ms, o.id)
    )
    found: dict[str, list[Occurrence]] = defaultdict(list)
    for household_id, *values in connection.execute(query).all():
        found[household_id].append(as_occurrence(values))
    return found


def _told(row: Occurrence, house: House, now_ms: int) -> Occurrence:
    again_ms = now_ms + house.patience_ms
    same_day = house.clock.local_date(again_ms).isoformat() == row.local_date
    wake_ms = again_ms if row.steps == 0 and same_day and not house.clock.is_quiet(again_ms) else None
    return replace(row, state="sent", steps=row.steps + 1, told_ms=now_ms, wake_ms=wake_ms)


def _missed(row: Occurrence) -> Occurrence:
    """Nobody heard of it: the server was away for long, or nobody's phone listens."""
    return replace(row, state="missed" if row.steps == 0 else row.state, wake_ms=None)


def _add_followers(connection: Connection, changed: Due, houses: Mapping[str, House], now_ms: int) -> None:
    """Make the next date's occurrence of what was told for the first time or missed."""
    begun = [
        (household_id, row)
        for household_id, rows in changed.items()
        for row in rows
        if (row.state == "sent" and row.told_ms == now_ms and row.steps == 1) or row.state == "missed"
    ]
    if not begun:
        return
    taken, waiting = _places(connection, begun, houses)
    made = []
    for household_id, row in begun:
        follower = after_told(row, houses[household_id].clock, now_ms)
        place, task = (household_id, *follower.place), (household_id, row.subject_id, row.task_key)
        if place not in taken and task not in waiting:
            taken.add(place)
            waiting.add(task)
            made.append({**as_row(follower), "household_id": household_id, "id": uuid7(now_ms)})
    insert_rows(connection, occurrences, made)


def _places(
    connection: Connection, begun: Collection[tuple[str, Occurrence]], houses: Mapping[str, House]
) -> tuple[set[tuple[str, ...]], set[tuple[str, ...]]]:
    """Return which places of these colonies are taken, and which of their tasks wait already."""
    o, told = occurrences.c, occurrences.alias("told")
    today = min(dt.date.fromisoformat(houses[household_id].today) for household_id, _ in begun)
    since = (today - dt.timedelta(days=LOOK_BACK_DAYS)).isoformat()
    taken: set[tuple[str, ...]] = set()
    waiting: set[tuple[str, ...]] = set()
    query = (
        select(o.household_id, o.subject_id, o.need, o.local_date, o.slot, o.task_key, o.state)
        .join(
            told,
            and_(
                o.household_id == told.c.household_id,
                o.subject_kind == "colony",
                o.subject_id == told.c.subject_id,
            ),
        )
        .where(
            are_among(connection, (told.c.household_id, told.c.id), [(h, row.id) for h, row in begun]),
            or_(o.state == "waiting", o.local_date >= since),
        )
    )
    for household_id, subject_id, need, local_date, slot, task_key, state in connection.execute(query):
        taken.add((household_id, subject_id, need, local_date, slot))
        if state == "waiting":
            waiting.add((household_id, subject_id, task_key))
    return taken, waiting


def _write_nudges(
    connection: Connection, heard: Heard, houses: Mapping[str, House], facts: Facts, now_ms: int
) -> None:
    if not heard:
        return
    steps = _steps_so_far(connection, heard, houses)
    told, items, messages = [], [], []
    for (household_id, person_id, urgent), rows in heard.items():
        standing_in = {person.id for person in houses[household_id].people if person.role == "stand_in"}
        latest = max(rows, key=lambda row: row.at_ms)
        key = (household_id, person_id, latest.local_date, latest.slot)
        steps[key] = steps.get(key, 0) + 1
        nudge_id = uuid7(now_ms)
        told.append(
            {
                "id": nudge_id,
                "household_id": household_id,
                "person_id": person_id,
                "local_date": latest.local_date,
                "slot": latest.slot,
                "step": steps[key],
                "urgent": urgent,
                "made_ms": now_ms,
            }
        )
        items += [
            {
                "household_id": household_id,
                "nudge_id": nudge_id,
                "occurrence_id": row.id,
                "position": n,
                "item": _item(household_id, row, facts, stand_in=person_id in standing_in),
            }
            for n, row in enumerate(rows)
        ]
        messages += [
            {
                "household_id": household_id,
                "id": secrets.token_urlsafe(32),
                "nudge_id": nudge_id,
                "subscription_id": subscription_id,
                "host": host,
                "state": "waiting",
                "wake_ms": now_ms,
                "made_ms": now_ms,
                "due_ms": max(row.wake_ms or now_ms for row in rows),
                "useless_ms": now_ms + LATE_MS,
            }
            for subscription_id, host in houses[household_id].phones[person_id]
        ]
    insert_rows(connection, nudges, told)
    insert_rows(connection, nudge_items, items)
    insert_rows(connection, deliveries, messages)


def _steps_so_far(
    connection: Connection, heard: Heard, houses: Mapping[str, House]
) -> dict[tuple[str, str, str, str], int]:
    """Return the last step of each person's nudges of these rounds."""
    dates = {houses[household_id].today for household_id, _, _ in heard}
    dates |= {row.local_date for rows in heard.values() for row in rows}
    n = nudges.c
    rows = connection.execute(
        select(n.household_id, n.person_id, n.local_date, n.slot, func.max(n.step).label("step"))
        .where(
            are_among(
                connection,
                (n.household_id, n.person_id),
                sorted({(household_id, person_id) for household_id, person_id, _ in heard}),
            ),
            nudges.c.local_date.in_(sorted(dates)),
        )
        .group_by(n.household_id, n.person_id, n.local_date, n.slot)
    )
    return {(row.household_id, row.person_id, row.local_date, row.slot): row.step for row in rows}


def _item(household_id: str, row: Occurrence, facts: Facts, *, stand_in: bool) -> str:
    """Return what the message says of an occurrence, from the colony's plan as it stands, as JSON.

    ``stand_in``: it goes to one, who sees and logs what the plan says for them.
    """
    colony = facts.values.get((household_id, row.subject_id))
    plan = facts.values.get((household_id, plan_id(row.subject_id)), {})
    tasks: list[dict[str, Any]] = plan.get("tasks") or []
    task = next((t for t in tasks if t["key"] == row.task_key), {})
    reasons = task.get("reasons") or [{}]
    seen = {**task, **(task.get("stand_in") or {})} if stand_in else task
    item = Item(
        occurrence_id=row.id,
        colony_id=row.subject_id,
        colony=str(colony.get("name")) if colony is not None else "",
        need=row.need,
        task_key=row.task_key,
        fault=(reasons[0].get("args") or {}).get("fault") if fault_id_of(row) is not None else None,
        portion=seen.get("portion"),
        suggested=seen.get("suggested"),
    )
    return item.as_json()
