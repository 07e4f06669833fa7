"""After a move or a journey: quiet days to settle, and weeks apart from the others. Common practice, no source."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from typing import Final, NamedTuple

from ...model.facts import ColonyState, Event, only
from ...model.gauges import DAY_MS
from ...model.kinds.log import Move
from ...model.kinds.plan import Reason
from ...model.tasks import reason
from .history import local_day, midnight_ms
from .outcomes import with_outcomes

SETTLING_DAYS: Final = (3, 7)
OPEN_END_MS: Final = 10**16
QUARANTINE_DAYS: Final = (14, 28)


class Settling(NamedTuple):
    """Quiet days after a move or a journey, in ms since 1970 UTC: the first instant, and the first after them."""

    begin_ms: int
    end_ms: int

    def holds(self, at_ms: float) -> bool:
        """Say whether an instant lies in it: a refusal then means nothing."""
        return self.begin_ms <= at_ms < self.end_ms


def settlings(
    events: Sequence[Event],
    *,
    utc_offset_min: int,
    acquired_on: str | None = None,
    condition: str | None = None,
    condition_since: str | None = None,
    condition_until: str | None = None,
) -> tuple[Settling, ...]:
    """Return every spell of settling that is known: after each move, after the colony came, by its condition.

    Each ends by itself after 7 days, whatever the condition still says; a day that the keeper set goes before that. A
    condition of which nobody knows since when begins with the last move or arrival; without one its end is open.
    """
    moves = [move.happened_ms for move in only(Move, events) if move.moved]
    begun = [*moves, *([] if acquired_on is None else [midnight_ms(acquired_on, utc_offset_min)])]
    spells = [Settling(at_ms, at_ms + SETTLING_DAYS[1] * DAY_MS) for at_ms in begun]
    if condition == "settling":
        since_ms = None if condition_since is None else midnight_ms(condition_since, utc_offset_min)
        if since_ms is None:
            since_ms = max(begun, default=None)
        until_ms = None if condition_until is None else midnight_ms(condition_until, utc_offset_min) + DAY_MS
        if since_ms is not None:
            end_ms = since_ms + SETTLING_DAYS[1] * DAY_MS if until_ms is None else until_ms
            spells.append(Settling(min(since_ms, end_ms), end_ms))
        elif until_ms is not None:
            spells.append(Settling(until_ms - SETTLING_DAYS[1] * DAY_MS, until_ms))
        else:
            spells.append(Settling(max((e.happened_ms for e in events), default=0), OPEN_END_MS))
    return tuple(sorted(spells))


def settlings_of(state: ColonyState) -> tuple[Settling, ...]:
    """Return the spells of settling of a colony; see ``settlings``."""
    return settlings(
        state.events, utc_offset_min=state.utc_offset_min, acquired_on=state.acquired_on, condition=state.condition,
        condition_since=state.condition_since, condition_until=state.holds_until,
    )  # fmt: skip


def holds(spells: Iterable[Settling], at_ms: float) -> bool:
    """Say whether an instant lies in one of these spells."""
    return any(spell.holds(at_ms) for spell in spells)


def excused_feedings(events: Sequence[Event], spells: Sequence[Settling]) -> frozenset[str]:
    """Return the ids of the feedings whose last check found them ignored in a spell in which that says nothing."""
    if not spells:
        return frozenset()
    return frozenset(
        feeding.id
        for feeding, check in with_outcomes(events)
        if check is not None and check.said.outcome == "ignored" and holds(spells, check.happened_ms)
    )


def settling_notice(spells: Iterable[Settling], today: dt.date, utc_offset_min: int) -> Reason | None:
    """Return how many quiet days are left of the spells that hold on a day, or None."""
    begun = [spell for spell in spells if local_day(spell.begin_ms, utc_offset_min) <= today]
    if any(spell.end_ms == OPEN_END_MS for spell in begun):
        return reason("settling")
    high = max(((local_day(spell.end_ms, utc_offset_min) - today).days for spell in begun), default=0)
    if high <= 0:
        return None
    low = SETTLING_DAYS[0] - SETTLING_DAYS[1] + high
    return reason("settles", low=max(0, low), high=high)


def quarantine_notices(state: ColonyState, today: dt.date, *, quarantined: bool) -> list[Reason]:
    """Return the rule and the countdown of a quarantine; a new colony without one is advised to stay apart.

    It counts from the day on which the condition was set, where that is known, else from the day on which it came.
    """
    notices = [reason("quarantine")] if quarantined else []
    since = (state.condition_since if quarantined else None) or state.acquired_on
    if since is None:
        return notices
    since_days = (today - dt.date.fromisoformat(since)).days
    low, high = QUARANTINE_DAYS
    left = {"low": max(0, low - since_days), "high": high - since_days}
    if quarantined and since_days >= high:
        notices.append(reason("quarantine_over", days=since_days))
    elif quarantined and since_days >= 0:
        notices.append(reason("quarantine_left", **left))
    elif 0 <= since_days < low:
        notices.append(reason("keep_apart", **left))
    return notices
