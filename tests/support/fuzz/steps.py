"""The steps of a run: a request, a picture, time that passes, a tick of the nudger."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

NEWCOMER = "newcomer"
"""Whoever signed in last within the run."""


@dataclass(frozen=True)
class Ask:
    """One request; ``path`` and ``body`` may hold things by name, put in when it is made."""

    role: str
    method: str
    path: tuple[Any, ...]
    body: Any = None
    wrap: str = ""
    content_type: str = "application/json"
    headers: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Picture:
    """A picture record whose hash is right, then the picture."""

    role: str
    name: str


@dataclass(frozen=True)
class Wait:
    """The clock goes on, or back."""

    days: float


@dataclass(frozen=True)
class Tick:
    """The nudger does what is due."""


Step = Ask | Picture | Wait | Tick
