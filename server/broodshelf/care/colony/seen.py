"""What the owners of single questions say of a colony on a day, gathered for those that put it together."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from ..catalogue import Species
from .arrival import Settling, settlings_of
from .census import life_group
from .census.founding_course import missed
from .census.from_log import facts_of
from .climate import Climate
from .dossier import Dossier
from .doubts import ActiveDays, Doubt, Missed, queen_doubt, queens_of
from .history import Count, day_number, local_day
from .life_stage import LifeStage, life_stage
from .season import Season, season_of

SEEN_LATELY_DAYS: Final = 28
"""For so long a look at the larvae goes before the yearly clock; by then they are pupae or rest (common practice)."""


@dataclass(frozen=True, slots=True)
class Seen(Dossier):
    """A colony on a day of the household's zone: its dossier with what the owners of the questions say."""

    day: dt.date
    stage: LifeStage
    season: Season
    spells: tuple[Settling, ...]
    doubt: Doubt | None


def look(colony: Dossier, workers: float | None, day: dt.date) -> Seen:
    """Return what is known of a colony on a day; ``workers`` None: neither counted nor told by a stage."""
    state, species, history, climate = colony.state, colony.species, colony.history, colony.climate
    season = season_of(state, species, climate, day)
    queens = queens_of(history.counts, state.queens)
    return Seen(
        state, species, history, climate, colony.by_day, colony.counted, day,
        stage=life_stage(state, species, workers, queens=queens, lost_workers=colony.counted.fell_to_zero),
        season=season,
        spells=settlings_of(state),
        doubt=queen_doubt(
            history.counts, species, queens, _active_days(season, state.utc_offset_min),
            missed=_missed(colony, season, day),
            hatches=_hatches(species, climate),
        ),
    )  # fmt: skip


def larvae_counted_lately(seen: Seen) -> bool | None:
    """Say whether larvae were there when somebody last looked; None: nobody did in four weeks."""
    at_ms, larvae = seen.counted.brood.larvae_ms, seen.counted.brood.larvae
    if at_ms is None or larvae is None:
        return None
    days = (seen.day - local_day(at_ms, seen.state.utc_offset_min)).days
    return larvae != "none" if days <= SEEN_LATELY_DAYS else None


def _active_days(season: Season, utc_offset_min: int) -> ActiveDays:
    def active_days(first_ms: int, last_ms: int) -> int:
        first, last = local_day(first_ms, utc_offset_min), local_day(last_ms, utc_offset_min)
        return (last - first).days - season.still_days(first, last)

    return active_days


def _missed(colony: Dossier, season: Season, day: dt.date) -> Missed:
    def odds(looks: Sequence[Count], brood: str) -> float:
        facts = facts_of(replace(colony, by_day=()), season, day)  # by the settings of its place alone
        days = [day_number(local_day(look.at_ms, colony.state.utc_offset_min)) for look in looks]
        return missed(facts, day_number(day), days, brood)

    return odds


def _hatches(species: Species, climate: Climate) -> bool:
    """Say whether it is warm enough for eggs to become larvae within weeks."""
    return climate.mean_c.best > life_group(species.genus).eggs.threshold_c + 2
