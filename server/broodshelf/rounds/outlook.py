"""Looking ahead for the whole shelf: how long the larder lasts, and what a holiday asks for."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection

from ..care.feeding.food_origin import origin_verdict
from ..care.plan.holiday import ColonyHoliday, plan_holiday
from ..care.plan.larder import Outlook, Stock, Use, forecast
from ..model.quantities import Estimate
from ..records.recent import read_kind_since
from ..records.store import Record, read_kind
from ..records.types import readable_day
from .colony_state import colony_states, workers_by_colony
from .wall_clock import zone_of

_IN_LOTS: Final[Mapping[str, tuple[str, float]]] = {
    "drop": ("ml", 0.05),
    "leg": ("piece", 1.0),
    "slice": ("piece", 1.0),
}
"""A drop is 0.05 mL; for a leg or a slice a whole insect is killed (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Left:
    """What is left of a lot by the feedings logged since its amount was written down, in the unit of the lot."""

    lot_id: str
    amount: float
    given: float


def larder_left(connection: Connection, household_id: str) -> tuple[Left, ...]:
    """Return what is left of each lot in the house whose amount somebody wrote down.

    A feeding counts where it names the lot and happened after that; one in a unit that does not meet the lot's
    takes nothing from it.
    """
    lots = {
        lot.id: lot
        for lot in read_kind(connection, household_id, "lot")
        if not lot.values.get("finished_on") and lot.values.get("amount") is not None
    }
    if not lots:
        return ()
    given: dict[str, float] = defaultdict(float)
    first_ms = min(map(_written_ms, lots.values()))
    for feeding in read_kind_since(connection, household_id, "feeding", first_ms):
        lot, amount = lots.get(feeding.values.get("lot_id", "")), feeding.values.get("amount")
        if lot is None or amount is None or feeding.happened_ms < _written_ms(lot):
            continue
        unit, times = _in_lots(feeding.values.get("unit") or "")
        own_unit, own_times = _in_lots(lot.values.get("unit") or "")
        if unit == own_unit:
            given[lot.id] += amount * times / own_times
    return tuple(
        Left(lot.id, round(max(0.0, lot.values["amount"] - given[lot.id]), 3), round(given[lot.id], 3))
        for lot in lots.values()
    )


def larder_outlook(
    connection: Connection, household_id: str, today: str, left: Iterable[Left]
) -> tuple[Outlook, ...]:
    """Return how long each food in use lasts, the one to buy first at the front. ``today``: ISO day."""
    uses = _uses(_plans(connection, household_id))
    unit_of = {use.food_code: use.unit for use in uses}
    amounts = {each.lot_id: each.amount for each in left}
    stocks = [
        _stock(lot, amounts.get(lot.id), unit_of[lot.values["food_code"]], today)
        for lot in read_kind(connection, household_id, "lot")
        if not lot.values.get("finished_on") and lot.values["food_code"] in unit_of
    ]
    return forecast([stock for stock in stocks if stock is not None], uses, today=today)


def holiday_outlook(
    connection: Connection, household_id: str, leave_on: str, return_on: str, now_ms: int
) -> tuple[ColonyHoliday, ...]:
    """Return what each colony needs for the days away (ISO). Raises ``OutOfRange`` for impossible dates."""
    plans = _plans(connection, household_id)
    states = colony_states(connection, household_id, [plan["colony_id"] for plan in plans], now_ms)
    leave_ms, return_ms = (_noon_ms(connection, household_id, day) for day in (leave_on, return_on))
    return plan_holiday(plans, workers_by_colony(states), leave_ms, return_ms)


def _plans(connection: Connection, household_id: str) -> list[Mapping[str, Any]]:
    here = {colony.id for colony in read_kind(connection, household_id, "colony")}
    rows = read_kind(connection, household_id, "plan")
    return [row.values for row in rows if row.values.get("colony_id") in here]


def _uses(plans: Iterable[Mapping[str, Any]]) -> list[Use]:
    """Add up what the plans suggest: portion over the days that it lasts."""
    total: dict[tuple[str, str], Estimate] = defaultdict(lambda: Estimate.exactly(0))
    for plan in plans:
        gauges = {gauge["need"]: gauge for gauge in plan["gauges"]}
        for task in plan["tasks"]:
            portion, gauge = task.get("portion"), gauges.get(task["need"])
            if not portion or gauge is None or not task["from_gauge"]:
                continue
            unit, times = _in_lots(portion["unit"])
            per_day = portion["amount"] * times / gauge["capacity"]
            rates = Estimate(gauge["rate_low"], gauge["rate_per_day"], gauge["rate_high"])
            key = (portion["food_code"], unit)
            total[key] = total[key].plus(rates.times(per_day))
    return [Use(food, unit, per_day) for (food, unit), per_day in sorted(total.items())]


def _in_lots(unit: str) -> tuple[str, float]:
    """Return the unit in which lots are counted, and how many of it one of ``unit`` is."""
    return _IN_LOTS.get(unit, (unit, 1.0))


def _written_ms(lot: Record) -> int:
    """Return when the amount of a lot was written down, by the server's clock."""
    _rev, corrected_ms, _device = lot.stamps.get("amount", (0, lot.made_ms, None))
    return corrected_ms


def _stock(lot: Record, amount: float | None, unit: str, today: str) -> Stock | None:
    """Return the lot in the unit of its use; its amount is unknown where the units do not meet."""
    values = lot.values
    verdict = origin_verdict(values["origin"], got_on=readable_day(values.get("got_on")), today=today)
    if verdict.verdict == "refuse":
        return None
    own_unit, times = _in_lots(values.get("unit") or unit)
    here = amount * times if amount is not None and own_unit == unit else None
    offer_from = max(filter(None, (readable_day(values.get("hold_until")), verdict.until)), default=None)
    return Stock(lot.id, values["food_code"], unit, here, offer_from, readable_day(values.get("use_by")))


def _noon_ms(connection: Connection, household_id: str, day: str) -> int:
    household = read_kind(connection, household_id, "household")[0]
    noon = dt.datetime.combine(dt.date.fromisoformat(day), dt.time(12), zone_of(household.values))
    return round(noon.timestamp() * 1000)
