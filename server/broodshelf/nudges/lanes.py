"""Sending what waits: a few lanes for each push host, so that a slow or silent one holds up nobody else."""

from __future__ import annotations

import logging
import time
import uuid
from collections import Counter
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor, wait
from functools import partial
from threading import Lock
from typing import Final

from flask import Flask

from ..logs import say
from ..records.database import reading, writing
from .answers import Outcome, Refused, RetryLater
from .grouping import compose, compose_short, compose_test
from .queue import Claimed, claim, mark, release, waiting_hosts
from .sender import Message, Sender, topic_of

BATCH: Final = 10
LANES_PER_HOST: Final = 4
MOST_LANES: Final = 20
GIVE_BACK_AFTER_S: Final = 40
"""A batch that takes longer gives the rest back before its lease of 60 s runs out."""


class Lanes:
    """The sending threads of one process."""

    def __init__(self, app: Flask, sender: Sender, public_url: str) -> None:
        self._app, self._sender, self._public_url = app, sender, public_url
        self._owner = str(uuid.uuid4())
        self._threads = ThreadPoolExecutor(MOST_LANES, thread_name_prefix="nudge-lane")
        self._busy: Counter[str] = Counter()
        self._running: set[Future[None]] = set()
        self._lock = Lock()

    def open(self, now_ms: int) -> None:
        """Start as many lanes as the waiting messages need. Needs an application context; does not wait."""
        with reading() as connection:
            hosts = waiting_hosts(connection, now_ms)
        for host, count in hosts.items():
            for _ in range(-(-count // BATCH)):
                with self._lock:
                    if self._busy[host] >= LANES_PER_HOST or len(self._running) >= MOST_LANES:
                        break
                    self._busy[host] += 1
                    lane = self._threads.submit(self._run, host, now_ms)
                    self._running.add(lane)
                lane.add_done_callback(partial(self._close_lane, host))

    def finish(self) -> None:
        """Wait until every lane is empty."""
        while True:
            with self._lock:
                running = set(self._running)
            if not running:
                return
            wait(running, timeout=0.05)

    def close(self) -> None:
        """Finish what was begun and end the threads."""
        self._threads.shutdown(wait=True, cancel_futures=True)

    def _close_lane(self, host: str, lane: Future[None]) -> None:
        with self._lock:
            self._busy[host] -= 1
            self._running.discard(lane)
        if not lane.cancelled() and (error := lane.exception()) is not None:
            say("sending failed", logging.ERROR, error=type(error).__name__)
            logging.getLogger("broodshelf").error("traceback of a lane", exc_info=error)

    def _run(self, host: str, start_ms: int) -> None:
        """Send a host's messages, batch after batch, until none is left or the host wants a pause."""
        began = time.monotonic()

        def now_ms() -> int:
            return start_ms + round((time.monotonic() - began) * 1000)

        with self._app.app_context():
            while True:
                with writing() as connection:
                    batch = claim(connection, self._owner, host, now_ms(), BATCH)
                if not batch or not self._send_all(batch, now_ms):
                    return

    def _send_all(self, batch: list[Claimed], now_ms: Callable[[], int]) -> bool:
        """Send a batch; return False when the host should be left alone."""
        began = time.monotonic()
        for number, message in enumerate(batch, 1):
            outcome = self._send(message, now_ms())
            with writing() as connection:
                mark(connection, message, self._owner, outcome, now_ms())
            pause = isinstance(outcome, RetryLater) and outcome.vendor
            if pause or time.monotonic() - began > GIVE_BACK_AFTER_S:
                with writing() as connection:
                    release(connection, batch[number:], self._owner, now_ms())
                return not pause
        return True

    def _send(self, message: Claimed, now_ms: int) -> Outcome:
        try:
            body = self._body(message)
        except Exception as error:  # noqa: BLE001 - one message that cannot be made must not hold up the rest
            say("message failed", logging.ERROR, error=type(error).__name__)
            return Refused("broken")
        ttl_s = (message.useless_ms - now_ms) // 1000
        return self._sender.send(
            message.target, Message(body, ttl_s, message.urgent, topic_of(message.topic)), now_ms
        )

    def _body(self, message: Claimed) -> bytes:
        if message.nudge_id is None:
            return compose_test(message.id, self._public_url)
        if message.short:
            return compose_short(message.nudge_id, message.id, self._public_url)
        return compose(message.items, message.nudge_id, message.id, self._public_url)
