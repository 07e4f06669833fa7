"""A store that is full, locked, lost in part or gone is told as that, and nothing is lost or half-written."""

from __future__ import annotations

import errno
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import event
from tests.support.households import HAPPENED

from broodshelf.app import create_app
from broodshelf.records import database
from broodshelf.records.database import db
from broodshelf.settings import from_environment
from broodshelf.web import probe

SHORT_MS = 50
LONG_TEXT = "x" * 2_000


@pytest.fixture
def app(tmp_path: Path, clock, monkeypatch, templates):
    """The app, with little patience for locks and a probe that always tries."""
    monkeypatch.setattr(database, "SQLITE_BUSY_TIMEOUT_MS", SHORT_MS)
    monkeypatch.setattr(probe, "WITHIN_MS", SHORT_MS)
    monkeypatch.setattr(probe, "EVERY_S", 0.0)
    templates.of_an_app("sqlite", tmp_path)
    made = create_app(from_environment({"BROODSHELF_DATA": str(tmp_path)}), clock)
    made.extensions["broodshelf"].probe._every_s = 0.0
    yield made
    with made.app_context():
        db.engine.dispose()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "broodshelf.sqlite3"


def a_note(keeper):
    """A long note on the keeper's colony, which the first call makes."""
    if not hasattr(keeper, "colony"):
        keeper.colony = keeper.op("colony", {"name": "Amber"})
        assert keeper.sync(keeper.colony).status_code == 200
    return keeper.op("note", {"colony_id": keeper.colony["id"], "happened_at": HAPPENED, "text": LONG_TEXT})


def write(keeper, count: int = 1):
    """Log notes; return the answer."""
    return keeper.sync(*[a_note(keeper) for _ in range(count)])


def assert_told(answer, status: int, code: str) -> None:
    assert (answer.status_code, answer.json["code"]) == (status, code)
    assert answer.content_type == "application/problem+json"
    assert "nothing was stored" in answer.json["detail"]


def allow_pages(app, file: Path, more: int) -> Callable[[], None]:
    """Let the database grow by no more than some pages, as a disk that is nearly full would; return what ends it."""
    with closing(sqlite3.connect(file)) as connection:
        most = connection.execute("PRAGMA page_count").fetchone()[0] + more

    def limit(connection, _record) -> None:
        connection.execute(f"PRAGMA max_page_count={most}")

    with app.app_context():
        engine = db.engine
        engine.dispose()
    event.listen(engine, "connect", limit)

    def end() -> None:
        event.remove(engine, "connect", limit)
        engine.dispose()

    return end


def test_a_full_disk_is_told_and_what_was_sent_is_taken_when_there_is_room_again(app, keeper, file):
    note = a_note(keeper)
    end = allow_pages(app, file, 8)
    refused = keeper.sync(note, *[a_note(keeper) for _ in range(40)])
    end()
    taken = keeper.sync(note)

    assert_told(refused, 507, "disk_full")
    assert [answer["verdict"] for answer in taken.json["answers"]] == ["applied"]


