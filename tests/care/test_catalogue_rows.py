"""Each row of the catalogue's files is of the shape from which the phone's types are written."""

from __future__ import annotations

import copy
import json
from collections.abc import Iterator, Mapping
from typing import Any, Literal, NotRequired, get_args, get_origin, get_type_hints, is_typeddict

import pytest

from broodshelf.care import catalogue
from broodshelf.care.catalogue.rows import CatalogueRows
from broodshelf.model.kinds.words import ORIGINS

SERVED: Mapping[str, Any] = json.loads(json.dumps(catalogue.as_json()))
"""As a phone reads it."""
FROM_FILES = ("species", "default_source", "foods", "vessels", "cautions", "origins")


def misfits(value: Any, hint: Any, at: str) -> Iterator[str]:
    """Yield what does not fit a type: an unknown or a missing key, a word that is not in its list, another type."""
    origin, args = get_origin(hint), get_args(hint)
    if is_typeddict(hint):
        yield from misfits_in_row(value, hint, at)
    elif origin is Literal:
        if value not in args:
            yield f"{at}: {value!r} is none of {args}"
    elif origin in (tuple, list):
        if not isinstance(value, list) or (origin is tuple and len(value) != len(args)):
            yield f"{at}: {value!r} is no {hint}"
            return
        for each, one in zip(value, args if origin is tuple else args * len(value), strict=True):
            yield from misfits(each, one, at)
    elif origin is Mapping:
        for key, each in value.items():
            yield from misfits(key, args[0], at)
            yield from misfits(each, args[1], f"{at}.{key}")
    elif type(value) not in ((int, float) if hint is float else (hint,)):
        yield f"{at}: {value!r} is no {hint.__name__}"


def misfits_in_row(row: Any, shape: type, at: str) -> Iterator[str]:
    """The same of a row: keys that its shape does not have, and those that it has to have."""
    hints = get_type_hints(shape, include_extras=True)
    optional = {name for name, hint in hints.items() if get_origin(hint) is NotRequired}
    needed = hints.keys() - optional if shape.__total__ else set()  # type: ignore[attr-defined]
    yield from (f"{at}: no {name}" for name in sorted(needed - row.keys()))
    for name, value in row.items():
        if name not in hints:
            yield f"{at}: unknown {name}"
        else:
            hint = get_args(hints[name])[0] if name in optional else hints[name]
            yield from misfits(value, hint, f"{at}.{name}")


@pytest.mark.parametrize("part", FROM_FILES)
def test_every_row_is_of_its_shape(part):
    assert SERVED[part]
    assert list(misfits(SERVED[part], get_type_hints(CatalogueRows)[part], part)) == []


def test_what_is_served_is_what_the_shape_names():
    assert SERVED.keys() == get_type_hints(CatalogueRows).keys()
    assert SERVED["origins"].keys() == set(ORIGINS)


def test_a_field_is_told_by_its_form_and_not_by_how_its_name_ends():
    told = SERVED["fields"]
    of = {name: form for form, names in told.items() for name in names}

    assert sum(map(len, told.values())) == len(of)  # one form a name
    assert {of[name] for name in ("condition_until", "paused_until", "resting_since", "use_by")} == {"day"}
    assert {of[name] for name in ("until", "resolved_at")} == {"instant"}
    assert {of[name] for name in ("colony_ids", "helper_photo_id")} == {"record"}
    assert of["night_temp_c"] == "warmth"
    assert not {"remark", "amount", "task_key", "plan"} & of.keys()


@pytest.mark.parametrize(
    ("part", "code", "change", "found"),
    [
        ("foods", "honey", {"keeps": 3}, "foods.honey: unknown keeps"),
        ("foods", "honey", {"need": None}, "foods.honey: no need"),
        ("foods", "honey", {"serves": ["grazer"]}, "foods.honey.serves: 'grazer' is none of"),
        ("species", "atta", {"guild": "grazer"}, "species.atta.guild: 'grazer' is none of"),
        ("species", "atta", {"worker_mm": [2]}, "species.atta.worker_mm: [2] is no tuple[float, float]"),
        ("species", "atta", {"slow": "yes"}, "species.atta.slow: 'yes' is no bool"),
        ("foods", "cricket", {"size": {"huge": {}}}, "foods.cricket.size: 'huge' is none of"),
        ("vessels", "tube_10x70", {"kind": "jar"}, "vessels.tube_10x70.kind: 'jar' is none of"),
        ("origins", "unknown", {"verdict": "maybe"}, "origins.unknown.verdict: 'maybe' is none of"),
    ],
)
def test_the_walk_finds_what_it_is_for(part, code, change, found):
    changed = {**SERVED[part][code], **change}
    row = {name: value for name, value in changed.items() if value is not None}
    rows = {**copy.deepcopy(SERVED[part]), code: row}

    said = list(misfits(rows, get_type_hints(CatalogueRows)[part], part))

    assert any(each.startswith(found) for each in said), said
