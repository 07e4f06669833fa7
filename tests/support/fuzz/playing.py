"""How a run is played, and what no answer may be."""

from __future__ import annotations

import gc
import gzip
import hashlib
import math
import signal
import time
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from types import FrameType
from typing import Any
from urllib.parse import quote

from hypothesis import HealthCheck, Phase, given, seed, settings
from tests.support.fuzz.drawing import steps
from tests.support.fuzz.pictures import pictures
from tests.support.fuzz.steps import NEWCOMER, Ask, Picture, Step, Tick, Wait
from tests.support.fuzz.swallowed import Swallowed
from tests.support.odd import (
    At,
    Heard,
    Thing,
    written,
)
from tests.support.openapi import document
from tests.support.two_houses import TwoHouses, Visitor
from tests.support.two_houses.asking import Way

from broodshelf.app import create_nudger
from broodshelf.model.gauges import DAY_MS
from broodshelf.records.ids import uuid7

LONGEST_S = 30
"""A request that takes longer hangs. So long, because other work may share the machine."""
ALLOWED = (503, 507)
RUNS_A_ROUND = 40
MOST_GROWTH_MIB = 48
"""More than the caches of statements and schemas take; a leak of 3 kB a request would show in 20,000."""


class Hangs(BaseException):
    """A request did not come back."""


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
        self.swallowed = Swallowed()

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
        way = Way(ask.content_type, headers=dict(ask.headers))
        answer = self._timed(told, lambda: self.houses.call(who, ask.method, path, self._body(who, ask), way))
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


def resident_mib() -> float:
    """Return the memory of this process that is in use, in MiB."""
    gc.collect()
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * 4096 / 2**20
