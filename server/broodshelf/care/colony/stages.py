"""Stage and condition: they switch needs on, off or slower before any gauge speaks.

All rules here are common practice, no source, unless a line names one.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from ..catalogue import Species
from ..plan.state import ColonyState
from ..plan.tasks import reason
from .arrival import quarantine_notices, settling_notice
from .climate import Climate, climate_of
from .doubts import queen_doubt
from .founding import first_food_days, has_nanitics, left_in_peace
from .history import History, read_history
from .yearly_clock import slowed

ALL_FOOD = frozenset({"sugar", "protein", "seeds", "leaves"})
COLD_C: Final = 12.0
"""Below this day temperature no protein is offered."""
KEPT_WARM_C: Final = 15.0
"""From here on a colony with a yearly clock counts as kept warm."""
SETTLING_SLOWER: Final = 1.5

Notice = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Switches:
    """Which needs do not apply, what slows the others, and what the keeper should know.

    ``protein_maintenance``: protein as for a colony without larvae. ``refusals_mean_nothing``: a check teaches
    nothing now. ``forecasts_off``: no brood or growth forecast. ``nanitics``: the workers are of nanitic size.
    ``first_food``: from and until which day (ISO) the first food is due. ``cautions``: for water and room tasks.
    """

    off: frozenset[str] = frozenset()
    nothing_at_all: bool = False
    notices: tuple[Notice, ...] = ()
    slower: float = 1.0
    reasons: tuple[Notice, ...] = ()
    protein_maintenance: bool = False
    refusals_mean_nothing: bool = False
    forecasts_off: bool = False
    nanitics: bool = False
    first_food: tuple[str, str] | None = None
    cautions: tuple[Notice, ...] = ()


def switches(
    state: ColonyState,
    species: Species,
    workers: float | None,
    today: str,
    *,
    history: History | None = None,
    climate: Climate | None = None,
) -> Switches:
    """Return the switches of a colony on a day (ISO date in the household's zone).

    ``history`` and ``climate`` are read from the state where they are not given.
    """
    day = dt.date.fromisoformat(today)
    condition = state.condition or "well"
    if state.condition_until and state.condition_until < today:
        condition = "well"
    if condition in ("dead", "given_away"):
        return Switches(nothing_at_all=True)
    # The repletes of a honeypot colony hang from the ceiling; they are its store and must not fall.
    cautions = (reason("never_tilt"),) if species.guild == "honeypot" else ()
    if condition == "resting":
        off = ALL_FOOD | {"room", "glance"}
        return Switches(off, notices=_resting(state, day), refusals_mean_nothing=True, cautions=cautions)
    history = read_history(state.events) if history is None else history
    mode = state.founding_mode or species.founding
    if mode == "claustral" and not workers and (state.stage or "founding") == "founding":
        off = _by_guild(species.guild) | ALL_FOOD | {"room", "barrier", "glance"}
        return Switches(off, notices=left_in_peace(state, history, day), cautions=cautions)
    climate = climate_of(state.place, now_ms=0) if climate is None else climate
    notices: list[Notice] = []
    if not workers and mode in ("semi_claustral", "parasitic"):
        notices.append(reason(mode))
    food = first_food_days(state, history, day) if mode == "claustral" else None
    if food is not None:
        notices.append(_first_food_notice(food, day))
    settles = reason("settling") if condition == "settling" else settling_notice(state, history, day)
    cold = climate.day_c.best < COLD_C
    if cold:
        notices.append(reason("too_cold_for_protein", day_c=round(climate.day_c.best, 1), limit_c=COLD_C))
    slow = slowed(species, day, state.latitude_sign) and climate.mean_c.best >= KEPT_WARM_C
    if slow:
        notices.append(reason("yearly_clock"))
    doubt = queen_doubt(history.counts, species, state.latitude_sign, state.utc_offset_min)
    suspected = condition == "queenless_suspected"
    if suspected or doubt is not None:
        notices.append(reason("queenless") if suspected or doubt is None else doubt.notice)
    notices += quarantine_notices(state, day, quarantined=condition == "quarantine")
    if species.spins_cocoons and history.counts and history.counts[-1].larvae not in (None, "none"):
        notices.append(reason("cocoon_substrate"))
    return Switches(
        _by_guild(species.guild)
        | (ALL_FOOD if food is not None and day < food[0] else frozenset())
        | ({"room"} if condition == "settling" else frozenset())
        | ({"protein"} if cold else frozenset()),
        notices=((settles,) if settles is not None else ()) + tuple(notices),
        slower=SETTLING_SLOWER if condition == "settling" else 1.0,
        protein_maintenance=slow,
        refusals_mean_nothing=settles is not None,
        forecasts_off=suspected or (doubt is not None and doubt.certain),
        nanitics=has_nanitics(state, workers),
        first_food=(food[0].isoformat(), food[1].isoformat()) if food is not None else None,
        cautions=cautions,
    )


def _resting(state: ColonyState, today: dt.date) -> tuple[Notice, ...]:
    if not state.condition_until:
        return (reason("resting"),)
    days = (dt.date.fromisoformat(state.condition_until) - today).days
    return (reason("resting"), reason("wakes_in", days=days))


def _first_food_notice(days: tuple[dt.date, dt.date], today: dt.date) -> Notice:
    low, high = ((day - today).days for day in days)
    return reason("first_food_soon", low=low, high=high) if low > 0 else reason("first_food_now", days=high)


def _by_guild(guild: str) -> frozenset[str]:
    """Which foods a guild has no gauge for. Harvesters are never nagged about sugar."""
    if guild == "fungus_grower":
        return ALL_FOOD - {"leaves"}
    if guild == "harvester":
        return frozenset({"sugar", "leaves"})
    return frozenset({"seeds", "leaves"})
