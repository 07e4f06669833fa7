"""After a move or a journey: quiet days to settle, and weeks apart from the others. Common practice, no source."""

from __future__ import annotations

import datetime as dt
from typing import Any, Final

from ..plan.state import ColonyState
from ..plan.tasks import reason
from .history import History, local_day

SETTLING_DAYS: Final = (3, 7)
QUARANTINE_DAYS: Final = (14, 28)


def settling_notice(state: ColonyState, history: History, today: dt.date) -> dict[str, Any] | None:
    """Return how many quiet days are left after the last nest move or the day the colony came, or None."""
    begun = [] if history.moved_ms is None else [local_day(history.moved_ms, state.utc_offset_min)]
    if state.acquired_on:
        begun.append(dt.date.fromisoformat(state.acquired_on))
    since_days = min(((today - day).days for day in begun if day <= today), default=SETTLING_DAYS[1])
    low, high = SETTLING_DAYS
    if since_days >= high:
        return None
    return reason("settles", low=max(0, low - since_days), high=high - since_days)


def quarantine_notices(state: ColonyState, today: dt.date, *, quarantined: bool) -> list[dict[str, Any]]:
    """Return the rule and the countdown of a quarantine; a new colony without one is advised to stay apart."""
    notices = [reason("quarantine")] if quarantined else []
    if not state.acquired_on:
        return notices
    since_days = (today - dt.date.fromisoformat(state.acquired_on)).days
    low, high = QUARANTINE_DAYS
    left = {"low": max(0, low - since_days), "high": high - since_days}
    if quarantined and since_days >= high:
        notices.append(reason("quarantine_over", days=since_days))
    elif quarantined and since_days >= 0:
        notices.append(reason("quarantine_left", **left))
    elif 0 <= since_days < low:
        notices.append(reason("keep_apart", **left))
    return notices
