"""What the larder lasts: which food runs out when, what to buy by when, and what spoils first.

The forecast walks day by day: each day's need is met from the lots that may be offered, the one that spoils first
first. The use is an estimate that goes with the census of each colony, so the last day is early, likely or late. Shelf
lives and lead times are the keeper's or common practice, no source.
"""

from __future__ import annotations

import datetime as dt
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason

HORIZON_DAYS: Final = 120
LEAD_DAYS: Final = 4
"""From noticing to having it in the house (common practice, no source; a keeper may set its own)."""


@dataclass(frozen=True, slots=True)
class Stock:
    """A lot as the forecast sees it; days are ISO. ``amount`` None: nobody wrote down how much there is."""

    lot_id: str
    food_code: str
    unit: str
    amount: float | None
    offer_from: str | None = None
    use_by: str | None = None

    def __post_init__(self) -> None:
        if self.amount is not None:
            within("amount in the larder", self.amount, self.unit, 0, 10_000_000)


@dataclass(frozen=True, slots=True)
class Use:
    """How much of a food all colonies together use in a day, in the unit of its lots.

    ``later``: the same on days ahead of today, in order, as the census expects; between two of them it goes in a
    straight line, and after the last it stays.
    """

    food_code: str
    unit: str
    per_day: Estimate
    later: tuple[tuple[int, Estimate], ...] = ()

    def on(self, ahead: int) -> Estimate:
        """Return the use so many days ahead of today."""
        row = ((0, self.per_day), *self.later)
        after = bisect_right(row, ahead, key=lambda step: step[0])
        if after == len(row):
            return row[-1][1]
        (day, one), (next_day, other) = row[after - 1], row[after]
        share = (ahead - day) / (next_day - day)
        return one.times(1 - share).plus(other.times(share))


@dataclass(frozen=True, slots=True)
class Spoiling:
    """A lot of which something will be left on its last day."""

    lot_id: str
    food_code: str
    on: str
    amount: float


@dataclass(frozen=True, slots=True)
class Outlook:
    """How long one food lasts. Days are ISO; None: not within the horizon, or not known.

    ``runs_out_early`` and ``runs_out`` are the first days with too little, at high and at usual use;
    ``buy_by`` is the last day to order it.
    """

    food_code: str
    runs_out_early: str | None
    runs_out: str | None
    buy_by: str | None
    spoils: tuple[Spoiling, ...]
    reasons: tuple[Reason, ...]


def forecast(
    lots: Sequence[Stock], uses: Sequence[Use], *, today: str, lead_days: int = LEAD_DAYS
) -> tuple[Outlook, ...]:
    """Return the outlook of every food in use, the one to buy first at the front.

    Lots in another unit than the use raise ``ValueError``. A food without any lot runs out today.
    """
    within("lead time", lead_days, "days", 0, HORIZON_DAYS)
    outlooks = [
        _outlook(use, [lot for lot in lots if lot.food_code == use.food_code], today, lead_days)
        for use in uses
        if use.per_day.high > 0
    ]
    return tuple(sorted(outlooks, key=lambda outlook: (outlook.buy_by or "9999", outlook.food_code)))


def spoils_first(outlooks: Sequence[Outlook]) -> tuple[Spoiling, ...]:
    """Return everything that will spoil at usual use, in the order of its last day."""
    return tuple(sorted((s for o in outlooks for s in o.spoils), key=lambda s: (s.on, s.lot_id)))


def _outlook(use: Use, lots: Sequence[Stock], today: str, lead_days: int) -> Outlook:
    for lot in lots:
        if lot.unit != use.unit:
            raise ValueError(
                f"lot {lot.lot_id} is counted in {lot.unit}, its use in {use.unit}; make them the same"
            )
    if any(lot.amount is None for lot in lots):
        return Outlook(use.food_code, None, None, None, (), (reason("larder_amount_unknown"),))
    by_day = [use.on(ahead) for ahead in range(HORIZON_DAYS)]
    early, _ = _walk([per_day.high for per_day in by_day], lots, today)
    usual, spoils = _walk([per_day.best for per_day in by_day], lots, today)
    if early is None:
        why = reason("larder_lasts", days=HORIZON_DAYS)
        return Outlook(use.food_code, None, None, None, spoils, (why,))
    buy_by = max(today, _plus(early, -lead_days))
    args = {"early": early, "on": usual or _plus(today, HORIZON_DAYS), "lead": lead_days, "buy_by": buy_by}
    code = "larder_out" if early == today else "larder_runs_out"
    reasons = (reason(code, **args), *(reason("larder_spoils", on=s.on, amount=s.amount) for s in spoils))
    return Outlook(use.food_code, early, usual, buy_by, spoils, reasons)


def _walk(
    by_day: Sequence[float], lots: Sequence[Stock], today: str
) -> tuple[str | None, tuple[Spoiling, ...]]:
    """Return the first day with too little, and what is left of lots on their last day."""
    left = {lot.lot_id: lot.amount or 0.0 for lot in lots}
    in_order = sorted(lots, key=lambda lot: (lot.use_by or "9999", lot.offer_from or "", lot.lot_id))
    short: str | None = None
    spoils: list[Spoiling] = []
    for ahead, per_day in enumerate(by_day):
        day = _plus(today, ahead)
        missing = per_day
        for lot in in_order:
            if (lot.offer_from or "") <= day <= (lot.use_by or "9999"):
                taken = min(missing, left[lot.lot_id])
                left[lot.lot_id] -= taken
                missing -= taken
            if lot.use_by == day and left[lot.lot_id] > 1e-9:
                spoils.append(Spoiling(lot.lot_id, lot.food_code, day, round(left[lot.lot_id], 2)))
        if short is None and missing > 1e-9 * max(1.0, per_day):
            short = day
    return short, tuple(spoils)


def _plus(day: str, days: int) -> str:
    return (dt.date.fromisoformat(day) + dt.timedelta(days=days)).isoformat()
