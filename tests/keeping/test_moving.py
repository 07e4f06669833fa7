"""SQLite to PostgreSQL and back: phones go on as if nothing had happened; a killed move goes on where it was."""

from __future__ import annotations

import logging
import os
import re
import signal

import pytest
from sqlalchemy import make_url, text
from tests.support.filled import fill_every_table, read_tables
from tests.support.forked_server import forker
from tests.support.house import House
from tests.support.machines import wait_for
from tests.support.templates import SQLITE_FILE
from tests.support.world import World

from broodshelf.cli import main
from broodshelf.demo.fill import fill
from broodshelf.errors import CannotKeep
from broodshelf.keeping.moving import Step, move
from broodshelf.keeping.scratch import engine_of
from broodshelf.records.database import db, reading, writing
from broodshelf.records.whole import HOME, contents, other_tables, tables_of_households
from broodshelf.settings import from_environment

ROOMS = [*tables_of_households(), *other_tables()]


@pytest.fixture
def other(house, request, tmp_path):
    """The URL of an empty database of the other engine."""
    if house.settings.sqlite_file is None:
        return f"sqlite:///{tmp_path / 'other.sqlite3'}"
    return request.getfixturevalue("postgresql_cluster").new_database()


def all_rows():
    with reading() as connection:
        return contents(connection, ROOMS)


def clear_home() -> None:
    """Leave out what was filled into the tables of what lies in a folder: no server wrote it."""
    with writing() as connection:
        for table in HOME:
            connection.execute(table.delete())


def start_on(house: House, url: str) -> None:
    house.settings = from_environment(
        {"BROODSHELF_DATA": str(house.settings.data), "BROODSHELF_DATABASE_URL": url}
    )
    house.start()


def test_a_full_shelf_and_its_phones_move_there_and_back(house, other, capsys, monkeypatch):
    world = World(house, 2)
    for step in (["found", 0], ["sync", 0], ["sync", 1], ["log", 0, 0]):
        world.step(*step)
    with writing() as connection:
        filled = fill(connection, house.now_ms, "https://shelf.example.org")
        fill_every_table(connection, read_tables(connection), house.new_id(), "Yarrow")
    clear_home()
    photos = house.app.extensions["broodshelf"].photos
    filled.keep_pictures(photos)
    drawn = {name: photos.read(filled.household_id, name) for name in photos.names(filled.household_id)}
    first, before = house.settings.database_url, all_rows()
    epoch, cursor = world.phones[0].meta["epoch"], world.phones[0].meta["cursor"]
    house.stop()
    assert main(["move-database", "--to", other]) == 0
    said = capsys.readouterr().out
    with engine_of(other) as engine, engine.connect() as connection:
        assert contents(connection, ROOMS) == before
    start_on(house, other)
    world.step("sync", 0)  # what was logged before goes to where the shelf is now
    assert world.phones[0].meta["epoch"] == epoch
    assert world.phones[0].meta["cursor"] != cursor
    for step in (["log", 1, 0], ["sync", 1]):
        world.step(*step)
    there = all_rows()
    house.stop()
    monkeypatch.setenv("BROODSHELF_DATABASE_URL", other)
    assert main(["move-database", "--to", first]) == 0
    start_on(house, first)

    assert all_rows() == there
    photos = house.app.extensions["broodshelf"].photos
    assert drawn
    assert {n: photos.read(filled.household_id, n) for n in photos.names(filled.household_id)} == drawn
    world.check()
    assert world.phones[1].meta["epoch"] == epoch
    assert "4 of 4: " in said
    assert re.search(rf"^  records +{before['records'].count} += {before['records'].count}$", said, re.M)


def connections(url: str) -> int:
    """How many are connected to a database. Asked from beside it: a connection that just closed still counts there."""
    there = make_url(url)
    if there.get_backend_name() == "sqlite":
        return 0
    beside = there.set(database="postgres").render_as_string(hide_password=False)
    with engine_of(beside) as engine, engine.connect() as connection:
        query = text("SELECT count(*) FROM pg_stat_activity WHERE datname = :name")
        return connection.scalar(query, {"name": there.database})


@pytest.mark.long
def test_a_move_that_is_killed_goes_on_where_it_was(house, other, tmp_path):
    with writing() as connection:
        tables = read_tables(connection)
        for number in range(40):
            fill_every_table(connection, tables, f"00000000-0000-7000-8000-{number:012d}", f"Yarrow{number}")
    clear_home()
    before = all_rows()
    house.stop()
    environment = {
        **os.environ,
        "BROODSHELF_DATA": str(house.settings.data),
        "BROODSHELF_DATABASE_URL": house.settings.database_url,
    }
    said = tmp_path / "said"
    os.mkfifo(said)  # it is heard at once
    moving = forker().fork("broodshelf.cli", ["move-database", "--to", other], environment, said)
    with said.open() as lines:
        next(line for line in lines if line.startswith("7 of 41"))
        moving.kill()
    assert moving.wait(60) == -signal.SIGKILL
    for url in (house.settings.database_url, other):
        wait_for(lambda url=url: connections(url) == 0)  # PostgreSQL hears a little later that it is gone
    steps: list[Step] = []
    move(house.settings, other, steps.append)

    passed = [step.number for step in steps if step.was_there]
    assert 7 in passed
    assert len(passed) < 41
    assert passed == list(range(1, len(passed) + 1))
    with engine_of(other) as engine, engine.connect() as connection:
        assert contents(connection, ROOMS) == before
    house.start()


def test_what_changed_here_since_a_move_was_broken_off_is_copied_anew(house, other):
    with writing() as connection:
        tables = read_tables(connection)
        later = house.new_id()
        fill_every_table(connection, tables, later, "Yarrow")
    clear_home()

    def broken_off(step: Step) -> None:
        raise KeyboardInterrupt

    house.stop()
    with pytest.raises(KeyboardInterrupt):
        move(house.settings, other, broken_off)
    house.start()
    phone = house.phone()
    phone.write("colony", {"name": "Amber"}, house.new_id())
    phone.sync()
    before = all_rows()
    house.stop()
    move(house.settings, other, lambda _: None)
    with engine_of(other) as engine, engine.connect() as connection:
        assert contents(connection, ROOMS) == before
    house.start()


def test_a_running_server_and_another_shelf_stop_a_move(house, other, tmp_path):
    house.count_rows()  # its pool keeps the connection
    if house.settings.sqlite_file is None:
        with pytest.raises(CannotKeep, match="Somebody else is connected"):
            move(house.settings, other, lambda _: None)
    else:
        with pytest.raises(CannotKeep, match="stop it first, then move the database"):
            move(house.settings, other, lambda _: None)
    logging.disable(logging.CRITICAL)
    house.stop()
    with House(tmp_path / "stranger") as stranger:
        theirs = f"sqlite:///{stranger.settings.data / SQLITE_FILE}"
        db.engine.dispose()
    with pytest.raises(CannotKeep, match="households that this one does not know"):
        move(house.settings, theirs, lambda _: None)
    house.start()
