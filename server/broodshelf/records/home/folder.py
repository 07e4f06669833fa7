"""The home of a server with SQLite: its data folder."""

from __future__ import annotations

import json
import os
import tempfile
import zipfile
import zlib
from collections.abc import Callable, Collection, Iterable, Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection

from ...model.gauges import DAY_MS
from ..data_folder import make_folder, set_aside
from ..ended import Revocation, Revocations
from ..epochs import write_whole
from ..types import is_sha256, is_uuid
from .port import Home
from .taken_files import TakenFiles

ENDINGS: Final = "revoked.jsonl"
KEPT_FILE: Final = "kept.json"
PICTURES: Final = "photos"
BUILDS: Final = "builds"
HALF_WRITTEN: Final = "tmp"
"""How the names of files begin that are being written."""
HALF_WRITTEN_MS: Final = DAY_MS
"""After so long whoever wrote one is gone."""


def in_folder(data: Path, revocations: Revocations | None = None) -> Home:
    """Return the home in a data folder; ``revocations``: its file, where somebody else has it in hand, too."""
    return Home(
        FolderPictures(data / PICTURES),
        FolderEndings(revocations or Revocations(data / ENDINGS)),
        FolderBuilds(data / BUILDS),
        TakenFiles(data),
        NoteFile(data / KEPT_FILE),
    )


@dataclass(frozen=True, slots=True)
class FolderPictures:
    """A folder for each household, in it a file for each picture."""

    folder: Path

    def read(self, household_id: str, sha256: str) -> bytes | None:
        """Return a picture, None where there is none."""
        try:
            return self._path(household_id, sha256).read_bytes() if is_sha256(sha256) else None
        except FileNotFoundError:
            return None

    def has(self, household_id: str, sha256: str) -> bool:
        """Say whether a picture is there."""
        return is_sha256(sha256) and self._path(household_id, sha256).is_file()

    def put(self, household_id: str, sha256: str, drawn: bytes, most_bytes: int) -> bool:
        """Keep a picture whole; False if the household's would be more than ``most_bytes``."""
        (self.folder / household_id).mkdir(parents=True, exist_ok=True)
        if self.size_bytes(household_id) + len(drawn) > most_bytes:
            return False
        _write(self._path(household_id, sha256), drawn)
        return True

    def size_bytes(self, household_id: str) -> int:
        """Return how many bytes a household's pictures take."""
        return sum(stat.st_size for _sha256, stat in _pictures_in(self.folder / household_id))

    def older_than(self, before_ms: int) -> Iterator[tuple[str, list[str]]]:
        """Yield, for each household that has any, the pictures whose files are older. What is none of ours stays."""
        for folder in self._folders():
            found = [sha256 for sha256, stat in _pictures_in(folder) if stat.st_mtime * 1000 < before_ms]
            if found:
                yield folder.name, found

    def drop(self, household_id: str, sha256: Collection[str]) -> None:
        """Forget pictures."""
        for each in sha256:
            self._path(household_id, each).unlink(missing_ok=True)

    def tidy(self, now_ms: int) -> None:
        """Take away what was half written a day ago, by a process that was killed."""
        for folder in self._folders():
            _drop_half_written(folder, now_ms - HALF_WRITTEN_MS)

    def _folders(self) -> Iterator[Path]:
        for folder in self.folder.iterdir() if self.folder.is_dir() else ():
            if is_uuid(folder.name) and folder.is_dir():
                yield folder

    def _path(self, household_id: str, sha256: str) -> Path:
        return self.folder / household_id / f"{sha256}.jpg"


@dataclass(frozen=True, slots=True)
class FolderEndings:
    """The file of what was ended is all there is."""

    file: Revocations

    def agree(self, connection: Connection) -> None:
        """There is no other copy."""

    def note(self, connection: Connection, entries: Iterable[Revocation]) -> None:
        """Append what is being ended and bring it to the disk."""
        self.file.add_all(entries)

    def all_of(self, connection: Connection) -> list[Revocation]:
        """Return all that can be read."""
        return self.file.read()

    def of_one(self, connection: Connection, household_id: str, ended_id: str) -> list[Revocation]:
        """Return what was noted of one thing."""
        return [e for e in self.file.read() if e.household_id == household_id and e.id == ended_id]

    def forget(self, connection: Connection, household_id: str) -> None:
        """Leave out what was ended of a household that was erased, but for the erasing itself."""
        self.file.forget(household_id)


@dataclass(frozen=True, slots=True)
class FolderBuilds:
    """One zip archive a build; the time of an archive is when its build was last started."""

    folder: Path

    def put(self, build: str, pack: Callable[[], bytes], now_ms: int) -> None:
        """Keep a build; an archive of it that is damaged is set aside."""
        make_folder(self.folder)
        kept = self._archive(build)
        if kept.exists() and not _is_sound(kept):
            set_aside(kept, "the files of this build; they are written anew")
        if not kept.exists():
            _write(kept, pack())
        os.utime(kept, (now_ms / 1000, now_ms / 1000))

    def read(self, build: str) -> bytes | None:
        """Return a build, packed; None where there is none."""
        try:
            return self._archive(build).read_bytes()
        except OSError:
            return None

    def drop_before(self, before_ms: int) -> None:
        """Forget builds that were last started before an instant."""
        for archive in self.folder.glob("*.zip"):
            if archive.is_file() and archive.stat().st_mtime * 1000 < before_ms:
                archive.unlink(missing_ok=True)

    def _archive(self, build: str) -> Path:
        return self.folder / f"{build}.zip"


@dataclass(frozen=True, slots=True)
class NoteFile:
    """A small file of JSON."""

    path: Path

    def read(self, connection: Connection | None = None) -> dict[str, Any]:
        """Return what is remembered; nothing where the file cannot be read."""
        try:
            read = json.loads(self.path.read_text("utf-8"))
        except (OSError, ValueError):
            return {}
        return read if isinstance(read, dict) else {}

    def note(self, **values: Any) -> None:
        """Remember these besides what is remembered. Atomic."""
        write_whole(self.path, json.dumps({**self.read(), **values}))


DAMAGE: Final = (zipfile.BadZipFile, zlib.error, EOFError, ValueError, RuntimeError)
"""What zipfile raises over an archive that is not as it was written."""


def _is_sound(path: Path) -> bool:
    try:
        with zipfile.ZipFile(path) as archive:
            return archive.testzip() is None
    except (OSError, *DAMAGE):
        return False


def _pictures_in(folder: Path) -> Iterator[tuple[str, os.stat_result]]:
    """Yield the hashes and stats of a household's pictures, without what others write or take away meanwhile."""
    for file in folder.iterdir() if folder.is_dir() else ():
        if is_sha256(file.stem):
            try:
                stat = file.stat()
            except FileNotFoundError:
                continue
            yield file.stem, stat


def _write(target: Path, body: bytes) -> None:
    """Write a file whole or not at all; what a full disk left of it goes."""
    with tempfile.NamedTemporaryFile(dir=target.parent, prefix=HALF_WRITTEN, delete=False) as scratch:
        try:
            scratch.write(body)
            scratch.flush()
            os.fsync(scratch.fileno())
            Path(scratch.name).replace(target)
        except OSError:
            with suppress(OSError):
                Path(scratch.name).unlink()
            raise


def _drop_half_written(folder: Path, before_ms: int) -> None:
    for file in folder.glob(f"{HALF_WRITTEN}*"):
        with suppress(FileNotFoundError):
            if file.is_file() and file.stat().st_mtime * 1000 < before_ms:
                file.unlink()
