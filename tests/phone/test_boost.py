"""Brood from another colony: only colonies of the same species are offered as donors."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import add_colony, claim, open_colony
from tests.phone.test_story import go
from tests.support.words import text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def test_only_the_same_species_gives_brood_and_the_diary_says_what_was_added(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/colony/new")
    add_colony(page, "Birch")
    go(page, server, "#/colony/new")
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill("Cedar")
    page.get_by_role("combobox", name=text("colony-form-species")).fill(text("species-messor-barbarus"))
    page.get_by_role("button", name=text("colony-form-add")).click()
    expect(page.get_by_role("heading", name=text("colony-plan"))).to_be_visible()
    open_colony(page, server, "Amber")
    page.get_by_role("button", name=text("event-kind-boost")).click()
    donors = page.get_by_role("group", name=text("log-donor"))
    expect(donors.get_by_role("button")).to_have_text(["Birch", text("log-from-elsewhere")])
    donors.get_by_role("button", name="Birch").click()
    page.get_by_label(text("log-how-many")).fill("12")
    page.get_by_role("button", name=text("log-boost")).click()

    expect(
        page.get_by_role("region", name=text("colony-diary")).get_by_text(
            text("event-brood-added-some", brood="pupae", count=12)
        )
    ).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
