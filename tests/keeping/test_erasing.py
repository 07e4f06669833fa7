"""A household is erased with everything: every table, every file, the next backup; the other one keeps each byte."""

from __future__ import annotations

import json
import tarfile
from pathlib import Path

import pytest
from sqlalchemy import select, text
from tests.support.filled import fill_every_table, read_tables
from tests.support.house import House

from broodshelf.cli import main
from broodshelf.keeping.scratch import opened_backup
from broodshelf.records.database import db, metadata, reading, writing
from broodshelf.records.photo_files import PhotoFiles
from broodshelf.records.tables import households
from broodshelf.records.whole import HOME, contents, other_tables, tables_of_households

MARK = "Wormwood"
"""Stands in every text of the household that goes, and nowhere else."""
NOBODYS = {"attempts", "vendor_pauses", "nudger_state", "builds", "taken", "server_notes"}


@pytest.fixture
def leaving(house: House) -> str:
    """A second household with a row in every table, a picture, a mark and something that was ended."""
    with writing() as connection:
        household_id = house.new_id()
        fill_every_table(connection, read_tables(connection), household_id, MARK)
        if connection.dialect.name == "sqlite":  # there it lies in the data folder
            for table in HOME:
                connection.execute(table.delete())
    for owner in (household_id, house.household_id):
        photos_of(house).put_drawn(owner, "a" * 64, owner.encode())
        house.marks.note(owner, 1, house.new_id())
        house.revocations.add("device", owner, house.new_id(), house.now_ms)
    return household_id


def photos_of(house: House) -> PhotoFiles:
    made: PhotoFiles = house.app.extensions["broodshelf"].photos
    return made


def content_of(household_id: str):
    with reading() as connection:
        return contents(connection, tables_of_households(), household_id)


def files_of(data: Path, household_id: str) -> dict[str, bytes]:
    return {
        file.relative_to(data).as_posix(): file.read_bytes()
        for file in sorted(data.rglob("*"))
        if file.is_file() and household_id in file.as_posix()
    }


def naming(*wanted: str) -> list[str]:
    """Say in which columns of which tables any of these stands."""
    found = []
    with reading() as connection:
        for table in metadata.sorted_tables:
            for row in connection.execute(select(table)).mappings():
                found += [f"{table.name}.{n}" for n, v in row.items() if any(w in str(v) for w in wanted)]
    return found


def test_the_second_household_is_in_every_table_of_the_schema(house, leaving):
    with reading() as connection:
        empty = [
            name
            for name, content in contents(connection, metadata.sorted_tables).items()
            if not content.count
        ]
        whose = {name: content.count for name, content in content_of(leaving).items()}

    assert set(empty) <= {table.name for table in HOME}
    assert set(whose.values()) == {1}
    assert set(whose) | {table.name for table in (*other_tables(), *HOME)} == set(metadata.tables)


def test_nothing_of_an_erased_household_is_left_and_the_other_keeps_each_byte(house, leaving, capsys):
    data = house.settings.data
    before = content_of(house.household_id), files_of(data, house.household_id)
    assert main(["household", "delete", leaving]) == 1
    assert "1 records" in capsys.readouterr().out
    assert content_of(leaving)["records"].count == 1  # without --yes nothing happens
    assert main(["household", "delete", leaving, "--yes"]) == 0

    assert {content.count for content in content_of(leaving).values()} == {0}
    # what tries and pauses are counted by is no household's: it is forgotten by its time
    assert {name.partition(".")[0] for name in naming(MARK)} <= NOBODYS
    assert {name.partition(".")[0] for name in naming(leaving)} <= {"endings"}  # that it was erased
    assert photos_of(house).names(leaving) == []
    assert files_of(data, leaving) == {}
    lines = [json.loads(line) for line in (data / "revoked.jsonl").read_text().splitlines()]
    assert {line["what"] for line in lines if line["household_id"] == leaving} == {"household"}
    assert (content_of(house.household_id), files_of(data, house.household_id)) == before


