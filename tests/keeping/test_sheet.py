"""A keeper's own table: columns mapped, rows read on the household's wall clock, faults named by row."""

from __future__ import annotations

import json
import zoneinfo

import pytest
from tests.keeping.shelves import empty_household, server
from tests.support.households import HAPPENED, NOON_MS, Requester, no_plans

from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping.bringing_in import bring_in
from broodshelf.keeping.sheet import SheetMapping, names_on_shelf, read_mapping, read_sheet
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger, read_kind

VIENNA = zoneinfo.ZoneInfo("Europe/Vienna")
FEEDINGS = SheetMapping(
    "feeding",
    {"colony_id": "Kolonie", "happened_at": "Datum", "need": "Was", "amount": "Menge", "remark": "Notiz"},
    values={"need": {"Zucker": "sugar", "Heimchen": "protein"}},
    constants={"unit": "piece"},
    date_format="%d.%m.%Y %H:%M",
    decimal_comma=True,
)
HEADING = "Datum;Kolonie;Was;Menge;Notiz\n"


@pytest.fixture
def shelf(tmp_path):
    """A household with the colonies Amber (number 1), Birch (2) and two of one name."""
    with server(tmp_path, "sheet"):
        household_id = empty_household()
        phone = Requester(household_id)
        for name, number in (("Amber", 1), ("Birch", 2), ("Twin", 3), ("Twin", 4)):
            phone.write("colony", {"name": name, "number": number})
        phone.sync()
        yield phone


def read(phone, path, text: str | bytes, mapping=FEEDINGS):
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    with reading() as connection:
        names = names_on_shelf(connection, phone.household_id)
    return read_sheet(path, mapping, phone.household_id, VIENNA, names)


def colony(phone, name: str) -> str:
    return next(
        i for i, row in phone.rows().items() if row["kind"] == "colony" and row["set"]["name"] == name
    )


def test_a_row_becomes_a_feeding_in_the_households_time(shelf, tmp_path):
    rows = "03.07.2025 18:30;amber;ZUCKER;1,5;\n\n03.12.2025 18:30;2;protein;2;cold\n"
    entries, bad = read(shelf, tmp_path / "t.csv", HEADING + rows)

    assert bad == []
    assert [dict(e.values) for e in entries] == [
        {"colony_id": colony(shelf, "Amber"), "happened_at": "2025-07-03T18:30:00.000+02:00",
         "need": "sugar", "amount": 1.5, "unit": "piece"},
        {"colony_id": colony(shelf, "Birch"), "happened_at": "2025-12-03T18:30:00.000+01:00",
         "need": "protein", "amount": 2, "unit": "piece", "remark": "cold"},
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("row", "words"),
    [
        ("3 July;Amber;Zucker;1;", "Datum: '3 July' is not written as %d.%m.%Y %H:%M"),
        ("31.02.2025 10:00;Amber;Zucker;1;", "Datum: '31.02.2025 10:00'"),
        ("03.07.2025 18:30;Ambre;Zucker;1;", "Kolonie: no colony on this shelf is called 'Ambre'"),
        ("03.07.2025 18:30;twin;Zucker;1;", "Kolonie: more than one colony on this shelf is called 'twin'"),
        ("03.07.2025 18:30;Amber;Wurst;1;", "Was: 'Wurst' is none of sugar, protein, seeds, leaves"),
        ("03.07.2025 18:30;Amber;Zucker;a lot;", "Menge: 'a lot' is not a number"),
        ("03.07.2025 18:30;Amber;Zucker;nan;", "Menge: 'nan' is not a number"),
        ("03.07.2025 18:30;Amber;Zucker;1;x;y;z", "has 7 cells under 5 columns"),
    ],
)
def test_a_row_that_cannot_be_read_is_named_by_its_number_and_column(shelf, tmp_path, row, words):
    good = "03.07.2025 18:30;Amber;Zucker;1;\n"
    entries, bad = read(shelf, tmp_path / "t.csv", f"{HEADING}{good}{row}\n{good}")

    assert [b.where for b in bad] == ["row 3"]
    assert words in str(bad[0].why)
    assert len(entries) == 2


