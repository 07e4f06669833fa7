"""Nudges, mail and calendar in the language of whom they are for: nothing but names is left in another one."""

from __future__ import annotations

import json
import re

import pytest
from tests.nudges.support import URL, Shelf
from tests.nudges.test_messages import FLY, item

from broodshelf.feed.render import Part, Round
from broodshelf.feed.render import render as calendar
from broodshelf.languages.pseudo import ENDED, OVERRIDE, PSEUDO
from broodshelf.nudges.channels.channel import Delivery
from broodshelf.nudges.channels.mail.rendering import render as letter
from broodshelf.nudges.channels.push.rendering import render as push
from broodshelf.nudges.messages import in_brief, of_code, of_notice, of_round, of_test
from broodshelf.people.language import languages_of_people
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


@pytest.mark.parametrize("message", [of_test(URL, PSEUDO), of_code("1", URL, PSEUDO)])
def test_the_test_and_the_code_are_too(message):
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
