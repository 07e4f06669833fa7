"""What there is to feed, and the tastings that find out what a colony likes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from .forms import DayText, ListOf, Number, Ref, Text
from .words import Origin, SizeClass, Tint, Unit


@dataclass(slots=True, kw_only=True)
class Lot:
    """A food in the house, and where it is from. ``percent_ww``: grams of sugar in 100 g."""

    name: Annotated[str, Text(80)] | None = None
    food_code: Annotated[str, Text(60)]
    origin: Origin
    got_on: DayText | None = None
    hold_until: DayText | None = None
    use_by: DayText | None = None
    amount: Annotated[float, Number(0, 1_000_000)] | None = None
    unit: Unit | None = None
    size_class: SizeClass | None = None
    tint: Tint | None = None
    percent_ww: Annotated[float, Number(0, 100, "% w/w")] | None = None
    finished_on: DayText | None = None
    remark: Annotated[str, Text(2000)] | None = None


@dataclass(slots=True, kw_only=True)
class Tasting:
    """Foods that are offered to some colonies in turn."""

    name: Annotated[str, Text(80)]
    colony_ids: Annotated[list[str], ListOf(Ref("colony", awaited=False), 200)]
    food_codes: Annotated[list[str], ListOf(Text(60), 20)]
    started_on: DayText
    ended_on: DayText | None = None
