"""What the operations of one request share, and what is known of one of them once it has been read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

from ..model.kinds import Kind
from ..people.actor import Actor
from ..records.merge import corrected_ms
from ..records.store import Ledger, Record
from .envelope import Operation
from .repeats import Answered, answered_tasks


@dataclass(slots=True)
class Outcome:
    """The answers in the order of the operations, and which colonies' plans have to be made again."""

    answers: list[dict[str, Any]] = field(default_factory=list)
    touched: set[str] = field(default_factory=set)
    touches_all: bool = False
    awaited: set[str] = field(default_factory=set)
    """Records that an earlier operation of the same request would have made, had its parent been here."""
    purged: frozenset[str] = frozenset()
    """Which of the mentioned records were purged: they stay gone."""
    passes: set[str] = field(default_factory=set)
    """Passes that changed: what was put off under them may end earlier now."""
    left: set[str] = field(default_factory=set)
    """People who were deleted: what they came in by ends with them (``people.leaving``)."""
    back: set[str] = field(default_factory=set)
    """People who were deleted once and are there again."""

    def note_person(self, person_id: str, gone: bool | None) -> None:
        """Note whether a person stands deleted (``None``: never was); what the request said before counts no more."""
        for found, holds in ((self.left, gone is True), (self.back, gone is False)):
            (found.add if holds else found.discard)(person_id)


@dataclass(frozen=True, slots=True)
class Batch:
    """One request's operations while they are answered: in which household, from whom, when, and what came of them."""

    ledger: Ledger
    actor: Actor
    now_ms: int
    answered: Answered
    """The logs that answered each task that the operations name."""
    outcome: Outcome

    @classmethod
    def begin(cls, ledger: Ledger, actor: Actor, operations: Sequence[Operation], now_ms: int) -> Batch:
        """Return the batch of these operations, of which none has been answered."""
        return cls(ledger, actor, now_ms, answered_tasks(ledger, operations), Outcome())


@dataclass(frozen=True, slots=True)
class Change:
    """An operation whose fields are sound: what it would set (``values``) of which ``record`` (None: a new one)."""

    op: Operation
    kind: Kind
    values: dict[str, Any]
    record: Record | None

    def made_ms(self, now_ms: int) -> int:
        """Return when it was made, by the server's clock and not ahead of it."""
        return corrected_ms(self.op.made_at, self.op.skew_ms, now_ms)