def test_a_database_that_somebody_else_holds_is_told_with_when_to_come_again(app, keeper, file):
    write(keeper)
    with closing(sqlite3.connect(file, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        refused = write(keeper)
        health = keeper.get("/healthz")
        other.execute("ROLLBACK")

    assert_told(refused, 503, "database_locked")
    assert refused.headers["Retry-After"] == "5"
    assert (health.status_code, health.json["database"]) == (503, "database_locked")
    assert write(keeper).status_code == 200
    assert keeper.get("/healthz").json["database"] == "ok"


def test_a_lost_table_is_told_and_no_operation_is_refused_for_it(app, keeper, file):
    write(keeper)
    with closing(sqlite3.connect(file)) as other:
        other.execute("PRAGMA foreign_keys=OFF")
        other.execute("DROP TABLE records")
        other.commit()

    assert_told(write(keeper), 503, "database_damaged")
    health = keeper.get("/healthz")
    assert (health.status_code, health.json["ok"], health.json["database"]) == (
        503,
        False,
        "database_damaged",
    )


def test_a_table_that_nobody_has_used_yet_is_missed_by_the_health_check(app, keeper, file):
    assert keeper.get("/healthz").status_code == 200
    with closing(sqlite3.connect(file)) as other:
        other.execute("DROP TABLE nudge_items")
        other.commit()

    assert keeper.get("/healthz").json["database"] == "database_damaged"


def test_half_a_file_is_told(app, keeper, file):
    write(keeper, 200)
    with closing(sqlite3.connect(file)) as other:
        other.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    with file.open("r+b") as cut:
        cut.truncate(file.stat().st_size // 8192 * 4096)
    with app.app_context():
        db.engine.dispose()
    answer, health = write(keeper), keeper.get("/healthz")

    assert_told(answer, 503, "database_damaged")
    assert (health.status_code, health.json["database"]) == (503, "database_damaged")


def test_a_file_that_was_taken_away_under_the_server_is_told(app, keeper, file):
    assert keeper.get("/healthz").status_code == 200
    file.rename(file.with_suffix(".moved"))

    assert keeper.get("/healthz").json["database"] == "database_damaged"
    file.with_suffix(".moved").rename(file)
    assert keeper.get("/healthz").json["database"] == "ok"


@pytest.mark.parametrize(
    ("number", "status", "code"),
    [
        (errno.ENOSPC, 507, "disk_full"),
        (errno.EDQUOT, 507, "disk_full"),
        (errno.EROFS, 503, "database_read_only"),
    ],
)
def test_a_data_folder_that_takes_nothing_is_told(app, browser, monkeypatch, number, status, code):
    def refuse(_handle: int) -> None:
        raise OSError(number, "as the system says it")

    monkeypatch.setattr(probe.os, "fsync", refuse)
    health = browser().get("/healthz")

    assert (health.status_code, health.json["database"], health.json["ok"]) == (status, code, False)


def test_the_health_check_writes_now_and_then_however_often_it_is_asked(app, browser, monkeypatch):
    tries = []
    watched = app.extensions["broodshelf"].probe
    monkeypatch.setattr(watched, "_every_s", 3600.0)
    monkeypatch.setattr(watched, "_try", lambda now_ms: tries.append(now_ms))
    for _ in range(5):
        assert browser().get("/healthz").status_code == 200

    assert len(tries) == 1


def test_the_health_check_leaves_nothing_in_the_data_folder(app, browser, tmp_path):
    before = sorted(path.name for path in tmp_path.iterdir())
    browser().get("/healthz")

    assert sorted(path.name for path in tmp_path.iterdir()) == before


def test_postgresql_is_tried_the_same_way(tmp_path, clock, templates, monkeypatch):
    url = templates.of_an_app("postgresql", tmp_path / "other").replace("postgresql+psycopg", "postgresql")
    settings = {"BROODSHELF_DATA": str(tmp_path / "other"), "BROODSHELF_DATABASE_URL": url}
    made = create_app(from_environment(settings), clock)
    made.extensions["broodshelf"].probe._every_s = 0.0
    client = made.test_client()
    well = client.get("/healthz")
    with made.app_context():
        with db.engine.connect() as other, other.begin():
            monkeypatch.setattr(probe, "WITHIN_MS", SHORT_MS)
            other.exec_driver_sql("LOCK TABLE nudger_state IN ACCESS EXCLUSIVE MODE")
            with made.app_context():
                held = made.extensions["broodshelf"].probe.look(clock.now_ms)
        with db.engine.begin() as other:
            other.exec_driver_sql("DROP TABLE nudge_items")
        lost = client.get("/healthz")
        db.engine.dispose()

    assert (well.status_code, well.json["database"]) == (200, "ok")
    assert held.problem_code == "database_locked"
    assert (lost.status_code, lost.json["database"]) == (503, "database_damaged")
