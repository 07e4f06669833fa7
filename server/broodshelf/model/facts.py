"""What is known about a colony: the only input of a plan besides the instant.

Built from records by ``rounds.colony_state``; pure data here. Instants are ms since 1970 UTC, calendar days
ISO strings in the household's zone.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, Generic, TypeAlias, TypeGuard, TypeVar, cast

from .kinds import KINDS, read
from .kinds.log import (
    Answers,
    Boost,
    Check,
    Climate,
    Count,
    Fault,
    Feeding,
    Later,
    Move,
    Note,
    Photo,
    Water,
)
from .kinds.plan import Suggested
from .kinds.words import Origin, SizeClass
from .needs import Need
from .quantities import within

Said = Feeding | Check | Water | Fault | Count | Boost | Climate | Move | Note | Photo | Later
"""What an event says of its own kind."""
Of = TypeVar("Of", bound=Said, covariant=True)
Part = TypeVar("Part", bound=Said)
_PART_OF: Final = {kind.name: kind.parts[-1] for kind in KINDS.values() if kind.group == "event"}
_KIND_OF: Final = {part: kind for kind, part in _PART_OF.items()}


class _Read(Generic[Of]):
    """The fields of an event as dataclasses: those of its kind, and what it answers."""

    __slots__ = ("answers", "said")
    said: Of
    answers: Answers


@dataclass(frozen=True)
class Logged(_Read[Of]):
    """One un-voided event of the log. ``values``: the fields of its record by name, as they are stored.

    Read are ``said`` and ``answers``. Raises ``TypeError`` for fields of which no such record is made.
    """

    __slots__ = ("happened_ms", "id", "kind", "values")
    id: str
    kind: str
    happened_ms: int
    values: Mapping[str, Any]

    def __post_init__(self) -> None:
        object.__setattr__(self, "said", read(_PART_OF[self.kind], self.values))
        object.__setattr__(self, "answers", read(Answers, self.values))

    @property
    def counts(self) -> bool:
        """A possible repeat is kept but not counted until somebody confirms it."""
        return not self.answers.possible_repeat or bool(self.answers.confirmed)

    @property
    def task_key(self) -> str | None:
        """The task that it answers, as a text."""
        return self.answers.task_key

    @property
    def moved(self) -> bool:
        """The colony lives elsewhere since; a nest that was only offered is no move."""
        return tells(self, Move) and self.said.how != "offered"


Event: TypeAlias = Logged[Said]
"""An event of any kind."""


def tells(event: Event, part: type[Part]) -> TypeGuard[Logged[Part]]:
    """Say whether an event is of the kind that this dataclass describes."""
    return _PART_OF[event.kind] is part


def only(part: type[Part], events: Iterable[Event]) -> list[Logged[Part]]:
    """Return the events of one kind, in their order."""
    kind = _KIND_OF[part]
    return cast("list[Logged[Part]]", [event for event in events if event.kind == kind])


def proposed(log: Suggested | None, part: type[Part]) -> Part | None:
    """Return what a suggested log says, as the dataclass of its kind; None without one, or where it is of another."""
    return None if log is None or log["kind"] != _KIND_OF[part] else read(part, log["set"])


@dataclass(frozen=True, slots=True)
class Vessel:
    """Where the colony lives: a catalogue code and, where the keeper gave them, its own sizes."""

    code: str | None = None
    bore_mm: float | None = None
    length_mm: float | None = None
    volume_ml: float | None = None
    reservoir_ml: float | None = None
    reservoir_length_mm: float | None = None
    has_outworld: bool | None = None


@dataclass(frozen=True, slots=True)
class Place:
    """Day and night temperature and relative humidity around the vessel; None where unknown."""

    place_type: str | None = None
    day_temp_c: float | None = None
    night_temp_c: float | None = None
    humidity_pct: float | None = None


@dataclass(frozen=True, slots=True)
class Hour:
    """What the sensors of a place measured in an hour that begins at ``hour_ms``: mean, least and most.

    None where the sensors measure only the other of the two.
    """

    hour_ms: int
    temperature_c: float | None = None
    low_c: float | None = None
    high_c: float | None = None
    humidity_pct: float | None = None
    humidity_low_pct: float | None = None
    humidity_high_pct: float | None = None


@dataclass(frozen=True, slots=True)
class MeasuredDay:
    """What the sensors of a place measured on a day of the household's zone, counted from 1970-01-01.

    ``day_c``, ``night_c``: means of the two halves of the day, None where too few of its hours were measured;
    ``hours``: of how many the temperature was.
    """

    day: int
    hours: int = 0
    mean_c: float | None = None
    low_c: float | None = None
    high_c: float | None = None
    day_c: float | None = None
    night_c: float | None = None
    humidity_pct: float | None = None
    humidity_low_pct: float | None = None
    humidity_high_pct: float | None = None


@dataclass(frozen=True, slots=True)
class Lot:
    """A food in the house, or one that is ``finished`` and of which something was given."""

    id: str
    food_code: str
    origin: Origin
    got_on: str | None = None
    hold_until: str | None = None
    use_by: str | None = None
    percent_ww: float | None = None
    size_class: SizeClass | None = None
    tint: str | None = None
    finished: bool = False


@dataclass(frozen=True, slots=True)
class Rule:
    """The keeper's own rhythm for one need; it rules over every model.

    ``days_after``: where the keeper named days or a time, the days from an instant (ms since 1970 UTC) to the next of
    these; ``every_days`` then counts before the need was met for the first time.
    """

    need: Need
    every_days: float | None = None
    paused_until: str | None = None
    days_after: Callable[[int], float | None] | None = None


@dataclass(frozen=True, slots=True)
class Tasting:
    """A tasting that the keeper started. Days are ISO."""

    id: str
    food_codes: tuple[str, ...]
    started_on: str
    ended_on: str | None = None


@dataclass(frozen=True, slots=True)
class Tally:
    """Offers of one food to one colony that were checked: how many, and how many of them were taken."""

    taken: float = 0.0
    offered: float = 0.0

    def __post_init__(self) -> None:
        within("offers", self.offered, "offers", 0, 1_000_000)
        within("taken", self.taken, "offers", 0, self.offered)


@dataclass(frozen=True, slots=True)
class ColonyState:
    """Everything a plan may look at. ``events`` are in the order in which they happened, as are
    ``climate_readings``, those of its place; ``hours`` are what its place's sensors measured in the last two weeks,
    ``measured_days`` what they did before, a day each. ``place_since``: the day on which the colony came to its place,
    as far as that is known: what was measured there before says nothing of it.

    ``refused_foods``: what is not to be suggested, besides what its own checks tell.
    ``condition_since``: the day on which the condition was set, as far as that is known. ``entered_on``: the day on
    which its record was made; None: today.
    ``guild`` and ``stings`` are the keeper's word on a species that the catalogue does not have. ``likes``: by food,
    what colonies of its species and guild took in their tastings, as ``likes_of`` weighs it. ``risky_lots``: of which
    some colony of the household got something despite a refusal.
    """

    id: str
    species_code: str | None
    worker_length_mm: float | None = None
    founding_mode: str | None = None
    host_species_code: str | None = None
    guild: str | None = None
    stings: bool | None = None
    stage: str | None = None
    condition: str | None = None
    condition_since: str | None = None
    condition_until: str | None = None
    resting_since: str | None = None
    founded_on: str | None = None
    acquired_on: str | None = None
    entered_on: str | None = None
    queens: int | None = None
    interval_days: Mapping[Need, float] = field(default_factory=dict)
    rules: tuple[Rule, ...] = ()
    vessel: Vessel = Vessel()
    place: Place = Place()
    lots: tuple[Lot, ...] = ()
    events: tuple[Event, ...] = ()
    refused_foods: frozenset[str] = frozenset()
    utc_offset_min: int = 0
    latitude_sign: int = 1
    latitude_deg: float | None = None
    climate_readings: tuple[Logged[Climate], ...] = ()
    hours: tuple[Hour, ...] = ()
    measured_days: tuple[MeasuredDay, ...] = ()
    place_since: str | None = None
    tasting: Tasting | None = None
    likes: Mapping[str, Sequence[Tally]] = field(default_factory=dict)
    risky_lots: frozenset[str] = frozenset()

    @property
    def holds_until(self) -> str | None:
        """The last day of the condition, where one was set; a day up to its first is left over from the one before."""
        until, since = self.condition_until, self.condition_since
        return until if until is None or since is None or until > since else None
