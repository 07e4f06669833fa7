"""The colony form asks more only of a species and a vessel that the lists do not have."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim
from tests.support.words import text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def test_a_species_of_ones_own_is_described_by_length_food_founding_and_sting(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/colony/new")
    listed = page.locator("#species option[value='Lasius niger']")
    expect(listed).to_have_text(text("species-lasius-niger.common"))
    own = page.get_by_role("group", name=text("colony-form-own-species"))
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill("Birch")
    species = page.get_by_role("combobox", name=text("colony-form-species"))
    species.fill(text("species-messor-barbarus"))
    expect(own).to_have_count(0)
    species.fill("Seen once in a hedge")
    own.get_by_label(text("colony-form-length")).fill("6,5")
    own.get_by_role("button", name=text("colony-form-own-guild-harvester"), exact=True).click()
    own.get_by_label(text("colony-form-own-stings")).check()
    page.get_by_text(text("colony-form-more")).click()
    page.get_by_role("combobox", name=text("colony-form-lives")).select_option("")
    page.get_by_role("group", name=text("colony-form-own-vessel")).get_by_label(
        text("colony-form-own-vessel-length")
    ).fill("120")
    page.get_by_role("button", name=text("colony-form-add")).click()

    expect(page.get_by_role("heading", name=text("colony-plan"))).to_be_visible()
    expect(page.get_by_text("Seen once in a hedge")).to_be_visible()
    expect(
        page.get_by_role("region", name=text("colony-plan")).get_by_text(text("need-seeds")).first
    ).to_be_visible()
    expect(page.get_by_text(text("caution-stings")).first).to_be_visible()
