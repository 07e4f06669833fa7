"""What happens all the time finds its rows by an index, however many households there are.

The plans are PostgreSQL's own for tables with many rows and statistics that are up to date: nothing is switched off.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from sqlalchemy import event, text
from tests.support.house import House
from tests.support.households import HAPPENED, NOON_MS
from tests.support.many_homes import copy_household, live_a_year, same_token, token_of

from broodshelf.app import create_nudger
from broodshelf.records.database import db, writing

HOUSEHOLDS = 150
MANY = 5_000
"""Rows, from which on reading a whole table is a fault. What is smaller is read faster as it lies."""


@pytest.fixture(scope="module")
def town(templates, tmp_path_factory) -> Iterator[House]:
    """A server with many households that look all alike."""
    folder = tmp_path_factory.mktemp("town")
    with House(folder, templates.of_an_app("postgresql", folder)) as house:
        phone = house.phone()
        live_a_year(house, phone)
        copies = copy_household(house, HOUSEHOLDS)
        assert same_token(copies[0], phone.device_id)
        house.tokens[phone.device_id] = token_of(copies[7], phone.device_id)
        house.household_id, house.copied = copies[7], phone  # type: ignore[attr-defined]
        yield house


class Watched:
    """The statements of a block, with what was given to them."""

    def __init__(self) -> None:
        self.seen: dict[str, Any] = {}

    def __enter__(self) -> Watched:
        event.listen(db.engine, "before_cursor_execute", self._note)
        return self

    def __exit__(self, *_why: object) -> None:
        event.remove(db.engine, "before_cursor_execute", self._note)

    def _note(self, _connection, _cursor, statement, parameters, _context, many) -> None:
        if re.match(r"\s*(SELECT|UPDATE|DELETE|WITH)\b", statement) and parameters:
            self.seen.setdefault(statement, parameters[0] if many else parameters)

    def whole_reads(self) -> list[tuple[str, str]]:
        """The tables with many rows that a statement reads from end to end, with the statement."""
        with writing() as connection:
            rows = connection.execute(text("SELECT relname, reltuples FROM pg_class WHERE relkind = 'r'"))
            large = {name for name, count in rows if count >= MANY}
            assert {"records", "revisions", "operations"} <= large
            found = []
            for statement, parameters in self.seen.items():
                plan = connection.exec_driver_sql(f"EXPLAIN {statement}", parameters).scalars().all()
                read = {m[1] for line in plan if (m := re.search(r"Seq Scan on (\w+)", line))}
                found += [(table, statement) for table in sorted(read & large)]
        return found


def sync(house: House, phone: Any) -> None:
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))


@pytest.mark.long
def test_a_log_a_pull_and_a_tick_read_no_large_table_from_end_to_end(town):
    phone = town.copied
    colony = next(row["id"] for row in phone.rows().values() if row["kind"] == "colony")
    nudger = create_nudger(town.app)
    try:
        with Watched() as watched:
            phone.epoch, phone.cursor = None, None
            sync(town, phone)  # everything anew
            phone.write(
                "feeding",
                {"colony_id": colony, "need": "sugar", "happened_at": HAPPENED},
            )
            sync(town, phone)
            sync(town, phone)  # nothing new
            nudger.tick(NOON_MS)
            nudger.finish()
    finally:
        nudger.close()

    assert len(watched.seen) > 25
    assert watched.whole_reads() == []


@pytest.mark.long
def test_a_statement_that_does_read_a_large_table_from_end_to_end_is_found(town):
    with Watched() as watched, writing() as connection:
        connection.execute(text("SELECT count(*) FROM revisions WHERE asked LIKE :part"), {"part": "%amber%"})

    assert [table for table, _statement in watched.whole_reads()] == ["revisions"]