def test_what_only_the_schema_knows_is_named_by_row_too(shelf, tmp_path):
    rows = (
        "03.07.2025 18:30;Amber;Zucker;-5;\n03.07.1825 18:30;Amber;Zucker;1;\n03.07.2025 18:30;;Zucker;1;\n"
    )
    entries, bad = read(shelf, tmp_path / "t.csv", HEADING + rows)
    assert bad == []
    with writing() as connection:
        report = bring_in(connection, shelf.household_id, entries, NOON_MS, no_plans)

    assert [row.where for row in report.bad] == ["row 2", "row 3", "row 4"]
    assert "amount" in str(report.bad[0].why)
    assert "from 2000 to 2100" in str(report.bad[1].why)
    assert str(report.bad[2].why) == "lacks colony_id"


def test_the_same_table_twice_adds_nothing_and_two_equal_rows_are_two_feedings(shelf, tmp_path):
    row = "03.07.2025 18:30;Amber;Zucker;1;\n"
    added = []
    for _ in range(2):
        entries, _bad = read(shelf, tmp_path / "t.csv", HEADING + row + row)
        with writing() as connection:
            added.append(
                bring_in(connection, shelf.household_id, entries, NOON_MS, no_plans).added["feeding"]
            )

    assert added == [2, 0]


@pytest.mark.parametrize(
    ("cell", "date_format", "happened"),
    [
        ("2025-07-03", None, "2025-07-03T12:00:00.000+02:00"),  # a day alone: noon
        ("2025-07-03 07:15", None, "2025-07-03T07:15:00.000+02:00"),
        ("2025-07-03T07:15:00-04:00", None, "2025-07-03T07:15:00.000-04:00"),  # its own offset stays
        ("07/03/25", "%m/%d/%y", "2025-07-03T12:00:00.000+02:00"),
    ],
)
def test_dates_are_read_as_written(shelf, tmp_path, cell, date_format, happened):
    mapping = SheetMapping(
        "note", {"colony_id": "c", "happened_at": "when", "text": "t"}, date_format=date_format
    )
    entries, bad = read(shelf, tmp_path / "t.csv", f"c,when,t\nAmber,{cell},hello\n", mapping)

    assert bad == []
    assert entries[0].values["happened_at"] == happened


def test_days_flags_and_colonies_of_the_keepers_own_can_come_from_a_table(shelf, tmp_path):
    mapping = SheetMapping(
        "colony",
        {"name": "Name", "founded_on": "Since", "stings": "Stings", "guild": "Eats"},
        values={"guild": {"grain": "harvester"}},
        date_format="%d/%m/%Y",
    )
    entries, bad = read(
        shelf, tmp_path / "t.csv", "Name\tSince\tStings\tEats\nOak\t01/02/2024\tx\tGrain\n", mapping
    )

    assert bad == []
    assert dict(entries[0].values) == {
        "name": "Oak", "founded_on": "2024-02-01", "stings": True, "guild": "harvester",
    }  # fmt: skip


@pytest.mark.parametrize(
    ("table", "words"),
    [
        (b"Datum;Kolonie\n", "0 columns are called 'Was'"),
        (b"Datum;Kolonie;Was;Was;Menge;Notiz\n", "2 columns are called 'Was'"),
        (b"", "0 columns"),
        ("Datum;Käfig\n".encode("latin-1"), "UTF-8"),
        (b'Datum;"Kolonie\n', "cannot be read"),
    ],
)
def test_a_table_that_does_not_fit_its_mapping_is_refused_whole(shelf, tmp_path, table, words):
    with pytest.raises(CannotKeep, match=words):
        read(shelf, tmp_path / "t.csv", table)


