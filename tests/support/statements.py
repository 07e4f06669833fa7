"""Watching every statement that an engine runs: does it say whose rows it means?

A transaction for one household names the household of every table in each statement. One for all households (the
nudger, the operator's commands, the doors at which a household is found) may look through one table, but whatever
joins tables, changes or deletes names the household as well.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sqlalchemy import Alias, Connection, Delete, Engine, Select, Table, Update, event
from sqlalchemy.sql import visitors
from sqlalchemy.sql.elements import BinaryExpression, ClauseElement
from sqlalchemy.sql.selectable import FromClause, Join

from broodshelf.records.apart import EVERY, column_of, held_by
from broodshelf.records.database import metadata


class Watch:
    """Use with ``with``; ``complaints`` are the statements that do not keep households apart, of ``seen`` many."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine
        self.complaints: list[str] = []
        self.seen = 0
        self._known: dict[tuple[object, str], list[str]] = {}

    def __enter__(self) -> Watch:
        event.listen(self.engine, "before_execute", self._built)
        event.listen(self.engine, "before_cursor_execute", self._written)
        return self

    def __exit__(self, *_: object) -> None:
        event.remove(self.engine, "before_execute", self._built)
        event.remove(self.engine, "before_cursor_execute", self._written)

    def _built(self, connection: Connection, statement: Any, *_: Any) -> None:
        if isinstance(statement, ClauseElement):
            self.seen += 1
            for name in self._nameless(statement, held_by(connection)):
                self.complaints.append(f"{name} in: {statement}")

    def _nameless(self, statement: ClauseElement, held: str) -> list[str]:
        """Look through a statement once, as SQLAlchemy compiles it once: values have no part in either."""
        form = statement._generate_cache_key()
        if form is None:
            return nameless(statement, held)
        known = (form.key, held)
        if known not in self._known:
            self._known[known] = nameless(statement, held)
        return self._known[known]

    def _written(
        self,
        connection: Connection,
        _cursor: Any,
        statement: str,
        _parameters: Any,
        context: Any,
        _many: bool,
    ) -> None:
        """Statements that go to the driver as text are few; those that name a table name its household."""
        if context is not None and context.compiled is not None:
            return
        words = set(re.findall(r"[a-z_]+", statement))
        ours = {t.name for t in metadata.sorted_tables if column_of(t) == "household_id"}
        if (
            not statement.lstrip().upper().startswith("INSERT")
            and words & ours
            and "household_id" not in words
        ):
            self.complaints.append(f"text: {statement}")


def nameless(statement: ClauseElement, held: str) -> list[str]:
    """Return the tables of households that a statement uses without naming their household."""
    named = set(_named(statement))
    found = []
    for part in visitors.iterate(statement):
        if isinstance(part, (Update, Delete)):
            used, may_range = [part.table], False
        elif isinstance(part, Select):
            used = [each for source in part.get_final_froms() for each in _apart(source)]
            may_range = held == EVERY and sum(_table(each) is not None for each in used) == 1
        else:
            continue
        ours = [each for each in used if _table(each) is not None]
        found += [str(_table(each)) for each in ours if not may_range and each not in named]
    return found


def _apart(source: FromClause) -> Iterator[FromClause]:
    if isinstance(source, Join):
        yield from _apart(source.left)
        yield from _apart(source.right)
    else:
        yield source


def _table(source: FromClause) -> Table | None:
    table = source.element if isinstance(source, Alias) else source
    return table if isinstance(table, Table) and column_of(table) is not None else None


def _named(statement: ClauseElement) -> Iterator[FromClause]:
    """Yield the tables whose household column stands in a comparison."""
    for part in visitors.iterate(statement):
        if isinstance(part, BinaryExpression):
            for column in visitors.iterate(part):
                source = getattr(column, "table", None)
                table = _table(source) if isinstance(source, FromClause) else None
                if table is not None and getattr(column, "name", None) == column_of(table):
                    yield source
