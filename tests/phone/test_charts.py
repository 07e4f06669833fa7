"""Charts with a table behind, shared as a picture; a pass seen as the stand-in will; holds and mixing in the larder."""

from __future__ import annotations

import datetime as dt
import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim
from tests.phone.test_story import go
from tests.support.words import beginning, drops_of_sugar_water, like, text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

PNG = b"\x89PNG\r\n\x1a\n"  # ISO/IEC 15948, 5.2


def log_counts(page: Page, colony_id: str, counts: dict[str, int]) -> None:
    """Log workers by the instant at which they were counted."""
    page.evaluate(
        """async ([colony, counts]) => {
          const { logAll } = await import(`/static/${document.body.dataset.build}/signals/actions.js`);
          await logAll(Object.entries(counts).map(([happened_at, workers]) => (
            { kind: 'count', set: { colony_id: colony, workers, happened_at } })));
        }""",
        [colony_id, counts],
    )


def test_growth_is_drawn_from_the_counts_with_the_same_figures_in_a_table_and_as_a_picture(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    months = {1: 8, 2: 13, 3: 21}
    log_counts(
        page,
        colony_id,
        {f"2026-0{month}-15T12:00:00.000+01:00": workers for month, workers in months.items()},
    )
    go(page, server, f"#/colony/{colony_id}")
    page.get_by_text(text("colony-charts")).click()
    expect(page.get_by_role("img", name=text("chart-growth-words", first=8, last=21))).to_be_visible()
    page.get_by_text(text("part-table")).click()
    cells = page.get_by_role("cell").all_inner_texts()
    with page.expect_download() as download:
        page.get_by_role("button", name=text("chart-share")).click()
    picture = Path(download.value.path()).read_bytes()

    assert cells[1::2][:3] == [text("event-coarse-few"), "21", "13"]
    assert picture.startswith(PNG) and len(picture) > 5_000


def test_the_growth_to_come_is_drawn_with_its_range(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    now = dt.datetime.now(dt.UTC)
    days_ago = {21: 30, 14: 36, 7: 44, 0: 53}
    counts = {(now - dt.timedelta(days=ago)).isoformat(): workers for ago, workers in days_ago.items()}
    log_counts(page, colony_id, counts)
    go(page, server, f"#/colony/{colony_id}")
    page.get_by_text(text("colony-charts")).click()
    growth = f"{text('chart-growth-words', first=30, last=53)} {beginning('chart-growth-ahead')}"
    chart = page.get_by_role("img", name=growth)
    expect(chart).to_be_visible()

    expect(chart.locator("path.band")).to_have_count(1)
    words = chart.get_attribute("aria-label") or ""
    ahead = text(
        "chart-growth-ahead", best=r"(?P<best>\d+)", day=".*", low=r"(?P<low>\d+)", high=r"(?P<high>\d+)"
    )
    best, low, high = (int(re.search(ahead, words)[which]) for which in ("best", "low", "high"))
    assert 30 < low < best < high < 200  # how far depends on the season of the day on which this runs


def test_the_water_is_drawn_from_readings_by_ruler_too_and_from_what_filled_it(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    # 8 mL in a bore of 14 mm (catalogue/vessels.toml) are 52 mm
    page.evaluate(
        """async (colony) => {
          const { logAll } = await import(`/static/${document.body.dataset.build}/signals/actions.js`);
          const logs = [
            ['water', { action: 'read', level_mm: 20 }],
            ['water', { action: 'hydrate' }],
            ['water', { action: 'read', level_mm: 0.5, reading: 'half' }],
            ['move', { how: 'offered', fresh_reservoir: true }],
            ['move', { how: 'finished', fresh_reservoir: true }],
            ['water', { action: 'read', reading: 'quarter' }],
          ];
          await logAll(logs.map(([kind, set], day) => (
            { kind, set: { colony_id: colony, ...set, happened_at: `2026-03-${10 + day}T12:00:00.000+01:00` } })));
        }""",
        colony_id,
    )
    go(page, server, f"#/colony/{colony_id}")
    page.get_by_text(text("colony-charts")).click()
    charts = page.get_by_role("group", name=text("chart-which"))
    charts.get_by_role("button", name=text("chart-water")).click()
    page.get_by_text(text("part-table")).click()
    newest_first = page.get_by_role("cell").all_inner_texts()[1::2]

    shares = [25, 100, 0, 100, 38]
    assert newest_first[:5] == [text("part-percent", percent=share) for share in shares]


def test_the_keeper_sees_a_pass_as_the_stand_in_will_and_can_print_it(phone, server):
    keeper = phone()
    claim(keeper, server)
    go(keeper, server, "#/handover")
    keeper.get_by_role("textbox", name=text("handover-who"), exact=True).fill("Grandpa")
    keeper.get_by_role("button", name=text("handover-all")).click()
    keeper.get_by_label(text("handover-know")).fill("The flies are in the fridge door.")
    keeper.get_by_role("button", name=text("handover-go")).click()
    keeper.get_by_role("button", name=text("handover-preview")).click()
    sheet = keeper.get_by_role("dialog", name=text("handover-preview-title", who="Grandpa"))
    expect(sheet).to_contain_text(text("stand-in-today", count=2, minutes=4))
    expect(sheet).to_contain_text("The flies are in the fridge door.")
    keeper.get_by_role("button", name=text("frame-close")).click()
    keeper.get_by_role("link", name=text("handover-print")).click()

    expect(keeper.get_by_role("heading", name=text("paper-sheet", who="Grandpa"))).to_be_visible()
    # a sheet of days: a colony that takes a drop every six days may be fed twice within the pass
    first_day = keeper.get_by_role("region").first
    expect(first_day.get_by_role("cell", name=drops_of_sugar_water(1))).to_be_visible()


def test_a_food_caught_outdoors_is_held_in_the_larder_with_its_days(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/larder")
    page.get_by_role("button", name=text("larder-add")).click()
    page.locator("select[name=food]").select_option("cricket")
    page.get_by_label(text("larder-origin")).select_option("wild_web_spider")
    page.get_by_role("button", name=text("larder-go")).click()
    # two days of hold: origins.toml, common practice
    expect(page.get_by_role("article").filter(has_text=text("food-cricket"))).to_contain_text(
        like("larder-held", days=2)
    )
    page.get_by_role("button", name=text("larder-add")).click()
    page.locator("select[name=food]").select_option("mealworm")
    page.get_by_label(text("measure-ask-piece")).fill("a few")
    page.get_by_role("button", name=text("larder-go")).click()
    expect(page.get_by_role("alert")).to_have_text(text("larder-no-amount"))
    page.get_by_label(text("measure-ask-piece")).fill("12")
    page.get_by_role("button", name=text("larder-go")).click()
    expect(page.get_by_role("article").filter(has_text=text("food-mealworm"))).to_be_visible()
    amounts = page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`))"
        ".rowsOf('lot').map(({ set }) => [set.amount, set.unit])"
    )
    assert [12, "piece"] in amounts
    page.get_by_role("button", name=text("larder-add")).click()
    page.get_by_label(text("larder-origin")).select_option("home_cockroach")

    expect(page.get_by_role("alert")).to_have_text(text("larder-refused"))
    expect(page.get_by_role("button", name=text("larder-go"))).to_have_count(0)


def test_sugar_water_is_mixed_by_weight(phone, server):
    """25 % of the weight in 30 mL of water at 0.998 g/mL: 30 x 0.998 x 25 / 75 = 9.98 g of sugar; by hand."""
    page = phone()
    claim(page, server)
    go(page, server, "#/larder")
    page.get_by_role("button", name=text("larder-mix")).click()
    expect(page.get_by_text(like("larder-recipe", sugar_g=10, water_ml=30))).to_be_visible()
    page.get_by_role("button", name=text("larder-batch")).click()

    expect(
        page.get_by_role("article").filter(has_text=text("larder-batch-name", percent=25))
    ).to_contain_text(text("larder-left", days=7))
