"""What happens to the server: backups, restores, years, phones that are revoked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from typing import Any

from sqlalchemy import or_, select
from tests.support.world.state import Kept, Restored, State

from broodshelf.errors import NotFound
from broodshelf.keeping.backup import backup, restore
from broodshelf.model.gauges import DAY_MS
from broodshelf.people.devices import revoke_device
from broodshelf.records.database import reading, writing
from broodshelf.records.epochs import start_epoch
from broodshelf.records.purge import purge_gone
from broodshelf.records.store import Ledger
from broodshelf.records.tables import operations, records, revisions

LONG_AWAY_DAYS = 401


class Server(State):
    """Steps of a world at its server."""

    def do_backup(self) -> None:
        path = self.house.settings.data.parent / f"{self.house.settings.data.name}-{len(self.backups)}.tar.gz"
        backup(self.house.settings, path)
        self.backups.append(Kept(path))

    def do_restore(self, which: int, by_hand: int) -> None:
        """Put a backup back, however old, by the command or by copying the database file; phones pair again."""
        if not self.backups:
            return
        kept = self.backups[which % len(self.backups)]
        with self.being_restored():
            self.house.stop()
            restore(self.house.settings, kept.path)
            self.house.start()  # notices by itself if revisions were lost
            if not by_hand:
                with writing() as connection:
                    start_epoch(connection, self.house.marks, self.household_id, self.house.now_ms)
        self.let_in()

    @contextmanager
    def being_restored(self) -> Iterator[None]:
        """Remember of the restore that happens inside what it took, and what stood before it."""
        contact_ms, deletions, copies = dict(self.contact_ms), self.deletions(), self.copies()
        yield
        self.note_epoch()
        self.restores.append(Restored(self.taken(), contact_ms, deletions, copies))

    def taken(self) -> dict[str, int]:
        """Return of each acknowledged operation that the server does not have when its phone last heard of it."""
        o = operations.c
        applied = select(o.op_id).where(o.household_id == self.household_id, o.verdict == "applied")
        with reading() as connection:
            stored = set(connection.scalars(applied))
        return {op_id: self.heard_ms[op_id] for op_id in self.acknowledged.keys() - stored}

    def deletions(self) -> Sequence[Any]:
        """Return the lines of the history that tell of deletions."""
        tells = or_(revisions.c.asked.contains('"gone"'), revisions.c.lost.contains('"gone"'))
        mine = revisions.c.household_id == self.household_id
        with reading() as connection:
            return connection.execute(select(revisions).where(mine, tells).order_by(revisions.c.rev)).all()

    def copies(self) -> dict[int, set[str]]:
        """Return the ids of the records that each keeper's phone holds."""
        disks = {who: phone.disk() for who, phone in enumerate(self.phones) if who != self.stand_in}
        return {who: disk["rows"].keys() | disk["gone"].keys() for who, disk in disks.items()}

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
