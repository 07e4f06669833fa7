"""What moves a round that waits: another zone, other care hours, new zone rules, the keeper's own rule."""

from __future__ import annotations

from sqlalchemy import select, update
from tests.nudges.support import Shelf, ms

from broodshelf.nudges.tables import nudger_state
from broodshelf.records.database import reading, writing
from broodshelf.rounds.tables import occurrences

DUE_ROUND = "2026-05-04T18:30"


def waiting_ms() -> list[int]:
    with reading() as connection:
        return list(
            connection.scalars(
                select(occurrences.c.at_ms)
                .where(occurrences.c.need == "protein", occurrences.c.state == "waiting")
                .order_by(occurrences.c.at_ms)
            )
        )


def test_a_household_that_moves_keeps_its_wall_time_in_the_new_zone(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    shelf.at("2026-05-02T12:00").log(mira, "household", {"zone": "America/New_York"}, shelf.id)

    # due 4 May noon UTC = 08:00 in New York (UTC-4 in May): that care hour, at that very instant
    assert shelf.occurrences() == [("2026-05-04", "08:00", "waiting")]
    assert waiting_ms() == [ms("2026-05-04T12:00")]


def test_a_household_that_moves_after_a_nudge_is_not_told_twice_for_the_same_date(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    assert shelf.at(DUE_ROUND).tick() == ["Protein for Amber"]
    shelf.at("2026-05-04T19:00").log(mira, "household", {"zone": "America/New_York"}, shelf.id)

    # 18:30 in New York is 22:30 UTC on the same 4 May, which had its nudge; next is the 5th, 08:00 there
    assert shelf.at("2026-05-04T22:30").tick() == []
    assert waiting_ms() == [ms("2026-05-05T12:00")]
    assert shelf.at("2026-05-05T12:00").tick() == ["Protein for Amber"]


def test_new_rules_of_time_zones_make_all_plans_anew_once(shelf: Shelf, caplog):
    shelf.colony(shelf.person("Mira"))
    shelf.at("2026-05-01T12:01").tick()
    right = waiting_ms()
    with writing() as connection:  # as if both had been computed with older rules
        connection.execute(update(nudger_state).where(nudger_state.c.name == "zones").values(at_ms=1))
        connection.execute(update(occurrences).values(at_ms=occurrences.c.at_ms + 3_600_000))
    restarted = shelf.new_nudger()
    with caplog.at_level("INFO", logger="broodshelf"):
        for second in (5, 10):
            restarted.tick(ms(f"2026-05-01T12:02:{second:02}"))
    restarted.close()

    assert waiting_ms() == right
    assert [r.getMessage() for r in caplog.records].count("the rules of time zones changed") == 1


def test_a_rule_by_weekday_and_time_is_told_then_and_plans_the_next(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    rule = {"colony_id": colony_id, "need": "protein", "weekdays": [2, 5], "at": "16:00"}  # Wed, Sat
    rule_id = shelf.at("2026-05-01T13:00").log(mira, "rule", rule)

    assert shelf.occurrences() == [("2026-05-02", "16:00", "waiting")]  # fed on Friday the 1st
    assert shelf.at("2026-05-02T15:59").tick() == []
    assert shelf.at("2026-05-02T16:00").tick() == ["Protein for Amber"]
    shelf.at("2026-05-02T17:00").log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})
    assert ("2026-05-06", "16:00", "waiting") in shelf.occurrences()
    shelf.at("2026-05-02T18:00").log(mira, "rule", {"gone": True}, rule_id)
    assert ("2026-05-05", "18:30", "waiting") in shelf.occurrences()  # every 3 days again: due the 5th, 17:00


def test_a_paused_need_is_silent_until_its_date_and_told_afterwards(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira)
    rule = {"colony_id": colony_id, "need": "protein", "paused_until": "2026-05-06"}
    shelf.log(mira, "rule", rule)

    for at in ("04T08:00", "04T18:30", "05T12:00", "05T18:30"):  # the plan of the 5th, noon, would hold a day
        assert shelf.at(f"2026-05-{at}").tick() == []
    told = [at for at in ("00:01", "08:00", "08:05") if shelf.at(f"2026-05-06T{at}").tick()]
    assert told == ["08:00"]
