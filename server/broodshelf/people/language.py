"""In which language somebody is told: their own, else that of the pass they came by; None where nobody said."""

from __future__ import annotations

import json
from collections.abc import Collection
from typing import Any

from sqlalchemy import Connection, select

from ..model.kinds import Pass, Person, read
from ..records.many_rows import are_among
from ..records.store import Ledger
from ..records.tables import records

Key = tuple[str, str]
"""Household and person."""


def languages_of_people(connection: Connection, people: Collection[Key]) -> dict[Key, str]:
    """Return the languages of those of whom one is known: two reads, however many they are."""
    found = {key: read(Person, values) for key, values in _values(connection, people).items()}
    by_pass = {key: (key[0], p.pass_id) for key, p in found.items() if p.language is None and p.pass_id}
    passes = _values(connection, set(by_pass.values()))
    of_pass = {key: read(Pass, passes[its]).language for key, its in by_pass.items() if its in passes}
    return {key: tag for key, p in found.items() if (tag := p.language or of_pass.get(key))}


def language_of_person(connection: Connection, household_id: str, person_id: str) -> str | None:
    """Return the language of one person."""
    key = (household_id, person_id)
    return languages_of_people(connection, [key]).get(key)


def _values(connection: Connection, keys: Collection[Key]) -> dict[Key, dict[str, Any]]:
    if not keys:
        return {}
    r = records.c
    query = select(r.household_id, r.id, r.fields).where(are_among(connection, (r.household_id, r.id), keys))
    return {(row.household_id, row.id): json.loads(row.fields) for row in connection.execute(query)}


def begin_language(
    connection: Connection, household_id: str, person_id: str, language: str | None, now_ms: int
) -> None:
    """Note what a person's new phone asks for where nobody said yet in which language they are told."""
    if language is None or language_of_person(connection, household_id, person_id) is not None:
        return
    ledger = Ledger(connection, household_id)
    ledger.put(person_id, "person", {"language": language}, now_ms=now_ms, person_id=person_id)
    ledger.flush()
