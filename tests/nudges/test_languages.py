"""Nudges, mail and calendar in the language of whom they are for: nothing but names is left in another one."""

from __future__ import annotations

import json
import re
from functools import partial

import pytest
from tests.nudges.support import URL, Shelf
from tests.nudges.test_messages import FLY, item

from broodshelf.feed.render import Part, Round
from broodshelf.feed.render import render as calendar
from broodshelf.languages.choosing import with_units
from broodshelf.languages.pseudo import ENDED, OVERRIDE, PSEUDO
from broodshelf.nudges.channels.channel import Delivery
from broodshelf.nudges.channels.mail.rendering import render as letter
from broodshelf.nudges.channels.push.rendering import render as push
from broodshelf.nudges.messages import in_brief, of_code, of_notice, of_round, of_test
from broodshelf.people.language import language_of_person, languages_of_people
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger

PLAIN = re.compile(r"[a-z]{2,}")
NOTICES = {
    "new_phone": {"phone": "1", "person": "2"},
    "link_made": {"pass": "1", "person": "2"},
    "pass_opened": {"pass": "1", "phone": "2"},
    "sensor_silent": {"sensor": "1", "hours": 3, "place": "2"},
    "sensor_broken": {"sensor": "1", "place": "2"},
}


def not_translated(text: str) -> list[str]:
    """What stands in plain letters: in the pseudo-language only names and addresses do."""
    return PLAIN.findall(text.replace(OVERRIDE, "").replace(ENDED, ""))


@pytest.mark.parametrize(
    "items",
    [
        [item("1", portion=FLY)],
        [item("1", "water")],
        [item("1", "water", fault="leak")],
        [item("1", "rest", what="wake_up")],
        [item("1"), item("2", portion=FLY)],
        [item("1", "water", fault="leak"), item("2", "water", fault="leak")],
        [item("1"), item("1", "water")],
        [item("1"), item("2"), item("3", "glance")],
    ],
)
def test_a_nudge_is_in_one_language(items):
    message = of_round(items, "n", URL, PSEUDO)

    for said in (message, in_brief(message)):
        assert not_translated(" ".join([said.title, *said.lines])) == ["and"] * said.title.count(" and ")


@pytest.mark.parametrize("made", [of_test, partial(of_code, "1")])
def test_the_test_and_the_code_are_too(made):
    message = made(URL, PSEUDO)

    assert not not_translated(" ".join([message.title, *message.lines]))


@pytest.mark.parametrize(("what", "args"), NOTICES.items())
def test_what_the_other_keepers_are_told_is_too(what, args):
    message = of_notice(json.dumps({"what": what, "args": args}), URL, PSEUDO)

    assert not not_translated(" ".join([message.title, *message.lines]))


def test_a_push_message_says_its_language_and_a_letter_too():
    message = of_round([item("1", n=n) for n in range(9)], "n", URL, PSEUDO)
    told = json.loads(push(message, "d"))["notification"]
    written = letter(Delivery("d", message, 1, False, "t"), "a@example.org", "b@example.org", 0)

    assert told["lang"] == PSEUDO
    assert not not_translated(told["body"])
    assert written["Content-Language"] == PSEUDO
    assert not not_translated(written.get_content().replace(message.url, ""))


def test_a_calendar_is_in_one_language():
    parts = (Part("1", "protein", False, True, 0), Part("2", "water", False, False, 0))
    made = calendar("019dd000-0000-7000-8000-00000000feed", "1", URL, [Round("k", 0, parts)], PSEUDO)
    text = made.decode().replace("\r\n ", "")
    said = re.findall(r"^(?:SUMMARY|DESCRIPTION):(.*)$", text, re.M)

    assert len(said) == 3  # the event's, and its alarm's
    assert not_translated(" ".join(said)) == ["and"] * 2


