"""Random requests against the whole app, as everybody, in sequences; what must hold after each of them.

A run is a list of steps that hypothesis draws from the OpenAPI document and cuts down when one breaks something.
Each run begins with the same two households. Nothing here knows what a right answer is, only what no answer may be:
an error of the server, a request without end, an exception that was swallowed, JSON that is none.
"""

from __future__ import annotations

import gc
import gzip
import hashlib
import io
import logging
import math
import re
import signal
import time
from collections import Counter
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from types import FrameType
from typing import Any
from urllib.parse import quote

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st
from PIL import Image
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
    written,
)
from tests.support.openapi import document
from tests.support.two_houses import DAY_MS, ROLES, TwoHouses, Visitor

from broodshelf.app import create_nudger
from broodshelf.records.ids import uuid7

LONGEST_S = 30
"""A request that takes longer hangs. So long, because other work may share the machine."""
ALLOWED = (503, 507)
RUNS_A_ROUND = 40
MOST_GROWTH_MIB = 48
"""More than the caches of statements and schemas take; a leak of 3 kB a request would show in 20,000."""
NEWCOMER = "newcomer"
"""Whoever signed in last within the run."""


@dataclass(frozen=True)
class Ask:
    """One request; ``path`` and ``body`` may hold things by name, put in when it is made."""

    role: str
    method: str
    path: tuple[Any, ...]
    body: Any = None
    wrap: str = ""
    content_type: str = "application/json"
    headers: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Picture:
    """A picture record whose hash is right, then the picture."""

    role: str
    name: str


@dataclass(frozen=True)
class Wait:
    """The clock goes on, or back."""

    days: float


@dataclass(frozen=True)
class Tick:
    """The nudger does what is due."""


Step = Ask | Picture | Wait | Tick


class Hangs(BaseException):
    """A request did not come back."""


# -- what is drawn ------------------------------------------------------------------------------------

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
    often = [_syncs(made)] * 8 + [st.sampled_from(asks).flatmap(lambda each: each)] * 8
    seldom = [
        _strange(),
        st.builds(Picture, roles, st.sampled_from(sorted(pictures()))),
        st.sampled_from([0.001, 0.3, 1.0, 3.0, 12.0, 45.0, 500.0, -1.0, -20.0]).map(Wait),
        st.just(Tick()),
    ]
    each = st.sampled_from([*often, *seldom]).flatmap(lambda one: one)
    return st.lists(each, min_size=1, max_size=14)


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
    return st.builds(
        _ask, roles, st.just(method.upper()), st.tuples(*pieces), body.map(_with_secrets), secrets,
        st.integers(0, 11), st.sampled_from(WRAPS), st.sampled_from(CONTENT_TYPES), st.sampled_from(HEADERS),
    )  # fmt: skip


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


def _ask(
    role: str,
    method: str,
    path: tuple[Any, ...],
    body: Any,
    secret: Any,
    how: int,
    wrap: str,
    kind: str,
    header: Any,
) -> Ask:
    if isinstance(body, dict):
        heard = ("collect_secret", "pairing_id")
        body = {
            name: value if not isinstance(value, _Secret) else Heard(name) if name in heard else secret
            for name, value in body.items()
        }
    return Ask(
        role, method, path, body,
        wrap=wrap if how == 1 else "",
        content_type=kind if how == 2 else "application/json",
        headers=(header,) if how == 3 else (),
    )  # fmt: skip


def _syncs(made: Mapping[str, Any]) -> st.SearchStrategy[Ask]:
    """Round trips whose operations are drawn from the grammar of kinds and fields."""
    parts = made["components"]["schemas"]
    kinds = parts["Operation"]["oneOf"]
    shared = parts["Operation"]["properties"]
    each = st.sampled_from(
        [_operation(one["title"], one["properties"]["set"], shared, parts) for one in kinds]
    ).flatmap(lambda one: one)
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
    twisted = st.sampled_from(sorted(shared)).flatmap(
        lambda name: st.fixed_dictionaries({**new, name: from_schema(shared[name], parts, name)})
    )
    good = st.sampled_from([new, new, known]).flatmap(st.fixed_dictionaries)
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

    @st.composite
    def build(draw: st.DrawFn) -> dict[str, Any]:
        names = draw(st.lists(st.sampled_from(more), max_size=4, unique=True)) if more else []
        return {
            **draw(st.fixed_dictionaries(good)),
            **{name: draw(from_schema(fields[name], parts, name)) for name in names},
        }

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


# -- pictures -----------------------------------------------------------------------------------------


