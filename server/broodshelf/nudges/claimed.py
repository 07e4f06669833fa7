"""A message that this process holds: what the queue gives out, a lane sends and an outcome ends."""

from __future__ import annotations

from dataclasses import dataclass

from .channels.addresses import Address
from .messages import Item


@dataclass(frozen=True, slots=True)
class Claimed:
    """A message that this process may send until its lease runs out. ``items`` are those still open.

    ``notice``: what a message of the keepers' journal says, as JSON. ``language``: of whom it is for, if they said.
    """

    household_id: str
    id: str
    nudge_id: str | None
    subscription_id: str
    host: str
    to: Address
    attempts: int
    short: bool
    urgent: bool
    useless_ms: int
    topic: str
    items: tuple[Item, ...] = ()
    due_ms: int | None = None
    notice: str | None = None
    language: str | None = None

    @property
    def key(self) -> tuple[str, str]:
        """Household and id: what finds a message."""
        return self.household_id, self.id
