"""The keeper's evening in a real browser: log offline, close, reopen, come back; hand over; take back."""

from __future__ import annotations

import json
import re
import urllib.error
import urllib.request
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect
from tests.phone.between import between
from tests.phone.conftest import add_colony, claim, worker_ready
from tests.phone.looks import axe_findings
from tests.support.server import Server
from tests.support.words import drops_of_sugar_water, text

pytestmark = pytest.mark.browser


def go(page: Page, server: Server, hash_: str) -> None:
    page.goto(f"{server.url}/{hash_}")


def online_again(page: Page) -> None:
    page.context.set_offline(False)
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def report_leak(page: Page) -> None:
    page.get_by_role("button", name=text("event-kind-fault")).click()
    expect(page.get_by_text(text("reason-leak"))).to_be_visible()
    page.get_by_role("button", name=text("log-report")).click()


def pair(new: Page, keeper: Page, server: Server, at: str = "", who: str = "Mira") -> None:
    """Let a second phone in by the code that it shows, as a keeper who is there or as a new one."""
    go(new, server, at)
    new.get_by_role("button", name=text("start-join-one")).click()
    code = new.locator(".code").inner_text()
    go(keeper, server, "#/settings")
    keeper.get_by_label(text("house-new-phone")).fill(code)
    keeper.get_by_role("button", name=text("house-look-up"), exact=True).click()
    if who == "Mira":
        keeper.get_by_role("button", name=who).click()
    else:
        keeper.once("dialog", lambda dialog: dialog.accept(who))
        keeper.get_by_role("button", name=text("house-somebody-new")).click()
    expect(new.get_by_role("heading", name=text("round-title"))).to_be_visible()


