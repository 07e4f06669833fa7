"""From what records hold to the facts that a plan is made from. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from ..care.catalogue import foods
from ..model import facts, kinds
from ..model.kinds.log import Feeding
from ..records.types import readable_day


def log_of(entries: Iterable[tuple[str, str, int, Mapping[str, Any]]]) -> tuple[facts.Event, ...]:
    """Return the events that count of a log. Raises ``TypeError`` where one lacks what its kind cannot do without."""
    log: Iterator[facts.Event] = (facts.Logged(*entry) for entry in entries)
    return tuple(event for event in log if event.counts)


def vessel_of(vessel: kinds.Vessel) -> facts.Vessel:
    """Return a vessel as a plan sees it."""
    return facts.Vessel(
        vessel.vessel_code,
        vessel.bore_mm,
        vessel.length_mm,
        vessel.volume_ml,
        vessel.reservoir_ml,
        vessel.reservoir_length_mm,
        vessel.has_outworld,
    )


def place_of(place: kinds.Place) -> facts.Place:
    """Return a place as a plan sees it."""
    return facts.Place(place.place_type, place.day_temp_c, place.night_temp_c, place.humidity_pct)


def lot_of(lot_id: str, lot: kinds.Lot) -> facts.Lot:
    """Return a lot as a plan sees it; what is caught is from where such food is from, whatever was said of it."""
    food = foods().get(lot.food_code)
    return facts.Lot(
        lot_id,
        lot.food_code,
        (food.origin if food is not None else None) or lot.origin,
        readable_day(lot.got_on),
        readable_day(lot.hold_until),
        readable_day(lot.use_by),
        lot.percent_ww,
        lot.size_class,
        lot.tint,
        finished=bool(lot.finished_on),
    )


def lots_known(lots: Iterable[facts.Lot], log: Iterable[facts.Event]) -> tuple[facts.Lot, ...]:
    """Return the lots of which something is left, and those that the feedings of a log name."""
    given = {feeding.said.lot_id for feeding in facts.only(Feeding, log)}
    return tuple(lot for lot in lots if not lot.finished or lot.id in given)


def running_tasting(tastings: Mapping[str, kinds.Tasting], colony_id: str) -> facts.Tasting | None:
    """Return the colony's latest tasting, of these by id, that has not ended."""
    mine = {i: t for i, t in tastings.items() if colony_id in t.colony_ids and not t.ended_on}
    if not mine:
        return None
    latest_id = max(mine, key=lambda tasting_id: mine[tasting_id].started_on)
    latest = mine[latest_id]
    return facts.Tasting(latest_id, tuple(latest.food_codes), latest.started_on)
