"""Statements made into SQL once for all databases of a process.

An engine keeps what it has compiled, and each app of a test has an engine of its own: a good tenth of what a test
costs is the same statements compiled anew. A dialect is told apart here by what it is, not by which engine it is of.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from flask_sqlalchemy import SQLAlchemy
from sqlalchemy import Dialect, Engine
from sqlalchemy.dialects.postgresql.psycopg import PGDialect_psycopg
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.util import LRUCache

MOST_STATEMENTS = 3_000
"""On both databases; an engine of its own keeps 500."""


def _same(one: Dialect, other: object) -> bool:
    return type(one) is type(other) and one.server_version_info == other.server_version_info  # type: ignore[attr-defined]


def _number(one: Dialect) -> int:
    return hash(type(one))


@contextmanager
def one_compiler() -> Iterator[None]:
    """Let every engine that is made in this block find what another one has compiled for the same database."""
    compiled: LRUCache[Any, Any] = LRUCache(MOST_STATEMENTS)
    make = SQLAlchemy._make_engine

    def made(extension: SQLAlchemy, *told: Any) -> Engine:
        engine = make(extension, *told)
        engine.update_execution_options(compiled_cache=compiled)
        return engine

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(SQLAlchemy, "_make_engine", made)
        for dialect in (PGDialect_psycopg, SQLiteDialect_pysqlite):
            patch.setattr(dialect, "__eq__", _same)
            patch.setattr(dialect, "__hash__", _number)
        yield