def test_the_next_backup_and_the_file_of_the_database_hold_nothing_of_it(house, leaving, tmp_path):
    with writing() as connection:
        for table in sorted(NOBODYS):
            connection.execute(text(f"DELETE FROM {table}"))
    assert main(["household", "delete", leaving, "--yes"]) == 0
    assert main(["backup", str(tmp_path / "next.tar.gz")]) == 0
    with tarfile.open(tmp_path / "next.tar.gz") as archive:
        packed = {m.name: archive.extractfile(m).read() for m in archive if m.isreg()}

    assert [name for name, body in packed.items() if MARK.encode() in body] == []
    assert [name for name in packed if leaving in name] == []
    assert [n for n, body in packed.items() if leaving.encode() in body] == ["data/revoked.jsonl"]
    if (file := house.settings.sqlite_file) is not None:
        db.engine.dispose()
        assert MARK.encode() not in file.read_bytes()


def in_backup(kept: Path, household_id: str) -> tuple[dict[str, int], list[str]]:
    """Open a backup as the commands do; return the household's rows by table, and the names of its pictures.

    A dump of PostgreSQL is packed, so that looking for a text in its bytes would find nothing, whatever is in it.
    """
    with opened_backup(kept, kept.parent) as (connection, folder):
        found = contents(connection, tables_of_households(), household_id)
    return {name: content.count for name, content in found.items()}, sorted(files_of(folder, household_id))


def test_a_backup_holds_every_row_of_a_household_before_it_is_erased_and_none_after(house, leaving, tmp_path):
    before, after = tmp_path / "before.tar.gz", tmp_path / "after.tar.gz"
    assert main(["backup", str(before)]) == 0
    rows, _ = in_backup(before, leaving)
    assert {name for name, count in rows.items() if count != 1} <= {table.name for table in HOME}
    assert main(["household", "delete", leaving, "--yes"]) == 0
    assert main(["backup", str(after)]) == 0

    assert in_backup(after, leaving) == (dict.fromkeys(rows, 0), [])
    house.stop()
    assert main(["restore", str(after)]) == 0
    house.start()
    assert {content.count for content in content_of(leaving).values()} == {0}
    assert {name.partition(".")[0] for name in naming(leaving)} <= {"endings"}  # that it was erased
    assert {name.partition(".")[0] for name in naming(MARK)} <= NOBODYS
    assert photos_of(house).names(leaving) == []
    assert photos_of(house).read(house.household_id, "a" * 64) == house.household_id.encode()
    assert {
        count for name, count in in_backup(after, house.household_id)[0].items() if name == "households"
    } == {1}


def test_an_older_backup_does_not_bring_it_back_but_household_restore_does(house, leaving, tmp_path):
    kept = tmp_path / "kept.tar.gz"
    assert main(["backup", str(kept)]) == 0
    before = content_of(leaving)
    house.now_ms += 1000
    assert main(["household", "delete", leaving, "--yes"]) == 0
    house.stop()
    assert main(["restore", str(kept)]) == 0
    house.start()

    with reading() as connection:
        assert connection.scalars(select(households.c.id)).all() == [house.household_id]
    assert files_of(house.settings.data, leaving) == {}

    house.now_ms += 1000
    assert main(["household", "restore", leaving, str(kept)]) == 0
    house.stop()
    house.start()  # and it stays
    after = content_of(leaving)
    assert {name for name in before if before[name] != after[name]} == {"households", "journal"}
    assert photos_of(house).read(leaving, "a" * 64) == leaving.encode()
    assert f"marks/{leaving}.json" in files_of(house.settings.data, leaving)


def test_an_unknown_household_is_said(house, capsys):
    assert main(["household", "delete", house.new_id(), "--yes"]) == 2
    assert "'broodshelf household list' shows" in capsys.readouterr().err
