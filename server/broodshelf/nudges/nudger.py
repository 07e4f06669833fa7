"""The nudger: a tick every few seconds that renews stale plans, tells what is due and sends the messages.

Everything but the beat (``ticking``) is in the database, so any number of nudgers may run, embedded
in ``serve`` or as processes of their own, and one that dies is made good by the next tick of any.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from typing import Final

from flask import Flask
from sqlalchemy import Connection, select, update

from ..logs import say, say_failure
from ..model.gauges import HOUR_MS
from ..records.database import is_about_one_row, reading, writing
from ..records.home.port import Home
from ..records.soundness import Soundness
from ..records.store import Ledger
from ..records.trouble import AWAY_AGAIN_S
from ..rounds.days_over import households_with_days_over, write_days_over
from ..rounds.recompute import RETRY_MS, all_stale, stale, stale_households
from ..rounds.sensed import LOOK_MS, mark_overtaken, overtaken_households
from ..rounds.tables import occurrences, plan_times
from ..rounds.zone_data import zones_mark
from ..sensing.sensors import households_with_trouble
from ..sensing.trouble import SILENT_MS
from .channels.channel import Channels
from .outcomes.measures import Measures
from .sending.lanes import Lanes
from .tables import nudger_state, put_row
from .telling.due import due_households
from .telling.sensors import tell_troubles
from .telling.tell import tell_due
from .ticking import Ticking
from .tidying import tidy_some

AT_ONCE: Final = 1000
"""Rows looked at in one go; a tick takes as many goes as it needs."""
NOTED_EVERY_MS: Final = 15_000
SOON_MS: Final = 1000 * AWAY_AGAIN_S
SET_BACK_MS: Final = HOUR_MS
"""A clock that jumps back further than this makes all plans anew; less is what two machines may differ by."""


class Nudger:
    """Ticks for one process. A slow push service holds up its own lanes only."""

    def __init__(
        self,
        app: Flask,
        channels: Channels,
        *,
        public_url: str,
        clock: Callable[[], int],
        home: Home,
        measures: Measures | None = None,
    ) -> None:
        self._app, self._clock, self._key_ids = app, clock, channels.key_ids
        self._journal = home.taken
        self._soundness = Soundness(home.kept)
        self._lanes = Lanes(app, channels, public_url, self._journal, measures or Measures())
        self._zones_looked_at = False
        self._sensors_looked_ms = -LOOK_MS
        self._beat: Callable[[], None] = lambda: None

    def start(self) -> Callable[[], None]:
        """Tick in a thread of this process; return what stops it."""
        ticking = self._ticking()
        ticking.start()

        def stop() -> None:
            ticking.stop()
            self.close()

        return stop

    def run(self) -> None:
        """Tick in this thread until the process is told to stop."""
        try:
            self._ticking().run()
        except (KeyboardInterrupt, SystemExit):
            self.close()

    def tick(self, now_ms: int) -> None:
        """Do all that is due now. Messages are sent in lanes of their own; ``finish`` waits for them."""
        with self._app.app_context():
            _remember_tick(now_ms)
            self._look_at_zones()
            self._look_at_sensors(now_ms)
            self._each(stale_households, self._renew, now_ms)
            self._tell_all(now_ms)
            self._lanes.open(now_ms)
            self._look_whether_sound(now_ms)
            if tidy_some(now_ms):  # last: whatever is due goes before it
                self._journal.tidy(now_ms)

    def _look_at_sensors(self, now_ms: int) -> None:
        """Every ten minutes: days that are over are written, and plans whose alarm began or ended are made anew."""
        if 0 <= now_ms - self._sensors_looked_ms < LOOK_MS:
            return
        self._sensors_looked_ms = now_ms
        with reading() as connection:
            heard = set(overtaken_households(connection, now_ms))
            wrong = set(households_with_trouble(connection, now_ms - SILENT_MS))
            over = households_with_days_over(connection, now_ms)
        for household_id in sorted(heard | wrong | over):
            self._beat()
            try:
                with writing() as connection:
                    if household_id in over:
                        write_days_over(connection, household_id, now_ms)
                    if household_id in heard:
                        mark_overtaken(connection, household_id, now_ms)
                    if household_id in wrong:
                        tell_troubles(connection, household_id, self._key_ids, now_ms)
            except Exception as error:  # noqa: BLE001 - whatever it is, the other households come first
                say_failure("looking at sensors failed", error, household_id=household_id)

    def _look_whether_sound(self, now_ms: int) -> None:
        """Once a day: look through the database; what is wrong is logged here and told on keepers' phones."""
        if not self._soundness.is_due(now_ms):
            return
        damage = self._soundness.look(now_ms)
        if damage is not None:
            say("the database is damaged; put a backup in its place", logging.ERROR, found=damage)

    def finish(self) -> None:
        """Wait until every message that was begun is sent or put off."""
        self._lanes.finish()

    def close(self) -> None:
        """Finish what was begun and end the sending threads."""
        self._lanes.close()

    def _ticking(self) -> Ticking:
        ticking = Ticking(self._tick_now)
        self._beat = ticking.beat
        return ticking

    def _tick_now(self) -> None:
        self.tick(self._clock())

    def _each(
        self,
        find: Callable[[Connection, int, int], list[str]],
        work: Callable[[str, int], None],
        now_ms: int,
    ) -> None:
        """Do ``work`` once for every household that ``find`` names; one that fails does not stop the others."""
        seen: set[str] = set()
        while True:
            with reading() as connection:
                found = [h for h in find(connection, now_ms, AT_ONCE) if h not in seen]
            if not found:
                return
            for household_id in found:
                self._beat()
                seen.add(household_id)
                try:
                    work(household_id, now_ms)
                except Exception as error:  # noqa: BLE001 - whatever it is, the other households come first
                    self._put_aside(household_id, error, now_ms)
            self._lanes.open(now_ms)  # the first messages need not wait for the last household

    def _look_at_zones(self) -> None:
        """Once a process: if the world's zone rules are others than at the last start, make all plans anew."""
        if self._zones_looked_at:
            return
        mark = zones_mark()
        with writing() as connection:
            before = connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "zones"))
            if before != mark:
                put_row(connection, nudger_state, {"name": "zones"}, {"at_ms": mark})
            if before not in (None, mark):
                say("the rules of time zones changed")
                all_stale(connection)
        self._zones_looked_at = True

    def _renew(self, household_id: str, now_ms: int) -> None:
        with writing() as connection:
            ledger = Ledger(connection, household_id)
            stale(ledger, now_ms)
            ledger.flush()

    def _tell_all(self, now_ms: int) -> None:
        """Make what is due, many households at a time; if that fails, one by one, so that the others are told."""
        seen: set[str] = set()
        while True:
            with reading() as connection:
                found = [h for h in due_households(connection, now_ms, AT_ONCE) if h not in seen]
            if not found:
                return
            self._beat()
            seen.update(found)
            try:
                self._tell(found, now_ms)
            except Exception:  # noqa: BLE001 - whose fault it is, the next try shows
                for household_id in found:
                    try:
                        self._tell([household_id], now_ms)
                    except Exception as error:  # noqa: BLE001 - whatever it is, the other households come first
                        self._put_aside(household_id, error, now_ms)
            self._lanes.open(now_ms)  # the first messages need not wait for the last household

    def _tell(self, household_ids: list[str], now_ms: int) -> None:
        with writing() as connection:
            made = tell_due(connection, household_ids, self._key_ids, now_ms)
        if made:
            say("nudges made", households=len(made), count=sum(made.values()))

    def _put_aside(self, household_id: str, error: Exception, now_ms: int) -> None:
        """Let a household that fails rest for an hour, so that it cannot keep the nudger busy with failing.

        Where it is the store that failed, it rests for moments only.
        """
        say_failure("nudges failed", error, household_id=household_id)
        later_ms = now_ms + (RETRY_MS if is_about_one_row(error) else SOON_MS)
        with writing() as connection:
            connection.execute(
                update(plan_times)
                .where(plan_times.c.household_id == household_id, plan_times.c.valid_until_ms <= now_ms)
                .values(valid_until_ms=later_ms)
            )
            connection.execute(
                update(occurrences)
                .where(occurrences.c.household_id == household_id, occurrences.c.wake_ms <= now_ms)
                .values(wake_ms=later_ms)
            )


def _remember_tick(now_ms: int) -> None:
    """Note the tick at most every 15 s: a small machine's card need not be written every 5 s."""
    with reading() as connection:
        last_ms = connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tick"))
    if last_ms is None or not 0 <= now_ms - last_ms < NOTED_EVERY_MS:
        with writing() as connection:
            if last_ms is not None and last_ms - now_ms > SET_BACK_MS:
                say("the clock was set back", logging.WARNING, seconds=(last_ms - now_ms) // 1000)
                all_stale(connection)
            put_row(connection, nudger_state, {"name": "tick"}, {"at_ms": now_ms})
