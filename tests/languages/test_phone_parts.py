"""A phone knows a message when it says it: each script is held to the parts that are there when it runs."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from tests.architecture.test_words import PWA, QUOTED, SAID, TABLES, modules
from tests.languages.resources import SOURCE, read
from tests.support.message_types import groups
from tests.support.phone_bytes import served

from broodshelf.languages.entries import HERE, subjects_of
from broodshelf.languages.phone_parts import (
    CATALOGUE,
    CHARTS,
    COUNTING,
    FIRST,
    KEPT,
    ONLINE,
    PARTS,
    SCREENS,
    SERVER_ONLY,
    part_of,
)
from broodshelf.web import parcels

SERVER = HERE.parent

SAID_LATER = {
    ("components/in-words.js", "notice"): "said for screens alone; the round has no notices",
    ("components/in-words.js", "reason"): "those of the round are there, as the next test says",
    (
        "screens/brood.js",
        "brood-source",
    ): "asked for when it is opened; in the English of the plan until it is there",
}
SHOWN_BY_SCREENS = {
    "care/calculators/sweet.py",
    "care/feeding/sugar_water.py",
    "care/plan/holiday.py",
    "care/plan/larder.py",
    "care/plan/stand_in.py",
    "care/plan/steps.py",
    "model/needs.py",
    "model/tasks.py",
}
"""Where reasons are given that no round shows a keeper: mixing, journeys, the larder, and a stand-in's steps."""
LAZY = re.compile(
    r"lazy\(\s*\(\) => import\('([^']+)'\),\s*'\w+'(?:,\s*'(\w+)')?,?\s*\)",
)


def test_every_script_says_only_what_is_there_when_it_runs():
    missing = [
        f"{name} says {said}, which comes with {part_of_message()[said]}"
        for name, said in said_by_id()
        if part_of_message()[said] not in there_for(name)
    ]

    assert missing == []


def test_a_group_of_codes_is_there_as_a_whole():
    """A script may get any code of a group: all parts of it must be there, but for what is said in one place alone."""
    missing = {
        (name, group): parts - there_for(name)
        for name, group in said_by_group()
        if (parts := {part_of_message()[each] for each in part_of_message() if each.startswith(f"{group}-")})
        - there_for(name)
    }

    assert missing.keys() == SAID_LATER.keys()


def test_the_reasons_of_a_round_come_with_the_start():
    late = {each for each, part in part_of_message().items() if each.startswith("reason-") and part != FIRST}
    server = {path: path.read_text(encoding="utf-8") for path in SERVER.rglob("*.py")}
    given = {
        path.relative_to(SERVER).as_posix()
        for each in late
        for path, text in server.items()
        if f'"{each.removeprefix("reason-").replace("-", "_")}"' in text
    }

    assert late
    assert given <= SHOWN_BY_SCREENS


def test_a_message_names_only_messages_that_come_with_it_or_first():
    of = part_of_message()

    assert not [
        (name, other)
        for name, message in read(SOURCE).items()
        if name in of
        for other in message.references
        if other in of and of[other] not in {of[name], FIRST}
    ]


def test_what_is_loaded_late_asks_for_the_messages_that_it_says():
    asked = {}
    for path, text in modules().items():
        for target, words in LAZY.findall(text):
            asked[(path.parent / target).resolve().relative_to(PWA).as_posix()] = words

    assert len(asked) > 20
    assert {name for name, words in asked.items() if words == CHARTS} == {
        name for name in asked if name.startswith(parcels.CHARTS + parcels.LABELS)
    }
    assert {name for name, words in asked.items() if words == COUNTING} == {"screens/pictures.js"}
    assert {name for name, words in asked.items() if words == "once"} == {parcels.WAY_IN}
    online = {name for name, words in asked.items() if words == ONLINE}
    assert online | {parcels.WAY_IN, "signals/push.js"} == {
        *parcels.ONLINE
    }  # the last: by the nudges, which ask


def test_every_subject_that_is_named_is_there_and_every_part_has_some():
    subjects = subjects_of(SOURCE).keys()
    by_part = {part: {each for each in subjects - SERVER_ONLY if part_of(each) == part} for part in PARTS}

    assert all(by_part.values())
    assert {*KEPT} == {*PARTS} - {ONLINE}
    assert not SERVER_ONLY - subjects


@cache
def part_of_message() -> dict[str, str]:
    """The part of each message that phones say, by its id."""
    return {
        name: part_of(subject)
        for subject, entries in subjects_of(SOURCE).items()
        if subject not in SERVER_ONLY
        for name in entries
    }


@cache
def at_the_start() -> frozenset[str]:
    return frozenset(name for members in served().joined.values() for name in members)


def there_for(name: str) -> set[str]:
    """The parts that are there when a script of this name runs."""
    if name in at_the_start():
        return {FIRST, CATALOGUE}
    more = {CHARTS} if name.startswith(parcels.CHARTS + parcels.LABELS) else set()
    more |= {COUNTING} if name.startswith(parcels.COUNTING) else set()
    online = {*parcels.ONLINE} - {parcels.WAY_IN}
    return {FIRST, CATALOGUE, SCREENS, *more, *({ONLINE} if name in online else set())}


def said_by_id() -> Iterator[tuple[str, str]]:
    for path, text in modules().items():
        for word in {word.partition(".")[0] for word in QUOTED.findall(text)} & part_of_message().keys():
            yield path.relative_to(PWA).as_posix(), word


def said_by_group() -> Iterator[tuple[str, str]]:
    for path, text in modules().items():
        name = path.relative_to(PWA).as_posix()
        tables = {*QUOTED.findall(text)} & {*groups()} if name in TABLES else set()
        for group in {*SAID.findall(text)} | tables:
            yield name, group
