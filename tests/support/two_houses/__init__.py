"""Two households side by side with everybody who was ever let in, and one of everything that an address can name.

Made through the addresses themselves, on a clock that is turned by hand; then remembered, so that every request of
the matrix and every run of the fuzzer begins with the same rows. What belongs to a household carries its marks:
``Alpha`` or ``Beta`` in every name and text, ``hidden`` in what lies outside the stand-in's pass.
"""

from __future__ import annotations

import dataclasses
from pathlib import Path

from tests.nudges.support import Notebook
from tests.support.two_houses.filling import Filling
from tests.support.two_houses.remembering import Remembering, columns
from tests.support.two_houses.visitors import FAR_ADDRESS, ROLES, UNSAFE, Answer, Visitor

from broodshelf.app import create_app
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.records.database import db
from broodshelf.settings import from_environment

__all__ = [
    "FAR_ADDRESS",
    "ROLES",
    "UNSAFE",
    "Answer",
    "TwoHouses",
    "Visitor",
    "columns",
]


class TwoHouses(Filling, Remembering):
    """``with TwoHouses(folder) as made``: the served app, ``made.visitors`` by role, ``made.reset()``."""

    def __init__(self, folder: Path, database_url: str | None = None) -> None:
        super().__init__()
        given = {"BROODSHELF_DATA": str(folder), "BROODSHELF_METRICS_TOKEN": "the operator's own token"}
        if database_url:
            given["BROODSHELF_DATABASE_URL"] = database_url
        self.settings = from_environment(given)
        self.notebook = Notebook()

    def __enter__(self) -> TwoHouses:
        self.app = create_app(
            self.settings, lambda: self.now_ms, hosts=PushHosts(loopback=True), push_channel=self.notebook
        )
        parts = self.app.extensions["broodshelf"]
        self.app.extensions["broodshelf"] = dataclasses.replace(
            parts,
            pusher=dataclasses.replace(
                parts.pusher, channels=dataclasses.replace(parts.pusher.channels, mail=self.notebook)
            ),
        )
        self.context = self.app.app_context()
        self.context.push()
        self.fill()
        self.remember()
        return self

    def __exit__(self, *_: object) -> None:
        self.let_go()
        db.engine.dispose()
        self.context.pop()
