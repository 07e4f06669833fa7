"""Draws pictures anew, in a process of its own: ``python -I draw_anew.py``. Started and spoken to by ``drawing``.

Whatever a picture does to its reader, it does here: with little memory, a few seconds of processor time for each
picture, no files and no settings. It imports nothing of the server.

In: 4 bytes of length (big-endian) and a JPEG. Out: ``+`` and the new JPEG, or ``-`` and why not, with the length
between them. It ends when its input does, and by itself when nothing came for a minute.
"""

from __future__ import annotations

import contextlib
import io
import os
import resource
import select
import signal
import sys
import warnings
from typing import Final

from PIL import Image, ImageOps

LONGEST_SIDE_PX: Final = 1_600
MOST_PIXELS: Final = 8_000_000
"""More would be a small file that unpacks to a huge picture."""
MOST_SCANS: Final = 32
"""Of a progressive JPEG: each passes over all pixels again, for some bytes. Encoders write about ten."""
MOST_CPU_S: Final = 5.0
"""For one picture; 8 million pixels in ten scans take 0.2 s."""
MOST_MEMORY_BYTES: Final = 512 * 1024 * 1024
"""Of addresses; 8 million pixels need 128 MiB of it."""
IDLE_S: Final = 60.0
GENTLER: Final = 10
SCAN: Final = b"\xff\xda"
"""The marker that begins a scan (ITU-T T.81, B.1.1.3); inside a scan's data the pair does not occur."""


class NoPicture(Exception):  # noqa: N818
    """Why a picture cannot be taken."""


def draw_anew(body: bytes) -> bytes:
    """Return the picture as a JPEG of its own: upright, at most 1,600 px, without any metadata.

    Raises ``NoPicture`` if ``body`` is not a JPEG of at most 8 million pixels and 32 scans.
    """
    if body.count(SCAN) > MOST_SCANS:
        raise NoPicture("problem-picture-scans")
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            return _drawn(body)
    except NoPicture:
        raise
    except Exception as error:  # a decoder that is fed nonsense fails in every way there is
        raise NoPicture("problem-picture-unreadable") from error


def _drawn(body: bytes) -> bytes:
    with Image.open(io.BytesIO(body), formats=("JPEG",)) as picture:
        if picture.width * picture.height > MOST_PIXELS:
            raise NoPicture("problem-picture-pixels")
        upright = ImageOps.exif_transpose(picture).convert("RGB")
    upright.thumbnail((LONGEST_SIDE_PX, LONGEST_SIDE_PX))
    upright.info.clear()
    drawn = io.BytesIO()
    upright.save(drawn, "JPEG", quality=82, optimize=True)
    return drawn.getvalue()


def serve() -> None:
    """Answer until nobody asks any more."""
    _live_modestly()
    given, taken = sys.stdin.buffer, sys.stdout.buffer
    while select.select([given], [], [], IDLE_S)[0]:
        head = given.read(4)
        if len(head) < 4:
            return
        body = given.read(int.from_bytes(head, "big"))
        signal.setitimer(
            signal.ITIMER_PROF, MOST_CPU_S
        )  # ends the process: a decoder in C hears nothing else
        try:
            word, answer = b"+", draw_anew(body)
        except NoPicture as error:
            word, answer = b"-", str(error).encode()
        signal.setitimer(signal.ITIMER_PROF, 0)
        taken.write(word + len(answer).to_bytes(4, "big") + answer)
        taken.flush()


def _live_modestly() -> None:
    """Bound memory, files and cores, and let everybody else go first. What a system does not know is left out."""
    for limit, most in (
        (resource.RLIMIT_AS, MOST_MEMORY_BYTES),
        (resource.RLIMIT_CORE, 0),
        (resource.RLIMIT_FSIZE, 0),
    ):
        with contextlib.suppress(ValueError, OSError):
            resource.setrlimit(limit, (most, most))
    with contextlib.suppress(OSError):
        os.nice(GENTLER)


if __name__ == "__main__":
    serve()
