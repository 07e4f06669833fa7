"""An hour, this evening, tomorrow, and skipping with a reason: all are ``later`` events. On both databases."""

from __future__ import annotations

import pytest
from tests.nudges.support import Shelf, happened, ms

from broodshelf.records.database import reading
from broodshelf.records.store import read_record

FIRST = "2026-05-04T08:00"
"""Protein every 2.5 days, fed on 1 May at noon: due on 4 May at 00:00, told at 08:00; patience is 6 hours."""
HOURS = ("08:00", "09:10", "14:00", "18:30", "21:00")
ROUNDS = [f"2026-05-{day}T{at}" for day in ("04", "05", "06", "07") for at in HOURS]


def told_after(shelf: Shelf, until: str, why: str | None = None, last: str = "2026-05-06T07:59") -> list[str]:
    """Put off ten minutes after the first nudge; return when it was told again until ``last``."""
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira, protein_days=2.5)
    assert shelf.at(FIRST).tick() == ["Protein for Amber"]
    values = {"colony_id": colony_id, "need": "protein", "until": happened(ms(until)), "why": why}
    shelf.later_id = shelf.at("2026-05-04T08:10").log(mira, "later", values)  # type: ignore[attr-defined]
    return [at for at in ROUNDS if FIRST < at <= last and shelf.at(at).tick()]


@pytest.mark.parametrize(
    ("until", "told"),
    [
        # in an hour: then; after the household's patience once more (15:10, seen by the tick of 18:30); next morning
        ("2026-05-04T09:10", ["2026-05-04T09:10", "2026-05-04T18:30", "2026-05-05T08:00"]),
        # this evening: nothing at 14:00, told at the care hour; patience would end in the quiet hours
        ("2026-05-04T18:30", ["2026-05-04T18:30", "2026-05-05T08:00"]),
        # tomorrow: nothing more today, once in the morning and once after patience
        ("2026-05-05T08:00", ["2026-05-05T08:00"]),
    ],
)  # fmt: skip
def test_a_need_put_off_is_told_then_and_not_before(shelf: Shelf, until, told):
    found = told_after(shelf, until, last="2026-05-05T08:00")

    assert found == told


def test_a_round_that_is_skipped_is_silent_until_the_next_one_and_keeps_its_reason(shelf: Shelf):
    found = told_after(shelf, "2026-05-06T18:30", why="she is moving her nest", last="2026-05-06T18:30")
    with reading() as connection:
        event = read_record(connection, shelf.id, shelf.later_id)  # type: ignore[attr-defined]

    assert found == ["2026-05-06T18:30"]
    assert event is not None
    assert event.values["why"] == "she is moving her nest"


def test_taking_the_wish_back_tells_the_need_again(shelf: Shelf):
    mira = shelf.person("Mira")
    colony_id = shelf.colony(mira, protein_days=2.5)
    shelf.at(FIRST).tick()
    values = {"colony_id": colony_id, "need": "protein", "until": happened(ms("2026-05-08T08:00"))}
    later_id = shelf.at("2026-05-04T08:10").log(mira, "later", values)
    shelf.at("2026-05-04T08:12").log(mira, "later", {"gone": True}, later_id)

    assert shelf.at("2026-05-05T08:00").tick() == ["Protein for Amber"]


def test_what_one_keeper_put_off_does_not_go_to_the_other(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.person("Anton")
    colony_id = shelf.colony(mira, protein_days=2.5)
    shelf.at(FIRST).tick()
    values = {"colony_id": colony_id, "need": "protein", "until": happened(ms("2026-05-04T18:30"))}
    shelf.at("2026-05-04T08:10").log(mira, "later", values)

    assert shelf.at("2026-05-04T14:00").tick() == []


def test_the_keepers_hear_after_the_patience_when_the_stand_in_on_duty_does_not_act(shelf: Shelf):
    mira = shelf.person("Mira")
    amber = shelf.colony(mira, protein_days=2.5)
    values = {"name": "Jo", "colony_ids": [amber], "starts_on": "2026-05-03", "ends_on": "2026-05-05"}
    pass_id = shelf.log(mira, "pass", values)
    shelf.person("Jo", role="stand_in", pass_id=pass_id)
    heard = []
    for at in (FIRST, "2026-05-04T13:59", "2026-05-04T14:00"):
        shelf.nudger.tick(ms(at))
        shelf.nudger.finish()
        heard.append([endpoint.rpartition("/")[2] for endpoint, _, _ in shelf.notebook.sent])
        shelf.notebook.take()

    assert heard == [["Jo"], [], ["Mira"]]
