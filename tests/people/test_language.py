"""Whose language is known: the phone's that came in, what a keeper chose for a pass, and for a person."""

from __future__ import annotations

from tests.people.support import apply, make_pass, open_pass
from tests.web.test_feed import events, path_of, shelf_of_two

from broodshelf.languages.pseudo import OVERRIDE, PSEUDO
from broodshelf.people.language import language_of_person
from broodshelf.records.database import reading


def language_of(phone) -> str | None:
    with phone.client.application.app_context(), reading() as connection:
        return language_of_person(connection, phone.me["household_id"], phone.me["person_id"])


def test_a_phone_that_says_no_language_leaves_it_open(keeper):
    assert language_of(keeper) is None


def test_a_stand_in_has_the_language_of_the_pass_whatever_the_phone_asks_for(keeper, browser):
    amber, _ = shelf_of_two(keeper)
    pass_id, link = make_pass(keeper, [amber])
    guest = browser()
    guest.client.environ_base["HTTP_ACCEPT_LANGUAGE"] = "en-GB"
    apply(keeper, "pass", {"language": PSEUDO}, pass_id)
    open_pass(guest, link)

    assert language_of(guest) == PSEUDO

    apply(keeper, "pass", {"language": "en-US"}, pass_id)
    assert language_of(guest) == "en-US"


def test_a_stand_in_has_the_language_of_the_phone_where_the_pass_says_none(keeper, browser):
    amber, _ = shelf_of_two(keeper)
    _, link = make_pass(keeper, [amber])
    guest = browser()
    guest.client.environ_base["HTTP_ACCEPT_LANGUAGE"] = "tlh, en-GB;q=0.5"

    assert language_of(open_pass(guest, link)) == "en-GB"


def test_the_households_calendar_is_in_the_language_of_whoever_made_its_address(keeper, browser):
    shelf_of_two(keeper)
    path = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    plain = events(browser().get(path))
    apply(keeper, "person", {"language": PSEUDO}, keeper.me["person_id"])

    assert not [event for event in plain if OVERRIDE in event.summary]
    assert all(OVERRIDE in event.summary for event in events(browser().get(path)))


def test_a_passs_calendar_is_in_the_language_of_the_pass(keeper, browser):
    amber, _ = shelf_of_two(keeper)
    pass_id, _ = make_pass(keeper, [amber], ends="2026-05-20")
    apply(keeper, "pass", {"language": PSEUDO}, pass_id)
    path = path_of(keeper.post("/api/feeds", {"pass_id": pass_id}))

    assert all(OVERRIDE in event.summary for event in events(browser().get(path)))


def test_a_chosen_unit_reaches_the_calendar_and_says_no_language(keeper, browser):
    shelf_of_two(keeper)
    path = path_of(keeper.post("/api/feeds", {"pass_id": None}))
    apply(keeper, "person", {"degrees": "f", "volumes": "ml"}, keeper.me["person_id"])

    assert language_of(keeper) == "en-u-ms-metric-mu-fahrenhe"
    assert browser().get(path).status_code == 200

    apply(keeper, "person", {"language": "de"}, keeper.me["person_id"])
    assert language_of(keeper) == "de-u-ms-metric-mu-fahrenhe"
    assert "//DE\r\n" in browser().get(path).text


def test_a_pass_that_says_a_unit_leaves_the_language_to_the_phone(keeper, browser):
    amber, _ = shelf_of_two(keeper)
    pass_id, link = make_pass(keeper, [amber])
    apply(keeper, "pass", {"degrees": "c"}, pass_id)
    guest = browser()
    guest.client.environ_base["HTTP_ACCEPT_LANGUAGE"] = "en-US"

    assert language_of(open_pass(guest, link)) == "en-US-u-mu-celsius"
