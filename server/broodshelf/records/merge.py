"""The field merge: who wins when two phones changed the same field. Pure.

A *stamp* is kept for every field: ``(rev, corrected_ms, device_id)`` of the operation that set it last.
The rules are worded in docs/sync.md; ``fixtures/conformance/merge.json`` holds them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Literal

Stamp = tuple[int, int, str | None]


@dataclass(frozen=True, slots=True)
class Meeting:
    """A field on which two phones met: who won, and both values."""

    field: str
    winner: Literal["mine", "theirs"]
    mine: Any
    theirs: Any
    at_ms: int
    device_id: str | None


@dataclass(slots=True)
class Merged:
    """The fields to write (with their stamps' time), and where phones met."""

    wins: dict[str, Any] = field(default_factory=dict)
    meetings: list[Meeting] = field(default_factory=list)


def corrected_ms(made_at_ms: int, skew_ms: int, server_now_ms: int) -> int:
    """Return when an operation was made by the server's clock: device time plus skew, never after now."""
    return min(made_at_ms + skew_ms, server_now_ms)


def merge(
    present: Mapping[str, Any],
    stamps: Mapping[str, Stamp],
    asked: Mapping[str, Any],
    *,
    base_rev: int | None,
    made_ms: int,
    device_id: str | None,
) -> Merged:
    """Decide, field by field, what ``asked`` changes.

    ``base_rev`` is the record's revision that the device had, or None when it is unknown (another epoch).
    A field meets another phone's only if that was stamped after ``base_rev`` by another device with another
    value; then the later corrected time wins, and on a tie the one that came to the server last (``asked``).
    A deletion meets unseen changes of any field, and a change meets an unseen deletion, so that neither
    silently takes the other away: whichever is later decides whether the record is gone.
    """
    merged = Merged()
    for name, value in asked.items():
        deletes = name == "gone" and value is True
        stamp = _newest_foreign(stamps, base_rev, device_id) if deletes else stamps.get(name)
        theirs = present.get(name)
        unseen = stamp is not None and (base_rev is None or stamp[0] > base_rev)
        if stamp is None or not unseen or stamp[2] == device_id or theirs == value:
            merged.wins[name] = value
            continue
        mine_wins = made_ms >= stamp[1]
        if mine_wins:
            merged.wins[name] = value
        merged.meetings.append(
            Meeting(name, "mine" if mine_wins else "theirs", value, theirs, stamp[1], stamp[2])
        )
    deleted = stamps.get("gone")
    if asked and "gone" not in asked and present.get("gone") is True and deleted is not None:
        unseen = base_rev is None or deleted[0] > base_rev
        if unseen and deleted[2] != device_id:
            mine_wins = made_ms >= deleted[1]
            if mine_wins:
                merged.wins["gone"] = False
            merged.meetings.append(
                Meeting("gone", "mine" if mine_wins else "theirs", False, True, deleted[1], deleted[2])
            )
    return merged


def _newest_foreign(stamps: Mapping[str, Stamp], base_rev: int | None, device_id: str | None) -> Stamp | None:
    """A deletion meets every field: the latest change by another phone that the deleting one had not seen."""
    unseen = [s for s in stamps.values() if s[2] != device_id and (base_rev is None or s[0] > base_rev)]
    return max(unseen, key=lambda stamp: stamp[1], default=None)
