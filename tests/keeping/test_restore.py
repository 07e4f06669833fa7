"""Restoring over a used server and into an empty one, on both engines: phones give back what the backup lacked."""

from __future__ import annotations

import logging
import resource
import shutil
import sqlite3
from contextlib import contextmanager

import pytest
from tests.support.house import House
from tests.support.world import World

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping.backup import backup, set_aside
from broodshelf.keeping.dumps import load_dump
from broodshelf.people.households import found_household
from broodshelf.records.database import db, reading, writing
from broodshelf.records.store import read_kind
from broodshelf.settings import from_environment


def names_of_households(ids):
    with reading() as connection:
        return [[row.values["name"] for row in read_kind(connection, i, "household")] for i in ids]


def restore_by_command(house, archive):
    house.stop()
    assert main(["restore", str(archive)]) == 0
    house.start()


def test_a_restore_over_a_used_server_can_itself_be_taken_back(house, tmp_path, capsys):
    world = World(house, 2)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    with writing() as connection:
        other, _person = found_household(connection, "Ada", "Another shelf", "UTC", house.now_ms)
    restore_by_command(house, tmp_path / "kept.tar.gz")
    aside = next(house.settings.data.glob("before-restore-*.tar.gz"))
    after = names_of_households([world.household_id, other])
    house.now_ms += 1000
    restore_by_command(house, aside)

    assert after == [["Shelf"], []]
    assert str(aside) in capsys.readouterr().out
    assert names_of_households([world.household_id, other]) == [["Shelf"], ["Another shelf"]]


def programs(folder, names, monkeypatch):
    """A folder with these programs of the machine as the only ones on the path."""
    folder.mkdir()
    for name in names:
        (folder / name).symlink_to(shutil.which(name))
    monkeypatch.setenv("PATH", str(folder))
    return folder


def failing(program, folder):
    """A program that writes down with what it was called and then fails."""
    path = folder / program
    path.write_text(f'''#!/bin/sh
printf "%s\\n" "$@" > "{folder}/{program}.words"
printf "%s" "$PGPASSWORD" > "{folder}/{program}.password"
echo "invented failure" >&2
exit 1
''')
    path.chmod(0o700)


@pytest.mark.parametrize("house", ["postgresql"], indirect=True)
@pytest.mark.parametrize("said", ["pg_dump is not installed", "invented failure"])
@pytest.mark.parametrize("command", ["restore", "household restore"])
def test_nothing_is_restored_where_what_is_there_cannot_be_kept_first(
    house, tmp_path, monkeypatch, capsys, said, command
):
    world, kept = World(house, 1), tmp_path / "kept.tar.gz"
    assert main(["backup", str(kept)]) == 0
    with writing() as connection:
        other, _person = found_household(connection, "Ada", "Another shelf", "UTC", house.now_ms)
    epoch = world.phones[0].meta["epoch"]
    path = programs(tmp_path / "programs", ("psql", "pg_restore"), monkeypatch)
    if said == "invented failure":
        failing("pg_dump", path)
    house.stop()
    status = main([*command.split(), *([world.household_id] if " " in command else ()), str(kept)])
    house.start()

    assert (status, said in capsys.readouterr().err) == (2, True)
    assert names_of_households([world.household_id, other]) == [["Shelf"], ["Another shelf"]]
    world.step("sync", 0)
    assert world.phones[0].meta["epoch"] == epoch


@contextmanager
def files_no_larger_than(size_bytes):
    """As on a disk that is full: no file of this process grows beyond."""
    limits = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size_bytes, limits[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, limits)


def test_a_full_disk_is_no_reason_to_go_on_without_a_copy_and_a_damaged_database_is(tmp_path, templates):
    settings = from_environment({"BROODSHELF_DATA": str(tmp_path / "data")})
    templates.of_an_app("sqlite", settings.data)
    with files_no_larger_than(20_000), pytest.raises(sqlite3.OperationalError):
        set_aside(settings, 1)
    settings.sqlite_file.write_bytes(b"SQLite format 3\0" + bytes(range(256)) * 50)

    assert set_aside(settings, 2) is None


@pytest.mark.parametrize("where", ["u:invented%21@127.0.0.1:1/x", "u@127.0.0.1:1/x?password=invented!"])
def test_the_password_of_the_database_stands_in_no_list_of_processes(tmp_path, monkeypatch, where):
    path = programs(tmp_path / "programs", (), monkeypatch)
    url = f"postgresql+psycopg://{where}"
    settings = from_environment({"BROODSHELF_DATA": str(tmp_path / "data"), "BROODSHELF_DATABASE_URL": url})
    for program, asked in (
        ("pg_dump", lambda: backup(settings, tmp_path / "kept.tar.gz")),
        ("psql", lambda: load_dump(tmp_path / "dump", url)),
    ):
        failing(program, path)
        (path / "pg_restore").symlink_to(shutil.which("true", path="/usr/bin:/bin"))
        with pytest.raises(CannotKeep, match="invented failure"):
            asked()
        (path / "pg_restore").unlink()

        assert "--dbname=postgresql://u@127.0.0.1:1/x\n" in (path / f"{program}.words").read_text()
        assert (path / f"{program}.password").read_text() == "invented!"


def test_phones_give_back_what_the_backup_lacked_over_a_used_server(house, tmp_path):
    world = World(house, 3)
    for step in (["sync", 1], ["log", 0, 0], ["sync", 0]):
        world.step(*step)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    for step in (
        ["log", 0, 0],
        ["found", 1],
        ["sync", 1],
        ["rename", 0, 0],
        ["sync", 0],
        ["log", 2, 0],
        ["sync", 2],
    ):
        world.step(*step)
    before = world.phones[0].meta["epoch"]
    with world.being_restored():
        restore_by_command(house, tmp_path / "kept.tar.gz")
    world.check()  # every acknowledged operation is stored once, all phones alike

    assert world.phones[0].meta["epoch"] != before
    assert len([row for row in world.phones[2].rows.values() if row["kind"] == "note"]) == 2


def test_phones_give_back_what_the_backup_lacked_to_a_new_server_that_knows_no_marks(tmp_path, monkeypatch):
    logging.disable(logging.CRITICAL)
    with House(tmp_path / "old") as house:
        world = World(house, 3)
        monkeypatch.setenv("BROODSHELF_DATA", str(house.settings.data))
        assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
        for step in (["log", 0, 0], ["sync", 0], ["rename", 1, 0], ["sync", 1]):
            world.step(*step)
        with world.being_restored():
            house.stop()  # the old machine is gone
            monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "new"))
            assert main(["restore", str(tmp_path / "kept.tar.gz")]) == 0
            house.settings = from_environment({"BROODSHELF_DATA": str(tmp_path / "new")})
            house.start()
        world.check()

        assert len([row for row in world.phones[1].rows.values() if row["kind"] == "note"]) == 1
        db.engine.dispose()
    logging.disable(logging.NOTSET)
