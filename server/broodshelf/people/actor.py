"""Who is asking: the signed-in device, its person and what the household lets it do."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

ActorRole = Literal["keeper", "stand_in"]
PassState = Literal["not_yet", "active", "ended"]


@dataclass(frozen=True, slots=True)
class PassWindow:
    """The pass that a stand-in came with: its colonies and its dates in the household's zone, as instants."""

    pass_id: str
    colony_ids: frozenset[str]
    starts_on: str
    ends_on: str
    starts_ms: int
    ends_ms: int
    state: PassState


@dataclass(frozen=True, slots=True)
class Actor:
    """A device with a valid session. ``window`` is set for stand-ins only."""

    household_id: str
    person_id: str
    device_id: str
    role: ActorRole
    window: PassWindow | None = None
