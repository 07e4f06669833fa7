"""What lies in the data folder of a machine whose database is PostgreSQL goes into the database, once.

Each file goes when it stands in the database for good: a start that is cut short goes on at the next. Nothing is
deleted: what was taken over lies in ``in-database`` until its owner takes it away.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, select
from sqlalchemy.dialects.postgresql import insert

from ...logs import say
from ..database import reading, writing
from ..tables import households
from ..types import is_sha256
from .folder import BUILDS, KEPT_FILE, PICTURES, NoteFile
from .shared import SharedBuilds, put_picture, take_over_notes
from .tables import pictures, taken
from .taken_files import FOLDER as TAKEN

PUT_AWAY: Final = "in-database"
ASIDE: Final = "pictures_before_restore"
AT_ONCE: Final = 20
LONGEST_ID: Final = 43


def take_over(data: Path) -> None:
    """Bring pictures, builds, notes and what push services took from this data folder into the database."""
    _take_pictures_back()
    found = sum(_take_pictures(data, part) for part in _portions(data))
    builds, store = 0, SharedBuilds()
    for archive in sorted((data / BUILDS).glob("*.zip")):
        if archive.is_file():
            store.put(archive.stem, archive.read_bytes, round(archive.stat().st_mtime * 1000))
            put_away(data, archive)
            builds += 1
    for file in sorted((data / TAKEN).glob("*")):
        if file.is_file():
            _take_messages(file)
            put_away(data, file)
    if (data / KEPT_FILE).is_file():
        take_over_notes(NoteFile(data / KEPT_FILE))
        put_away(data, data / KEPT_FILE)
    if found or builds:
        say("what lay in the data folder is in the database", pictures=found, builds=builds)


def set_pictures_aside(connection: Connection) -> None:
    """Copy the pictures to where a dump that is loaded does not touch them; the next start brings them back."""
    connection.exec_driver_sql(f"DROP TABLE IF EXISTS {ASIDE}")
    connection.exec_driver_sql(f"CREATE TABLE {ASIDE} AS SELECT * FROM {pictures.name}")  # noqa: S608


def _take_pictures_back() -> None:
    """Bring back pictures that a restore set aside, of the households that there are now."""
    with writing() as connection:
        if connection.exec_driver_sql(f"SELECT to_regclass('{ASIDE}')").scalar() is None:
            return
        connection.exec_driver_sql(
            f"INSERT INTO {pictures.name} SELECT a.* FROM {ASIDE} a JOIN households h ON h.id = a.household_id"  # noqa: S608
            " ON CONFLICT DO NOTHING"
        )
        connection.exec_driver_sql(f"DROP TABLE {ASIDE}")


def put_away(data: Path, path: Path) -> None:
    """Move a file of the data folder to where nothing is read; its place there is the same."""
    place = data / PUT_AWAY / path.relative_to(data)
    if path.exists():
        place.parent.mkdir(parents=True, exist_ok=True)
        path.replace(place)


def _portions(data: Path) -> Iterator[list[Path]]:
    """Yield pictures of households that the database knows, some at a time; those of others stay where they are."""
    with reading() as connection:
        known = set(connection.scalars(select(households.c.id)))
    found = (
        file
        for folder in sorted((data / PICTURES).glob("*"))
        if folder.name in known
        for file in sorted(folder.glob("*.jpg"))
        if is_sha256(file.stem)
    )
    while portion := list(islice(found, AT_ONCE)):
        yield portion


def _take_pictures(data: Path, files: list[Path]) -> int:
    with writing() as connection:
        for file in files:
            came_ms = round(file.stat().st_mtime * 1000)
            put_picture(connection, file.parent.name, file.stem, file.read_bytes(), came_ms)
    for file in files:
        put_away(data, file)
    return len(files)


def _take_messages(file: Path) -> None:
    at_ms = round(file.stat().st_mtime * 1000)
    lines = file.read_text("ascii", errors="replace").split()
    rows = [{"delivery_id": line, "at_ms": at_ms} for line in lines if len(line) <= LONGEST_ID]
    if rows:
        with writing() as connection:
            connection.execute(insert(taken).on_conflict_do_nothing(), rows)
