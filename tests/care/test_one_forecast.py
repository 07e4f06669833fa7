"""No second forecast: whatever a plan says of the time to come is read off the one curve of its census."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest
from tests.care.stories import FRIDGE, Story, notices

from broodshelf.care.plan.ahead import Planned, use_ratio, workers_at
from broodshelf.care.plan.known import know
from broodshelf.care.plan.ration import ration_of
from broodshelf.model.facts import Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import read

TODAY = "2026-06-20"


def growing(today: str = TODAY, **values) -> Story:
    story = Story(today, vessel=Vessel("tube_16x150"), **values)
    return story.counted(40, 22, larvae="some").counted(20, 30, larvae="some").counted(0, 41, larvae="some")


def known_of(story: Story):
    return know(story.state(), story.now_ms)


def test_room_growth_larder_and_holiday_read_the_same_curve():
    story = growing()
    plan, living = story.plan(), known_of(story).living
    rows = read(Planned, plan.as_json())
    full = notices(story)["room_fills"]

    for at_ms, _, best, _ in plan.growth["curve"][1:]:
        day = living.day + round((at_ms - story.now_ms) / DAY_MS)
        assert living.workers_on(day).best == pytest.approx(best, rel=0.03)
        assert workers_at(rows, at_ms).best == pytest.approx(best, rel=0.06)  # columns are two weeks apart
    filled_ms = story.now_ms + full["best"] * DAY_MS
    assert workers_at(rows, filled_ms).best == pytest.approx(0.9 * full["room"], rel=0.1)
    ratio = use_ratio(rows, "sugar", filled_ms).best
    assert ratio == pytest.approx(workers_at(rows, filled_ms).best / living.today.workers.best, rel=0.05)


def test_the_notice_of_the_next_workers_names_the_days_of_the_census():
    story = growing()
    said, days = notices(story)["next_workers_in"], story.plan().census["hatching"]
    today = dt.date.fromisoformat(TODAY)

    assert [(dt.date.fromisoformat(days[end]) - today).days for end in ("low_on", "high_on")] == [
        said["low"], said["high"],
    ]  # fmt: skip


def test_protein_goes_by_the_larvae_that_the_census_believes_in_and_sugar_by_its_workers():
    """Nobody looked for larvae in two weeks; warm weeks make more of them than cold ones do."""
    story = Story(TODAY).counted(60, 40, larvae="some", eggs="some").counted(1, 60)
    known = known_of(story)
    believed = known.living.today

    assert known.census.brood.larvae_n == believed.larvae
    fewer = replace(
        known, census=replace(known.census, brood=replace(known.census.brood, larvae_n=believed.larvae.times(0.2)))
    )  # fmt: skip
    protein, less = (ration_of("protein", one, None).mg_per_day.best for one in (known, fewer))
    assert less < 0.7 * protein
    assert ration_of("sugar", fewer, None).mg_per_day == ration_of("sugar", known, None).mg_per_day
    twice = replace(known, census=replace(known.census, workers=known.census.workers.times(2)))
    sugar, more = (ration_of("sugar", one, None).mg_per_day.best for one in (known, twice))
    assert more > 1.5 * sugar


RESTS = {"condition": "resting", "resting_since": "2026-10-20", "place": FRIDGE}


def test_a_colony_at_rest_says_what_waits_in_it_and_when_new_workers_come_after_it():
    story = Story("2027-01-10", **RESTS, condition_until="2027-03-01").counted(
        90, 60, larvae="many", pupae="some"
    )
    plan = story.plan()
    days = plan.census["hatching"]

    assert 5 <= notices(story)["rest_larvae_wait"]["high"] <= 80
    assert days["low_on"] > "2027-03-01"
    assert days["best_on"] < "2027-04-20"
    assert plan.census["asks"] is None
    assert known_of(story).living.today.pupae.best < 0.5


def test_a_rest_without_a_day_to_wake_is_taken_to_last_as_long_as_is_usual():
    until_set = Story("2027-01-10", **RESTS).counted(90, 60, larvae="many")
    low_on = until_set.plan().census["hatching"]["low_on"]

    assert "2027-02-01" < low_on < "2027-04-15"


def test_a_rest_of_larvae_that_do_not_outlive_it_says_that_no_brood_is_left():
    story = Story("2027-01-10", "formica_fusca", **RESTS).counted(90, 60, larvae="some")

    assert "rest_no_brood" in notices(story)


def test_a_look_before_a_rest_still_speaks_after_it():
    """Days of rest are not days in which nobody looked."""
    woke = {"resting_since": "2026-10-20", "condition_until": "2027-03-01", "condition_since": "2027-03-01"}
    story = Story("2027-03-10", **woke).counted(145, 60, larvae="many")

    assert story.plan().census is not None
    assert Story("2027-03-10").counted(145, 60, larvae="many").plan().census is None


def founding_in_winter(**seen: str) -> Story:
    return Story("2026-12-05", stage="founding", founded_on="2026-09-20").counted(3, workers=0, **seen)


def test_a_founding_whose_workers_are_near_is_not_told_that_its_rest_was_missed():
    near = notices(founding_in_winter(eggs="few", larvae="few", pupae="many"))
    far = notices(founding_in_winter(eggs="few", larvae="few", pupae="none"))

    assert "rest_missed" not in near
    assert (
        "2026-12-05"
        <= near["rest_after_first"]["low_on"]
        <= near["rest_after_first"]["high_on"]
        < "2027-01-17"
    )
    assert "rest_missed" in far
