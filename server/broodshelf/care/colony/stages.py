"""Stage and condition: they switch needs on, off or slower before any gauge speaks.

All rules here are common practice, no source, unless a line names one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from ..catalogue import Species
from ..plan.state import ColonyState

ALL_FOOD = frozenset({"sugar", "protein", "seeds", "leaves"})


@dataclass(frozen=True, slots=True)
class Switches:
    """Which needs do not apply, what slows the others, and what the keeper should know."""

    off: frozenset[str] = frozenset()
    nothing_at_all: bool = False
    notices: tuple[Mapping[str, Any], ...] = ()
    slower: float = 1.0
    reasons: tuple[Mapping[str, Any], ...] = field(default=())


def switches(state: ColonyState, species: Species, workers: float | None, today: str) -> Switches:
    """Return the switches of a colony on a day (ISO date in the household's zone)."""
    condition = state.condition or "well"
    if state.condition_until and state.condition_until < today:
        condition = "well"
    if condition in ("dead", "given_away"):
        return Switches(nothing_at_all=True)
    if condition == "resting":
        return Switches(ALL_FOOD | {"room", "glance"}, notices=(_notice("resting"),))
    off = _by_guild(species.guild)
    founding = (state.founding_mode or species.founding) == "claustral" and not workers
    if founding and (state.stage or "founding") == "founding":
        return Switches(off | ALL_FOOD | {"room", "barrier", "glance"}, notices=(_notice("claustral"),))
    if condition == "settling":
        return Switches(off | {"room"}, notices=(_notice("settling"),), slower=1.5)
    notices = {"queenless_suspected": "queenless", "quarantine": "quarantine"}
    return Switches(off, notices=(_notice(notices[condition]),) if condition in notices else ())


def _by_guild(guild: str) -> frozenset[str]:
    """Which foods a guild has no gauge for. Harvesters are never nagged about sugar."""
    if guild == "fungus_grower":
        return ALL_FOOD - {"leaves"}
    if guild == "harvester":
        return frozenset({"sugar", "leaves"})
    return frozenset({"seeds", "leaves"})


def _notice(code: str, **args: Any) -> Mapping[str, Any]:
    return {"code": code, "args": args}
