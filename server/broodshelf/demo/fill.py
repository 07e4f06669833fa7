"""Filling a server with the invented shelf: ordinary operations through the ordinary sync, nothing by hand."""

from __future__ import annotations

import datetime as dt
import hashlib
import math
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from importlib import resources
from typing import Any, Final

from sqlalchemy import Connection

from ..model.gauges import DAY_MS, HOUR_MS
from ..people.actor import Actor
from ..people.households import found_household
from ..records.ids import uuid7
from ..records.photo_files import PhotoFiles
from ..records.store import Ledger
from ..rounds.recompute import touched
from ..sync.envelope import MOST_OPERATIONS, SCHEMA
from ..sync.exchange import exchange
from .pictures import HEIGHT_PX, WIDTH_PX, short_code, tube_picture
from .sensor import sense

COUNT_EVERY_DAYS: Final = 14

Change = tuple[str, str, dict[str, Any]]


@dataclass(frozen=True, slots=True)
class Filled:
    """The invented household; its pictures are kept once its transaction is over."""

    household_id: str
    person_id: str
    pictures: tuple[bytes, ...]

    def keep_pictures(self, photos: PhotoFiles) -> None:
        """Keep the pictures that the household's records name."""
        for body in self.pictures:
            photos.keep(self.household_id, hashlib.sha256(body).hexdigest(), body)


def fill(connection: Connection, now_ms: int, public_url: str) -> Filled:
    """Make the invented household. The caller owns the transaction.

    ``public_url``: where the labels on its drawn tubes lead.
    """
    scenario = tomllib.loads(resources.files(__package__).joinpath("scenario.toml").read_text("utf-8"))
    household_id, person_id = found_household(
        connection, scenario["keeper"], scenario["household"], scenario["zone"], now_ms
    )
    ledger = Ledger(connection, household_id)
    ledger.put(household_id, "household", {"invented": True}, now_ms=now_ms)
    ledger.flush()
    actor = Actor(household_id, person_id, uuid7(now_ms), "keeper")
    pictures = list(_pictures(scenario, ids := _colony_ids(scenario, now_ms), now_ms, public_url))
    changes = [*_changes(scenario, ids, now_ms), *(change for change, _ in pictures)]
    for start in range(0, len(changes), MOST_OPERATIONS):
        _send(connection, actor, changes[start : start + MOST_OPERATIONS], now_ms)
    place_id = next(
        record_id for kind, record_id, values in changes
        if kind == "place" and values["name"] == scenario["sensor"]["place"]
    )  # fmt: skip
    sense(connection, household_id, place_id, scenario["sensor"], now_ms)
    ledger = Ledger(connection, household_id)
    touched(ledger, set(ids.values()), now_ms)
    ledger.flush()
    return Filled(household_id, person_id, tuple(body for _, body in pictures))


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


def _colony_ids(scenario: Mapping[str, Any], now_ms: int) -> dict[str, str]:
    return {colony["name"]: uuid7(now_ms) for colony in scenario["colony"]}


def _changes(scenario: Mapping[str, Any], ids: Mapping[str, str], now_ms: int) -> Iterator[Change]:
    places = {place["name"]: uuid7(now_ms) for place in scenario["place"]}
    for place in scenario["place"]:
        yield from _place(place, places[place["name"]], now_ms)
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
    tasting_id = uuid7(now_ms)
    for colony in scenario["colony"]:
        colony_id, vessel_id = ids[colony["name"]], uuid7(now_ms)
        yield "vessel", vessel_id, {
            "vessel_code": colony["vessel_code"], "has_outworld": colony.get("outworld", False),
        }  # fmt: skip
        own = {name: colony[name] for name in ("name", "number", "species_code", "stage")}
        days = colony.get("since_days", scenario["days"])
        start_ms = now_ms - days * DAY_MS
        if colony["stage"] == "founding":
            own["founded_on"] = _day(start_ms)
        yield "colony", colony_id, {
            **own, "vessel_id": vessel_id, "queens": 1, "acquired_on": _day(start_ms),
            "place_id": places[colony["place"]],
        }  # fmt: skip
        if colony["name"] == scenario["tasting"]["colony"]:
            yield "tasting", tasting_id, _tasting(scenario["tasting"], colony_id, now_ms)
        for kind, at_ms, values in sorted(
            _log(colony, scenario, days, tasting_id), key=lambda event: event[1]
        ):
            happened = _instant(start_ms + at_ms)
            record_id = values.pop("id", None) or uuid7(now_ms)
            yield kind, record_id, {"colony_id": colony_id, "happened_at": happened, **values}
    handed = scenario["pass"]
    yield "pass", uuid7(now_ms), {
        "name": handed["name"], "colony_ids": [ids[name] for name in handed["colonies"]],
        "starts_on": _day(now_ms), "ends_on": _day(now_ms + 9 * DAY_MS), "instructions": handed["instructions"],
        "emergency_contact": handed["emergency_contact"],
    }  # fmt: skip


