"""What a plan goes by: everything that several needs ask for, worked out once from the state."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from ...model.facts import ColonyState, Logged
from ...model.kinds.log import Fault
from ...model.kinds.plan import Reason
from ...model.quantities import Estimate
from ...model.tasks import reason
from ..catalogue import Species, species, vessels
from ..colony.body import limits_said, worker_fresh_mg
from ..colony.census import Census, Facts
from ..colony.census.outlook import Census as Living
from ..colony.climate import climate_of
from ..colony.day_climate import lately_by_day
from ..colony.dossier import Dossier, dossier_of
from ..colony.history import local_day, midnight_ms
from ..colony.rest_by_sensor import rest_by_sensor
from ..colony.stages import Switches, switches
from ..feeding.appetite import TEMP_C
from ..feeding.refused import refused_foods
from ..water.drying_days import DryingDays
from .drying import drying_days
from .faults import standing_faults
from .today import by_now, foretold

OTHER_LENGTH_MM = 4.0
"""Taken where neither species nor length is known (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Known(Dossier):
    """A colony at an instant: its dossier with all that follows from it.

    ``dried``: how its water went on the days up to today. ``census``: what was counted, as it is likely to be now;
    ``living``: the census of today and of the time to come, from ``facts``, None where nothing is foretold.
    ``temp_c``: the mean temperature held inside what the rates are known for; ``worker_mg``, ``worker_mm``: of a
    worker as they are now; ``brood_mg``: what the brood will weigh; ``since_ms``: since when the colony is known;
    ``rest_sensed``: what is said of a rest that follows its thermometer.
    ``limits``: where something lies outside what the rates are known for, and the nearest value stands in.
    """

    now_ms: int
    today: str
    census: Census
    facts: Facts | None
    living: Living | None
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
    climate = climate_of(
        state.place,
        state.climate_readings,
        state.hours,
        now_ms=now_ms,
        utc_offset_min=state.utc_offset_min,
    )
    by_day = lately_by_day(state, now_ms)
    sensed = rest_by_sensor(state, kind, by_day, today)
    colony = dossier_of(sensed.state, kind, climate, by_day)
    state, counted = colony.state, colony.counted
    workers = counted.workers.best if counted.basis != "unknown" else None
    switched = switches(colony, workers, today)
    facts, living = foretold(colony, switched, now_ms)
    census = counted if living is None else by_now(counted, living, state.utc_offset_min)
    refused = state.refused_foods | refused_foods(state.events, switched.excused, now_ms)
    if refused != state.refused_foods:
        state = replace(state, refused_foods=refused)
    shortest, longest = kind.worker_mm
    vessel = vessels().get(state.vessel.code or "")
    return Known(
        state, kind, colony.history, climate, by_day, counted, now_ms, today, census, facts, living,
        drying_days(by_day, state.place, now_ms=now_ms, utc_offset_min=state.utc_offset_min), switched,
        temp_c=min(TEMP_C[1], max(TEMP_C[0], climate.mean_c.best)),
        worker_mg=worker_fresh_mg(kind, nanitic=switched.nanitics),
        brood_mg=worker_fresh_mg(kind, nanitic=switched.nanitics),
        worker_mm=shortest if switched.nanitics else math.sqrt(shortest * longest),
        in_tube=vessel.tube if vessel is not None else True,
        since_ms=_known_since_ms(state, today),
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


def _known_since_ms(state: ColonyState, today: str) -> int:
    """Return since when we know the colony: a log of its first day, whatever its minute, must count after it.

    How long somebody had it before says nothing: of that time nothing was to be logged.
    """
    entered_on = min(state.entered_on or today, today)
    entered_ms = midnight_ms(entered_on, state.utc_offset_min)
    return min(state.events[0].happened_ms, entered_ms) if state.events else entered_ms
