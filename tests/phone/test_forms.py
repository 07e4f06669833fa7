"""Forms of things: they write what was changed in them, at once and once, and leave alone what others set meanwhile."""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony
from tests.phone.inside import run, wait_synced
from tests.phone.test_story import go
from tests.support.words import text

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

FULL_FOR_PICTURES = """(times) => {
  const real = IDBDatabase.prototype.transaction;
  let left = times;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    if (mode === 'readwrite' && [stores].flat().includes('photos') && left > 0) {
      left -= 1;
      throw new DOMException('made by a test', 'QuotaExceededError');
    }
    return real.call(this, stores, mode, options);
  };
}"""


def keep(page: Page, kind: str, values: dict[str, Any], record_id: str | None = None) -> str:
    """Change a thing past its form, as a sync may do, and let the server have it. Return its id."""
    given = [kind, values, *([record_id] if record_id else [])]
    made = run(page, "return (await at('actions')).keep(...given);", given)
    wait_synced(page)
    return str(made)


def save(page: Page, words: str = "colony-form-save") -> list[dict[str, Any]]:
    """Save the form that is open and return the operations that this sends."""
    with page.expect_request(lambda sent: bool((sent.post_data_json or {}).get("ops"))) as request:
        page.get_by_role("button", name=text(words)).click()
    wait_synced(page)
    ops: list[dict[str, Any]] = request.value.post_data_json["ops"]
    return ops


def written(ops: list[dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """What was written, by kind."""
    return {op["kind"]: op["set"] for op in ops}


def edit_colony(page: Page) -> None:
    page.get_by_role("button", name=text("colony-change")).click()


def number_of(page: Page, kind: str) -> int:
    """How many records of a kind this phone shows."""
    script = "return [...(await at('rows')).rows.value.values()].filter((row) => row.kind === given).length;"
    found = run(page, script, kind)
    assert isinstance(found, int)
    return found


def test_what_came_from_another_phone_while_the_form_of_a_colony_was_open_stands(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    place_id = keep(page, "place", {"name": "Bookcase"})
    keep(page, "colony", {"place_id": place_id, "condition": "resting"}, colony_id)
    open_colony(page, server)
    opened_rev = run(page, "return (await at('rows')).rows.value.get(given).rev;", colony_id)
    edit_colony(page)
    keep(page, "colony", {"stage": "growing", "condition": "well", "came_from": "a friend"}, colony_id)
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill("Amber the second")
    [op] = save(page)

    assert op["set"] == {"name": "Amber the second"}
    assert op["base_rev"] == opened_rev, "else who set the name since would not be met"


def test_what_came_while_the_forms_of_a_place_and_of_the_house_were_open_stands_too(phone, server):
    page = phone()
    claim(page, server)
    place_id = keep(page, "place", {"name": "Bookcase", "day_temp_c": 22})
    go(page, server, "#/places")
    page.get_by_role("button", name=text("place-change")).click()
    keep(page, "place", {"day_temp_c": 26}, place_id)
    page.get_by_label(text("place-name")).fill("Shelf")
    assert written(save(page)) == {"place": {"name": "Shelf"}}

    go(page, server, "#/settings")
    name = page.get_by_label(text("house-shelf-name"))
    before = name.input_value()
    house_id = run(page, "return (await at('rows')).rowsOf('household')[0].id;")
    keep(page, "household", {"quiet_from": "21:30"}, house_id)
    name.fill("Ants")
    assert written(save(page, "house-save")) == {"household": {"name": "Ants"}}
    name.fill(before)
    assert written(save(page, "house-save")) == {"household": {"name": before}}, (
        "it was opened anew by saving"
    )


def test_a_second_winter_does_not_begin_with_the_days_of_the_last_one(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    last = {"condition": "well", "resting_since": "2025-11-01", "condition_until": "2026-03-01"}
    keep(page, "colony", last, colony_id)
    open_colony(page, server)
    edit_colony(page)
    page.get_by_role("button", name=text("colony-condition-resting")).click()
    today = run(page, "return (await at('clock')).today.value;")
    expect(page.get_by_label(text("colony-form-fate-rests-since"))).to_have_value(str(today))
    expect(page.get_by_label(text("colony-form-fate-wakes-on"))).to_have_value("")

    assert written(save(page)) == {
        "colony": {"condition": "resting", "resting_since": today, "condition_until": None}
    }


def test_what_is_taken_out_of_a_form_is_taken_out_of_the_record(phone, server):
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    vessel_id = run(page, "return (await at('rows')).rowsOf('vessel')[0].id;")
    keep(page, "vessel", {"vessel_code": None, "bore_mm": 40, "length_mm": 300}, vessel_id)
    keep(page, "colony", {"number": 7}, colony_id)
    open_colony(page, server)
    edit_colony(page)
    page.get_by_role("combobox", name=text("colony-form-lives")).select_option("tube_16x150")
    page.get_by_label(text("colony-form-number")).fill("")
    page.get_by_role("combobox", name=text("colony-form-species")).fill("")

    assert written(save(page)) == {
        "vessel": {"vessel_code": "tube_16x150", "bore_mm": None, "length_mm": None},
        "colony": {"number": None, "species_code": None},
    }


def test_a_colony_that_found_no_room_for_its_picture_is_one_colony_when_it_is_added_again(
    phone, server, picture
):
    page = phone()
    claim(page, server)
    go(page, server, "#/colony/new")
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill("Birch")
    page.locator("summary").filter(has_text=text("stand-in-hint")).click()
    page.get_by_label(text("stand-in-hint-picture")).set_input_files(picture)
    page.evaluate(FULL_FOR_PICTURES, 1)
    add = page.get_by_role("button", name=text("colony-form-add"))
    add.click()
    expect(page.get_by_role("alert")).to_have_text(text("saving-not-saved"))
    kinds = ("colony", "vessel", "count", "photo")
    assert [number_of(page, kind) for kind in kinds] == [1, 1, 1, 0], "only what was there before"
    add.click()
    expect(page.get_by_role("heading", name="Birch")).to_be_visible()
    wait_synced(page)

    assert [number_of(page, kind) for kind in kinds] == [2, 2, 2, 1]
