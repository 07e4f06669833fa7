"""Telling what is due, in one transaction under the households' locks.

Logs close occurrences under the same locks, so what is told here was not done a moment before. Many households go
into one transaction: at a common hour a commit for each would take longer than all the rest.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable

from sqlalchemy import Connection

from ...records.store import lock_idle
from ...rounds.occurrence_rows import tell_occurrences
from ...rounds.occurrence_states import Occurrence, kept_till_morning, missed, not_again, told, verdict
from .audience import hearers
from .due import read_due
from .facts import Facts, read_facts
from .followers import add_followers
from .house import House, read_houses
from .nudge_rows import Heard, write_nudges


def tell_due(
    connection: Connection, household_ids: Iterable[str], key_ids: Collection[str], now_ms: int
) -> dict[str, int]:
    """Tell what is due in these households; return how many nudges were made, by household.

    One that somebody else holds is left out: another nudger is telling it, or a log comes in this moment. It is
    still due at the next tick, if it is.

    ``key_ids``: who listens with one of these can be reached (``channels.channel.Channels.key_ids``).
    """
    due = read_due(connection, lock_idle(connection, household_ids), now_ms)
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
    add_followers(connection, changed, houses, now_ms)
    write_nudges(connection, heard, houses, facts, now_ms)
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
        return missed(row)
    if decided == "wait":
        return kept_till_morning(row, house.clock, now_ms)
    if decided == "leave":
        return not_again(row)
    matter = facts.matter(household_id, row)
    people = hearers(matter, house.people, house.passes, house.today)
    for person_id in people:
        heard[household_id, person_id, row.urgent].append(row)
    flagger_knows = matter.flagger is not None and not row.follows
    if people or flagger_knows:
        return told(row, house.clock, house.patience_ms, now_ms)
    return missed(row)
