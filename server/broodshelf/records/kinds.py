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

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal

from marshmallow import fields, validate

from .types import (
    Happened,
    Make,
    anything,
    choice,
    day,
    finite,
    flag,
    list_of,
    number,
    ref,
    sha256,
    text,
    wall_time,
    whole,
    zone,
)

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


def _ruled_need() -> fields.Field[Any]:
    ruled = tuple(need for need in NEEDS if need not in CANNOT_WAIT)
    why = f"A rule is for {', '.join(ruled)}; water, room and leftovers come when due, no rule puts them off."
    return fields.String(validate=validate.OneOf(ruled, error=why), allow_none=True)


def _days_by_need() -> fields.Field[Any]:
    return fields.Dict(
        keys=fields.String(validate=validate.OneOf(NEEDS)),
        values=fields.Float(validate=[finite, validate.Range(min=0.25, max=365)], allow_nan=False),
        allow_none=True,
    )


@dataclass(frozen=True, slots=True)
class FieldSpec:
    """One field of a kind: how to validate it, who writes it, who reads it, whether a new record needs it.

    ``refers_to`` names the kind that this field's id points to; an operation whose parent the server does
    not have is *deferred*, not rejected.
    """

    make: Make
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
    make: Make,
    *,
    required: bool = False,
    refers_to: str | None = None,
    readers: frozenset[Role] = HOUSE,
) -> FieldSpec:
    return FieldSpec(make, KEEPER, readers, required, refers_to)


def _house(make: Make, *, required: bool = False, refers_to: str | None = None) -> FieldSpec:
    return FieldSpec(make, HOUSE, HOUSE, required, refers_to)


_GONE = {"gone": _keeper(flag)}


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
        {"colony_id": FieldSpec(ref, writers, HOUSE, True, "colony")}
        if about == "colony"
        else {"place_id": FieldSpec(ref, writers, HOUSE, True, "place")}
    )
    common = {
        "happened_at": FieldSpec(Happened, writers, HOUSE, True),
        "remark": FieldSpec(text(2000), writers),
        "task_key": FieldSpec(text(120), writers),
        "suggested": FieldSpec(flag, writers),
        "possible_repeat": FieldSpec(flag, SERVER),
        "confirmed": FieldSpec(flag, KEEPER),
        "gone": FieldSpec(flag, writers),
    }
    scope: Literal["colony", "household"] = "colony" if about == "colony" else "household"
    return Kind(name, "event", {**subject, **common, **specs}, scope)


