"""The port: what a server keeps besides its rows, and where it lies.

With SQLite it lies in the data folder (``folder``), as the database does. With PostgreSQL it lies in the database
(``shared``), so that several machines have nothing else in common. What a person or a test sees is the same.

Two things stay with each machine whatever the database: its marks (``records.epochs``), which are there to tell that
the database was put back and so must not be put back with it, and its own copy of what was ended.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass
from typing import Any, Protocol

from sqlalchemy import Connection

from ..ended import Revocation


class Pictures(Protocol):
    """The pictures as they were drawn, each by its household and the SHA-256 of what the phone sent."""

    def read(self, household_id: str, sha256: str) -> bytes | None:
        """Return a picture, None where there is none."""

    def has(self, household_id: str, sha256: str) -> bool:
        """Say whether a picture is there."""

    def put(self, household_id: str, sha256: str, drawn: bytes, most_bytes: int) -> bool:
        """Keep a picture whole; False, and nothing is kept, if the household's would be more than ``most_bytes``."""

    def size_bytes(self, household_id: str) -> int:
        """Return how many bytes a household's pictures take."""

    def older_than(self, before_ms: int) -> Iterator[tuple[str, list[str]]]:
        """Yield, for each household that has any, the pictures that came before an instant."""

    def drop(self, household_id: str, sha256: Collection[str]) -> None:
        """Forget pictures."""

    def tidy(self, now_ms: int) -> None:
        """Forget what was never written to its end."""


class Endings(Protocol):
    """What was ended, so that it stays ended when an older database is put back (``records.ended``)."""

    def agree(self, connection: Connection) -> None:
        """Bring this machine's copy and the one that all machines share to the same, where these are two."""

    def note(self, connection: Connection, entries: Iterable[Revocation]) -> None:
        """Note what the transaction of this connection ends, before it says so itself."""

    def all_of(self, connection: Connection) -> list[Revocation]:
        """Return all that can be read, in the order of the ends."""

    def of_one(self, connection: Connection, household_id: str, ended_id: str) -> list[Revocation]:
        """Return what was noted of one thing, in the order of the ends."""

    def forget(self, connection: Connection, household_id: str) -> None:
        """Leave out what was ended of a household that was erased, but for the erasing itself."""


class Builds(Protocol):
    """The files of builds of the app, packed, by the build's id."""

    def put(self, build: str, pack: Callable[[], bytes], now_ms: int) -> None:
        """Keep a build, started now; one that is there and sound is not packed again."""

    def read(self, build: str) -> bytes | None:
        """Return a build, packed; None where there is none."""

    def drop_before(self, before_ms: int) -> None:
        """Forget builds that were last started before an instant."""


class Taken(Protocol):
    """Which messages a push service has taken while their rows may not say so yet."""

    def taken(self, delivery_id: str) -> None:
        """Note that a message was taken. Needs an application context; safe in several threads."""

    def among(self, delivery_ids: Collection[str]) -> set[str]:
        """Return which of these messages any process of this home has seen taken."""

    def tidy(self, now_ms: int) -> None:
        """Forget what is a day old."""

    def close(self) -> None:
        """Let go of what is open; what was noted stays."""


class Notes(Protocol):
    """A few values that are remembered, as JSON under one name."""

    def read(self, connection: Connection | None = None) -> dict[str, Any]:
        """Return what is remembered; asked over a transaction that is open, or one of its own."""

    def note(self, **values: Any) -> None:
        """Remember these besides what is remembered. Atomic."""


@dataclass(frozen=True, slots=True)
class Home:
    """All of it, for one server."""

    pictures: Pictures
    endings: Endings
    builds: Builds
    taken: Taken
    kept: Notes
    """When the last backup was made and what the last look at the database found (``records.soundness``)."""
