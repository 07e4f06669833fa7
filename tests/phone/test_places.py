"""Places: their warmth moves the plan of the colonies that stand in them."""

from __future__ import annotations

import json
import urllib.request

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, open_colony
from tests.phone.test_story import go
from tests.support.words import labelled, like, text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def add_place(page, server, name, by_day):
    """Fill in a new place and save it."""
    go(page, server, "#/places")
    page.get_by_role("button", name=text("place-add")).click()
    page.get_by_label(text("place-name")).fill(name)
    page.get_by_label(text("place-day-temp", unit="°C")).fill(by_day)
    page.get_by_role("button", name=text("colony-form-save")).click()


def test_a_hot_reading_of_a_place_is_urgent_for_the_colony_that_stands_there(phone, server):
    page = phone()
    claim(page, server)
    add_place(page, server, "Bookcase by the window", "abc")
    expect(page.get_by_role("alert")).to_contain_text(like("place-bad-temp"))
    page.get_by_label(text("place-day-temp", unit="°C")).fill("24,5")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_text(text("place-day", warm="24.5 °C"))).to_be_visible()
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("combobox", name=text("place-stands")).select_option("Bookcase by the window")
    page.get_by_role("button", name=text("colony-form-save")).click()
    go(page, server, "#/places")
    expect(page.get_by_role("article").get_by_text("Amber")).to_be_visible()
    page.get_by_role("button", name=text("place-reading")).click()
    page.get_by_label(text("place-temperature", unit="°C")).fill("34")
    page.get_by_role("button", name=text("place-log")).click()
    expect(page.get_by_text(like("place-last", what="34 °C"))).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    go(page, server, "#/round")

    expect(page.get_by_role("article").filter(has_text="34 °C")).to_contain_text(text("round-urgent"))


def test_a_colony_put_to_rest_says_since_when_and_until(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("button", name=text("colony-condition-resting")).click()
    page.get_by_label(text("colony-form-fate-wakes-on")).fill("2099-03-01")
    page.get_by_role("button", name=text("colony-form-save")).click()
    plan = page.get_by_role("region", name=text("colony-plan"))

    expect(plan.get_by_text(text("notice-resting"))).to_be_visible()
    expect(plan.get_by_text(like("notice-wakes-in"))).to_be_visible()


def test_a_phone_that_shows_fahrenheit_stores_celsius_and_shows_again_what_was_typed(phone, server):
    page = phone()
    claim(page, server)
    add_place(page, server, "Window sill", "24")
    go(page, server, "#/settings")
    page.get_by_role("group", name=text("look-degrees")).get_by_role("button", name="°F").click()
    go(page, server, "#/places")
    by_day = text("place-day", warm="75 °F")
    expect(page.get_by_text(by_day)).to_be_visible()
    page.get_by_role("button", name=text("place-change")).click()
    page.get_by_label(text("place-night-temp", unit="°F")).fill("68.5")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_text(f"{by_day} · {text('place-night', warm='68.5 °F')}")).to_be_visible()
    page.get_by_role("button", name=text("place-change")).click()
    expect(page.get_by_label(text("place-night-temp", unit="°F"))).to_have_value("68.5")
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("combobox", name=text("place-stands")).select_option("Window sill")
    page.get_by_role("button", name=text("colony-form-save")).click()
    go(page, server, "#/places")
    page.get_by_role("button", name=text("place-reading")).click()
    page.get_by_label(text("place-temperature", unit="°F")).fill("93")
    page.get_by_role("button", name=text("place-log")).click()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    stored = page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`)).rowsOf('place')[0].set"
    )
    assert stored["day_temp_c"] == 24, "a field that nobody touched keeps what was typed in °C"
    assert stored["night_temp_c"] == pytest.approx((68.5 - 32) / 1.8, abs=1e-4)
    me = page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`)).rowsOf('person')[0].set"
    )
    assert me["degrees"] == "f", "nudges and mail come so, too"
    go(page, server, "#/round")

    expect(
        page.get_by_role("article").filter(
            has_text=like("reason-too-hot", temperature_c="93 °F", limit_c="86 °F")
        )
    ).to_contain_text(text("round-urgent"))
    go(page, server, "#/reckon/cooling")
    expect(page.get_by_label(text("calculator-input-room-c"))).to_have_value("69.8")


