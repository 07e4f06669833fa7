"""What a founding is asked, what each answer teaches, and that one curve is drawn twice."""

from __future__ import annotations

import datetime as dt
import itertools

import pytest
from tests.care.stories import Story, notices

from broodshelf.model.gauges import DAY_MS

TODAY = "2026-07-25"
BROOD = ("eggs", "larvae", "pupae")


def founding(founded_on: str = "2026-06-25", **look: str) -> Story:
    """A *Lasius niger* queen a month after her flight, looked at ten days ago: larvae, and no pupae yet."""
    seen = look or {"eggs": "many", "larvae": "some", "pupae": "none"}
    return Story(TODAY, stage="founding", founded_on=founded_on).counted(10, workers=0, **seen)


def hatching(story: Story) -> tuple[str, str, str]:
    days = story.plan().census["hatching"]
    return days["low_on"], days["best_on"], days["high_on"]


def width_days(story: Story) -> int:
    low, _, high = hatching(story)
    return (dt.date.fromisoformat(high) - dt.date.fromisoformat(low)).days


def test_pupae_that_were_seen_bring_the_first_workers_nearer_and_widen_nothing():
    flew = "2026-06-30"  # pupae may well be there by now, and may well not
    before, after = founding(flew), founding(flew).log(0, "count", pupae="seen")

    assert hatching(after)[1] < hatching(before)[1]
    assert hatching(after)[2] <= hatching(before)[2]
    assert width_days(after) <= width_days(before)


def test_no_pupae_yet_put_them_off():
    before, after = founding(), founding().log(0, "count", pupae="none")

    assert all(later > sooner for later, sooner in zip(hatching(after), hatching(before), strict=True))


def test_what_could_not_be_seen_teaches_nothing():
    assert hatching(founding().log(0, "check", need="glance")) == hatching(founding())


def test_seen_says_only_that_there_are_some():
    """A yes is no word for a number: it must not take away from many."""
    many = founding(eggs="many", larvae="many", pupae="many")
    after = founding(eggs="many", larvae="many", pupae="many").log(0, "count", pupae="seen")

    def pupae(story: Story) -> float:
        columns = [column for column in story.plan().census["stages"] if column[0] <= story.now_ms]
        return columns[-1][4][1]  # the best of today

    assert pupae(after) > 0.8 * pupae(many) > 6  # that no workers were seen beside them counts, too


@pytest.mark.parametrize("founded_on", ["2026-05-20", "2026-06-25", "2026-07-18"])
@pytest.mark.parametrize("species", ["lasius_niger", "messor_barbarus", "camponotus_nicobarensis"])
def test_the_brood_that_is_asked_for_is_there_before_the_workers_that_it_becomes(species, founded_on):
    plan = Story(TODAY, species, stage="founding", founded_on=founded_on).plan()
    asked, days = plan.census["asks"], plan.census["hatching"]

    assert asked is not None
    assert asked["by_on"] >= TODAY
    assert days is None or days["best_on"] is None or asked["by_on"] <= max(TODAY, days["best_on"])


def test_in_the_slow_season_pupae_are_not_asked_for_after_the_first_workers():
    slow = Story("2026-11-30", "lasius_flavus", stage="founding", founded_on="2026-10-27")
    census = slow.counted(11, workers=0, eggs="some", larvae="some", pupae="none").plan().census

    assert census["asks"]["brood"] == "pupae"
    assert census["asks"]["by_on"] <= census["hatching"]["best_on"]


def test_the_oldest_brood_that_should_be_there_is_asked_for_and_never_what_was_seen():
    asked = [
        Story(TODAY, stage="founding", founded_on=day).plan().census["asks"]["brood"]
        for day in ("2026-07-20", "2026-07-05", "2026-06-15")
    ]

    assert [BROOD.index(brood) for brood in asked] == sorted(BROOD.index(brood) for brood in asked)
    assert asked[-1] == "pupae"
    assert founding(eggs="many", larvae="some", pupae="seen").plan().census["asks"] is None


def test_the_growth_chart_and_the_line_of_time_are_one_curve():
    """Both go in straight lines between their points, which are weeks apart: within 6 of 100."""
    plan = Story(TODAY).counted(30, 40, larvae="some").counted(5, 55, larvae="some").plan()
    stages = plan.census["stages"]
    for at_ms, _, best, _ in plan.growth["curve"][1:]:
        after = next(i for i, column in enumerate(stages) if column[0] >= at_ms)
        one, other = stages[after - 1], stages[after]
        share = (at_ms - one[0]) / (other[0] - one[0])
        assert one[5][1] + share * (other[5][1] - one[5][1]) == pytest.approx(best, rel=0.06, abs=1)


def test_the_line_of_a_founding_has_a_column_at_least_every_nine_days():
    stages = founding().plan().census["stages"]

    assert max(b[0] - a[0] for a, b in itertools.pairwise(stages)) <= 9 * DAY_MS


def test_a_founding_that_stalls_says_since_when_and_keeps_its_question():
    story = Story(TODAY, stage="founding", founded_on="2026-03-01").counted(
        30, workers=0, eggs="some", larvae="few", pupae="none"
    )

    assert notices(story)["founding_stalled"]["days"] >= 10
    assert story.plan().census["asks"]["brood"] == "pupae"
