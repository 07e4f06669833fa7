"""The household itself: who belongs to it, where colonies live, who looks after them meanwhile."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from .forms import (
    DayText,
    LanguageTag,
    ListOf,
    Number,
    Ref,
    Text,
    WallTime,
    WallTimeText,
    WholeNumber,
    Zone,
)
from .words import Degrees, PersonRole, PlaceType, Volumes
from .writers import SERVER


@dataclass(slots=True, kw_only=True)
class Household:
    """The household's one record of itself: its clock, when it cares for its ants and when it sleeps.

    ``patience_hours``: after which somebody else is told of what waits. ``invented``: a demonstration.
    """

    name: Annotated[str, Text(80)]
    zone: Annotated[str, Zone()]
    care_hours: Annotated[list[str], ListOf(WallTime(), 2)] | None = None
    quiet_from: WallTimeText | None = None
    quiet_to: WallTimeText | None = None
    patience_hours: Annotated[float, Number(1, 72, "h")] | None = None
    backup_patience_days: Annotated[float, Number(0, 400, "days")] | None = None
    invented: Annotated[bool | None, SERVER] = None


@dataclass(slots=True, kw_only=True)
class Person:
    """Somebody of the household. ``pass_id``: the pass that a stand-in came by.

    ``language``: the one that they are told in, as ``language`` or ``language-REGION`` (BCP 47).
    ``degrees``, ``volumes``: the units that they are told in; those of the region where nobody chose.
    """

    name: Annotated[str, Text(60)]
    role: Annotated[PersonRole | None, SERVER] = None
    pass_id: Annotated[str | None, Ref("pass", awaited=False), SERVER] = None
    language: LanguageTag | None = None
    degrees: Degrees | None = None
    volumes: Volumes | None = None


@dataclass(slots=True, kw_only=True)
class Place:
    """Where vessels stand, and how warm and moist it is there."""

    name: Annotated[str, Text(60)]
    place_type: PlaceType | None = None
    day_temp_c: Annotated[float, Number(-10, 45, "°C")] | None = None
    night_temp_c: Annotated[float, Number(-10, 45, "°C")] | None = None
    humidity_pct: Annotated[float, Number(0, 100, "%")] | None = None


@dataclass(slots=True, kw_only=True)
class Vessel:
    """What a colony lives in: one of the catalogue, or one's own with its sizes."""

    name: Annotated[str, Text(60)] | None = None
    vessel_code: Annotated[str, Text(60)] | None = None
    bore_mm: Annotated[float, Number(3, 200, "mm")] | None = None
    length_mm: Annotated[float, Number(20, 1000, "mm")] | None = None
    volume_ml: Annotated[float, Number(0.5, 200_000, "mL")] | None = None
    reservoir_ml: Annotated[float, Number(0, 5_000, "mL")] | None = None
    reservoir_length_mm: Annotated[float, Number(0, 1000, "mm")] | None = None
    has_outworld: bool | None = None


@dataclass(slots=True, kw_only=True)
class Pass:
    """What lets a stand-in in: for these colonies, on these days.

    ``language``, ``degrees``, ``volumes``: the language that the stand-in reads, and the units in it.
    """

    name: Annotated[str, Text(60)]
    colony_ids: Annotated[list[str], ListOf(Ref("colony", awaited=False), 200)]
    starts_on: DayText
    ends_on: DayText
    instructions: Annotated[str, Text(4000)] | None = None
    emergency_contact: Annotated[str, Text(200)] | None = None
    stinging_ok_ids: Annotated[list[str], ListOf(Ref("colony", awaited=False), 200)] | None = None
    language: LanguageTag | None = None
    degrees: Degrees | None = None
    volumes: Volumes | None = None
    revoked_at_ms: Annotated[int | None, WholeNumber(0, 10**14, "ms since 1970 UTC"), SERVER] = None
