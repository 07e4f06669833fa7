"""The journal of the house's doors, as a keeper reads it."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, worker_ready
from tests.phone.test_story import go, pair
from tests.support.words import text

pytestmark = pytest.mark.browser


@pytest.mark.without_worker
def test_a_keeper_reads_under_house_what_happened_at_the_doors_and_a_wrong_code_is_among_it(phone, server):
    mine, other = phone(), phone()
    claim(mine, server)
    pair(other, mine, server)
    go(mine, server, "#/settings")
    mine.get_by_label(text("house-new-phone")).fill("BBBB-BBBB")
    mine.get_by_role("button", name=text("house-look-up"), exact=True).click()
    expect(mine.get_by_text(text("problem-pairing-unknown"))).to_be_visible()
    go(mine, server, "#/round")
    expect(mine.get_by_role("heading", name=text("round-title"))).to_be_visible()  # House goes, and asks anew
    go(mine, server, "#/settings")
    doors = mine.get_by_role("region", name=text("house-doors-title"))

    expect(doors.get_by_role("listitem")).to_have_count(3)
    expect(doors.get_by_role("listitem").first).to_contain_text(
        text("house-door-wrong-codes", where="pairing", count=1, who="Mira")
    )
    expect(doors.get_by_role("listitem").nth(1)).to_contain_text("for Mira")


def test_without_a_connection_the_house_says_so_and_the_journal_comes_when_there_is_one(phone, server):
    mine = phone()
    claim(mine, server)
    worker_ready(mine)
    # needs the server, too, and stands in the house as well
    expect(mine.get_by_role("heading", name=text("phone-nudges-title"))).to_be_visible()
    mine.context.set_offline(True)
    mine.get_by_role("link", name=text("frame-nav-settings")).first.click()

    expect(mine.get_by_text(text("part-needs-server"))).to_be_visible()
    mine.context.set_offline(False)
    mine.get_by_role("button", name=text("part-again")).click()
    expect(mine.get_by_role("region", name=text("house-doors-title"))).to_contain_text("Mira")
