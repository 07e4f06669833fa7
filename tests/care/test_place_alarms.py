"""Alarms before it is too hot or cold, learnt from a place's own days. Thresholds: common practice, no source."""

from __future__ import annotations

import math

import pytest
from tests.support.said import words

from broodshelf.care.colony.place_alarms import Around, place_alarms, usual_by_clock
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Hour, Place, Vessel
from broodshelf.model.gauges import DAY_MS, HOUR_MS
from broodshelf.model.tasks import SENSED, TASKS

MIDNIGHT_MS = 1_768_435_200_000  # 2026-01-15T00:00:00Z
HEATED = Around(hot_c=30.0)


def heated(hour: int) -> float:
    """A cabinet whose mat warms it by day: 21 to 27 °C, warmest in the afternoon, each day a little other."""
    clock, day = hour % 24, hour // 24
    return 24 + 3 * math.sin(2 * math.pi * (clock - 9) / 24) + 0.3 * math.sin(day * 2.4)


def days(count: int, *, value=heated, until_hour: int = 0) -> list[Hour]:
    """So many whole days before midnight of the 15th, and the hours of that day up to ``until_hour``."""
    return [
        Hour(MIDNIGHT_MS + n * HOUR_MS, value(n), value(n), value(n), 50.0)
        for n in range(-24 * count, until_hour)
    ]


def after(past: list[Hour], *temperatures_c: float) -> list[Hour]:
    start_ms = past[-1].hour_ms + HOUR_MS
    return past + [
        Hour(start_ms + n * HOUR_MS, each, each, each, 50.0) for n, each in enumerate(temperatures_c)
    ]


