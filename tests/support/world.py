"""A household's world for the proof of sync: the whole app, several phones, and everything that goes wrong.

Every step is a name and whole numbers, so that a run can be saved as JSON and played again. ``check`` lets all come
to rest and then looks at what must hold, by reading tables and disks, not by asking the code under test.

Longer than 300 lines because it is one state machine: each step needs the state of the others.
"""

from __future__ import annotations

import datetime as dt
import json
from collections.abc import Callable, Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import func, select
from tests.support.house import House
from tests.support.households import HAPPENED
from tests.support.must_hold import Acknowledged, MustHold, Restored
from tests.support.shipped_phone import ShippedPhone
from tests.support.stored_phone import StoredPhone

from broodshelf.errors import NotFound
from broodshelf.keeping.backup import backup, restore
from broodshelf.people.devices import revoke_device
from broodshelf.people.households import add_person, found_household
from broodshelf.records.database import reading, writing
from broodshelf.records.epochs import start_epoch
from broodshelf.records.purge import purge_gone
from broodshelf.records.store import Ledger
from broodshelf.records.tables import records

DAY_MS = 86_400_000
LONG_AWAY_DAYS = 401
MOST_ROUNDS = 8
PASS_DAYS = 4000
MakePhone = Callable[[str, Callable[[], str], Callable[[], int]], StoredPhone | ShippedPhone]
"""Makes a phone of a device's id, of what gives out ids, and of the server's clock."""
_worlds = iter(range(1, 2**31))


class Lost(Exception):  # noqa: N818
    """The answer did not reach the phone."""


class SignedOut(Exception):  # noqa: N818
    """The server does not know this session any more, or has revoked the phone."""


@dataclass(frozen=True)
class Kept:
    """A backup: the archive (or the copied file), and when it was made."""

    path: Path
    at_ms: int


