"""Several nudgers on one database, killed at random while they send; used by a test and by a longer command."""

from __future__ import annotations

import os
import random
import threading
import time
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import func, select
from tests.nudges.push_service import PushService
from tests.nudges.support import BrowserKeys, Shelf
from tests.support.forked_server import ForkedProcess, forker

from broodshelf.nudges.channels.push.vapid import load_or_make
from broodshelf.nudges.tables import deliveries
from broodshelf.records.database import reading

LEASE_MS = 6000


def wait_for(what: Callable[[], bool], seconds: float = 20) -> None:
    deadline = time.monotonic() + seconds
    pause = threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(0.01)


@dataclass(frozen=True)
class Account:
    """What came of it. ``messages``: how many had to arrive; ``repeats``: requests beyond one for each."""

    kills: int
    messages: int
    lost: int
    repeats: int
    states: dict[str, int]


class Killing:
    """Households in which every keeper but one hears of each leak, and the nudgers that tell them."""

    def __init__(
        self, shelf: Shelf, service: PushService, data: Path, *, houses: int, keepers: int, seed: int
    ) -> None:
        self.service, self.data, self.random = service, data, random.Random(seed)
        self.keepers, self.expected, self.kills = keepers, 0, 0
        self.homes: list[tuple[Shelf, str]] = []
        self.shelf = shelf
        keys = BrowserKeys()
        for house in range(houses):
            home = shelf if house == 0 else Shelf(shelf.app, shelf.now_ms, data)
            flagger = home.person("Mira", listens=False)
            for number in range(keepers):
                home.listen(home.person("k", listens=False), service.url(f"/ok/{house}/{number}"), keys)
            self.homes.append((home, home.colony(flagger)))
            home.flagger = flagger  # type: ignore[attr-defined]
        load_or_make(data, in_use=False)
        self.started_s = time.time()
        self.processes: list[ForkedProcess] = []

    def leak_everywhere(self) -> None:
        """One more leak in every household: a message to each keeper."""
        for home, colony_id in self.homes:
            home.log(home.flagger, "fault", {"colony_id": colony_id, "fault": "leak"})  # type: ignore[attr-defined]
        self.expected += len(self.homes) * self.keepers

    def start(self) -> None:
        url = self.shelf.app.config["SQLALCHEMY_DATABASE_URI"]
        url = url if isinstance(url, str) else url.render_as_string(hide_password=False)
        told = [url, str(self.data), str(self.shelf.now_ms), str(self.started_s), str(LEASE_MS)]
        log = self.data / "nudger.log"
        self.processes.append(forker().fork("tests.nudges.nudger_process", told, os.environ, log))

    def kill_one(self) -> None:
        """Kill a random one after a random number of further messages, and start another in its place."""
        wanted = len(self.service.taken) + self.random.randint(5, 60)
        wait_for(lambda: len(self.service.taken) >= min(wanted, self.expected), 120)
        process = self.processes.pop(self.random.randrange(len(self.processes)))
        process.kill()
        process.wait(10)
        self.kills += 1
        self.start()

    def stop(self) -> None:
        for process in self.processes:
            process.kill()
            process.wait(10)

    def sent(self) -> int:
        with reading() as connection:
            query = select(func.count()).select_from(deliveries).where(deliveries.c.state == "sent")
            return connection.scalar(query) or 0

    def account(self) -> Account:
        """Count; a message is a phone and a ``Topic``, which names person, date and slot."""
        requests = Counter((taken.path, taken.headers["Topic"]) for taken in self.service.taken)
        with reading() as connection:
            query = select(deliveries.c.state, func.count()).group_by(deliveries.c.state)
            states = {row[0]: row[1] for row in connection.execute(query)}
        return Account(
            self.kills,
            self.expected,
            self.expected - len(requests),
            sum(requests.values()) - len(requests),
            states,
        )
