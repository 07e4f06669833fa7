"""The browser is asked to keep the phone's data when there is a log to keep, once; House says what it answered."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import add_colony, claim
from tests.phone.test_story import go
from tests.support.words import text

pytestmark = pytest.mark.browser

BROWSER = """(granted) => {
  navigator.storage.persist = async () => {
    localStorage.setItem('asks', Number(localStorage.getItem('asks')) + 1);
    if (granted) localStorage.setItem('granted', 'yes');
    return granted;
  };
  navigator.storage.persisted = async () => Boolean(localStorage.getItem('granted'));
}"""
"""A browser that counts how often it is asked, and grants it or not."""
ASKS = "() => Number(localStorage.getItem('asks'))"


@pytest.mark.without_worker
@pytest.mark.parametrize(
    ("granted", "words"),
    [("true", text("house-kept")), ("false", text("house-not-kept"))],
    ids=["granted", "refused"],
)
def test_the_browser_is_asked_once_after_the_first_log_and_house_shows_the_answer(
    phone, new_server, granted, words
):
    page = phone()
    page.add_init_script(f"({BROWSER})({granted})")
    page.goto(f"{new_server.url}/#/claim/{new_server.claim_code()}")
    page.get_by_label(text("start-your-name")).fill("Mira")
    page.get_by_role("button", name=text("start-claim-it")).click()
    expect(page.get_by_role("button", name=text("colony-form-add"))).to_be_visible()
    assert page.evaluate(ASKS) == 0  # signed in, but nothing logged

    add_colony(page, "Amber")  # with its first count
    assert page.evaluate(ASKS) == 1
    go(page, new_server, "#/round")
    done = page.get_by_role("region", name=text("round-done")).get_by_role("listitem")
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(done).to_have_count(2)  # the count and a feeding: it is on the disk before the page goes
    page.reload()
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(done).to_have_count(3)
    assert page.evaluate(ASKS) == 1

    go(page, new_server, "#/settings")
    expect(page.get_by_text(words)).to_be_visible()
    page.evaluate("() => window.dispatchEvent(new Event('appinstalled'))")
    assert page.evaluate(ASKS) == 2


@pytest.mark.without_worker
def test_a_browser_that_cannot_be_asked_saves_all_the_same_and_house_says_so(phone, server):
    page = phone()
    page.add_init_script("Object.defineProperty(navigator, 'storage', { value: undefined })")
    claim(page, server)
    go(page, server, "#/round")
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(page.get_by_role("region", name=text("round-done")).get_by_role("listitem")).to_have_count(2)
    go(page, server, "#/settings")

    expect(page.get_by_text(text("house-not-kept"))).to_be_visible()
