"""The registry of record kinds: kind x field x who may read and write it.

This one table drives validation on the way in, the field merge, the guard inside ``/api/sync`` and the
whitelist of a stand-in. Add a field here first; everything else follows.

Three groups of kinds:

* ``register``: a thing with a present state (a colony, a vessel, a pass). Merged field by field.
* ``event``: something that happened (a feeding, a fault). Never conflicts; amended or voided by later
  operations on the same id.
* ``derived``: written by the server only (a colony's plan).

Longer than 300 lines because it is one table, read from top to bottom.
"""

from __future__ import annotations

import datetime as dt
import re
import zoneinfo
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal

from marshmallow import ValidationError, fields, validate

Role = Literal["keeper", "stand_in", "server"]
Group = Literal["register", "event", "derived"]

KEEPER: Final[frozenset[Role]] = frozenset({"keeper"})
SERVER: Final[frozenset[Role]] = frozenset({"server"})
HOUSE: Final[frozenset[Role]] = frozenset({"keeper", "stand_in"})
"""Fields that a keeper and, for colonies of their pass, a stand-in may write."""

NEEDS: Final = (
    "sugar",
    "protein",
    "seeds",
    "leaves",
    "water",
    "leftovers",
    "room",
    "barrier",
    "rest",
    "glance",
)
FOOD_NEEDS: Final = ("sugar", "protein", "seeds", "leaves")
CANNOT_WAIT: Final = frozenset({"water", "room", "leftovers"})
"""Needs that no rhythm and no pause of the keeper puts off: a leak may be behind the first, mould behind the last."""
STAGES: Final = ("founding", "nanitics", "growing", "mature")
CONDITIONS: Final = (
    "well",
    "settling",
    "resting",
    "queenless_suspected",
    "quarantine",
    "given_away",
    "dead",
)
ORIGINS: Final = (
    "bought_or_bred",
    "home_cockroach",
    "wild_web_spider",
    "wild_hunter",
    "wild_insect",
    "garden_fruit",
    "shop_fruit",
    "hot_syrup",
    "home_mixed",
    "unknown",
)
FORMS: Final = ("whole_dead", "cut", "stunned", "live", "drop", "feeder", "crushed", "whole", "piece")
UNITS: Final = ("drop", "ml", "piece", "leg", "slice", "mg", "seed", "leaf")
SIZE_CLASSES: Final = ("tiny", "extra_small", "small", "medium", "large")
WATER_READINGS: Final = ("full", "three_quarters", "half", "quarter", "empty")
WATER_ACTIONS: Final = ("read", "refill", "new_tube", "hydrate")
FAULTS: Final = ("leak", "flood", "mould", "escape", "mites", "many_dead", "heater")
OUTCOMES: Final = ("all", "some", "ignored")
TINTS: Final = ("blue", "green", "yellow", "red")
COLOUR_SEEN: Final = ("gasters", "brood")
COARSE: Final = ("none", "few", "some", "many")
PLACE_TYPES: Final = ("cabinet", "room", "cellar", "fridge")
GUILDS: Final = ("omnivore", "predator", "harvester", "honeypot", "fungus_grower")
FOUNDING_MODES: Final = ("claustral", "semi_claustral", "parasitic")

_UUID: Final = re.compile(r"^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$")
_WALL_TIME: Final = re.compile(r"^([01]\d|2[0-3]):[0-5]\d$")


def is_uuid(value: object) -> bool:
    """Say whether ``value`` is a UUID in lower-case canonical form."""
    return isinstance(value, str) and _UUID.match(value) is not None


class Happened(fields.String):
    """An ISO 8601 instant with its UTC offset, e.g. ``2026-05-01T18:30:00.000+02:00``. Kept as written."""

    def _deserialize(self, value: Any, attr: str | None, data: Any, **kwargs: Any) -> str:
        text: str = super()._deserialize(value, attr, data, **kwargs)
        happened_ms(text)
        return text


class Day(fields.String):
    """A calendar day in the household's zone, e.g. ``2026-05-01``."""


def happened_ms(text: str) -> int:
    """Turn an ISO 8601 instant with offset into milliseconds since 1970 UTC.

    Raises ``ValidationError`` when the text is not such an instant or lies outside 2000..2200.
    """
    try:
        instant = dt.datetime.fromisoformat(text)
    except ValueError:
        raise ValidationError("Not an ISO 8601 instant; write e.g. 2026-05-01T18:30:00+02:00.") from None
    if instant.tzinfo is None:
        raise ValidationError("The instant lacks its UTC offset, e.g. +02:00.")
    if not 2000 <= instant.year <= 2200:
        raise ValidationError("The year must lie between 2000 and 2200.")
    return round(instant.timestamp() * 1000)


