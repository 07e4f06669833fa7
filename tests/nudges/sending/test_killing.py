"""Nudgers killed at random, on both databases. The longer run: ``python -m tests.bench.killed_nudgers``."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.nudges.killing import Killing, wait_for
from tests.nudges.push_service import PushService
from tests.nudges.support import Shelf

pytestmark = pytest.mark.long


def test_nudgers_killed_at_random_lose_nothing_and_repeat_at_most_one_a_kill(shelf: Shelf, tmp_path: Path):
    with PushService() as service:
        run = Killing(shelf, service, tmp_path, houses=8, keepers=40, seed=7)
        run.leak_everywhere()
        try:
            for _ in range(3):
                run.start()
            for _ in range(4):
                run.kill_one()
            wait_for(lambda: run.sent() == run.expected, 120)
        finally:
            run.stop()
        account = run.account()

    assert account.lost == 0
    assert account.states == {"sent": 320}
    assert account.repeats <= account.kills
