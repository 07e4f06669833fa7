"""What a push service's answer means: one table. RFC 8030, RFC 9110 and vendors' own rules."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from urllib3.exceptions import InvalidHeader
from urllib3.util.retry import Retry

from ..outcome import LONGEST_WAIT_S, TOO_LARGE, Gone, Outcome, Refused, RetryLater, Sent

DEFAULT_WAIT_S: Final = 60


def read_answer(status: int, headers: Mapping[str, str]) -> Outcome:
    """Return what an HTTP status (and the header ``Retry-After``) means for the message and its subscription."""
    if 200 <= status <= 202 or status == 204:
        return Sent()
    if status in (404, 410):
        return Gone()
    if status == 413:
        return TOO_LARGE
    if status in (429, 503):
        return RetryLater(f"status_{status}", wait_s(headers.get("Retry-After")), vendor=True)
    if status == 408 or status >= 500:
        return RetryLater(f"status_{status}")
    return Refused(f"status_{status}", suspect=True)


def wait_s(retry_after: str | None) -> int:
    """Return the seconds that a ``Retry-After`` header asks for (seconds or an HTTP date), from 1 to an hour."""
    if retry_after is None:
        return DEFAULT_WAIT_S
    try:
        asked_s = Retry().parse_retry_after(retry_after)
    except (InvalidHeader, ValueError, OverflowError):  # no such text; digits or a date without end
        return DEFAULT_WAIT_S
    return max(1, round(min(LONGEST_WAIT_S, asked_s)))