def test_everybody_is_told_in_their_own(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    shelf.colony(mira, protein_days=2.5)
    with writing() as connection:
        ledger = Ledger(connection, shelf.id)
        ledger.put(mira.person_id, "person", {"language": PSEUDO}, now_ms=shelf.now_ms)
        ledger.flush()
    with reading() as connection:
        found = languages_of_people(connection, [(shelf.id, mira.person_id), (shelf.id, anton.person_id)])

    (title,) = shelf.at("2026-05-04T08:00").tick()
    shelf.nudger.tick(shelf.at("2026-05-04T14:00").now_ms)
    shelf.nudger.finish()

    assert found == {(shelf.id, mira.person_id): PSEUDO}
    assert not_translated(title.replace("Amber", "")) == []
    assert "Protein for Amber" in shelf.notebook.titles


SYRUP = {"amount": 30, "unit": "ml", "food_code": "sugar_water", "form": "feeder"}


@pytest.mark.parametrize(
    ("language", "degrees", "volumes", "warm", "syrup"),
    [
        ("en-US", "c", None, "20 °C to 25 °C", ": 1 fl oz (30 mL) of sugar water"),
        ("en-US", "c", "ml", "20 °C to 25 °C", ": 30 mL of sugar water"),
        ("en-US", None, "ml", "68 °F to 77 °F", ": 30 mL of sugar water"),
        ("de", "f", None, "68 °F bis 77 °F", ": 30 mL Zuckerwasser"),
        ("de", "f", "floz", "68 °F bis 77 °F", ": 1 fl oz (30 mL) Zuckerwasser"),
        (None, "f", None, "68 °F to 77 °F", ": 30 mL of sugar water"),
    ],
)
def test_somebody_is_told_in_the_units_that_they_chose(shelf: Shelf, language, degrees, volumes, warm, syrup):
    """By nudge and by mail; a calendar says no measures, and comes in their language as ever."""
    anton = shelf.person("Anton")
    with writing() as connection:
        ledger = Ledger(connection, shelf.id)
        chosen = {"language": language, "degrees": degrees, "volumes": volumes}
        ledger.put(anton.person_id, "person", chosen, now_ms=shelf.now_ms)
        ledger.flush()
    with reading() as connection:
        tag = language_of_person(connection, shelf.id, anton.person_id)

    items = [item(need="sugar", portion=SYRUP), item(need="barrier", fault="heater")]
    message = of_round(items, "n", URL, tag)
    told = json.loads(push(message, "d"))["notification"]
    written = letter(Delivery("d", message, 1, False, "t"), "a@example.org", "b@example.org", 0)
    made = calendar("019dd000-0000-7000-8000-00000000feed", "1", URL, [SUGAR_ROUND], tag).decode()

    for said in (told["body"], written.get_content()):
        plain = said.replace("\u00a0", " ")
        assert warm in plain
        assert syrup in plain
    assert told["lang"] == written["Content-Language"] == (language or "en")
    assert f"PRODID:-//Broodshelf//Rounds//{(language or 'en').upper()}\r\n" in made
    assert ("SUMMARY:Zucker für Amber" if language == "de" else "SUMMARY:Sugar for Amber") in made


SUGAR_ROUND = Round("k", 0, (Part("Amber", "sugar", False, False, 0),))


def test_what_a_stand_in_did_not_choose_is_that_of_the_pass(shelf: Shelf):
    anton = shelf.person("Anton")
    with writing() as connection:
        ledger = Ledger(connection, shelf.id)
        given = {"name": "P", "colony_ids": [], "starts_on": "2026-05-01", "ends_on": "2026-05-09"}
        ledger.put(PASS, "pass", {**given, "language": "pl", "degrees": "f"}, now_ms=shelf.now_ms)
        own = {"pass_id": PASS, "language": "de", "volumes": "floz"}
        ledger.put(anton.person_id, "person", own, now_ms=shelf.now_ms)
        ledger.flush()
    with reading() as connection:
        found = language_of_person(connection, shelf.id, anton.person_id)

    assert found == with_units("de", "f", "floz") == "de-u-ms-ussystem-mu-fahrenhe"


PASS = "019dd000-0000-7000-8000-0000000000aa"
