"""The matrix of sync: every kind and field, every verb, every role that is let in, and whose record it is.

What may be written stands in ``fields.toml``; what else decides (whose record, which colony, which day) here
in ``PLACES`` and ``_expected``. Nothing is read from the code that keeps it.
"""

from __future__ import annotations

import json
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from tests.support.two_houses import TwoHouses, Visitor, columns

from broodshelf.records.database import writing
from broodshelf.records.store import Ledger

MOST_IN_A_REQUEST = 400
WRITERS = ("keeper", "stand_in", "early_stand_in", "former_stand_in")
READERS = (*WRITERS, "other_keeper", "other_stand_in")
PLACES = (
    "own", "of the keeper", "of the other household", "in another colony", "before the pass", "after the pass",
)  # fmt: skip
"""Whose record is meant, or where and when it lies: all but the first three are for stand-ins alone."""


@dataclass(frozen=True)
class Try:
    """One operation of the matrix and the verdict that it has to get: ``applied``, or the code of a refusal.

    ``stood``: the record that is there before it."""

    kind: str
    field: str
    verb: str
    place: str
    role: str
    op: dict[str, Any]
    stood: dict[str, Any] | None
    expected: str

    def __str__(self) -> str:
        return f"{self.role}: {self.verb} {self.kind}.{self.field}, {self.place}"


@cache
def kinds() -> dict[str, Any]:
    """Return the table as written."""
    return tomllib.loads(Path(__file__).with_name("fields.toml").read_text("utf-8"))


def fields_of_table() -> set[tuple[str, str]]:
    """Return every kind and field that the table names."""
    return {(kind, name) for kind, row in kinds().items() for name in row["fields"]}


def wrong_writes(houses: TwoHouses, role: str, only: str = "") -> Iterator[str]:
    """Make every operation of a role; give which got another verdict, or touched the other household."""
    who = houses.visitors[role]
    other = houses.beta if who.house is houses.alpha else houses.alpha
    for place in PLACES:
        wanted = [one for one in _tries(houses, who, role, place) if only in str(one)]
        for start in range(0, len(wanted), MOST_IN_A_REQUEST):
            some = wanted[start : start + MOST_IN_A_REQUEST]
            _lay_out(houses, some)
            before, wrong = _of(houses, other.id), []
            answers = houses.sync(who, *(one.op for one in some))
            for one, answer in zip(some, answers, strict=True):
                got = answer.get("code", answer["verdict"])
                if got not in one.expected.split():
                    wrong.append(f"{one}: expected {one.expected}, got {answer}")
            if _of(houses, other.id) != before:
                wrong.append(f"{role}, {place}: the other household was touched")
            houses.reset()
            yield from wrong


def _tries(houses: TwoHouses, who: Visitor, role: str, place: str) -> Iterator[Try]:
    guest = role.endswith("stand_in")
    if (not guest and place in PLACES[3:]) or (role == "early_stand_in" and place != "own"):
        return
    for kind, row in kinds().items():
        for name, (writers, first, second) in row["fields"].items():
            for verb in ("delete", "bring back") if name == "gone" else ("make", "change", "empty", "offer"):
                expected = _expected(kind, name, writers, verb, place, role)
                if expected:
                    value = {"empty": None, "change": second, "delete": True, "bring back": False}.get(
                        verb, first
                    )
                    yield _try(houses, who, (kind, name, value, verb, place), expected)


def _expected(kind: str, name: str, writers: str, verb: str, place: str, role: str) -> str | None:
    """Return the verdict that is promised; None where such an operation makes no sense."""
    guest = role.endswith("stand_in")
    making = verb in ("make", "offer")
    if making and place in ("of the keeper", "of the other household"):
        return None  # a new record is one's own
    if kind == "household" and (making or place != "own"):
        return None  # there is one, it is made by claiming, and it belongs to no person
    if kind in ("plan", "place_day"):
        return "not_allowed"
    if verb == "empty" and name in kinds()[kind]["needs"]:
        return "bad_value"
    refused = writers == "server" or (guest and (writers == "keeper" or kind in NOT_LOGGED))
    if place in PLACES[3:] and (refused or (name in ("colony_id", "happened_at") and not making)):
        return None  # refused whatever the place: stands under "own"; or it would leave that place
    if (kind, verb) in NOBODY_MAY:
        return "not_allowed"
    if verb == "offer" and guest:
        return "not_allowed" if place == "own" else None  # stand-ins offer nothing
    if verb == "offer":
        return "applied"  # what a phone gives back after a restore may hold what the server wrote
    if refused or (guest and place == "of the keeper"):
        return "not_allowed"
    if place == "of the other household":
        return ELSEWHERE
    if guest and (role == "early_stand_in" or place in PLACES[3:]):
        return "outside_pass"
    return "applied"


