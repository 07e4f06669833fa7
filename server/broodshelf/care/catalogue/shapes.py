"""Species, foods and vessels as the care core reads them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from ...model.kinds.words import Origin, ServedAs, SizeClass, Unit
from ...model.needs import Need
from ...model.quantities import Estimate


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
