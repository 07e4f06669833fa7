"""The phone in other languages: by itself, by choice, without a connection, from right to left, in long words."""

from __future__ import annotations

import pytest
from playwright.sync_api import Browser, expect
from tests.phone.conftest import claim, opening, worker_ready
from tests.phone.looks import turn_to

from broodshelf.languages import languages, say
from broodshelf.languages.phone_parts import KEPT as KEPT_PARTS
from broodshelf.languages.phone_parts import PARTS
from broodshelf.languages.phones_file import phones_file
from broodshelf.languages.pseudo import PSEUDO

LONGEST = max(languages(), key=lambda tag: sum(len(phones_file(tag, part)) for part in PARTS))
NARROWEST_PX = 320
SCREENS = (
    "#/round", "#/shelf", "#/colony/new", "#/larder", "#/reckon", "#/handover", "#/settings", "#/places",
    "#/labels", "#/attention", "#/gone",
)  # fmt: skip
KEPT = """() => caches.keys().then((names) => Promise.all(names.map(async (name) =>
  (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname))))
  .then((all) => all.flat().filter((path) => path.endsWith('.ftl')))"""
OVER_THE_EDGE = """() => [...document.querySelectorAll('main *, nav *, header *')]
  .filter((each) => !each.closest('svg, .lying, .across, .visually-hidden, [hidden]') && each.getClientRects().length)
  .filter((each) => { const { left, right } = each.getBoundingClientRect();
    return right > innerWidth + 1 || left < -1; })
  .map((each) => `${each.tagName} ${each.className} ${each.textContent.slice(0, 60)}`)"""


@pytest.fixture
def speaking(chromium: Browser):
    """Make a phone of a language and region."""
    with opening(chromium) as opened:
        yield lambda locale, **more: opened(locale=locale, **more)


@pytest.mark.parametrize("tag", languages())
def test_a_phone_speaks_its_own_language_from_its_first_screen_on(speaking, new_server, tag):
    page = speaking(f"{tag}-CH", service_workers="block")
    page.goto(new_server.url)

    expect(page.get_by_role("button", name=say(tag, "start-have-code"))).to_be_visible()
    assert page.locator("html").get_attribute("lang") == tag
    assert page.locator("html").get_attribute("dir") == "ltr"


def test_a_language_that_nobody_wrote_yet_is_english(speaking, new_server):
    page = speaking("sv-SE", service_workers="block")
    page.goto(new_server.url)

    expect(page.get_by_role("button", name=say("en", "start-have-code"))).to_be_visible()


def test_a_language_that_is_chosen_stays_without_a_connection_and_is_told_to_the_server(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.goto(f"{server.url}/#/settings")
    page.get_by_label(say("en", "house-language")).select_option("de")

    expect(page.get_by_role("heading", name=say("de", "house-title"))).to_be_visible()
    assert page.locator("html").get_attribute("lang") == "de"
    expect(page.get_by_text(say("de", "saving-synced"))).to_be_visible()
    me = page.evaluate("() => fetch('/api/me').then((answer) => answer.json())")["person_id"]
    history = page.evaluate(f"() => fetch('/api/records/{me}/history').then((answer) => answer.json())")
    assert history["revisions"][0]["asked"]["language"] == "de"
    page.context.set_offline(True)
    page.reload()
    expect(page.get_by_role("heading", name=say("de", "house-title"))).to_be_visible()
    page.context.set_offline(False)


def test_a_phone_keeps_the_messages_of_its_own_language_alone(speaking, new_server):
    page = speaking("fr-FR")
    page.goto(new_server.url)
    worker_ready(page)

    kept = [path.split("/words/")[1] for path in page.evaluate(KEPT)]
    assert sorted(kept) == sorted(f"fr/{part}.ftl" for part in KEPT_PARTS)


def test_without_its_messages_no_language_is_chosen(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.goto(f"{server.url}/#/settings")
    field = page.get_by_label(say("en", "house-language"))
    expect(field).to_be_visible()
    page.context.set_offline(True)
    field.select_option("de")

    its_card = page.locator("section").filter(has=field)
    expect(its_card.get_by_role("alert").filter(has_text=say("en", "part-needs-server"))).to_be_visible()
    page.reload()
    expect(page.get_by_role("heading", name=say("en", "house-title"))).to_be_visible()
    page.context.set_offline(False)


@pytest.mark.without_worker
@pytest.mark.parametrize("tag", [LONGEST, PSEUDO])
def test_nothing_stands_over_the_edge_of_a_narrow_screen_in_long_words(phone, server, tag):
    page = phone()
    claim(page, server)
    colony = f"#/colony/{page.url.rpartition('/')[2]}"
    page.evaluate("(tag) => localStorage.setItem('language', tag)", tag)
    page.set_viewport_size({"width": NARROWEST_PX, "height": 800})
    page.reload()
    expect(page.locator("main:not(.plain) h1").first).to_be_visible()
    assert page.locator("html").get_attribute("lang") == tag
    over = {}
    for screen in (*SCREENS, colony):
        turn_to(page, screen)
        over[screen] = page.evaluate(OVER_THE_EDGE)

    assert {screen: found for screen, found in over.items() if found} == {}


@pytest.mark.without_worker
def test_a_language_from_right_to_left_turns_the_page(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/round")
    first = page.locator("nav.bottom a").first
    expect(first).to_be_visible()
    left = first.bounding_box()
    page.evaluate("(tag) => localStorage.setItem('language', tag)", PSEUDO)
    page.reload()
    expect(page.locator("html")).to_have_attribute("dir", "rtl")
    right = first.bounding_box()

    assert left and right
    assert left["x"] < 100 < 390 - 100 < right["x"] + right["width"]
