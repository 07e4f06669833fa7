"""In which language and units somebody is told: their own, else those of the pass they came by.

All of it is one tag, ``en-US-u-mu-celsius`` (``languages.tags``); None where nobody said anything.
"""

from __future__ import annotations

import json
from collections.abc import Collection
from typing import Any

from sqlalchemy import Connection, select

from ..languages.choosing import with_units
from ..model.kinds import Pass, Person, read
from ..records.quick.many_rows import are_among
from ..records.store import Ledger
from ..records.tables import records

Key = tuple[str, str]
"""Household and person."""


def languages_of_people(connection: Connection, people: Collection[Key]) -> dict[Key, str]:
    """Return the tags of those of whom something is known: two reads, however many they are."""
    told = _people_and_passes(connection, people)
    tags = {key: _tag_of(person, its_pass) for key, (person, its_pass) in told.items()}
    return {key: tag for key, tag in tags.items() if tag}


def language_of_person(connection: Connection, household_id: str, person_id: str) -> str | None:
    """Return the tag of one person."""
    key = (household_id, person_id)
    return languages_of_people(connection, [key]).get(key)


def tag_of_pass(its: Pass) -> str | None:
    """Return the tag of whoever comes by a pass."""
    return with_units(its.language, its.degrees, its.volumes)


def _tag_of(person: Person, its: Pass | None) -> str | None:
    if its is None:
        return with_units(person.language, person.degrees, person.volumes)
    return with_units(
        person.language or its.language, person.degrees or its.degrees, person.volumes or its.volumes
    )


def _people_and_passes(
    connection: Connection, people: Collection[Key]
) -> dict[Key, tuple[Person, Pass | None]]:
    """Return each person that there is, with the pass that they came by."""
    found = {key: read(Person, values) for key, values in _values(connection, people).items()}
    by_pass = {key: (key[0], person.pass_id) for key, person in found.items() if person.pass_id}
    passes = _values(connection, set(by_pass.values()))
    of_pass = {key: read(Pass, passes[its]) for key, its in by_pass.items() if its in passes}
    return {key: (person, of_pass.get(key)) for key, person in found.items()}


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
    key = (household_id, person_id)
    person, its = _people_and_passes(connection, [key]).get(key, (None, None))
    if language is None or (person and person.language) or (its and its.language):
        return
    ledger = Ledger(connection, household_id)
    ledger.put(person_id, "person", {"language": language}, now_ms=now_ms, person_id=person_id)
    ledger.flush()
