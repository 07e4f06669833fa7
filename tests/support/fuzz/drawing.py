"""What is drawn: runs of requests to every address of the OpenAPI document, mostly good and often odd."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any, NamedTuple

from hypothesis import strategies as st
from tests.support.fuzz.pictures import pictures
from tests.support.fuzz.steps import NEWCOMER, Ask, Picture, Step, Tick, Wait
from tests.support.odd import (
    TEXTS,
    THINGS,
    At,
    Heard,
    Thing,
    from_schema,
    good_value,
    ids,
    odd,
    rarely,
)
from tests.support.two_houses import ROLES

WRAPS = ("", "gzip", "cut", "doubled", "utf-16", "bom", "list", "nothing")
CONTENT_TYPES = (
    "application/json; charset=utf-8", "application/json; charset=nonsense", "application/json;charset=utf-16",
    "text/plain",
    "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "image/jpeg", "", "\x7f", "a" * 300,
)  # fmt: skip
HEADERS = (
    ("Accept-Encoding", "gzip"), ("Accept-Encoding", "gzip;q=nan, br;q=1e400"), ("If-None-Match", '"' * 50),
    ("If-Modified-Since", "yesterday"), ("Range", "bytes=0-0,5-2"), ("Range", "bytes=-99999999999999999999"),
    ("Origin", "null"), ("Origin", "http://127.0.0.1:8080"), ("Sec-Fetch-Site", "none"), ("X-Forwarded-For", "a, b\t"),
    ("Forwarded", "for=x"), ("Authorization", "Bearer \xff"), ("Authorization", "Bearer"), ("Content-Encoding", "gzip"),
    ("Cookie", "broodshelf_session=\xff; =; broodshelf_session=" + "A" * 43), ("Host", "elsewhere.example.org"),
    ("X-HTTP-Method-Override", "DELETE"), ("Expect", "100-continue"), ("Accept", "text/html"),
)  # fmt: skip
CURSORS = ("0.all", "5.all.3", "9" * 60 + ".all", ".", "1.all.٣", 7)
CODES = (
    "claim", "way_back", "old_claim", "pairing_code", "pass_code", "early_pass_code", "ended_pass_code", "mail_code",
    "pass_secret", "feed", "pass_feed", "replaced_feed", "delivery", "others_pass_code", "others_pairing_code",
)  # fmt: skip

roles = st.sampled_from(
    ["keeper"] * 14
    + ["stand_in"] * 7
    + [NEWCOMER] * 4
    + ["other_keeper"] * 2
    + ["former_stand_in"] * 2
    + list(ROLES)
)
"""Shrinks to the keeper."""
secrets = st.sampled_from(
    [*map(Thing, CODES), Heard("code"), Heard("secret"), Heard("token"), Heard("delivery_id")]
)


def steps(made: Mapping[str, Any]) -> st.SearchStrategy[list[Step]]:
    """Return runs of requests to every address of an OpenAPI document."""
    parts = made["components"]["schemas"]
    asks = [
        _asks(path, method, operation, parts)
        for path, item in made["paths"].items()
        for method, operation in item.items()
    ]
    # by number, because one_of would flatten what is inside and draw each address as often as all syncs
    often = [_syncs(made)] * 8 + [_any_of(asks)] * 8
    seldom = [
        _strange(),
        st.builds(Picture, roles, st.sampled_from(sorted(pictures()))),
        st.sampled_from([0.001, 0.3, 1.0, 3.0, 12.0, 45.0, 500.0, -1.0, -20.0]).map(Wait),
        st.just(Tick()),
    ]
    return st.lists(_any_of([*often, *seldom]), min_size=1, max_size=14)


def _any_of(these: list[st.SearchStrategy[Any]]) -> st.SearchStrategy[Any]:
    """Return what draws by one of these; they are made once: to make and check them costs more than to draw."""
    return st.sampled_from(these).flatmap(lambda one: one)


def _asks(
    path: str, method: str, operation: Mapping[str, Any], parts: Mapping[str, Any]
) -> st.SearchStrategy[Ask]:
    pieces = [
        _parameter(piece[1:-1], operation) if piece.startswith("{") else st.just(piece)
        for piece in re.split(r"(\{[^}]+\})", path)
        if piece
    ]
    body: st.SearchStrategy[Any] = st.none()
    for kind, content in operation.get("requestBody", {}).get("content", {}).items():
        if kind == "application/json":
            body = from_schema(content["schema"], parts)
    ways = st.builds(
        _Way,
        st.integers(0, 11),
        st.sampled_from(WRAPS),
        st.sampled_from(CONTENT_TYPES),
        st.sampled_from(HEADERS),
    )
    return st.builds(
        _ask, roles, st.just(method.upper()), st.tuples(*pieces), body.map(_with_secrets), secrets, ways
    )


def _parameter(name: str, operation: Mapping[str, Any]) -> st.SearchStrategy[Any]:
    known = next(each["schema"] for each in operation["parameters"] if each["name"] == name)
    good = (
        st.sampled_from(known["enum"]) if "enum" in known
        else ids(name.removesuffix("_id")) if name.endswith("_id")
        else secrets
    )  # fmt: skip
    return rarely(st.sampled_from(TEXTS[:40]), good, 8)


class _Secret:
    """The place of a code or secret in a body."""


def _with_secrets(body: Any) -> Any:
    """Codes and secrets are texts to the schema; most of them should be some that there are."""
    if not isinstance(body, dict):
        return body
    names = ("code", "secret", "collect_secret", "pairing_id", "delivery_id")
    return {
        name: _Secret() if name in names and isinstance(value, str) else value for name, value in body.items()
    }


class _Way(NamedTuple):
    """How a request is odd, 1 to 3, or not at all; and what it would be like in each of these ways."""

    odd: int
    wrap: str
    content_type: str
    header: tuple[str, str]


def _ask(role: str, method: str, path: tuple[Any, ...], body: Any, secret: Any, way: _Way) -> Ask:
    if isinstance(body, dict):
        heard = ("collect_secret", "pairing_id")
        body = {
            name: value if not isinstance(value, _Secret) else Heard(name) if name in heard else secret
            for name, value in body.items()
        }
    return Ask(
        role, method, path, body,
        wrap=way.wrap if way.odd == 1 else "",
        content_type=way.content_type if way.odd == 2 else "application/json",
        headers=(way.header,) if way.odd == 3 else (),
    )  # fmt: skip


def _syncs(made: Mapping[str, Any]) -> st.SearchStrategy[Ask]:
    """Round trips whose operations are drawn from the grammar of kinds and fields."""
    parts = made["components"]["schemas"]
    kinds = parts["Operation"]["oneOf"]
    shared = parts["Operation"]["properties"]
    each = _any_of([_operation(one["title"], one["properties"]["set"], shared, parts) for one in kinds])
    operation = rarely(odd, each, 40)
    return st.builds(
        lambda role, ops, cursor, limit, schema: Ask(
            role, "POST", ("/api/sync",),
            {"device": Thing("my_device"), "epoch": Heard("epoch"), "cursor": cursor, "schema": schema,
             "device_time": 0, "ops": ops, "limit": limit},
        ),
        roles,
        st.lists(operation, max_size=6),
        rarely(st.sampled_from(CURSORS), st.sampled_from([None, Heard("cursor")]), 8),
        st.sampled_from([1000, 1, 2000, 3]),
        rarely(st.sampled_from([0, 2, "1"]), st.just(1), 30),
    )  # fmt: skip


def _operation(
    kind: str, values: Mapping[str, Any], shared: Mapping[str, Any], parts: Mapping[str, Any]
) -> st.SearchStrategy[Any]:
    whole, some = _whole(kind, values, parts), from_schema(values, parts)
    usual = {
        "op_id": st.just(Thing("new_id")),
        "kind": st.just(kind),
        "made_at": st.just(Thing("now")),
        "n": st.just(1),
        "base_rev": rarely(st.sampled_from([5, 10**6]), st.just(0), 12),
        "base_epoch": st.just(Heard("epoch")),
        "adopt": rarely(st.just(True), st.just(False), 8),
    }
    new = {**usual, "id": st.just(Thing("new_id")), "set": whole}
    known = {
        **usual,
        "id": rarely(ids(kind), st.just(Thing(kind if kind in THINGS else "new_id")), 4),
        "set": some,
    }
    twisted = _any_of(
        [
            st.fixed_dictionaries({**new, name: from_schema(shared[name], parts, name)})
            for name in sorted(shared)
        ]
    )
    made = st.fixed_dictionaries(new)
    good = _any_of([made, made, st.fixed_dictionaries(known)])
    return rarely(twisted, good, 15)


def _whole(kind: str, values: Mapping[str, Any], parts: Mapping[str, Any]) -> st.SearchStrategy[Any]:
    """Return fields that make a record, with a few more, some of them odd."""
    fields = values["properties"]
    needed = values["x-a-new-record-needs"]
    good = {name: _usual(fields[name], parts, name) for name in needed}
    more = sorted(
        set(fields)
        - set(needed)
        - {"gone", "possible_repeat", "role", "pass_id", "revoked_at_ms", "confirmed"}
    )

    needs = st.fixed_dictionaries(good)
    besides = st.lists(st.sampled_from(more), max_size=4, unique=True)
    each = {name: from_schema(fields[name], parts, name) for name in more}

    @st.composite
    def build(draw: st.DrawFn) -> dict[str, Any]:
        names = draw(besides) if more else []
        return {**draw(needs), **{name: draw(each[name]) for name in names}}

    return build()


def _usual(schema: Mapping[str, Any], parts: Mapping[str, Any], name: str) -> st.SearchStrategy[Any]:
    """Return what a required field mostly holds; odd values come from the fields beside it."""
    mostly: dict[str, st.SearchStrategy[Any]] = {
        "colony_id": st.just(Thing("colony")),
        "place_id": st.just(Thing("place")),
        "happened_at": st.floats(-9, 0.5).map(At),
        "until": st.floats(0, 2).map(At),
        "zone": st.sampled_from(["UTC", "Europe/Vienna", "Pacific/Apia"]),
        "colony_ids": st.just([Thing("colony")]),
    }
    usual = mostly[name] if name in mostly else good_value(schema, parts, name)
    return rarely(from_schema(schema, parts, name), usual, 10)


def _strange() -> st.SearchStrategy[Ask]:
    """Requests to nowhere, and verbs that nobody has."""
    pieces = st.lists(
        st.sampled_from(
            ["/", "//", "/api", "/static/", "..", "%2e%2e", "%00", "%ff", "%0d%0a", "?x=%ff", "a" * 3000]
        ),
        max_size=4,
    )
    verbs = st.sampled_from(["GET", "POST", "PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "TRACE", "FOO"])
    return st.builds(lambda role, verb, path: Ask(role, verb, ("/", *path), {}), roles, verbs, pieces)
