"""Sending what waits: lanes for each push host, so that a slow or silent one holds up nobody else.

A host that answers quickly is best served by one lane, because encryption keeps a processor busy; one that is
slow gets more, because its lanes only wait. Killed in the middle, a process repeats at most one message a lane.
"""

from __future__ import annotations

import time
import uuid
from collections import Counter
from collections.abc import Callable
from threading import Condition, Thread
from typing import Final

from flask import Flask

from ...logs import say_failure
from ...records.database import reading, writing
from ...records.home.port import Taken
from .. import messages
from ..channels.channel import Channels, Delivery
from ..channels.outcome import Outcome, Refused, RetryLater, Sent
from ..claimed import Claimed
from ..messages import Message
from ..outcomes.marks import Marks
from ..outcomes.measures import Measures
from .queue import claim, release, waiting_hosts

BATCH: Final = 50
QUICK_BATCH: Final = 200
SLOW_BATCH: Final = 12
"""Messages claimed at once: of a host that is not known yet; of a quick one, so that claiming costs little; of a
slow one, so that its many lanes end together."""
LANES_PER_HOST: Final = 48
MOST_LANES: Final = 120
"""Of all hosts together; a host without any may open one beyond that, so that none waits for another."""
QUICK_MS: Final = 30.0
MS_PER_LANE: Final = 2.5
"""A host that takes longer than ``QUICK_MS`` to answer is given a lane for each 2.5 ms of it: 100 ms, 40 lanes."""
TRIED: Final = 3
"""After so many messages of a batch a lane knows how long the host takes."""
GIVE_BACK_AFTER_S: Final = 40
"""A batch that takes longer gives the rest back before its lease of 60 s runs out."""


class Lanes:
    """The sending threads of one process."""

    def __init__(
        self, app: Flask, channels: Channels, public_url: str, journal: Taken, measures: Measures
    ) -> None:
        self._app, self._channels, self._public_url = app, channels, public_url
        self._journal, self._measures = journal, measures
        self._owner = str(uuid.uuid4())
        self._marks = Marks(self._owner)
        self._busy: Counter[str] = Counter()
        self._answer_ms: dict[str, float] = {}
        self._changed = Condition()
        self._closing = False

    def open(self, now_ms: int) -> None:
        """Start as many lanes as the waiting messages need. Needs an application context; does not wait."""
        with reading() as connection:
            hosts = waiting_hosts(connection, now_ms)
        for host, count in hosts.items():
            self._widen(host, -(-count // SLOW_BATCH), now_ms)

    def finish(self) -> None:
        """Wait until every lane is empty."""
        with self._changed:
            self._changed.wait_for(lambda: not self._busy.total())

    def close(self) -> None:
        """Finish the messages that were begun and end the threads."""
        self._closing = True
        self.finish()
        self._journal.close()

    def _widen(self, host: str, wanted: int, now_ms: int) -> None:
        answer_ms = self._answer_ms.get(host, 0.0)
        most = 1 if answer_ms < QUICK_MS else min(LANES_PER_HOST, round(answer_ms / MS_PER_LANE))
        with self._changed:
            while not self._closing and self._busy[host] < min(wanted, most):
                if self._busy.total() >= MOST_LANES and self._busy[host]:
                    return
                self._busy[host] += 1
                Thread(target=self._lane, args=(host, now_ms), name=f"nudges to {host}", daemon=True).start()

    def _lane(self, host: str, now_ms: int) -> None:
        try:
            self._run(host, now_ms)
        except Exception as error:  # noqa: BLE001 - the next tick opens the lane again
            say_failure("sending failed", error)
        finally:
            with self._changed:
                self._busy[host] -= 1
                self._changed.notify_all()

    def _run(self, host: str, start_ms: int) -> None:
        """Send a host's messages, batch after batch, until none is left or the host wants a pause."""
        began = time.monotonic()

        def now_ms() -> int:
            return start_ms + round((time.monotonic() - began) * 1000)

        with self._app.app_context():
            try:
                while not self._closing:
                    most = self._batch(host)
                    with writing() as connection:
                        batch = claim(connection, self._owner, host, now_ms(), most)
                    if not batch or not self._send_all(batch, now_ms, more=len(batch) == most):
                        return
            finally:
                self._marks.write()

    def _batch(self, host: str) -> int:
        answer_ms = self._answer_ms.get(host)
        if answer_ms is None:
            return BATCH
        return QUICK_BATCH if answer_ms < QUICK_MS else SLOW_BATCH

    def _send_all(self, batch: list[Claimed], now_ms: Callable[[], int], *, more: bool) -> bool:
        """Send a batch; return False when the host should be left alone. ``more``: others wait behind it."""
        began = time.monotonic()
        arrived = self._journal.among([m.id for m in batch if m.attempts > 1])
        for number, message in enumerate(batch, 1):
            outcome = Sent() if message.id in arrived else self._send(message, now_ms())
            self._marks.add(message, outcome, now_ms())
            self._measures.attempted(message.host, outcome, message.due_ms, now_ms())
            if number == TRIED and more:  # a slow host is not crawled through batch by batch
                self._widen(message.host, LANES_PER_HOST, now_ms())
            pause = isinstance(outcome, RetryLater) and outcome.vendor
            if pause or time.monotonic() - began > GIVE_BACK_AFTER_S or self._closing:
                self._marks.write()
                with writing() as connection:
                    release(connection, batch[number:], self._owner, now_ms())
                return not pause
        return True

    def _send(self, claimed: Claimed, now_ms: int) -> Outcome:
        try:
            message = self._message(claimed)
        except Exception as error:  # noqa: BLE001 - one message that cannot be made must not hold up the rest
            say_failure("message failed", error)
            return Refused("broken")
        useful_s = (claimed.useless_ms - now_ms) // 1000
        delivery = Delivery(claimed.id, message, useful_s, claimed.urgent, claimed.topic)
        began = time.monotonic()
        try:
            outcome = self._channels.send(claimed.to, delivery, now_ms)
        except ValueError as error:  # a text that cannot be written down for this channel
            say_failure("message failed", error)
            return Refused("broken")
        if isinstance(outcome, Sent):
            self._journal.taken(claimed.id)
        took_ms = (time.monotonic() - began) * 1000
        before_ms = self._answer_ms.get(claimed.host, took_ms)
        self._answer_ms[claimed.host] = 0.8 * before_ms + 0.2 * took_ms
        return outcome

    def _message(self, claimed: Claimed) -> Message:
        if claimed.notice is not None:
            return messages.of_notice(claimed.notice, self._public_url, claimed.language)
        if claimed.nudge_id is None:
            return messages.of_test(self._public_url, claimed.language)
        told = messages.of_round(claimed.items, claimed.nudge_id, self._public_url, claimed.language)
        return messages.in_brief(told) if claimed.short else told
