"""What a push service's answer means: one table, read by the sender. RFC 8030, RFC 9110 and vendors' own rules."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from email.utils import parsedate_to_datetime
from typing import Final

LONGEST_WAIT_S: Final = 3600
"""A vendor that asks for more is tried again after an hour all the same: a nudge is of no use tomorrow."""
DEFAULT_WAIT_S: Final = 60
PAUSE_S: Final = 30
"""How long a push service that did not answer at all is left alone, so that its silence is waited out only once."""
BACK_OFF_S: Final = (30, 120, 480, 1800)
"""Waits after the first, second, … failure of a service or the network; the last one repeats."""


@dataclass(frozen=True, slots=True)
class Sent:
    """The push service took the message; whether the phone shows it, only the phone can say."""


@dataclass(frozen=True, slots=True)
class Gone:
    """The subscription has ended for good."""


@dataclass(frozen=True, slots=True)
class RetryLater:
    """Try again in ``after_s`` seconds (None: by our own back-off); ``vendor``: the whole host should rest, too."""

    reason: str
    after_s: int | None = None
    vendor: bool = False


@dataclass(frozen=True, slots=True)
class Refused:
    """Trying again will not help. ``suspect``: the fault may be ours, so the subscription is kept and watched."""

    reason: str
    suspect: bool = False


Outcome = Sent | Gone | RetryLater | Refused

TOO_LARGE: Final = Refused("too_large")
"""Our own fault: the message is sent once more in a short form."""


def read_answer(status: int, retry_after: str | None, now_ms: int) -> Outcome:
    """Return what an HTTP status (and ``Retry-After``) means for the message and its subscription."""
    if 200 <= status <= 202 or status == 204:
        return Sent()
    if status in (404, 410):
        return Gone()
    if status == 413:
        return TOO_LARGE
    if status in (429, 503):
        return RetryLater(f"status_{status}", wait_s(retry_after, now_ms), vendor=True)
    if status == 408 or status >= 500:
        return RetryLater(f"status_{status}")
    return Refused(f"status_{status}", suspect=True)


def wait_s(retry_after: str | None, now_ms: int) -> int:
    """Return the seconds that a ``Retry-After`` header asks for (seconds or an HTTP date), from 1 to an hour."""
    if retry_after is None:
        return DEFAULT_WAIT_S
    text = retry_after.strip()
    if text.isascii() and text.isdigit():
        return max(1, min(LONGEST_WAIT_S, int(text[:9])))
    try:
        at = parsedate_to_datetime(text)
    except ValueError:
        return DEFAULT_WAIT_S
    at = at if at.tzinfo else at.replace(tzinfo=dt.UTC)
    return max(1, min(LONGEST_WAIT_S, round(at.timestamp() - now_ms / 1000)))


def back_off_s(attempts: int) -> int:
    """Return the wait after so many failed attempts (at least one)."""
    return BACK_OFF_S[min(attempts, len(BACK_OFF_S)) - 1]
