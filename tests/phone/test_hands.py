"""The phone in odd hands: a clock that is off, a first pull that takes its time, a keyboard instead of a thumb."""

from __future__ import annotations

import datetime as dt
import time

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim
from tests.phone.test_load import SEE_ALL
from tests.phone.test_round import outbox_and_rows, two_colonies
from tests.phone.test_story import go, pair
from tests.support.words import text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

TWO_DAYS_S = 2 * 86_400


def focused(page: Page) -> str:
    return page.evaluate(
        "() => document.activeElement?.tagName + ' ' + (document.activeElement?.textContent ?? '').trim()"
    )


def test_a_phone_two_days_ahead_logs_when_it_happened_and_sees_what_is_due_today(phone, server):
    page = phone()
    page.clock.set_fixed_time(time.time() + TWO_DAYS_S)
    claim(page, server)
    expect(page.get_by_text(text("frame-clock-ahead", unit="days", count=2))).to_be_visible()
    go(page, server, "#/round")
    sugar = page.get_by_role("article").filter(has_text=text("need-sugar")).first
    sugar.get_by_role("button", name=text("round-as-suggested")).click()
    expect(
        page.get_by_role("region", name=text("round-done")).get_by_text(text("food-sugar-water"))
    ).to_be_visible()
    logged = dt.datetime.fromisoformat(outbox_and_rows(page, "feeding")[0]["happened_at"])

    assert abs(logged.timestamp() - time.time()) < 300


def test_a_phone_that_joins_says_what_is_on_its_way_instead_of_an_empty_shelf(phone, server):
    keeper, new = phone(), phone()
    claim(keeper, server)
    held = []
    holding = True
    new.route("**/api/sync", lambda route: held.append(route) if holding else route.continue_())
    pair(new, keeper, server)
    expect(new.get_by_role("heading", name=text("round-title"))).to_be_visible()

    expect(new.get_by_text(text("round-joining"))).to_be_visible()
    expect(new.get_by_text(text("round-empty-shelf"))).to_have_count(0)
    expect(new.get_by_text(text("saving-synced"))).to_have_count(0)
    holding = False
    for route in held:
        route.continue_()
    expect(new.get_by_role("article").first).to_be_visible()
    expect(new.get_by_text(text("round-joining"))).to_have_count(0)


def test_going_to_a_screen_names_the_page_and_puts_the_focus_on_its_head(phone, server):
    page = phone()
    claim(page, server)
    page.get_by_role("link", name=text("frame-nav-larder")).focus()
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name=text("larder-title"))).to_be_visible()

    page.wait_for_function(f"() => document.title.startsWith('{text('larder-title')}')")
    assert focused(page) == f"H1 {text('larder-title')}"


def test_what_stands_there_before_any_script_has_a_main_part_and_a_head(chromium, server):
    context = chromium.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(server.url)
    app = page.request.get(f"{server.url}/manifest.webmanifest").json()[
        "name"
    ]  # the bare page has no messages yet

    expect(page.get_by_role("main").get_by_role("heading", level=1)).to_have_text(app)
    context.close()


def test_after_a_task_is_done_by_keyboard_the_focus_stays_in_the_round(phone, server):
    page = phone()
    two_colonies(page, server)
    page.evaluate(SEE_ALL)
    done = page.get_by_role("region", name=text("round-now")).get_by_role(
        "button", name=text("round-as-suggested")
    )
    before = done.count()
    done.first.focus()
    page.keyboard.press("Enter")
    expect(done).to_have_count(before - 1)

    page.wait_for_function("() => document.activeElement !== document.body")
    assert page.evaluate("() => Boolean(document.activeElement.closest('main'))")


def test_escape_in_a_sheet_gives_the_focus_back_to_what_opened_it(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    opener = page.get_by_role("button", name=text("round-many"))
    opener.focus()
    page.keyboard.press("Enter")
    expect(page.get_by_role("dialog")).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.get_by_role("dialog")).to_have_count(0)

    expect(opener).to_be_focused()


BARS_PX = """() => [...document.querySelectorAll('.top, .bottom')]
  .map((bar) => bar.getBoundingClientRect())
  .reduce((sum, { top, bottom }) => sum + Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0)), 0)"""
"""How much of the height the bars take."""


@pytest.mark.parametrize("size", ["100%", "200%"])
def test_on_a_phone_on_its_side_the_bars_scroll_away_and_leave_the_height_to_the_tasks(phone, server, size):
    page = phone()
    two_colonies(page, server)
    page.set_viewport_size({"width": 568, "height": 320})
    page.evaluate("(size) => { document.documentElement.style.fontSize = size; }", size)
    page.get_by_role("article").nth(1).evaluate("(task) => task.scrollIntoView()")

    assert page.evaluate(BARS_PX) == 0
    page.get_by_role("link", name=text("frame-nav-larder")).click()  # they are at the ends of the page
    expect(page.get_by_role("heading", name=text("larder-title"))).to_be_visible()


def test_on_a_phone_held_upright_the_bars_stay_in_reach(phone, server):
    page = phone()
    two_colonies(page, server)
    page.get_by_role("article").nth(1).evaluate("(task) => task.scrollIntoView()")

    assert 90 < page.evaluate(BARS_PX) < 844 / 5
