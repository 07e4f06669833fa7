"""Schema migrations, run by alembic at every start and by ``broodshelf migrate``."""

from __future__ import annotations

from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Engine


def config(engine: Engine) -> Config:
    """Return alembic's configuration for an engine; there is no ini file."""
    made = Config()
    made.set_main_option("script_location", str(Path(__file__).parent).replace("%", "%%"))
    made.attributes["engine"] = engine
    return made


def upgrade(engine: Engine) -> None:
    """Bring the database behind ``engine`` to the present schema."""
    command.upgrade(config(engine), "head")