@pytest.mark.parametrize(
    ("mapping", "words"),
    [
        ("nonsense", "is not a mapping"),
        ('kind = "wing"', "choose one of"),
        ('kind = "household"', "choose one of"),
        ('kind = "person"', "choose one of"),  # nobody becomes a keeper by a table
        ('kind = "note"\n[columns]\nwings = "w"', "no field 'wings'"),
        ('kind = "colony"\n[columns]\ngone = "w"\nname = "n"', "no field 'gone'"),
        ('kind = "note"\n[columns]\ntext = "t"', "also needs colony_id and happened_at"),
        ('kind = "note"\ncolumns = 3', "are tables"),
        ('kind = "note"\nvalues = {need = 3}', "are tables"),
        ('kind = "note"\ndate_format = 3', "date_format"),
        ('kind = "note"\ndialect = 3', "'dialect' is not known"),
    ],
)
def test_a_mapping_that_cannot_be_meant_is_refused(tmp_path, mapping, words):
    (tmp_path / "m.toml").write_text(mapping)
    with pytest.raises(CannotKeep, match=words):
        read_mapping(tmp_path / "m.toml")


def test_the_command_names_each_bad_row_and_imports_nothing_until_yes(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "data"))
    main(["demo"])
    table = tmp_path / "notes.csv"
    main(["export", str(tmp_path / "x")])
    name = _first_colony(tmp_path)
    table.write_text(f"who,when,what\n{name},2026-05-01,hello\nNobody,2026-05-01,hi\n")
    options = ["--kind", "note", "--map", "colony_id=who", "--map", "happened_at=when", "--map", "text=what"]
    command = ["import", str(table), *options]
    capsys.readouterr()

    assert main(command) == 1
    said = capsys.readouterr().out
    assert "bad: row 3: who: no colony on this shelf is called 'Nobody'" in said
    assert "would add note: 1" in said
    assert "Nothing was imported" in said
    assert main([*command, "--yes"]) == 1
    assert "Nothing was imported" in capsys.readouterr().out
    assert main([*command, "--yes", "--skip-bad"]) == 0
    assert "added note: 1" in capsys.readouterr().out
    assert main([*command, "--yes", "--skip-bad"]) == 0
    assert "1 are on this shelf already" in capsys.readouterr().out


def _first_colony(folder) -> str:
    import csv

    with (folder / "x" / "colony.csv").open(encoding="utf-8-sig", newline="") as table:
        return next(csv.DictReader(table))["name"]


def test_the_example_of_the_guide_works(shelf, tmp_path):
    from pathlib import Path

    guide = (Path(__file__).parents[2] / "docs" / "export-format.md").read_text("utf-8")
    (tmp_path / "m.toml").write_text(guide.split("```toml\n")[1].split("```")[0], "utf-8")
    table = guide.split("```csv\n")[1].split("```")[0]

    entries, bad = read(shelf, tmp_path / "t.csv", table, read_mapping(tmp_path / "m.toml"))
    assert len(entries) == 2
    assert [row.where for row in bad] == ["row 4"]
    with writing() as connection:
        report = bring_in(connection, shelf.household_id, entries, NOON_MS, no_plans)
        assert report.bad == []
        assert len(read_kind(connection, shelf.household_id, "feeding")) == 2
    assert HAPPENED not in [e.values["happened_at"] for e in entries]


@pytest.mark.parametrize("house", ["sqlite"], indirect=True)
def test_a_table_of_a_household_in_a_zone_that_is_not_known_here_is_read_in_utc(house, tmp_path):
    colony = house.phone()
    made = colony.write("colony", {"name": "Amber"})
    house.post(colony, json.dumps(colony.request()).encode())
    with writing() as connection:
        ledger = Ledger(connection, house.household_id)
        ledger.put(house.household_id, "household", {"zone": "Atlantis/Poseidonis"}, now_ms=house.now_ms)
        ledger.flush()
    table = tmp_path / "t.csv"
    table.write_text("colony,at,words\nAmber,2025-07-03 18:30,calm\n")
    columns = ("colony_id=colony", "happened_at=at", "text=words")
    asked = [word for column in columns for word in ("--map", column)]

    assert main(["import", str(table), "--kind", "note", *asked, "--yes"]) == 0
    with reading() as connection:
        [note] = read_kind(connection, house.household_id, "note")
    assert (note.colony_id, note.values["happened_at"]) == (made["id"], "2025-07-03T18:30:00.000+00:00")