NOT_LOGGED = ("household", "person", "place", "vessel", "colony", "lot", "rule", "tasting", "pass")
"""Kinds that stand for a thing: a stand-in writes none of them, whatever their fields say."""
NOBODY_MAY = (("household", "delete"), ("person", "make"))
"""People come by letting a phone in or by a pass, and the household itself stays."""
ELSEWHERE = "not_allowed deferred applied missing_field outside_pass"
"""A record of the other household is as good as none: the operation waits, or makes a record of the own household
that has the same id. The other's must not move; that is looked at after each request."""


def _try(houses: TwoHouses, who: Visitor, of: tuple[str, str, Any, str, str], expected: str) -> Try:
    kind, name, value, verb, place = of
    making = verb in ("make", "offer")
    row = kinds()[kind]
    whole = {field: row["fields"][field][1] for field in row["needs"]}
    if (kind, verb) == ("person", "offer"):
        whole["role"] = "keeper"
    whole |= {
        "in another colony": {"colony_id": "@hidden_colony"},
        "before the pass": {"happened_at": "@before"},
        "after the pass": {"happened_at": "@after"},
    }.get(place, {})
    values = (
        {name: value, **whole}
        if making and name in whole
        else {**whole, name: value}
        if making
        else {name: value}
    )
    stood = None if making else {**whole, **({"gone": True} if verb == "bring back" else {})}
    record_id = who.house.id if kind == "household" else None
    op = houses.op(who, kind, _filled(houses, who, values), record_id, adopt=verb == "offer")
    return Try(kind, name, verb, place, who.name, op, _filled(houses, who, stood), expected)


def _filled(houses: TwoHouses, who: Visitor, value: Any) -> Any:
    """Put ids and instants in the place of their names."""
    if isinstance(value, dict):
        return {name: _filled(houses, who, inner) for name, inner in value.items()}
    if isinstance(value, list):
        return [_filled(houses, who, inner) for inner in value]
    if not isinstance(value, str) or not value.startswith("@"):
        return value
    former = who.name.endswith("former_stand_in")
    inside = -4.0 if former else 0.0  # a former stand-in sends what was logged while the pass lasted
    days = {
        "@now": inside - 0.1, "@a_little_earlier": inside - 0.2, "@soon": inside + 0.2, "@sooner": inside + 0.1,
        "@before": -30.0, "@after": -2.0 if former else 30.0,
    }  # fmt: skip
    return houses.happened(days[value]) if value in days else who.house.things[value[1:]]


def _lay_out(houses: TwoHouses, tries: list[Try]) -> None:
    """Store the records that these operations are about, as their authors would have left them."""
    with writing() as connection:
        ledgers: dict[str, Ledger] = {}
        for one in tries:
            if one.stood is None or one.kind == "household":
                continue
            who = houses.visitors[one.role]
            other = houses.beta if who.house is houses.alpha else houses.alpha
            house = other if one.place == "of the other household" else who.house
            author = house.things["person"] if one.place in PLACES[1:3] else who.me["person_id"]
            ledger = ledgers.setdefault(house.id, Ledger(connection, house.id))
            ledger.put(one.op["id"], one.kind, one.stood, now_ms=houses.now_ms, person_id=author)
        for ledger in ledgers.values():
            ledger.flush()


def _of(houses: TwoHouses, household_id: str) -> dict[str, set[tuple[Any, ...]]]:
    return {name: {row for row in rows if household_id in row} for name, rows in houses.rows().items()}


def wrong_reads(houses: TwoHouses, role: str) -> list[str]:
    """Pull everything as a role; return what came that should not have, and what should have and did not."""
    who = houses.visitors[role]
    body = {"device": who.device_id, "epoch": None, "cursor": None, "schema": 1, "ops": [], "limit": 2000}
    answer = houses.call(who, "POST", "/api/sync", body).json
    houses.reset()
    got = {row["id"]: (row["kind"], row["set"]) for row in answer["rows"]}
    wanted = {} if role == "former_stand_in" else dict(_seen(houses, who, role.endswith("stand_in")))
    found = [f"{role} sees {got[key][0]} {key}, and should not" for key in got.keys() - wanted.keys()]
    found += [f"{role} does not see {wanted[key][0]} {key}" for key in wanted.keys() - got.keys()]
    found += [f"{role} sees {key} otherwise" for key in got.keys() & wanted.keys() if got[key] != wanted[key]]
    return found


def _seen(houses: TwoHouses, who: Visitor, guest: bool) -> Iterator[tuple[str, tuple[str, Any]]]:
    things = who.house.things
    mine = things["early_pass" if who.name == "early_stand_in" else "pass"]
    around = {mine, things["vessel"], things["place"]}
    names = columns("records")
    for row in houses.rows()["records"]:
        record = dict(zip(names, row, strict=True))
        if record["household_id"] != who.house.id or record["gone"]:
            continue
        values = json.loads(record["fields"])
        seen = {
            "always": True,
            "never": False,
            "around": record["id"] in around,
            "of the pass": things["colony"] in (record["id"], values.get("colony_id")),
        }[kinds()[record["kind"]]["seen"]]
        if seen or not guest:
            yield record["id"], (record["kind"], values)
