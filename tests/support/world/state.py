"""What a household's world remembers of its run, and how it begins."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import select
from tests.support.house import House
from tests.support.households import HAPPENED
from tests.support.world.phones import PWA, Phone, Phones, Tab, shared_phones

from broodshelf.model.kinds import Person
from broodshelf.people.households import add_person, found_household
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger
from broodshelf.records.tables import households

PASS_DAYS = 36_525
"""Longer than any run: 40 steps of 401 days are 44 years, and whose pass is over sees nothing."""
_worlds = iter(range(1, 2**31))


@dataclass(frozen=True)
class Kept:
    """A backup: the archive."""

    path: Path


@dataclass(frozen=True)
class Acknowledged:
    """An operation that a phone was told is applied: told when, under which epoch, with which revision."""

    phone: int
    op: dict[str, Any]
    at_ms: int
    epoch: str
    rev: int


@dataclass(frozen=True)
class Restored:
    """A restore: which acknowledged operations it took, and when each phone had spoken to the server last.

    ``taken`` says of each operation when its phone had last heard that it is applied: what was sent again after an
    earlier restore stands in the journal as of then. ``deletions`` are the lines of the history before it that tell of
    deletions and of what brought records back. ``copies`` are the ids of the records that each keeper's phone held,
    gone ones too, and could offer.
    """

    taken: dict[str, int]
    contact_ms: dict[int, int]
    deletions: Sequence[Any]
    copies: dict[int, set[str]]


class State:
    """``steps`` is what happened so far. Phones are numbered from 0; the app that runs on them is in ``app``.

    Operations by ``op_id``: ``asked`` as sent last, ``acknowledged`` as a phone first heard that it is applied,
    ``told`` each time it heard so, by revision too, as a restored server applies anew what it lacks. ``epochs`` are
    those of the server, each with the revision above which it began.
    """

    def __init__(
        self,
        house: House,
        phones: int = 3,
        *,
        app: Path = PWA,
        stand_in: bool = False,
        process: Phones | None = None,
    ) -> None:
        self.house = house
        self.number = next(_worlds)
        self.ids: Iterator[int] = iter(range(1, 2**40))
        self.steps: list[list[Any]] = []
        self.acknowledged: dict[str, Acknowledged] = {}
        self.told: dict[tuple[str, int], Acknowledged] = {}
        self.heard_ms: dict[str, int] = {}
        self.epochs: list[tuple[int, str]] = []
        self.rejected: dict[str, tuple[int, dict[str, Any]]] = {}
        self.replaced: set[str] = set()
        self.asked: dict[str, dict[str, Any]] = {}
        self.sent: list[tuple[int, bytes]] = []
        self.contact_ms: dict[int, int] = {}
        self.lose = self.double = False
        self.tabs: dict[tuple[int, int], Tab] = {}
        self.revoked: set[int] = set()
        self.backups: list[Kept] = []
        self.restores: list[Restored] = []
        self.purged: set[str] = set()
        self.mended: set[str] = set()
        self.makers: dict[str, int] = {}
        with writing() as connection:
            self.household_id, self.person_id = found_household(
                connection, "Mira", "Shelf", "UTC", house.now_ms
            )
        house.household_id, house.person_id = self.household_id, self.person_id
        devices = [self.new_id() for _ in range(phones)]
        self.persons = [self.person_id, *(self.new_id() for _ in range(1, phones))]
        self.pass_id = self.new_id() if stand_in else None
        self.stand_in = phones - 1 if stand_in else None
        self.colony_id = self.new_id()
        process = process or shared_phones()
        self.phones = [
            Phone(process, device, lambda: house.now_ms, self.me(who), app)
            for who, device in enumerate(devices)
        ]
        self.settle_in()
        self.note_epoch()
        self.write(0, "colony", {"name": "start"}, self.colony_id)

    def me(self, who: int) -> dict[str, str]:
        """Whose a phone is, as it is told when they sign in."""
        return {"person_id": self.persons[who], "role": "stand_in" if who == self.stand_in else "keeper"}

    def settle_in(self) -> None:
        """Every phone has a person of its own; the last one is a stand-in's if the world has one."""
        with writing() as connection:
            ledger = Ledger(connection, self.household_id)
            for who, person_id in enumerate(self.persons[1:], 1):
                role = self.me(who)["role"]
                add_person(
                    ledger, Person(name=f"person {who}", role=role), self.house.now_ms, person_id=person_id
                )
            if self.pass_id:
                ends = dt.datetime.fromtimestamp(self.house.now_ms / 1000, dt.UTC) + dt.timedelta(PASS_DAYS)
                days = {"starts_on": HAPPENED[:10], "ends_on": ends.date().isoformat()}
                given = {"name": "P", "colony_ids": [self.colony_id], **days}
                now_ms = self.house.now_ms
                ledger.put(self.pass_id, "pass", given, now_ms=now_ms, person_id=self.person_id)
            ledger.flush()
        self.let_in()

    def note_epoch(self) -> None:
        """Remember above which revision the present epoch begins."""
        h = households.c
        with reading() as connection:
            rev, epoch = connection.execute(select(h.rev, h.epoch).where(h.id == self.household_id)).one()
        if not self.epochs or self.epochs[-1][1] != epoch:
            self.epochs.append((rev if self.epochs else 0, epoch))

    def let_in(self) -> None:
        """Pair again every phone that was not revoked: a restore or a long time may have ended its session."""
        for who, phone in enumerate(self.phones):
            if who not in self.revoked:
                own = self.pass_id if who == self.stand_in else None
                self.house.let_in(phone.device_id, self.persons[who], own)

    def write(self, who: int, kind: str, values: dict[str, Any], record_id: str | None = None) -> None:
        """Let a person write on a phone; a record that is made remembers whose it is."""
        if record_id is None or (record_id == self.colony_id and not self.makers):
            record_id = record_id or self.new_id()
            self.makers[record_id] = who
        self.phones[who].write(kind, values, record_id)

    def new_id(self) -> str:
        """Ids in the order of their making, so that a run chooses the same records each time it is played."""
        return f"{self.number:08x}-0000-7000-8000-{next(self.ids):012x}"

    def close(self) -> None:
        """Throw away the phones' disks and the backups."""
        for phone in self.phones:
            phone.forget()
        for kept in self.backups:
            kept.path.unlink(missing_ok=True)
