"""The sheet of a pass on paper: its days, what is to be done on each, and faults by their names."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect
from tests.phone.test_ahead import days_on
from tests.phone.test_helping import crowded_tube
from tests.phone.test_story import go
from tests.support.server import Server
from tests.support.words import any_of, labelled, like, text

from broodshelf.languages import say as say_in

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

LEAK = {"kind": "fault", "days": 1, "fault": "leak"}


def small_crickets(count: int) -> str:
    """Return a serving of so many small crickets, killed and cut."""
    cricket = text("food-cricket.counted", n=count)
    portion = text("portion-piece-sized", n=count, size=text("size-small"), food=cricket)
    return text("portion-with-form", portion=portion, form=text("form-cut"))


def begin_pass(page: Page, server: Server, who: str) -> None:
    """Fill in whom a pass is for and for which colony, which is crowded and has a leak."""
    crowded_tube(page, server, LEAK)
    go(page, server, "#/handover")
    page.get_by_role("textbox", name=text("handover-who"), exact=True).fill(who)
    page.get_by_role("button", name="Amber", exact=True).click()


def test_the_sheet_of_a_pass_tells_each_of_its_days_repeats_included_and_a_leak_by_its_name(phone, server):
    page = phone()
    begin_pass(page, server, "Grandpa")
    page.get_by_label(text("handover-first")).fill(days_on(page, 0))
    page.get_by_label(text("handover-last")).fill(days_on(page, 8))
    page.get_by_role("button", name=text("handover-go")).click()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    page.get_by_role("link", name=text("handover-print")).click()
    expect(page.get_by_role("heading", name=text("paper-sheet", who="Grandpa"))).to_be_visible()
    how = page.get_by_role("region", name=text("stand-in-how"))
    days = page.get_by_role("region")
    for other in ("paper-colonies", "stand-in-how"):
        days = days.filter(has_not=page.get_by_role("heading", name=text(other)))

    expect(days).to_have_count(9)
    today = page.evaluate(
        "() => new Date().toLocaleDateString([], {weekday: 'long', day: 'numeric', month: 'long'})"
    )
    expect(days.first.get_by_role("heading")).to_have_text(today)
    leak = page.get_by_role("row").filter(has_text=text("fault-leak"))
    expect(leak).to_have_count(1)
    expect(days.first).to_contain_text(text("fault-leak"))
    expect(how).to_contain_text(text("reason-helper-call"))
    expect(how).to_contain_text(text("reason-helper-wet"))
    prey = how.locator(".way").filter(has_text=any_of(*(small_crickets(n) for n in range(1, 10))))
    expect(prey.locator("svg.drawing")).to_have_count(5)
    piece = prey.get_by_role("img", name=text("paper-prey-of", mm=6.5))
    assert round(piece.bounding_box()["width"]) == round(30 * 96 / 25.4), "a ruler of 30 mm, as CSS prints it"
    expect(page.get_by_text(any_of(text("todo-water"), text("todo-room")))).to_have_count(0)
    servings = (like(f"portion-{unit}", food=text("food-sugar-water.of")) for unit in ("drop", "ml"))
    sugar = days.filter(has=page.get_by_role("cell", name=any_of(*servings)))
    assert sugar.count() >= 2
    expect(days.first).to_contain_text(text("food-sugar-water"))
    leftovers = labelled(text("todo-leftovers"), text("food-cricket"))
    expect(page.get_by_role("cell", name=leftovers).first).to_be_visible()


def test_the_sheet_of_a_pass_is_printed_in_the_language_of_whoever_gets_it_and_nothing_else(phone, server):
    page = phone()
    begin_pass(page, server, "Babcia")
    page.get_by_label(text("house-language")).select_option("pl")
    page.get_by_role("button", name=text("handover-go")).click()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    page.get_by_role("link", name=text("handover-print")).click()

    heading = page.get_by_role("heading", level=1)
    expect(heading).to_have_text(say_in("pl", "paper-sheet", {"who": "Babcia"}))
    expect(page.locator("html")).to_have_attribute("lang", "pl")
    expect(page.get_by_role("row").filter(has_text=say_in("pl", "fault-leak"))).to_have_count(1)
    page.get_by_role("navigation").get_by_role("link", name=say_in("pl", "frame-nav-shelf")).click()
    expect(page.locator("html")).to_have_attribute("lang", "en")  # the phone's own stays
    expect(page).to_have_url(f"{server.url}/#/shelf")


def test_a_stand_in_reads_a_leak_by_its_name(phone, server):
    keeper = phone()
    crowded_tube(keeper, server, LEAK)
    go(keeper, server, "#/handover")
    keeper.get_by_role("textbox", name=text("handover-who"), exact=True).fill("Grandpa")
    keeper.get_by_role("button", name="Amber", exact=True).click()
    keeper.get_by_role("button", name=text("handover-go")).click()
    keeper.get_by_role("button", name=text("handover-preview")).click()

    preview = keeper.get_by_role("dialog")  # not to be touched, so by its element alone
    expect(preview.locator("article").filter(has_text=text("fault-leak"))).to_be_visible()
