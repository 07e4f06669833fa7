"""The household's lock: two writers at once, a reader between them, on SQLite and on PostgreSQL."""

from __future__ import annotations

import threading
from contextlib import nullcontext, suppress
from copy import copy

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError
from tests.support.households import HAPPENED, Requester

from broodshelf.records import database, store

WRITERS, ROUNDS = 4, 8


def write_at_once(app, household_id) -> tuple[list[Exception], set[str], set[str]]:
    """Let several phones log at once while a reader polls; return failures, what it was told and what was logged."""
    first = Requester(household_id)
    colony_id = first.write("colony", {"name": "Amber"})["id"]
    first.sync()
    reader = Requester(household_id)
    failures: list[Exception] = []
    told: set[str] = set()
    logged: set[str] = set()
    start = threading.Barrier(WRITERS + 1)
    done = threading.Event()

    def log() -> None:
        phone = Requester(household_id)
        with app.app_context():
            start.wait(10)
            for _ in range(ROUNDS):
                logged.add(
                    phone.write("note", {"colony_id": colony_id, "happened_at": HAPPENED, "text": "x"})["id"]
                )
                try:
                    phone.sync()
                except DBAPIError as error:
                    failures.append(error)

    def hear() -> None:
        told.update(row["id"] for row in reader.sync()["rows"] if row["kind"] == "note")

    def read() -> None:
        with app.app_context():
            start.wait(10)
            while not done.is_set():
                with suppress(DBAPIError):
                    hear()
            hear()

    threads = [threading.Thread(target=log) for _ in range(WRITERS)]
    polling = threading.Thread(target=read)
    for thread in [*threads, polling]:
        thread.start()
    for thread in threads:
        thread.join(60)
    done.set()
    polling.join(60)
    return failures, told, logged


def test_a_reader_that_polls_while_several_write_misses_nothing(bare_app, household_id):
    failures, told, logged = write_at_once(bare_app, household_id)

    assert failures == []
    assert logged == told


def test_without_the_lock_this_test_is_red(bare_app, household_id, monkeypatch):
    """The mutant 'lock skipped': no row lock on PostgreSQL, no immediate transaction and no turns on SQLite."""
    unlocked = copy(store.LOCKED)
    unlocked._for_update_arg = None
    assert "FOR UPDATE" in str(store.LOCKED)
    assert "FOR UPDATE" not in str(unlocked)
    monkeypatch.setattr(store, "LOCKED", unlocked)
    monkeypatch.setattr(database, "_turn", nullcontext)
    monkeypatch.setattr(Connection, "get_execution_options", lambda _self: {})
    failures, told, logged = write_at_once(bare_app, household_id)

    assert failures or logged != told
