"""Values that a phone never sends and an intruder does, and JSON texts that no encoder of ours would write."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from hypothesis import strategies as st


@dataclass(frozen=True)
class Raw:
    """JSON as it stands, right or wrong."""

    text: str


@dataclass(frozen=True)
class Thing:
    """Something of the asking household by name (tests/support/two_houses/); ``others_x`` is the other's x."""

    name: str


@dataclass(frozen=True)
class Heard:
    """The last value that an answer gave under this name: a code, a link, a secret."""

    name: str


@dataclass(frozen=True)
class At:
    """An instant so many days from the server's present."""

    days: float


ID = "019dd000-0000-7000-8000-000000000001"
DEEP = "[" * 30 + "]" * 30
VERY_DEEP = "[" * 6_000 + "]" * 6_000

TEXTS = (
    "", " ", "\n", "\x00", "a\x00b", "\x7f", "\ud800", "x\udfff", "😀" * 40, "e\u0301" * 30, "\u202eabc", "\ufeff",
    "＝1+1", "=1+1", "<script>alert(1)</script>", "' OR 1=1 --", "%00", "%s%n{0}", "../../etc/passwd", "null",
    "x" * 300, "x" * 5_000, "x" * 70_000,
    ID.upper(), f"{ID}\n", f" {ID}", f"{ID}\x00", ID.replace("-", ""), "00000000-0000-0000-0000-000000000000",
    "9999-12-31", "0001-01-01", "2026-02-30", "2026-05-01\n", "٢٠٢٦-٠٥-٠١", "2026-5-1", "10000-01-01", "-0001-01-01",
    "9999-12-31T23:59:59.999+00:00", "0001-01-01T00:00:00+14:00", "2026-05-01T24:00:00Z", "2026-05-01T12:00:60Z",
    "2026-05-01T12:00:00", "2026-05-01T12:00:00.000+00:00:00.000001", "2026-W18-5T12:00:00+00:00",
    "2026-05-01T12:00:00.000+23:59", "2100-12-31T23:59:59.999-23:59", "24:00", "08:60", "８:00",
    "Europe/Vienna\n", "Europe/../Vienna", "posixrules", "localtime", "Factory", "UTC\x00",
)  # fmt: skip
NUMBERS = (
    0, -1, 1, 2**31, 2**53 + 1, 2**63, -(2**63) - 1, 10**30, 10**400, -(10**400), 0.1, -0.0, 1e308, -1e308, 5e-324,
    7_258_118_400_001, 253_402_300_800_000,
)  # fmt: skip
RAWS = (
    "NaN", "Infinity", "-Infinity", "1e999", "-1e999", "1E400", "0." + "0" * 500 + "1", "01", "+1", "1.", "tru", "'x'",
    '"\\ud800"', '"\\udc00\\ud800"', '"\\u0000"', '"\t"', '{"a":1,"a":2}', "[1,]", DEEP, VERY_DEEP, "", "/**/1",
)  # fmt: skip
OTHERS: tuple[Any, ...] = (
    None, True, False, [], {}, [None], [[]], [None] * 50, {"": None}, {"a": {"b": {"c": []}}}, ["x"] * 1_000,
    [{}], {"gone": True}, [True, 1, "1", 1.0, None],
)  # fmt: skip

odd = st.one_of(
    st.sampled_from(TEXTS),
    st.sampled_from(NUMBERS),
    st.sampled_from(OTHERS),
    st.sampled_from(RAWS).map(Raw),
    st.text(max_size=20),
    st.integers(),
    st.floats(allow_nan=False, allow_infinity=False),
)
"""One odd value; shrinks to the empty text."""


