"""A nudger in a process of its own, for tests that kill it.

``nudger_process URL DATA NOW_MS`` ticks once at that instant. With ``STARTED_S LEASE_MS`` it ticks until it is
killed: its clock showed NOW_MS when the machine's showed STARTED_S, and claims run out after LEASE_MS. It keeps
to one lane, as for a push service that answers quickly, however slow a busy machine makes the service look.
"""

from __future__ import annotations

import sys
import threading
import time
from collections.abc import Sequence
from pathlib import Path

from flask import Flask
from tests.nudges.support import URL, real_channels

from broodshelf.nudges.nudger import Nudger
from broodshelf.nudges.sending import lanes, queue
from broodshelf.records import database
from broodshelf.records.home.folder import in_folder

BETWEEN_TICKS_S = 0.1


def main(arguments: Sequence[str]) -> None:
    """Run as the arguments say."""
    url, folder, now, *more = arguments
    run(url, folder, int(now), float(more[0]) if more else None, int(more[1]) if more else queue.LEASE_MS)


def run(database_url: str, data: str, now_ms: int, started_s: float | None, lease_ms: int) -> None:
    app = Flask("nudger")
    app.config["SQLALCHEMY_DATABASE_URI"] = database_url
    database.prepare(app)
    queue.LEASE_MS = lease_ms
    lanes.LANES_PER_HOST = 1
    lanes.GIVE_BACK_AFTER_S = lease_ms / 3000
    nudger = Nudger(
        app, real_channels(Path(data)), public_url=URL, clock=lambda: now_ms, home=in_folder(Path(data))
    )
    if started_s is None:
        nudger.tick(now_ms)
        nudger.finish()
        return
    pause = threading.Event()
    while True:
        nudger.tick(now_ms + round((time.time() - started_s) * 1000))
        pause.wait(BETWEEN_TICKS_S)


if __name__ == "__main__":
    main(sys.argv[1:])
