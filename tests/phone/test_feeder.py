"""What the phone asks about sugar: the level of a feeder, and where a food colour shows."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, open_colony
from tests.support.words import capital, like, text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def test_a_feeder_is_checked_by_its_level_and_a_tinted_lot_asks_where_the_colour_shows(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/larder")
    page.get_by_role("button", name=text("larder-mix")).click()
    page.get_by_role("group", name=text("larder-tint")).get_by_role(
        "button", name=text("measure-tint-blue")
    ).click()
    expect(page.get_by_text(text("larder-tint-why"))).to_be_visible()
    page.get_by_role("button", name=text("larder-batch")).click()
    expect(page.get_by_text(f"{text('measure-tint-blue')} · 36 mL")).to_be_visible()

    open_colony(page, server, "Amber")
    page.get_by_role("button", name=text("event-kind-feeding"), exact=True).click()
    sheet = page.get_by_role("dialog")
    sheet.get_by_role("group", name=text("log-food")).get_by_role(
        "button", name=text("reckon-sugar-water")
    ).click()
    sheet.get_by_role("group", name=text("log-offered-in")).get_by_role(
        "button", name=text("log-vessel-feeder")
    ).click()
    # six days: common practice, no source (catalogue/foods.toml)
    expect(sheet.get_by_text(text("log-outcome-later", hours=144))).to_be_visible()
    sheet.get_by_role("button", name=text("log-go")).click()
    diary = page.get_by_role("region", name=text("colony-diary"))
    sugar_water = text("portion-ml", n=1, food=text("food-sugar-water.of"))
    in_feeder = text("portion-with-form", portion=sugar_water, form=text("form-feeder"))
    expect(diary.get_by_text(in_feeder)).to_be_visible()

    page.get_by_role("button", name=text("event-kind-check"), exact=True).click()
    sheet.get_by_role("group", name=text("log-colour-seen")).get_by_role(
        "button", name=text("event-colour-seen-gasters")
    ).click()
    sheet.get_by_role("group", name=text("log-feeder-level")).get_by_role(
        "button", name=text("event-reading-half")
    ).click()

    expect(diary.get_by_text(text("event-feeder", level=text("event-reading-half")))).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def test_a_lot_of_crickets_carries_its_size(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/larder")
    page.get_by_role("button", name=text("larder-add")).click()
    page.locator("select[name=food]").select_option(label=capital(text("food-cricket")))
    page.get_by_role("group", name=text("larder-size")).get_by_role(
        "button", name=text("size-medium")
    ).click()
    page.get_by_role("button", name=text("larder-go")).click()

    expect(page.get_by_text(f"{text('size-medium')} · {text('origin-bought-or-bred')}")).to_be_visible()


def test_a_phone_that_measures_in_fluid_ounces_types_and_steps_in_them_and_stores_ml(phone, server):
    """1 fl oz is 29.5735 mL; of it and a third of its weight in sugar about 36 mL, by hand."""
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/settings")
    volumes = page.get_by_role("group", name=text("look-volumes"))
    volumes.get_by_role("button", name=text("measure-fl-oz")).click()
    page.goto(f"{server.url}/#/larder")
    page.get_by_role("button", name=text("larder-mix")).click()
    expect(page.get_by_role("group", name=text("larder-water"))).to_contain_text(
        f"1{text('larder-of-water', unit=text('measure-fl-oz'))}"
    )
    expect(
        page.get_by_text(like("larder-recipe", sugar_g=9.8, water_ml="1 fl oz (29.57 mL)"))
    ).to_be_visible()
    page.get_by_role("button", name=text("larder-batch")).click()
    batch = page.get_by_role("article").filter(has_text=text("larder-batch-name", percent=25))
    expect(batch).to_contain_text("1.2 fl oz (36 mL)")
    batch.get_by_role("button", name=text("larder-left-now")).click()
    left = page.get_by_label(text("measure-ask-fl-oz"))
    expect(left).to_have_value("1.22")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_role("dialog")).to_have_count(0)
    assert lots(page) == [[36, "ml"]], "a field that nobody touched keeps what was stored"
    batch.get_by_role("button", name=text("larder-left-now")).click()
    left.fill("0.5")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(batch).to_contain_text("0.5 fl oz (14.79 mL)")
    assert lots(page) == [[14.79, "ml"]]


def lots(page) -> list:
    """What the phone keeps of each lot: amount and unit."""
    return page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`))"
        ".rowsOf('lot').map(({ set }) => [set.amount, set.unit])"
    )
