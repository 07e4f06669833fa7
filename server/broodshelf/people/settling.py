"""Making a database what this server needs: its schema, its epochs, and what was ended in it.

A start does it, and so does a server that finds under way that its database was put back or was away.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from flask import Flask
from sqlalchemy import Connection, Engine

from .. import migrations
from ..logs import say, say_failure
from ..records import database
from ..records.ended import Revocations
from ..records.epochs import Marks
from ..records.home.alone import Background, alone
from ..records.home.port import Endings
from ..records.home.restored import identity, notice
from ..records.loss import refuse_lost_households
from .ledger import Unsubscribe, apply_revocations

LOOK_S: Final = 0.5


@dataclass(frozen=True, slots=True)
class Witness:
    """What one machine knows of its database from before: how far it was, and what was ended in it."""

    marks: Marks
    revocations: Revocations
    endings: Endings
    unsubscribe: Unsubscribe

    def end_again(self, connection: Connection) -> None:
        """End in the database what was ended before it was put back."""
        apply_revocations(connection, self.revocations, self.endings, self.unsubscribe)


def settle(engine: Engine, witness: Witness, now_ms: int) -> None:
    """Bring the schema forward, notice what was put back, end again what had ended. One server at a time.

    Raises ``DatabaseLost`` for a database without any household where this machine knows of some.
    """
    migrations.upgrade(engine)
    with database.reading() as connection:
        refuse_lost_households(connection, witness.marks)
    with database.writing() as connection:
        for household_id in notice(connection, witness.marks, now_ms):
            say("restored database noticed", household_id=household_id)
        witness.end_again(connection)


class Watch(Background):
    """Looks after a shared database for one process: twice a second, whether it is still the same.

    A database that was put back under running servers forgets revoked phones and hands out revisions a second time;
    each server that notices adds what it knows, and the first of them begins new epochs.
    """

    def __init__(self, app: Flask, witness: Witness, clock: Callable[[], int]) -> None:
        self._app, self._witness, self._clock = app, witness, clock
        self._was_away = False
        with app.app_context():
            self._known = self._identity()
        super().__init__("database-watch")

    def go_on(self) -> None:
        """Look until the end; a database that is away is looked at again."""
        while not self.ended.wait(LOOK_S):
            try:
                with self._app.app_context():
                    self.look()
                self._was_away = False
            except Exception as error:  # noqa: BLE001 - a database that is away comes back
                if not self._was_away:
                    say_failure("the database could not be looked at", error)
                self._was_away = True

    def look(self) -> None:
        """Look once; settle a database that is another one, or that was away. Needs an application context."""
        found = self._identity()
        if found == self._known and not self._was_away:
            return
        engine = database.db.engine
        with alone(engine):
            settle(engine, self._witness, self._clock())
        self._known = self._identity()

    @staticmethod
    def _identity() -> str:
        with database.reading() as connection:
            return identity(connection)
