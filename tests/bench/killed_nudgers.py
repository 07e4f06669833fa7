"""Four nudgers killed at random for a minute on each database: ``python -m tests.bench.killed_nudgers [SECONDS]``.

Every five seconds a leak is reported in each of ten households, so that there is always something in their hands.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

from flask import Flask
from tests.nudges.killing import Killing, wait_for
from tests.nudges.push_service import PushService
from tests.nudges.support import Shelf, ms
from tests.support.households import make_tables
from tests.support.postgresql import shared_cluster

from broodshelf.records import database

MORE_EVERY_S = 5


def run(name: str, url: str, data: Path, seconds: float) -> bool:
    """Kill for so long on one database, print the account; return whether it is as promised."""
    app = Flask("bench")
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    database.prepare(app)
    with app.app_context(), PushService() as service:
        make_tables(database.db.engine)
        shelf = Shelf(app, ms("2026-05-01T12:00"), data)
        killing = Killing(shelf, service, data, houses=10, keepers=40, seed=round(time.time()))
        begun = time.monotonic()
        more_at = 0.0
        try:
            for _ in range(4):
                killing.start()
            while (passed := time.monotonic() - begun) < seconds:
                if passed >= more_at:
                    killing.leak_everywhere()
                    more_at = passed + MORE_EVERY_S
                killing.kill_one()
            wait_for(lambda: killing.sent() == killing.expected, 60)
        finally:
            killing.stop()
            shelf.nudger.close()
        account = killing.account()
        database.db.engine.dispose()
    print(
        f"{name}: {account.messages:,} messages, {account.kills} kills: {account.lost} lost, "
        f"{account.repeats} repeated; states {account.states}"
    )
    return account.lost == 0 and account.repeats <= account.kills


def main(seconds: float) -> int:
    """Run on both databases."""
    with tempfile.TemporaryDirectory() as folder, shared_cluster(Path(folder)) as cluster:
        urls = {"SQLite": f"sqlite:///{Path(folder) / 'shelf.sqlite3'}", "PostgreSQL": cluster.new_database()}
        kept = [run(name, url, Path(folder), seconds) for name, url in urls.items()]
        return 0 if all(kept) else 1


if __name__ == "__main__":
    sys.exit(main(float(sys.argv[1]) if len(sys.argv) > 1 else 60))
