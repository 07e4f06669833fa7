"""A server that was away, and clocks that step: one grouped nudge, bounded work, never a flood. On both databases."""

from __future__ import annotations

import pytest
from tests.nudges.support import Shelf

DUE_ROUND = "2026-05-04T18:30"


def three_colonies(shelf: Shelf) -> None:
    mira = shelf.person("Mira")
    for name in ("Amber", "Birch", "Cedar"):
        shelf.colony(mira, name)


@pytest.mark.parametrize(
    ("back", "at_once", "next_round"),
    [
        ("2026-05-04T19:30", 1, "2026-05-05T08:00"),  # an hour: told on return, again next morning if undone
        ("2026-05-05T19:00", 0, "2026-05-06T08:00"),  # a day: 18:30 of the day before is over 12 hours late
        ("2026-06-04T12:00", 0, "2026-06-04T18:30"),  # a month
    ],
)  # fmt: skip
def test_after_downtime_there_is_one_grouped_nudge_and_the_rest_shows_as_missed(
    shelf: Shelf, back, at_once, next_round
):
    three_colonies(shelf)
    on_return = shelf.at(back).tick()
    soon = [title for _ in range(3) for title in shelf.tick()]
    at_round = shelf.at(next_round).tick()

    assert len(on_return) == at_once
    assert soon == []
    assert at_round == ["Protein for 3 colonies"] or at_round[0].startswith("3 colonies: ")
    missed = [row for row in shelf.occurrences() if row[2] == "missed"]
    assert missed == ([] if at_once else [("2026-05-04", "18:30", "missed")] * 3)


@pytest.mark.parametrize(
    "wrong", ["2026-05-03T18:30", "2026-04-01T00:00", "2026-05-05T18:30", "2200-01-01T12:00"]
)
def test_a_clock_that_steps_and_is_set_right_tells_each_person_once_a_date(shelf: Shelf, wrong):
    three_colonies(shelf)
    told = shelf.at("2026-05-03T20:00").tick()
    rows_before = len(shelf.occurrences())
    at_wrong = [title for _ in range(5) for title in shelf.at(wrong).tick()]
    rows_after = len(shelf.occurrences())
    back = shelf.at("2026-05-03T20:00:10").tick()
    right = shelf.at(DUE_ROUND).tick()

    assert told == back == []
    assert len(at_wrong) <= 1
    assert (
        rows_after <= rows_before + 6
    )  # of each colony what was skipped and the next date, however far the step
    assert len(right) == 1
    assert shelf.tick() == []
