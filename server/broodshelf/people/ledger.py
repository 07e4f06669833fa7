"""What was revoked stays revoked, also when an older database is restored.

Each revocation is one line in a file beside the database, written before the database says so; at start every
line is applied again.
"""

from __future__ import annotations

import json
import os
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from sqlalchemy import Connection, update

from ..records.store import Ledger as Numbering
from ..records.store import read_record
from .passes import end_pass
from .tables import devices

What = Literal["device", "pass"]


@dataclass(frozen=True, slots=True)
class Revocations:
    """The file of revocations."""

    path: Path

    def add(self, what: What, household_id: str, revoked_id: str, at_ms: int) -> None:
        """Append a revocation and bring it to the disk."""
        line = json.dumps({"what": what, "household_id": household_id, "id": revoked_id, "at_ms": at_ms})
        self.path.parent.mkdir(parents=True, exist_ok=True)
        handle = os.open(self.path, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(line + "\n")
            file.flush()
            os.fsync(file.fileno())

    def read(self) -> list[tuple[What, str, str, int]]:
        """Return all revocations; a last line that was cut by a crash is passed over."""
        if not self.path.exists():
            return []
        found: list[tuple[What, str, str, int]] = []
        for line in self.path.read_text("utf-8").splitlines():
            try:
                entry = json.loads(line)
                found.append((entry["what"], entry["household_id"], entry["id"], int(entry["at_ms"])))
            except (ValueError, KeyError, TypeError):
                continue
        return found


def apply_revocations(connection: Connection, revocations: Revocations) -> int:
    """Make the database agree with the file; return how many entries it had forgotten."""
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
