"""What the first button of a nest move says, and what a stand-in sees of the same colony."""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page, Route, expect
from tests.phone.conftest import claim
from tests.phone.test_story import go
from tests.support.server import Server
from tests.support.words import any_of, text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

LOG = """async (logs) => {
  const { logAll } = await import(`/static/${document.body.dataset.build}/signals/actions.js`);
  const { rowsOf } = await import(`/static/${document.body.dataset.build}/signals/rows.js`);
  const colony_id = rowsOf('colony')[0].id;
  const ago = (days) => new Date(Date.now() - days * 86_400_000).toISOString();
  await logAll(logs.map(({ kind, days, ...set }) => ({ kind, set: { colony_id, happened_at: ago(days), ...set } })));
}"""
CROWDED = {"kind": "count", "days": 0, "workers": 400, "larvae": "some"}
FULL = {"kind": "water", "days": 3, "action": "read", "reading": "full"}
LOW = {"kind": "water", "days": 3, "action": "read", "reading": "quarter"}


def crowded_tube(page: Page, server: Server, *logs: dict[str, Any]) -> None:
    claim(page, server)
    page.evaluate(LOG, [CROWDED, *logs])
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def link_of_a_pass(keeper: Page, server: Server) -> str:
    """Make a pass for Grandpa and return its link."""
    go(keeper, server, "#/handover")
    keeper.get_by_role("textbox", name=text("handover-who"), exact=True).fill("Grandpa")
    keeper.get_by_role("button", name="Amber", exact=True).click()
    keeper.get_by_role("button", name=text("handover-go")).click()
    keeper.get_by_role("button", name=text("handover-make-link")).click()
    return keeper.get_by_role("link", name="#/pass/").inner_text()


def test_the_first_button_of_a_nest_move_is_that_a_nest_was_offered(phone, server):
    page = phone()
    crowded_tube(page, server, FULL)
    go(page, server, "#/round")
    task = page.get_by_role("article").filter(has_text=text("todo-room"))
    expect(task.locator(".actions button").first).to_have_text(text("round-offered"))
    task.get_by_role("button", name=text("round-offered")).click()

    expect(task).to_have_count(0)
    expect(page.get_by_role("region", name=text("round-done"))).to_contain_text(text("round-offered"))


def test_a_stand_in_sees_to_the_water_step_by_step_and_is_asked_for_no_nest(phone, server):
    keeper = phone()
    crowded_tube(keeper, server, LOW)
    go(keeper, server, "#/round")
    expect(keeper.get_by_text(text("reason-move-beside"))).to_have_count(1)
    link = link_of_a_pass(keeper, server)

    guest = phone()
    guest.goto(link)
    guest.get_by_role("button", name=text("start-open-pass")).click()
    expect(guest.get_by_role("heading", name="Amber")).to_be_visible()
    expect(guest.get_by_text(text("todo-room"))).to_have_count(0)
    expect(guest.get_by_text(any_of(text("reason-move-beside"), text("reason-move-force")))).to_have_count(0)
    water = guest.get_by_role("article").filter(has_text=text("todo-water"))
    expect(water.get_by_text(text("reason-tube-step-still"))).to_be_visible()
    expect(water.get_by_text(text("reason-tube-step-find"))).to_be_visible()
    water.get_by_role("button", name=text("stand-in-looked")).click()
    expect(water).to_have_count(0)  # looked at: what it needs now is the keeper's
    guest.get_by_role("button", name=text("event-kind-fault")).click()
    sheet = guest.get_by_role("dialog")
    expect(sheet.get_by_text(text("reason-helper-call"))).to_be_visible()


def test_a_phone_that_opens_a_pass_does_not_wait_for_the_sync_of_the_keeper_that_it_was(phone, server):
    page = phone()
    claim(page, server)
    link = link_of_a_pass(page, server)
    keepers_device = page.evaluate("() => localStorage.getItem('device')")
    page.evaluate(
        "() => fetch('/api/logout', { method: 'POST', body: '{}', headers: { 'Content-Type': 'application/json' } })"
    )
    unanswered: list[Route] = []

    def hold(route: Route) -> None:
        if keepers_device in (route.request.post_data or ""):
            unanswered.append(route)
        else:
            route.continue_()

    page.route("**/api/sync", hold)
    page.goto(link.replace("/#", "/?#"))  # another address than that of the page, so that the app starts
    page.get_by_role("button", name=text("start-open-pass")).click()

    expect(page.get_by_role("heading", name=text("stand-in-yours"))).to_be_visible()
    assert unanswered, "the keeper's sync is still under way"
    unanswered[0].abort()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    expect(page.get_by_role("heading", name=text("stand-in-yours"))).to_be_visible()


HINT = "The flies are in the blue box."


def test_a_keepers_hint_and_picture_stand_above_steps_that_are_drawn_and_what_failed_is_written_down(
    phone, server, picture
):
    keeper = phone()
    crowded_tube(keeper, server, FULL)
    go(keeper, server, "#/shelf")
    keeper.get_by_role("link", name="Amber").first.click()
    keeper.get_by_role("button", name=text("colony-change")).click()
    keeper.get_by_text(text("stand-in-hint"), exact=True).first.click()
    keeper.get_by_role("textbox", name=text("stand-in-hint")).fill(HINT)
    keeper.get_by_label(text("stand-in-hint-picture")).set_input_files(picture)
    with keeper.expect_response(  # the picture goes after the log
        lambda answer: "/api/photos/" in answer.url and answer.request.method == "PUT" and answer.ok
    ):
        keeper.get_by_role("button", name=text("colony-form-save")).click()
    expect(keeper.get_by_text(text("saving-synced"))).to_be_visible()
    link = link_of_a_pass(keeper, server)

    guest = phone()
    guest.goto(link)
    guest.get_by_role("button", name=text("start-open-pass")).click()
    sugar = guest.get_by_role("article").filter(has_text=text("food-sugar-water"))
    expect(sugar.get_by_text(HINT)).to_be_visible()
    shown = sugar.get_by_role("img", name=text("stand-in-hint-picture"))
    expect(shown).to_be_visible()
    assert shown.evaluate("(img) => img.decode().then(() => img.naturalWidth)") > 0
    steps = sugar.get_by_role("listitem")
    expect(steps).to_have_count(5)
    expect(steps.locator("svg.drawing")).to_have_count(5)
    expect(sugar.get_by_role("button", name=text("stand-in-read-aloud"))).to_be_visible()
    sugar.get_by_role("button", name=text("stand-in-could-not")).click()
    guest.get_by_role("dialog").get_by_role("button", name=text("stand-in-why-none")).click()
    expect(guest.get_by_text(text("stand-in-told"))).to_be_visible()
    expect(sugar).to_have_count(1)  # it stays on the list
    expect(guest.get_by_text(text("saving-synced"))).to_be_visible()

    go(keeper, server, "#/shelf")
    keeper.get_by_role("link", name="Amber").first.click()
    keeper.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(keeper.get_by_text(text("stand-in-why-none"))).to_be_visible()
