"""Any order, lost answers, repeats, wrong clocks: all phones end up alike, each log there exactly once."""

from __future__ import annotations

import pytest
from flask import Flask
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.support.households import HAPPENED, ModelPhone, make_household, make_tables

from broodshelf.records import database

HOUR_MS = 3_600_000

steps = st.lists(
    st.tuples(
        st.integers(0, 2),
        st.sampled_from(["log", "rename", "delete", "restore", "sync", "lose"]),
        st.integers(0, 3),
    ),
    min_size=1,
    max_size=40,
)


@pytest.fixture(scope="module")
def shelf_app(tmp_path_factory):
    app = Flask("bare")
    app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{tmp_path_factory.mktemp('db') / 'shelf.sqlite3'}"
    database.prepare(app)
    with app.app_context():
        make_tables(database.db.engine)
        yield app
        database.db.engine.dispose()


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(steps=steps, clocks=st.lists(st.integers(-26, 26), min_size=3, max_size=3))
def test_phones_converge_and_every_log_is_there_exactly_once(shelf_app, steps, clocks):
    with database.writing() as connection:
        household_id = make_household(connection)
    phones = [ModelPhone(household_id, clock_ahead_ms=h * HOUR_MS) for h in clocks]
    colony_id = phones[0].write("colony", {"name": "start"})["id"]
    phones[0].sync()
    logged: set[str] = set()
    for minute, (who, what, which) in enumerate(steps):
        phone = phones[who]
        for each in phones:
            each.now_ms += 60_000
        if what == "log":
            op = phone.write("note", {"colony_id": colony_id, "happened_at": HAPPENED, "text": f"{minute}"})
            logged.add(op["id"])
        elif what == "rename":
            phone.write("colony", {"name": f"name {minute}", "queens": which}, colony_id)
        elif what == "delete":
            phone.write("colony", {"gone": True}, colony_id)
        elif what == "restore":
            phone.write("colony", {"gone": False}, colony_id)
        else:
            phone.sync(lose_answer=what == "lose", limit=which + 1)
    for _ in range(3):
        for phone in phones:
            phone.sync()

    assert all(not phone.outbox for phone in phones)
    assert phones[0].values() == phones[1].values() == phones[2].values()
    assert logged == {row_id for row_id, row in phones[0].rows.items() if row["kind"] == "note"}
    assert all(v["verdict"] == "applied" for phone in phones for v in phone.verdicts.values())
