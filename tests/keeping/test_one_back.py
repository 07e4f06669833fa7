"""One household out of a backup of the whole: its phones give back what the backup lacked, the others keep all."""

from __future__ import annotations

import pytest
from tests.support.filled import fill_every_table, read_tables
from tests.support.world import World

from broodshelf.cli import main
from broodshelf.people.households import found_household
from broodshelf.records.database import reading, writing
from broodshelf.records.whole import contents, tables_of_households


@pytest.fixture
def other(house):
    """Another household with a row in every table."""
    with writing() as connection:
        household_id = house.new_id()
        fill_every_table(connection, read_tables(connection), household_id, "Yarrow")
    return household_id


def content_of(household_id):
    with reading() as connection:
        return contents(connection, tables_of_households(), household_id)


def test_its_phones_give_back_what_the_backup_lacked_and_the_others_keep_each_byte(house, other, tmp_path):
    world = World(house, 2)
    for step in (["sync", 1], ["log", 0, 0], ["sync", 0]):
        world.step(*step)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    for step in (["log", 0, 0], ["found", 1], ["sync", 1], ["rename", 0, 0], ["sync", 0]):
        world.step(*step)
    theirs, epoch = content_of(other), world.phones[0].meta["epoch"]
    with world.being_restored():  # the server goes on running
        assert main(["household", "restore", house.household_id, str(tmp_path / "kept.tar.gz")]) == 0
    world.check()  # every acknowledged operation is stored once, all phones alike

    assert world.phones[0].meta["epoch"] != epoch
    assert content_of(other) == theirs


def test_a_picture_that_is_missing_comes_back_and_one_that_is_there_stays(house, tmp_path):
    photos, owner = house.app.extensions["broodshelf"].photos, house.household_id
    for letter in "ab":
        photos.put_drawn(owner, letter * 64, b"kept")
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    photos.forget(owner)
    photos.put_drawn(owner, "a" * 64, b"present")
    assert main(["household", "restore", owner, str(tmp_path / "kept.tar.gz")]) == 0

    assert {letter: photos.read(owner, letter * 64) for letter in "ab"} == {"a": b"present", "b": b"kept"}


def test_a_household_that_the_backup_does_not_have_is_said_and_nothing_changes(house, tmp_path, capsys):
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    with writing() as connection:
        later, _person = found_household(connection, "Ada", "Attic", "UTC", house.now_ms)
    before = content_of(later), content_of(house.household_id)
    assert main(["household", "restore", later, str(tmp_path / "kept.tar.gz")]) == 2

    assert f"it holds {house.household_id} (Shelf)" in capsys.readouterr().err
    assert (content_of(later), content_of(house.household_id)) == before


def test_texts_of_every_sort_come_through_a_dump(house, tmp_path):
    phone = house.phone()
    odd = 'tab\t, line\n, \\backslash \\. "quoted" \\N, ünï, 🐜'
    phone.write("note", {"text": odd, "happened_at": "2026-05-01T12:00:00.000+00:00"}, house.new_id())
    phone.sync()
    before = content_of(house.household_id)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    house.now_ms += 1000
    assert main(["household", "restore", house.household_id, str(tmp_path / "kept.tar.gz")]) == 0

    after = content_of(house.household_id)
    assert {name for name in before if before[name] != after[name]} == {"households", "journal"}
