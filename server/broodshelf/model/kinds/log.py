"""What is logged: something that happened to a colony, or at a place. Amended or voided later, never in conflict."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from ..needs import FaultCode, FoodNeed, Need
from .forms import (
    Choice,
    Instant,
    InstantText,
    ListOf,
    Number,
    Ref,
    Sha256,
    Text,
    WholeNumber,
)
from .words import (
    COLOUR_SEEN,
    Brood,
    BroodSeen,
    Coarse,
    ColourSeen,
    MoveWay,
    Origin,
    Outcome,
    ServedAs,
    SizeClass,
    Unit,
    WaterAction,
    WaterReading,
)
from .writers import KEEPER, SERVER


@dataclass(slots=True, kw_only=True)
class OfColony:
    """Which colony an event is about."""

    colony_id: Annotated[str, Ref("colony")]


@dataclass(slots=True, kw_only=True)
class AtPlace:
    """At which place it was measured."""

    place_id: Annotated[str, Ref("place")]


@dataclass(slots=True, kw_only=True)
class Happened:
    """What every event says: when it happened, and what the keeper wrote beside it."""

    happened_at: InstantText
    remark: Annotated[str, Text(2000)] | None = None


@dataclass(slots=True, kw_only=True)
class Answers:
    """What an event answers. ``task_key``: the task; ``suggested``: logged as the plan said.

    ``possible_repeat``: somebody else logged the same; it does not count until it is ``confirmed``.
    """

    task_key: Annotated[str, Text(120)] | None = None
    suggested: bool | None = None
    possible_repeat: Annotated[bool | None, SERVER] = None
    confirmed: Annotated[bool | None, KEEPER] = None


@dataclass(slots=True, kw_only=True)
class Feeding:
    """Food was given. ``despite``: the codes of the warnings about its origin that the keeper read and went past."""

    need: FoodNeed
    food_code: Annotated[str, Text(60)] | None = None
    lot_id: Annotated[str, Ref("lot")] | None = None
    origin: Origin | None = None
    form: ServedAs | None = None
    size_class: SizeClass | None = None
    amount: Annotated[float, Number(0, 100_000)] | None = None
    unit: Unit | None = None
    tasting_id: Annotated[str, Ref("tasting")] | None = None
    despite: Annotated[list[str], ListOf(Text(60), 10)] | None = None


@dataclass(slots=True, kw_only=True)
class Check:
    """Somebody looked: after what a feeding left, or at what a need is about."""

    feeding_id: Annotated[str, Ref("feeding")] | None = None
    need: Need | None = None
    outcome: Outcome | None = None
    after_h: Annotated[float, Number(0, 2_000, "h")] | None = None
    leftovers_removed: bool | None = None
    level: WaterReading | None = None
    colour_seen: Annotated[list[ColourSeen], ListOf(Choice(COLOUR_SEEN), 2)] | None = None


@dataclass(slots=True, kw_only=True)
class Water:
    """Water was read or given: by eye (``reading``), by a ruler (``level_mm``), or what was poured."""

    action: WaterAction
    reading: WaterReading | None = None
    level_mm: Annotated[float, Number(0, 1_000, "mm")] | None = None
    amount_ml: Annotated[float, Number(0, 5_000, "mL")] | None = None


@dataclass(slots=True, kw_only=True)
class Fault:
    """Something went wrong; open until it is resolved."""

    fault: FaultCode
    resolved_at: InstantText | None = None
    resolution: Annotated[str, Text(500)] | None = None
    mould_near_brood: bool | None = None
    mould_share: Annotated[float, Number(0, 1)] | None = None


@dataclass(slots=True, kw_only=True)
class Count:
    """The colony was counted, or estimated: workers exactly, within two ends or in a word; brood in words.

    On a picture, ``photo_id``, they are ``workers`` with the ends between which they lie in four of five such counts.
    ``workers_at_least``: as many are there for sure; alone where only a part of the nest was to be seen.
    """

    workers: Annotated[int, WholeNumber(0, 1_000_000)] | None = None
    workers_low: Annotated[int, WholeNumber(0, 1_000_000)] | None = None
    workers_high: Annotated[int, WholeNumber(0, 1_000_000)] | None = None
    workers_at_least: Annotated[int, WholeNumber(0, 1_000_000)] | None = None
    workers_coarse: Coarse | None = None
    eggs: BroodSeen | None = None
    larvae: BroodSeen | None = None
    pupae: BroodSeen | None = None
    queens: Annotated[int, WholeNumber(0, 1_000)] | None = None
    males_only: bool | None = None
    photo_id: Annotated[str, Ref("photo", awaited=False)] | None = None


@dataclass(slots=True, kw_only=True)
class Boost:
    """Brood of another colony was added."""

    donor_colony_id: Annotated[str, Ref("colony")] | None = None
    brood: Brood
    number: Annotated[int, WholeNumber(1, 10_000)] | None = None


@dataclass(slots=True, kw_only=True)
class Climate:
    """A place was measured."""

    temperature_c: Annotated[float, Number(-20, 80, "°C")] | None = None
    humidity_pct: Annotated[float, Number(0, 100, "%")] | None = None


@dataclass(slots=True, kw_only=True)
class Move:
    """A nest was offered, or the colony moved into it."""

    vessel_id: Annotated[str, Ref("vessel")] | None = None
    how: MoveWay | None = None
    fresh_reservoir: bool | None = None


@dataclass(slots=True, kw_only=True)
class Note:
    """Something worth writing down."""

    text: Annotated[str, Text(4000)]


@dataclass(slots=True, kw_only=True)
class Photo:
    """A picture was taken; its bytes travel by themselves, under their hash. ``dots``: what a keeper counted on it.

    A dot is its place, across and down in ten-thousandths of the picture, and what it is: 0 a worker, 1 brood, 2 and 3
    the same but drawn by the keeper. What a reader does not know is no dot. ``dots_frame``: left, top, right and bottom
    of what counts. ``dots_worker_px``: how long a worker is in the picture. ``dots_pale``: its ants are paler than
    their ground. ``dots_threshold``: from which score on a proposal counted; ``dots_learnt``: from which it should in
    the next picture. ``dots_corrected``: how many proposals stood, were added and were taken away. ``dots_number``:
    workers, ``dots_low`` to ``dots_high`` in four of five such counts, ``dots_at_least`` for sure; there may be more
    workers than dots are kept.
    """

    sha256: Annotated[str, Sha256()]
    width_px: Annotated[int, WholeNumber(1, 10_000, "px")] | None = None
    height_px: Annotated[int, WholeNumber(1, 10_000, "px")] | None = None
    dots: Annotated[list[list[int]], ListOf(ListOf(WholeNumber(0, 10_000), 3), 1_000), KEEPER] | None = None
    dots_frame: Annotated[list[int], ListOf(WholeNumber(0, 10_000), 4), KEEPER] | None = None
    dots_worker_px: Annotated[float, Number(1, 5_000, "px"), KEEPER] | None = None
    dots_pale: Annotated[bool | None, KEEPER] = None
    dots_threshold: Annotated[float, Number(0, 1), KEEPER] | None = None
    dots_learnt: Annotated[float, Number(0, 1), KEEPER] | None = None
    dots_corrected: Annotated[list[int], ListOf(WholeNumber(0, 10_000), 3), KEEPER] | None = None
    dots_number: Annotated[int, WholeNumber(0, 1_000_000), KEEPER] | None = None
    dots_low: Annotated[int, WholeNumber(0, 1_000_000), KEEPER] | None = None
    dots_high: Annotated[int, WholeNumber(0, 1_000_000), KEEPER] | None = None
    dots_at_least: Annotated[int, WholeNumber(0, 1_000_000), KEEPER] | None = None


@dataclass(slots=True, kw_only=True)
class Later:
    """A need was put off."""

    need: Need
    until: Annotated[str, Instant()]
    why: Annotated[str, Text(500)] | None = None
