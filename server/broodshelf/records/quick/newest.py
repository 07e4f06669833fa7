"""The newest events of each topic and the first of all, as two texts in one row.

``python -m tests.bench.many_homes`` (the processor of a log) pays for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import Any, NamedTuple

from sqlalchemy import (
    ColumnElement,
    Integer,
    ScalarSelect,
    Select,
    Text,
    bindparam,
    cast,
    func,
    literal_column,
    select,
    text,
    union_all,
)

from ..tables import records


class Topic(NamedTuple):
    """What an event of its kind is about, and how many of the newest are wanted."""

    kind: str
    topic: str
    most: int


@cache
def newest_of_each(dialect: str, topics: tuple[Topic, ...]) -> Select[Any]:
    """Return the statement that gives two texts in one row: what is newest of each topic, and what is oldest.

    The database strings the rows together as JSON, and what the registry says stands in the statement itself:
    handling each row and two hundred parameters would take longer than finding the rows. PostgreSQL walks a list of
    the topics; SQLite, which has no LATERAL, gets a part for each, and PostgreSQL's driver would take longer to read
    that text than the server to answer it (``python -m tests.bench.many_homes``, the processor of a log).
    """
    strung = _walked if dialect == "postgresql" else _strung
    happened = records.c.happened_ms
    return select(
        strung(topics, happened.desc()), strung([topic._replace(most=1) for topic in topics], happened.asc())
    )


def _walked(topics: Sequence[Topic], order: ColumnElement[Any]) -> ScalarSelect[Any]:
    """Return one text of the first rows of each topic, found for one topic after the other.

    The list of the topics stands there as a text: SQLAlchemy makes a statement with its own VALUES anew each time, and
    that took a fifth of a log (``python -m tests.bench.many_homes``).
    """
    listed = ", ".join(f"('{kind}', '{topic}', {most})" for kind, topic, most in topics)
    asked = text(f"(VALUES {listed}) AS asked (kind, topic, most)")
    kind, topic = literal_column("asked.kind", Text), literal_column("asked.topic", Text)
    most = literal_column("asked.most", Integer)
    firsts = _part(kind, topic).order_by(order).limit(most).lateral("firsts")
    return select(func.aggregate_strings(firsts.c.row, ",")).select_from(asked, firsts).scalar_subquery()


def _strung(topics: Sequence[Topic], order: ColumnElement[Any]) -> ScalarSelect[Any]:
    """Return one text of the first rows of each topic, each found by a part of its own."""
    firsts = [
        _part(_fixed(kind), _fixed(topic)).order_by(order).limit(_number(most)).offset(_number(0)).subquery()
        for kind, topic, most in topics
    ]
    rows = union_all(*map(select, firsts)).subquery()
    return select(func.aggregate_strings(rows.c.row, ",")).scalar_subquery()


def _part(kind: ColumnElement[str], topic: ColumnElement[str]) -> Select[Any]:
    c = records.c
    row = (
        _fixed('["').concat(c.id).concat(_fixed('","')).concat(c.kind).concat(_fixed('",'))
        .concat(cast(c.happened_ms, Text)).concat(_fixed(",")).concat(c.fields).concat(_fixed("]"))
    )  # fmt: skip
    return select(row.label("row")).where(
        c.household_id == bindparam("household_id"),
        c.colony_id == bindparam("colony_id"),
        c.gone.is_(False),
        c.happened_ms >= bindparam("since_ms"),
        c.kind == kind,
        c.topic == topic,
    )


def _fixed(words: str) -> ColumnElement[str]:
    return literal_column(f"'{words}'", Text)


def _number(number: int) -> ColumnElement[int]:
    return literal_column(str(number), Integer)
