"""The files of earlier builds, kept a month: a page that is still open may ask for one of its own at any time.

A page loads its screens when they are first shown. After an update it must get those of its own build, or it
would mix two builds or break. Where several machines share a database, each also has the files of the others' versions,
so that a phone may be sent to any of them while one is replaced.
"""

from __future__ import annotations

import io
import re
import zipfile
from typing import Final

from ..model.gauges import DAY_MS
from ..records.home.folder import DAMAGE
from ..records.home.port import Builds
from .shell import File, Shell, make_file

KEPT_DAYS: Final = 30
QUICK: Final = 1
"""The level of compression: rarely read, and the start waits until all is written."""
_BUILD: Final = re.compile(r"[0-9a-f]{16}")


class PastBuilds:
    """One zip archive a build, in the server's home."""

    def __init__(self, builds: Builds) -> None:
        self._builds = builds

    def keep(self, shell: Shell, now_ms: int) -> None:
        """Keep the present build and forget those that were last started over a month ago."""
        self._builds.put(shell.build, lambda: _packed(shell), now_ms)
        self._builds.drop_before(now_ms - KEPT_DAYS * DAY_MS)

    def find(self, build: str, name: str) -> File | None:
        """Return a file of another build, or None."""
        packed = self._builds.read(build) if _BUILD.fullmatch(build) is not None else None
        if packed is None:
            return None
        try:
            with zipfile.ZipFile(io.BytesIO(packed)) as archive:
                return make_file(name, archive.read(name))
        except (OSError, KeyError, *DAMAGE):
            return None


def _packed(shell: Shell) -> bytes:
    """Pack what a page or a worker of this build may ask for, without dates: a build has one archive."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        for name, file in sorted({**shell.parcels, **shell.files}.items()):
            archive.writestr(zipfile.ZipInfo(name), file.body, zipfile.ZIP_DEFLATED, QUICK)
    return packed.getvalue()
