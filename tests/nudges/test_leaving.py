"""A nudger that is told to stop finishes what is on the line, however often it is told. On both databases."""

from __future__ import annotations

import signal
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import select
from tests.nudges.killing import wait_for
from tests.nudges.push_service import PushService
from tests.nudges.support import Shelf, real_channels

from broodshelf.commands.serving import end_when_told
from broodshelf.nudges.tables import deliveries
from broodshelf.records.database import reading

STOPS = (signal.SIGTERM, signal.SIGINT)


@pytest.fixture
def handlers() -> Iterator[None]:
    """Those of the test run, again after it."""
    before = {number: signal.getsignal(number) for number in STOPS}
    yield
    for number, handler in before.items():
        signal.signal(number, handler)


@pytest.mark.usefixtures("handlers")
@pytest.mark.parametrize("told", [(signal.SIGTERM, signal.SIGTERM), (signal.SIGINT, signal.SIGTERM)])
def test_told_twice_it_takes_the_answer_to_what_it_has_sent(shelf: Shelf, tmp_path: Path, told):
    """systemd tells all processes of a service, and then its supervisor tells them once more; so does Ctrl-C."""
    shelf.colony(shelf.person("Mira", listens=False))
    with PushService() as service:
        shelf.listen(shelf.person("Ada", listens=False), service.url("/slow/1"))
        shelf.at("2026-05-04T18:30")
        nudger = shelf.new_nudger(real_channels(tmp_path))
        this = threading.get_ident()

        def tell() -> None:
            wait_for(lambda: bool(service.taken))
            signal.pthread_kill(this, told[0])
            wait_for(lambda: nudger._lanes._closing)
            signal.pthread_kill(this, told[1])
            service.release.set()

        telling = threading.Thread(target=tell)
        end_when_told()
        telling.start()
        nudger.run()
        telling.join()

    with reading() as connection:
        assert connection.scalars(select(deliveries.c.state)).all() == ["sent"]
