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
from datetime import timedelta
from pathlib import Path
from typing import Final

from .shell import File, Shell, make_file

KEPT_DAYS: Final = 30
_BUILD: Final = re.compile(r"[0-9a-f]{16}")


class PastBuilds:
    """One zip archive a build in ``folder``; the time of an archive is when its build was last started."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def keep(self, shell: Shell, now_ms: int) -> None:
        """Keep the present build and forget those that were last started over a month ago."""
        self._folder.mkdir(parents=True, exist_ok=True)
        kept = self._archive(shell.build)
        if not kept.exists():
            _write_whole(kept, shell)
        os.utime(kept, (now_ms / 1000, now_ms / 1000))
        oldest_s = now_ms / 1000 - timedelta(days=KEPT_DAYS).total_seconds()
        for archive in self._folder.glob("*.zip"):
            if archive.stat().st_mtime < oldest_s:
                archive.unlink(missing_ok=True)

    def find(self, build: str, name: str) -> File | None:
        """Return a file of an earlier build, or None."""
        if _BUILD.fullmatch(build) is None:
            return None
        try:
            with zipfile.ZipFile(self._archive(build)) as archive:
                return make_file(name, archive.read(name))
        except (FileNotFoundError, KeyError, zipfile.BadZipFile):
            return None

    def _archive(self, build: str) -> Path:
        return self._folder / f"{build}.zip"


def _write_whole(path: Path, shell: Shell) -> None:
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, file in shell.files.items():
            archive.writestr(name, file.body)
    with tempfile.NamedTemporaryFile(dir=path.parent, delete=False) as scratch:
        scratch.write(packed.getvalue())
    Path(scratch.name).replace(path)
