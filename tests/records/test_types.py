"""What enters is judged once and whole: ids, days, instants, lists and texts of every kind of record."""

from __future__ import annotations

import pytest
from marshmallow import ValidationError

from broodshelf.model.kinds import KINDS, forms
from broodshelf.records.quick.validation import NOT_SURE, quick_check
from broodshelf.records.schemas import check_fields, field_of
from broodshelf.records.types import happened_ms, is_sha256, is_uuid

ID = "019dd000-0000-7000-8000-000000000001"
FIELDS = [(kind, name) for kind, spec in KINDS.items() if spec.group != "derived" for name in spec.fields]
DAYS = [(kind, name) for kind, name in FIELDS if isinstance(KINDS[kind].fields[name].form, forms.Day)]
INSTANTS = [(kind, name) for kind, name in FIELDS if isinstance(KINDS[kind].fields[name].form, forms.Instant)]
LISTS = [(kind, name) for kind, name in FIELDS if isinstance(KINDS[kind].fields[name].form, forms.ListOf)]
FORMED = {
    "id": ("vessel", ID, KINDS["colony"].fields["vessel_id"]),
    "hash": ("photo", "0" * 64, KINDS["photo"].fields["sha256"]),
    "wall time": ("household", "18:30", KINDS["household"].fields["quiet_from"]),
    "day": ("colony", "2026-05-01", KINDS["colony"].fields["founded_on"]),
    "instant": ("note", "2026-05-01T18:30:00.000+02:00", KINDS["note"].fields["happened_at"]),
    "choice": ("feeding", "protein", KINDS["feeding"].fields["need"]),
    "zone": ("household", "Europe/Vienna", KINDS["household"].fields["zone"]),
}


@pytest.mark.parametrize("name", FORMED)
@pytest.mark.parametrize("more", ["\n", "\r\n", "\0", " ", "\u2028", "x"])
def test_nothing_may_stand_before_or_after_what_has_a_form(name, more):
    _, right, spec = FORMED[name]
    assert field_of(spec).deserialize(right) == right

    for wrong in (right + more, more + right):
        assert quick_check(spec.form)(wrong) is NOT_SURE
        with pytest.raises(ValidationError):
            field_of(spec).deserialize(wrong)


def test_an_id_or_a_hash_that_ends_in_a_line_break_is_none():
    assert is_uuid(ID)
    assert not is_uuid(f"{ID}\n")
    assert is_sha256("a" * 64)
    assert not is_sha256("a" * 64 + "\n")


@pytest.mark.parametrize("digits", ["２０２６-05-01", "2026-05-0١"])
def test_digits_of_other_scripts_make_no_day(digits):
    assert check_fields("colony", {"founded_on": digits})[1] is not None


@pytest.mark.parametrize(("kind", "name"), DAYS)
@pytest.mark.parametrize(
    "day", ["9999-12-31", "2101-01-01", "1969-12-31", "0001-01-01", "2026-02-31", "2025-02-29"]
)
def test_no_day_lies_beyond_the_ends_or_outside_the_calendar(kind, name, day):
    assert check_fields(kind, {name: day})[1].field == name


@pytest.mark.parametrize(("kind", "name"), DAYS)
@pytest.mark.parametrize("day", ["1970-01-01", "2100-12-31", "2024-02-29"])
def test_the_ends_themselves_are_days(kind, name, day):
    assert check_fields(kind, {name: day}) == ({name: day}, None)


@pytest.mark.parametrize(("kind", "name"), INSTANTS)
@pytest.mark.parametrize(
    "instant",
    [
        "9999-12-31T23:59:59-12:00", "2101-01-01T00:00:00Z", "1999-12-31T23:59:59Z", "0001-01-01T00:00:00+14:00",
        "2026-W18-5T12:00:00Z", "20260501T120000Z", "2026-05-01 12:00:00Z", "2026-02-30T12:00:00Z",
        "2026-05-01T12:00:00", "2026-05-01T12:00:00+02:00:30",
    ],
)  # fmt: skip
def test_no_instant_lies_beyond_the_ends_or_in_a_form_that_no_phone_writes(kind, name, instant):
    assert check_fields(kind, {name: instant})[1].field == name


def test_what_an_older_server_stored_can_still_be_read():
    assert happened_ms("2199-12-31T23:59:59Z") == 7_258_118_399_000  # date -u -d 2199-12-31T23:59:59Z +%s
    assert happened_ms("2026-05-01T12:00:00.5Z") == 1_777_636_800_500  # as date(1) says, and half a second


@pytest.mark.parametrize(("kind", "name"), LISTS)
def test_no_list_takes_null(kind, name):
    assert check_fields(kind, {name: [None]})[1].field == name


def test_there_are_days_instants_and_lists_to_judge():
    assert len(DAYS) >= 13
    assert len(INSTANTS) >= 12
    assert len(LISTS) >= 7
