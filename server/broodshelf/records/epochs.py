"""Epochs: how a phone learns that the server was put back to an earlier state.

The highest revision of each household is also noted in a small file beside the database. A database that knows
less than its note was restored, by our own command or by copying a file: it gets a new epoch, and its revisions
go on above the note, so that no cursor of an earlier epoch can ever be mistaken for a present one.
"""

from __future__ import annotations

import json
import os
import tempfile
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, select, update

from .data_folder import make_folder, set_aside
from .ids import uuid7
from .tables import households
from .types import is_uuid

GAP = 1_000
"""How far above the noted revision a restored household goes on: room for writes that were never noted."""


@dataclass(frozen=True, slots=True)
class Marks:
    """The notes, one file a household, in a folder outside the database.

    ``on_the_disk``: a note waits for the disk, as a commit does. Beside a database that itself tells when it was put
    back, a log is answered without that wait: after a power cut some of the last notes may be unreadable, and the
    phones of those households get everything anew.
    """

    folder: Path
    on_the_disk: bool = True

    def note(self, household_id: str, rev: int, epoch: str) -> None:
        """Note a household's revision if it is higher than the note of the same epoch. Atomic."""
        known = self.read(household_id)
        if known is not None and known[1] == epoch and known[0] >= rev:
            return
        make_folder(self.folder)
        text = json.dumps({"rev": rev, "epoch": epoch})
        write_whole(self.folder / f"{household_id}.json", text, on_the_disk=self.on_the_disk)

    def read(self, household_id: str) -> tuple[int, str] | None:
        """Return ``(rev, epoch)`` as noted, or None. A note that cannot be read counts as none."""
        try:
            noted = json.loads((self.folder / f"{household_id}.json").read_text("utf-8"))
            return int(noted["rev"]), str(noted["epoch"])
        except (OSError, ValueError, KeyError, TypeError, RecursionError, OverflowError):
            return None

    def households(self) -> int:
        """Return of how many households there are notes."""
        return sum(1 for path in self.folder.glob("*.json") if is_uuid(path.stem))

    def put_away(self, now_ms: int) -> None:
        """Take the notes away, kept under another name: the shelves that they know of do not come back."""
        if self.folder.exists():
            self.folder.rename(self.folder.with_name(f"{self.folder.name}.before-{now_ms}"))

    def forget(self, household_id: str) -> None:
        """Take away the note of a household that was erased."""
        (self.folder / f"{household_id}.json").unlink(missing_ok=True)

    def clear(self, household_id: str) -> bool:
        """Set a note aside that is there and cannot be read; say whether there was one."""
        path = self.folder / f"{household_id}.json"
        if self.read(household_id) is not None or not path.exists():
            return False
        set_aside(
            path, "the note of how far a household was; its phones get everything anew, which loses nothing"
        )
        return True


def notice_restores(connection: Connection, marks: Marks, now_ms: int) -> list[str]:
    """Give a new epoch to every household that stands behind its note, or whose note is lost; return their ids.

    Without its note nobody can say whether the database was put back. A new epoch is right either way: phones offer
    what the server lacks and get the rest again.
    """
    restored = []
    for household_id, rev in connection.execute(select(households.c.id, households.c.rev)).all():
        lost = marks.clear(household_id)
        noted = marks.read(household_id)
        if lost or (noted is not None and noted[0] > rev):
            start_epoch(connection, marks, household_id, now_ms)
            restored.append(household_id)
    return restored


def start_epoch(connection: Connection, marks: Marks, household_id: str, now_ms: int) -> str:
    """Begin a new epoch above everything that was ever noted or stands in the database; return its id."""
    rev = connection.execute(select(households.c.rev).where(households.c.id == household_id)).scalar_one()
    noted = marks.read(household_id)
    epoch = uuid7(now_ms)
    rev = max(rev, noted[0] if noted else 0) + GAP
    connection.execute(update(households).where(households.c.id == household_id).values(rev=rev, epoch=epoch))
    marks.note(household_id, rev, epoch)
    return epoch


def write_whole(path: Path, text: str, mode: int = 0o600, *, on_the_disk: bool = True) -> None:
    """Write a small file so that it is either the old one or the new one, never half of it.

    Without ``on_the_disk`` that holds for a process that is killed, not for a power cut.
    """
    handle, temporary = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
            file.flush()
            if on_the_disk:
                os.fsync(file.fileno())
        Path(temporary).chmod(mode)
        Path(temporary).replace(path)
    except BaseException:
        Path(temporary).unlink(missing_ok=True)
        raise
