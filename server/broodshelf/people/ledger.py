"""What was revoked stays revoked, also when an older database is restored.

Each revocation is one line in a file beside the database, written before the database says so; at start every
line is applied again. Of a damaged file all that can be read counts, and all that the database knows is added.
"""

from __future__ import annotations

import json
import os
import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Final, Literal, NamedTuple

from sqlalchemy import Connection, select, update

from ..records.data_folder import set_aside
from ..records.epochs import write_whole
from ..records.json_text import read_json
from ..records.store import Ledger as Numbering
from ..records.store import read_kind, read_record
from ..records.tables import households
from ..records.types import LAST_MS, is_uuid
from .passes import end_pass
from .tables import devices

What = Literal["device", "pass"]
_ID: Final = r"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"
_LEFT: Final = re.compile(rf'"what": "(device|pass)", "household_id": "({_ID})", "id": "({_ID})"')
"""What is enough of a line that was cut or written over to know what was revoked."""
UNKNOWN_MS: Final = 1
"""When it was revoked, where the line no longer says so: long ago."""


class Revocation(NamedTuple):
    """One line: a phone or a pass of a household, and when it was revoked in ms since 1970 UTC."""

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

    def add(self, what: What, household_id: str, revoked_id: str, at_ms: int) -> None:
        """Append a revocation and bring it to the disk; never to the end of a line that a crash cut."""
        self.path.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(self.path, os.O_RDWR | os.O_CREAT | os.O_APPEND, 0o600)
        with os.fdopen(handle, "r+b", buffering=0) as file:
            end = file.seek(0, os.SEEK_END)
            cut = end > 0 and os.pread(file.fileno(), 1, end - 1) != b"\n"
            line = Revocation(what, household_id, revoked_id, at_ms).line()
            file.write(("\n" if cut else "").encode() + line.encode())
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

    def write_anew(self, entries: Iterable[Revocation]) -> None:
        """Set the damaged file aside and write one with these entries."""
        if self.path.exists():
            set_aside(
                self.path, "the list of revoked phones and passes; what can be read of it stays revoked"
            )
        write_whole(self.path, "".join(entry.line() for entry in dict.fromkeys(entries)))

    def _lines(self) -> list[bytes]:
        return self.path.read_bytes().split(b"\n") if self.path.exists() else []


def _read_line(line: bytes) -> Revocation | None:
    """Return what a line says, or as much of it as says what was revoked."""
    try:
        entry = read_json(line)
        read = Revocation(entry["what"], entry["household_id"], entry["id"], entry["at_ms"])
    except (ValueError, KeyError, TypeError):
        left = _LEFT.search(line.decode("utf-8", "replace"))
        return None if left is None else Revocation(_what(left[1]), left[2], left[3], UNKNOWN_MS)
    if read.what not in ("device", "pass") or not is_uuid(read.household_id) or not is_uuid(read.id):
        return None
    timed = type(read.at_ms) is int and 0 < read.at_ms <= LAST_MS
    return read if timed else read._replace(at_ms=UNKNOWN_MS)


def _is_whole(line: bytes) -> bool:
    """Say whether a line stands as it was written."""
    read = _read_line(line)
    return read is not None and read.line().encode() == line + b"\n"


def _what(text: str) -> What:
    return "device" if text == "device" else "pass"


def mend_revocations(connection: Connection, revocations: Revocations) -> int:
    """Where the file is damaged, write it anew from what can be read and what the database knows; return the damage.

    Nothing that was revoked comes back by it, except in a database that was restored from before a line that is lost.
    """
    damaged = revocations.unreadable()
    if damaged:
        try:
            read = revocations.read()
        except OSError:
            read = []
        revocations.write_anew([*read, *_revoked_in(connection)])
    return damaged


def _revoked_in(connection: Connection) -> list[Revocation]:
    rows = connection.execute(
        select(devices.c.household_id, devices.c.id, devices.c.revoked_ms).where(
            devices.c.revoked_ms.is_not(None)
        )
    )
    found = [Revocation("device", row.household_id, row.id, row.revoked_ms) for row in rows]
    for household_id in connection.scalars(select(households.c.id)).all():
        passes = read_kind(connection, household_id, "pass", gone=True)
        found += [
            Revocation("pass", household_id, each.id, at_ms)
            for each in passes
            if (at_ms := each.values.get("revoked_at_ms"))
        ]
    return found


def apply_revocations(connection: Connection, revocations: Revocations) -> int:
    """Make the database agree with the file; return how many entries it had forgotten."""
    mend_revocations(connection, revocations)
    forgotten = 0
    for what, household_id, revoked_id, at_ms in revocations.read():
        if what == "device":
            done = connection.execute(
                update(devices)
                .where(
                    devices.c.household_id == household_id,
                    devices.c.id == revoked_id,
                    devices.c.revoked_ms.is_(None),
                )
                .values(revoked_ms=at_ms)
            )
            forgotten += done.rowcount
            continue
        record = read_record(connection, household_id, revoked_id)
        if record is not None and not record.values.get("revoked_at_ms"):
            numbering = Numbering(connection, household_id)
            end_pass(numbering, revoked_id, at_ms)
            numbering.flush()
            forgotten += 1
    return forgotten
