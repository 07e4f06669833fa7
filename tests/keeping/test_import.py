"""Import: what is there stays, what is missing is added, what is wrong is named."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from tests.keeping.exports import gathered, imported, small_shelf
from tests.keeping.shelves import empty_household
from tests.support.households import HAPPENED, NOON_MS, no_plans

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping.bringing_in import bring_in, make_household
from broodshelf.keeping.entries import Entry
from broodshelf.records.database import reading, writing
from broodshelf.records.history import read_history
from broodshelf.records.store import Ledger, read_kind, read_record
from broodshelf.rounds.recompute import touched


def revision(household_id: str) -> int:
    with writing() as connection:
        return Ledger(connection, household_id).rev


def test_an_import_into_a_used_shelf_adds_what_is_missing_and_changes_nothing_that_is_there(bare_app):
    household_id, phone, fed = small_shelf()
    export = gathered(household_id)
    colony = next(e.id for e in export.entries if e.kind == "colony")
    phone.write("colony", {"name": "Renamed since"}, colony)
    phone.write("feeding", {"gone": True}, fed)
    phone.sync()
    new_note = replace(
        next(e for e in export.entries if e.kind == "feeding"), kind="note",
        id="019dd000-0000-7000-8000-00000000000a",
        values={"colony_id": colony, "happened_at": HAPPENED, "text": "from the export"},
    )  # fmt: skip

    report = imported(replace(export, entries=(*export.entries, new_note)), household_id)
    phone.sync()

    assert report.added == {"note": 1}
    assert report.bad == []
    assert phone.values()[colony]["name"] == "Renamed since"
    assert fed not in phone.rows(), "a deleted feeding came back"
    assert phone.values()[new_note.id]["text"] == "from the export"
    with reading() as connection:
        history = read_history(connection, household_id, new_note.id)
    assert history[0]["op_id"] is not None, "it did not come through an operation"
    assert history[0]["by"] == new_note.by


def test_an_import_into_another_household_keeps_that_households_settings(bare_app):
    household_id, _phone, _fed = small_shelf()
    export = gathered(household_id)
    other = empty_household("Other")

    report = imported(export, other)

    assert report.bad == []
    with reading() as connection:
        assert [r.values["name"] for r in read_kind(connection, other, "household")] == ["Other"]
        assert [r.values["name"] for r in read_kind(connection, other, "colony")] == ["Amber"]


def test_an_import_makes_the_plans_of_what_it_added(bare_app):
    household_id, _phone, _fed = small_shelf()
    other = empty_household("Other")

    imported(gathered(household_id), other, touched)

    with reading() as connection:
        assert len(read_kind(connection, other, "plan")) == 1


def entry(kind: str, values: dict, number: int = 1, where: str = "row 7") -> Entry:
    return Entry(where, kind, f"019dd000-0000-7000-8000-{number:012d}", None, None, values)


NOTE = {"happened_at": HAPPENED, "text": "hello"}


@pytest.mark.parametrize(
    ("bad", "words"),
    [
        (entry("colony", {"name": "x", "wings": 2}), "no field 'wings'"),
        (entry("colony", {"name": "x", "queens": -1}), "queens"),
        (entry("colony", {"queens": 1}), "lacks name"),
        (entry("colony", {}), "lacks name"),
        (entry("note", {**NOTE, "colony_id": "019dd000-0000-7000-8000-0000000000ff"}), "0000000000ff, which"),
        (entry("note", {"text": "hello"}), "lacks colony_id and happened_at"),
        (entry("colony", {"name": "x", "worker_length_mm": float("nan")}), "worker_length_mm"),
        (entry("colony", {"name": "x", "interval_days": {"sugar": float("inf")}}), "interval_days"),
        (entry("note", {**NOTE, "happened_at": "yesterday"}), "happened_at"),
        (entry("colony", {"name": "x", "remark": "long " * 2_000}), "remark"),
        (entry("tasting", {"name": "x", "food_codes": ["y" * 60] * 9_000}), "larger than"),
    ],
)
def test_a_bad_record_is_named_with_its_place_and_reason_and_the_good_ones_still_count(here, bad, words):
    household_id = empty_household()
    good = entry("colony", {"name": "Amber"}, 2, "row 8")

    with writing() as connection:
        report = bring_in(connection, household_id, [bad, good], NOON_MS, no_plans)

    assert [row.where for row in report.bad] == ["row 7"]
    assert words in str(report.bad[0].why)
    assert report.added == {"colony": 1}


def test_one_id_twice_in_a_file_and_an_id_of_another_kind_are_named(here):
    household_id, _phone, fed = small_shelf()
    twice = entry("colony", {"name": "Amber"})
    with writing() as connection:
        report = bring_in(
            connection, household_id,
            [twice, replace(twice, where="row 9"), replace(twice, id=fed, where="row 10")], NOON_MS, no_plans,
        )  # fmt: skip

    assert [(r.where, str(r.why)) for r in report.bad] == [
        ("row 9", "has the same id as row 7"),
        ("row 10", "has the id of a feeding of this shelf"),
    ]


def test_an_export_without_household_or_keeper_makes_no_household(here):
    for kinds in (("person",), ("household",)):
        whole = gathered(empty_household())
        part = replace(whole, entries=tuple(e for e in whole.entries if e.kind in kinds))
        with writing() as connection, pytest.raises(CannotKeep, match="claim the shelf first"):
            make_household(connection, part, NOON_MS)


def test_bad_records_stop_an_import_until_they_are_left_out_on_purpose(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "one"))
    main(["demo"])
    main(["export", str(tmp_path / "x.json")])
    whole = json.loads((tmp_path / "x.json").read_text("utf-8"))
    whole["records"]["colony"][0]["set"]["queens"] = "many"
    gone_bad = whole["records"]["colony"][0]["id"]
    (tmp_path / "x.json").write_text(json.dumps(whole), "utf-8")
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "two"))
    capsys.readouterr()

    assert main(["import", str(tmp_path / "x.json"), "--yes"]) == 1
    said = capsys.readouterr().out
    assert "bad: colony 1: queens" in said
    assert "Nothing was imported" in said
    assert main(["export", str(tmp_path / "y.json")]) == 2  # no household
    assert main(["import", str(tmp_path / "x.json"), "--yes", "--skip-bad"]) == 0
    assert main(["export", str(tmp_path / "y.json")]) == 0
    kept = json.loads((tmp_path / "y.json").read_text("utf-8"))["records"]
    assert len(kept["colony"]) == 4
    assert all(row["set"]["colony_id"] != gone_bad for row in kept["feeding"])


def test_a_record_of_the_registry_that_is_read_back_was_really_stored(here):
    household_id, _phone, fed = small_shelf()
    other = empty_household("Other")
    imported(gathered(household_id), other)
    before = revision(other)
    imported(gathered(household_id), other)

    assert revision(other) == before, "a second import of the same changed something"
    with reading() as connection:
        assert read_record(connection, other, fed).values["need"] == "sugar"
