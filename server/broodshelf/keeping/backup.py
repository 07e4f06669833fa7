"""Backup and restore: one archive with the database, the keys, the pictures and what was revoked.

A backup is consistent while the server runs: SQLite's online backup, or ``pg_dump``. A restore begins a new
epoch for every household, so that phones send what the backup lacks.
"""

from __future__ import annotations

import io
import json
import os
import re
import shutil
import sqlite3
import tarfile
import tempfile
import time
import zlib
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy.engine import make_url

from .. import __version__
from ..errors import CannotKeep, NothingToKeep
from ..languages import Told, Unfit, told, why_of
from ..records.json_text import read_json
from ..records.trouble import is_damage
from ..records.types import is_uuid
from ..settings import Settings
from .beside import note_backup, remember
from .dumps import check_database, load_dump, require_households, run, sha256_of

FORMAT = 1
BESIDE = ("vapid.pem", "vapid_private.pem", "revoked.jsonl")
"""Files of the data folder that belong into a backup. The marks do not: they must outlive a restore."""


_PICTURE = re.compile(r"[A-Za-z0-9_-]{1,80}\.jpg")
GZIP_LEVEL = 6
"""The highest level saves a twentieth and costs four times as long."""
PICTURES = "photos"
"""Their folder in the data folder; a file is named by its content, so it is put back only where it is missing."""


def backup(settings: Settings, target: Path) -> int:
    """Write an archive to ``target`` (readable by its owner only) and return its size in bytes."""
    with tempfile.TemporaryDirectory(dir=_folder(target)) as scratch:
        dumped = Path(scratch) / "database"
        _dump(settings, dumped)
        check_database(dumped, _engine(settings))
        pictures: dict[str, str] = {}
        made_ms = time.time_ns() // 1_000_000
        manifest = {
            "format": FORMAT,
            "version": __version__,
            "engine": _engine(settings),
            "made_ms": made_ms,
            "sha256": sha256_of(dumped),
            "pictures": pictures,
        }
        packed = Path(scratch) / "archive"
        with tarfile.open(packed, "w:gz", compresslevel=GZIP_LEVEL) as archive:
            archive.add(dumped, "database")
            for name in BESIDE:
                if (settings.data / name).is_file():
                    archive.add(settings.data / name, f"data/{name}")
            # after the database: a picture that came since is one too many, never one too few
            for picture in sorted((settings.data / PICTURES).glob("*/*.jpg")):
                if not _is_picture(picture.parent.name, picture.name):
                    continue
                name = f"data/{PICTURES}/{picture.parent.name}/{picture.name}"
                with suppress(FileNotFoundError):
                    hashed = sha256_of(picture)
                    archive.add(picture, name)
                    pictures[name] = hashed
            _add_text(archive, "manifest.json", json.dumps(manifest))
        packed.chmod(0o600)
        packed.replace(target)
    note_backup(settings, made_ms)
    return target.stat().st_size


def set_aside(settings: Settings, now_ms: int) -> Path | None:
    """Back up the present state before a restore replaces it; None where there is none, or none that can be read.

    Raises whatever else keeps it from being kept; then nothing may replace it.
    """
    aside = settings.data / f"before-restore-{now_ms}.tar.gz"
    try:
        backup(settings, aside)
    except NothingToKeep:
        return None
    except sqlite3.DatabaseError as error:
        if is_damage(error):
            return None
        raise
    return aside


def restore(settings: Settings, source: Path) -> None:
    """Put the database of an archive in place of the present one. The server must not be running.

    What was revoked since the backup stays revoked: the present file of revocations is kept and added to.
    """
    with tempfile.TemporaryDirectory(dir=_folder(settings.data / "x")) as scratch:
        manifest = unpack(source, Path(scratch))
        if manifest.get("format") != FORMAT or manifest.get("engine") != _engine(settings):
            raise CannotKeep(
                told(
                    "backup-other-kind",
                    engine=manifest.get("engine"),
                    format=manifest.get("format"),
                    here=_engine(settings),
                    known=FORMAT,
                )
            )
        require_households(check_database(Path(scratch) / "database", _engine(settings)))
        remember(settings)
        _load(settings, Path(scratch) / "database")
        for name in BESIDE:
            kept, saved = settings.data / name, Path(scratch) / "data" / name
            if not saved.is_file():
                continue
            if name.endswith(".jsonl") and kept.exists():
                lines = [*saved.read_bytes().split(b"\n"), *kept.read_bytes().split(b"\n")]
                saved.write_bytes(b"".join(line + b"\n" for line in dict.fromkeys(lines) if line))
            saved.chmod(0o600)
            saved.replace(kept)
        for picture in sorted((Path(scratch) / "data" / PICTURES).glob("*/*.jpg")):
            kept = settings.data / PICTURES / picture.parent.name / picture.name
            kept.parent.mkdir(parents=True, exist_ok=True)
            if not kept.exists():
                picture.replace(kept)


def _engine(settings: Settings) -> str:
    return make_url(settings.database_url).get_backend_name()


