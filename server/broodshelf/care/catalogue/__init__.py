"""Species, foods, vessels and origins: data with sources, read from the TOML files beside this one."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field
from functools import cache
from importlib import resources
from typing import Any

from ...model.kinds.words import Origin, ServedAs, SizeClass, Unit
from ...model.needs import FAULTS, NEEDS, Need
from ...model.quantities import DROP_UL, Estimate
from ...model.tasks import AGAIN_DAYS, TASKS


@dataclass(frozen=True, slots=True)
class Rest:
    """A yearly rest: temperature and length, as a range (common practice, no source).

    ``summer``: it takes the longest days instead of the darkest months.
    """

    low_c: float
    high_c: float
    low_months: float
    high_months: float
    summer: bool = False


@dataclass(frozen=True, slots=True)
class Species:
    """What the plan needs to know of a species or group.

    ``worker_mm``: shortest and longest worker; ``fresh_mg``: fresh mass of the smallest, usual and largest
    worker (None: estimated from length); ``temp_c``: kept well between; ``yearly_clock``: slows down from late
    summer even when kept warm; ``gamergates``: mated workers lay, so that a colony without a queen may be sound;
    ``cautions``: codes beside the one for stings; ``sources``: where single fields come from, as far as they have
    a source (``source_of`` answers for all); ``genus``: in lower case, for tables that go by it.
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
    gamergates: bool = False
    continents: frozenset[str] = frozenset()
    cautions: tuple[str, ...] = ()
    sources: Mapping[str, str] = field(default_factory=dict)
    genus: str | None = None


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

    code: SizeClass
    length_mm: tuple[float, float]
    mass_mg: Estimate
    composition: Composition | None = None


@dataclass(frozen=True, slots=True)
class Food:
    """A food: the need it serves, how it is offered, how long it may lie, and for which guilds.

    ``sizes``: from small to large; ``leg_share``, ``slice_share``: mass of a leg and of a slice over that of the
    body; ``feeder_h``: how long it stays in a closed feeder; ``keeps_days``: how long a lot keeps; ``source``: of the
    composition; ``origin``: the only one that it can have, for what is caught; ``usual_origin``: the one that is taken
    where nobody said another.
    """

    code: str
    need: Need
    unit: Unit
    form: ServedAs
    serves: frozenset[str]
    remove_after_h: float | None = None
    mass_mg: float | None = None
    mass_source: str | None = None
    keeps_days: float | None = None
    composition: Composition | None = None
    source: str | None = None
    sizes: tuple[PreySize, ...] = ()
    leg_share: float | None = None
    origin: Origin | None = None
    usual_origin: Origin = "bought_or_bred"
    slice_share: float | None = None
    feeder_h: float | None = None


@dataclass(frozen=True, slots=True)
class VesselKind:
    """A kind of vessel: its reservoir in mL and how many small workers it has room for.

    ``kind``: tube, nest or outworld. Tubes have a bore, length and brimful volume; the others ``size_mm``,
    inner length, width and height.
    """

    code: str
    kind: str
    reservoir_ml: float
    room_workers: int
    bore_mm: float | None = None
    length_mm: float | None = None
    volume_ml: float | None = None
    size_mm: tuple[float, float, float] | None = None

    @property
    def tube(self) -> bool:
        """Say whether this is a test tube, into which nothing live goes."""
        return self.kind == "tube"


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
                "fresh_mg": tuple(map(float, row["fresh_mg"])) if "fresh_mg" in row else None,
                "temp_c": tuple(row["temp_c"]) if "temp_c" in row else None,
                "continents": frozenset(row["continents"]),
                "cautions": tuple(row.get("cautions", ())),
            },
        )
        for code, row in _table("species")["species"].items()
    }


def source_of(kind: Species, field_name: str) -> str:
    """Return where a field of a species comes from: its own source, else the one that holds for the file."""
    default: str = _table("species")["default_source"][field_name]
    return kind.sources.get(field_name, default)


def cautions_of(kind: Species) -> tuple[str, ...]:
    """Return the caution codes of a species: those its traits bring, then its own."""
    by_trait = (code for code, row in _table("cautions")["caution"].items() if _has(kind, row.get("trait")))
    return (*by_trait, *kind.cautions)


def _has(kind: Species, trait: str | None) -> bool:
    return trait is not None and bool(getattr(kind, trait))


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
        "origin",
        "usual_origin",
        "slice_share",
        "feeder_h",
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


def _prey_size(row: Mapping[str, Any], code: SizeClass, values: Mapping[str, Any]) -> PreySize:
    shortest, longest = values["length_mm"]
    made_of = _composition(row, "nymph_composition" if values.get("nymph") else "composition")
    return PreySize(
        code, (float(shortest), float(longest)), Estimate(*map(float, values["mass_mg"])), made_of
    )


@cache
def vessels() -> Mapping[str, VesselKind]:
    """Return the kinds of vessels by code."""
    known = ("kind", "reservoir_ml", "room_workers", "bore_mm", "length_mm", "volume_ml")
    return {
        code: VesselKind(
            code=code,
            size_mm=tuple(row["size_mm"]) if "size_mm" in row else None,
            **{name: row[name] for name in known if name in row},
        )
        for code, row in _table("vessels")["vessel"].items()
    }


def temperatures() -> Mapping[str, Any]:
    """Return the table of temperatures that are an alarm, as ``colony.temperature`` reads it."""
    return _table("temperatures")


def cautions() -> Mapping[str, Mapping[str, str]]:
    """Return the cautions by code: the trait that brings each, if one does, and its source."""
    rules: Mapping[str, Mapping[str, str]] = _table("cautions")["caution"]
    return rules


def origins() -> Mapping[str, Mapping[str, Any]]:
    """Return the rule for each origin: ``verdict`` and, for a hold, ``hold_days``."""
    rules: Mapping[str, Mapping[str, Any]] = _table("origins")["origin"]
    return rules


def as_json() -> dict[str, Any]:
    """Return everything that the phone needs, ready for JSON."""
    return {
        "species": _table("species")["species"],
        "default_source": _table("species")["default_source"],
        "foods": _table("foods")["food"],
        "vessels": _table("vessels")["vessel"],
        "cautions": cautions(),
        "origins": origins(),
        "needs": _rows(NEEDS),
        "faults": _rows(FAULTS),
        "tasks": _rows(TASKS),
        "again_days": AGAIN_DAYS,
        "drop_ul": DROP_UL,
    }


def _rows(table: Mapping[Any, Any]) -> dict[str, Any]:
    return {code: asdict(row) for code, row in table.items()}
