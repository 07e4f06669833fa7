"""The pictures themselves: files outside the database, named by the hash of what the phone made.

The phone scales a picture and takes the place out of it; here it is drawn anew all the same, so that nothing
but pixels is kept, whatever a client sends.
"""

from __future__ import annotations

import hashlib
import os
import tempfile
from pathlib import Path
from typing import Final

from sqlalchemy import Connection

from ..errors import BadRequest, StoreFull, TooLarge
from ..languages import told
from .drawing import Drawing
from .store import read_kind
from .types import is_sha256, is_uuid

MOST_BYTES: Final = 300_000
HOUSEHOLD_BYTES: Final = 1_000_000_000
KEPT_DAYS: Final = 400
"""A file that no record names is kept as long as a gone row: a restored server may get the record back."""


class PhotoFiles:
    """The pictures of all households under ``folder``."""

    def __init__(self, folder: Path) -> None:
        self._folder, self._drawing = folder, Drawing()

    def path(self, household_id: str, sha256: str) -> Path | None:
        """Return the file, or None if it has not been sent yet."""
        if not is_sha256(sha256):
            return None
        found = self._folder / household_id / f"{sha256}.jpg"
        return found if found.is_file() else None

    def keep(self, household_id: str, sha256: str, body: bytes) -> None:
        """Store a picture whose hash is ``sha256``; a second time changes nothing.

        Raises ``BadRequest`` for another hash or no JPEG, ``TooLarge``, ``StoreFull``, or ``Unavailable`` while
        too many pictures wait to be drawn.
        """
        if len(body) > MOST_BYTES:
            raise TooLarge(told("problem-picture-large", most=MOST_BYTES))
        if hashlib.sha256(body).hexdigest() != sha256:
            raise BadRequest(told("problem-picture-damaged"), code="damaged_photo")
        if self.path(household_id, sha256) is not None:
            return
        drawn = self._drawing.draw(household_id, body)
        folder = self._folder / household_id
        folder.mkdir(parents=True, exist_ok=True)
        if self.size_bytes(household_id) + len(drawn) > HOUSEHOLD_BYTES:
            raise StoreFull(told("problem-pictures-full"))
        _write(folder / f"{sha256}.jpg", drawn)

    def size_bytes(self, household_id: str) -> int:
        """Return how many bytes a household's pictures take."""
        folder = self._folder / household_id
        return sum(file.stat().st_size for file in folder.iterdir()) if folder.is_dir() else 0

    def sweep(self, connection: Connection, now_ms: int) -> int:
        """Delete files of 400 days ago and more that no record names any longer; return how many."""
        oldest_s = now_ms / 1000 - KEPT_DAYS * 86_400
        swept = 0
        for folder in self._folder.iterdir() if self._folder.is_dir() else ():
            if not is_uuid(folder.name) or not folder.is_dir():
                continue  # none of ours: whoever put it there may take it away
            rows = read_kind(connection, folder.name, "photo", gone=True)
            named = {row.values.get("sha256") for row in rows}
            for file in folder.iterdir():
                if is_sha256(file.stem) and file.stem not in named and file.stat().st_mtime < oldest_s:
                    file.unlink(missing_ok=True)
                    swept += 1
        return swept


def _write(target: Path, body: bytes) -> None:
    """Write a file whole or not at all; what a full disk left of it goes."""
    with tempfile.NamedTemporaryFile(dir=target.parent, delete=False) as scratch:
        try:
            scratch.write(body)
            scratch.flush()
            os.fsync(scratch.fileno())
            Path(scratch.name).replace(target)
        except OSError:
            Path(scratch.name).unlink(missing_ok=True)
            raise
