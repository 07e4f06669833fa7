"""What one server of a database does at a time, and what only one of them does at all. On both databases."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from threading import Barrier, BrokenBarrierError, Event, Thread

import pytest
from sqlalchemy import Engine
from tests.nudges.killing import wait_for
from tests.support.house import House

from broodshelf import app
from broodshelf.people.settling import Witness, settle
from broodshelf.records.database import db
from broodshelf.records.home import alone as home_alone
from broodshelf.records.home.alone import BROKERS, OnlyOne, alone
from broodshelf.settings import from_environment


@pytest.mark.parametrize("engine", ["sqlite", "postgresql"])
def test_servers_of_a_new_database_bring_it_to_its_schema_one_after_the_other(
    tmp_path, monkeypatch, request, engine
):
    cluster = request.getfixturevalue("postgresql_cluster") if engine == "postgresql" else None
    kept = {"BROODSHELF_DATABASE_URL": cluster.new_database()} if cluster else {}
    settings = from_environment({"BROODSHELF_DATA": str(tmp_path / "data"), **kept})
    meeting, met = Barrier(2), []

    def waits_for_company(engine: Engine, witness: Witness, now_ms: int) -> None:
        with suppress(BrokenBarrierError):  # for the first in vain, for the second at once
            met.append(meeting.wait(0.3))
        settle(engine, witness, now_ms)

    monkeypatch.setattr(app, "settle", waits_for_company)
    with ThreadPoolExecutor() as at_once:
        started = list(at_once.map(app.create_app, [settings] * 2))

    try:
        assert not met
        assert [each.test_client().get("/readyz").status_code for each in started] == [200, 200]
    finally:
        for each in started:
            with each.app_context():
                db.engine.dispose()


def test_who_has_to_wait_for_another_server_says_once_for_what(bare_app, monkeypatch, caplog):
    engine, entered = db.engine, Event()

    def wait_outside() -> None:
        with alone(engine):
            entered.set()

    with alone(engine):
        monkeypatch.setattr(home_alone, "TELL_S", 0.01)
        waiting = Thread(target=wait_outside)
        waiting.start()
        wait_for(lambda: len(caplog.records) == 1)
        assert not entered.is_set()
    waiting.join()

    assert entered.is_set()
    assert [record.message for record in caplog.records] == ["waiting for another server of this database"]
    assert str(caplog.records[0].values["lock"])


@pytest.mark.parametrize("engine", ["sqlite", "postgresql"])
def test_only_one_process_listens_to_the_brokers_and_another_when_it_ends(tmp_path, templates, engine):
    place = templates.of_an_app(engine, tmp_path / "data")
    begun: list[str] = []
    with House(tmp_path / "data", place) as a, House(tmp_path / "data", place) as b:
        first, second = (
            OnlyOne(
                each.app, tmp_path / "data", BROKERS, lambda name=name: begun.append(name) or (lambda: None)
            )
            for name, each in (("a", a), ("b", b))
        )
        stop = first.start()
        wait_for(lambda: begun == ["a"])
        with b.app.app_context():
            second._try_once()  # finds it taken
        assert begun == ["a"]
        stop()
        other = second.start()
        wait_for(lambda: begun == ["a", "b"])
        other()
