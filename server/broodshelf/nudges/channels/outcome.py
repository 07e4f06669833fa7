"""What may come of a message, whichever way it went."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

LONGEST_WAIT_S: Final = 3600
"""Whoever asks for more is tried again after an hour all the same: a nudge is of no use tomorrow."""


@dataclass(frozen=True, slots=True)
class Sent:
    """The service took the message; whether the phone shows it, only the phone can say."""


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


def word(outcome: Outcome) -> str:
    """Return what came of a message as one word for the phone: sent, gone or the reason."""
    if isinstance(outcome, Sent):
        return "sent"
    return "gone" if isinstance(outcome, Gone) else outcome.reason
