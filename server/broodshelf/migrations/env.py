"""What alembic runs: every room's tables, on the engine that the app hands over."""

from __future__ import annotations

from alembic import context

from broodshelf.feed import tables as feed_tables
from broodshelf.nudges import tables as nudge_tables
from broodshelf.people import tables as people_tables
from broodshelf.records import tables as record_tables
from broodshelf.records.database import metadata
from broodshelf.rounds import tables as round_tables
from broodshelf.sensing import tables as sensing_tables

__all__ = ["feed_tables", "nudge_tables", "people_tables", "record_tables", "round_tables", "sensing_tables"]

engine = context.config.attributes["engine"]
with engine.connect().execution_options(writes=True) as connection:
    context.configure(connection=connection, target_metadata=metadata, render_as_batch=True)
    with context.begin_transaction():
        context.run_migrations()
    connection.commit()
