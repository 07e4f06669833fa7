"""After food that was refused was given all the same: what may carry poison comes out, and its eaters are watched.

A refusal is the verdict of the food's origin (catalogue/origins.toml): never, or not before its hold. The record is
kept, and from it follow two tasks, for the colony and for all that got the same lot: take the rest out at once, and
look once a day for ``WATCH_DAYS``.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Mapping, Sequence
from operator import attrgetter
from typing import Final

from ...model.facts import ColonyState, Event, Logged, Lot, only
from ...model.gauges import DAY_MS
from ...model.kinds.log import Feeding
from ...model.tasks import AGAIN_DAYS, Task, TaskKey, check_of, reason
from ..catalogue import origins
from ..colony.history import local_day
from ..feeding.food_origin import origin_verdict

WATCH_DAYS: Final = 8
"""Half of the workers were dead within 1 to 4 days at strong doses of three poisons (Rust, Reierson & Klotz 2004, J.
Econ. Entomol. 97:1017) and at 8 days at 0.11 % boric acid (Klotz, Vail & Williams 1997, J. Econ. Entomol. 90:488)."""
POISONED: Final = frozenset({"refuse", "hold"})
"""Verdicts that are about poison; hot syrup and unwashed fruit are no matter of days."""


def may_be_risky(feeding: Feeding) -> bool:
    """Say whether a feeding's own fields leave open that it was refused; cheap, and true of few feedings."""
    return any(map(is_poison, (*(feeding.despite or ()), feeding.origin)))


def risk_of(feeding: Logged[Feeding], lot: Lot | None, utc_offset_min: int) -> bool:
    """Say whether a feeding was given despite a refusal. ``lot``: what it came from, None where it is not known.

    Of a lot that is no longer known only the phone's own word counts, not a hold of which nobody can tell
    whether it was over.
    """
    said = feeding.said
    if any(map(is_poison, said.despite or ())):
        return True
    origin = lot.origin if lot is not None else said.origin
    if not is_poison(origin) or (lot is None and said.lot_id and _verdict(origin) == "hold"):
        return False
    day = local_day(feeding.happened_ms, utc_offset_min).isoformat()
    got_on = lot.got_on if lot is not None else None
    held = lot is not None and lot.hold_until is not None and day < lot.hold_until
    return held or origin_verdict(str(origin), got_on=got_on, today=day).verdict in POISONED


def risky_lots(
    feedings: Iterable[Logged[Feeding]], lots: Mapping[str, Lot], utc_offset_min: int
) -> frozenset[str]:
    """Return the lots of which something was given despite a refusal. ``feedings``: of the whole household."""
    return frozenset(
        each.said.lot_id
        for each in feedings
        if each.said.lot_id and risk_of(each, lots.get(each.said.lot_id), utc_offset_min)
    )


def risky_feedings(state: ColonyState, now_ms: int) -> tuple[Logged[Feeding], ...]:
    """Return the feedings of the last days that were refused or came from a lot of which one was, oldest first."""
    lots = {lot.id: lot for lot in state.lots}
    since_ms = now_ms - (WATCH_DAYS + 1) * DAY_MS
    lately = state.events[bisect_left(state.events, since_ms, key=attrgetter("happened_ms")) :]
    return tuple(
        fed for fed in only(Feeding, lately)
        if fed.said.lot_id in state.risky_lots
        or risk_of(fed, lots.get(fed.said.lot_id or ""), state.utc_offset_min)
    )  # fmt: skip


def watch_tasks(risky: Sequence[Logged[Feeding]], events: Sequence[Event], now_ms: int) -> list[Task]:
    """Return the next daily look after the last risky feeding; none once its days are over."""
    if not risky or now_ms > risky[-1].happened_ms + (WATCH_DAYS + 1) * DAY_MS:
        return []
    given = risky[-1]
    looks = [e for e in events if e.kind in ("check", "count", "photo") and e.happened_ms > given.happened_ms]
    last_id, last_ms = (looks[-1].id, looks[-1].happened_ms) if looks else (given.id, given.happened_ms)
    due_ms = last_ms + AGAIN_DAYS["risk_look"] * DAY_MS
    day = (due_ms - given.happened_ms) // DAY_MS
    if day > WATCH_DAYS:
        return []
    why = (
        reason("risk_look", at_ms=given.happened_ms, day=day, of=WATCH_DAYS),
        reason("risk_times"),
        reason("risk_signs"),
    )
    key = TaskKey("risk_look", last_id)
    return [Task(key, "glance", due_ms, suggested=check_of("glance"), reasons=why)]


def is_poison(origin: str | None) -> bool:
    """Say whether food of this origin is refused as it comes: never, or not before its hold."""
    return _verdict(origin) in POISONED


def _verdict(origin: str | None) -> str:
    rule = origins().get(str(origin))
    return "" if rule is None else str(rule["verdict"])