def test_a_log_made_offline_survives_a_restart_and_reaches_the_other_phone_once(phone, server):
    mine = phone()
    claim(mine, server)
    worker_ready(mine)
    mine.context.set_offline(True)
    go(mine, server, "#/round")
    protein = mine.get_by_role("article").filter(has_text=text("need-protein"))
    protein.get_by_role("button", name=text("round-as-suggested")).click()
    expect(mine.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    mine.get_by_role("link", name="Amber").first.click()
    report_leak(mine)
    expect(mine.get_by_text(text("saving-waiting", count=2))).to_be_visible()
    context = mine.context
    mine.close()
    mine = context.new_page()
    mine.set_default_timeout(15_000)
    go(mine, server, "#/round")

    expect(mine.get_by_text(text("saving-waiting", count=2))).to_be_visible()
    expect(mine.get_by_role("article").filter(has_text=text("fault-leak"))).to_contain_text(
        text("round-urgent")
    )
    expect(mine.get_by_role("region", name=text("round-done"))).to_contain_text(text("saving-state-saved"))

    online_again(mine)
    other = phone()
    pair(other, mine, server)
    expect(other.get_by_role("article").filter(has_text=text("fault-leak"))).to_contain_text(
        text("round-urgent")
    )
    done = other.get_by_role("region", name=text("round-done"))
    expect(done.get_by_text(text("form-whole-dead"))).to_have_count(1)  # the prey, whichever the plan chose
    expect(done).to_contain_text(text("round-by", who="Mira"))
    expect(
        other.get_by_role("region", name=text("round-now")).get_by_text(text("form-whole-dead"))
    ).to_have_count(0)


@pytest.mark.without_worker
def test_undo_takes_a_log_back_on_both_sides(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    sugar = page.get_by_role("article").filter(has_text=text("food-sugar-water"))
    sugar.get_by_role("button", name=text("round-as-suggested")).click()
    expect(sugar).to_have_count(0)
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()

    expect(sugar).to_have_count(1)
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def test_a_server_killed_between_request_and_answer_loses_and_doubles_nothing(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    with between(page, "/api/sync", arrives=True):  # the server has stored it …
        page.get_by_role("article").filter(has_text=text("food-sugar-water")).get_by_role(
            "button", name=text("round-as-suggested")
        ).click()
        waiting = f"{text('saving-waiting', count=1)} · {text('saving-offline')}"
        expect(page.get_by_text(waiting)).to_be_visible()
        server.kill()  # … and dies before the phone hears of it
    server.start()
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    go(page, server, "#/shelf")
    page.get_by_role("link", name="Amber").click()

    expect(
        page.get_by_role("region", name=text("colony-diary")).get_by_text(drops_of_sugar_water(1))
    ).to_have_count(1)


def test_a_pass_lets_a_stand_in_feed_two_colonies_until_it_is_taken_back(phone, server):
    keeper = phone()
    claim(keeper, server)
    for name in ("Birch", "Cedar"):
        go(keeper, server, "#/colony/new")
        add_colony(keeper, name)
    go(keeper, server, "#/handover")
    keeper.get_by_role("textbox", name=text("handover-who"), exact=True).fill("Grandpa")
    for name in ("Amber", "Birch"):
        keeper.get_by_role("button", name=name, exact=True).click()
    keeper.get_by_label(text("handover-know")).fill("The flies are in the fridge door.")
    keeper.get_by_role("button", name=text("handover-go")).click()
    keeper.get_by_role("button", name=text("handover-make-link")).click()
    link = keeper.get_by_role("link", name="#/pass/").inner_text()
    of_pass = keeper.get_by_role("article").filter(has_text="Grandpa")
    of_pass.get_by_text(text("calendar-address-title")).click()
    of_pass.get_by_role("button", name=text("calendar-address-make")).click()
    address = of_pass.get_by_role("link", name=".ics").inner_text()

    guest = phone()
    guest.goto(link)
    expect(guest).not_to_have_url(re.compile("#/pass/"))
    guest.get_by_role("button", name=text("start-open-pass")).click()
    expect(guest.get_by_text("The flies are in the fridge door.")).to_be_visible()
    expect(guest.get_by_role("heading", name="Cedar")).to_have_count(0)
    worker_ready(guest)
    guest.context.set_offline(True)
    guest.get_by_role("article").filter(has_text="Birch").filter(
        has_text=text("food-sugar-water")
    ).get_by_role("button", name=text("stand-in-gave")).click()
    expect(guest.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    online_again(guest)
    go(keeper, server, "#/round")
    keeper.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(keeper.get_by_role("region", name=text("round-done"))).to_contain_text(
        text("round-by", who="Grandpa")
    )

    calendar = urllib.request.urlopen(address, timeout=10).read().decode()
    assert "Amber" in calendar and "Birch" in calendar and "Cedar" not in calendar

    guest.context.set_offline(True)
    guest.get_by_role("article").filter(has_text="Amber").filter(
        has_text=text("food-sugar-water")
    ).get_by_role("button", name=text("stand-in-gave")).click()
    expect(guest.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    go(keeper, server, "#/handover")
    keeper.on("dialog", lambda dialog: dialog.accept())
    keeper.get_by_role("button", name=text("handover-take-back")).click()
    expect(keeper.get_by_text(text("handover-state-back"))).to_be_visible()
    guest.context.set_offline(False)
    guest.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(guest.get_by_text(text("frame-banner-ended-pass-revoked"))).to_be_visible()
    with pytest.raises(urllib.error.HTTPError, match="404"):
        urllib.request.urlopen(address, timeout=10)
    guest.get_by_role("link", name=text("frame-banner-unsent")).click()
    with guest.expect_download() as download:
        guest.get_by_role("button", name=text("attention-export")).click()
    kept = json.loads(Path(download.value.path()).read_text())

    assert [entry["op"]["set"]["need"] for entry in kept["entries"]] == ["sugar"]


def test_no_screen_breaks_axe_rules_or_says_errors_in_the_console(phone, server):
    page = phone()
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    claim(page, server)
    for look in ("light", "dark", "red"):
        for name in ("round", "shelf", "larder", "handover", "settings", "colony/new"):
            go(page, server, f"#/{name}")
            expect(page.get_by_role("heading", level=1)).to_be_visible()
            page.evaluate("(look) => { document.documentElement.dataset.look = look; }", look)
            assert axe_findings(page) == [], f"{name} in {look}"

    assert errors == []


@pytest.mark.without_worker
def test_what_is_typed_into_a_form_survives_a_sync_and_a_choice(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/colony/new")
    name = page.get_by_role("textbox", name=text("colony-form-name"), exact=True)
    name.fill("Birch")
    page.get_by_role("button", name=text("colony-stage-growing")).click()
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()

    expect(name).to_have_value("Birch")