def test_a_count_of_none_asks_for_another_look_and_the_task_opens_the_count(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-count"), exact=True).click()
    save = page.get_by_role("button", name=text("log-count"))
    expect(save).to_be_disabled()  # what nobody looked at is not counted
    page.get_by_label(text("log-workers")).fill("0")
    save.click()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    go(page, server, "#/round")
    task = page.get_by_role("article").filter(has_text=text("todo-ask"))
    task.get_by_role("button", name=labelled(text("round-count"), text("todo-ask"))).click()
    page.get_by_role("button", name=text("log-more-brood")).click()
    page.get_by_label(text("log-queens")).fill("0")
    page.get_by_role("button", name=text("log-count")).click()
    open_colony(page, server)
    plan = page.get_by_role("region", name=text("colony-plan"))

    expect(plan.get_by_text(text("notice-colony-empty"))).to_be_visible()


def test_a_rest_that_is_over_is_put_right_in_the_colony(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("button", name=text("colony-condition-resting")).click()
    page.get_by_label(text("colony-form-fate-rests-since")).fill("2026-01-01")
    page.get_by_label(text("colony-form-fate-wakes-on")).fill("2026-04-01")
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    go(page, server, "#/round")
    page.get_by_role("link", name=text("round-change")).click()

    expect(page.get_by_text(like("notice-rest-over"))).to_be_visible()
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("button", name=text("colony-condition-well"), exact=True).click()
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_text(like("notice-rest-over"))).to_have_count(0)


def test_a_colony_that_is_saved_again_sets_no_condition_that_did_not_change(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("button", name=text("colony-condition-settling")).click()
    with page.expect_request(lambda request: '"condition":"settling"' in (request.post_data or "")):
        page.get_by_role("button", name=text("colony-form-save")).click()
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill("Amber the second")
    with page.expect_request(lambda request: "Amber the second" in (request.post_data or "")) as renamed:
        page.get_by_role("button", name=text("colony-form-save")).click()

    assert '"condition"' not in (renamed.value.post_data or "")
    assert '"stage"' not in (renamed.value.post_data or "")


def test_a_sensor_gets_its_token_once_and_what_it_sends_is_shown(phone, server):
    page = phone()
    claim(page, server)
    add_place(page, server, "Bookcase", "24")
    page.get_by_role("button", name=text("place-sensors")).click()
    expect(page.get_by_text(text("sensor-none"))).to_be_visible()
    page.get_by_role("button", name=text("sensor-add")).click()
    page.get_by_label(text("sensor-name")).fill("Board")
    page.get_by_role("button", name=text("sensor-make")).click()
    expect(page.get_by_text(text("sensor-never"))).to_be_visible()
    token = page.locator(".address").inner_text()

    sent = send(f"{server.url}/api/readings", {"temperature": 25.5, "humidity": 48}, token)
    assert sent == {"stored": 1, "known": 0, "refused": []}

    go(page, server, "#/shelf")  # and be there: who comes straight back finds the sensors open still
    expect(page.get_by_role("heading", name=text("shelf-title"))).to_be_visible()
    go(page, server, "#/places")
    page.get_by_role("button", name=text("place-sensors")).click()
    expect(page.get_by_text(text("sensor-now", what="25.5 °C, 48 %"))).to_be_visible()
    expect(page.get_by_text(like("sensor-heard"))).to_be_visible()
    expect(page.get_by_text(token)).to_have_count(0)

    page.get_by_role("button", name=text("sensor-end")).click()
    page.get_by_role("button", name=text("sensor-end")).click()
    expect(page.get_by_text(text("sensor-none"))).to_be_visible()


def send(url, body, token):
    """Post as a board would: no cookie, no origin."""
    request = urllib.request.Request(
        url,
        data=json.dumps(body).encode(),
        headers={"Authorization": f"Bearer {token}", "Content-Type": "application/json"},
    )
    with urllib.request.urlopen(request, timeout=30) as answer:
        return json.load(answer)
