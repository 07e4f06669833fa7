"""Many households on PostgreSQL: one is lived in through the app, the others are copies that the database makes.

Ids of records are a household's own, so a copy is the same rows under another household; what must be unique in the
whole server, a session's hash, is made of the new id.
"""

from __future__ import annotations

import datetime as dt
import json
from typing import Final

from sqlalchemy import Connection, Table, text
from tests.support.house import House
from tests.support.households import Requester

from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.tables import subscriptions
from broodshelf.people.secrets import hash_token
from broodshelf.people.tables import devices, household_sizes
from broodshelf.records.database import db, reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.tables import households, operations, records, revisions
from broodshelf.rounds.tables import occurrences, plan_times

COLONIES: Final = 5
EVENTS_A_COLONY: Final = 200
"""Of a year: food twice a week with what became of it, water every other week, a census a month."""
COPIED: Final = (
    households, records, revisions, operations, devices, plan_times, occurrences, household_sizes, subscriptions,
)  # fmt: skip
AT_ONCE: Final = 100


def live_a_year(house: House, phone: Requester, days: int = 365) -> None:
    """Log a year for some colonies, as a phone does that was without a connection now and then."""
    for number in range(COLONIES):
        phone.now_ms = house.now_ms - days * DAY_MS
        colony = phone.write(
            "colony", {"name": f"Colony {number}", "stage": "growing", "species_code": "lasius_niger"}
        )
        for event in range(EVENTS_A_COLONY):
            phone.now_ms = house.now_ms - round((EVENTS_A_COLONY - event) * days * DAY_MS / EVENTS_A_COLONY)
            at = dt.datetime.fromtimestamp(phone.now_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")
            said = {"colony_id": colony["id"], "happened_at": at}
            if event % 8 == 7:
                phone.write("water", {**said, "action": "refill"})
            elif event % 2:
                phone.write("check", {**said, "outcome": "all"})
            else:
                phone.write("feeding", {**said, "need": "sugar" if event % 4 else "protein"})
    phone.now_ms = house.now_ms
    while phone.waiting:
        phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))


def copy_household(house: House, count: int) -> list[str]:
    """Make so many copies of the house's household and return their ids; the database's statistics are up to date."""
    made: list[str] = []
    while len(made) < count:
        ids = [uuid7(house.now_ms) for _ in range(min(AT_ONCE, count - len(made)))]
        with writing() as connection:
            for table in COPIED:
                _copy(connection, table, house.household_id, ids)
        made += ids
    with db.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.execute(text("VACUUM ANALYZE"))
    return made


def token_of(household_id: str, device_id: str) -> str:
    """The session's token of a copied phone."""
    return f"{household_id}{device_id}"


def _copy(connection: Connection, table: Table, old: str, ids: list[str]) -> None:
    values = {column.name: f"r.{column.name}" for column in table.columns}
    values["id" if table is households else "household_id"] = "n.id"
    for name in {"id", "record_id"} & values.keys() if table in (records, revisions) else ():
        values[name] = (
            f"CASE WHEN r.{name} = :old THEN n.id ELSE r.{name} END"  # the household's record of itself
        )
    if table is subscriptions:
        values["endpoint"] = "r.endpoint || n.id"
    if table is devices:
        values["token_hash"] = "encode(sha256((n.id || r.id)::bytea), 'hex')"
    of = "id" if table is households else "household_id"
    connection.execute(
        text(
            f"INSERT INTO {table.name} ({', '.join(values)}) SELECT {', '.join(values.values())}"
            f" FROM {table.name} r CROSS JOIN unnest(CAST(:ids AS text[])) n(id) WHERE r.{of} = :old"
        ),
        {"ids": ids, "old": old},
    )


def bytes_of_the_database() -> int:
    """How much the database takes on the disk."""
    with reading() as connection:
        return int(connection.scalar(text("SELECT pg_database_size(current_database())")) or 0)


def same_token(household_id: str, device_id: str) -> bool:
    """Whether a copied phone is let in by ``token_of``: that the database hashes as we do."""
    with reading() as connection:
        found = devices.select().where(devices.c.token_hash == hash_token(token_of(household_id, device_id)))
        return connection.execute(found).one_or_none() is not None
