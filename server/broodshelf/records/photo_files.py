"""The pictures themselves: files outside the database, named by the hash of what the phone made.

The phone scales a picture and takes the place out of it; here it is drawn anew all the same, so that nothing
but pixels is kept, whatever a client sends.
"""

from __future__ import annotations

import hashlib
import io
import tempfile
import warnings
from pathlib import Path
from typing import Final

from PIL import Image, ImageOps, UnidentifiedImageError
from sqlalchemy import Connection

from ..errors import BadRequest, StoreFull, TooLarge
from .store import read_kind
from .types import is_sha256

MOST_BYTES: Final = 300_000
LONGEST_SIDE_PX: Final = 1_600
MOST_PIXELS: Final = 8_000_000
"""More would be a small file that unpacks to a huge picture."""
HOUSEHOLD_BYTES: Final = 1_000_000_000
KEPT_DAYS: Final = 400
"""A file that no record names is kept as long as a gone row: a restored server may get the record back."""


class PhotoFiles:
    """The pictures of all households under ``folder``."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def path(self, household_id: str, sha256: str) -> Path | None:
        """Return the file, or None if it has not been sent yet."""
        if not is_sha256(sha256):
            return None
        found = self._folder / household_id / f"{sha256}.jpg"
        return found if found.is_file() else None

    def keep(self, household_id: str, sha256: str, body: bytes) -> None:
        """Store a picture whose hash is ``sha256``; a second time changes nothing.

        Raises ``BadRequest`` for another hash or no JPEG, ``TooLarge``, or ``StoreFull``.
        """
        if len(body) > MOST_BYTES:
            raise TooLarge(f"A picture may have at most {MOST_BYTES} bytes.")
        if hashlib.sha256(body).hexdigest() != sha256:
            raise BadRequest("The picture arrived damaged; send it again.", code="damaged_photo")
        if self.path(household_id, sha256) is not None:
            return
        drawn = draw_anew(body)
        folder = self._folder / household_id
        folder.mkdir(parents=True, exist_ok=True)
        if sum(file.stat().st_size for file in folder.iterdir()) + len(drawn) > HOUSEHOLD_BYTES:
            raise StoreFull(
                "This household's pictures fill their store; delete some, or ask who runs the server."
            )
        with tempfile.NamedTemporaryFile(dir=folder, delete=False) as scratch:
            scratch.write(drawn)
        Path(scratch.name).replace(folder / f"{sha256}.jpg")

    def sweep(self, connection: Connection, now_ms: int) -> int:
        """Delete files of 400 days ago and more that no record names any longer; return how many."""
        oldest_s = now_ms / 1000 - KEPT_DAYS * 86_400
        swept = 0
        for folder in self._folder.iterdir() if self._folder.is_dir() else ():
            rows = read_kind(connection, folder.name, "photo", gone=True)
            named = {row.values.get("sha256") for row in rows}
            for file in folder.iterdir():
                if file.stem not in named and file.stat().st_mtime < oldest_s:
                    file.unlink(missing_ok=True)
                    swept += 1
        return swept


def draw_anew(body: bytes) -> bytes:
    """Return the picture as a JPEG of its own: upright, at most 1,600 px, without any metadata.

    Raises ``BadRequest`` if ``body`` is not a JPEG of at most 8 million pixels.
    """
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            with Image.open(io.BytesIO(body), formats=("JPEG",)) as picture:
                if picture.width * picture.height > MOST_PIXELS:
                    raise BadRequest("This picture has too many pixels.", code="not_a_photo")
                upright = ImageOps.exif_transpose(picture).convert("RGB")
    except (
        UnidentifiedImageError,
        OSError,
        SyntaxError,
        ValueError,
        Image.DecompressionBombWarning,
    ) as error:
        raise BadRequest("This is not a JPEG picture that can be read.", code="not_a_photo") from error
    upright.thumbnail((LONGEST_SIDE_PX, LONGEST_SIDE_PX))
    upright.info.clear()
    drawn = io.BytesIO()
    upright.save(drawn, "JPEG", quality=82, optimize=True)
    return drawn.getvalue()
