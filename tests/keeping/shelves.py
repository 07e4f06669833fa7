"""Throw-away servers' databases, and households full of whatever the registry allows."""

from __future__ import annotations

import datetime as dt
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from flask import Flask
from hypothesis import strategies as st
from sqlalchemy import insert
from tests.support.households import NOON_MS, make_tables
from tests.support.templates import engine_of

from broodshelf.keeping.entries import EXPORTED, Export
from broodshelf.model.kinds import KINDS, FieldSpec, forms
from broodshelf.people.households import found_household
from broodshelf.records import database
from broodshelf.records.ids import uuid7
from broodshelf.records.schemas import check_fields
from broodshelf.records.store import Ledger
from broodshelf.records.tables import households
from broodshelf.records.types import SHA256, UUID, WALL_TIME

TEXTS = st.one_of(
    st.text(st.characters(blacklist_categories=("Cs",)), max_size=12),
    st.sampled_from(
        [
            "=1+1",
            "'tis",
            "'=x",
            "-3",
            "@x",
            "\ttab",
            "\r\n",
            'a "b", c;',
            "  spaces ",
            "Ärger",
            "\ufeff",
            "null",
        ]
    ),
)
NAIVE = (dt.datetime(2001, 1, 1), dt.datetime(2030, 1, 1))  # noqa: DTZ001 - hypothesis adds the zone
INSTANTS = st.datetimes(*NAIVE, timezones=st.sampled_from([dt.UTC, dt.timezone(dt.timedelta(hours=-9.5))]))


@contextmanager
def server(folder: Path, name: str) -> Iterator[None]:
    """A database of its own as the current one."""
    (folder / f"{name}.sqlite3").write_bytes(_tables())
    app = Flask(name)
    app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{folder / name}.sqlite3"
    database.prepare(app)
    with app.app_context():
        yield
        database.db.engine.dispose()


@cache
def _tables() -> bytes:
    """The file of a database without rows; a search makes two for each of its examples."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "tables.sqlite3"
        with engine_of(f"sqlite:///{file}") as engine:
            make_tables(engine)
        return file.read_bytes()


def without_places(export: Export) -> Export:
    """An export as content alone: not in which row of which file each record stood."""
    return replace(export, entries=tuple(replace(e, where="") for e in export.entries))


def empty_household(name: str = "Shelf") -> str:
    with database.writing() as connection:
        return found_household(connection, "Mira", name, "Europe/Vienna", NOON_MS)[0]


def insert_records(household_id: str, person_id: str, records: list[tuple[str, str, dict, int]]) -> None:
    """Write records as they are, server-written fields included: the long way round would hide faults."""
    with database.writing() as connection:
        if not connection.execute(households.select()).all():
            connection.execute(
                insert(households).values(
                    id=household_id, rev=0, epoch=uuid7(NOON_MS), purged_rev=0, created_ms=NOON_MS
                )
            )
        ledger = Ledger(connection, household_id)
        for kind, record_id, values, made_ms in records:
            ledger.put(record_id, kind, values, now_ms=made_ms, person_id=person_id)
        ledger.flush()


@st.composite
def shelves(draw: st.DrawFn) -> tuple[str, str, list[tuple[str, str, dict, int]]]:
    """Return a household's id, its keeper's id and one to three valid records of every kind but plans."""
    household_id, keeper_id = uuid7(NOON_MS), uuid7(NOON_MS)
    ids: dict[str, list[str]] = {}
    made: list[tuple[str, str, dict, int]] = []
    for kind in EXPORTED:
        number = 1 if kind == "household" else draw(st.integers(1, 2))
        ids[kind] = [uuid7(NOON_MS) for _ in range(number)]
        if kind == "household":
            ids[kind] = [household_id]
        if kind == "person":
            ids[kind][0] = keeper_id
        for record_id in ids[kind]:
            values = draw(_fields_of(kind, ids))
            if record_id == keeper_id:
                values |= {"role": "keeper", "gone": None}
            made.append((kind, record_id, values, draw(st.integers(978_307_200_000, NOON_MS))))
    return household_id, keeper_id, made


@st.composite
def _fields_of(draw: st.DrawFn, kind: str, ids: dict[str, list[str]]) -> dict[str, Any]:
    values = {}
    for name, spec in KINDS[kind].fields.items():
        if spec.required or draw(st.booleans()):
            values[name] = draw(_value_of(name, spec, ids))
    if kind == "later":  # sync/put_off.py bounds how long something waits; what is past is free
        values["until"] = "2001-01-01T01:00:00.000+00:00"
    if kind == "household":  # sync/house_rules.py: a household stays, and everybody in it has a role
        values.pop("gone", None)
    if kind == "person":
        values["role"] = values.get("role") or "stand_in"
    loaded, error = check_fields(kind, values)
    assert error is None, (kind, error, values)
    return loaded


def _value_of(name: str, spec: FieldSpec, ids: dict[str, list[str]]) -> st.SearchStrategy[Any]:
    if name == "zone":
        return st.sampled_from(["UTC", "Europe/Vienna", "Pacific/Chatham"])
    if spec.refers_to:
        return st.sampled_from(ids[spec.refers_to])
    return _of(spec.form)


def _of(form: forms.Form) -> st.SearchStrategy[Any]:
    match form:
        case forms.Choice(words):
            return st.sampled_from(words)
        case forms.Instant():
            return INSTANTS.map(lambda at: at.isoformat(timespec="milliseconds"))
        case forms.Day():
            return st.dates(dt.date(2001, 1, 1), dt.date(2030, 1, 1)).map(str)
        case forms.Flag():
            return st.booleans()
        case forms.WholeNumber(low, high):
            return st.integers(low, high)
        case forms.Number(low, high):
            return st.floats(low, high)
        case forms.ListOf(each):
            return st.lists(_of(each), max_size=2)
        case forms.TableOf(words, each):
            return st.dictionaries(_of(words), _of(each), max_size=2)
        case forms.WallTime():
            return st.from_regex(WALL_TIME, fullmatch=True)
        case forms.Ref():
            return st.from_regex(UUID, fullmatch=True)
        case forms.Sha256():
            return st.from_regex(SHA256, fullmatch=True)
    return TEXTS
