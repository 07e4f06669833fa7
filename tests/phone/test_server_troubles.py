"""A server whose store is in trouble: the phone says what is wrong, keeps what was logged, and sends it later."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest
from playwright.sync_api import expect
from tests.phone.between import between
from tests.phone.conftest import claim
from tests.phone.test_story import go, online_again
from tests.support.words import text

pytestmark = pytest.mark.browser


def test_a_log_made_while_the_database_is_held_stays_on_the_phone_and_is_sent_afterwards(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    with closing(sqlite3.connect(server.data / "broodshelf.sqlite3", isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        page.get_by_role("article").filter(has_text=text("food-sugar-water")).get_by_role(
            "button", name=text("round-as-suggested")
        ).click()
        # the server waits for the lock itself, 10 s, before it gives up
        banner = page.get_by_role("alert").filter(has_text=text("saving-problem-database-locked"))
        expect(banner).to_be_visible(timeout=30_000)
        expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
        other.execute("ROLLBACK")
    online_again(page)

    expect(banner).to_have_count(0)


def test_a_full_disk_is_named_and_the_log_waits(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    told = {"type": "urn:broodshelf:problem:disk_full", "status": 507, "code": "disk_full", "detail": "…"}
    with between(page, "/api/sync", told):
        page.get_by_role("article").filter(has_text=text("food-sugar-water")).get_by_role(
            "button", name=text("round-as-suggested")
        ).click()
        expect(page.get_by_role("alert").filter(has_text=text("saving-problem-disk-full"))).to_be_visible()
        expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    online_again(page)

    expect(page.get_by_role("alert")).to_have_count(0)