def _sqlite_path(settings: Settings) -> Path:
    return Path(make_url(settings.database_url).database or "")


def _dump(settings: Settings, target: Path) -> None:
    if _engine(settings) == "postgresql":
        words = ("--format=custom", "--enable-row-security", f"--file={target}")
        run("pg_dump", *words, database=settings.database_url)
        return
    path = _sqlite_path(settings)
    if not path.is_file():
        raise NothingToKeep(told("backup-nothing", path=path))
    source, copy = sqlite3.connect(path), sqlite3.connect(target)
    try:
        source.backup(copy)
        copy.execute("PRAGMA journal_mode=DELETE")
    finally:
        copy.close()
        source.close()


def _load(settings: Settings, dumped: Path) -> None:
    if _engine(settings) == "postgresql":
        load_dump(dumped, settings.database_url)
        return
    path = _sqlite_path(settings)
    refuse_running(path, told("backup-running"))
    for ending in ("-wal", "-shm"):
        path.with_name(path.name + ending).unlink(missing_ok=True)
    dumped.chmod(0o600)
    dumped.replace(path)


def refuse_running(path: Path, why: Told) -> None:
    """Raise ``CannotKeep`` saying why where a server holds the file: one that goes on would write into nothing."""
    if not path.exists():
        return
    present = sqlite3.connect(path, timeout=0.2)
    try:
        present.execute("PRAGMA locking_mode=EXCLUSIVE")
        present.execute("BEGIN EXCLUSIVE")
        present.execute("ROLLBACK")
    except sqlite3.OperationalError as error:
        raise CannotKeep(why) from error
    except sqlite3.DatabaseError:
        return  # a damaged database is what a restore is for
    finally:
        present.close()


def unpack(source: Path, folder: Path) -> dict[str, Any]:
    """Unpack an archive and return its manifest. Raises ``CannotKeep`` for anything else and for a damaged one."""
    _unpack(source, folder)
    manifest = _manifest(folder)
    written = manifest.get("sha256")
    if written is not None and written != sha256_of(folder / "database"):
        raise CannotKeep(told("backup-not-as-written", path=source))
    return manifest


def _unpack(source: Path, folder: Path) -> None:
    """Unpack the plain files of an archive that a backup has; no link, device or name of another kind."""
    try:
        with tarfile.open(source, "r:gz") as archive:
            members = [member for member in archive if _ours(member)]
            needed = sum(member.size for member in members)
            if needed > shutil.disk_usage(folder).free:
                raise CannotKeep(told("backup-too-large", path=source, mib=needed // 2**20))
            for member in members:
                _write(archive, member, folder / member.name)
    except (OSError, tarfile.TarError, EOFError, zlib.error, ValueError) as error:
        raise CannotKeep(told("backup-unreadable", path=source, why=why_of(error))) from error
    if not (folder / "manifest.json").is_file() or not (folder / "database").is_file():
        raise CannotKeep(told("backup-none", path=source))


def _write(archive: tarfile.TarFile, member: tarfile.TarInfo, path: Path) -> None:
    """Write a plain file whose name was looked at: its bytes, time and modes, and no owner.

    ``extractall(filter="data")`` does the same from Python 3.11.4 on; Debian 12 has 3.11.2.
    """
    packed = archive.extractfile(member)
    if packed is None:
        raise ValueError(member.name)
    path.parent.mkdir(parents=True, exist_ok=True)
    with packed, path.open("wb") as written:
        shutil.copyfileobj(packed, written)
    path.chmod(member.mode & 0o644 | 0o600)
    os.utime(path, (member.mtime, member.mtime))


def _ours(member: tarfile.TarInfo) -> bool:
    """Say whether a member is one of what a backup holds; others are left in the archive.

    Raises ``ValueError`` for what no backup ever holds: a link, a device, a place outside the folder.
    """
    parts = member.name.split("/")
    if member.issym() or member.islnk() or member.isdev() or ".." in parts or member.name.startswith("/"):
        raise Unfit(told("backup-foreign-member", name=member.name))
    if member.name in ("manifest.json", "database"):
        return member.isreg()
    beside = len(parts) == 2 and parts[0] == "data" and parts[1] in BESIDE
    picture = len(parts) == 4 and parts[:2] == ["data", PICTURES] and _is_picture(parts[2], parts[3])
    return member.isreg() and (beside or picture)


def _is_picture(household_id: str, name: str) -> bool:
    return is_uuid(household_id) and _PICTURE.fullmatch(name) is not None


def _manifest(folder: Path) -> dict[str, Any]:
    try:
        read = read_json((folder / "manifest.json").read_bytes())
    except ValueError as error:
        raise CannotKeep(told("backup-manifest", why=str(error))) from error
    return read if isinstance(read, dict) else {}


def _add_text(archive: tarfile.TarFile, name: str, text: str) -> None:
    entry = tarfile.TarInfo(name)
    entry.size = len(text.encode())
    archive.addfile(entry, io.BytesIO(text.encode()))


def _folder(path: Path) -> Path:
    path.parent.mkdir(parents=True, exist_ok=True)
    return path.parent
