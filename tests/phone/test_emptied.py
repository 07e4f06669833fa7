"""A browser that emptied its storage and kept the cookie: the phone comes back in, and says what may be lost."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim
from tests.phone.test_story import go
from tests.support.server import Server
from tests.support.words import text

pytestmark = pytest.mark.browser

EVICTED = "indexeddb,local_storage,service_workers,cache_storage"


def empty_the_storage(page: Page, server: Server) -> None:
    """Do what a browser does that needs room: all of the origin goes but its cookies."""
    page.goto("about:blank")
    devtools = page.context.new_cdp_session(page)
    devtools.send("Storage.clearDataForOrigin", {"origin": server.url, "storageTypes": EVICTED})


def test_a_phone_whose_storage_was_emptied_comes_back_in_by_itself_and_says_what_may_be_lost(phone, server):
    page = phone()
    claim(page, server)
    empty_the_storage(page, server)
    page.goto(f"{server.url}/#/shelf")

    expect(page.get_by_role("link", name="Amber").first).to_be_visible()
    lost = page.get_by_role("alert").filter(has_text=text("frame-banner-emptied"))
    expect(lost).to_be_visible()
    page.reload()
    expect(lost).to_be_visible()  # until somebody has read it
    lost.get_by_role("button", name=text("frame-banner-understood")).click()
    expect(lost).to_have_count(0)
    page.reload()
    expect(page.get_by_role("link", name="Amber").first).to_be_visible()
    expect(lost).to_have_count(0)


def test_a_phone_that_was_signed_out_meanwhile_is_asked_for_a_code(phone, server):
    page = phone()
    claim(page, server)
    empty_the_storage(page, server)
    page.context.clear_cookies()
    with page.expect_response(lambda answer: answer.url.endswith("/api/whoami")) as asked:
        go(page, server, "#/shelf")

    assert asked.value.json() == {"me": None}
    expect(page.get_by_role("button", name=text("start-have-code"))).to_be_visible()