KINDS: Final[Mapping[str, Kind]] = {
    kind.name: kind
    for kind in (
        _register(
            "household",
            name=_keeper(text(80), required=True),
            zone=_keeper(zone, required=True),
            care_hours=_keeper(list_of(wall_time, 2)),
            quiet_from=_keeper(wall_time),
            quiet_to=_keeper(wall_time),
            patience_hours=_keeper(number(1, 72)),
            backup_patience_days=_keeper(number(0, 400)),
            invented=FieldSpec(flag, SERVER),
        ),
        _register(
            "person",
            name=_keeper(text(60), required=True),
            role=FieldSpec(choice(("keeper", "stand_in")), SERVER),
            pass_id=FieldSpec(ref, SERVER),
        ),
        _register(
            "place",
            name=_keeper(text(60), required=True),
            place_type=_keeper(choice(PLACE_TYPES)),
            day_temp_c=_keeper(number(-10, 45)),
            night_temp_c=_keeper(number(-10, 45)),
            humidity_pct=_keeper(number(0, 100)),
        ),
        _register(
            "vessel",
            name=_keeper(text(60)),
            vessel_code=_keeper(text(60)),
            bore_mm=_keeper(number(3, 200)),
            length_mm=_keeper(number(20, 1000)),
            volume_ml=_keeper(number(0.5, 200_000)),
            reservoir_ml=_keeper(number(0, 5_000)),
            reservoir_length_mm=_keeper(number(0, 1000)),
            has_outworld=_keeper(flag),
        ),
        _register(
            "colony",
            scope="colony",
            name=_keeper(text(60), required=True),
            number=_keeper(whole(1, 9999)),
            species_code=_keeper(text(60)),
            species_name=_keeper(text(80)),
            worker_length_mm=_keeper(number(0.8, 40)),
            founding_mode=_keeper(choice(FOUNDING_MODES)),
            guild=_keeper(choice(GUILDS)),
            stings=_keeper(flag),
            stage=_keeper(choice(STAGES)),
            condition=_keeper(choice(CONDITIONS)),
            condition_until=_keeper(day),
            founded_on=_keeper(day),
            acquired_on=_keeper(day),
            queens=_keeper(whole(0, 1000)),
            vessel_id=_keeper(ref, refers_to="vessel"),
            place_id=_keeper(ref, refers_to="place"),
            interval_days=_keeper(_days_by_need),
            host_species_code=_keeper(text(60)),
            resting_since=_keeper(day),
            came_from=_keeper(text(200)),
            went_to=_keeper(text(200)),
            died_of=_keeper(text(200)),
            remark=_keeper(text(4000)),
        ),
        _register(
            "lot",
            name=_keeper(text(80)),
            food_code=_keeper(text(60), required=True),
            origin=_keeper(choice(ORIGINS), required=True),
            got_on=_keeper(day),
            hold_until=_keeper(day),
            use_by=_keeper(day),
            amount=_keeper(number(0, 1_000_000)),
            unit=_keeper(choice(UNITS)),
            size_class=_keeper(choice(SIZE_CLASSES)),
            tint=_keeper(choice(TINTS)),
            percent_ww=_keeper(number(0, 100)),
            finished_on=_keeper(day),
            remark=_keeper(text(2000)),
        ),
        _register(
            "rule",
            scope="colony",
            colony_id=_keeper(ref, required=True, refers_to="colony"),
            need=_keeper(_ruled_need, required=True),
            every_days=_keeper(number(0.25, 365)),
            weekdays=_keeper(list_of(whole(0, 6), 7)),
            at=_keeper(wall_time),
            paused_until=_keeper(day),
        ),
        _register(
            "tasting",
            name=_keeper(text(80), required=True),
            colony_ids=_keeper(list_of(ref, 200), required=True),
            food_codes=_keeper(list_of(text(60), 20), required=True),
            started_on=_keeper(day, required=True),
            ended_on=_keeper(day),
        ),
        _register(
            "pass",
            name=_keeper(text(60), required=True),
            colony_ids=_keeper(list_of(ref, 200), required=True),
            starts_on=_keeper(day, required=True),
            ends_on=_keeper(day, required=True),
            instructions=_keeper(text(4000)),
            emergency_contact=_keeper(text(200)),
            stinging_ok_ids=_keeper(list_of(ref, 200)),
            revoked_at_ms=FieldSpec(whole(0, 10**14), SERVER),
        ),
        _event(
            "feeding",
            need=_house(choice(FOOD_NEEDS), required=True),
            food_code=_house(text(60)),
            lot_id=_house(ref, refers_to="lot"),
            origin=_house(choice(ORIGINS)),
            form=_house(choice(FORMS)),
            size_class=_house(choice(SIZE_CLASSES)),
            amount=_house(number(0, 100_000)),
            unit=_house(choice(UNITS)),
            tasting_id=_house(ref, refers_to="tasting"),
            despite=_house(list_of(text(60), 10)),
        ),
        _event(
            "check",
            feeding_id=_house(ref, refers_to="feeding"),
            need=_house(choice(NEEDS)),
            outcome=_house(choice(OUTCOMES)),
            after_h=_house(number(0, 2_000)),
            leftovers_removed=_house(flag),
            level=_house(choice(WATER_READINGS)),
            colour_seen=_house(list_of(choice(COLOUR_SEEN), 2)),
        ),
        _event(
            "water",
            action=_house(choice(WATER_ACTIONS), required=True),
            reading=_house(choice(WATER_READINGS)),
            level_mm=_house(number(0, 1_000)),
            amount_ml=_house(number(0, 5_000)),
        ),
        _event(
            "fault",
            fault=_house(choice(FAULTS), required=True),
            resolved_at=_house(lambda: Happened(allow_none=True)),
            resolution=_house(text(500)),
            mould_near_brood=_house(flag),
            mould_share=_house(number(0, 1)),
        ),
        _event(
            "count",
            writers=KEEPER,
            workers=_keeper(whole(0, 1_000_000)),
            workers_low=_keeper(whole(0, 1_000_000)),
            workers_high=_keeper(whole(0, 1_000_000)),
            workers_coarse=_keeper(choice(COARSE)),
            eggs=_keeper(choice(COARSE)),
            larvae=_keeper(choice(COARSE)),
            pupae=_keeper(choice(COARSE)),
            queens=_keeper(whole(0, 1_000)),
            males_only=_keeper(flag),
        ),
        _event(
            "boost",
            writers=KEEPER,
            donor_colony_id=_keeper(ref, refers_to="colony"),
            brood=_keeper(choice(("eggs", "larvae", "pupae")), required=True),
            number=_keeper(whole(1, 10_000)),
        ),
        _event(
            "climate",
            about="place",
            writers=KEEPER,
            temperature_c=_keeper(number(-20, 80)),
            humidity_pct=_keeper(number(0, 100)),
        ),
        _event(
            "move",
            writers=KEEPER,
            vessel_id=_keeper(ref, refers_to="vessel"),
            how=_keeper(choice(("offered", "on_its_own", "forced", "finished"))),
            fresh_reservoir=_keeper(flag),
        ),
        _event("note", text=_house(text(4000), required=True)),
        _event(
            "photo",
            sha256=_house(sha256, required=True),
            width_px=_house(whole(1, 10_000)),
            height_px=_house(whole(1, 10_000)),
        ),
        _event(
            "later",
            need=_house(choice(NEEDS), required=True),
            until=_house(Happened, required=True),
            why=_house(text(500)),
        ),
        Kind(
            "plan",
            "derived",
            {
                name: FieldSpec(anything, SERVER)
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
