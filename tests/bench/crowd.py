"""Many households on a fresh database of either kind, for measurements."""

from __future__ import annotations

import json
import tempfile
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

from flask import Flask
from sqlalchemy import insert, text
from tests.nudges.support import KEY_ID, BrowserKeys
from tests.support.households import NOON_MS, make_tables
from tests.support.postgresql import shared_cluster

from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.tables import subscriptions
from broodshelf.people.tables import devices
from broodshelf.records import database
from broodshelf.records.ids import plan_id, uuid7
from broodshelf.records.tables import households, records
from broodshelf.rounds.tables import occurrences


def databases() -> Iterator[tuple[str, Flask]]:
    """Give an app on an empty SQLite file, then one on an empty PostgreSQL database."""
    with tempfile.TemporaryDirectory() as folder, shared_cluster(Path(folder)) as cluster:
        urls = {"SQLite": f"sqlite:///{Path(folder) / 'bench.sqlite3'}", "PostgreSQL": cluster.new_database()}
        for name, url in urls.items():
            app = Flask("bench")
            app.config["SQLALCHEMY_DATABASE_URI"] = url
            database.prepare(app)
            with app.app_context():
                make_tables(database.db.engine)
            yield name, app
            with app.app_context():
                database.db.engine.dispose()


def fill(total: int, due: int, endpoint: str = "http://127.0.0.1:9") -> None:
    """Make ``due`` households, one keeper with one phone each, and occurrences: one due in each, the rest later."""
    host = urlsplit(endpoint).netloc
    keys = BrowserKeys().as_json
    rows: dict[str, list[dict]] = {name: [] for name in ("house", "record", "device", "phone", "due")}
    for _ in range(due):
        house, person, device, colony = (uuid7(NOON_MS) for _ in range(4))
        rows["house"].append({"id": house, "rev": 9, "epoch": house, "purged_rev": 0, "created_ms": NOON_MS})
        task = {
            "key": "protein:start", "need": "protein", "due_at_ms": NOON_MS, "reasons": [],
            "portion": None, "suggested": None,
        }  # fmt: skip
        for record_id, kind, values in (
            (house, "household", {"name": "Shelf", "zone": "Europe/Vienna", "care_hours": ["18:30"]}),
            (person, "person", {"name": "Mira", "role": "keeper"}),
            (colony, "colony", {"name": "Amber"}),
            (plan_id(colony), "plan", {"colony_id": colony, "tasks": [task]}),
        ):
            rows["record"].append(
                {"household_id": house, "id": record_id, "kind": kind, "rev": 1, "gone": False,
                 "colony_id": colony if kind in ("colony", "plan") else None, "topic": "",
                 "made_ms": NOON_MS, "fields": json.dumps(values), "stamps": "{}"}
            )  # fmt: skip
        rows["device"].append(
            {"id": device, "household_id": house, "person_id": person, "role": "keeper", "name": "phone",
             "token_hash": device, "created_ms": NOON_MS, "last_seen_ms": NOON_MS}
        )  # fmt: skip
        rows["phone"].append(
            {"id": device, "household_id": house, "person_id": person, "device_id": device, "key_id": KEY_ID,
             "endpoint": f"{endpoint}/{device}", "host": host, "created_ms": NOON_MS,
             "seen_ms": NOON_MS, "failures": 0, **keys}
        )  # fmt: skip
        rows["due"].append(occurrence(house, colony, "2026-05-01", NOON_MS))
    waiting = (
        occurrence(rows["house"][n % due]["id"], uuid7(NOON_MS), "2026-06-01", NOON_MS + DAY_MS + n)
        for n in range(total - due)
    )
    with database.writing() as connection:
        for table, name in (
            (households, "house"), (records, "record"), (devices, "device"), (subscriptions, "phone"),
            (occurrences, "due"),
        ):  # fmt: skip
            connection.execute(insert(table), rows[name])
        while batch := [row for _, row in zip(range(5000), waiting, strict=False)]:
            connection.execute(insert(occurrences), batch)
    with database.writing() as connection:
        connection.execute(text("ANALYZE"))


def occurrence(house: str, colony: str, date: str, at_ms: int) -> dict:
    """Return a waiting occurrence."""
    return {
        "id": uuid7(NOON_MS), "household_id": house, "subject_kind": "colony", "subject_id": colony, "need": "protein",
        "local_date": date, "slot": "18:30", "task_what": "protein", "task_about": "start",
        "urgent": False, "follows": False, "due_ms": NOON_MS, "at_ms": at_ms,
        "state": "waiting", "steps": 0, "wake_ms": at_ms,
    }  # fmt: skip
