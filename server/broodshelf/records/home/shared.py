"""The home of servers with PostgreSQL: the database that they share."""

from __future__ import annotations

import json
import time
from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection, delete, func, select, update
from sqlalchemy.dialects.postgresql import insert

from ...model.gauges import DAY_MS
from ..database import reading, writing, writing_lightly
from ..ended import Revocation, Revocations
from ..quick.many_rows import is_among
from .folder import NoteFile
from .port import Home
from .tables import builds, endings, pictures, server_notes, taken

TAKEN_KEPT_MS: Final = DAY_MS
"""Claims run out after a minute; a day leaves room for clocks that were set."""


def in_database(revocations: Revocations) -> Home:
    """Return the home in the database of the current app."""
    return Home(
        SharedPictures(), SharedEndings(revocations), SharedBuilds(), SharedTaken(), SharedNotes("kept")
    )


def _now_ms() -> int:
    return time.time_ns() // 1_000_000


class SharedPictures:
    """A row for each picture."""

    def read(self, household_id: str, sha256: str) -> bytes | None:
        """Return a picture, None where there is none."""
        with reading() as connection:
            found = connection.scalar(select(pictures.c.drawn).where(*_one(household_id, sha256)))
        return None if found is None else bytes(found)

    def has(self, household_id: str, sha256: str) -> bool:
        """Say whether a picture is there."""
        with reading() as connection:
            return (
                connection.scalar(select(pictures.c.size_bytes).where(*_one(household_id, sha256)))
                is not None
            )

    def put(self, household_id: str, sha256: str, drawn: bytes, most_bytes: int) -> bool:
        """Keep a picture whole; False if the household's would be more than ``most_bytes``."""
        with writing() as connection:
            if _size_bytes(connection, household_id) + len(drawn) > most_bytes:
                return False
            put_picture(connection, household_id, sha256, drawn, _now_ms())
        return True

    def size_bytes(self, household_id: str) -> int:
        """Return how many bytes a household's pictures take."""
        with reading() as connection:
            return _size_bytes(connection, household_id)

    def older_than(self, before_ms: int) -> Iterator[tuple[str, list[str]]]:
        """Yield, for each household that has any, the pictures that came before an instant."""
        p = pictures.c
        query = select(p.household_id, p.sha256).where(p.came_ms < before_ms)
        found: dict[str, list[str]] = {}
        with reading() as connection:
            for household_id, sha256 in connection.execute(query):
                found.setdefault(household_id, []).append(sha256)
        yield from found.items()

    def drop(self, household_id: str, sha256: Collection[str]) -> None:
        """Forget pictures."""
        with writing() as connection:
            among = is_among(connection, pictures.c.sha256, sha256)
            connection.execute(delete(pictures).where(pictures.c.household_id == household_id, among))

    def tidy(self, now_ms: int) -> None:
        """A row is there whole or not at all."""


def _size_bytes(connection: Connection, household_id: str) -> int:
    size = select(func.sum(pictures.c.size_bytes)).where(pictures.c.household_id == household_id)
    return int(connection.scalar(size) or 0)


def put_picture(connection: Connection, household_id: str, sha256: str, drawn: bytes, came_ms: int) -> None:
    """Keep a picture; one that is there stays."""
    row = {"household_id": household_id, "sha256": sha256, "size_bytes": len(drawn), "came_ms": came_ms}
    connection.execute(insert(pictures).values(drawn=drawn, **row).on_conflict_do_nothing())


def _one(household_id: str, sha256: str) -> tuple[Any, Any]:
    return pictures.c.household_id == household_id, pictures.c.sha256 == sha256


@dataclass(frozen=True, slots=True)
class SharedEndings:
    """Rows of the transaction that ends something, and on each machine a copy: a restored database forgets."""

    file: Revocations

    def agree(self, connection: Connection) -> None:
        """Add to the database what only this machine knows, and to this machine's file what only the database does."""
        here, there = self.file.read(), self.all_of(connection)
        _insert(connection, here)
        known = set(here)
        self.file.add_all(entry for entry in there if entry not in known)

    def note(self, connection: Connection, entries: Iterable[Revocation]) -> None:
        """Note what is being ended in the same transaction, and before it in this machine's file."""
        noted = list(entries)
        self.file.add_all(noted)
        _insert(connection, noted)

    def all_of(self, connection: Connection) -> list[Revocation]:
        """Return all of it."""
        return _read(connection)

    def of_one(self, connection: Connection, household_id: str, ended_id: str) -> list[Revocation]:
        """Return what was noted of one thing."""
        e = endings.c
        return _read(connection, e.household_id == household_id, e.ended_id == ended_id)

    def forget(self, connection: Connection, household_id: str) -> None:
        """Leave out what was ended of a household that was erased, but for the erasing itself."""
        e = endings.c
        mine = (e.household_id == household_id, e.what.not_in(("household", "household_back")))
        connection.execute(delete(endings).where(*mine))
        self.file.forget(household_id)