def _place(place: Mapping[str, Any], place_id: str, now_ms: int) -> Iterator[Change]:
    """Yield a place and what its thermometer read in the last days, one reading every second day."""
    yield "place", place_id, {name: value for name, value in place.items() if name != "readings_c"}
    for number, temperature_c in enumerate(reversed(place["readings_c"])):
        happened = _instant(now_ms - (2 * number + 1) * DAY_MS)
        reading = {"place_id": place_id, "happened_at": happened, "temperature_c": temperature_c}
        yield "climate", uuid7(now_ms), {**reading, "humidity_pct": place["humidity_pct"]}


def _tasting(tasting: Mapping[str, Any], colony_id: str, now_ms: int) -> dict[str, Any]:
    return {
        "name": tasting["name"],
        "colony_ids": [colony_id],
        "food_codes": tasting["food_codes"],
        "started_on": _day(now_ms - tasting["since_days"] * DAY_MS),
    }


def _pictures(
    scenario: Mapping[str, Any], ids: Mapping[str, str], now_ms: int, public_url: str
) -> Iterator[tuple[Change, bytes]]:
    """Yield each picture's record and the picture: a colony's tube as it was on some days, with its label."""
    days = scenario["days"]
    for colony in scenario["colony"]:
        colony_id = ids[colony["name"]]
        for before_days in colony.get("pictures_before_days", ()):
            workers = _workers_on(colony, days - before_days, days)
            address = f"{public_url}/#/at/{short_code(colony_id)}"
            body = tube_picture(
                f"{colony['number']} · {colony['name']}", colony_id, workers, before_days / days, address
            )
            values = {
                "colony_id": colony_id, "happened_at": _instant(now_ms - before_days * DAY_MS),
                "sha256": hashlib.sha256(body).hexdigest(), "width_px": WIDTH_PX, "height_px": HEIGHT_PX,
            }  # fmt: skip
            yield ("photo", uuid7(now_ms), values), body


def _log(
    colony: Mapping[str, Any], scenario: Mapping[str, Any], days: int, tasting_id: str
) -> Iterator[tuple[str, int, dict[str, Any]]]:
    """Yield a colony's events as ``(kind, ms after the start, fields)``."""
    tasting = scenario["tasting"]
    yield from _counts(colony, days)
    for need, food in (("sugar", ["sugar_water", 1, "drop"]), ("seeds", ["seeds", 20, "seed"])):
        for day in _every(colony.get(f"{need}_days"), days):
            yield "feeding", _at(day), _feeding(need, food)
    for number, day in enumerate(_every(colony.get("protein_days"), days)):
        refused = "refuses" in colony and number % 5 == 4
        food = [colony["refuses"], 1, "piece"] if refused else colony["protein"]
        tasted = {}
        if colony["name"] == tasting["colony"] and number % 3 == 2 and day > days - tasting["since_days"]:
            food = [tasting["food_codes"][number // 3 % len(tasting["food_codes"])], 1, "piece"]
            tasted = {"tasting_id": tasting_id}
        made = uuid7(number)
        yield "feeding", _at(day), {"id": made, **_feeding("protein", food), **tasted}
        outcome = "ignored" if refused else "some" if number % 4 == 3 else "all"
        yield "check", _at(day + 1), {"feeding_id": made, "outcome": outcome, "leftovers_removed": True}
    readings = colony["water"]
    for number, reading in enumerate(readings):
        day = round(number * (days - 2) / max(1, len(readings) - 1))
        yield "water", _at(day, 1), {"action": "read", "reading": reading}


def _counts(colony: Mapping[str, Any], days: int) -> Iterator[tuple[str, int, dict[str, Any]]]:
    for look in colony.get("looks", ()):
        yield "count", _at(days - look["days_ago"]), {name: look[name] for name in look if name != "days_ago"}
    if not colony["workers"]:
        return
    for day in range(0, days, COUNT_EVERY_DAYS):
        workers = _workers_on(colony, day, days)
        yield "count", _at(day, 2), {"workers": workers, "larvae": "some" if day % 28 else "many"}


def _workers_on(colony: Mapping[str, Any], day: int, days: int) -> int:
    """Return how many workers there are on a day: as many times more each day as the last."""
    if not colony["workers"]:
        return 0
    first, last = (float(number) for number in colony["workers"])
    return round(first * math.pow(last / first, day / days))


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
