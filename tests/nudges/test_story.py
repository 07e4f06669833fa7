"""From a due need to one nudge, and what logs, voids, delays and downtime do to it. On both databases.

Longer than 300 lines because it is one story, told day by day.
"""

from __future__ import annotations

import pytest
from sqlalchemy import select
from tests.nudges.support import Shelf, happened, ms

from broodshelf.nudges.tables import deliveries
from broodshelf.nudges.telling.tell import tell_due
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger
from broodshelf.rounds.recompute import stale
from broodshelf.rounds.tables import occurrences

DUE_ROUND = "2026-05-04T18:30"
"""Protein every 3 days, fed on 1 May at noon: due on 4 May at noon, told at the next care hour."""


def test_a_due_need_is_told_once_at_the_next_care_hour(shelf: Shelf):
    shelf.colony(shelf.person("Mira"))

    assert shelf.at("2026-05-04T18:29:59").tick() == []
    assert shelf.at(DUE_ROUND).tick() == ["Protein for Amber"]
    assert shelf.at("2026-05-04T18:30:05").tick() == []
    assert shelf.at("2026-05-04T20:00").tick() == []
    assert shelf.nudges() == [("2026-05-04", "18:30", 1)]


def test_what_was_logged_before_the_care_hour_is_not_told(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at("2026-05-04T18:20").log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})

    assert shelf.at(DUE_ROUND).tick() == []
    assert shelf.occurrences() == [("2026-05-07", "18:30", "waiting")]  # 3 days on, 18:20


def test_after_the_log_there_is_no_second_nudge(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at(DUE_ROUND).tick()
    shelf.at("2026-05-04T19:00").log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})

    assert shelf.at("2026-05-05T08:00").tick() == []
    assert ("2026-05-04", "18:30", "done") in shelf.occurrences()


def test_a_late_log_closes_the_occurrence_at_the_time_of_the_event(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at(DUE_ROUND).tick()
    fed_ms = ms("2026-05-04T10:00")  # fed in the morning with a phone that was offline until night
    shelf.at("2026-05-04T21:00").log(
        mira, "feeding", {"colony_id": colony_id, "need": "protein", "happened_at": happened(fed_ms)}
    )
    with reading() as connection:
        row = connection.execute(select(occurrences).where(occurrences.c.state == "done")).one()

    assert row.closed_ms == fed_ms
    assert shelf.at("2026-05-05T08:00").tick() == []


def test_a_void_opens_the_occurrence_again_without_a_second_nudge_in_its_slot(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at(DUE_ROUND).tick()
    log_id = shelf.at("2026-05-04T18:40").log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})
    shelf.at("2026-05-04T18:45").log(mira, "feeding", {"gone": True}, log_id)

    assert ("2026-05-04", "18:30", "sent") in shelf.occurrences()
    assert shelf.at("2026-05-04T21:00").tick() == []
    assert shelf.at("2026-05-05T08:00").tick() == ["Protein for Amber"]


def test_an_undone_need_comes_again_after_the_households_patience_and_then_once_a_day(shelf: Shelf):
    shelf.colony(shelf.person("Mira"), protein_days=2.5)  # due on 4 May at 00:00
    times = ("08:00", "13:59", "14:00", "14:05", "18:30", "21:00")
    told = [(at, shelf.at(f"2026-05-04T{at}").tick()) for at in times]

    assert [at for at, titles in told if titles] == ["08:00", "14:00"]
    assert shelf.at("2026-05-05T08:00").tick() == ["Protein for Amber"]
    assert shelf.nudges() == [
        ("2026-05-04", "08:00", 1),
        ("2026-05-04", "08:00", 2),
        ("2026-05-05", "08:00", 1),
    ]