@cache
def pictures() -> dict[str, bytes]:
    """Return pictures by what is wrong with them."""
    good = _jpeg((640, 480))
    wide = io.BytesIO()
    Image.new("L", (5_500, 5_500)).save(wide, "JPEG", quality=1)
    flat = io.BytesIO()
    Image.new("1", (6_000, 6_000)).save(flat, "PNG")
    return {
        "good": good,
        "progressive": _jpeg((1_000, 800), progressive=True),
        "cut": good[: len(good) // 2],
        "head only": good[:30],
        "broken tables": good[:200] + b"\xff" * 100 + good[300:],
        "broken orientation": _jpeg(
            (64, 64), exif=b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\xff\xff\xff\xff"
        ),
        "broken notes": _jpeg((64, 64), exif=b"Exif\0\0MM\0*\xff\xff\xff\xff" + b"\xff" * 60),
        "many pixels": wide.getvalue(),
        "bomb of another format": flat.getvalue()[:299_000],
        "other format": b"GIF89a" + b"\x01" * 60,
        "nothing": b"",
        "too large": b"\xff\xd8\xff" + b"\0" * 300_000,
        "text": b"<svg xmlns='http://www.w3.org/2000/svg'/>",
    }


def _jpeg(size: tuple[int, int], **options: Any) -> bytes:
    out = io.BytesIO()
    Image.effect_noise(size, 60).convert("RGB").save(out, "JPEG", quality=40, **options)
    return out.getvalue()


# -- how it is played ---------------------------------------------------------------------------------


@dataclass
class Fuzz:
    """Plays runs against two households and looks at every answer. ``seen`` counts requests and statuses."""

    houses: TwoHouses
    seen: Counter[str] = field(default_factory=Counter)
    slowest_s: float = 0.0
    slowest: str = ""

    def __post_init__(self) -> None:
        self.drawn = steps(document(self.houses.app))
        self.nudger = create_nudger(self.houses.app)
        self.swallowed = _Swallowed()

    def search(self, examples: int, with_seed: int, *, shorten: bool = True) -> None:
        """Draw and play so many runs; raises what the shortest breaking run raises, or the first one found."""

        @seed(with_seed)
        @settings(
            max_examples=examples, deadline=None, database=None, suppress_health_check=list(HealthCheck),
            phases=(Phase.generate, Phase.shrink) if shorten else (Phase.generate,), report_multiple_bugs=False,
        )  # fmt: skip
        @given(self.drawn)
        def runs(run: list[Step]) -> None:
            self.play(run)

        runs()

    def search_until(self, requests: int, with_seed: int, longest_s: float = math.inf) -> float:
        """Search until so many requests were made or so much time is over.

        Returns by how many MiB this process grew after a quarter of the requests.
        """
        ends = time.monotonic() + longest_s
        warm = 0.0
        rounds = 0
        while self.seen["requests"] < requests and time.monotonic() < ends:
            self.search(RUNS_A_ROUND, with_seed + rounds)
            rounds += 1
            if not warm and self.seen["requests"] >= requests / 4:
                warm = resident_mib()
        return resident_mib() - warm if warm else 0.0

    def play(self, run: list[Step]) -> None:
        """Play one run from the beginning; raises ``AssertionError`` for what no answer may be."""
        self.heard: dict[str, Any] = {}
        self.newcomer = Visitor(NEWCOMER, self.houses.alpha)
        began_ms = self.houses.now_ms
        with self.swallowed.listening():
            try:
                for step in run:
                    self._step(step)
            finally:
                self.nudger.finish()
                self.houses.now_ms = began_ms
                self.houses.reset()

    def _step(self, step: Step) -> None:
        if isinstance(step, Wait):
            self.houses.now_ms += round(step.days * DAY_MS)
        elif isinstance(step, Tick):
            self._timed("a tick of the nudger", lambda: self.nudger.tick(self.houses.now_ms))
            self.swallowed.check("a tick of the nudger")
        elif isinstance(step, Picture):
            self._picture(step)
        else:
            self._request(step)

    def _picture(self, step: Picture) -> None:
        body = pictures()[step.name]
        who = self._who(step.role)
        record_id = uuid7(self.houses.now_ms)
        values = {
            "colony_id": Thing("colony"),
            "happened_at": At(0),
            "sha256": hashlib.sha256(body).hexdigest(),
        }
        op = {
            "op_id": Thing("new_id"),
            "kind": "photo",
            "id": record_id,
            "set": values,
            "made_at": Thing("now"),
        }
        asked = {"device": who.device_id or Thing("new_id"), "schema": 1, "ops": [op]}
        self._request(Ask(step.role, "POST", ("/api/sync",), asked))
        self._request(Ask(step.role, "PUT", (f"/api/photos/{record_id}",), body, content_type="image/jpeg"))
        self._request(Ask(step.role, "GET", (f"/api/photos/{record_id}",)))

    def _request(self, ask: Ask) -> None:
        who = self._who(ask.role)
        path = "".join(
            piece if isinstance(piece, str) and n == 0 else self._in_path(who, piece)
            for n, piece in enumerate(ask.path)
        )
        told = f"{ask.method} {path[:200]} as {ask.role}: {ask}"[:1500]
        answer = self._timed(told, lambda: self.houses.call(
            who, ask.method, path, self._body(who, ask), content_type=ask.content_type, headers=dict(ask.headers),
        ))  # fmt: skip
        self.seen["requests"] += 1
        self.seen[str(answer.status)] += 1
        assert answer.status < 500 or answer.status in ALLOWED, (
            f"{answer.status} for {told}: {answer.text[:400]}"
        )
        self.swallowed.check(told)
        if answer.status >= 400 and ask.method != "HEAD":
            assert answer.json is not None and answer.json.get("detail"), (
                f"no problem for {told}: {answer.text[:300]}"
            )
        self._hear(who, ask, answer.json, answer.cookie)

    def _hear(self, who: Visitor, ask: Ask, told: Any, cookie: str | None) -> None:
        if not isinstance(told, dict):
            return
        for each in told.get("answers") or ():
            self.seen[f"operations {each['verdict']}"] += 1
            self.seen[f"refused {each.get('code')}"] += 1
            assert each.get("code") != "failed", f"an unforeseen error in an operation: {each} of {ask}"
        self.heard.update({name: value for name, value in told.items() if isinstance(value, str)})
        for name in ("link", "url"):
            if isinstance(told.get(name), str):
                self.heard["secret" if name == "link" else "token"] = (
                    told[name].rpartition("/")[2].removesuffix(".ics")
                )
        if cookie:
            self.newcomer = Visitor(NEWCOMER, who.house, cookie, told)

    def _who(self, role: str) -> Visitor:
        return self.newcomer if role == NEWCOMER else self.houses.visitors[role]

    def _in_path(self, who: Visitor, piece: Any) -> str:
        value = self._value(who, piece)
        return quote(str(value), safe="%/.-_?=&", errors="surrogatepass") if value is not None else "none"

    def _body(self, who: Visitor, ask: Ask) -> bytes | None:
        if isinstance(ask.body, bytes) or (ask.body is None and ask.wrap in ("", "nothing")):
            return ask.body
        text = written(self._value(who, ask.body))
        if ask.wrap == "doubled" and text.startswith("{") and len(text) > 2:
            text = "{" + text[1:-1] + "," + text[1:]
        if ask.wrap == "list":
            text = f"[{text}]"
        raw = text.encode("utf-16" if ask.wrap == "utf-16" else "utf-8", "surrogatepass")
        wrapped = {
            "gzip": gzip.compress(raw),
            "cut": raw[: len(raw) // 2],
            "bom": b"\xef\xbb\xbf" + raw,
            "nothing": b"",
        }
        return wrapped.get(ask.wrap, raw)

    def _value(self, who: Visitor, value: Any) -> Any:
        if isinstance(value, Heard):
            return self.heard.get(value.name)
        if isinstance(value, At):
            return self.houses.happened(value.days)
        if isinstance(value, Thing):
            return self._thing(who, value.name)
        if isinstance(value, dict):
            return {name: self._value(who, inner) for name, inner in value.items()}
        if isinstance(value, list):
            return [self._value(who, inner) for inner in value]
        return value

    def _thing(self, who: Visitor, name: str) -> Any:
        known = {"my_device": who.device_id, "new_id": uuid7(self.houses.now_ms), "now": self.houses.now_ms}
        if name in known:
            return known[name]
        other = self.houses.beta if who.house is self.houses.alpha else self.houses.alpha
        if name.startswith("others_"):
            return other.things[name.removeprefix("others_")]
        return who.house.things[name]

    def _timed(self, told: str, act: Any) -> Any:
        def stop(_signal: int, _frame: FrameType | None) -> None:
            raise Hangs

        before = signal.signal(signal.SIGALRM, stop)
        signal.setitimer(signal.ITIMER_REAL, LONGEST_S)
        began = time.perf_counter()
        try:
            return act()
        except Hangs:
            raise AssertionError(f"no answer within {LONGEST_S} s: {told}") from None
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)
            signal.signal(signal.SIGALRM, before)
            took = time.perf_counter() - began
            if took > self.slowest_s:
                self.slowest_s, self.slowest = took, told


class _Swallowed(logging.Handler):
    """Exceptions that the app caught and only wrote down: a plan that failed, an operation, a tick."""

    def __init__(self) -> None:
        super().__init__(logging.ERROR)
        self.found: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        if record.exc_info and record.exc_info[1] is not None:
            self.found.append(f"{record.getMessage()}: {record.exc_info[1]!r}")

    @contextmanager
    def listening(self) -> Iterator[None]:
        """Hear what is logged, and keep it from the screen."""
        logger = logging.getLogger("broodshelf")
        handlers, spreads, level = list(logger.handlers), logger.propagate, logging.root.manager.disable
        logging.disable(logging.NOTSET)
        logger.handlers, logger.propagate = [self], False
        self.found.clear()
        try:
            yield
        finally:
            logger.handlers, logger.propagate = handlers, spreads
            logging.disable(level)

    def check(self, told: str) -> None:
        """Raise for what was swallowed since the last look."""
        found, self.found = self.found, []
        assert not found, f"swallowed by {told}: {found[0][:600]}"


def resident_mib() -> float:
    """Return the memory of this process that is in use, in MiB."""
    gc.collect()
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * 4096 / 2**20
