"""The matrix of addresses: what the table expects, and a request for each of its cells.

The table (``addresses.toml``) is the promise; nothing of it is read from the code that keeps it.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from flask import Flask
from tests.nudges.support import BrowserKeys
from tests.support.two_houses import FAR_ADDRESS, ROLES, UNSAFE, Answer, TwoHouses, Visitor, columns
from tests.support.two_houses.asking import Way

from broodshelf.records.ids import uuid7

FEW = (
    "nobody", "removed_keeper", "keeper", "from_elsewhere", "stand_in", "former_stand_in", "other_keeper",
)  # fmt: skip
"""Where it counts what is brought, not who brings it."""
GUESTS = ("stand_in", "early_stand_in", "former_stand_in")
OTHERS = {"other_keeper": "keeper", "other_stand_in": "stand_in", "from_elsewhere": "keeper"}


@dataclass(frozen=True)
class Cell:
    """One request: at ``address`` as ``role``, naming ``thing``; ``expected`` is a status and perhaps a code."""

    address: str
    role: str
    thing: str
    expected: str

    @property
    def method(self) -> str:
        """The verb of the address."""
        return self.address.split(" ")[0]

    @property
    def rule(self) -> str:
        """The path with its placeholders, without the words that tell rows of one address apart."""
        return self.address.split(" ")[1]

    def __str__(self) -> str:
        return f"{self.address} as {self.role} naming {self.thing}"


@cache
def table() -> dict[str, Any]:
    """Return the table as written."""
    return tomllib.loads(Path(__file__).with_name("addresses.toml").read_text("utf-8"))


def rows() -> dict[str, dict[str, Any]]:
    """Return its rows by address."""
    return {name: row for name, row in table().items() if " /" in name}


def cells(only: str = "", row_only: str = "") -> Iterator[Cell]:
    """Give every cell, or those of addresses with ``only`` in them, or of the one row ``row_only``."""
    for address, row in rows().items():
        if only in address and row_only in ("", address):
            for role in FEW if row["who"] in ("all", "operator") else ROLES:
                for thing in row["things"]:
                    yield Cell(address, role, thing, _expected(address, row, role, thing))


def _expected(address: str, row: dict[str, Any], role: str, thing: str) -> str:
    if role == "from_elsewhere" and address.split(" ")[0] in UNSAFE:
        return "403 foreign_origin"
    who = row["who"]
    let_in = role == "former_stand_in" and row.get("after_the_pass", False)
    if who in ("keeper", "session") and role in table()["door"] and not let_in:
        return str(table()["door"][role])
    like = OTHERS.get(role, role)
    if who == "keeper" and like in GUESTS:
        return "403 not_allowed"
    own = row.get(like, {})
    return str(own.get(thing) or own.get("*") or row["things"][thing])


def ask(houses: TwoHouses, cell: Cell) -> Answer:
    """Make the request of a cell."""
    row = rows()[cell.address]
    who = houses.visitors[cell.role]
    thing = value_of(houses, who, cell.thing)
    path = re.sub(r"<(?!build|path)[^>]+>", lambda _: str(thing), cell.rule)
    path = path.replace("<build>", "0" * 16).replace("<path:name>", "main.js")
    body, kind = row.get("body"), "application/json"
    if body == "@jpeg":
        body, kind = picture_of(houses, str(thing)), "image/jpeg"
    elif body is not None:
        body = _fill(houses, who, body, thing)
    headers = {name: text.replace("@thing", str(thing)) for name, text in row.get("headers", {}).items()}
    return houses.call(who, cell.method, path, body, Way(kind, row.get("from", FAR_ADDRESS), headers))


def value_of(houses: TwoHouses, who: Visitor, name: str) -> Any:
    """Return a thing by name, from where this visitor stands."""
    other = houses.beta if who.house is houses.alpha else houses.alpha
    of_no_house = {
        "none": "",
        "nothing": None,
        "unknown_id": uuid7(houses.now_ms),
        "not_an_id": "not-an-id",
        "id_and_line_break": f"{who.house.things['colony']}%0A",
        "id_with_line_break": f"{who.house.things['colony']}\n",
        "prey_calculator": "prey",
        "new_device": houses.new_device(),
        "my_device": who.device_id,
    }
    if name == "new_subscription":
        endpoint = f"http://127.0.0.1:9/{uuid7(houses.now_ms)}"
        return {**who.house.things["subscription"], "endpoint": endpoint, "keys": BrowserKeys().as_json}
    if name in of_no_house:
        return of_no_house[name]
    if name.startswith("others_"):
        return other.things[name.removeprefix("others_")]
    return who.house.things.get(name, f"lacking-{name}")


def picture_of(houses: TwoHouses, record_id: str) -> bytes:
    """Return the picture that a record was made for."""
    return houses.alpha.jpegs.get(record_id) or houses.beta.jpegs.get(record_id) or b"none"


def _fill(houses: TwoHouses, who: Visitor, body: Any, thing: Any) -> Any:
    if isinstance(body, dict):
        return {name: _fill(houses, who, inner, thing) for name, inner in body.items()}
    if isinstance(body, str) and body.startswith("@"):
        return thing if body == "@thing" else value_of(houses, who, body[1:])
    return body


def what_is_wrong(houses: TwoHouses, cell: Cell, answer: Answer) -> str | None:
    """Return what of the answer, or of what it left behind, is not as it should be."""
    got = f"{answer.status} {answer.code}".strip()
    if cell.expected not in (got, str(answer.status)):
        return f"{cell}: expected {cell.expected}, got {got}: {answer.text[:300]}"
    who = houses.visitors[cell.role]
    other = houses.beta if who.house is houses.alpha else houses.alpha
    known = cell.thing.startswith("others_")
    foreign = [other.mark, *(str(other.things[name]) for name in ("colony", "person", "own_phone", "pass"))]
    if not known and (told := [word for word in foreign if word in answer.text]):
        return f"{cell}: the answer tells of the other household: {told}"
    if (
        cell.role in GUESTS
        and rows()[cell.address]["who"] != "all"
        and f"{who.house.mark} hidden" in answer.text
    ):
        return f"{cell}: the answer tells a stand-in what lies outside the pass"
    if not answer.status < 400 and who.house.mark in answer.text:
        return f"{cell}: a refusal tells of the household: {answer.text[:300]}"
    return _left_behind(houses, cell, answer, other.id)


def _left_behind(houses: TwoHouses, cell: Cell, answer: Answer, other_id: str) -> str | None:
    """Return what was stored that should not have been: by a refusal anything, else anything of the other's."""
    if not houses.changed():
        return None
    before, after = houses.before(), houses.rows()
    traces = table()["traces"]
    for name in before:
        if before[name] == after[name]:
            continue
        quiet = [columns(name).index(column) for column in traces["columns"].get(name, ())]
        old, new = _bare(before[name], quiet), _bare(after[name], quiet)
        if answer.status >= 400 and name not in traces["tables"] and old != new:
            return f"{cell}: was refused and changed {name}"
        if answer.status >= 400 and name in traces["of_strangers"]:
            continue
        if cell.thing == "others_delivery":  # its id is a secret that only its phone was told
            continue
        if {row for row in old if other_id in row} != {row for row in new if other_id in row}:
            return f"{cell}: changed {name} of the other household"
    return None


def _bare(found: list[tuple[Any, ...]], without: list[int]) -> set[tuple[Any, ...]]:
    return {tuple(value for place, value in enumerate(row) if place not in without) for row in found}


def wrong_answers(houses: TwoHouses, wanted: Iterable[Cell]) -> Iterator[str]:
    """Ask cell by cell; give what is wrong."""
    for cell in wanted:
        wrong = what_is_wrong(houses, cell, ask(houses, cell))
        houses.reset()
        if wrong:
            yield wrong


def addresses_of(app: Flask) -> set[tuple[str, str]]:
    """Return every verb and rule of the app; HEAD goes with GET, OPTIONS says nothing but verbs."""
    return {
        (method, rule.rule)
        for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
    }


def addresses_of_table() -> set[tuple[str, str]]:
    """Return every verb and rule that the table names."""
    found = [name.split(" ") for name in rows()]
    return {(words[0], words[1]) for words in found}
