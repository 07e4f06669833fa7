"""What each app of a test would compile anew: its statements, and what builds the addresses of its views.

An engine keeps what it has compiled, and each app of a test has an engine of its own: a good tenth of what a test
costs is the same statements compiled again. A dialect is told apart here by what it is, not by which engine it is of.
The addresses are half of what an app costs to make.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from flask_sqlalchemy import SQLAlchemy
from sqlalchemy import Dialect, Engine
from sqlalchemy.dialects.postgresql.psycopg import PGDialect_psycopg
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.util import LRUCache
from werkzeug.routing import Rule

MOST_STATEMENTS = 3_000
"""On both databases; an engine of its own keeps 500."""


def _same(one: Dialect, other: object) -> bool:
    return type(one) is type(other) and one.server_version_info == other.server_version_info  # type: ignore[attr-defined]


def _number(one: Dialect) -> int:
    return hash(type(one))


def _builders() -> Callable[..., Callable[..., tuple[str, str]]]:
    """Return what compiles the builder of an address, and remembers it by what it is compiled from."""
    compile_it = Rule._compile_builder
    known: dict[tuple[object, ...], Callable[..., tuple[str, str]]] = {}

    def builder(rule: Rule, append_unknown: bool = True) -> Callable[..., tuple[str, str]]:
        if rule.defaults:
            return compile_it(rule, append_unknown)
        made_from = (rule.rule, *rule._trace, append_unknown)
        if made_from not in known:
            known[made_from] = compile_it(rule, append_unknown)
        return known[made_from]

    return builder


@contextmanager
def one_compiler() -> Iterator[None]:
    """Let every app that is made in this block find what another one has compiled."""
    compiled: LRUCache[Any, Any] = LRUCache(MOST_STATEMENTS)
    make = SQLAlchemy._make_engine

    def made(extension: SQLAlchemy, *told: Any) -> Engine:
        engine = make(extension, *told)
        engine.update_execution_options(compiled_cache=compiled)
        return engine

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(SQLAlchemy, "_make_engine", made)
        patch.setattr(Rule, "_compile_builder", _builders())
        for dialect in (PGDialect_psycopg, SQLiteDialect_pysqlite):
            patch.setattr(dialect, "__eq__", _same)
            patch.setattr(dialect, "__hash__", _number)
        yield
