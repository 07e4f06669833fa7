"""The short way through validation never decides what marshmallow would decide otherwise."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from marshmallow import ValidationError

from broodshelf.model.kinds import KINDS
from broodshelf.model.kinds.words import FORMS, OUTCOMES, UNITS
from broodshelf.model.needs import NEEDS
from broodshelf.records.quick.validation import NOT_SURE, quick_check
from broodshelf.records.schemas import field_of

FIELDS = [(kind, name) for kind, spec in KINDS.items() for name in spec.fields]
near_right = st.one_of(
    st.sampled_from([*NEEDS, *FORMS, *UNITS, *OUTCOMES, "2026-05-01", "2026-02-31", "18:30", "24:00", "Europe/Vienna"]),
    st.sampled_from(
        [
            "019dd000-0000-7000-8000-000000000001", "019DD000-0000-7000-8000-000000000001",
            "019dd000-0000-7000-8000-000000000001\n", "2026-05-01T12:00:00.000+02:00", "2026-05-01T12:00:00",
            "2026-05-01\n", "18:30\n", "1999-12-31T23:59:59Z", "1e3", "-0", True, False, 0, 1, -1, 1.0, 0.25, 10**14,
            10**400, float("nan"), float("inf"), -0.0, {}, [], [1], ["18:30"], {"protein": 3}, {"protein": -1}, b"x",
        ]
    ),
    st.integers(), st.floats(), st.text(max_size=90), st.integers(60, 4100).map("x".__mul__),
    st.lists(st.integers(-1, 8), max_size=9), st.booleans(),
)  # fmt: skip


@settings(max_examples=1500, deadline=None)
@given(which=st.sampled_from(FIELDS), value=near_right)
def test_what_the_quick_check_is_sure_of_is_what_marshmallow_loads(which, value):
    kind, name = which
    spec = KINDS[kind].fields[name]
    quickly = quick_check(spec.form)(value)
    try:
        loaded = field_of(spec).deserialize(value)
    except ValidationError:
        assert quickly is NOT_SURE
        return
    if quickly is not NOT_SURE:
        assert (quickly, type(quickly)) == (loaded, type(loaded))


@pytest.mark.parametrize(
    ("kind", "name", "value", "loaded"),
    [
        ("feeding", "need", "protein", "protein"),
        ("feeding", "amount", 1, 1.0),
        ("feeding", "happened_at", "2026-05-01T12:00:00.000+02:00", "2026-05-01T12:00:00.000+02:00"),
        (
            "feeding",
            "colony_id",
            "019dd000-0000-7000-8000-000000000001",
            "019dd000-0000-7000-8000-000000000001",
        ),
        ("feeding", "suggested", True, True),
        ("count", "workers", 40, 40),
        ("note", "text", "hello", "hello"),
        ("colony", "founded_on", "2026-05-01", "2026-05-01"),
    ],
)
def test_what_a_phone_logs_most_takes_the_short_way(kind, name, value, loaded):
    quickly = quick_check(KINDS[kind].fields[name].form)(value)

    assert (quickly, type(quickly)) == (loaded, type(loaded))
