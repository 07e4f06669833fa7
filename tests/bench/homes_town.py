"""The households of the measurement: a year each, phones that listen for nudges, one household with 10,000 rows."""

from __future__ import annotations

import time
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection, insert, select, text
from tests.nudges.support import BrowserKeys
from tests.support.house import House
from tests.support.machines import noon_zone
from tests.support.many_homes import bytes_of_the_database, copy_household, live_a_year, token_of

from broodshelf.commands import household_list
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.subscriptions import subscribe
from broodshelf.people.secrets import hash_token
from broodshelf.people.sizes import cost_of_a_year, measure
from broodshelf.people.tables import devices
from broodshelf.records.database import db, opened, reading, writing
from broodshelf.records.home.shared import SharedPictures
from broodshelf.records.ids import uuid7
from broodshelf.records.photo_files import PhotoFiles
from broodshelf.records.tables import households, records

SECRET: Final = "an-invented-secret-of-the-measurement"
LARGE_ROWS: Final = 10_000
PULLING: Final = 20


def now_ms() -> int:
    """The real time: the servers that are measured know no other."""
    return time.time_ns() // 1_000_000


def settings_of(folder: Path, url: str) -> dict[str, str]:
    """The settings under which the town is made and served."""
    return {
        "BROODSHELF_DATA": str(folder / "data"),
        "BROODSHELF_DATABASE_URL": url,
        "BROODSHELF_SECRET": SECRET,
        "BROODSHELF_TRUSTED_PROXY_HOPS": "1",
    }


class Town:
    """The app in this process while the households are made; then its database alone."""

    def __init__(self, folder: Path, url: str, count: int, push_url: str) -> None:
        self._house = House(folder / "data", url, secret=SECRET)
        self._house.now_ms = now_ms()
        with self._house as house:
            phone = house.phone()
            phone.write("household", {"zone": noon_zone()}, record_id=house.household_id)
            live_a_year(house, phone)
            key_id = house.app.extensions["broodshelf"].pusher.key.key_id
            listener = {"endpoint": f"{push_url}/ok/", "keys": BrowserKeys().as_json, "key_id": key_id}
            with writing() as connection:
                subscribe(connection, phone.actor, listener, PushHosts(loopback=True), key_id, now_ms())
            empty = bytes_of_the_database()
            begun = time.perf_counter()
            self.households = copy_household(house, count)
            self.made_s = time.perf_counter() - begun
            self.kib_each = (bytes_of_the_database() - empty) / count / 1024
            self.large = copy_household(house, 1)[0]
            self.pulling = self._fill_large()
            with reading() as connection:
                self.rows = int(connection.scalar(text("SELECT count(*) FROM records")) or 0)
            with db.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
                connection.execute(text("VACUUM ANALYZE"))
            colonies = [row["id"] for row in phone.rows().values() if row["kind"] == "colony"]
            self.about: dict[str, Any] = {
                "households": self.households,
                "colonies": colonies,
                "device": phone.device_id,
                "epoch": phone.epoch,
                "cursor": phone.cursor,
                "large": self.large,
                "large_epoch": phone.epoch,
            }

    def _fill_large(self) -> list[str]:
        """Multiply the logs of the large household until it has 10,000 rows; return its new phones."""
        phones = [uuid7(now_ms()) for _ in range(PULLING)]
        own = {"home": self.large}
        same = ", ".join(c.name for c in records.c if c.name not in ("household_id", "id", "rev"))
        with writing() as connection:
            person_id = connection.scalar(
                text("SELECT person_id FROM devices WHERE household_id = :home"), own
            )
            rows = int(
                connection.scalar(text("SELECT count(*) FROM records WHERE household_id = :home"), own) or 0
            )
            rev = int(connection.scalar(text("SELECT rev FROM households WHERE id = :home"), own) or 0)
            connection.execute(
                text(
                    f"INSERT INTO records (household_id, id, rev, {same}) SELECT household_id,"
                    f" gen_random_uuid()::text, :rev + n, {same} FROM (SELECT r.*, row_number() OVER () n"
                    " FROM records r CROSS JOIN generate_series(1, 20)"
                    " WHERE household_id = :home AND kind IN ('feeding', 'check', 'water')) r WHERE n <= :more"
                ),
                {**own, "rev": rev, "more": LARGE_ROWS - rows},
            )
            connection.execute(
                text("UPDATE households SET rev = :rev WHERE id = :home"), {**own, "rev": rev + LARGE_ROWS}
            )
            connection.execute(
                insert(devices),
                [
                    {
                        "household_id": self.large, "id": phone, "person_id": person_id, "role": "keeper",
                        "name": f"phone {phone}", "token_hash": hash_token(token_of(self.large, phone)),
                        "created_ms": now_ms(), "last_seen_ms": now_ms(),
                    }
                    for phone in phones
                ],
            )  # fmt: skip
        return phones