def _zone(value: str) -> None:
    if value not in zoneinfo.available_timezones():
        raise ValidationError("Not an IANA time zone, e.g. Europe/Vienna.")


def _finite(value: float) -> None:
    if value != value or value in (float("inf"), float("-inf")):
        raise ValidationError("Must be a finite number.")


def _text(limit: int) -> Callable[[], fields.Field[Any]]:
    return lambda: fields.String(validate=validate.Length(max=limit), allow_none=True)


def _choice(options: tuple[str, ...]) -> Callable[[], fields.Field[Any]]:
    return lambda: fields.String(validate=validate.OneOf(options), allow_none=True)


def _ruled_need() -> fields.Field[Any]:
    ruled = tuple(need for need in NEEDS if need not in CANNOT_WAIT)
    why = f"A rule is for {', '.join(ruled)}; water, room and leftovers come when due, no rule puts them off."
    return fields.String(validate=validate.OneOf(ruled, error=why), allow_none=True)


def _number(low: float, high: float) -> Callable[[], fields.Field[Any]]:
    return lambda: fields.Float(
        validate=[_finite, validate.Range(min=low, max=high)], allow_none=True, allow_nan=False
    )


def _whole(low: int, high: int) -> Callable[[], fields.Field[Any]]:
    return lambda: fields.Integer(strict=True, validate=validate.Range(min=low, max=high), allow_none=True)


def _flag() -> fields.Field[Any]:
    return fields.Boolean(truthy={True}, falsy={False}, allow_none=True)


def _ref() -> fields.Field[Any]:
    return fields.String(validate=validate.Regexp(_UUID, error="Not a UUID in lower case."), allow_none=True)


def _day() -> fields.Field[Any]:
    return Day(
        validate=validate.Regexp(
            r"^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$", error="Not a date, e.g. 2026-05-01."
        ),
        allow_none=True,
    )


def _wall_time() -> fields.Field[Any]:
    return fields.String(
        validate=validate.Regexp(_WALL_TIME, error="Not a wall-clock time, e.g. 18:30."), allow_none=True
    )


def _list(item: Callable[[], fields.Field[Any]], most: int) -> Callable[[], fields.Field[Any]]:
    return lambda: fields.List(item(), validate=validate.Length(max=most), allow_none=True)


def _json() -> fields.Field[Any]:
    return fields.Raw(allow_none=True)


def _days_by_need() -> fields.Field[Any]:
    return fields.Dict(
        keys=fields.String(validate=validate.OneOf(NEEDS)),
        values=fields.Float(validate=[_finite, validate.Range(min=0.25, max=365)], allow_nan=False),
        allow_none=True,
    )


