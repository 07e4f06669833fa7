"""The files of earlier builds, kept a month: a page that is still open may ask for one of its own at any time.

A page loads its screens when they are first shown. After an update it must get those of its own build, or it
would mix two builds or break.
"""

from __future__ import annotations

import io
import os
import re
import tempfile
import zipfile
import zlib
from datetime import timedelta
from pathlib import Path
from typing import Final

from ..records.data_folder import make_folder, set_aside
from .shell import File, Shell, make_file

KEPT_DAYS: Final = 30
QUICK: Final = 1
"""The level of compression: rarely read, and the start waits until all is written."""
_BUILD: Final = re.compile(r"[0-9a-f]{16}")


class PastBuilds:
    """One zip archive a build in ``folder``; the time of an archive is when its build was last started."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def keep(self, shell: Shell, now_ms: int) -> None:
        """Keep the present build and forget those that were last started over a month ago."""
        make_folder(self._folder)
        kept = self._archive(shell.build)
        if kept.exists() and not _is_sound(kept):
            set_aside(kept, "the files of this build; they are written anew")
        if not kept.exists():
            _write_whole(kept, shell)
        os.utime(kept, (now_ms / 1000, now_ms / 1000))
        oldest_s = now_ms / 1000 - timedelta(days=KEPT_DAYS).total_seconds()
        for archive in self._folder.glob("*.zip"):
            if archive.is_file() and archive.stat().st_mtime < oldest_s:
                archive.unlink(missing_ok=True)

    def find(self, build: str, name: str) -> File | None:
        """Return a file of an earlier build, or None."""
        if _BUILD.fullmatch(build) is None:
            return None
        try:
            with zipfile.ZipFile(self._archive(build)) as archive:
                return make_file(name, archive.read(name))
        except (OSError, KeyError, *_DAMAGE):
            return None

    def _archive(self, build: str) -> Path:
        return self._folder / f"{build}.zip"


_DAMAGE: Final = (zipfile.BadZipFile, zlib.error, EOFError, ValueError, RuntimeError)
"""What zipfile raises over an archive that is not as it was written."""


def _is_sound(path: Path) -> bool:
    try:
        with zipfile.ZipFile(path) as archive:
            return archive.testzip() is None
    except (OSError, *_DAMAGE):
        return False


def _write_whole(path: Path, shell: Shell) -> None:
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED, compresslevel=QUICK) as archive:
        for name, file in shell.files.items():
            archive.writestr(name, file.body)
    with tempfile.NamedTemporaryFile(dir=path.parent, delete=False) as scratch:
        scratch.write(packed.getvalue())
    Path(scratch.name).replace(path)
