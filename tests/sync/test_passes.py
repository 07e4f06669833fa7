"""What a stand-in sees and may do, and what becomes of the cursor when the pass changes. On both engines."""

from __future__ import annotations

from dataclasses import replace

from tests.support.households import HAPPENED, NOON_MS, Requester, by_id, colony, feeding

from broodshelf.model.gauges import DAY_MS
from broodshelf.people.actor import PassWindow
from broodshelf.records.database import writing
from broodshelf.records.epochs import Marks, start_epoch
from broodshelf.records.ids import uuid7


def pass_for(colony_id: str, state: str = "active") -> PassWindow:
    return PassWindow(
        uuid7(1),
        frozenset({colony_id}),
        "2026-04-30",
        "2026-05-02",
        NOON_MS - DAY_MS,
        NOON_MS + DAY_MS,
        state,
    )


def test_a_stand_in_sees_and_feeds_only_the_colonies_of_the_pass(phone, household_id):
    mine, hidden = colony(phone, "Amber"), colony(phone, "Birch")
    secret = phone.write("note", {"colony_id": hidden, "happened_at": HAPPENED, "text": "secret"})
    phone.sync()
    guest = Requester(household_id, role="stand_in", window=pass_for(mine))
    allowed, foreign = feeding(guest, mine), feeding(guest, hidden)
    rename = guest.write("colony", {"name": "Mine now"}, mine)
    early = feeding(guest, mine, happened_at="2026-04-01T12:00:00+00:00")
    told = by_id(guest.sync()["rows"])

    assert guest.verdicts[allowed["op_id"]]["verdict"] == "applied"
    assert guest.verdicts[foreign["op_id"]]["code"] == "outside_pass"
    assert guest.verdicts[rename["op_id"]]["code"] == "not_allowed"
    assert guest.verdicts[early["op_id"]]["code"] == "outside_pass"
    assert mine in told
    assert not {hidden, secret["id"]} & told.keys()


def test_a_pass_that_gains_a_colony_leads_to_a_full_pull(phone, household_id):
    first, second = colony(phone, "Amber"), colony(phone, "Birch")
    phone.sync()
    guest = Requester(household_id, role="stand_in", window=pass_for(first))
    guest.sync()
    window = pass_for(first)
    guest.window = PassWindow(
        window.pass_id, frozenset({first, second}), window.starts_on, window.ends_on,
        window.starts_ms, window.ends_ms, "active",
    )  # fmt: skip
    answer = guest.sync()

    assert answer["reset"] is True
    assert {first, second} <= by_id(answer["rows"]).keys()


def test_a_reset_that_begins_again_on_the_way_says_so_and_forgets_its_first_pages(phone, household_id):
    shown, hidden = colony(phone, "Amber"), colony(phone, "Birch")
    logs = [feeding(phone, shown) for _ in range(3)]
    phone.sync()
    guest = Requester(household_id, role="stand_in", window=pass_for(shown))
    guest.ask(2)  # an answer that is lost
    page = guest.ask(2)
    guest.take(page)
    guest.window = pass_for(hidden)
    again = guest.ask(2)
    guest.take(again)
    told = by_id(again["rows"] + guest.sync()["rows"])

    assert (page["reset"], page["first"], page["more"]) == (True, True, True)
    assert (again["reset"], again["first"]) == (True, True)
    assert hidden in told
    assert not {shown, *(log["id"] for log in logs)} & told.keys()


def test_an_ended_pass_takes_what_was_logged_in_its_dates_and_gives_no_rows(phone, household_id):
    mine = colony(phone)
    phone.sync()
    guest = Requester(household_id, role="stand_in", window=pass_for(mine, "ended"))
    log = feeding(guest, mine)
    answer = guest.sync()
    told = by_id(phone.sync()["rows"])

    assert answer["rows"] == []
    assert answer["pass"]["state"] == "ended"
    assert log["id"] in told


def test_a_pass_that_is_made_longer_after_a_restore_begins_anew(phone, household_id, tmp_path):
    mine = colony(phone)
    phone.sync()
    window = pass_for(mine)
    guest = Requester(household_id, role="stand_in", window=window)
    guest.sync()
    with writing() as connection:
        start_epoch(connection, Marks(tmp_path), household_id, NOON_MS)
    guest.window = replace(window, state="ended")
    ended = [guest.sync(), guest.sync()]
    guest.window = window
    longer = guest.sync()

    assert [(answer["rows"], answer["reset"]) for answer in ended] == [([], False)] * 2
    assert longer["reset"] is True
    assert mine in by_id(longer["rows"])