class World(MustHold):
    """``steps`` is what happened so far. Phones are numbered from 0."""

    def __init__(
        self, house: House, phones: int = 3, make_phone: MakePhone = StoredPhone, *, stand_in: bool = False
    ) -> None:
        self.house = house
        self.number = next(_worlds)
        self.ids = iter(range(1, 2**40))
        self.steps: list[list[Any]] = []
        with writing() as connection:
            self.household_id, self.person_id = found_household(
                connection, "Mira", "Shelf", "UTC", house.now_ms
            )
        house.household_id, house.person_id = self.household_id, self.person_id
        self.phones = [make_phone(self.new_id(), self.new_id, lambda: house.now_ms) for _ in range(phones)]
        self.persons = [self.person_id, *(self.new_id() for _ in range(1, phones))]
        self.makers: dict[str, int] = {}
        self.pass_id = self.new_id() if stand_in else None
        self.tabs: dict[tuple[int, int], Iterator[str]] = {}
        self.revoked: set[int] = set()
        self.acknowledged: dict[str, Acknowledged] = {}
        self.rejected: dict[str, tuple[int, dict[str, Any]]] = {}
        self.offered: dict[str, dict[str, Any]] = {}
        self.backups: list[Kept] = []
        self.restores: list[Restored] = []
        self.contact_ms: dict[int, int] = {}
        self.sent: list[tuple[int, bytes]] = []
        self.purged: set[str] = set()
        self.mended: set[str] = set()
        self.lose = self.double = False
        self.colony_id = self.new_id()
        self.settle_in()
        self.write(0, "colony", {"name": "start"}, self.colony_id)
        self.sync(0)

    def settle_in(self) -> None:
        """Every phone has a person of its own; the last one is a stand-in's if the world has one."""
        with writing() as connection:
            ledger = Ledger(connection, self.household_id)
            for who, person_id in enumerate(self.persons[1:], 1):
                role = "stand_in" if who == self.stand_in else "keeper"
                add_person(ledger, f"person {who}", role, self.house.now_ms, person_id=person_id)
            if self.pass_id:
                ends = dt.datetime.fromtimestamp(self.house.now_ms / 1000, dt.UTC) + dt.timedelta(PASS_DAYS)
                days = {"starts_on": HAPPENED[:10], "ends_on": ends.date().isoformat()}
                given = {"name": "P", "colony_ids": [self.colony_id], **days}
                now_ms = self.house.now_ms
                ledger.put(self.pass_id, "pass", given, now_ms=now_ms, person_id=self.person_id)
            ledger.flush()
        for who, phone in enumerate(self.phones):
            phone.enter(self.persons[who], "stand_in" if who == self.stand_in else "keeper")
        self.let_in()

    @property
    def stand_in(self) -> int | None:
        """The number of the stand-in's phone."""
        return len(self.phones) - 1 if self.pass_id else None

    def write(self, who: int, kind: str, values: dict[str, Any], record_id: str | None = None) -> str:
        """Let a person write on a phone; a record that is made remembers whose it is."""
        made = record_id is None or (record_id == self.colony_id and not self.makers)
        record_id = self.phones[who].write(kind, values, record_id)
        if made:
            self.makers[record_id] = who
        return record_id

    def new_id(self) -> str:
        """Ids in the order of their making, so that a run chooses the same records each time it is played."""
        return f"{self.number:08x}-0000-7000-8000-{next(self.ids):012x}"

    def step(self, name: str, *numbers: int) -> None:
        """Take one step; a second passes with it."""
        self.steps.append([name, *numbers])
        self.house.now_ms += 1000
        getattr(self, f"do_{name}")(*numbers)

    # -- what a person does ------------------------------------------------------------------------

    def pick(self, who: int, which: int, *kinds: str) -> str | None:
        """Return the id of a record that this phone shows, or None."""
        seen = sorted(
            row_id for row_id, values in self.phones[who].overlay().items() if values["kind"] in kinds
        )
        return seen[which % len(seen)] if seen else None

    def do_log(self, who: int, which: int) -> None:
        colony = self.pick(who, which, "colony")
        if colony:
            values = {"colony_id": colony, "happened_at": HAPPENED, "text": f"log {len(self.steps)}"}
            self.write(who, "note", values)

    def do_feed(self, who: int, which: int) -> None:
        colony = self.pick(who, which, "colony")
        if colony:
            values = {"colony_id": colony, "happened_at": HAPPENED, "need": ("sugar", "protein")[which % 2]}
            self.write(who, "feeding", values)

    def do_burst(self, who: int, which: int) -> None:
        """A long evening at the shelf: many logs and corrections before the phone gets a connection."""
        for more in range(8):
            self.do_log(who, which + more)
            self.do_feed(who, which + more)
            self.do_amend(who, which * 7 + more)
        self.do_rename(who, which)

    def do_found(self, who: int) -> None:
        self.write(who, "colony", {"name": f"colony {len(self.steps)}"})

    def do_rename(self, who: int, which: int) -> None:
        colony = self.pick(who, which, "colony")
        if colony:
            self.write(who, "colony", {"name": f"name {len(self.steps)}", "queens": which}, colony)

    def do_amend(self, who: int, which: int) -> None:
        note = self.pick(who, which, "note")
        if note:
            self.write(who, "note", {"text": f"amended {len(self.steps)}"}, note)

    def do_void(self, who: int, which: int) -> None:
        record = self.pick(who, which, "note", "feeding", "colony")
        if record:
            kind = self.phones[who].overlay()[record]["kind"]
            self.write(who, kind, {"gone": True}, record)

    def do_unvoid(self, who: int, which: int) -> None:
        gone = sorted(
            (ack.op["id"], ack.op["kind"])
            for ack in self.acknowledged.values()
            if ack.op["set"].get("gone") is True
        )
        if gone:
            record, kind = gone[which % len(gone)]
            self.write(who, kind, {"gone": False}, record)

    def do_mend(self, who: int) -> None:
        """A person mends a bad value, or sends again what lacked a parent that has come; under a new ``op_id``.

        What lacked the record that is mended goes again with it, as in the phone's own store.
        """
        phone = self.phones[who]
        here = set(phone.rows)
        for op_id, entry in list(phone.outbox.items()):
            if entry["state"] != "rejected" or op_id not in self.rejected:
                continue
            op, answer = entry["op"], entry["answer"]
            values = {**op["set"], "queens": 1} if answer["code"] == "bad_value" else op["set"]
            missing = answer["args"].get("missing")
            if values != op["set"] or (op["id"] if missing == "itself" else missing) in here:
                here.add(op["id"])
                for replaced in phone.mend(op_id, values):
                    _, old = self.rejected.pop(replaced)
                    self.mended.add(old["id"])
                    self.acknowledged.pop(replaced, None)

    def do_bad(self, who: int) -> None:
        self.write(who, "colony", {"name": "bad", "queens": -1})

    # -- what phones and networks do ---------------------------------------------------------------

    def do_sync(self, who: int) -> None:
        self.sync(who)

    def do_lose(self, who: int) -> None:
        self.lose = True
        self.sync(who)
        self.lose = False

    def do_double(self, who: int) -> None:
        self.double = True
        self.sync(who)
        self.double = False

    def do_late(self, which: int) -> None:
        """A request that was sent long ago arrives (again); nobody listens for its answer."""
        if self.sent:
            device, body = self.sent[which % len(self.sent)]
            self.house.send(self.phones[device].device_id, body)

    def do_begin(self, who: int, tab: int) -> None:
        self.tabs[who, tab] = self.phones[who].drain(lambda body: self.network(who, body))

    def do_advance(self, who: int, tab: int, stops: int) -> None:
        for _ in range(stops):
            if not self.advance(who, tab):
                return

    def do_crash(self, who: int, stops: int) -> None:
        """The app is killed: in what it is doing, or after some stops of a sync that it has just begun."""
        running = [key for key in self.tabs if key[0] == who]
        if not running:
            self.do_begin(who, 0)
            self.do_advance(who, 0, stops)
        for key in [key for key in self.tabs if key[0] == who]:
            self.tabs.pop(key).close()  # type: ignore[attr-defined]

    def do_page(self, who: int, rows: int) -> None:
        self.phones[who].page = rows

    def do_skew(self, who: int, hours: int) -> None:
        self.phones[who].clock_ahead_ms = hours * 3_600_000

    def do_upgrade(self, who: int) -> None:
        self.phones[who].schema = 2

    def advance(self, who: int, tab: int) -> bool:
        """Let a tab run to its next stop; say whether it can go on."""
        running = self.tabs.get((who, tab))
        if running is None:
            return False
        try:
            next(running)
        except (StopIteration, Lost, SignedOut):
            self.tabs.pop((who, tab), None)
            return False
        return True

    def sync(self, who: int) -> None:
        with suppress(Lost, SignedOut):
            for _ in self.phones[who].drain(lambda body: self.network(who, body)):
                pass

    def network(self, who: int, body: bytes) -> dict[str, Any]:
        device = self.phones[who].device_id
        self.sent = [*self.sent[-7:], (who, body)]
        self.offered |= {op["op_id"]: op for op in json.loads(body)["ops"] if op["adopt"]}
        status, text = self.house.send(device, body)
        if status == 200 and self.double:
            status, text = self.house.send(device, body)
        if status == 401:
            raise SignedOut
        assert status == 200, text
        if self.lose:
            self.lose = False
            raise Lost
        self.contact_ms[who] = self.house.now_ms
        answer: dict[str, Any] = json.loads(text)
        asked = {op["op_id"]: op for op in json.loads(body)["ops"]}
        for verdict in answer["answers"]:
            op = asked[verdict["op_id"]]
            if verdict["verdict"] == "applied":
                told = Acknowledged(who, op, self.house.now_ms, answer["epoch"], verdict["rev"])
                self.acknowledged.setdefault(op["op_id"], told)
            elif verdict["verdict"] == "rejected":
                self.rejected[op["op_id"]] = (who, op)
        return answer

    # -- what happens to the server ----------------------------------------------------------------

    def do_backup(self) -> None:
        path = self.house.settings.data.parent / f"{self.house.settings.data.name}-{len(self.backups)}.tar.gz"
        backup(self.house.settings, path)
        self.backups.append(Kept(path, self.house.now_ms))

    def do_restore(self, which: int, by_hand: int) -> None:
        """Put a backup back, however old, by the command or by copying the database file; phones pair again."""
        if not self.backups:
            return
        kept = self.backups[which % len(self.backups)]
        self.house.stop()
        restore(self.house.settings, kept.path)
        self.house.start()  # notices by itself if revisions were lost
        if not by_hand:
            with writing() as connection:
                start_epoch(connection, self.house.marks, self.household_id, self.house.now_ms)
        self.restores.append(Restored(kept.at_ms, dict(self.contact_ms)))
        self.let_in()

    def do_days(self, days: int) -> None:
        """Days pass; what went more than 400 days ago is purged, old sessions have ended."""
        self.house.now_ms += days * DAY_MS
        ids = select(records.c.id).where(records.c.household_id == self.household_id)
        with writing() as connection:
            Ledger(connection, self.household_id)
            before = set(connection.scalars(ids))
            purge_gone(connection, self.household_id, self.house.now_ms)
            self.purged |= before - set(connection.scalars(ids))
        self.let_in()

    def do_revoke(self, who: int) -> None:
        if len(self.revoked) < len(self.phones) - 2:
            self.revoked.add(who)
            device = self.phones[who].device_id
            self.house.revocations.add("device", self.household_id, device, self.house.now_ms)
            with suppress(NotFound), writing() as connection:  # a restore may not know it
                revoke_device(connection, self.household_id, device, self.house.now_ms)

    def let_in(self) -> None:
        """Pair again every phone that was not revoked: a restore or a long time may have ended its session."""
        for who, phone in enumerate(self.phones):
            if who not in self.revoked:
                own = self.pass_id if who == self.stand_in else None
                self.house.let_in(phone.device_id, self.persons[who], own)

    # -- coming to rest

    def settle(self) -> None:
        """Finish what runs, then bring every phone online again and again until nothing changes.

        What still waits for a parent then has lost it to a restore and a revoked phone: when the server's 30 days
        are over, by the clock of a phone that ran a day ahead too, it is refused.
        """
        for who, tab in list(self.tabs):
            while self.advance(who, tab):
                pass
        self.let_in()
        self.rest()
        if any(phone.waiting() for who, phone in enumerate(self.phones) if who not in self.revoked):
            self.house.now_ms += 33 * DAY_MS
            self.rest()

    def rest(self) -> None:
        before = None
        for _ in range(MOST_ROUNDS):
            for who in range(len(self.phones)):
                if who not in self.revoked:
                    self.sync(who)
                    self.do_mend(who)
            with reading() as connection:
                now = connection.execute(
                    select(func.max(records.c.rev)).where(records.c.household_id == self.household_id)
                ).scalar_one()
            if now == before:
                return
            before = now
        raise AssertionError("The household does not come to rest.")

    # -- keeping a run -----------------------------------------------------------------------------

    def close(self) -> None:
        """Throw the backups away."""
        for kept in self.backups:
            kept.path.unlink(missing_ok=True)


def play(world: World, steps: list[list[Any]]) -> None:
    """Take the steps of a saved run and check."""
    for name, *numbers in steps:
        world.step(name, *numbers)
    world.check()
