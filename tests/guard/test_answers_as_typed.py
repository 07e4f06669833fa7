"""What a real server answers is what ``pwa/answers.d.ts`` says to the phone: every field, and no other."""

from __future__ import annotations

import logging
import re
from collections import defaultdict

import pytest
from tests.guard.asked_answers import Typed, keys, typed_answers
from tests.guard.lived_in import LivedIn
from tests.guard.typed_answers import TYPES, complaints, each_once, places, spoilt

pytestmark = pytest.mark.long

FREE = re.compile(r"\.(args|asked|before|lost|mine|theirs)\b|\.stages\[\]\[\]")
"""What holds whatever a reason, a change or a forecast is of: the types leave open what is below."""
NEVER_THERE = {
    "Posted /api/claim .pass": "a code lets keepers in",
    "Posted /api/pairings/collect .pass": "a pairing lets keepers in",
    "Posted /api/sync .rows[]<plan>.set.gauges[].gain_per_portion": "of no gauge that is made now",
}


@pytest.fixture(scope="module")
def answers(tmp_path_factory) -> list[Typed]:
    """What everybody hears at the addresses that the types name."""
    logging.disable(logging.CRITICAL)
    try:
        with LivedIn(tmp_path_factory.mktemp("lived_in") / "data") as houses:
            return each_once(typed_answers(houses, TYPES.read_text("utf-8")))
    finally:
        logging.disable(logging.NOTSET)


@pytest.fixture(scope="module")
def wrong(answers) -> dict[str, Typed]:
    """The same with one thing wrong in each, by what that is."""
    return spoilt(answers)


@pytest.fixture(scope="module")
def said(answers, wrong, tmp_path_factory) -> dict[int, str]:
    """What the type checker says of the answers and then of the wrong ones."""
    return complaints(tmp_path_factory.mktemp("typed"), [*answers, *wrong.values()])


def test_every_address_of_the_types_is_asked(answers):
    assert {(each.interface, each.key) for each in answers} == {*keys(TYPES.read_text("utf-8"))}


def test_each_answer_is_of_its_type(answers, said):
    assert {(each.type, said[place]) for place, each in enumerate(answers) if place in said} == set()


def test_a_field_more_and_a_value_of_another_type_are_found_wherever_they_stand(answers, wrong, said):
    taken = [way for place, way in enumerate(wrong, len(answers)) if place not in said]

    assert len(wrong) > 500
    assert [way for way in taken if not FREE.search(way)] == []


def test_an_answer_of_several_shapes_is_asked_for_in_each(answers):
    me = frozenset(next(each for each in answers if each.key == "/api/me").told)

    assert shapes(answers, "/api/pairings/collect") == {frozenset({"state"}), me}
    assert shapes(answers, "/api/passes/open") == {frozenset({"preview"}), me}
    assert shapes(answers, "/api/claim/look") == {frozenset({"person_name"}), frozenset({"begin"})}
    trips = [each.told for each in answers if each.key == "/api/sync"]
    assert {one["verdict"] for trip in trips for one in trip["answers"]} == {
        "applied",
        "deferred",
        "rejected",
    }
    assert {"set" in row for trip in trips for row in trip["gone"]} == {True, False}
    assert {trip["told"]["code"] for trip in trips if "told" in trip} == {
        "household_nearly_full", "backup_old", "database_damaged",
    }  # fmt: skip


def test_whatever_may_be_null_or_an_empty_list_was_once_something(answers):
    """Else nothing would be said of what stands there when there is something."""
    there: dict[str, bool] = defaultdict(bool)
    for each in answers:
        for way, here, _ in places(each):
            there[re.sub(r"\[\]<\w+>(?!\.set)", "[]", way)] |= here is not None and here != []

    assert {way for way, was in there.items() if not was and not FREE.search(way)} == {*NEVER_THERE}


def shapes(answers: list[Typed], key: str) -> set[frozenset[str]]:
    """The names of the fields of an address's answers."""
    return {frozenset(each.told) for each in answers if each.key == key}
