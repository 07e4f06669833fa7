"""Heat, cold and frost belong to the species and its condition. Limits: common practice where no source is named."""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.catalogue import species, temperatures
from broodshelf.care.colony.dossier import dossier_of
from broodshelf.care.colony.temperature import limits_of, temperature_tasks
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Hour, Place
from broodshelf.model.gauges import DAY_MS, HOUR_MS

NOW_MS = 1_768_478_400_000  # 2026-01-15T12:00:00Z


def reading(ago_h: float, temperature_c: float) -> Event:
    return Event(f"r{ago_h}", "climate", NOW_MS - round(ago_h * HOUR_MS), {"temperature_c": temperature_c})


def alarms(code: str, *readings: Event, place: Place = Place(), **values) -> list[str]:  # noqa: B008 - frozen
    state = ColonyState("c", code, stage="growing", place=place, climate_readings=readings, **values)
    tasks = make_plan(state, NOW_MS).tasks
    return [t.key.what for t in tasks if t.key.what in ("too_hot", "too_cold", "rest_fits")]


@pytest.mark.parametrize(
    ("code", "degrees", "found"),
    [
        (
            "lasius_niger",
            31,
            ["too_hot"],
        ),  # L. japonicus at 30 °C: all queens dead in 50 days (Sociobiology 2015)
        ("lasius_niger", 29, []),
        ("messor_barbarus", 34, []),
        ("messor_barbarus", 37, ["too_hot"]),
        ("atta", 31, ["too_hot"]),
        ("cataglyphis", 36, []),
        ("unheard_of", 33, ["too_hot"]),
    ],
)
def test_heat_that_is_usual_for_a_harvester_is_an_alarm_for_a_lasius(code, degrees, found):
    assert alarms(code, reading(2, degrees)) == found


@pytest.mark.parametrize("code", ["camponotus_tropical", "acromyrmex", "pheidole_tropical", "oecophylla"])
def test_eleven_degrees_are_an_alarm_for_a_tropical_species(code):
    assert alarms(code, reading(2, 11)) == ["too_cold"]
    assert alarms(code, place=Place("room", 11, 11)) == ["too_cold"]
    assert alarms(code, reading(2, 19)) == []


def test_eleven_degrees_are_none_for_a_resting_one_nor_for_one_that_could_rest():
    resting = {"condition": "resting", "resting_since": "2025-12-01"}
    cold = Place("cellar", 11, 11)

    assert alarms("messor_barbarus", reading(2, 11), place=cold, **resting) == []
    assert alarms("messor_barbarus", reading(2, 11), place=cold) == []


def test_a_tropical_species_that_is_marked_as_resting_is_still_too_cold():
    marked = {"condition": "resting", "resting_since": "2025-12-01"}

    assert "too_cold" in alarms("camponotus_tropical", reading(2, 11), **marked)


@pytest.mark.parametrize(
    ("code", "degrees", "found"),
    [("lasius_niger", 3, []), ("lasius_niger", -1, ["rest_fits"]), ("messor_barbarus", 4, ["rest_fits"])],
)
def test_the_frost_limit_of_a_rest_belongs_to_the_species(code, degrees, found):
    # 4 degrees under the coolest usual rest, never under freezing: 0 for L. niger (4 to 8), 6 for M. barbarus (10 on)
    place = Place("fridge", degrees, degrees)

    assert alarms(code, place=place, condition="resting", resting_since="2025-12-01") == found


def test_an_alarm_by_a_reading_ends_with_a_better_one_and_after_a_day():
    def keys(*readings, place=Place("cabinet", 35)):  # noqa: B008 - frozen
        kind = species()["lasius_niger"]
        colony = dossier_of(ColonyState("c", kind.code, place=place, climate_readings=readings), kind)
        return [str(t.key) for t in temperature_tasks(colony, resting=False, now_ms=NOW_MS)]

    assert keys(reading(3, 33)) == ["too_hot:r3"]
    assert keys(reading(3, 33), reading(1, 27)) == []
    assert keys(reading(30, 33)) == []
    assert keys() == ["too_hot:place"]
    assert keys(reading(40, 26)) == []  # the place was read since it was set
    assert keys(Event("old", "climate", NOW_MS - 20 * DAY_MS, {"temperature_c": 26})) == ["too_hot:place"]


