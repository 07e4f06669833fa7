"""Where a message goes: a phone, or a mailbox. The address itself never reaches a log; its mark does."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from typing import Final

MAIL: Final = "mail"
"""Host and key id of a mailbox among the subscriptions."""
_SCHEME: Final = "mailto:"


@dataclass(frozen=True, slots=True)
class Phone:
    """A browser's subscription: the address at its push service and the keys to encrypt with."""

    endpoint: str
    p256dh: str
    auth: str

    @property
    def mark(self) -> str:
        """What logs may say of the address."""
        return _mark(self.endpoint)


@dataclass(frozen=True, slots=True)
class Mailbox:
    """A person's mail address."""

    address: str

    @property
    def endpoint(self) -> str:
        """The address as it stands among the subscriptions."""
        return f"{_SCHEME}{self.address}"

    @property
    def mark(self) -> str:
        """What logs may say of the address."""
        return _mark(self.endpoint)


Address = Phone | Mailbox


def read_address(endpoint: str, p256dh: str, auth: str) -> Address:
    """Return the address that a row of the subscriptions holds."""
    if endpoint.startswith(_SCHEME):
        return Mailbox(endpoint.removeprefix(_SCHEME))
    return Phone(endpoint, p256dh, auth)


def _mark(endpoint: str) -> str:
    return hashlib.sha256(endpoint.encode()).hexdigest()[:12]
