"""Restoring over a used server and into an empty one, on both engines: phones give back what the backup lacked."""

from __future__ import annotations

import logging

from tests.support.house import House
from tests.support.world import World

from broodshelf.cli import main
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
