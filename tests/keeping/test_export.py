"""Export and import: the same shelf comes out again; what is there stays; what is wrong is named.

Longer than 300 lines because reading, writing and refusing share one invented shelf.
"""

from __future__ import annotations

import csv
import json
import stat
import zipfile
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.keeping.shelves import empty_household, insert_records, server, shelves, without_places
from tests.support.households import HAPPENED, NOON_MS, ModelPhone, no_plans

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping import files
from broodshelf.keeping.bringing_in import bring_in, make_household
from broodshelf.keeping.cells import read_cell, write_cell
from broodshelf.keeping.entries import EXPORTED, Entry, Export, gather, instant_ms, instant_text
from broodshelf.model.kinds import KINDS
from broodshelf.records.database import reading, writing
from broodshelf.records.history import read_history
from broodshelf.records.store import Ledger, read_kind, read_record
from broodshelf.rounds.recompute import touched

SHAPES = ("x.json", "x.zip", "x")


def gathered(household_id: str) -> Export:
    with reading() as connection:
        return gather(connection, household_id)


def imported(export: Export, household_id: str | None = None, recompute=no_plans):
    with writing() as connection:
        household_id = household_id or make_household(connection, export, NOON_MS)
        return bring_in(connection, household_id, export.entries, NOON_MS, recompute)


def revision(household_id: str) -> int:
    with writing() as connection:
        return Ledger(connection, household_id).rev


@pytest.fixture
def here(tmp_path):
    with server(tmp_path, "here"):
        yield tmp_path


def small_shelf() -> tuple[str, ModelPhone, str]:
    """A household with one colony that was fed once; return its id, the phone and the feeding's id."""
    household_id = empty_household()
    phone = ModelPhone(household_id)
    colony = phone.write("colony", {"name": "Amber", "species_code": "lasius_niger"})["id"]
    fed = phone.write("feeding", {"colony_id": colony, "happened_at": HAPPENED, "need": "sugar"})["id"]
    phone.sync()
    return household_id, phone, fed


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
    assert fed not in phone.rows, "a deleted feeding came back"
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


def test_logs_of_a_colony_that_the_server_forgot_and_links_to_forgotten_records_are_left_out(here):
    household_id, phone, fed = small_shelf()
    colony = next(row_id for row_id, row in phone.rows.items() if row["kind"] == "colony")
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
    assert words in report.bad[0].why
    assert report.added == {"colony": 1}


def test_one_id_twice_in_a_file_and_an_id_of_another_kind_are_named(here):
    household_id, _phone, fed = small_shelf()
    twice = entry("colony", {"name": "Amber"})
    with writing() as connection:
        report = bring_in(
            connection, household_id,
            [twice, replace(twice, where="row 9"), replace(twice, id=fed, where="row 10")], NOON_MS, no_plans,
        )  # fmt: skip

    assert [(r.where, r.why) for r in report.bad] == [
        ("row 9", "has the same id as row 7"),
        ("row 10", "has the id of a feeding of this shelf"),
    ]


def test_an_export_without_household_or_keeper_makes_no_household(here):
    for kinds in (("person",), ("household",)):
        whole = gathered(empty_household())
        part = replace(whole, entries=tuple(e for e in whole.entries if e.kind in kinds))
        with writing() as connection, pytest.raises(CannotKeep, match="claim the shelf first"):
            make_household(connection, part, NOON_MS)


@pytest.mark.parametrize(
    "content",
    [
        b"", b"\xff\xfe\x00", b"[]", b"{}", b'{"format": 1, "household_id": "me", "records": {}}',
        b'{"format": 99, "household_id": "019dd000-0000-7000-8000-000000000001", "records": {}}',
        b'{"format": 1, "household_id": "019dd000-0000-7000-8000-000000000001", "records": []}',
        b'{"format": 1, "household_id": "019dd000-0000-7000-8000-000000000001", "records": {"wing": []}}',
        b'{"format": 1, "household_id": "019dd000-0000-7000-8000-000000000001", "records": {"colony": {}}}',
        b"[" * 100_000, b"PK\x03\x04 cut off",
    ],
    ids=["empty", "bytes", "list", "nothing", "id", "format", "records", "kind", "rows", "deep", "zip"],
)  # fmt: skip
def test_a_file_that_is_no_export_is_refused_in_words(tmp_path, content):
    (tmp_path / "x").write_bytes(content)

    with pytest.raises(CannotKeep) as caught:
        files.read(tmp_path / "x")
    assert len(str(caught.value)) > 20


