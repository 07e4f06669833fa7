"""One household out of a backup of the whole server, into a new epoch; the others stay as they are."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, select, update

from ..errors import CannotKeep
from ..languages import told
from ..people.journal import Doer, note
from ..people.settling import Witness
from ..records.database import writing
from ..records.ended import erased_among
from ..records.epochs import start_epoch
from ..records.home.ending import note_ended
from ..records.home.tables import pictures
from ..records.photo_files import PhotoFiles
from ..records.store import read_kind
from ..records.tables import households
from ..records.whole import copy, erase
from .backup import PICTURES
from .scratch import opened_backup

LISTED: Final = 20
"""Households of a backup that are named where the wanted one is not in it."""


def put_household_back(
    source: Path, household_id: str, data: Path, witness: Witness, photos: PhotoFiles, now_ms: int
) -> int:
    """Put a household back as it was in a backup, the server running or not; return how many rows it has.

    What was ended since stays ended; phones send what the backup lacks. One that was erased comes back, too. Raises
    ``CannotKeep`` where the backup is damaged or does not have it; then nothing was changed.
    """
    with opened_backup(source, data) as (kept, folder):
        _require(kept, source, household_id)
        with writing() as connection:
            wanted = select(households.c.rev).where(households.c.id == household_id).with_for_update()
            rev = connection.scalar(wanted) or 0
            if household_id in erased_among(witness.endings.all_of(connection)):
                note_ended(connection, "household_back", household_id, [household_id], now_ms)
            erase(connection, household_id, itself=False)
            copied = copy(kept, connection, household_id)
            above = (households.c.id == household_id, households.c.rev < rev)
            connection.execute(update(households).where(*above).values(rev=rev))
            witness.end_again(connection)
            note(connection, Doer(household_id), "restore", now_ms)
            start_epoch(connection, witness.marks, household_id, now_ms)
        for sha256, drawn in _pictures_in(kept, folder / "data" / PICTURES / household_id, household_id):
            photos.put_drawn(household_id, sha256, drawn)
    return copied


def _require(kept: Connection, source: Path, household_id: str) -> None:
    ids = kept.scalars(select(households.c.id).order_by(households.c.created_ms)).all()
    if household_id in ids:
        return
    names = [
        f"{i} ({row.values.get('name')})" for i in ids[:LISTED] for row in read_kind(kept, i, "household")
    ]
    raise CannotKeep(
        told("household-not-in-backup", path=source, id=household_id, households=", ".join(names))
    )


def _pictures_in(kept: Connection, folder: Path, household_id: str) -> Iterator[tuple[str, bytes]]:
    """Yield the pictures of a backup, whether they lay in a folder or in the database."""
    for file in sorted(folder.glob("*.jpg")):
        yield file.stem, file.read_bytes()
    mine = select(pictures.c.sha256, pictures.c.drawn).where(pictures.c.household_id == household_id)
    for row in kept.execute(mine.execution_options(yield_per=20)):
        yield row.sha256, bytes(row.drawn)
