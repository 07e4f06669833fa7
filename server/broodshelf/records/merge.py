"""The field merge: who wins when two phones changed the same field. Pure.

A *stamp* is kept for every field: ``(rev, at_ms, device_id)`` of the operation that set it last. Along the life of a
field ``at_ms`` only grows: whatever takes the place of a value is stamped later than it, so that times alone tell the
order again when revisions cannot (after a restore). The rules are worded in docs/sync.md;
``fixtures/conformance/merge.json`` holds them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Literal

Stamp = tuple[int, int, str | None]
Made = tuple[int, str | None]
"""When a field was set and by which device, as phones know it: a stamp without its revision."""


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
    """The fields to write, the time of their stamps, where phones met, and what the same phone had set later.

    ``past`` are values of a phone that sends again what it made before: they left their place long ago.
    """

    made_ms: int
    wins: dict[str, Any] = field(default_factory=dict)
    meetings: list[Meeting] = field(default_factory=list)
    past: dict[str, Any] = field(default_factory=dict)


def corrected_ms(made_at_ms: int, skew_ms: int, server_now_ms: int) -> int:
    """Return when an operation was made by the server's clock: device time plus skew, from 1970 to now."""
    return max(0, min(made_at_ms + skew_ms, server_now_ms))


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """The fields that a phone asks for, and where and when it did.

    ``base_rev``: the record's revision that the device had, or None when it is unknown (another epoch).
    ``made_ms``: when it was made by the server's clock, never later than now. ``said_ms``: the time that the phone
    said, also where that lies ahead of now: of several that do, ``made_ms`` no longer tells the order.
    """

    fields: Mapping[str, Any]
    base_rev: int | None
    made_ms: int
    device_id: str | None
    said_ms: int | None = None

    @property
    def own_ms(self) -> int:
        """When it was made among what the same phone made."""
        return self.made_ms if self.said_ms is None else max(self.made_ms, self.said_ms)


def merge(present: Mapping[str, Any], stamps: Mapping[str, Stamp], asked: Asked) -> Merged:
    """Decide, field by field, what ``asked`` changes.

    A field meets another phone's only if that was stamped after its ``base_rev`` by another device with another
    value; then the later corrected time wins, and on a tie the one that came to the server last (``asked``).
    A deletion meets unseen changes of any field, and a change meets an unseen deletion, so that neither
    silently takes the other away: whichever is later decides whether the record is gone.
    One phone never meets itself: what it sends comes in the order of its making. With an unknown base it may be
    sending again what it set before; then its own later value stands.
    """
    base_rev, made_ms, device_id = asked.base_rev, asked.made_ms, asked.device_id
    merged = Merged(made_ms)
    for name, value in asked.fields.items():
        deletes = name == "gone" and value is True
        theirs = present.get(name)
        if base_rev is None and _own_is_later(stamps, name, asked.own_ms, device_id, deletes=deletes):
            if theirs != value:
                merged.past[name] = value
            continue
        stamp = _newest_foreign(stamps, base_rev, device_id) if deletes else stamps.get(name)
        unseen = stamp is not None and (base_rev is None or stamp[0] > base_rev)
        if stamp is None or not unseen or stamp[2] == device_id or theirs == value:
            if theirs != value or base_rev is not None or stamp is None or made_ms > stamp[1]:
                merged.wins[name] = value
            continue
        mine_wins = made_ms >= stamp[1]
        if mine_wins:
            merged.wins[name] = value
        merged.meetings.append(
            Meeting(name, "mine" if mine_wins else "theirs", value, theirs, stamp[1], stamp[2])
        )
    deleted = stamps.get("gone")
    if asked.fields and "gone" not in asked.fields and present.get("gone") is True and deleted is not None:
        unseen = base_rev is None or deleted[0] > base_rev
        if unseen and deleted[2] != device_id:
            mine_wins = made_ms >= deleted[1]
            if mine_wins:
                merged.wins["gone"] = False
            merged.meetings.append(
                Meeting("gone", "mine" if mine_wins else "theirs", False, True, deleted[1], deleted[2])
            )
    merged.made_ms = max(made_ms, *_beaten_ms(stamps, merged.wins), 0)
    return merged


def merge_past(
    present: Mapping[str, Any],
    stamps: Mapping[str, Stamp],
    offered: Mapping[str, Any],
    made: Mapping[str, Made],
) -> dict[str, Any]:
    """Return which fields of a record that a phone offers after a restore take the place of what stands.

    ``made`` says for each offered field when it was set and by whom. A field that was set later than what stands
    wins; one that was set before lost its place long ago, whoever offers it now. A deletion must be later than every
    field, and a record that was changed after its deletion lives.
    """
    latest_ms = max((stamp[1] for stamp in stamps.values()), default=-1)
    deleted = stamps.get("gone")
    wins: dict[str, Any] = {}
    for name, value in offered.items():
        deletes = name == "gone" and value is True and present.get("gone") is not True
        stands_ms = latest_ms if deletes else stamps[name][1] if name in stamps else -1
        if made[name][0] > stands_ms:
            wins[name] = value
    changed_ms = max((at_ms for at_ms, _device in made.values()), default=-1)
    lies = present.get("gone") is True and offered.get("gone") is not True
    if lies and deleted is not None and changed_ms > deleted[1]:
        wins["gone"] = False
    return wins


def _own_is_later(
    stamps: Mapping[str, Stamp], name: str, made_ms: int, device_id: str | None, *, deletes: bool
) -> bool:
    """Say whether this phone itself set the field later; a deletion gives way to any later field."""
    told = stamps.values() if deletes else [stamps[name]] if name in stamps else []
    return any(stamp[2] == device_id and stamp[1] > made_ms for stamp in told)


def _newest_foreign(stamps: Mapping[str, Stamp], base_rev: int | None, device_id: str | None) -> Stamp | None:
    """A deletion meets every field: the latest change by another phone that the deleting one had not seen."""
    unseen = [s for s in stamps.values() if s[2] != device_id and (base_rev is None or s[0] > base_rev)]
    return max(unseen, key=lambda stamp: stamp[1], default=None)


def _beaten_ms(stamps: Mapping[str, Stamp], wins: Mapping[str, Any]) -> list[int]:
    """Return the times just after every value that ``wins`` take the place of; a deletion takes that of all."""
    beaten = stamps.keys() if wins.get("gone") is True else wins.keys() & stamps.keys()
    return [stamps[name][1] + 1 for name in beaten]