def _insert(connection: Connection, entries: Iterable[Revocation]) -> None:
    rows = [
        {"household_id": e.household_id, "what": e.what, "ended_id": e.id, "at_ms": e.at_ms}
        for e in dict.fromkeys(entries)
    ]
    if rows:
        connection.execute(insert(endings).on_conflict_do_nothing(), rows)


def _read(connection: Connection, *where: Any) -> list[Revocation]:
    """Return endings; of a person who left and came back in the same millisecond, that they left comes last."""
    e = endings.c
    query = select(e.what, e.household_id, e.ended_id, e.at_ms).where(*where).order_by(e.at_ms, e.what.desc())
    return [Revocation(*row) for row in connection.execute(query)]


class SharedBuilds:
    """A row for each build, so that each machine has the files of the others' versions while one is replaced."""

    def put(self, build: str, pack: Callable[[], bytes], now_ms: int) -> None:
        """Keep a build, or note that one that is there was started again."""
        with writing() as connection:
            started = update(builds).where(builds.c.build == build).values(started_ms=now_ms)
            if connection.execute(started).rowcount == 0:
                row = {"build": build, "packed": pack(), "started_ms": now_ms}
                connection.execute(insert(builds).values(row).on_conflict_do_nothing())

    def read(self, build: str) -> bytes | None:
        """Return a build, packed; None where there is none."""
        with reading() as connection:
            found = connection.scalar(select(builds.c.packed).where(builds.c.build == build))
        return None if found is None else bytes(found)

    def drop_before(self, before_ms: int) -> None:
        """Forget builds that were last started before an instant."""
        with writing() as connection:
            connection.execute(delete(builds).where(builds.c.started_ms < before_ms))


class SharedTaken:
    """A row for each message.

    Its commit does not wait for the disk: a process that is killed loses nothing by that, and a database that is cut
    off the current repeats at most what it took in its last half second.
    """

    def taken(self, delivery_id: str) -> None:
        """Note that a message was taken."""
        with writing_lightly() as connection:
            row = {"delivery_id": delivery_id, "at_ms": _now_ms()}
            connection.execute(insert(taken).values(row).on_conflict_do_nothing())

    def among(self, delivery_ids: Collection[str]) -> set[str]:
        """Return which of these messages any process has seen taken."""
        if not delivery_ids:
            return set()
        with reading() as connection:
            among = is_among(connection, taken.c.delivery_id, delivery_ids)
            return set(connection.scalars(select(taken.c.delivery_id).where(among)))

    def tidy(self, now_ms: int) -> None:
        """Forget what is a day old."""
        with writing() as connection:
            connection.execute(delete(taken).where(taken.c.at_ms < now_ms - TAKEN_KEPT_MS))

    def close(self) -> None:
        """Nothing is open between two messages."""


@dataclass(frozen=True, slots=True)
class SharedNotes:
    """A row of JSON."""

    name: str

    def read(self, connection: Connection | None = None) -> dict[str, Any]:
        """Return what is remembered."""
        if connection is None:
            with reading() as own:
                return self.read(own)
        text = connection.scalar(select(server_notes.c.text).where(server_notes.c.name == self.name))
        found = json.loads(text) if text else {}
        return found if isinstance(found, dict) else {}

    def note(self, **values: Any) -> None:
        """Remember these besides what is remembered."""
        with writing() as connection:
            put_note(connection, self.name, "{}", anew=False)
            locked = select(server_notes.c.text).where(server_notes.c.name == self.name).with_for_update()
            known = json.loads(connection.scalar(locked) or "{}")
            put_note(connection, self.name, json.dumps({**known, **values}))


def put_note(connection: Connection, name: str, text: str, *, anew: bool = True) -> None:
    """Write a text that all servers share; with ``anew`` False only where there is none yet."""
    row = insert(server_notes).values(name=name, text=text)
    done = row.on_conflict_do_update(index_elements=["name"], set_={"text": text})
    connection.execute(done if anew else row.on_conflict_do_nothing())


def take_over_notes(file: NoteFile) -> None:
    """Remember in the database what this machine's file remembers."""
    SharedNotes("kept").note(**file.read())
