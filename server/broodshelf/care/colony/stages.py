"""Stage and condition: they switch needs on, off or slower before any gauge speaks.

Puts together what the owners of single questions say: ``life_stage`` (whose stage), ``season`` (rest and yearly clock),
``arrival`` (settling), ``doubts`` (the queen). All rules: common practice, no source, unless a line names one.

Longer than 300 lines because each rule stands beside the reason that it gives.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from ..catalogue import Species
from ..gauges import DAY_MS
from ..plan.bands import interval
from ..plan.state import ColonyState
from ..plan.tasks import Task, reason
from .arrival import Settling, quarantine_notices, settling_notice, settlings_of
from .brood_groups import brood_group
from .census import Brood, Census, census_of
from .climate import Climate, climate_of
from .doubts import ActiveDays, Doubt, queen_doubt, queens_of
from .founding import first_food_days, first_workers_ms, left_in_peace
from .history import History, local_day, midnight_ms, read_history
from .life_stage import NOT_FED, QUEEN_FED, LifeStage, founding_mode, has_nanitics, life_stage
from .season import Season, season_of
from .season_words import season_notices, season_tasks

ALL_FOOD = frozenset({"sugar", "protein", "seeds", "leaves"})
COLD_C: Final = 12.0
"""Below this day temperature no protein is offered."""
SETTLING_SLOWER: Final = 1.5
SEEN_LATELY_DAYS: Final = 28
"""For so long a look at the larvae goes before the yearly clock; by then they are pupae or rest."""

Notice = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Switches:
    """Which needs do not apply, what slows the others, and what the keeper should know.

    ``protein_maintenance``: protein as for a colony without larvae. ``forecasts_off``: no brood or growth forecast.
    ``nanitics``: the workers are of nanitic size. ``first_food``: from and until which day (ISO) the first food is
    given, while that lasts. ``cautions``: for water and room tasks. ``stage``, ``season``: where the colony is now.
    ``excused``: spells in which a refusal teaches nothing. ``food_from_ms``: before this instant food could not be
    given. ``not_now``: states that keep a tasting waiting. ``tasks``: what the keeper is asked.
    """

    off: frozenset[str] = frozenset()
    nothing_at_all: bool = False
    notices: tuple[Notice, ...] = ()
    slower: float = 1.0
    protein_maintenance: bool = False
    forecasts_off: bool = False
    nanitics: bool = False
    first_food: tuple[str, str] | None = None
    cautions: tuple[Notice, ...] = ()
    stage: LifeStage = "workers"
    season: Season | None = None
    excused: tuple[Settling, ...] = ()
    food_from_ms: int | None = None
    not_now: frozenset[str] = frozenset()
    tasks: tuple[Task, ...] = ()

    @property
    def resting(self) -> bool:
        """Say whether the colony rests: nothing is fed, and nothing is forecast."""
        return self.season is not None and self.season.resting

    @property
    def queen_fed(self) -> bool:
        """Say whether a queen without workers is fed."""
        return self.stage in QUEEN_FED


@dataclass(frozen=True, slots=True)
class _Seen:
    """What the single owners said of a colony on a day."""

    state: ColonyState
    species: Species
    day: dt.date
    history: History
    climate: Climate
    brood: Brood
    stage: LifeStage
    season: Season
    spells: tuple[Settling, ...]
    doubt: Doubt | None


def switches(
    state: ColonyState,
    species: Species,
    workers: float | None,
    today: str,
    *,
    history: History | None = None,
    climate: Climate | None = None,
    census: Census | None = None,
) -> Switches:
    """Return the switches of a colony on a day (ISO date in the household's zone).

    ``workers`` None: neither counted nor told by a stage. ``history``, ``climate`` and ``census`` are read from the
    state where they are not given.
    """
    if state.condition in ("dead", "given_away"):
        return Switches(nothing_at_all=True)
    day = dt.date.fromisoformat(today)
    history = read_history(state.events) if history is None else history
    climate = climate_of(state.place, now_ms=0) if climate is None else climate
    census = census_of(state.events, state.stage) if census is None else census
    season = season_of(state, species, climate, day)
    queens = queens_of(history.counts, state.queens)
    seen = _Seen(
        state, species, day, history, climate, census.brood,
        stage=life_stage(state, species, workers, queens=queens, lost_workers=census.fell_to_zero),
        season=season,
        spells=settlings_of(state),
        doubt=queen_doubt(
            history.counts, species, queens, _active_days(season, state.utc_offset_min),
            hatches=_hatches(species, climate),
        ),
    )  # fmt: skip
    return _resting(seen) if season.resting else _awake(seen, workers)


def _resting(seen: _Seen) -> Switches:
    return Switches(
        ALL_FOOD | {"room", "barrier", "glance"},
        notices=tuple(season_notices(seen.season, seen.state, seen.species, seen.day)),
        tasks=tuple(season_tasks(seen.season, seen.state, seen.species, seen.climate, seen.day)),
        excused=seen.spells,
        forecasts_off=True,
        cautions=_cautions(seen.species),
        stage=seen.stage,
        season=seen.season,
        not_now=frozenset({"resting"}),
    )


def _awake(seen: _Seen, workers: float | None) -> Switches:
    state, species, day, stage = seen.state, seen.species, seen.day, seen.stage
    first = first_food_days(state, seen.history) if founding_mode(state, species) == "claustral" else None
    window = first if first is not None and stage == "workers" and day <= first[1] else None
    settles = settling_notice(seen.spells, day, state.utc_offset_min)
    cold = seen.climate.day_c.best < COLD_C
    counted = _larvae_counted_lately(seen)
    queenless = seen.doubt is not None and seen.doubt.queenless
    suspected = state.condition == "queenless_suspected"
    off = _by_guild(species.guild) | _by_stage(stage, founding_mode(state, species))
    if window is not None and day < window[0]:
        off |= ALL_FOOD
    if settles is not None:
        off |= {"room"}
    if cold:
        off |= {"protein"}
    notices: list[Notice] = [] if settles is None or stage in NOT_FED else [settles]
    notices += _stage_notices(seen, window)
    notices += season_notices(seen.season, state, species, day, larvae_counted=counted)
    notices += [_cold_notice(species, seen.climate)] if cold and stage not in NOT_FED else []
    notices += _queen_notices(seen.doubt, stage, suspected=suspected)
    notices += quarantine_notices(state, day, quarantined=_is(state, "quarantine", day))
    if species.spins_cocoons and seen.brood.larvae not in (None, "none"):
        notices.append(reason("cocoon_substrate"))
    return Switches(
        off,
        notices=tuple(notices),
        slower=SETTLING_SLOWER if settles is not None else 1.0,
        protein_maintenance=counted is None and (seen.season.slow or queenless),
        excused=(*seen.spells, *_slow_spells(seen)),
        forecasts_off=suspected or stage == "empty" or (seen.doubt is not None and seen.doubt.certain),
        nanitics=has_nanitics(state, workers),
        first_food=None if window is None else (window[0].isoformat(), window[1].isoformat()),
        cautions=_cautions(species),
        stage=stage,
        season=seen.season,
        food_from_ms=_food_from_ms(seen, first),
        not_now=_not_now(seen, settling=settles is not None, suspected=suspected),
        tasks=(*_asked(seen), *season_tasks(seen.season, state, species, seen.climate, day)),
    )


def _stage_notices(seen: _Seen, window: tuple[dt.date, dt.date] | None) -> list[Notice]:
    """Return what its stage asks of the keeper: how a queen founds, when the first food comes."""
    stage, species = seen.stage, seen.species
    if stage == "claustral":
        return list(left_in_peace(seen.state, species, seen.history, seen.day))
    if stage == "workers":
        hosts = seen.state.stage == "founding" and founding_mode(seen.state, species) == "parasitic"
        first = [] if window is None else [_first_food_notice(window, seen.day)]
        return [*first, *([reason("parasitic_hosts")] if hosts else [])]
    if stage == "unknown":
        return [reason("stage_unknown")]
    if stage == "empty":
        return [reason("colony_empty")]
    if stage == "parasitic":
        return [reason("parasitic")]
    code = f"{stage}_{species.guild}" if species.guild in ("harvester", "fungus_grower") else stage
    need = "leaves" if species.guild == "fungus_grower" else "protein"
    usual = interval(need, species, 0, has_larvae=None, queen_fed=True)
    return [reason(code, low=_whole(usual.low_days), high=_whole(usual.high_days))]


def _queen_notices(doubt: Doubt | None, stage: LifeStage, *, suspected: bool) -> list[Notice]:
    if stage == "empty":
        return []
    if suspected:
        return [reason("queenless")]
    return [] if doubt is None else [doubt.notice]


def _asked(seen: _Seen) -> list[Task]:
    """Return what the keeper is asked because nobody can know it: today, until it is answered."""
    today_ms = midnight_ms(seen.day.isoformat(), seen.state.utc_offset_min)
    if seen.stage == "unknown":
        return [Task("ask:stage", "glance", today_ms, reasons=(reason("ask_stage"),))]
    if seen.stage == "alone":
        return [Task("ask:workers", "glance", today_ms, reasons=(reason("ask_workers"),))]
    return []


def _by_stage(stage: LifeStage, founds: str) -> frozenset[str]:
    """Return what a stage switches off. Where nobody knows it, only what harms neither a queen nor a colony is on."""
    if stage == "workers":
        return frozenset()
    if stage in NOT_FED:
        return ALL_FOOD | {"room", "barrier", "glance"}
    if stage == "unknown":
        return frozenset({"room", "glance"} | ({"protein"} if founds == "claustral" else set()))
    return frozenset({"room", "glance"} if stage == "alone" else {"room"}) | (
        {"protein"} if stage == "parasitic" else frozenset()
    )


def _by_guild(guild: str) -> frozenset[str]:
    """Which foods a guild has no gauge for. Harvesters are never nagged about sugar."""
    if guild == "fungus_grower":
        return ALL_FOOD - {"leaves"}
    if guild == "harvester":
        return frozenset({"sugar", "leaves"})
    return frozenset({"seeds", "leaves"})


def _larvae_counted_lately(seen: _Seen) -> bool | None:
    """Say whether larvae were there when somebody last looked; None: nobody did in four weeks."""
    at_ms, larvae = seen.brood.larvae_ms, seen.brood.larvae
    if at_ms is None or larvae is None:
        return None
    days = (seen.day - local_day(at_ms, seen.state.utc_offset_min)).days
    return larvae != "none" if days <= SEEN_LATELY_DAYS else None


def _food_from_ms(seen: _Seen, first: tuple[dt.date, dt.date] | None) -> int | None:
    """Return the instant before which this colony could not be fed; None: it always could, as far as is known."""
    offset_min = seen.state.utc_offset_min
    days: list[dt.date] = []
    if first is not None:
        days.append(first[0])
    elif founding_mode(seen.state, seen.species) == "claustral" and not _ever_fed(seen.state):
        workers_ms = first_workers_ms(seen.history)
        days += [] if workers_ms is None else [local_day(workers_ms, offset_min)]
    if seen.season.rested is not None:
        days.append(seen.season.rested[1])
    if seen.season.misfit is not None:  # only from today on is it fed in spite of what the keeper marked
        days.append(seen.day)
    return max((midnight_ms(day.isoformat(), offset_min) for day in days), default=None)


def _ever_fed(state: ColonyState) -> bool:
    return any(event.kind == "feeding" for event in state.events)


def _slow_spells(seen: _Seen) -> list[Settling]:
    """Return the spell in which its clock slows the colony, as far as it began: before its rest it may refuse."""
    if not seen.season.slow:
        return []
    begin = max(begin for begin, end in seen.season.still if begin <= seen.day < end)
    begin_ms = midnight_ms(begin.isoformat(), seen.state.utc_offset_min)
    return [Settling(begin_ms, midnight_ms(seen.day.isoformat(), seen.state.utc_offset_min) + DAY_MS)]


def _not_now(seen: _Seen, *, settling: bool, suspected: bool) -> frozenset[str]:
    """Return the states for which a tasting waits: a refusal would mean nothing, or there is no one to taste."""
    founding = seen.stage != "workers" or seen.state.stage == "founding"
    states = {"founding": founding, "settling": settling, "queenless_suspected": suspected}
    return frozenset(name for name, holds in states.items() if holds)


def _is(state: ColonyState, condition: str, day: dt.date) -> bool:
    """Say whether a condition holds: it ends on its day, where one was set."""
    until = state.condition_until
    return state.condition == condition and (until is None or until >= day.isoformat())


def _active_days(season: Season, utc_offset_min: int) -> ActiveDays:
    def active_days(first_ms: int, last_ms: int) -> int:
        first, last = local_day(first_ms, utc_offset_min), local_day(last_ms, utc_offset_min)
        return (last - first).days - season.still_days(first, last)

    return active_days


def _hatches(species: Species, climate: Climate) -> bool:
    """Say whether it is warm enough for eggs to become larvae within weeks."""
    return climate.mean_c.best > brood_group(species).eggs.threshold_c + 2


def _cautions(species: Species) -> tuple[Notice, ...]:
    """The repletes of a honeypot colony hang from the ceiling; they are its store and must not fall."""
    return (reason("never_tilt"),) if species.guild == "honeypot" else ()


def _cold_notice(species: Species, climate: Climate) -> Notice:
    rests = species.rest is not None or species.code is None
    code = "too_cold_for_protein" if rests else "too_cold_for_species"
    return reason(code, day_c=round(climate.day_c.best, 1), limit_c=COLD_C)


def _first_food_notice(days: tuple[dt.date, dt.date], today: dt.date) -> Notice:
    low, high = ((day - today).days for day in days)
    return reason("first_food_soon", low=low, high=high) if low > 0 else reason("first_food_now", days=high)


def _whole(days: float) -> float:
    return int(days) if float(days).is_integer() else days
