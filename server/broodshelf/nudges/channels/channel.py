"""What push and mail share: a delivery goes in, an outcome comes out. How it looks is the channel's own affair."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol, TypeVar

from ..messages import Message
from .addresses import MAIL, Address, Mailbox, Phone
from .outcome import Outcome, Refused

To = TypeVar("To", contravariant=True)


@dataclass(frozen=True, slots=True)
class Delivery:
    """One message on its way. ``id`` is unguessable: with it the phone acknowledges.

    ``useful_s``: how long the message is of use. ``topic``: a newer message of the same topic replaces one that
    still waits at the push service.
    """

    id: str
    message: Message
    useful_s: int
    urgent: bool
    topic: str


class Channel(Protocol[To]):
    """Whoever can bring a delivery to such an address; tests bring their own."""

    def send(self, to: To, delivery: Delivery, now_ms: int) -> Outcome:
        """Render and send, and say what came of it; never raises for what the other side or the network does.

        Raises ``ValueError`` for a message that it cannot render.
        """


@dataclass(frozen=True, slots=True)
class Channels:
    """All ways out of this server. ``push_key_id`` names the key that phones must have subscribed with."""

    push: Channel[Phone]
    push_key_id: str
    mail: Channel[Mailbox] | None = None

    @property
    def key_ids(self) -> tuple[str, ...]:
        """Who listens with one of these can be reached: the present push key and, where mail is set up, ``mail``."""
        return (self.push_key_id,) if self.mail is None else (self.push_key_id, MAIL)

    def send(self, to: Address, delivery: Delivery, now_ms: int) -> Outcome:
        """Send by the channel that the address belongs to."""
        match to:
            case Phone():
                return self.push.send(to, delivery, now_ms)
            case Mailbox():
                return Refused("mail_off") if self.mail is None else self.mail.send(to, delivery, now_ms)