@dataclass(frozen=True, slots=True)
class FieldSpec:
    """One field of a kind: how to validate it, who writes it, who reads it, whether a new record needs it.

    ``refers_to`` names the kind that this field's id points to; an operation whose parent the server does
    not have is *deferred*, not rejected.
    """

    make: Callable[[], fields.Field[Any]]
    writers: frozenset[Role]
    readers: frozenset[Role] = HOUSE
    required: bool = False
    refers_to: str | None = None


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of record: its group and its fields by name. ``scope`` is the field that ties it to a colony."""

    name: str
    group: Group
    fields: Mapping[str, FieldSpec]
    scope: Literal["colony", "household"] = "household"


def _keeper(
    make: Callable[[], fields.Field[Any]],
    *,
    required: bool = False,
    refers_to: str | None = None,
    readers: frozenset[Role] = HOUSE,
) -> FieldSpec:
    return FieldSpec(make, KEEPER, readers, required, refers_to)


def _house(
    make: Callable[[], fields.Field[Any]], *, required: bool = False, refers_to: str | None = None
) -> FieldSpec:
    return FieldSpec(make, HOUSE, HOUSE, required, refers_to)


_GONE = {"gone": _keeper(_flag)}


def _register(name: str, /, scope: Literal["colony", "household"] = "household", **specs: FieldSpec) -> Kind:
    return Kind(name, "register", {**specs, **_GONE}, scope)


def _event(
    name: str,
    /,
    *,
    writers: frozenset[Role] = HOUSE,
    about: Literal["colony", "place"] = "colony",
    **specs: FieldSpec,
) -> Kind:
    """Build an event kind with the fields that all events share."""
    subject: dict[str, FieldSpec] = (
        {"colony_id": FieldSpec(_ref, writers, HOUSE, True, "colony")}
        if about == "colony"
        else {"place_id": FieldSpec(_ref, writers, HOUSE, True, "place")}
    )
    common = {
        "happened_at": FieldSpec(Happened, writers, HOUSE, True),
        "remark": FieldSpec(_text(2000), writers),
        "task_key": FieldSpec(_text(120), writers),
        "suggested": FieldSpec(_flag, writers),
        "possible_repeat": FieldSpec(_flag, SERVER),
        "confirmed": FieldSpec(_flag, KEEPER),
        "gone": FieldSpec(_flag, writers),
    }
    scope: Literal["colony", "household"] = "colony" if about == "colony" else "household"
    return Kind(name, "event", {**subject, **common, **specs}, scope)


KINDS: Final[Mapping[str, Kind]] = {
    kind.name: kind
    for kind in (
        _register(
            "household",
            name=_keeper(_text(80), required=True),
            zone=_keeper(lambda: fields.String(validate=_zone), required=True),
            care_hours=_keeper(_list(_wall_time, 2)),
            quiet_from=_keeper(_wall_time),
            quiet_to=_keeper(_wall_time),
            patience_hours=_keeper(_number(1, 72)),
            invented=FieldSpec(_flag, SERVER),
        ),
        _register(
            "person",
            name=_keeper(_text(60), required=True),
            role=FieldSpec(_choice(("keeper", "stand_in")), SERVER),
            pass_id=FieldSpec(_ref, SERVER),
        ),
        _register(
            "place",
            name=_keeper(_text(60), required=True),
            place_type=_keeper(_choice(PLACE_TYPES)),
            day_temp_c=_keeper(_number(-10, 45)),
            night_temp_c=_keeper(_number(-10, 45)),
            humidity_pct=_keeper(_number(0, 100)),
        ),
        _register(
            "vessel",
            name=_keeper(_text(60)),
            vessel_code=_keeper(_text(60)),
            bore_mm=_keeper(_number(3, 200)),
            length_mm=_keeper(_number(20, 1000)),
            volume_ml=_keeper(_number(0.5, 200_000)),
            reservoir_ml=_keeper(_number(0, 5_000)),
            reservoir_length_mm=_keeper(_number(0, 1000)),
            has_outworld=_keeper(_flag),
        ),
        _register(
            "colony",
            scope="colony",
            name=_keeper(_text(60), required=True),
            number=_keeper(_whole(1, 9999)),
            species_code=_keeper(_text(60)),
            species_name=_keeper(_text(80)),
            worker_length_mm=_keeper(_number(0.8, 40)),
            founding_mode=_keeper(_choice(FOUNDING_MODES)),
            guild=_keeper(_choice(GUILDS)),
            stings=_keeper(_flag),
            stage=_keeper(_choice(STAGES)),
            condition=_keeper(_choice(CONDITIONS)),
            condition_until=_keeper(_day),
            founded_on=_keeper(_day),
            acquired_on=_keeper(_day),
            queens=_keeper(_whole(0, 1000)),
            vessel_id=_keeper(_ref, refers_to="vessel"),
            place_id=_keeper(_ref, refers_to="place"),
            interval_days=_keeper(_days_by_need),
            host_species_code=_keeper(_text(60)),
            resting_since=_keeper(_day),
            came_from=_keeper(_text(200)),
            went_to=_keeper(_text(200)),
            died_of=_keeper(_text(200)),
            remark=_keeper(_text(4000)),
        ),
        _register(
            "lot",
            name=_keeper(_text(80)),
            food_code=_keeper(_text(60), required=True),
            origin=_keeper(_choice(ORIGINS), required=True),
            got_on=_keeper(_day),
            hold_until=_keeper(_day),
            use_by=_keeper(_day),
            amount=_keeper(_number(0, 1_000_000)),
            unit=_keeper(_choice(UNITS)),
            size_class=_keeper(_choice(SIZE_CLASSES)),
            tint=_keeper(_choice(TINTS)),
            percent_ww=_keeper(_number(0, 100)),
            finished_on=_keeper(_day),
            remark=_keeper(_text(2000)),
        ),
        _register(
            "rule",
            scope="colony",
            colony_id=_keeper(_ref, required=True, refers_to="colony"),
            need=_keeper(_ruled_need, required=True),
            every_days=_keeper(_number(0.25, 365)),
            weekdays=_keeper(_list(_whole(0, 6), 7)),
            at=_keeper(_wall_time),
            paused_until=_keeper(_day),
        ),
        _register(
            "tasting",
            name=_keeper(_text(80), required=True),
            colony_ids=_keeper(_list(_ref, 200), required=True),
            food_codes=_keeper(_list(_text(60), 20), required=True),
            started_on=_keeper(_day, required=True),
            ended_on=_keeper(_day),
        ),
        _register(
            "pass",
            name=_keeper(_text(60), required=True),
            colony_ids=_keeper(_list(_ref, 200), required=True),
            starts_on=_keeper(_day, required=True),
            ends_on=_keeper(_day, required=True),
            instructions=_keeper(_text(4000)),
            emergency_contact=_keeper(_text(200)),
            stinging_ok_ids=_keeper(_list(_ref, 200)),
            revoked_at_ms=FieldSpec(_whole(0, 10**14), SERVER),
        ),
        _event(
            "feeding",
            need=_house(_choice(FOOD_NEEDS), required=True),
            food_code=_house(_text(60)),
            lot_id=_house(_ref, refers_to="lot"),
            origin=_house(_choice(ORIGINS)),
            form=_house(_choice(FORMS)),
            size_class=_house(_choice(SIZE_CLASSES)),
            amount=_house(_number(0, 100_000)),
            unit=_house(_choice(UNITS)),
            tasting_id=_house(_ref, refers_to="tasting"),
            despite=_house(_list(_text(60), 10)),
        ),
        _event(
            "check",
            feeding_id=_house(_ref, refers_to="feeding"),
            need=_house(_choice(NEEDS)),
            outcome=_house(_choice(OUTCOMES)),
            after_h=_house(_number(0, 2_000)),
            leftovers_removed=_house(_flag),
            level=_house(_choice(WATER_READINGS)),
            colour_seen=_house(_list(_choice(COLOUR_SEEN), 2)),
        ),
        _event(
            "water",
            action=_house(_choice(WATER_ACTIONS), required=True),
            reading=_house(_choice(WATER_READINGS)),
            level_mm=_house(_number(0, 1_000)),
            amount_ml=_house(_number(0, 5_000)),
        ),
        _event(
            "fault",
            fault=_house(_choice(FAULTS), required=True),
            resolved_at=_house(lambda: Happened(allow_none=True)),
            resolution=_house(_text(500)),
            mould_near_brood=_house(_flag),
            mould_share=_house(_number(0, 1)),
        ),
        _event(
            "count",
            writers=KEEPER,
            workers=_keeper(_whole(0, 1_000_000)),
            workers_low=_keeper(_whole(0, 1_000_000)),
            workers_high=_keeper(_whole(0, 1_000_000)),
            workers_coarse=_keeper(_choice(COARSE)),
            eggs=_keeper(_choice(COARSE)),
            larvae=_keeper(_choice(COARSE)),
            pupae=_keeper(_choice(COARSE)),
            queens=_keeper(_whole(0, 1_000)),
            males_only=_keeper(_flag),
        ),
        _event(
            "boost",
            writers=KEEPER,
            donor_colony_id=_keeper(_ref, refers_to="colony"),
            brood=_keeper(_choice(("eggs", "larvae", "pupae")), required=True),
            number=_keeper(_whole(1, 10_000)),
        ),
        _event(
            "climate",
            about="place",
            writers=KEEPER,
            temperature_c=_keeper(_number(-20, 80)),
            humidity_pct=_keeper(_number(0, 100)),
        ),
        _event(
            "move",
            writers=KEEPER,
            vessel_id=_keeper(_ref, refers_to="vessel"),
            how=_keeper(_choice(("offered", "on_its_own", "forced", "finished"))),
            fresh_reservoir=_keeper(_flag),
        ),
        _event("note", text=_house(_text(4000), required=True)),
        _event(
            "photo",
            sha256=_house(_text(64), required=True),
            width_px=_house(_whole(1, 10_000)),
            height_px=_house(_whole(1, 10_000)),
        ),
        _event(
            "later",
            need=_house(_choice(NEEDS), required=True),
            until=_house(Happened, required=True),
            why=_house(_text(500)),
        ),
        Kind(
            "plan",
            "derived",
            {
                name: FieldSpec(_json, SERVER)
                for name in (
                    "colony_id",
                    "gauges",
                    "tasks",
                    "notices",
                    "cautions",
                    "tasting",
                    "tasting_waits",
                    "growth",
                    "valid_until_ms",
                    "computed_at_ms",
                    "model_version",
                    "inputs_rev",
                    "gone",
                )
            },
            "colony",
        ),
    )
}
"""Every kind by its name."""


def required_fields(kind: Kind) -> frozenset[str]:
    """Return the names of the fields without which a record of this kind cannot be made."""
    return _REQUIRED[kind.name]


_REQUIRED: Final = {
    kind.name: frozenset(name for name, spec in kind.fields.items() if spec.required)
    for kind in KINDS.values()
}
