"""Where everybody may begin a household: without a code on the first screen, or with an invitation's link."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import add_colony, opening
from tests.support.server import Server
from tests.support.words import text

from broodshelf.cli import main

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


@pytest.fixture
def open_server(tmp_path):
    made = Server(tmp_path / "data")
    made.settings["BROODSHELF_SIGNUP"] = "open"
    yield made.start()
    made.stop()


def test_a_phone_that_did_not_hear_that_it_began_a_shelf_begins_it_once(chromium, open_server):
    def begin(page):
        page.get_by_role("button", name=text("signup-begin")).click()
        page.get_by_label(text("start-your-name")).fill("Mira")
        page.get_by_role("button", name=text("start-claim-it")).click()

    def lose_the_answer(route):
        route.fetch()
        route.abort()

    with opening(chromium, service_workers="block") as phone:
        page = phone()
        page.goto(open_server.url)
        page.route("**/api/claim", lose_the_answer, times=1)
        begin(page)
        expect(page.get_by_text(text("saving-no-connection"))).to_be_visible()
        page.context.clear_cookies()  # of the answer that was lost
        page.reload()
        begin(page)
        add_colony(page, "Amber")
        kept = page.evaluate("localStorage.getItem('secret')")

    with closing(sqlite3.connect(open_server.data / "broodshelf.sqlite3")) as database:
        assert database.execute("SELECT count(*) FROM households").fetchone() == (1,)
    assert kept is None


def test_somebody_begins_a_shelf_without_a_code_and_another_one_by_an_invitation(
    chromium, open_server, monkeypatch, capsys
):
    for name, value in open_server.environment().items():
        if name.startswith("BROODSHELF_"):
            monkeypatch.setenv(name, value)
    assert main(["household", "invite"]) == 0
    link = capsys.readouterr().out.split()[1]
    with opening(chromium, service_workers="block") as phone:
        first, second = phone(), phone()
        first.goto(open_server.url)
        first.get_by_role("button", name=text("signup-begin")).click()
        first.get_by_label(text("start-your-name")).fill("Mira")
        first.get_by_role("button", name=text("start-claim-it")).click()
        add_colony(first, "Amber")

        second.goto(link)
        expect(second.get_by_label(text("start-code"))).to_have_value(link.rpartition("/")[2])
        second.get_by_label(text("start-your-name")).fill("Ada")
        second.get_by_role("button", name=text("start-claim-it")).click()
        add_colony(second, "Birch")
        expect(second.get_by_text("Amber")).to_have_count(0)
