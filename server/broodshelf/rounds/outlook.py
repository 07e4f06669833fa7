"""Looking ahead for the whole shelf: how long the larder lasts, and what a holiday asks for."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final, NamedTuple

from sqlalchemy import Connection

from ..care.feeding.food_origin import origin_verdict
from ..care.plan.ahead import Planned, use_ratio
from ..care.plan.holiday import ColonyHoliday, plan_holiday
from ..care.plan.larder import HORIZON_DAYS, Outlook, Stock, Use, forecast
from ..model import kinds
from ..model.facts import only
from ..model.gauges import DAY_MS
from ..model.kinds.log import Feeding
from ..model.quantities import Estimate
from ..records.recent import read_kind_since
from ..records.store import Record, read_all, read_kind
from ..records.types import readable_day
from ..records.zones import read_zone
from .colony_state import colony_states, read_shelf, workers_by_colony

_IN_LOTS: Final[Mapping[str, tuple[str, float]]] = {
    "drop": ("ml", 0.05),
    "leg": ("piece", 1.0),
    "slice": ("piece", 1.0),
}
"""A drop is 0.05 mL; for a leg or a slice a whole insect is killed (common practice, no source)."""


_AHEAD_DAYS: Final = tuple(range(0, HORIZON_DAYS + 1, 15))
"""For so many days ahead the use is asked of the census."""


@dataclass(frozen=True, slots=True)
class Left:
    """What is left of a lot by the feedings logged since its amount was written down, in the unit of the lot."""

    lot_id: str
    amount: float
    given: float


class _Written(NamedTuple):
    """How much of a lot there was when somebody wrote it down, by the server's clock."""

    amount: float
    unit: str
    at_ms: int


def larder_left(connection: Connection, household_id: str) -> tuple[Left, ...]:
    """Return what is left of each lot in the house whose amount somebody wrote down.

    A feeding counts where it names the lot and happened after that; a possible repeat, or one in a unit that does
    not meet the lot's, takes nothing from it.
    """
    lots = _written_down(read_kind(connection, household_id, "lot"))
    if not lots:
        return ()
    given: dict[str, float] = defaultdict(float)
    first_ms = min(lot.at_ms for lot in lots.values())
    for feeding in only(Feeding, read_kind_since(connection, household_id, "feeding", first_ms)):
        said, lot = feeding.said, lots.get(feeding.said.lot_id or "")
        if lot is None or said.amount is None or feeding.happened_ms < lot.at_ms or not feeding.counts:
            continue
        unit, times = _in_lots(said.unit or "")
        own_unit, own_times = _in_lots(lot.unit)
        if unit == own_unit:
            given[said.lot_id or ""] += said.amount * times / own_times
    return tuple(
        Left(lot_id, round(max(0.0, lot.amount - given[lot_id]), 3), round(given[lot_id], 3))
        for lot_id, lot in lots.items()
    )


def _written_down(records: Iterable[Record]) -> dict[str, _Written]:
    """Return by lot the amounts of those that are not used up."""
    found = {}
    for record in records:
        lot = kinds.read(kinds.Lot, record.values)
        if not lot.finished_on and lot.amount is not None:
            _rev, corrected_ms, _device = record.stamps.get("amount", (0, record.made_ms, None))
            found[record.id] = _Written(lot.amount, lot.unit or "", corrected_ms)
    return found


def larder_outlook(
    connection: Connection, household_id: str, today: str, left: Iterable[Left]
) -> tuple[Outlook, ...]:
    """Return how long each food in use lasts, the one to buy first at the front. ``today``: ISO day."""
    uses = _uses(_plans(connection, household_id))
    unit_of = {use.food_code: use.unit for use in uses}
    amounts = {each.lot_id: each.amount for each in left}
    stocks = [
        _stock(lot_id, lot, amounts.get(lot_id), unit_of[lot.food_code], today)
        for lot_id, lot in read_all(kinds.Lot, read_kind(connection, household_id, "lot")).items()
        if not lot.finished_on and lot.food_code in unit_of
    ]
    return forecast([stock for stock in stocks if stock is not None], uses, today=today)


def holiday_outlook(
    connection: Connection, household_id: str, leave_on: str, return_on: str, now_ms: int
) -> tuple[ColonyHoliday, ...]:
    """Return what each colony needs for the days away (ISO). Raises ``OutOfRange`` for impossible dates."""
    plans = _plans(connection, household_id)
    shelf = read_shelf(connection, household_id, now_ms)
    states = colony_states(shelf, [plan.colony_id for plan in plans]).told
    leave_ms, return_ms = (_noon_ms(connection, household_id, day) for day in (leave_on, return_on))
    return plan_holiday(plans, workers_by_colony(states), leave_ms, return_ms)


def _plans(connection: Connection, household_id: str) -> list[Planned]:
    here = {colony.id for colony in read_kind(connection, household_id, "colony")}
    rows = read_kind(connection, household_id, "plan")
    return [plan for plan in read_all(Planned, rows).values() if plan.colony_id in here]


def _uses(plans: Iterable[Planned]) -> list[Use]:
    """Add up what the plans suggest, portion over the days that it lasts, as their censuses expect it to go on."""
    total: dict[tuple[str, str], list[Estimate]] = {}
    for plan in plans:
        gauges = {gauge["need"]: gauge for gauge in plan.gauges}
        for task in plan.tasks:
            portion, gauge = task["portion"], gauges.get(task["need"])
            if portion is None or gauge is None or not task["from_gauge"]:
                continue
            unit, times = _in_lots(portion["unit"])
            rates = Estimate(gauge["rate_low"], gauge["rate_per_day"], gauge["rate_high"])
            per_day = rates.times(portion["amount"] * times / gauge["capacity"])
            row = total.setdefault((portion["food_code"], unit), [Estimate.exactly(0)] * len(_AHEAD_DAYS))
            for number, ahead in enumerate(_AHEAD_DAYS):
                ratio = use_ratio(plan, task["need"], plan.computed_at_ms + ahead * DAY_MS)
                row[number] = row[number].plus(
                    Estimate(per_day.low * ratio.low, per_day.best * ratio.best, per_day.high * ratio.high)
                )
    return [
        Use(food, unit, row[0], tuple(zip(_AHEAD_DAYS[1:], row[1:], strict=True)))
        for (food, unit), row in sorted(total.items())
    ]


def _in_lots(unit: str) -> tuple[str, float]:
    """Return the unit in which lots are counted, and how many of it one of ``unit`` is."""
    return _IN_LOTS.get(unit, (unit, 1.0))


def _stock(lot_id: str, lot: kinds.Lot, amount: float | None, unit: str, today: str) -> Stock | None:
    """Return the lot in the unit of its use; its amount is unknown where the units do not meet."""
    verdict = origin_verdict(lot.origin, got_on=readable_day(lot.got_on), today=today)
    if verdict.verdict == "refuse":
        return None
    own_unit, times = _in_lots(lot.unit or unit)
    here = amount * times if amount is not None and own_unit == unit else None
    offer_from = max(filter(None, (readable_day(lot.hold_until), verdict.until)), default=None)
    return Stock(lot_id, lot.food_code, unit, here, offer_from, readable_day(lot.use_by))


def _noon_ms(connection: Connection, household_id: str, day: str) -> int:
    noon = dt.datetime.combine(dt.date.fromisoformat(day), dt.time(12), read_zone(connection, household_id))
    return round(noon.timestamp() * 1000)
