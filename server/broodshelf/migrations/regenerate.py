"""A tool for developers: ``python -m broodshelf.migrations.regenerate "what changed"`` drafts a migration.

It compares every room's tables with a fresh database at the present head. Read the draft before you keep it.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

from alembic import command
from flask import Flask

from ..records import database
from . import config, upgrade


def main(message: str) -> None:
    """Draft a migration with this message under ``versions/``."""
    with tempfile.TemporaryDirectory() as folder:
        app = Flask("regenerate")
        app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{Path(folder) / 'empty.sqlite3'}"
        database.prepare(app)
        with app.app_context():
            upgrade(database.db.engine)
            made = config(database.db.engine)
            number = len(list((Path(__file__).parent / "versions").glob("[0-9]*.py"))) + 1
            command.revision(made, message, autogenerate=True, rev_id=f"{number:04d}")
            database.db.engine.dispose()


if __name__ == "__main__":
    main(" ".join(sys.argv[1:]) or "change")
