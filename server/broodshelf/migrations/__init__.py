"""Schema migrations, run by alembic at every start and by ``broodshelf migrate``."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Literal

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine

from ..logs import say


def config(engine: Engine) -> Config:
    """Return alembic's configuration for an engine; there is no ini file."""
    made = Config()
    made.set_main_option("script_location", _place())
    made.attributes["engine"] = engine
    return made


def stands(connection: Connection) -> Literal["behind", "here", "ahead"]:
    """Say where the schema of a database stands; ahead, where a newer version has brought it further than we know."""
    at = MigrationContext.configure(connection).get_current_revision()
    head, known = _known()
    if at == head:
        return "here"
    return "behind" if at is None or at in known else "ahead"


@cache
def _known() -> tuple[str | None, frozenset[str]]:
    """Return the newest revision that there is a migration to, and all of them."""
    made = Config()
    made.set_main_option("script_location", _place())
    scripts = ScriptDirectory.from_config(made)
    return scripts.get_current_head(), frozenset(each.revision for each in scripts.walk_revisions())


def _place() -> str:
    return str(Path(__file__).parent).replace("%", "%%")


def upgrade(engine: Engine) -> None:
    """Bring the database behind ``engine`` to the present schema.

    One that several machines share may be ahead while they are replaced one after the other: migrations leave what
    the version before needs, so it is served as it is.
    """
    with engine.connect() as connection:
        where = stands(connection)
    if where == "here":
        return
    if where == "ahead" and engine.dialect.name == "postgresql":
        say("the database is ahead of this version; another machine is newer")
        return
    command.upgrade(config(engine), "head")
