"""A task: what is due, when, with a portion and reasons. Gauges give some; faults and leftovers give others."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True, slots=True)
class Task:
    """One thing to do. ``suggested`` is the log that 'as suggested' makes, without colony and time.

    ``stand_in``: the fields that a stand-in sees instead of these; None: it is the keeper's alone.
    """

    key: str
    need: str
    due_at_ms: int
    urgent: bool = False
    from_gauge: bool = False
    portion: Mapping[str, Any] | None = None
    suggested: Mapping[str, Any] | None = None
    reasons: tuple[Mapping[str, Any], ...] = ()
    cautions: tuple[Mapping[str, Any], ...] = ()
    stand_in: Mapping[str, Any] | None = None

    def as_json(self) -> dict[str, Any]:
        """Return the shape of docs/http-api.md, "A plan"."""
        return {
            "key": self.key,
            "need": self.need,
            "due_at_ms": self.due_at_ms,
            "urgent": self.urgent,
            "from_gauge": self.from_gauge,
            "portion": self.portion,
            "suggested": self.suggested,
            "reasons": list(self.reasons),
            "cautions": list(self.cautions),
            "stand_in": self.stand_in,
        }


def reason(code: str, **args: Any) -> dict[str, Any]:
    """Return a reason, notice or caution: a code of the word table and its arguments."""
    return {"code": code, "args": args}
