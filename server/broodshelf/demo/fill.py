"""Filling a server with the invented shelf: ordinary operations through the ordinary sync, nothing by hand."""

from __future__ import annotations

import datetime as dt
import tomllib
from collections.abc import Iterator, Mapping
from importlib import resources
from typing import Any, Final

from sqlalchemy import Connection

from ..people.actor import Actor
from ..people.households import found_household
from ..records.ids import uuid7
from ..records.store import Ledger
from ..rounds.recompute import touched
from ..sync.envelope import MOST_OPERATIONS, SCHEMA
from ..sync.exchange import exchange

DAY_MS: Final = 86_400_000
HOUR_MS: Final = 3_600_000
COUNT_EVERY_DAYS: Final = 14

Change = tuple[str, str, dict[str, Any]]


def fill(connection: Connection, now_ms: int) -> tuple[str, str]:
    """Make the invented household; return ``(household_id, person_id)``. The caller owns the transaction."""
    scenario = tomllib.loads(resources.files(__package__).joinpath("scenario.toml").read_text("utf-8"))
    household_id, person_id = found_household(
        connection, scenario["keeper"], scenario["household"], scenario["zone"], now_ms
    )
    ledger = Ledger(connection, household_id)
    ledger.put(household_id, "household", {"invented": True}, now_ms=now_ms)
    ledger.flush()
    actor = Actor(household_id, person_id, uuid7(now_ms), "keeper")
    changes = list(_changes(scenario, now_ms))
    for start in range(0, len(changes), MOST_OPERATIONS):
        _send(connection, actor, changes[start : start + MOST_OPERATIONS], now_ms)
    return household_id, person_id


def _send(connection: Connection, actor: Actor, changes: list[Change], now_ms: int) -> None:
    ops = [
        {"op_id": uuid7(now_ms), "kind": kind, "id": record_id, "set": values, "made_at": now_ms}
        for kind, record_id, values in changes
    ]
    exchange(
        connection,
        actor,
        {"device": actor.device_id, "schema": SCHEMA, "ops": ops, "limit": 1},
        now_ms,
        touched,
    )


def _changes(scenario: Mapping[str, Any], now_ms: int) -> Iterator[Change]:
    start_ms = now_ms - scenario["days"] * DAY_MS
    ids = {colony["name"]: uuid7(now_ms) for colony in scenario["colony"]}
    cricket, syrup = uuid7(now_ms), uuid7(now_ms)
    yield (
        "lot",
        cricket,
        {"food_code": "cricket", "origin": "bought_or_bred", "got_on": _day(now_ms - 5 * DAY_MS)},
    )
    yield (
        "lot",
        syrup,
        {"food_code": "sugar_water", "origin": "home_mixed", "got_on": _day(now_ms - 2 * DAY_MS)},
    )
    for colony in scenario["colony"]:
        colony_id, vessel_id = ids[colony["name"]], uuid7(now_ms)
        yield "vessel", vessel_id, {
            "vessel_code": colony["vessel_code"], "has_outworld": colony.get("outworld", False),
        }  # fmt: skip
        own = {name: colony[name] for name in ("name", "number", "species_code", "stage")}
        yield "colony", colony_id, {**own, "vessel_id": vessel_id, "queens": 1, "acquired_on": _day(start_ms)}
        for kind, at_ms, values in sorted(_log(colony, scenario["days"]), key=lambda event: event[1]):
            happened = _instant(start_ms + at_ms)
            record_id = values.pop("id", None) or uuid7(now_ms)
            yield kind, record_id, {"colony_id": colony_id, "happened_at": happened, **values}
    handed = scenario["pass"]
    yield "pass", uuid7(now_ms), {
        "name": handed["name"], "colony_ids": [ids[name] for name in handed["colonies"]],
        "starts_on": _day(now_ms), "ends_on": _day(now_ms + 9 * DAY_MS), "instructions": handed["instructions"],
        "emergency_contact": handed["emergency_contact"],
    }  # fmt: skip


def _log(colony: Mapping[str, Any], days: int) -> Iterator[tuple[str, int, dict[str, Any]]]:
    """Yield a colony's events as ``(kind, ms after the start, fields)``."""
    yield from _counts(colony, days)
    for need, food in (("sugar", ["sugar_water", 1, "drop"]), ("seeds", ["seeds", 20, "seed"])):
        for day in _every(colony.get(f"{need}_days"), days):
            yield "feeding", _at(day), _feeding(need, food)
    for number, day in enumerate(_every(colony.get("protein_days"), days)):
        refused = "refuses" in colony and number % 5 == 4
        food = [colony["refuses"], 1, "piece"] if refused else colony["protein"]
        if "tasting" in colony and number % 3 == 2:
            food = [colony["tasting"][number // 3 % len(colony["tasting"])], 1, "piece"]
        made = uuid7(number)
        yield "feeding", _at(day), {"id": made, **_feeding("protein", food)}
        outcome = "ignored" if refused else "some" if number % 4 == 3 else "all"
        yield "check", _at(day + 1), {"feeding_id": made, "outcome": outcome, "leftovers_removed": True}
    readings = colony["water"]
    for number, reading in enumerate(readings):
        day = round(number * (days - 2) / max(1, len(readings) - 1))
        yield "water", _at(day, 1), {"action": "read", "reading": reading}


def _counts(colony: Mapping[str, Any], days: int) -> Iterator[tuple[str, int, dict[str, Any]]]:
    if not colony["workers"]:
        return
    first, last = colony["workers"]
    for day in range(0, days, COUNT_EVERY_DAYS):
        workers = round(first * (last / first) ** (day / days))
        yield "count", _at(day, 2), {"workers": workers, "larvae": "some" if day % 28 else "many"}


def _feeding(need: str, food: list[Any]) -> dict[str, Any]:
    code, amount, unit = food
    return {"need": need, "food_code": code, "amount": amount, "unit": unit}


def _every(interval_days: int | None, days: int) -> range:
    return range(1, days - 1, interval_days) if interval_days else range(0)


def _at(day: float, hours: int = 0) -> int:
    return round(day * DAY_MS) + hours * HOUR_MS


def _instant(at_ms: int) -> str:
    return dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


def _day(at_ms: int) -> str:
    return _instant(at_ms)[:10]
