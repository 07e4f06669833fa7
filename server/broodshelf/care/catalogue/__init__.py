"""Species, foods, vessels, origins and words: data with sources, read from the TOML files beside this one."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Any

from ..quantities import Estimate


@dataclass(frozen=True, slots=True)
class Rest:
    """A winter rest: temperature and length, as a range (common practice, no source)."""

    low_c: float
    high_c: float
    low_months: float
    high_months: float


@dataclass(frozen=True, slots=True)
class Species:
    """What the plan needs to know of a species or group.

    ``worker_mm``: shortest and longest worker; ``fresh_mg``: fresh mass of the smallest, usual and largest
    worker (None: estimated from length); ``temp_c``: kept well between; ``yearly_clock``: slows down from late
    summer even when kept warm.
    """

    code: str | None
    name: str
    worker_mm: tuple[float, float]
    guild: str
    founding: str
    majors: bool = False
    climbs: bool = True
    stings: bool = False
    slow: bool = False
    hunts_by_sight: bool = False
    spins_cocoons: bool = False
    rest: Rest | None = None
    fresh_mg: tuple[float, float, float] | None = None
    temp_c: tuple[float, float] | None = None
    yearly_clock: bool = False
    length_source: str | None = None


@dataclass(frozen=True, slots=True)
class Composition:
    """What 100 g of a food hold, in g and kcal; None where its source reports nothing, which is not 0."""

    water_g: float | None = None
    protein_g: float | None = None
    fat_g: float | None = None
    carbohydrate_g: float | None = None
    fibre_g: float | None = None
    sugars_g: float | None = None
    ash_g: float | None = None
    kcal: float | None = None


@dataclass(frozen=True, slots=True)
class PreySize:
    """A size class of a prey: shortest and longest in mm, fresh mass in mg, and what it is made of."""

    code: str
    length_mm: tuple[float, float]
    mass_mg: Estimate
    composition: Composition | None = None


@dataclass(frozen=True, slots=True)
class Food:
    """A food: the need it serves, how it is offered, how long it may lie, and for which guilds.

    ``sizes``: from small to large; ``leg_share``: mass of a leg over that of the body; ``keeps_days``: how long
    a lot keeps; ``source``: of the composition.
    """

    code: str
    need: str
    unit: str
    form: str
    serves: frozenset[str]
    remove_after_h: float | None = None
    mass_mg: float | None = None
    mass_source: str | None = None
    keeps_days: float | None = None
    composition: Composition | None = None
    source: str | None = None
    sizes: tuple[PreySize, ...] = ()
    leg_share: float | None = None


@dataclass(frozen=True, slots=True)
class VesselKind:
    """A kind of vessel: its reservoir in mL, how many small workers it has room for, and a tube's inner sizes."""

    code: str
    reservoir_ml: float
    room_workers: int
    tube: bool
    bore_mm: float | None = None
    length_mm: float | None = None


@cache
def _table(name: str) -> Mapping[str, Any]:
    return tomllib.loads(resources.files(__package__).joinpath(f"{name}.toml").read_text("utf-8"))


@cache
def species() -> Mapping[str, Species]:
    """Return the species by code."""
    return {
        code: Species(
            code=code,
            **{
                **row,
                "worker_mm": (float(row["worker_mm"][0]), float(row["worker_mm"][1])),
                "rest": Rest(**row["rest"]) if "rest" in row else None,
                "fresh_mg": tuple(row["fresh_mg"]) if "fresh_mg" in row else None,
                "temp_c": tuple(row["temp_c"]) if "temp_c" in row else None,
            },
        )
        for code, row in _table("species")["species"].items()
    }


@cache
def foods() -> Mapping[str, Food]:
    """Return the foods by code."""
    known = (
        "need",
        "unit",
        "form",
        "remove_after_h",
        "mass_mg",
        "mass_source",
        "keeps_days",
        "source",
        "leg_share",
    )
    return {
        code: Food(
            code=code,
            serves=frozenset(row["serves"]),
            composition=_composition(row, "composition"),
            sizes=tuple(_prey_size(row, size, values) for size, values in row.get("size", {}).items()),
            **{k: row[k] for k in known if k in row},
        )
        for code, row in _table("foods")["food"].items()
    }


def _composition(row: Mapping[str, Any], key: str) -> Composition | None:
    return Composition(**row[key]) if key in row else None


def _prey_size(row: Mapping[str, Any], code: str, values: Mapping[str, Any]) -> PreySize:
    shortest, longest = values["length_mm"]
    made_of = _composition(row, "nymph_composition" if values.get("nymph") else "composition")
    return PreySize(
        code, (float(shortest), float(longest)), Estimate(*map(float, values["mass_mg"])), made_of
    )


@cache
def vessels() -> Mapping[str, VesselKind]:
    """Return the kinds of vessels by code."""
    return {
        code: VesselKind(
            code,
            float(row["reservoir_ml"]),
            int(row["room_workers"]),
            bool(row["tube"]),
            row.get("bore_mm"),
            row.get("length_mm"),
        )
        for code, row in _table("vessels")["vessel"].items()
    }


def origins() -> Mapping[str, Mapping[str, Any]]:
    """Return the rule for each origin: ``verdict`` and, for a hold, ``hold_days``."""
    rules: Mapping[str, Mapping[str, Any]] = _table("origins")["origin"]
    return rules


def words() -> Mapping[str, Mapping[str, str]]:
    """Return the word table: section, code, template."""
    return _table("words")


def as_json() -> dict[str, Any]:
    """Return everything that the phone needs, ready for JSON."""
    return {
        "species": _table("species")["species"],
        "foods": _table("foods")["food"],
        "vessels": _table("vessels")["vessel"],
        "origins": origins(),
        "words": words(),
    }
