"""How long a need may be put off: by a stand-in until the pass ends, water, room and leftovers by hours only."""

from __future__ import annotations

import datetime as dt

import pytest
from tests.people.support import apply, let_in, make_pass, open_pass, verdict
from tests.support.households import NOON_MS

from broodshelf.model.gauges import DAY_MS, HOUR_MS

PASS_ENDS_MS = NOON_MS + 2 * DAY_MS + 10 * HOUR_MS  # 3 May at midnight in Vienna is 22:00 UTC


def instant(at_ms: int) -> str:
    return dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


def wish(phone, colony: str, need: str, until_ms: int, at_ms: int | None = None) -> dict:
    at = phone.clock.now_ms if at_ms is None else at_ms
    return {"colony_id": colony, "happened_at": instant(at), "need": need, "until": instant(until_ms)}


@pytest.fixture
def colony(keeper) -> str:
    return apply(keeper, "colony", {"name": "Amber"})


@pytest.fixture
def guest(browser, keeper, colony):
    made = make_pass(keeper, [colony])
    guest = open_pass(browser(), made[1])
    guest.pass_id = made[0]
    return guest


def rows(phone) -> dict:
    return {row["id"]: row["set"] for row in phone.sync().json["rows"]}


def test_a_stand_in_puts_off_until_the_pass_ends_and_not_beyond(guest, colony):
    within = verdict(guest, "later", wish(guest, colony, "sugar", PASS_ENDS_MS))
    beyond = verdict(guest, "later", wish(guest, colony, "sugar", PASS_ENDS_MS + 1))
    for_good = {**wish(guest, colony, "sugar", 0), "until": "2099-12-31T00:00:00+00:00"}

    assert within["verdict"] == "applied"
    assert (beyond["code"], beyond["args"]["field"]) == ("outside_pass", "until")
    assert verdict(guest, "later", for_good)["code"] == "outside_pass"


def test_a_wish_that_was_taken_cannot_be_stretched_beyond_the_pass_by_an_amendment(guest, colony):
    taken = apply(guest, "later", wish(guest, colony, "sugar", PASS_ENDS_MS))

    assert verdict(guest, "later", {"until": instant(PASS_ENDS_MS + 1)}, taken)["code"] == "outside_pass"


@pytest.mark.parametrize("need", ["water", "room", "leftovers"])
def test_what_cannot_wait_is_put_off_by_hours_whoever_asks(keeper, guest, colony, need):
    for phone in (keeper, guest):
        day = verdict(phone, "later", wish(phone, colony, need, NOON_MS + DAY_MS))
        assert (day["verdict"], day["code"], day["args"]["field"]) == ("rejected", "bad_value", "until")
    assert (
        verdict(keeper, "later", wish(keeper, colony, need, NOON_MS + 14 * HOUR_MS))["verdict"] == "applied"
    )


def test_dates_of_its_own_do_not_let_water_wait_longer(guest, colony, clock):
    ahead = wish(guest, colony, "water", NOON_MS + 40 * HOUR_MS, at_ms=NOON_MS + 30 * HOUR_MS)

    assert verdict(guest, "later", ahead)["code"] == "bad_value"


def test_wish_after_wish_does_not_add_up_until_somebody_looks(keeper, guest, colony, clock):
    def hours_more() -> dict:
        return wish(guest, colony, "water", clock.now_ms + 5 * HOUR_MS)

    apply(guest, "later", hours_more())
    clock.now_ms += 5 * HOUR_MS
    second = apply(guest, "later", hours_more())
    apply(guest, "later", {"gone": True}, second)
    clock.now_ms += 5 * HOUR_MS
    third = verdict(guest, "later", hours_more())
    looked = {"colony_id": colony, "happened_at": instant(clock.now_ms), "action": "read", "reading": "half"}
    apply(guest, "water", looked)
    clock.now_ms += HOUR_MS

    assert third["code"] == "bad_value"
    assert verdict(guest, "later", hours_more())["verdict"] == "applied"


@pytest.mark.parametrize("how", ["revoked", "shortened", "deleted"])
def test_a_pass_that_ends_early_takes_along_what_was_put_off_under_it(keeper, guest, colony, clock, how):
    guests = apply(guest, "later", wish(guest, colony, "sugar", PASS_ENDS_MS))
    mine = apply(keeper, "later", wish(keeper, colony, "protein", NOON_MS + 9 * DAY_MS))
    clock.now_ms += HOUR_MS
    ends_ms = clock.now_ms
    if how == "revoked":
        assert keeper.post(f"/api/passes/{guest.pass_id}/revoke").status_code == 200
    elif how == "deleted":
        apply(keeper, "pass", {"gone": True}, guest.pass_id)
    else:
        apply(keeper, "pass", {"ends_on": "2026-05-02"}, guest.pass_id)
        ends_ms = PASS_ENDS_MS - DAY_MS
    found = rows(keeper)

    assert found[guests]["until"] == instant(ends_ms)
    assert found[mine]["until"] == instant(NOON_MS + 9 * DAY_MS)


def test_another_keepers_wish_is_not_bound_to_any_pass(browser, keeper, colony):
    anton = let_in(keeper, browser(), person_name="Anton")

    assert verdict(anton, "later", wish(anton, colony, "sugar", NOON_MS + 9 * DAY_MS))["verdict"] == "applied"
