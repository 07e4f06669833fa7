"""What a real server answers at the addresses that ``pwa/answers.d.ts`` names, to everybody who may hear it.

The table of addresses knows who may ask for what; besides it all the shapes that an answer of several can have.
"""

from __future__ import annotations

import dataclasses
import itertools
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from sqlalchemy import insert
from tests.guard.lived_in import LivedIn
from tests.guard.matrix import ask, cells
from tests.support.two_houses import Answer, Visitor

from broodshelf.model.gauges import DAY_MS, HOUR_MS
from broodshelf.people.tables import household_sizes
from broodshelf.records.database import writing

INTERFACES = {"GET": "Got", "POST": "Posted", "PUT": "Put", "DELETE": "Removed"}
LET_IN = ("nobody", "keeper", "stand_in", "early_stand_in", "former_stand_in")
AN_ID = "00000000-0000-7000-8000-000000000000"
FILE = {
    "text": "when,warm\n2026-04-05 12:00,20\n2026-04-05 13:00,warm",
    "time": "when",
    "temperature": "warm",
    "preview": True,
}
"""A sensor's table with a row that cannot be read."""


@dataclass(frozen=True)
class Typed:
    """What was told at an address; ``key`` is how ``answers.d.ts`` names it."""

    interface: str
    key: str
    path: str
    told: Any

    @property
    def type(self) -> str:
        """The type of the address, as TypeScript finds it."""
        return f"{self.interface}['{self.path}']"


def keys(types: str) -> Iterator[tuple[str, str]]:
    """Give interface and key of every address that the text of the types names."""
    for interface in INTERFACES.values():
        body = re.search(rf"^export interface {interface} {{\n(.*?)^}}", types, re.M | re.S)
        assert body, interface
        for line in re.findall(r"^  [^ |}].*", body[1], re.M):
            named = re.match(r"  (?:'([^']+)'|\[\w+: `([^`]+)`\]):", line)
            assert named, line
            yield interface, named[1] or named[2]


def key_of(interface: str, path: str, known: Iterable[tuple[str, str]]) -> str | None:
    """Return which key an address goes by: its own, else the pattern that it meets; None without one."""
    mine = [key for of, key in known if of == interface]
    if path in mine:
        return path
    return next(
        (key for key in mine if re.fullmatch(re.escape(key).replace(r"\$\{string\}", ".*"), path)), None
    )


def typed_answers(houses: LivedIn, types: str) -> Iterator[Typed]:
    """Ask as everybody for everything that they may hear at the addresses that the types name."""
    known = [*keys(types)]
    for method, path, answer in _all_answers(houses):
        interface = INTERFACES[method]
        key = key_of(interface, path, known)
        if key is not None:
            assert answer.status == 200, (method, path, answer.text)
            yield Typed(interface, key, path, answer.json)


def _all_answers(houses: LivedIn) -> Iterator[tuple[str, str, Answer]]:
    for cell in cells():
        if cell.method in INTERFACES and cell.role in LET_IN and cell.expected == "200":
            yield cell.method, re.sub(r"<[^>]+>", AN_ID, cell.rule), ask(houses, cell)
            houses.reset()
    keeper, nobody = houses.visitors["keeper"], houses.visitors["nobody"]
    for signup in ("open", "closed"):
        with_settings(houses, signup=signup)
        yield "POST", "/api/claim/look", houses.call(nobody, "POST", "/api/claim/look", {"code": ""})
    away = {"leave_on": houses.happened(1)[:10], "return_on": houses.happened(60)[:10]}
    yield "POST", "/api/holiday", houses.call(keeper, "POST", "/api/holiday", away)
    file = f"/api/places/{houses.alpha.things['place']}/file"
    for text in (FILE["text"], "when,warm\n"):
        yield "POST", file, houses.call(keeper, "POST", file, {**FILE, "text": text})
    end = f"/api/sensors/{houses.alpha.things['sensor']}/end"
    yield "POST", end, houses.call(keeper, "POST", end, {})
    for who, trip in itertools.chain(_trips(houses), _told(houses)):
        yield "POST", "/api/sync", houses.call(who, "POST", "/api/sync", trip)
    houses.reset()


def with_settings(houses: LivedIn, **changed: Any) -> None:
    """Let the app go on with other settings."""
    parts = houses.app.extensions["broodshelf"]
    settings = dataclasses.replace(parts.settings, **changed)
    houses.app.extensions["broodshelf"] = dataclasses.replace(parts, settings=settings)


def _trips(houses: LivedIn) -> Iterator[tuple[Visitor, dict[str, Any]]]:
    """Round trips with every verdict, and with rows that went, as a keeper and a stand-in hear of them."""
    keeper, guest, things = houses.visitors["keeper"], houses.visitors["stand_in"], houses.alpha.things
    spare = houses.visitors["spare_keeper"]
    about = {"colony_id": things["colony"], "happened_at": houses.happened()}

    def of_colony(who: Visitor, name: str, made_ms: int) -> dict[str, Any]:
        return houses.op(who, "colony", {"name": name}, things["colony"], made_at=made_ms)

    ops = [
        of_colony(keeper, "Alpha of tomorrow", houses.now_ms + HOUR_MS),
        houses.op(keeper, "feeding", {**about, "colony_id": AN_ID, "need": "sugar"}),
        houses.op(keeper, "feeding", {**about, "need": "water"}),
        houses.op(keeper, "feeding", {"colony_id": things["colony"], "need": "sugar"}),
        houses.op(keeper, "count", {**about, "workers": -1}),
        houses.op(keeper, "dream", {"name": "Alpha"}),
        houses.op(keeper, "note", {**about, "text": "gone soon"}),
    ]
    cursors = {}
    for who in (keeper, guest):
        body = {"device": who.device_id, "epoch": who.me["epoch"], "cursor": None, "schema": 1, "ops": []}
        cursors[who.name] = {**body, "cursor": houses.post(who, "/api/sync", body)["cursor"]}
    yield keeper, {**cursors["keeper"], "ops": ops}
    first = {"device": spare.device_id, "epoch": None, "cursor": None, "schema": 1, "limit": 2}
    yield spare, {**first, "ops": [of_colony(spare, "Alpha of old", houses.now_ms - HOUR_MS)]}
    went = [houses.op(keeper, "feeding", {"gone": True}, things["stand_in_feeding"])]
    yield keeper, {**cursors["keeper"], "ops": went}
    yield guest, cursors["stand_in"]


def _told(houses: LivedIn) -> Iterator[tuple[Visitor, dict[str, Any]]]:
    """Round trips in which a keeper hears of the server: a household nearly full, an old backup, damage."""
    keeper, kept = houses.visitors["keeper"], houses.app.extensions["broodshelf"].home.kept
    trip = {"device": keeper.device_id, "epoch": keeper.me["epoch"], "cursor": None, "schema": 1, "limit": 1}
    size = {"records": 500_000, "pictures": 1, "bytes": 1, "counted_ms": houses.now_ms}
    with writing() as connection:
        connection.execute(household_sizes.delete().where(household_sizes.c.household_id == houses.alpha.id))
        connection.execute(insert(household_sizes).values(household_id=houses.alpha.id, **size))
    yield keeper, trip
    kept.note(backup_ms=houses.now_ms - 30 * DAY_MS)
    yield keeper, trip
    kept.note(damage="a page is torn")
    yield keeper, trip
    kept.note(damage=None, backup_ms=None)