def test_the_second_keeper_hears_of_it_after_the_households_patience(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.person("Anton")
    shelf.colony(mira, protein_days=2.5)
    shelf.at("2026-05-04T08:00").tick()
    first = shelf.nudges()
    shelf.nudger.tick(ms("2026-05-04T14:00"))
    shelf.nudger.finish()

    assert first == [("2026-05-04", "08:00", 1)]
    assert [endpoint.rpartition("/")[2] for endpoint, _, _ in shelf.notebook.sent] == ["Anton"]


def test_in_an_hour_is_told_in_an_hour(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira, protein_days=2.5)
    shelf.at("2026-05-04T08:00").tick()
    until = {"colony_id": colony_id, "need": "protein", "until": happened(ms("2026-05-04T09:10"))}
    shelf.at("2026-05-04T08:10").log(mira, "later", until)

    assert shelf.at("2026-05-04T09:09").tick() == []
    assert shelf.at("2026-05-04T09:10").tick() == ["Protein for Amber"]
    assert shelf.at("2026-05-04T14:00").tick() == []  # the wish replaced the household's patience
    assert shelf.at("2026-05-04T15:10").tick() == ["Protein for Amber"]  # and begins it anew
    assert shelf.at("2026-05-05T08:00").tick() == ["Protein for Amber"]


def test_a_need_put_off_before_its_care_hour_waits_for_the_wish(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    until = {"colony_id": colony_id, "need": "protein", "until": happened(ms("2026-05-04T19:20"))}
    shelf.at("2026-05-04T18:20").log(mira, "later", until)

    assert shelf.at(DUE_ROUND).tick() == []
    assert shelf.at("2026-05-04T19:20").tick() == ["Protein for Amber"]


def test_a_leak_is_told_at_once_to_everyone_but_its_flagger(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    colony_id = shelf.colony(mira)
    shelf.at("2026-05-01T15:00").log(anton, "fault", {"colony_id": colony_id, "fault": "leak"})
    shelf.nudger.tick(shelf.now_ms)
    shelf.nudger.finish()

    [(endpoint, payload, message)] = shelf.notebook.sent
    assert endpoint.endswith("/Mira")
    assert payload["notification"]["title"] == "Leaking reservoir: Amber"
    assert "First steps" in payload["notification"]["body"]
    assert message.urgent


def test_a_leak_in_the_quiet_hours_is_told_when_they_end(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    colony_id = shelf.colony(mira)
    fault_id = shelf.at("2026-05-01T23:00").log(anton, "fault", {"colony_id": colony_id, "fault": "leak"})

    assert shelf.tick() == []
    assert shelf.occurrences("water")[0] == ("2026-05-02", f"urgent:fault:{fault_id}", "waiting")
    assert shelf.at("2026-05-02T07:29").tick() == []
    assert shelf.at("2026-05-02T07:30").tick() == ["Leaking reservoir: Amber"]


def test_two_leaks_on_one_day_are_two_nudges(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    colony_id = shelf.colony(mira)
    for at in ("15:00", "16:00"):
        shelf.at(f"2026-05-01T{at}").log(anton, "fault", {"colony_id": colony_id, "fault": "leak"})
        assert shelf.tick() == ["Leaking reservoir: Amber"]


def test_the_only_keeper_who_flagged_a_leak_hears_of_it_the_day_after_if_it_is_still_open(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at("2026-05-01T15:00").log(mira, "fault", {"colony_id": colony_id, "fault": "leak"})

    assert shelf.tick() == []
    assert shelf.at("2026-05-01T21:00").tick() == []
    assert shelf.at("2026-05-02T08:00").tick() == ["Leaking reservoir: Amber"]


def test_a_resolved_leak_is_closed_when_it_was_resolved(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    colony_id = shelf.colony(mira)
    fault_id = shelf.at("2026-05-01T15:00").log(anton, "fault", {"colony_id": colony_id, "fault": "leak"})
    shelf.tick()
    shelf.at("2026-05-01T16:00").log(
        mira, "fault", {"resolved_at": happened(ms("2026-05-01T15:30"))}, fault_id
    )
    with reading() as connection:
        row = connection.execute(select(occurrences).where(occurrences.c.state == "done")).one()

    assert row.closed_ms == ms("2026-05-01T15:30")
    assert shelf.at("2026-05-02T08:00").tick() == []


def test_a_round_is_one_nudge_for_all_its_colonies(shelf: Shelf):
    mira = shelf.person("Mira")
    for name in ("Amber", "Birch", "Cedar"):
        shelf.colony(mira, name)
    shelf.at(DUE_ROUND).nudger.tick(shelf.now_ms)
    shelf.nudger.finish()

    [(_, payload, _)] = shelf.notebook.sent
    assert payload["notification"]["title"] == "Protein for 3 colonies"
    assert {item["need"] for item in payload["broodshelf"]["items"]} == {"protein"}
    assert payload["app_badge"] == 3


def test_a_short_downtime_gives_one_grouped_nudge(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira, "Amber", 2.5)  # due for the round of 4 May, 08:00
    shelf.colony(mira, "Birch", 2.8)  # due at 07:12 of that day
    shelf.colony(mira, "Cedar", 3)  # due at noon, for the round of 18:30

    assert shelf.at("2026-05-04T19:15").tick() == ["Protein for 3 colonies"]
    assert len(shelf.nudges()) == 1


def test_after_days_of_downtime_what_was_missed_is_told_once_at_the_next_care_hour(shelf: Shelf):
    mira = shelf.person("Mira")
    for name in ("Amber", "Birch"):
        shelf.colony(mira, name)

    assert shelf.at("2026-05-09T13:00").tick() == []
    assert [state for _, _, state in shelf.occurrences()].count("missed") == 2
    assert shelf.at("2026-05-09T18:30").tick() == ["Protein for 2 colonies"]
    assert shelf.at("2026-05-09T21:00").tick() == []


def test_a_server_that_comes_back_at_night_keeps_quiet_until_morning(shelf: Shelf):
    shelf.colony(shelf.person("Mira"))

    assert shelf.at("2026-05-04T22:00").tick() == []
    assert shelf.at("2026-05-05T06:00").tick() == []
    assert len(shelf.at("2026-05-05T07:30").tick() + shelf.at("2026-05-05T08:00").tick()) == 1


@pytest.mark.parametrize("later", ["2026-05-05T12:00", "2200-01-01T12:00"])
def test_a_clock_that_jumps_costs_bounded_work_and_no_flood_and_recovers(shelf: Shelf, later: str):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.log(mira, "note", {"colony_id": colony_id, "text": "hello"})
    before = len(shelf.occurrences())
    told = shelf.at(later).tick() + shelf.tick()
    grown = len(shelf.occurrences())
    # the clock is set right again: the round of 4 May is told as if nothing had been
    shelf.at("2026-05-02T12:00").tick()
    right = shelf.at(DUE_ROUND).tick()

    assert len(told) <= 1
    assert grown <= before + 2
    assert right == ["Protein for Amber"]


def test_a_stand_in_hears_of_their_colonies_inside_the_dates_and_of_nothing_else(shelf: Shelf):
    mira = shelf.person("Mira")
    amber = shelf.colony(mira, "Amber", 2.5)
    shelf.colony(mira, "Birch", 2.5)
    pass_id = shelf.log(
        mira, "pass",
        {"name": "Jo", "colony_ids": [amber], "starts_on": "2026-05-03", "ends_on": "2026-05-05"},
    )  # fmt: skip
    shelf.person("Jo", role="stand_in", pass_id=pass_id)
    shelf.at("2026-05-04T08:00").nudger.tick(shelf.now_ms)
    shelf.nudger.finish()
    heard = {
        endpoint.rpartition("/")[2]: payload["notification"]["title"]
        for endpoint, payload, _ in shelf.notebook.sent
    }

    assert heard == {"Jo": "Protein for Amber", "Mira": "Protein for Birch"}


def test_a_stand_in_whose_pass_was_taken_back_hears_nothing(shelf: Shelf):
    mira = shelf.person("Mira")
    amber = shelf.colony(mira)
    pass_id = shelf.log(
        mira,
        "pass",
        {"name": "Jo", "colony_ids": [amber], "starts_on": "2026-05-03", "ends_on": "2026-05-09"},
    )
    shelf.person("Jo", role="stand_in", pass_id=pass_id)
    with writing() as connection:
        ledger = Ledger(connection, shelf.id)
        ledger.put(pass_id, "pass", {"revoked_at_ms": shelf.now_ms}, now_ms=shelf.now_ms)
        ledger.flush()
    shelf.at(DUE_ROUND).nudger.tick(shelf.now_ms)
    shelf.nudger.finish()

    assert [endpoint.rpartition("/")[2] for endpoint, _, _ in shelf.notebook.sent] == ["Mira"]


def test_with_nobody_to_tell_a_need_is_marked_missed_and_told_when_somebody_listens(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    shelf.colony(mira)

    assert shelf.at(DUE_ROUND).tick() == []
    assert shelf.occurrences()[0] == ("2026-05-04", "18:30", "missed")
    shelf.at("2026-05-04T20:00").listen(mira, "http://127.0.0.1:9/Mira")
    assert shelf.at("2026-05-05T08:00").tick() == ["Protein for Amber"]


def test_other_care_hours_move_what_waits(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    shelf.at("2026-05-02T12:00").log(mira, "household", {"care_hours": ["17:00"]}, shelf.id)

    assert shelf.occurrences() == [("2026-05-04", "17:00", "waiting")]


def test_a_colony_that_is_gone_is_told_of_no_more(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at("2026-05-02T12:00").log(mira, "colony", {"gone": True}, colony_id)

    assert shelf.occurrences() == []
    assert shelf.at(DUE_ROUND).tick() == []


def test_a_message_whose_round_was_done_before_it_could_be_sent_is_dropped(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    shelf.at(DUE_ROUND)
    with writing() as connection:
        made = tell_due(connection, [shelf.id], {"present-key-0000"}, shelf.now_ms)
    assert made == {shelf.id: 1}
    shelf.log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})

    assert shelf.tick() == []
    with reading() as connection:
        assert connection.scalar(select(deliveries.c.outcome)) == "done_already"


def test_stale_plans_are_made_anew_by_the_tick(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    shelf.at("2026-05-03T13:00").tick()
    shelf.sync(mira)
    plan = next(row for row in mira.rows().values() if row["kind"] == "plan")

    assert plan["set"]["computed_at_ms"] == ms("2026-05-03T13:00")
    with writing() as connection:  # nothing is stale a moment later
        ledger = Ledger(connection, shelf.id)
        stale(ledger, shelf.now_ms + 1)
        assert ledger.rev == plan["rev"]
