"""Colonies, and the rhythm that a keeper sets for one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Final

from ..needs import NEEDS, Need
from .forms import Choice, DayText, ListOf, Number, Ref, TableOf, Text, WallTimeText, WholeNumber
from .words import Condition, FoundingMode, Guild, Stage

_SHORTEST_DAYS: Final = 0.25
_LONGEST_DAYS: Final = 365
_RULED: Final = tuple(need for need, row in NEEDS.items() if row.may_wait)
_RULED_WHY: Final = (
    f"A rule is for {', '.join(_RULED)}; water, room and leftovers come when due, no rule puts them off."
)


@dataclass(slots=True, kw_only=True)
class Colony:
    """A colony. ``guild``, ``founding_mode`` and ``stings``: the keeper's word on a species of their own.

    ``interval_days``: how many days apart by need, as an older app set it; ``rule`` took its place. ``helper_hint`` and
    ``helper_photo_id``: what the keeper tells and shows whoever stands in, above the steps of each task.
    """

    name: Annotated[str, Text(60)]
    number: Annotated[int, WholeNumber(1, 9999)] | None = None
    species_code: Annotated[str, Text(60)] | None = None
    species_name: Annotated[str, Text(80)] | None = None
    worker_length_mm: Annotated[float, Number(0.8, 40, "mm")] | None = None
    founding_mode: FoundingMode | None = None
    guild: Guild | None = None
    stings: bool | None = None
    stage: Stage | None = None
    condition: Condition | None = None
    condition_until: DayText | None = None
    founded_on: DayText | None = None
    acquired_on: DayText | None = None
    queens: Annotated[int, WholeNumber(0, 1000)] | None = None
    vessel_id: Annotated[str, Ref("vessel")] | None = None
    place_id: Annotated[str, Ref("place")] | None = None
    interval_days: (
        Annotated[
            dict[Need, float], TableOf(Choice(tuple(NEEDS)), Number(_SHORTEST_DAYS, _LONGEST_DAYS, "days"))
        ]
        | None
    ) = None
    host_species_code: Annotated[str, Text(60)] | None = None
    resting_since: DayText | None = None
    came_from: Annotated[str, Text(200)] | None = None
    went_to: Annotated[str, Text(200)] | None = None
    died_of: Annotated[str, Text(200)] | None = None
    remark: Annotated[str, Text(4000)] | None = None
    helper_hint: Annotated[str, Text(300)] | None = None
    helper_photo_id: Annotated[str, Ref("photo", awaited=False)] | None = None


@dataclass(slots=True, kw_only=True)
class Rule:
    """The keeper's own rhythm for a need of a colony. ``weekdays``: 0 is Monday, none means all."""

    colony_id: Annotated[str, Ref("colony")]
    need: Annotated[Need, Choice(_RULED, why=_RULED_WHY)]
    every_days: Annotated[float, Number(_SHORTEST_DAYS, _LONGEST_DAYS, "days")] | None = None
    weekdays: Annotated[list[int], ListOf(WholeNumber(0, 6), 7)] | None = None
    at: WallTimeText | None = None
    paused_until: DayText | None = None
