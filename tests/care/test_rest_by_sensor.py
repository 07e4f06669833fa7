"""A rest follows its thermometer: begun, ended and put off by the days that were measured.

4 to 8 °C for 3 to 5 months is the usual rest of Lasius niger in the catalogue (common practice, no source).
"""

from __future__ import annotations

import datetime as dt

import pytest

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Hour, MeasuredDay, Place
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.needs import ALL_FOOD

EPOCH = dt.date(1970, 1, 1)
FRIDGE = Place("fridge")


def shelf(
    first: str, *temperatures_c: float | None, species: str = "lasius_niger", **more
) -> tuple[ColonyState, int]:
    """A colony whose place was measured from a day on, a mean each, None: the sensor was silent; and noon after it."""
    start = (dt.date.fromisoformat(first) - EPOCH).days
    measured = tuple(
        MeasuredDay(start + n, 24, mean_c=each, day_c=each, night_c=each)
        for n, each in enumerate(temperatures_c)
        if each is not None
    )
    count = Event("n", "count", (start - 20) * DAY_MS, {"workers": 60, "larvae": "none"})
    known = {
        "stage": "growing",
        "place": FRIDGE,
        "events": (count,),
        "utc_offset_min": 60,
        "latitude_sign": 1,
        **more,
    }
    now_ms = (start + len(temperatures_c)) * DAY_MS + DAY_MS // 2
    return ColonyState("c", species, measured_days=measured, **known), now_ms


def told(colony: tuple[ColonyState, int]) -> set[str]:
    return {each["code"] for each in make_plan(*colony).notices} & {
        "rest_by_sensor", "rest_over_by_sensor", "wakes_later", "resting", "rest_unmarked",
    }  # fmt: skip


def is_fed(colony: tuple[ColonyState, int]) -> bool:
    return any(gauge.need in ALL_FOOD for gauge in make_plan(*colony).gauges)


def wakes_on(colony: tuple[ColonyState, int]) -> str:
    (task,) = (task for task in make_plan(*colony).tasks if task.key.what == "wake_up")
    return (EPOCH + dt.timedelta(milliseconds=task.due_at_ms + 3_600_000)).isoformat()


def test_a_week_of_cold_in_the_season_is_a_rest_that_nobody_marked():
    six, seven = shelf("2026-11-20", *[6.0] * 6), shelf("2026-11-20", *[6.0] * 7)

    assert "rest_by_sensor" not in told(six)
    assert told(seven) == {"rest_by_sensor", "resting"}
    assert not is_fed(seven)
    # without a word of the keeper it wakes after the longest usual rest: 5 months of 30.44 days
    assert wakes_on(seven) == "2027-04-21"


@pytest.mark.parametrize(
    "colony",
    [
        shelf("2026-06-10", *[6.0] * 10),  # no season of rest
        shelf("2026-11-20", *[12.0] * 10),  # too warm for one
        shelf("2026-11-20", *[6.0] * 10, None, None, None, None),  # silent for four days
        shelf("2026-11-20", *[6.0] * 10, species="camponotus_tropical"),  # a species that has none
        shelf("2026-11-20", *[6.0] * 10, condition="quarantine"),
        shelf("2026-11-20", *[6.0] * 5, 15.0, *[6.0] * 5),  # broken by a warm day
    ],
)
def test_what_is_no_rest_is_not_taken_for_one(colony):
    assert "rest_by_sensor" not in told(colony)


def test_a_sensor_that_missed_two_days_breaks_no_run():
    assert "rest_by_sensor" in told(shelf("2026-11-20", *[6.0] * 4, None, None, *[6.0] * 4))


def test_typed_readings_and_settings_leave_a_rest_to_the_keeper():
    state, now_ms = shelf("2026-11-20", *[6.0] * 10)
    unmeasured = ColonyState(
        "c", "lasius_niger", stage="growing", place=Place("fridge", 6, 6), events=state.events
    )

    assert told((unmeasured, now_ms)) == {"rest_unmarked"}


MARKED = {"condition": "resting", "resting_since": "2026-11-01", "condition_since": "2026-11-01"}


def test_warm_days_after_a_whole_rest_end_it_and_it_is_fed_again():
    rest = [6.0] * 95
    four = shelf("2026-11-01", *rest, *[20.0] * 4, **MARKED)
    five = shelf("2026-11-01", *rest, *[20.0] * 5, **MARKED)

    assert told(four) == {"resting"}
    assert told(five) == {"rest_over_by_sensor"}
    assert is_fed(five)


def test_warm_days_after_a_short_rest_end_nothing_by_themselves():
    """The task that the rest does not fit its place tells the keeper, who decides."""
    noon_ms = shelf("2026-11-01", *[20.0] * 38)[1]
    hours = tuple(Hour(noon_ms - n * 3_600_000, 20.0, 20.0, 20.0) for n in range(72, 0, -1))
    short = shelf("2026-11-01", *[6.0] * 30, *[20.0] * 8, **MARKED, hours=hours)

    assert "rest_over_by_sensor" not in told(short)
    assert "rest_fits" in {task.key.what for task in make_plan(*short).tasks}


def test_days_that_were_too_warm_put_the_waking_off_and_those_of_the_ramp_do_not():
    until = {**MARKED, "condition_until": "2027-02-01"}
    ramp = shelf("2026-11-01", *[18.0] * 15, *[6.0] * 20, **until)
    late = shelf("2026-11-01", *[18.0] * 25, *[6.0] * 20, **until)

    assert wakes_on(ramp) == "2027-02-01"
    assert wakes_on(late) == "2027-02-11"
    assert told(late) == {"resting", "wakes_later"}


def test_the_waking_is_never_put_off_beyond_the_longest_rest_of_its_year():
    # the shortest day is 21 December; five months around it end on 5 March
    colony = shelf("2026-11-01", *[18.0] * 60, *[6.0] * 10, **MARKED, condition_until="2027-02-25")
    assert wakes_on(colony) == "2027-03-07"
    beyond = shelf("2026-11-01", *[18.0] * 60, *[6.0] * 10, **MARKED, condition_until="2027-03-20")
    assert wakes_on(beyond) == "2027-03-20"
