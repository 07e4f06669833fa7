"""A household's world for the proof of sync: the whole app, several phones, and everything that goes wrong.

The phones are the app itself (``phones.py``). Every step is a name and whole numbers, so that a run can be saved as
JSON and played again. ``check`` lets all come to rest and then looks at what must hold (``must_hold.py``), by reading
tables and disks, not by asking the code under test.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import func, select
from tests.support.world.must_hold import MustHold
from tests.support.world.network import Wire
from tests.support.world.server import LONG_AWAY_DAYS, Server

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import reading
from broodshelf.records.tables import records

__all__ = ["LONG_AWAY_DAYS", "World", "play"]
MOST_ROUNDS = 8


class World(Wire, Server, MustHold):
    """What people, networks and servers do, step by step, and what must hold after it."""

    def __init__(self, *arguments: Any, **named: Any) -> None:
        super().__init__(*arguments, **named)
        self.sync(0)

    def step(self, name: str, *numbers: int) -> None:
        """Take one step; a second passes with it."""
        self.steps.append([name, *numbers])
        self.house.now_ms += 1000
        getattr(self, f"do_{name}")(*numbers)

    def settle(self) -> None:
        """Finish what runs, then bring every phone online again and again until nothing changes.

        What still waits for a parent then has lost it to a restore and a revoked phone: when the server's 30 days
        are over, by the clock of a phone that ran a day ahead too, it is refused.
        """
        for who, tab in list(self.tabs):
            while self.advance(who, tab):
                pass
        self.let_in()
        if self.rest():
            self.house.now_ms += 33 * DAY_MS
            self.rest()

    def rest(self) -> bool:
        """Sync every phone until the server has nothing new; say whether operations wait still."""
        before = None
        for _ in range(MOST_ROUNDS):
            waiting = 0
            for who in range(len(self.phones)):
                if who not in self.revoked:
                    waiting += self.sync(who).stop["waiting"] + self.do_mend(who)
            with reading() as connection:
                now = connection.execute(
                    select(func.max(records.c.rev)).where(records.c.household_id == self.household_id)
                ).scalar_one()
            if now == before:
                return waiting > 0
            before = now
        raise AssertionError("The household does not come to rest.")


def play(world: World, steps: list[list[Any]]) -> None:
    """Take the steps of a saved run and check."""
    for name, *numbers in steps:
        world.step(name, *numbers)
    world.check()