@pytest.mark.parametrize(
    ("row", "words"),
    [
        (7, "is not a record"),
        ({"id": "019dd000-0000-7000-8000-000000000001"}, "is not a record"),
        ({"id": "AMBER", "set": {}}, "UUID"),
        ({"id": "019dd000-0000-7000-8000-000000000001", "by": 3, "set": {}}, "UUID"),
        ({"id": "019dd000-0000-7000-8000-000000000001", "made_at": "soon", "set": {}}, "made_at"),
        ({"id": "019dd000-0000-7000-8000-000000000001", "made_at": "2026-05-01T12:00", "set": {}}, "offset"),
        ({"id": "019dd000-0000-7000-8000-000000000001\n", "set": {}}, "UUID"),
        (
            {
                "id": "019dd000-0000-7000-8000-000000000001",
                "by": "019dd000-0000-7000-8000-000000000001\n",
                "set": {},
            },
            "UUID",
        ),
        (
            {"id": "019dd000-0000-7000-8000-000000000001", "made_at": "0001-01-01T00:00Z", "set": {}},
            "between 1970",
        ),
        (
            {"id": "019dd000-0000-7000-8000-000000000001", "set": dict.fromkeys(map(str, range(61)))},
            "60 fields",
        ),
    ],
)
def test_a_record_that_cannot_be_read_is_named(tmp_path, row, words):
    whole = {
        "format": 1,
        "household_id": "019dd000-0000-7000-8000-000000000001",
        "records": {"colony": [row]},
    }
    (tmp_path / "x.json").write_text(json.dumps(whole))

    export, bad = files.read(tmp_path / "x.json")
    assert export.entries == ()
    assert bad[0].where == "colony 1"
    assert words in bad[0].why


@pytest.mark.parametrize(
    ("table", "where", "words"),
    [
        ("id,name,queens\n019dd000-0000-7000-8000-000000000001,Amber,two\n", "colony.csv row 2", "'two' is not a n"),
        ("id,name,queens\n019dd000-0000-7000-8000-000000000001,Amber\n", "colony.csv row 2", "2 cells under 3"),
        ("id,name,gone\n019dd000-0000-7000-8000-000000000001,Amber,maybe\n", "colony.csv row 2", "neither yes nor"),
        ("id,name,interval_days\n019dd000-0000-7000-8000-000000000001,A,{\n", "colony.csv row 2", "not JSON"),
    ],
)  # fmt: skip
def test_a_row_of_a_table_that_cannot_be_read_is_named(tmp_path, table, where, words):
    folder = tmp_path / "x"
    files.write(Export("019dd000-0000-7000-8000-000000000001", ()), folder, NOON_MS)
    (folder / "colony.csv").write_text(table)

    _export, bad = files.read(folder)
    assert bad[0].where == where
    assert words in bad[0].why


@pytest.mark.parametrize("table", ["id,wings\n", "name\n", "id,id\n", 'id,name\n"open\n', "\n"])
def test_a_table_with_wrong_columns_is_refused(tmp_path, table):
    folder = tmp_path / "x"
    files.write(Export("019dd000-0000-7000-8000-000000000001", ()), folder, NOON_MS)
    (folder / "colony.csv").write_text(table)

    with pytest.raises(CannotKeep, match=r"colony\.csv"):
        files.read(folder)


def test_a_text_that_a_spreadsheet_would_run_is_written_as_text_and_read_back(tmp_path):
    signs = ["=", "+", "-", "@", "＝", "＋", "－", "＠", "﹦", "﹢", "﹣", "﹫", "−"]
    spaces = [
        "",
        " ",
        "   ",
        "\t",
        "\r",
        "\n",
        "\r\n",
        "\u00a0",
        "\u3000",
        "\u200b",
        "\ufeff",
        "\x00",
        "\x1b",
    ]
    dangerous = [f"{space}{sign}HYPERLINK(1)" for sign in signs for space in spaces]
    dangerous += ["\tx", "\rx", "\nx", "\x00x", "'=x", "'", "'tis", "' =x"]
    name = KINDS["colony"].fields["name"]
    for text in dangerous:
        assert write_cell(text).startswith("'")
        assert read_cell(write_cell(text), name) == text
    assert read_cell("'tis the season", name) == "'tis the season"  # a keeper's own apostrophe stays


@pytest.mark.parametrize("at_ms", [0, 1, 978_307_200_999, NOON_MS, 7_258_118_399_999])
def test_instants_keep_their_millisecond(at_ms):
    assert instant_ms(instant_text(at_ms)) == at_ms


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
