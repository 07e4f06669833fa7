"""Species, foods, vessels and origins: data with sources, read from the TOML files beside this one."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import asdict
from functools import cache
from importlib import resources
from typing import Any, TypeVar

from ...model.kinds.words import SizeClass
from ...model.needs import FAULTS, NEEDS
from ...model.quantities import DROP_UL, Estimate
from ...model.tasks import AGAIN_DAYS, TASKS
from .fields import fields_by_form
from .rows import (
    CatalogueRows,
    CautionRow,
    CompositionRow,
    FoodRow,
    OriginRow,
    PreySizeRow,
    SpeciesRow,
    VesselRow,
)
from .shapes import Composition, Food, PreySize, Rest, Species, VesselKind

__all__ = [
    "Composition",
    "Food",
    "PreySize",
    "Rest",
    "Species",
    "VesselKind",
    "as_json",
    "cautions",
    "cautions_of",
    "foods",
    "origins",
    "source_of",
    "species",
    "temperatures",
    "vessels",
]


@cache  # each file is read once: tests.bench.plan_cost
def _table(name: str) -> Mapping[str, Any]:
    return tomllib.loads(resources.files(__package__).joinpath(f"{name}.toml").read_text("utf-8"))


@cache
def species() -> Mapping[str, Species]:
    """Return the species by code."""
    return {code: _species_of(code, row) for code, row in _species_rows().items()}


def _species_rows() -> Mapping[str, SpeciesRow]:
    rows: Mapping[str, SpeciesRow] = _table("species")["species"]
    return rows


def _species_of(code: str, row: SpeciesRow) -> Species:
    rest, fresh_mg = row.get("rest"), row.get("fresh_mg")
    return Species(
        code=code,
        name=row["name"],
        worker_mm=_pair(row["worker_mm"]),
        guild=row["guild"],
        founding=row["founding"],
        majors=row["majors"],
        climbs=row["climbs"],
        stings=row.get("stings", False),
        slow=row.get("slow", False),
        hunts_by_sight=row.get("hunts_by_sight", False),
        spins_cocoons=row.get("spins_cocoons", False),
        rest=Rest(**rest) if rest else None,
        fresh_mg=_three(fresh_mg) if fresh_mg else None,
        temp_c=(row["temp_c"][0], row["temp_c"][1]),
        yearly_clock=row.get("yearly_clock", False),
        gamergates=row.get("gamergates", False),
        continents=frozenset(row["continents"]),
        cautions=tuple(row.get("cautions", ())),
        sources=row.get("sources", {}),
        genus=row["genus"],
    )


def _pair(numbers: Sequence[float]) -> tuple[float, float]:
    low, high = map(float, numbers)
    return low, high


def _three(numbers: Sequence[float]) -> tuple[float, float, float]:
    low, middle, high = map(float, numbers)
    return low, middle, high


def source_of(kind: Species, field_name: str) -> str:
    """Return where a field of a species comes from: its own source, else the one that holds for the file."""
    default: str = _table("species")["default_source"][field_name]
    return kind.sources.get(field_name, default)


def cautions_of(kind: Species) -> tuple[str, ...]:
    """Return the caution codes of a species: those its traits bring, then its own."""
    by_trait = (code for code, row in cautions().items() if _has(kind, row.get("trait")))
    return (*by_trait, *kind.cautions)


def _has(kind: Species, trait: str | None) -> bool:
    return trait is not None and bool(getattr(kind, trait))


@cache
def foods() -> Mapping[str, Food]:
    """Return the foods by code."""
    return {code: _food_of(code, row) for code, row in _food_rows().items()}


def _food_rows() -> Mapping[str, FoodRow]:
    rows: Mapping[str, FoodRow] = _table("foods")["food"]
    return rows


def _food_of(code: str, row: FoodRow) -> Food:
    return Food(
        code=code,
        need=row["need"],
        unit=row["unit"],
        form=row["form"],
        serves=frozenset(row["serves"]),
        remove_after_h=row.get("remove_after_h"),
        mass_mg=row.get("mass_mg"),
        mass_source=row.get("mass_source"),
        keeps_days=row.get("keeps_days"),
        composition=_composition(row.get("composition")),
        source=row.get("source"),
        sizes=tuple(_prey_size(row, size, values) for size, values in row.get("size", {}).items()),
        leg_share=row.get("leg_share"),
        origin=row.get("origin"),
        usual_origin=row.get("usual_origin", "bought_or_bred"),
        slice_share=row.get("slice_share"),
        feeder_h=row.get("feeder_h"),
    )


def _composition(row: CompositionRow | None) -> Composition | None:
    return None if row is None else Composition(**row)


def _prey_size(row: FoodRow, code: SizeClass, values: PreySizeRow) -> PreySize:
    made_of = row.get("nymph_composition") if values.get("nymph") else row.get("composition")
    mass_mg = Estimate(*_three(values["mass_mg"]))
    return PreySize(code, _pair(values["length_mm"]), mass_mg, _composition(made_of))


@cache
def vessels() -> Mapping[str, VesselKind]:
    """Return the kinds of vessels by code."""
    return {code: _vessel_of(code, row) for code, row in _vessel_rows().items()}


def _vessel_rows() -> Mapping[str, VesselRow]:
    rows: Mapping[str, VesselRow] = _table("vessels")["vessel"]
    return rows


def _vessel_of(code: str, row: VesselRow) -> VesselKind:
    size_mm = row.get("size_mm")
    return VesselKind(
        code=code,
        kind=row["kind"],
        reservoir_ml=row["reservoir_ml"],
        room_workers=row["room_workers"],
        bore_mm=row.get("bore_mm"),
        length_mm=row.get("length_mm"),
        volume_ml=row.get("volume_ml"),
        size_mm=(size_mm[0], size_mm[1], size_mm[2]) if size_mm else None,
    )


def temperatures() -> Mapping[str, Any]:
    """Return the table of temperatures that are an alarm, as ``colony.temperature`` reads it."""
    return _table("temperatures")


def cautions() -> Mapping[str, CautionRow]:
    """Return the cautions by code: the trait that brings each, if one does, and its source."""
    rules: Mapping[str, CautionRow] = _table("cautions")["caution"]
    return rules


def origins() -> Mapping[str, OriginRow]:
    """Return the rule for each origin: ``verdict`` and, for a hold, ``hold_days``."""
    rules: Mapping[str, OriginRow] = _table("origins")["origin"]
    return rules


def as_json() -> CatalogueRows:
    """Return everything that the phone needs, ready for JSON."""
    return {
        "species": _species_rows(),
        "default_source": _table("species")["default_source"],
        "foods": _food_rows(),
        "vessels": _vessel_rows(),
        "cautions": cautions(),
        "origins": origins(),
        "needs": _rows(NEEDS),
        "faults": _rows(FAULTS),
        "tasks": _rows(TASKS),
        "again_days": AGAIN_DAYS,
        "drop_ul": DROP_UL,
        "fields": fields_by_form(),
    }


Code = TypeVar("Code")


def _rows(table: Mapping[Code, Any]) -> Mapping[Code, Any]:
    return {code: asdict(row) for code, row in table.items()}
