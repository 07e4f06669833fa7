"""From records to what the care core looks at: the state of each colony."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Final

from sqlalchemy import Connection

from ..care.colony.census import census_of
from ..care.colony.climate import FRESH_DAYS
from ..care.colony.history import day_number, local_day
from ..care.plan.risk import WATCH_DAYS, is_poison, risky_lots
from ..model import kinds
from ..model.facts import ColonyState, Event, Hour, Logged, Lot, MeasuredDay, Place, Vessel, only
from ..model.gauges import DAY_MS
from ..model.kinds.log import AtPlace, Climate, Feeding
from ..records.recent import read_kind_since, read_recent
from ..records.store import Record, read_all, read_kinds
from ..records.types import readable_day
from ..sensing.days import days_by_place
from ..sensing.intake import hours_by_place
from .facts_of import log_of, lot_of, lots_known, place_of, running_tasting, vessel_of
from .latitude import latitude_deg
from .likes import with_likes
from .own_rules import rules_by_colony
from .wall_clock import CareClock

KEPT_DAYS: Final = 400
_THINGS: Final = ("household", "colony", "vessel", "place", "lot", "rule", "tasting")


@dataclass(frozen=True, slots=True)
class Shelf:
    """A household at an instant, as this transaction sees it.

    ``things``: its records by kind, logs apart: colonies, where and how they live, what is in the house.
    """

    connection: Connection
    household_id: str
    now_ms: int
    things: Mapping[str, Sequence[Record]]

    @property
    def since_ms(self) -> int:
        """Since when its logs are looked at."""
        return self.now_ms - KEPT_DAYS * DAY_MS


@dataclass(frozen=True, slots=True)
class States:
    """The states of colonies, and why that of some could not be told, by id."""

    told: list[ColonyState]
    failed: dict[str, Exception] = field(default_factory=dict)


def read_shelf(connection: Connection, household_id: str, now_ms: int) -> Shelf:
    """Return what a household has besides its logs, in one read."""
    return Shelf(connection, household_id, now_ms, read_kinds(connection, household_id, _THINGS))


def colony_states(shelf: Shelf, colony_ids: Iterable[str]) -> States:
    """Return the states of these colonies (gone ones are left out), in one bounded read a colony."""
    wanted = set(colony_ids)
    colonies = [record for record in shelf.things["colony"] if record.id in wanted]
    shared = _Shared(shelf, colonies)
    ids = [colony.id for colony in colonies]
    log = read_recent(shelf.connection, shelf.household_id, ids, shelf.since_ms)
    states: list[ColonyState] = []
    failed: dict[str, Exception] = {}
    for colony in colonies:
        try:
            states.append(shared.state_of(colony, log_of(log[colony.id])))
        except Exception as error:  # noqa: BLE001 - one colony that cannot be told must not hide the others
            failed[colony.id] = error
    of_all = shelf.things["colony"]
    return States(with_likes(shelf.connection, shelf.household_id, states, of_all, shelf.since_ms), failed)


def workers_by_colony(states: Iterable[ColonyState]) -> dict[str, float | None]:
    """Return how many workers each colony has as last seen, None where nobody can say."""
    found = {state.id: census_of(state.events, state.stage) for state in states}
    return {
        colony_id: None if census.basis == "unknown" else census.workers.best
        for colony_id, census in found.items()
    }


class _Shared:
    """What the colonies of a household share: where they live, what is in the house, its rules, clock and latitude."""

    def __init__(self, shelf: Shelf, colonies: Iterable[Record]) -> None:
        connection, household_id = shelf.connection, shelf.household_id
        now_ms, things = shelf.now_ms, shelf.things
        vessels, places = read_all(kinds.Vessel, things["vessel"]), read_all(kinds.Place, things["place"])
        self._vessels = {vessel_id: vessel_of(vessel) for vessel_id, vessel in vessels.items()}
        self._places = {place_id: place_of(place) for place_id, place in places.items()}
        self._lots = {
            lot_id: lot_of(lot_id, lot) for lot_id, lot in read_all(kinds.Lot, things["lot"]).items()
        }
        self._rules = rules_by_colony(things["rule"])
        self._tastings = read_all(kinds.Tasting, things["tasting"])
        household = next(iter(read_all(kinds.Household, things["household"]).values()), None)
        self._clock = CareClock.of(household)
        self._latitude_deg = None if household is None else latitude_deg(household.zone)
        self._offset_min = _offset_min(self._clock, now_ms)
        self._climate = _climate(shelf)
        self._hours: Mapping[str, Sequence[Hour]] = {}
        self._days: Mapping[str, tuple[MeasuredDay, ...]] = {}
        lived_in = {str(place_id) for colony in colonies if (place_id := colony.values.get("place_id"))}
        if lived_in:
            self._hours = hours_by_place(connection, household_id, now_ms - FRESH_DAYS * DAY_MS, now_ms + 1)
            first_day = day_number(local_day(now_ms, self._offset_min)) - KEPT_DAYS
            self._days = days_by_place(connection, household_id, lived_in, first_day)
        self._risky_lots = _risky_lots(shelf, self._lots, self._offset_min)

    def state_of(self, record: Record, log: tuple[Event, ...]) -> ColonyState:
        """Return the state of a colony with what was logged of it."""
        colony = kinds.read(kinds.Colony, record.values)
        place_id = colony.place_id or ""
        rules = self._rules.get(record.id, {}).values()
        return ColonyState(
            id=record.id,
            species_code=colony.species_code,
            worker_length_mm=colony.worker_length_mm,
            founding_mode=colony.founding_mode,
            host_species_code=colony.host_species_code,
            guild=colony.guild,
            stings=colony.stings,
            stage=colony.stage,
            condition=colony.condition,
            condition_since=_set_on(record, "condition", self._offset_min),
            condition_until=readable_day(colony.condition_until),
            resting_since=readable_day(colony.resting_since),
            founded_on=readable_day(colony.founded_on),
            acquired_on=readable_day(colony.acquired_on),
            entered_on=local_day(record.made_ms, self._offset_min).isoformat(),
            queens=colony.queens,
            interval_days=dict(colony.interval_days or {}),
            rules=tuple(rule.for_plan(self._clock) for rule in rules),
            vessel=self._vessels.get(colony.vessel_id or "", Vessel()),
            place=self._places.get(place_id, Place()),
            lots=lots_known(self._lots.values(), log),
            events=log,
            utc_offset_min=self._offset_min,
            latitude_sign=-1 if (self._latitude_deg or 0) < 0 else 1,
            latitude_deg=self._latitude_deg,
            climate_readings=self._climate.get(place_id, ()),
            hours=tuple(self._hours.get(place_id, ())),
            measured_days=self._days.get(place_id, ()),
            place_since=_set_on(record, "place_id", self._offset_min),
            tasting=running_tasting(self._tastings, record.id),
            risky_lots=self._risky_lots,
        )


def _set_on(record: Record, field: str, offset_min: int) -> str | None:
    """Return the day (ISO) on which a field of a record was last set, where its stamp tells it."""
    stamp = record.stamps.get(field)
    return None if stamp is None else local_day(stamp[1], offset_min).isoformat()


def _risky_lots(shelf: Shelf, lots: Mapping[str, Lot], offset_min: int) -> frozenset[str]:
    """Return the lots of which something was lately given despite a refusal, whatever colony got it.

    Most households have no lot that could be refused; then no log is read for it.
    """
    if not any(is_poison(lot.origin) for lot in lots.values()):
        return frozenset()
    since_ms = shelf.now_ms - (WATCH_DAYS + 1) * DAY_MS
    fed = read_kind_since(shelf.connection, shelf.household_id, "feeding", since_ms)
    return risky_lots((each for each in only(Feeding, fed) if each.counts), lots, offset_min)


def _offset_min(clock: CareClock, now_ms: int) -> int:
    offset = clock.local(now_ms).utcoffset()
    return round(offset.total_seconds() / 60) if offset else 0


def _climate(shelf: Shelf) -> dict[str, tuple[Logged[Climate], ...]]:
    """Return the readings of the kept days by place, in the order in which they were taken."""
    found: dict[str, list[Logged[Climate]]] = {}
    measured = read_kind_since(shelf.connection, shelf.household_id, "climate", shelf.since_ms)
    for logged in only(Climate, measured):
        found.setdefault(kinds.read(AtPlace, logged.values).place_id, []).append(logged)
    return {place_id: tuple(events) for place_id, events in found.items()}
