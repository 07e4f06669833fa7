"""What a push reads must not grow with the log: asked of SQLite's own plans for the statements of a real request."""

from __future__ import annotations

import json

from sqlalchemy import event
from tests.support.households import HAPPENED

from broodshelf.records.database import db, reading

GROWING = ("records", "revisions", "operations")
"""Tables that get longer with every log."""


def walks(statement, parameters):
    """Return the steps of SQLite's plan that go through a growing table, or through all that a household has in it."""
    with reading() as connection:
        steps = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", parameters)
        plan = [row.detail for row in steps]
    return [
        step
        for step in plan
        if step.split()[1:2] and step.split()[1] in GROWING
        and (step.startswith("SCAN") or step.endswith("(household_id=?)"))
    ]  # fmt: skip


def test_no_read_of_a_push_walks_through_the_whole_log(sqlite_house):
    phone = sqlite_house.phone()
    colony_id = phone.write("colony", {"name": "Amber"})["id"]
    phone.take(json.loads(sqlite_house.post(phone, json.dumps(phone.request()).encode())))
    phone.write(
        "feeding", {"colony_id": colony_id, "happened_at": HAPPENED, "need": "sugar", "task_key": "t"}
    )
    body = json.dumps(phone.request()).encode()
    asked = []

    def listen(_connection, _cursor, statement, parameters, _context, _many):
        if statement.startswith("SELECT"):
            asked.append((statement, parameters))

    event.listen(db.engine, "before_cursor_execute", listen)
    try:
        sqlite_house.post(phone, body)
    finally:
        event.remove(db.engine, "before_cursor_execute", listen)

    assert any("FROM records" in statement for statement, _ in asked)
    assert [step for each in asked for step in walks(*each)] == []
