"""A nudger in a process of its own, for tests that kill it: ``nudger_process URL DATA NOW_MS``."""

from __future__ import annotations

import sys
from pathlib import Path

from flask import Flask
from tests.nudges.support import KEY_ID, LOOPBACK, URL

from broodshelf.nudges.runner import Nudger
from broodshelf.nudges.sender import WebPushSender
from broodshelf.nudges.vapid import load_or_make
from broodshelf.records import database


def main(database_url: str, data: str, now_ms: int) -> None:
    app = Flask("nudger")
    app.config["SQLALCHEMY_DATABASE_URI"] = database_url
    database.prepare(app)
    sender = WebPushSender(LOOPBACK, load_or_make(Path(data), in_use=True), "mailto:keeper@example.org")
    nudger = Nudger(app, sender, key_id=KEY_ID, public_url=URL, clock=lambda: now_ms)
    nudger.tick(now_ms)
    nudger.finish()


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], int(sys.argv[3]))
