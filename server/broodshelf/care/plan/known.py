"""What a plan goes by: everything that several needs ask for, worked out once from the state."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from ...model.facts import ColonyState, Logged
from ...model.gauges import DAY_MS
from ...model.kinds.log import Fault
from ...model.kinds.plan import Reason
from ...model.quantities import Estimate
from ...model.tasks import reason
from ..catalogue import Species, species, vessels
from ..colony.body import limits_said, worker_fresh_mg
from ..colony.census import Census, Facts, census_of
from ..colony.census.outlook import Census as Living
from ..colony.climate import Climate, climate_of
from ..colony.day_climate import DayClimate, lately_by_day
from ..colony.history import History, local_day, read_history
from ..colony.rest_by_sensor import rest_by_sensor
from ..colony.stages import Switches, switches
from ..feeding.appetite import TEMP_C
from ..feeding.refused import refused_foods
from ..water.drying_days import DryingDays
from .drying import drying_days
from .faults import standing_faults
from .today import Course, by_now, foretold

OTHER_LENGTH_MM = 4.0
"""Taken where neither species nor length is known (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Known:
    """A colony at an instant.

    ``by_day``: how warm and moist its place was on the days up to today; ``dried``: how its water went on them.
    ``counted``: what was seen last; ``census``: the same as it is likely to be now; ``living``: the census of today and
    of the time to come, from ``facts``, None where nothing is foretold.
    ``temp_c``: the mean temperature held inside what the rates are known for; ``worker_mg``, ``worker_mm``: of a
    worker as they are now; ``brood_mg``: what the brood will weigh; ``since_ms``: since when the colony is known;
    ``rest_sensed``: what is said of a rest that follows its thermometer.
    ``limits``: where something lies outside what the rates are known for, and the nearest value stands in.
    """

    state: ColonyState
    now_ms: int
    today: str
    species: Species
    counted: Census
    census: Census
    facts: Facts | None
    living: Living | None
    history: History
    climate: Climate
    by_day: tuple[DayClimate, ...]
    dried: DryingDays
    switched: Switches
    temp_c: float
    worker_mg: Estimate
    brood_mg: Estimate
    worker_mm: float
    in_tube: bool
    since_ms: int
    limits: tuple[Reason, ...] = ()
    rest_sensed: tuple[Reason, ...] = ()

    @property
    def workers(self) -> float:
        """The best guess at how many workers there are."""
        return self.census.workers.best

    @property
    def faults(self) -> tuple[Logged[Fault], ...]:
        """The faults that are neither resolved nor over by themselves."""
        return standing_faults(self.history.open_faults, self.state.events, self.now_ms)


def know(state: ColonyState, now_ms: int) -> Known:
    """Return what is known. Raises ``OutOfRange`` for counts, lengths or places that cannot be."""
    today = local_day(now_ms, state.utc_offset_min).isoformat()
    kind = species_of(state)
    counted = census_of(state.events, state.stage)
    history = read_history(state.events)
    climate = climate_of(
        state.place,
        state.climate_readings,
        state.hours,
        now_ms=now_ms,
        utc_offset_min=state.utc_offset_min,
    )
    by_day = lately_by_day(state, now_ms)
    sensed = rest_by_sensor(state, kind, by_day, today)
    state = sensed.state
    workers = counted.workers.best if counted.basis != "unknown" else None
    switched = switches(state, kind, workers, today, history=history, climate=climate, census=counted)
    facts, living = foretold(Course(state, kind, history, climate, by_day, switched), now_ms)
    census = counted if living is None else by_now(counted, living, state.utc_offset_min)
    refused = state.refused_foods | refused_foods(state.events, switched.excused, now_ms)
    if refused != state.refused_foods:
        state = replace(state, refused_foods=refused)
    shortest, longest = kind.worker_mm
    vessel = vessels().get(state.vessel.code or "")
    return Known(
        state, now_ms, today, kind, counted, census, facts, living, history, climate, by_day,
        drying_days(by_day, state.place, now_ms=now_ms, utc_offset_min=state.utc_offset_min), switched,
        temp_c=min(TEMP_C[1], max(TEMP_C[0], climate.mean_c.best)),
        worker_mg=worker_fresh_mg(kind, nanitic=switched.nanitics),
        brood_mg=worker_fresh_mg(kind, nanitic=switched.nanitics),
        worker_mm=shortest if switched.nanitics else math.sqrt(shortest * longest),
        in_tube=vessel.tube if vessel is not None else True,
        since_ms=_known_since_ms(state, now_ms),
        limits=(*limits_said(kind, nanitic=switched.nanitics), *_temperature_said(climate.mean_c.best)),
        rest_sensed=sensed.notices,
    )  # fmt: skip


def _temperature_said(mean_c: float) -> tuple[Reason, ...]:
    low_c, high_c = TEMP_C
    if low_c <= mean_c <= high_c:
        return ()
    used_c = low_c if mean_c < low_c else high_c
    return (reason("temperature_clamped", mean_c=round(mean_c, 1), used_c=round(used_c)),)


def species_of(state: ColonyState) -> Species:
    """Return the species with the keeper's own length, or what length, guild and founding alone say."""
    known = species().get(state.species_code or "")
    length = state.worker_length_mm
    if known is None:
        usual = length or OTHER_LENGTH_MM
        return Species(
            None, "", (usual, usual), state.guild or "omnivore", state.founding_mode or "claustral",
            stings=bool(state.stings),
        )  # fmt: skip
    return replace(known, worker_mm=(length, length), fresh_mg=None) if length else known


def _known_since_ms(state: ColonyState, now_ms: int) -> int:
    """Return since when we know the colony: a log of today, whatever its minute, must count after it."""
    return min(state.events[0].happened_ms, now_ms) if state.events else now_ms - DAY_MS