def test_a_look_after_an_alarm_ends_it_and_so_a_setting_is_no_alarm_for_ever():
    def found(*events, readings=()):
        place = Place("cabinet", 35)
        state = ColonyState("c", "lasius_niger", place=place, climate_readings=readings, events=events)
        return [t for t in make_plan(state, NOW_MS).tasks if t.key.what in ("too_hot", "too_cold")]

    def looked(ago_h):
        return Event("k", "check", NOW_MS - ago_h * HOUR_MS, {"need": "glance"})

    (alarm,) = found()
    assert alarm.suggested == {"kind": "check", "set": {"need": "glance"}}
    assert found(looked(1)) == []
    assert found(looked(15 * 24)) != []
    assert found(looked(1), readings=(reading(3, 36),)) == []
    assert found(looked(5), readings=(reading(3, 36),)) != []


@pytest.mark.parametrize("code", species())
def test_every_species_lives_well_inside_its_limits_and_each_limit_says_where_it_comes_from(code):
    kind = species()[code]
    limits = limits_of(kind)

    assert limits.cold_c < kind.temp_c[0]
    assert limits.hot_c >= kind.temp_c[1] + 3
    assert "common practice" in limits.hot_source or "20" in limits.hot_source  # or a paper with its year
    assert "common practice" in limits.cold_source


def test_the_table_names_only_what_the_catalogue_has():
    genera = {code.split("_")[0] for code in species()}

    assert temperatures()["genus"].keys() <= genera
    assert temperatures()["species"].keys() <= species().keys()
    assert {"too_hot", "too_cold"} <= words()["reason"].keys() & words()["todo"].keys()


def hourly(*temperatures_c: float, until_ago_h: int = 1) -> tuple[Hour, ...]:
    """The last hours of a sensor, oldest first; the newest began ``until_ago_h`` hours ago."""
    count = len(temperatures_c)
    return tuple(
        Hour(NOW_MS - (until_ago_h + count - 1 - n) * HOUR_MS, value, value, value)
        for n, value in enumerate(temperatures_c)
    )


def sensed_alarm(hours: tuple[Hour, ...], now_ms: int = NOW_MS, *events: Event) -> list[str]:
    state = ColonyState("c", "lasius_niger", stage="growing", hours=hours, events=events)
    return [
        str(task.key)
        for task in make_plan(state, now_ms).tasks
        if task.key.what in ("overheating", "freezing", "too_hot", "too_cold")
    ]


def test_an_alarm_of_a_sensor_begins_with_the_first_hot_hour_and_stays_the_same_until_it_is_over():
    first = sensed_alarm(hourly(24, 24, 31))
    third = sensed_alarm(hourly(24, 24, 31, 32, 33), NOW_MS)

    assert first == [f"overheating:sensor-{NOW_MS - HOUR_MS}"]
    assert third == [f"overheating:sensor-{NOW_MS - 3 * HOUR_MS}"]
    assert sensed_alarm(hourly(24, 31, 33, 28)) == []


def test_what_somebody_looked_at_is_quiet_until_it_was_over_once():
    look = Event("l", "check", NOW_MS - HOUR_MS // 2, {"need": "glance"})

    assert sensed_alarm(hourly(24, 31, 32), NOW_MS, look) == []
    assert len(sensed_alarm(hourly(24, 31, 24, 32, until_ago_h=0), NOW_MS, look)) == 1


def test_a_sensor_that_fell_silent_is_no_alarm_of_heat():
    assert sensed_alarm(hourly(24, 33, until_ago_h=4)) == []


def test_heat_of_weeks_is_one_alarm_and_not_one_an_hour():
    long, later = hourly(*[33.0] * 336), hourly(*[33.0] * 336, until_ago_h=0)

    assert sensed_alarm(long) == sensed_alarm(later) == ["overheating:sensor-always"]


def test_a_sensor_goes_before_a_reading_and_a_setting():
    measured = hourly(24, 24)
    state = ColonyState(
        "c", "lasius_niger", place=Place("room", 35, 30), climate_readings=(reading(2, 34),), hours=measured
    )

    assert [t for t in make_plan(state, NOW_MS).tasks if t.key.what in ("too_hot", "too_cold")] == []
