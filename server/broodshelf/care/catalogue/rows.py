"""What a row of each file of the catalogue says, as it stands there and as phones get it.

The phone's types are written from these shapes; a test walks every row against its own. A pair is shortest and longest.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal, NotRequired, TypedDict

from ...model.kinds.words import FoundingMode, Guild, Origin, ServedAs, SizeClass, Unit
from ...model.needs import FaultCode, FaultRow, FoodNeed, Need, NeedRow
from ...model.tasks import TaskRow, What

Verdict = Literal["fine", "wash", "wait", "hold", "refuse"]
"""What to do with a food of an origin."""
VesselType = Literal["tube", "nest", "outworld"]
Trait = Literal["stings"]
"""A field of a species that brings a caution by itself."""
FieldForm = Literal["day", "instant", "warmth", "record"]
"""What a field of a record holds that is not shown as it is stored: the last is the id of another record."""
Continent = Literal["europe", "asia", "africa", "north_america", "south_america", "australia"]


class RestRow(TypedDict):
    """A yearly rest: how cool, in °C, and how long, in months."""

    low_c: float
    high_c: float
    low_months: float
    high_months: float
    summer: NotRequired[bool]


class SpeciesRow(TypedDict):
    """A species or group, as `care/catalogue` explains it. `fresh_mg`: smallest, usual and largest worker."""

    name: str
    genus: str
    continents: list[Continent]
    worker_mm: tuple[float, float]
    guild: Guild
    founding: FoundingMode
    temp_c: tuple[float, float]
    majors: bool
    climbs: bool
    fresh_mg: NotRequired[tuple[float, float, float]]
    rest: NotRequired[RestRow]
    yearly_clock: NotRequired[bool]
    stings: NotRequired[bool]
    slow: NotRequired[bool]
    hunts_by_sight: NotRequired[bool]
    spins_cocoons: NotRequired[bool]
    gamergates: NotRequired[bool]
    cautions: NotRequired[list[str]]
    sources: NotRequired[Mapping[str, str]]


class CompositionRow(TypedDict, total=False):
    """What 100 g of a food hold, in g and kcal; absent where its source reports nothing, which is not 0."""

    water_g: float
    protein_g: float
    fat_g: float
    carbohydrate_g: float
    fibre_g: float
    sugars_g: float
    ash_g: float
    kcal: float


class PreySizeRow(TypedDict):
    """A size class of a prey. `mass_mg`: low, usual and high; `nymph`: made of what a nymph is made of."""

    length_mm: tuple[float, float]
    mass_mg: tuple[float, float, float]
    nymph: NotRequired[bool]


class FoodRow(TypedDict):
    """A food. `remove_after_h`: how long it may lie; `feeder_h`: how long in a closed feeder; `serves`: which guilds.

    `origin`: the only one that it can have; `usual_origin`: the one that is taken where nobody said another.
    """

    need: FoodNeed
    unit: Unit
    form: ServedAs
    serves: list[Guild]
    remove_after_h: NotRequired[float]
    feeder_h: NotRequired[float]
    keeps_days: NotRequired[float]
    origin: NotRequired[Origin]
    usual_origin: NotRequired[Origin]
    mass_mg: NotRequired[float]
    mass_source: NotRequired[str]
    slice_share: NotRequired[float]
    leg_share: NotRequired[float]
    leg_share_source: NotRequired[str]
    composition: NotRequired[CompositionRow]
    nymph_composition: NotRequired[CompositionRow]
    source: NotRequired[str]
    size: NotRequired[Mapping[SizeClass, PreySizeRow]]


class VesselRow(TypedDict):
    """A kind of vessel. `size_mm`: inner length, width and height, of what is no tube."""

    kind: VesselType
    reservoir_ml: float
    room_workers: int
    outer_mm: NotRequired[float]
    bore_mm: NotRequired[float]
    length_mm: NotRequired[float]
    volume_ml: NotRequired[float]
    size_mm: NotRequired[tuple[float, float, float]]


class CautionRow(TypedDict):
    """A caution: the trait that brings it, if one does, and its source."""

    source: str
    trait: NotRequired[Trait]


class OriginRow(TypedDict):
    """What an origin means before a food is offered; `hold_days` where that is a hold."""

    verdict: Verdict
    hold_days: NotRequired[int]


class CatalogueRows(TypedDict):
    """All that the phone gets, by code; the rows of the model's tables as objects."""

    species: Mapping[str, SpeciesRow]
    default_source: Mapping[str, str]
    foods: Mapping[str, FoodRow]
    vessels: Mapping[str, VesselRow]
    cautions: Mapping[str, CautionRow]
    origins: Mapping[str, OriginRow]
    needs: Mapping[Need, NeedRow]
    faults: Mapping[FaultCode, FaultRow]
    tasks: Mapping[What, TaskRow]
    again_days: Mapping[What, int]
    drop_ul: float
    fields: Mapping[FieldForm, list[str]]
