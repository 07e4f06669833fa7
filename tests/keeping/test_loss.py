"""A lost database is told and not replaced by a new shelf; a backup can be looked at; an empty one is refused."""

from __future__ import annotations

import io
import json
import logging
import tarfile

import pytest
from tests.support.house import House
from tests.support.world import World

from broodshelf.app import create_app
from broodshelf.cli import main
from broodshelf.errors import DatabaseLost
from broodshelf.records.database import db


def empty_database(house) -> None:
    """Lose what the database held: SQLite's file is cut to nothing, PostgreSQL's tables are dropped."""
    from sqlalchemy import text

    if house.settings.sqlite_file is not None:
        house.stop()
        for path in house.settings.data.glob("broodshelf.sqlite3*"):
            path.unlink()
        house.settings.sqlite_file.touch()
        return
    with db.engine.begin() as connection:
        connection.execute(text("DROP SCHEMA public CASCADE"))
        connection.execute(text("CREATE SCHEMA public"))
    house.stop()


def test_an_empty_database_beside_marks_is_refused_with_what_to_do_and_a_restore_mends_it(
    house, tmp_path, capsys
):
    world = World(house, 2)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    empty_database(house)
    for command in (["serve"], ["nudger"], ["pair"], ["demo"], ["migrate"]):
        assert main(command) == 2
        assert "broodshelf restore FILE" in capsys.readouterr().err
    assert main(["restore", str(tmp_path / "kept.tar.gz")]) == 0
    house.start()
    world.check()


def test_a_database_that_is_missing_beside_marks_makes_no_new_file(tmp_path):
    logging.disable(logging.CRITICAL)
    with House(tmp_path / "data") as house:
        World(house, 2)
        house.stop()
        for path in house.settings.data.glob("broodshelf.sqlite3*"):
            path.unlink()
        with pytest.raises(DatabaseLost, match="missing"):
            create_app(house.settings)
        assert not house.settings.sqlite_file.exists()

        house.marks.put_away(house.now_ms)  # what 'broodshelf serve --anew' does first
        house.start()
        assert [path.name for path in house.settings.data.glob("marks.*")] == [f"marks.before-{house.now_ms}"]
    logging.disable(logging.NOTSET)


def test_a_backup_without_a_household_is_not_put_back(house, tmp_path, capsys):
    from sqlalchemy import delete

    from broodshelf.records.tables import households

    with db.engine.begin() as connection:
        connection.execute(delete(households))
    kept = tmp_path / "kept.tar.gz"
    assert main(["backup", str(kept)]) == 0
    assert main(["backup", "--verify", str(kept)]) == 2
    assert "holds no household" in capsys.readouterr().err
    house.stop()
    assert main(["restore", str(kept)]) == 2
    assert "nothing was changed" in capsys.readouterr().err
    house.start()


def rewritten(source, target, change) -> None:
    """Copy an archive with each member's content passed through ``change(name, content)``."""
    with tarfile.open(source) as old, tarfile.open(target, "w:gz") as new:
        for member in old.getmembers():
            content = change(member.name, old.extractfile(member).read())
            member.size = len(content)
            new.addfile(member, io.BytesIO(content))


def test_verifying_says_what_a_backup_holds(house, tmp_path, capsys):
    folder = house.settings.data / "photos" / house.household_id
    folder.mkdir(parents=True)
    (folder / f"{'a' * 64}.jpg").write_bytes(b"a picture")
    kept = tmp_path / "kept.tar.gz"
    assert main(["backup", str(kept)]) == 0
    before = kept.read_bytes()
    assert main(["backup", "--verify", str(kept)]) == 0

    said = capsys.readouterr().out
    assert "is whole" in said
    assert "1 households, 2 records, 1 pictures" in said
    assert kept.read_bytes() == before


@pytest.mark.parametrize("part", ["database", "picture", "cut", "manifest"])
def test_verifying_finds_what_is_damaged(house, tmp_path, capsys, part):
    folder = house.settings.data / "photos" / house.household_id
    folder.mkdir(parents=True)
    (folder / f"{'a' * 64}.jpg").write_bytes(b"a picture")
    kept, bad = tmp_path / "kept.tar.gz", tmp_path / "bad.tar.gz"
    assert main(["backup", str(kept)]) == 0

    def change(name, content):
        if part == "database" and name == "database":
            return content[:-100] + b"?" * 100
        if part == "picture" and name.endswith(".jpg"):
            return content[:-1] + b"?"
        if part == "manifest" and name == "manifest.json":
            return json.dumps([1]).encode()
        return content

    rewritten(kept, bad, change)
    if part == "cut":
        bad.write_bytes(kept.read_bytes()[:-200])

    assert main(["backup", "--verify", str(bad)]) == 2
    assert "bad.tar.gz" in capsys.readouterr().err