class Database:
    """What is asked of the database itself while the servers run; as its owner, who is a superuser here."""

    def __init__(self, connection: Any) -> None:
        self._connection = connection

    def _ask(self, statement: str, *parameters: object) -> list[tuple[Any, ...]]:
        return list(self._connection.execute(statement, parameters).fetchall())

    def postmaster(self) -> int:
        """The process of PostgreSQL that started all others."""
        return int(Path(self._ask("SHOW data_directory")[0][0], "postmaster.pid").read_text().split()[0])

    def stale_plans(self) -> int:
        """How many plans would have to be made anew by now."""
        return int(self._ask("SELECT count(*) FROM plan_times WHERE valid_until_ms < %s", now_ms())[0][0])

    def let_all_be_due(self, at_ms: int) -> None:
        """Let every colony's next rounds come at an instant, all in the same one."""
        self._connection.execute(
            "UPDATE occurrences SET at_ms = %s, wake_ms = %s, due_ms = least(due_ms, %s) WHERE state = 'waiting'",
            (at_ms, at_ms, at_ms),
        )

    def taken(self, due_ms: int) -> list[int]:
        """How long each message that was due then had waited when it was accepted, in ms."""
        rows = self._ask(
            "SELECT done_ms - due_ms FROM deliveries WHERE state = 'sent' AND due_ms = %s", due_ms
        )
        return [int(row[0]) for row in rows]

    def waiting(self, due_ms: int) -> int:
        """How many occurrences of then nobody has looked at, and messages that are not sent."""
        unseen = self._ask(
            "SELECT count(*) FROM occurrences WHERE wake_ms = %s AND state = 'waiting'", due_ms
        )
        unsent = self._ask("SELECT count(*) FROM deliveries WHERE state = 'waiting' AND due_ms = %s", due_ms)
        return int(unseen[0][0]) + int(unsent[0][0])

    def whole_reads(self) -> dict[str, tuple[int, int]]:
        """By table: how often it was read from end to end, and how many rows that were."""
        time.sleep(1.5)  # statistics come up to a second late
        rows = self._ask("SELECT relname, seq_scan, seq_tup_read FROM pg_stat_user_tables")
        return {name: (scans, read) for name, scans, read in rows}

    def size(self) -> int:
        """Bytes on the disk."""
        return int(self._ask("SELECT pg_database_size(current_database())")[0][0])


def operators_ms(url: str) -> dict[str, float]:
    """How long the operator's list takes the first time, when all are counted, and then; and the cost of a year."""
    took: dict[str, float] = {}
    with opened(url):
        photos = PhotoFiles(SharedPictures())
        for name, work in {
            "household list, all counted anew": lambda connection: recount_all(connection, photos),
            "household list": lambda connection: household_list.gather(connection),
            "the doctor's cost of a year": lambda connection: cost_of_a_year(connection, now_ms()),
            "the same of all households": lambda connection: cost_of_a_year(connection, now_ms(), most=10**9),
        }.items():
            begun = time.perf_counter()
            with reading() as connection:
                work(connection)
            took[name] = (time.perf_counter() - begun) * 1000
    return took


def recount_all(connection: Connection, photos: PhotoFiles) -> None:
    """Read all rows of all households, as their first count does."""
    measure(connection, photos, connection.scalars(select(households.c.id)).all())
