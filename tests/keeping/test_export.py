"""Export: the same shelf comes out of an empty server again, private and whole."""

from __future__ import annotations

import csv
import json
import stat
import zipfile

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.keeping.exports import gathered, imported, small_shelf
from tests.keeping.shelves import insert_records, server, shelves, without_places
from tests.support.households import HAPPENED, NOON_MS

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping import files
from broodshelf.keeping.entries import EXPORTED
from broodshelf.model.kinds import KINDS
from broodshelf.records.database import writing

SHAPES = ("x.json", "x.zip", "x")


@settings(
    max_examples=12, deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow, HealthCheck.data_too_large],
)  # fmt: skip
@given(shelf=shelves(), shape=st.sampled_from(SHAPES))
def test_whatever_a_shelf_holds_comes_out_of_an_empty_server_again(tmp_path_factory, shelf, shape):
    folder = tmp_path_factory.mktemp("round")
    household_id, keeper_id, records = shelf
    with server(folder, "first"):
        insert_records(household_id, keeper_id, records)
        first = gathered(household_id)
    files.write(first, folder / shape, NOON_MS)

    read, bad = files.read(folder / shape)
    assert bad == []
    assert without_places(read) == first
    assert len(first.entries) == len(records)
    with server(folder, "second"):
        report = imported(read)
        assert report.bad == []
        assert gathered(household_id) == first
        again = imported(read, household_id)
        assert not again.added
        assert again.present.total() == len(records)


def test_each_kind_names_only_kinds_that_come_before_it():
    for place, kind in enumerate(EXPORTED):
        for spec in KINDS[kind].fields.values():
            assert spec.refers_to is None or spec.refers_to in EXPORTED[:place]


def test_logs_of_a_colony_that_the_server_forgot_and_links_to_forgotten_records_are_left_out(here):
    household_id, phone, fed = small_shelf()
    colony = next(row_id for row_id, row in phone.rows().items() if row["kind"] == "colony")
    check = phone.write(
        "check", {"colony_id": colony, "happened_at": HAPPENED, "feeding_id": fed, "outcome": "all"}
    )
    phone.sync()
    with writing() as connection:
        from sqlalchemy import delete

        from broodshelf.records.tables import records

        connection.execute(delete(records).where(records.c.id == fed))  # as the purge after 400 days does

    entry = next(e for e in gathered(household_id).entries if e.id == check["id"])
    assert entry.values["outcome"] == "all"
    assert "feeding_id" not in entry.values

    with writing() as connection:
        connection.execute(delete(records).where(records.c.id == colony))
    assert "check" not in {e.kind for e in gathered(household_id).entries}


@pytest.mark.parametrize("shape", SHAPES)
def test_an_export_is_private_and_a_used_folder_is_left_alone(here, shape):
    household_id, _phone, _fed = small_shelf()
    target = here / shape
    files.write(gathered(household_id), target, NOON_MS)

    assert stat.S_IMODE(target.stat().st_mode) & 0o077 == 0
    if shape == "x":
        with pytest.raises(CannotKeep, match="not empty"):
            files.write(gathered(household_id), target, NOON_MS)
        with (target / "colony.csv").open(encoding="utf-8-sig", newline="") as table:
            assert [row["name"] for row in csv.DictReader(table)] == ["Amber"]
    if shape == "x.zip":
        assert set(zipfile.ZipFile(target).namelist()) == {"manifest.json", *(f"{k}.csv" for k in EXPORTED)}


@pytest.mark.long
def test_the_commands_move_a_shelf_to_another_server(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "one"))
    assert main(["export", str(tmp_path / "x.json")]) == 2  # nobody has claimed it yet
    assert main(["demo"]) == 0
    assert main(["export", str(tmp_path / "x.json")]) == 0
    assert main(["export", str(tmp_path / "x.zip")]) == 0

    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "two"))
    capsys.readouterr()
    assert main(["import", str(tmp_path / "x.zip")]) == 0
    assert "would add colony: 5" in capsys.readouterr().out
    assert main(["export", str(tmp_path / "y.json")]) == 2  # the dry run made nothing
    assert main(["import", str(tmp_path / "x.zip"), "--yes"]) == 0
    assert main(["export", str(tmp_path / "y.json")]) == 0
    assert main(["pair"]) == 0
    assert "For Mira (invented):" in capsys.readouterr().out
    first, second = (json.loads((tmp_path / name).read_text("utf-8")) for name in ("x.json", "y.json"))
    assert first["records"] == second["records"]
