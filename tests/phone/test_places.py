"""Places: their warmth moves the plan of the colonies that stand in them."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, open_colony
from tests.phone.test_story import go

pytestmark = pytest.mark.browser


def test_a_hot_reading_of_a_place_is_urgent_for_the_colony_that_stands_there(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/places")
    page.get_by_role("button", name="Add a place").click()
    page.get_by_label("Name of the place").fill("Cabinet by the window")
    page.get_by_label("By day, °C").fill("abc")
    page.get_by_role("button", name="Save").click()
    expect(page.get_by_role("alert")).to_contain_text("This temperature cannot be")
    page.get_by_label("By day, °C").fill("24,5")
    page.get_by_role("button", name="Save").click()
    expect(page.get_by_text("24.5 °C by day")).to_be_visible()
    open_colony(page, server)
    page.get_by_role("button", name="Change").click()
    page.get_by_role("combobox", name="Stands in").select_option("Cabinet by the window")
    page.get_by_role("button", name="Save").click()
    go(page, server, "#/places")
    expect(page.get_by_role("article").get_by_text("Amber")).to_be_visible()
    page.get_by_role("button", name="Log a reading").click()
    page.get_by_label("Temperature, °C").fill("34")
    page.get_by_role("button", name="Log the reading").click()
    expect(page.get_by_text("All synced")).to_be_visible()
    go(page, server, "#/round")

    expect(page.get_by_role("article").filter(has_text="34 °C")).to_contain_text("urgent")


def test_a_colony_put_to_rest_says_since_when_and_until(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name="Change").click()
    page.get_by_role("button", name="In winter rest").click()
    page.get_by_label("Wake it up on").fill("2099-03-01")
    page.get_by_role("button", name="Save").click()
    plan = page.get_by_role("region", name="The plan")

    expect(plan.get_by_text("In winter rest.")).to_be_visible()
    expect(plan.get_by_text("Wake it up in")).to_be_visible()
