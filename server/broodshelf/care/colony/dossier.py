"""What every question about a colony goes by: gathered once a plan and handed on whole."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ...model.facts import ColonyState
from ..catalogue import Species
from .census.counted import Census, census_of
from .climate import Climate, climate_of
from .day_climate import DayClimate
from .history import History, read_history


@dataclass(frozen=True, slots=True)
class Dossier:
    """A colony's state and species, its log as read, the climate around it, and what was counted last.

    ``by_day``: how warm and moist its place was on the days up to today; empty where only its settings are to speak.
    """

    state: ColonyState
    species: Species
    history: History
    climate: Climate
    by_day: Sequence[DayClimate]
    counted: Census


def dossier_of(
    state: ColonyState, species: Species, climate: Climate | None = None, by_day: Sequence[DayClimate] = ()
) -> Dossier:
    """Return the dossier of a colony; its place's settings make the climate where none is given.

    Raises ``OutOfRange`` for counts or places that cannot be.
    """
    return Dossier(
        state,
        species,
        read_history(state.events),
        climate_of(state.place, now_ms=0) if climate is None else climate,
        by_day,
        census_of(state.events, state.stage),
    )
