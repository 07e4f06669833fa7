"""A whole database into another one, of either engine: household by household, so that it can go on where it stopped.

A household is one transaction of the target. One that is there already and holds the same rows is passed over; one that
differs, because the server ran in between, is copied anew. At the end every table of both is read and compared.
Identities, epochs, revisions and cursors are rows like all others, so phones go on as if nothing had happened.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, Engine, delete, select, text

from .. import migrations
from ..errors import CannotKeep
from ..languages import told
from ..records.tables import households
from ..records.whole import Content, contents, copy, copy_table, erase, other_tables, tables_of_households
from ..settings import Settings
from .backup import refuse_running
from .moving_home import bring_out
from .scratch import engine_of


@dataclass(frozen=True, slots=True)
class Step:
    """A household that is over: the how many-th of how many, its id, its rows, and whether it was there already."""

    number: int
    of: int
    household_id: str
    rows: int
    was_there: bool


@dataclass(frozen=True, slots=True)
class Moved:
    """What stands in a table of both databases."""

    table: str
    here: Content
    there: Content


CONNECTED: Final = text(
    "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database()"
    " AND backend_type = 'client backend' AND pid <> pg_backend_pid()"
)


def move(settings: Settings, target_url: str, told_of: Callable[[Step], None]) -> list[Moved]:
    """Copy all from one database into another; return what stands in each table of both, which is the same.

    Raises ``CannotKeep`` where a server still runs, where the target has a household that the source does not know, or
    where the two differ at the end. The source is not changed but for the present schema.
    """
    source_url = settings.database_url
    if source_url == target_url:
        raise CannotKeep(told("move-same"))
    with engine_of(source_url) as source, engine_of(target_url) as target:
        for engine in (source, target):
            _refuse_running(engine)
            migrations.upgrade(engine)
        with _reading(source) as here:
            _move_households(here, target, told_of)
            _move_the_rest(here, target)
            if settings.shares and target.dialect.name == "sqlite":
                bring_out(here, settings)
            return _compared(here, target)


def _move_households(here: Connection, target: Engine, told_of: Callable[[Step], None]) -> None:
    ids = here.scalars(select(households.c.id).order_by(households.c.id)).all()
    with _reading(target) as there:
        foreign = sorted(set(there.scalars(select(households.c.id))) - set(ids))
    if foreign:
        raise CannotKeep(told("move-foreign", n=len(foreign), first=foreign[0]))
    for number, household_id in enumerate(ids, 1):
        was_there = _is_there(here, target, household_id)
        rows = 0
        if not was_there:
            with _writing(target) as there:
                erase(there, household_id)
                rows = copy(here, there, household_id)
        told_of(Step(number, len(ids), household_id, rows, was_there))


def _is_there(here: Connection, target: Engine, household_id: str) -> bool:
    with _reading(target) as there:
        query = select(households).where(households.c.id == household_id)
        if here.execute(query).one() != there.execute(query).one_or_none():
            return False
        tables = tables_of_households()
        return contents(here, tables, household_id) == contents(there, tables, household_id)


def _move_the_rest(here: Connection, target: Engine) -> None:
    with _writing(target) as there:
        for table in reversed(other_tables()):
            there.execute(delete(table))
        for table in other_tables():
            copy_table(here, there, table)


def _compared(here: Connection, target: Engine) -> list[Moved]:
    tables = [*tables_of_households(), *other_tables()]
    with _reading(target) as there:
        ours, theirs = contents(here, tables), contents(there, tables)
    moved = [Moved(table.name, ours[table.name], theirs[table.name]) for table in tables]
    differing = [each for each in moved if each.here != each.there]
    if differing:
        first = differing[0]
        raise CannotKeep(
            told("move-differs", table=first.table, here=first.here.count, there=first.there.count)
        )
    if target.dialect.name == "postgresql":
        with _writing(target) as there:
            there.execute(text("ANALYZE"))
    return moved


def _refuse_running(engine: Engine) -> None:
    """Raise ``CannotKeep`` where somebody else has the database open: what they write would be lost."""
    if engine.dialect.name == "sqlite":
        path = Path(engine.url.database or "")
        refuse_running(path, told("move-running", path=path))
        return
    with _reading(engine) as connection:
        if connection.scalar(CONNECTED):
            raise CannotKeep(told("move-connected", name=engine.url.database))


@contextmanager
def _reading(engine: Engine) -> Iterator[Connection]:
    """Open a transaction that sees one state of the database, however long it lasts."""
    one_state = ("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ",)
    with engine.connect().execution_options(on_postgresql=one_state) as connection, connection.begin():
        yield connection


@contextmanager
def _writing(engine: Engine) -> Iterator[Connection]:
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        yield connection
