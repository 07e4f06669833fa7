"""Stage and condition: they switch needs on, off or slower before any gauge speaks.

Puts together what the owners of single questions say: ``life_stage`` (whose stage), ``season`` (rest and yearly clock),
``arrival`` (settling), ``doubts`` (the queen). All rules: common practice, no source, unless a line names one.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from typing import Final

from ...model.facts import ColonyState
from ...model.gauges import DAY_MS
from ...model.kinds.plan import Reason
from ...model.kinds.words import NO_LONGER_KEPT
from ...model.needs import ALL_FOOD, Need
from ...model.tasks import Task, reason
from ..catalogue import Species
from .arrival import Settling, quarantine_notices, settling_notice
from .dossier import Dossier
from .earliest import awake_from_ms, food_from_ms, larvae_from_ms
from .founding import first_food_days
from .history import midnight_ms
from .life_stage import NOT_FED, QUEEN_FED, LifeStage, founding_mode, has_nanitics
from .season import Season
from .season_words import season_notices, season_tasks
from .seen import Seen, larvae_counted_lately, look
from .stage_words import asked, cold_notice, queen_notices, stage_notices

_QUIET: Final[frozenset[Need]] = frozenset({"room", "glance"})
"""What is off where every look disturbs, or there is nothing to see."""
COLD_C: Final = 12.0
"""Below this day temperature no protein is offered."""
SETTLING_SLOWER: Final = 1.5

Notice = Reason


@dataclass(frozen=True, slots=True)
class Switches:
    """Which needs do not apply, what slows the others, and what the keeper should know.

    ``maintenance``: why protein is as for a colony without larvae, None: it is not. ``forecasts_off``: no brood or
    growth forecast. ``nanitics``: the workers are of nanitic size. ``first_food``: from and until which day (ISO) the
    first food is given, while that lasts. ``cautions``: for water and room tasks. ``stage``, ``season``: where the
    colony is now.
    ``excused``: spells in which a refusal teaches nothing. ``food_from_ms``: before this instant food could not be
    given. ``awake_from_ms``: the end of its last rest. ``larvae_from_ms``: since when larvae are known that nobody
    reckoned with before. ``not_now``: states that keep a tasting waiting. ``tasks``: what the keeper is asked.
    """

    off: frozenset[Need] = frozenset()
    nothing_at_all: bool = False
    notices: tuple[Notice, ...] = ()
    slower: float = 1.0
    maintenance: Notice | None = None
    forecasts_off: bool = False
    nanitics: bool = False
    first_food: tuple[str, str] | None = None
    cautions: tuple[Notice, ...] = ()
    stage: LifeStage = "workers"
    season: Season | None = None
    excused: tuple[Settling, ...] = ()
    food_from_ms: int | None = None
    awake_from_ms: int | None = None
    larvae_from_ms: int | None = None
    not_now: frozenset[str] = frozenset()
    tasks: tuple[Task, ...] = ()

    @property
    def protein_maintenance(self) -> bool:
        """Say whether protein is as for a colony without larvae, whatever larvae may be thought of."""
        return self.maintenance is not None

    @property
    def resting(self) -> bool:
        """Say whether the colony rests: nothing is fed, and nothing grows before it wakes."""
        return self.season is not None and self.season.resting

    @property
    def queen_fed(self) -> bool:
        """Say whether a queen without workers is fed."""
        return self.stage in QUEEN_FED


def switches(colony: Dossier, workers: float | None, today: str) -> Switches:
    """Return the switches of a colony on a day (ISO date in the household's zone).

    ``workers`` None: neither counted nor told by a stage.
    """
    if colony.state.condition in NO_LONGER_KEPT:
        return Switches(nothing_at_all=True)
    seen = look(colony, workers, dt.date.fromisoformat(today))
    return _resting(seen) if seen.season.resting else _awake(seen, workers)


def _resting(seen: Seen) -> Switches:
    return Switches(
        ALL_FOOD | {"room", "barrier", "glance"},
        notices=tuple(season_notices(seen.season, seen.state, seen.species, seen.day)),
        tasks=tuple(season_tasks(seen.season, seen.state, seen.species, seen.climate, seen.day)),
        excused=seen.spells,
        forecasts_off=_forecasts_off(seen),
        cautions=_cautions(seen.species),
        stage=seen.stage,
        season=seen.season,
        not_now=frozenset({"resting"}),
    )


def _awake(seen: Seen, workers: float | None) -> Switches:
    state, species, day, stage = seen.state, seen.species, seen.day, seen.stage
    first = first_food_days(state, seen.history) if founding_mode(state, species) == "claustral" else None
    window = first if first is not None and stage == "workers" and day <= first[1] else None
    settles = settling_notice(seen.spells, day, state.utc_offset_min)
    cold = seen.climate.day_c.best < COLD_C
    counted = larvae_counted_lately(seen)
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
    notices += stage_notices(seen, window)
    if stage != "empty":
        notices += season_notices(
            seen.season, state, species, day, larvae_counted=counted, protein="protein" not in off
        )
    notices += [cold_notice(species, seen.climate, COLD_C)] if cold and stage not in NOT_FED else []
    notices += queen_notices(seen, suspected=suspected)
    notices += quarantine_notices(state, day, quarantined=_is(state, "quarantine", day))
    if species.spins_cocoons and seen.counted.brood.larvae not in (None, "none"):
        notices.append(reason("cocoon_substrate"))
    return Switches(
        off,
        notices=tuple(notices),
        slower=SETTLING_SLOWER if settles is not None else 1.0,
        maintenance=_maintenance(seen, counted, queenless=queenless),
        excused=(*seen.spells, *_slow_spells(seen)),
        forecasts_off=_forecasts_off(seen),
        nanitics=has_nanitics(state, workers),
        first_food=None if window is None else (window[0].isoformat(), window[1].isoformat()),
        cautions=_cautions(species),
        stage=stage,
        season=seen.season,
        food_from_ms=food_from_ms(seen, first),
        awake_from_ms=awake_from_ms(seen),
        larvae_from_ms=larvae_from_ms(seen),
        not_now=_not_now(seen, settling=settles is not None, suspected=suspected),
        tasks=(*asked(seen), *season_tasks(seen.season, state, species, seen.climate, day)),
    )


def _forecasts_off(seen: Seen) -> bool:
    """Say whether nothing is foretold: no queen, or one who is doubted."""
    certain = seen.doubt is not None and seen.doubt.certain
    return certain or seen.stage == "empty" or seen.state.condition == "queenless_suspected"


def _by_stage(stage: LifeStage, founds: str) -> frozenset[Need]:
    """Return what a stage switches off. Where nobody knows it, only what harms neither a queen nor a colony is on."""
    if stage == "workers":
        return frozenset()
    if stage in NOT_FED:
        return ALL_FOOD | {"room", "barrier", "glance"}
    if stage == "unknown":
        return _QUIET | {"protein"} if founds == "claustral" else _QUIET
    if stage == "alone":
        return _QUIET
    return frozenset({"room", "protein"}) if stage == "parasitic" else frozenset({"room"})


def _by_guild(guild: str) -> frozenset[Need]:
    """Which foods a guild has no gauge for. Harvesters are never nagged about sugar."""
    if guild == "fungus_grower":
        return ALL_FOOD - {"leaves"}
    if guild == "harvester":
        return frozenset({"sugar", "leaves"})
    return frozenset({"seeds", "leaves"})


def _not_now(seen: Seen, *, settling: bool, suspected: bool) -> frozenset[str]:
    """Return the states for which a tasting waits: a refusal would mean nothing, or there is no one to taste."""
    founding = seen.stage != "workers" or seen.state.stage == "founding"
    states = {"founding": founding, "settling": settling, "queenless_suspected": suspected}
    return frozenset(name for name, holds in states.items() if holds)


def _is(state: ColonyState, condition: str, day: dt.date) -> bool:
    """Say whether a condition holds: it ends on its day, where one was set."""
    until = state.holds_until
    return state.condition == condition and (until is None or until >= day.isoformat())


def _cautions(species: Species) -> tuple[Notice, ...]:
    """The repletes of a honeypot colony hang from the ceiling; they are its store and must not fall."""
    return (reason("never_tilt"),) if species.guild == "honeypot" else ()


def _maintenance(seen: Seen, counted: bool | None, *, queenless: bool) -> Notice | None:
    """Return why no larvae are to be expected where nobody counted any lately; None: the count or nothing says so."""
    if counted is not None:
        return None
    if queenless:
        return reason("no_brood_expected")
    return reason("quiet_season") if seen.season.slow else None


def _slow_spells(seen: Seen) -> list[Settling]:
    """Return the spell in which its clock slows the colony, as far as it began: before its rest it may refuse."""
    if not seen.season.slow:
        return []
    begin = max(begin for begin, end in seen.season.still if begin <= seen.day < end)
    begin_ms = midnight_ms(begin.isoformat(), seen.state.utc_offset_min)
    return [Settling(begin_ms, midnight_ms(seen.day.isoformat(), seen.state.utc_offset_min) + DAY_MS)]
