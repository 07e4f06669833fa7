"""The colony as it is today: what was counted, carried on to now by the living census."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from typing import Final

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate
from ..colony import census
from ..colony.census.facts import Facts
from ..colony.census.from_log import facts_of
from ..colony.census.outlook import Census
from ..colony.counted_workers import MOST_WORKERS
from ..colony.dossier import Dossier
from ..colony.history import day_number, local_day
from ..colony.life_stage import FOUNDING
from ..colony.season import Season
from ..colony.stages import Switches

LOOKED_DAYS: Final = 14
"""So long a word for the larvae stands for their number; by then they are others (common practice, no source)."""
FAR_OFF, MOST_GROWN = 3.0, 6.0
"""So far the census may lie from a count that it is to carry on, and so many times as many at most it makes of it."""
OLD_DAYS: Final = 90
"""A last look that is older says nothing of the coming month; but days of rest do not count (common practice)."""


def foretold(colony: Dossier, switched: Switches, now_ms: int) -> tuple[Facts | None, Census | None]:
    """Return the facts and the living census; None of both without a queen, or where nobody looked lately.

    A parasite's queen has no brood of her own before her hosts: nothing is foretold of her.
    """
    state, history = colony.state, colony.history
    season = switched.season
    if season is None or switched.forecasts_off or switched.stage == "parasitic":
        return None, None
    if season.resting and season.began_on is None:
        return None, None  # what a rest leaves of the brood goes by how long it has lasted
    founds = switched.stage in FOUNDING
    looked_ms = max((count.at_ms for count in history.brood_seen), default=None)
    if looked_ms is None and not (founds and state.founded_on):
        return None, None
    today = local_day(now_ms, state.utc_offset_min)
    if not founds and (looked_ms is None or _awake_days(looked_ms, now_ms, season, today) > OLD_DAYS):
        return None, None
    facts = facts_of(colony, season, today)
    return facts, census.of(facts, day_number(today))


def _awake_days(looked_ms: int, now_ms: int, season: Season, today: dt.date) -> float:
    """Return for how many days nobody looked, without those that the colony rested."""
    looked = dt.date.fromordinal(today.toordinal() - (now_ms - looked_ms) // DAY_MS)
    rests = [season.rested] if season.rested is not None else []
    rests += [(season.began_on, today)] if season.resting and season.began_on is not None else []
    rested = sum(max(0, (min(end, today) - max(begin, looked)).days) for begin, end in rests)
    return (now_ms - looked_ms) / DAY_MS - rested


def by_now(counted: census.Census, living: Census, utc_offset_min: int) -> census.Census:
    """Return what was counted as it is likely to be now: it grew as the living census did since then.

    Larvae that nobody looked for lately are those that the living census believes in.
    """
    workers, brood = counted.workers, counted.brood
    today_ms = living.day * DAY_MS
    if brood.larvae_ms is None or today_ms - brood.larvae_ms > LOOKED_DAYS * DAY_MS:
        counted = replace(counted, brood=replace(brood, larvae_n=living.today.larvae))
    if counted.counted_ms is None or workers.best == 0:
        return counted
    on = day_number(local_day(counted.counted_ms, utc_offset_min))
    if on >= living.day:
        return counted
    then, now = living.workers_on(on), living.today.workers
    if now.best < 1 or not workers.best / FAR_OFF <= then.best <= workers.best * FAR_OFF:
        return counted  # the census does not go with this count
    grown = min(MOST_GROWN, now.best / then.best, MOST_WORKERS / max(1.0, workers.high))
    best = workers.best * grown
    low, high = best * now.low / now.best, min(MOST_WORKERS, best * now.high / now.best)
    return replace(
        counted, workers=Estimate(min(workers.low * grown, low), best, max(workers.high * grown, best, high))
    )
