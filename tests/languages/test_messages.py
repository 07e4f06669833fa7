"""fixtures/conformance/messages.json against Python; test_phone_words.py runs them for the phone."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from broodshelf.languages import in_list, say, say_code, say_portion, told
from broodshelf.languages.numbers import day, number_in_words

VECTORS = json.loads((Path(__file__).parents[2] / "fixtures/conformance/messages.json").read_text())


@pytest.mark.parametrize("case", VECTORS["codes"], ids=lambda case: f"{case['language']} {case['code']}")
def test_a_code_in_words(case):
    assert case["text"] == say_code(case["language"], case["section"], case["code"], case["args"])


@pytest.mark.parametrize("case", VECTORS["portions"], ids=lambda case: case["text"])
def test_a_portion_in_words(case):
    assert case["text"] == say_portion(case["language"], case["portion"])


@pytest.mark.parametrize("case", VECTORS["numbers"], ids=lambda case: f"{case['language']} {case['value']}")
def test_a_number_as_its_language_writes_it(case):
    assert case["text"] == number_in_words(case["value"], case["language"])


@pytest.mark.parametrize("case", VECTORS["days"], ids=lambda case: f"{case['language']} {case['day']}")
def test_a_day_as_its_language_writes_it(case):
    assert case["text"] == day(case["day"], case["language"])


@pytest.mark.parametrize("case", VECTORS["lists"], ids=lambda case: f"{case['language']} {case['text']}")
def test_a_list_as_its_language_writes_it(case):
    assert case["text"] == in_list(case["parts"], case["language"])


def test_a_text_that_is_told_comes_in_any_language_and_holds_others():
    inner = told("need-sugar.inside")
    text = told("nudge-one-food", need=inner, colony="Amber")

    assert str(text) == "sugar for Amber"
    assert text.in_language("en-XB") != str(text)
    assert "Amber" in text.in_language("en-XB")


def test_a_message_that_there_is_not_is_a_mistake_of_the_program():
    with pytest.raises(KeyError):
        say("en", "nobody-wrote-this")


def test_what_people_wrote_stays_as_it_is():
    assert say("en", "nudge-line", {"colony": "{ $x } <b>", "what": "–"}) == "{ $x } <b>: –"