def told(hours: list[Hour], around: Around = HEATED) -> list[str]:
    return [task.key.what for task in place_alarms(hours, around, hours[-1].hour_ms + HOUR_MS // 2)]


def hour_by_hour(hours: list[Hour], first: int, around: Around = HEATED) -> list[str | None]:
    """What is told at each hour from the ``first`` on, as the nudger hears of it."""
    return [next(iter(told(hours[: n + 1], around)), None) for n in range(first, len(hours))]


def test_days_that_differ_as_days_do_are_no_alarm():
    hours = days(14)
    assert set(hour_by_hour(hours, 24 * 6)) == {None}


def test_a_heater_that_fails_is_told_once_after_four_hours_and_over_when_it_is_warm_again():
    past = days(13, until_hour=12)
    failed = [20.0, 19.0, 19.0, 19.0, 19.0, 19.0]
    hours = after(past, *failed, heated(18), heated(19))
    found = hour_by_hour(hours, len(past))

    assert found == [None, None, None, "heater_off", "heater_off", "heater_off", None, None]
    keys = {
        place_alarms(hours[: len(past) + n], HEATED, hours[len(past) + n - 1].hour_ms)[0].key
        for n in (4, 5, 6)
    }
    assert len(keys) == 1  # the same task all along, so it is told once


def test_a_heater_that_stays_on_through_the_night_is_told_although_it_is_not_too_hot():
    past = days(13, until_hour=20)
    around = Around(hot_c=36.0)
    assert hour_by_hour(after(past, *[28.0] * 4), len(past), around) == [None, None, None, "heater_on"]


def test_it_teaches_itself_from_the_days_before_and_a_week_of_it_is_the_usual():
    flat = [24.0] * 24 * 8
    past = days(6)
    assert told(after(past, *[35.0 - 7] * 5)) == ["heater_on"]
    assert told(after(past, *flat)) == []


def test_nobody_knows_the_usual_before_five_days():
    past = days(4, until_hour=12)
    assert told(after(past, 19.0, 19.0, 19.0, 19.0)) == []


def test_what_has_one_bad_day_among_its_days_is_still_as_usual():
    """Medians: the failure of yesterday must not make today's warmth an alarm."""
    past = days(13)
    cold_day = after(past, *[18.0] * 24)
    assert told(after(cold_day, *(heated(n) for n in range(12)))) == []


def test_the_sun_on_a_cabinet_is_told_before_it_is_too_hot_in_it():
    past = days(13, until_hour=11)
    assert hour_by_hour(after(past, 28.0), len(past)) == ["rising_fast"]
    assert hour_by_hour(after(past, 25.5), len(past)) == [None]  # it would take more than two hours
    assert hour_by_hour(after(past, 31.0), len(past)) == [None]  # then it is too hot, which is told instead


def test_a_mat_that_warms_every_morning_by_four_degrees_is_no_alarm():
    def steep(hour: int) -> float:
        return 29.0 if 9 <= hour % 24 < 20 else 24.0

    hours = days(14, value=steep)
    assert set(hour_by_hour(hours, 24 * 6)) == {None}


def test_without_days_of_its_own_a_steep_rise_is_told_all_the_same():
    assert told([Hour(MIDNIGHT_MS, 25.0), Hour(MIDNIGHT_MS + HOUR_MS, 28.5)]) == ["rising_fast"]
    assert told([Hour(MIDNIGHT_MS, 25.0), Hour(MIDNIGHT_MS + 5 * HOUR_MS, 28.5)]) == []


def test_a_fridge_that_stands_open_in_a_rest_is_told_and_a_cupboard_is_not():
    past = days(10, value=lambda n: 6.0 + (n % 3) * 0.2)
    fridge = Around(hot_c=30.0, resting_fridge=True)

    assert hour_by_hour(after(past, 8.0, 10.5, 11.0, 7.0), len(past), fridge) == [
        None, "fridge_open", "fridge_open", None,
    ]  # fmt: skip
    assert told(after(past, 8.0, 10.5)) == []


def test_a_look_quiets_an_alarm_that_had_begun_and_not_the_next():
    past = days(13, until_hour=12)
    failed = after(past, 19.0, 19.0, 19.0, 19.0, 19.0)
    began_ms = past[-1].hour_ms + HOUR_MS
    looked = Around(hot_c=30.0, looked_ms=began_ms + HOUR_MS)

    assert told(failed, looked) == []
    assert told(failed, Around(hot_c=30.0, looked_ms=began_ms - 1)) == ["heater_off"]


def test_a_sensor_that_is_silent_for_hours_says_nothing():
    hours = after(days(13, until_hour=12), 19.0, 19.0, 19.0, 19.0)
    assert place_alarms(hours, HEATED, hours[-1].hour_ms + 4 * HOUR_MS) == []


def damp(*percents: float) -> list[Hour]:
    first_ms = MIDNIGHT_MS - len(percents) * HOUR_MS
    return [Hour(first_ms + n * HOUR_MS, 24.0, 24.0, 24.0, percent) for n, percent in enumerate(percents)]


@pytest.mark.parametrize(
    ("last", "found"),
    [
        ([22.0] * 24, ["dry_air"]),
        ([22.0] * 11 + [50.0] * 13, []),
        ([42.0] * 24, []),
        ([22.0] * 24 + [50.0] * 24, []),
    ],
)
def test_air_that_becomes_dry_asks_for_a_look_at_a_nest_and_not_at_a_tube(last, found):
    hours = damp(*[50.0] * 24 * 8, *last)
    nest = Around(hot_c=30.0, nest_dries=True)

    assert told(hours, nest) == found
    assert told(hours) == []


def test_air_that_is_dry_all_year_is_no_alarm_and_water_that_was_seen_to_ends_it():
    nest = Around(hot_c=30.0, nest_dries=True)
    assert told(damp(*[25.0] * 24 * 12), nest) == []

    seen = Around(hot_c=30.0, nest_dries=True, water_seen_ms=MIDNIGHT_MS - HOUR_MS)
    assert told(damp(*[50.0] * 24 * 8, *[22.0] * 24), seen) == []


def test_the_usual_is_the_median_of_each_hour_of_the_clock_in_the_zone_of_the_household():
    usual = usual_by_clock(days(14), lambda hour: hour.temperature_c, 120, MIDNIGHT_MS)
    assert usual[17].best == pytest.approx(heated(15), abs=0.3)
    assert usual[17].spread < 0.5


def state(*hours: Hour, **more) -> ColonyState:
    place = more.pop("place", Place("cabinet"))
    return ColonyState("c", "lasius_niger", stage="growing", hours=hours, place=place, **more)


def asked(colony: ColonyState, now_ms: int) -> list[str]:
    return [task.key.what for task in make_plan(colony, now_ms).tasks if task.key.what in SENSED]


def test_the_plan_tells_the_worst_alone_and_each_has_words_and_a_first_step_for_a_stand_in():
    past = days(13, until_hour=12)
    hot, now_ms = after(past, 31.0, 32.0, 32.0, 33.0), MIDNIGHT_MS + 16 * HOUR_MS
    assert asked(state(*hot), now_ms) == ["overheating"]  # not the heater, too

    failed = after(past, 19.0, 19.0, 19.0, 19.0)
    assert asked(state(*failed), now_ms) == ["heater_off"]
    (task,) = (t for t in make_plan(state(*failed), now_ms).tasks if t.key.what == "heater_off")
    assert not task.urgent
    assert [why["code"] for why in task.stand_in["reasons"]] == ["heater_off", "helper_call", "helper_tell"]
    assert words()["reason"].keys() >= SENSED
    assert words()["todo"].keys() >= SENSED


def test_a_resting_colony_in_a_fridge_is_warned_of_an_open_door_and_of_frost():
    fridge = {"place": Place("fridge"), "condition": "resting", "resting_since": "2025-12-01"}
    past = days(10, value=lambda _: 6.0)
    now_ms = MIDNIGHT_MS + HOUR_MS

    assert asked(state(*after(past, 10.0), **fridge), now_ms) == ["fridge_open"]
    # 4 to 8 °C is the usual rest of Lasius niger, so frost is its limit
    assert asked(state(*after(past, -0.5), **fridge), now_ms) == ["freezing"]
    assert asked(state(*after(past, 2.0), **fridge), now_ms) == []


def test_what_is_too_cold_for_a_rest_and_above_freezing_is_not_called_frost():
    """10 to 18 °C is the usual rest of Messor barbarus, 6 its frost limit (common practice, no source)."""
    fridge = {"place": Place("fridge"), "condition": "resting", "resting_since": "2025-12-01"}

    def why(temperature_c: float) -> list[str]:
        hours = after(days(10, value=lambda _: 12.0), temperature_c)
        colony = ColonyState("c", "messor_barbarus", stage="growing", hours=tuple(hours), **fridge)
        tasks = make_plan(colony, MIDNIGHT_MS + HOUR_MS).tasks
        return [task.reasons[0]["code"] for task in tasks if task.key.what == "freezing"]

    assert why(4.0) == ["rest_colder"]
    assert why(-1.0) == ["freezing"]


def test_a_nest_in_dry_air_is_looked_at_and_watered_ends_it():
    hours = damp(*[50.0] * 24 * 8, *[22.0] * 24)
    watered = Event("w", "water", MIDNIGHT_MS - HOUR_MS, {"action": "refill"})
    nest = Vessel("nest_small")
    assert asked(state(*hours, vessel=nest), MIDNIGHT_MS) == ["dry_air"]
    assert asked(state(*hours, vessel=nest, events=(watered,)), MIDNIGHT_MS) == []
    assert asked(state(*hours), MIDNIGHT_MS) == []


def test_only_what_kills_by_the_morning_wakes_anybody():
    assert {what for what, row in TASKS.items() if row.wakes} == {"overheating", "freezing"}
    assert DAY_MS == 24 * HOUR_MS
