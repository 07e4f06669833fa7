"""Brood from another colony: only colonies of the same species are offered as donors."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import add_colony, claim, open_colony
from tests.phone.test_story import go

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def test_only_the_same_species_gives_brood_and_the_diary_says_what_was_added(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/colony/new")
    add_colony(page, "Birch")
    go(page, server, "#/colony/new")
    page.get_by_role("textbox", name="Name", exact=True).fill("Cedar")
    page.get_by_role("combobox", name="Species").fill("Messor barbarus")
    page.get_by_role("button", name="Add the colony").click()
    expect(page.get_by_role("heading", name="The plan")).to_be_visible()
    open_colony(page, server, "Amber")
    page.get_by_role("button", name="Brood added").click()
    donors = page.get_by_role("group", name="From which colony")
    expect(donors.get_by_role("button")).to_have_text(["Birch", "From elsewhere"])
    donors.get_by_role("button", name="Birch").click()
    page.get_by_label("How many").fill("12")
    page.get_by_role("button", name="Log the brood").click()

    expect(page.get_by_role("region", name="Diary").get_by_text("Brood added: 12 pupae")).to_be_visible()
    expect(page.get_by_text("All synced")).to_be_visible()
