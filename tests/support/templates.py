"""Databases made once a test run, on either engine, by whichever process asks first, and copied for each test.

The copy is what the test would have made itself: the migrations have tests of their own.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from flask import Flask
from sqlalchemy import Engine
from tests.support.households import make_tables
from tests.support.once_a_run import made_once
from tests.support.postgresql import Cluster

from broodshelf import migrations
from broodshelf.records import database

SQLITE_FILE = "broodshelf.sqlite3"
"""The name in a data folder, as the settings have it."""


class Templates:
    """Copies of databases without rows, in the ``folder`` of the run.

    ``cluster`` is asked for when the first PostgreSQL database is wanted.
    """

    def __init__(self, folder: Path, cluster: Callable[[], Cluster]) -> None:
        self._folder, self._cluster = folder, cluster

    def with_tables(self, engine: str, folder: Path) -> str:
        """Return the URL of a new database with the tables of every room that is imported."""
        return self._copy(engine, folder, f"tables{len(database.metadata.tables)}", make_tables)

    def of_an_app(self, engine: str, folder: Path) -> str:
        """Return the URL of a new database as the first start of an app with this data folder leaves it."""
        return self._copy(engine, folder, "migrated", migrations.upgrade)

    def _copy(self, engine: str, folder: Path, what: str, make: Callable[[Engine], None]) -> str:
        if engine == "postgresql":
            return self._copy_in_the_cluster(self._cluster(), what, make)

        def fill(file: Path) -> None:
            with engine_of(f"sqlite:///{file}") as opened:
                make(opened)

        folder.mkdir(exist_ok=True)
        shutil.copy(made_once(self._folder / f"{what}.sqlite3", fill), folder / SQLITE_FILE)
        return f"sqlite:///{folder / SQLITE_FILE}"

    def _copy_in_the_cluster(self, cluster: Cluster, what: str, make: Callable[[Engine], None]) -> str:
        def fill(name_of_it: Path) -> None:
            url = cluster.new_database()
            with engine_of(url) as opened:
                make(opened)
            name_of_it.write_text(url)

        # beside the cluster and gone with it: a run may have another one later
        return cluster.new_database(made_once(cluster.templates / what, fill).read_text())


@contextmanager
def engine_of(url: str) -> Iterator[Engine]:
    """Open a database as the app does and let go of it at the end."""
    app = Flask("template")
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    database.prepare(app)
    with app.app_context():
        yield database.db.engine
        database.db.engine.dispose()
