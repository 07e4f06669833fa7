"""The pictures themselves, named by the hash of what the phone made; where they lie is the home's matter.

The phone scales a picture and takes the place out of it; here it is drawn anew all the same, so that nothing
but pixels is kept, whatever a client sends.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from typing import Final

from sqlalchemy import Connection

from ..errors import BadRequest, StoreFull, TooLarge
from ..languages import told
from ..model.gauges import DAY_MS
from .drawing import Drawing
from .home.port import Pictures
from .store import read_kind
from .types import LAST_MS, is_sha256

MOST_BYTES: Final = 300_000
HOUSEHOLD_BYTES: Final = 1_000_000_000
KEPT_DAYS: Final = 400
"""A picture that no record names is kept as long as a gone row: a restored server may get the record back."""


class PhotoFiles:
    """The pictures of all households, wherever they lie."""

    def __init__(self, pictures: Pictures) -> None:
        self._pictures, self._drawing = pictures, Drawing()

    def has(self, household_id: str, sha256: str) -> bool:
        """Say whether a picture has been sent."""
        return self._pictures.has(household_id, sha256)

    def read(self, household_id: str, sha256: str) -> bytes | None:
        """Return the picture, or None if it has not been sent yet."""
        return self._pictures.read(household_id, sha256)

    def keep(
        self, household_id: str, sha256: str, body: bytes, before: Callable[[], None] = lambda: None
    ) -> None:
        """Store a picture whose hash is ``sha256``; a second time changes nothing.

        ``before``: what is done before it is drawn, when it is sure that it is drawn now; what it raises is the end.

        Raises ``BadRequest`` for another hash or no JPEG, ``TooLarge``, ``StoreFull``, or ``Unavailable`` while
        too many pictures wait to be drawn.
        """
        if len(body) > MOST_BYTES:
            raise TooLarge(told("problem-picture-large", most=MOST_BYTES))
        if hashlib.sha256(body).hexdigest() != sha256:
            raise BadRequest(told("problem-picture-damaged"), code="damaged_photo")
        if self.has(household_id, sha256):
            return
        drawn = self._drawing.draw(household_id, body, before)
        if not self._pictures.put(household_id, sha256, drawn, HOUSEHOLD_BYTES):
            raise StoreFull(told("problem-pictures-full"))

    def names(self, household_id: str) -> list[str]:
        """Return the hashes by which a household's pictures are stored, in order."""
        return sorted(dict(self._pictures.older_than(LAST_MS)).get(household_id, ()))

    def put_back(self, household_id: str, sha256: str, body: bytes) -> bool:
        """Store a picture that was given out once; it is drawn anew as any other. Say whether it was missing.

        Raises what ``keep`` does, but for the hash: it is of what the phone once sent.
        """
        if not is_sha256(sha256) or self.has(household_id, sha256):
            return False
        if len(body) > MOST_BYTES:
            raise TooLarge(told("problem-picture-large", most=MOST_BYTES))
        drawn = self._drawing.draw(household_id, body)
        if not self._pictures.put(household_id, sha256, drawn, HOUSEHOLD_BYTES):
            raise StoreFull(told("problem-pictures-full"))
        return True

    def put_drawn(self, household_id: str, sha256: str, drawn: bytes) -> None:
        """Store a picture as it was drawn here once, out of a backup; one that is there stays."""
        if is_sha256(sha256) and not self.has(household_id, sha256):
            self._pictures.put(household_id, sha256, drawn, HOUSEHOLD_BYTES)

    def forget(self, household_id: str) -> None:
        """Delete all pictures of a household that was erased."""
        if self.size_bytes(household_id):
            self._pictures.drop(household_id, self.names(household_id))

    def size_bytes(self, household_id: str) -> int:
        """Return how many bytes a household's pictures take."""
        return self._pictures.size_bytes(household_id)

    def sweep(self, connection: Connection, now_ms: int) -> int:
        """Delete pictures of 400 days ago and more that no record names any longer; return how many.

        What was half written goes as well.
        """
        self._pictures.tidy(now_ms)
        swept = 0
        for household_id, old in self._pictures.older_than(now_ms - KEPT_DAYS * DAY_MS):
            rows = read_kind(connection, household_id, "photo", gone=True)
            named = {row.values.get("sha256") for row in rows}
            unnamed = [sha256 for sha256 in old if sha256 not in named]
            self._pictures.drop(household_id, unnamed)
            swept += len(unnamed)
        return swept
