"""What was ended stays ended, also when an older database is restored: a file beside the database says what.

Each ending is one line, brought to the disk before the database says so; at start every line is applied again, and what
of a damaged file can be read counts (``people.ledger``). Secrets stand in it by their hash, as in the database.
"""

from __future__ import annotations

import json
import os
import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Final, Literal, NamedTuple, get_args

from .data_folder import set_aside
from .epochs import write_whole
from .json_text import read_json
from .types import LAST_MS, is_uuid

What = Literal[
    "device",
    "pass",
    "session",
    "link",
    "feed",
    "sensor",
    "pairing",
    "claim",
    "mail",
    "person",
    "person_back",
    "record",
    "household",
    "household_back",
]
"""A revoked phone or pass, by its id; a session that was signed out, a pass's link, a calendar's address and a
sensor's token that ended or were replaced, by the hash of what opened them; a pairing by its id and a claim code by its
hash, once used; a person whose mail address was taken away; a person who was removed, or came back; a record that was
purged; a household that was erased, or put back on purpose."""

_BACK: Final[dict[What, What]] = {"person": "person_back", "household": "household_back"}
_KINDS: Final[dict[str, What]] = {name: name for name in get_args(What)}
_ID: Final = r"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"
_ENDED_ID: Final = rf"(?:{_ID}|[0-9a-f]{{64}})"
_LEFT: Final = re.compile(
    rf'"what": "({"|".join(_KINDS)})", "household_id": "({_ID})", "id": "({_ENDED_ID})"'
)
"""What is enough of a line that was cut or written over to know what was ended."""
_OF_HOUSEHOLDS: Final = ("household", "household_back")
UNKNOWN_MS: Final = 1
"""When it was ended, where the line no longer says so: long ago."""


class Revocation(NamedTuple):
    """One line: what of a household was ended, and when in ms since 1970 UTC."""

    what: What
    household_id: str
    id: str
    at_ms: int

    def line(self) -> str:
        """Return the line as it stands in the file."""
        return json.dumps(self._asdict()) + "\n"


@dataclass(frozen=True, slots=True)
class Revocations:
    """The file of revocations."""

    path: Path

    def add(self, what: What, household_id: str, ended_id: str, at_ms: int) -> None:
        """Append what was ended and bring it to the disk."""
        self.add_all([Revocation(what, household_id, ended_id, at_ms)])

    def add_all(self, entries: Iterable[Revocation]) -> None:
        """Append all of them and bring them to the disk together; never to the end of a line that a crash cut."""
        lines = "".join(entry.line() for entry in entries)
        if not lines:
            return
        self.path.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(self.path, os.O_RDWR | os.O_CREAT | os.O_APPEND, 0o600)
        with os.fdopen(handle, "r+b", buffering=0) as file:
            end = file.seek(0, os.SEEK_END)
            cut = end > 0 and os.pread(file.fileno(), 1, end - 1) != b"\n"
            file.write(("\n" if cut else "").encode() + lines.encode())
            os.fsync(file.fileno())

    def read(self) -> list[Revocation]:
        """Return all revocations that can be read."""
        return list(dict.fromkeys(entry for line in self._lines() if (entry := _read_line(line)) is not None))

    def unreadable(self) -> int:
        """Return how many lines are damaged, or 1 for a file that cannot be read at all. A cut last line is none."""
        try:
            lines = self._lines()
        except OSError:
            return 1
        whole = lines[
            :-1
        ]  # behind the last line break stands nothing, or what a crash cut before it was answered
        return sum(1 for line in whole if line.strip() and not _is_whole(line))

    def forget(self, household_id: str) -> None:
        """Leave out what was ended of a household that was erased, but for the erasing itself."""
        kept = [e for e in self.read() if e.household_id != household_id or e.what in _OF_HOUSEHOLDS]
        write_whole(self.path, "".join(entry.line() for entry in kept))

    def write_anew(self, entries: Iterable[Revocation]) -> None:
        """Set the damaged file aside and write one with these entries."""
        if self.path.exists():
            set_aside(
                self.path, "the list of revoked phones and passes; what can be read of it stays revoked"
            )
        write_whole(self.path, "".join(entry.line() for entry in dict.fromkeys(entries)))

    def _lines(self) -> list[bytes]:
        return self.path.read_bytes().split(b"\n") if self.path.exists() else []


def undoing(what: What) -> tuple[What, ...]:
    """Return this and its opposite, which undo each other; nothing for what stays ended once it is."""
    return next((pair for pair in _BACK.items() if what in pair), ())


def still_ended(what: What, endings: Iterable[Revocation]) -> list[Revocation]:
    """Return the endings of a kind after which nothing came back; ``note_ended`` sees to it that their times tell."""
    noted = list(endings)
    back_ms: dict[tuple[str, str], int] = {}
    for e in noted:
        if e.what == _BACK.get(what):
            back_ms[e.household_id, e.id] = max(e.at_ms, back_ms.get((e.household_id, e.id), e.at_ms))
    return [e for e in noted if e.what == what and e.at_ms >= back_ms.get((e.household_id, e.id), e.at_ms)]


def erased_among(endings: Iterable[Revocation]) -> frozenset[str]:
    """Return the households that were erased and not put back since."""
    return frozenset(e.household_id for e in still_ended("household", endings))


def _read_line(line: bytes) -> Revocation | None:
    """Return what a line says, or as much of it as says what was revoked."""
    try:
        entry = read_json(line)
        read = Revocation(entry["what"], entry["household_id"], entry["id"], entry["at_ms"])
    except (ValueError, KeyError, TypeError):
        left = _LEFT.search(line.decode("utf-8", "replace"))
        return None if left is None else Revocation(_KINDS[left[1]], left[2], left[3], UNKNOWN_MS)
    if read.what not in _KINDS or not is_uuid(read.household_id) or not _is_id(read.id):
        return None
    timed = type(read.at_ms) is int and 0 < read.at_ms <= LAST_MS
    return read if timed else read._replace(at_ms=UNKNOWN_MS)


def _is_whole(line: bytes) -> bool:
    """Say whether a line stands as it was written."""
    read = _read_line(line)
    return read is not None and read.line().encode() == line + b"\n"


def _is_id(value: object) -> bool:
    return isinstance(value, str) and re.fullmatch(_ENDED_ID, value) is not None
