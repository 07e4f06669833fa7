"""What the server makes of a colony's log: its plan, as it stands in the record and as phones get it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal, NotRequired, TypedDict

from ..needs import Need
from ..tasks import What
from .words import Brood, Origin, ServedAs, SizeClass, Unit


class Reason(TypedDict):
    """A reason, notice or caution: a code of the messages and what goes into its sentence."""

    code: str
    args: Mapping[str, Any]


class Portion(TypedDict):
    """What to serve; ``lot_id`` and ``origin`` where it is in the house."""

    food_code: str
    amount: float
    unit: Unit
    form: ServedAs
    size_class: NotRequired[SizeClass]
    lot_id: NotRequired[str]
    origin: NotRequired[Origin]


class Suggested(TypedDict):
    """The log that 'as suggested' makes, without colony and time."""

    kind: Literal["feeding", "check", "water", "fault", "move", "count", "colony"]
    set: Mapping[str, Any]


class ForStandIn(TypedDict, total=False):
    """The fields of a task that a stand-in sees instead."""

    portion: Portion
    suggested: Suggested | None
    reasons: list[Reason]


class PlannedTask(TypedDict):
    """One thing to do. ``key``: ``what`` and ``about`` as one text; ``stand_in`` null: it is the keeper's alone."""

    key: str
    what: What
    about: str
    need: Need
    due_at_ms: int
    urgent: bool
    from_gauge: bool
    portion: Portion | None
    suggested: Suggested | None
    reasons: list[Reason]
    cautions: list[Reason]
    stand_in: ForStandIn | None


class PlannedGauge(TypedDict):
    """A store that runs down; rates in ``unit`` per day. ``gain_per_portion`` null: a feeding fills it."""

    need: Need
    unit: str
    level: float
    capacity: float
    rate_per_day: float
    rate_low: float
    rate_high: float
    as_of_ms: int
    due_level: float
    basis: str
    gain_per_portion: float | None
    full_mm: NotRequired[float | None]
    reasons: list[Reason]


class TastedFood(TypedDict):
    """How often a food of the running tasting is taken, and the chance that it is the best."""

    food_code: str
    offers: int
    likes: int
    best: float
    low: float
    mean: float
    high: float


class GrowthAhead(TypedDict):
    """Workers from the last count to a month ahead: ``[ms since 1970 UTC, low, best, high]``."""

    counts: int
    model: str
    curve: list[tuple[int, float, float, float]]


class Hatching(TypedDict):
    """Between which days workers hatch, 80 of 100; null at an end beyond half a year."""

    low_on: str
    best_on: str | None
    high_on: str | None


class AwaitedBrood(TypedDict):
    """The brood to look for next in a founding, and by when it should be there."""

    brood: Brood
    by_on: str


class LivingCensus(TypedDict):
    """What is in the nest over time. ``group``: of ants, whose source phones say by it; ``source``: the same in
    English, for phones of an earlier version. ``stages``: ``[ms, eggs, small larvae, large larvae, pupae, workers]``,
    each of the five ``[low, best, high]``; ``hatching``: of the first workers while ``founding``, else of the next.
    """

    founding: bool
    group: NotRequired[str]
    measured: bool
    source: str
    hatching: Hatching | None
    asks: AwaitedBrood | None
    stages: list[list[Any]]
    why: list[Reason]


class SeasonWarmth(TypedDict):
    """The degree-days above ``threshold_c`` since a day (ISO); ``assumed``: the share of days that nobody measured."""

    since_on: str
    degree_days: int
    threshold_c: float
    assumed: float


@dataclass(slots=True, kw_only=True)
class Plan:
    """What a colony needs, with reasons; see docs/http-api.md, "A plan". ``inputs_rev``: what it was made from."""

    colony_id: str
    gauges: list[PlannedGauge]
    tasks: list[PlannedTask]
    notices: list[Reason]
    cautions: list[Reason]
    tasting: list[TastedFood]
    tasting_waits: Reason | None = None
    growth: GrowthAhead | None = None
    census: LivingCensus | None = None
    warmth: SeasonWarmth | None = None
    valid_until_ms: int
    computed_at_ms: int
    model_version: str
    inputs_rev: int