def rarely(
    this: st.SearchStrategy[Any], that: st.SearchStrategy[Any], once_in: int
) -> st.SearchStrategy[Any]:
    """Return ``that``, and once in so many draws ``this``. Not at an end of the range: ends are drawn more often."""
    return st.integers(0, once_in - 1).flatmap(lambda n: this if n == once_in // 2 else that)


def written(value: Any) -> str:
    """Return JSON text with whatever raw parts are in it. Numbers of any length and half characters are written."""
    if isinstance(value, Raw):
        return value.text
    if isinstance(value, Mapping):
        return (
            "{" + ",".join(f"{json.dumps(str(name))}:{written(inner)}" for name, inner in value.items()) + "}"
        )
    if isinstance(value, list | tuple):
        return "[" + ",".join(map(written, value)) + "]"
    return json.dumps(value)


def from_schema(
    schema: Mapping[str, Any], parts: Mapping[str, Any], name: str = ""
) -> st.SearchStrategy[Any]:
    """Return values for a schema of the OpenAPI document: most of them good, some odd, at any depth.

    ``parts`` are the document's named schemas; ``name`` is the field's, from which an id is guessed.
    """
    good = good_value(schema, parts, name)
    return rarely(odd, good, 14)


def good_value(schema: Mapping[str, Any], parts: Mapping[str, Any], name: str) -> st.SearchStrategy[Any]:
    """Return values that the schema takes; what is inside them may be odd."""
    if "$ref" in schema:
        return good_value(parts[schema["$ref"].rpartition("/")[2]], parts, name)
    for word in ("anyOf", "oneOf"):
        if word in schema:
            rest = {key: value for key, value in schema.items() if key != word}
            shared = rest.get("properties", {})
            every = [
                {**rest, **one, "properties": {**shared, **one.get("properties", {})}} for one in schema[word]
            ]
            return st.one_of([good_value(each, parts, name) for each in every])
    if "const" in schema:
        return st.just(schema["const"])
    if "enum" in schema:
        return st.sampled_from([value for value in schema["enum"] if value is not None])
    kind = schema.get("type", "string")
    kind = kind[0] if isinstance(kind, list) else kind
    return {
        "object": _object, "array": _array, "string": _string, "integer": _number, "number": _number,
        "boolean": lambda *_: st.booleans(),
    }[kind](schema, parts, name)  # fmt: skip


def _object(schema: Mapping[str, Any], parts: Mapping[str, Any], _name: str) -> st.SearchStrategy[Any]:
    fields = schema.get("properties", {})
    if not fields:
        values = schema.get("additionalProperties")
        inner = good_value(values, parts, "") if isinstance(values, dict) and values else odd
        return st.dictionaries(st.sampled_from(["sugar", "protein", "water", "x"]), inner, max_size=3)
    needed = set(schema.get("required", ()))
    made = {name: from_schema(inner, parts, name) for name, inner in fields.items()}
    optional = sorted(set(made) - needed)

    always = [name for name in made if name in needed]
    # made once: to make and check what draws costs more than to draw
    left_out, added = (rarely(st.just(True), st.just(False), once_in) for once_in in (25, 40))
    which = st.sampled_from(always)
    besides = st.lists(st.sampled_from(optional), max_size=5, unique=True)
    strange = st.sampled_from(["", "x", "gone", "__proto__", "\ud800", "a" * 200])

    @st.composite
    def build(draw: st.DrawFn) -> dict[str, Any]:
        names = [*always]
        if names and draw(left_out):
            names.remove(draw(which))
        if optional:
            names += draw(besides)
        found = {name: draw(made[name]) for name in names}
        if draw(added):
            found[draw(strange)] = draw(odd)
        return found

    return build()


def _array(schema: Mapping[str, Any], parts: Mapping[str, Any], name: str) -> st.SearchStrategy[Any]:
    item = from_schema(schema.get("items", {}), parts, name.removesuffix("s"))
    return st.lists(item, min_size=schema.get("minItems", 0), max_size=min(schema.get("maxItems", 3), 4))


def _number(schema: Mapping[str, Any], _parts: Mapping[str, Any], _name: str) -> st.SearchStrategy[Any]:
    low, high = schema.get("minimum", -1_000), schema.get("maximum", 1_000)
    if schema.get("type") == "integer" or (
        isinstance(schema.get("type"), list) and "integer" in schema["type"]
    ):
        return st.integers(int(low), int(high))
    return st.one_of(st.integers(int(low), int(high)), st.floats(low, high, allow_nan=False))


def _string(schema: Mapping[str, Any], _parts: Mapping[str, Any], name: str) -> st.SearchStrategy[Any]:
    pattern, form = schema.get("pattern", ""), schema.get("format", "")
    if pattern.startswith("^[0-9a-f]{8}") or "[0-9a-f]{8}-" in pattern:
        return ids(name.removesuffix("_id"))
    if form == "date":
        return st.sampled_from(
            ["2026-04-01", "2026-05-01", "2026-05-02", "2026-05-20", "2028-02-29", "2099-12-31"]
        )
    if form == "date-time":
        return st.floats(-40, 40).map(At)
    if pattern:
        return st.from_regex(pattern, fullmatch=True)
    return st.text(
        st.characters(codec="utf-8"),
        min_size=schema.get("minLength", 0),
        max_size=max(schema.get("minLength", 0), min(schema.get("maxLength", 30), 30)),
    )


THINGS = (
    "colony", "hidden_colony", "deleted_colony", "vessel", "place", "lot", "tasting", "rule", "feeding", "water",
    "photo", "check", "fault", "count", "boost", "climate", "move", "note", "later",
    "stand_in_feeding", "deleted_feeding", "person", "stand_in_person", "pass", "ended_pass", "revoked_pass",
    "household",
    "others_colony", "others_feeding", "others_person", "others_pass", "others_household",
)  # fmt: skip


def ids(name: str) -> st.SearchStrategy[Any]:
    """Return ids: of that thing, of any other thing of either household, one made before, or one that nobody has."""
    known = [Thing(name)] if name in THINGS else []
    return st.sampled_from([*known * 12, *map(Thing, THINGS), Heard("id"), ID])
