"""Files of an export: what cannot be read is refused or named, and every text and instant is read as written."""

from __future__ import annotations

import json

import pytest
from tests.support.households import NOON_MS

from broodshelf.errors import CannotKeep
from broodshelf.keeping import files
from broodshelf.keeping.cells import read_cell, write_cell
from broodshelf.keeping.entries import Export, instant_ms, instant_text
from broodshelf.model.kinds import KINDS


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
    assert words in str(bad[0].why)


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
    assert words in str(bad[0].why)


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
