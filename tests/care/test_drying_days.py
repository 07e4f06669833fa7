"""The water follows the days as they were: warm dry days take more of it, and what they took is no leak."""

from __future__ import annotations

import pytest

from broodshelf.care.colony.day_climate import climate_by_day
from broodshelf.care.plan.drying import drying_days
from broodshelf.care.water.drying_days import BY_SETTINGS
from broodshelf.care.water.evaporation import drying
from broodshelf.care.water.reservoir import gauge_of, reservoir
from broodshelf.model.facts import ColonyState, Event, MeasuredDay, Place, Vessel
from broodshelf.model.gauges import DAY_MS, level_at

TUBE = Vessel("tube_16x150")
ROOM = Place("room", 22.0, 22.0, 50.0)
START = 20_000
NOW_MS = (START + 40) * DAY_MS


def dried(temperatures_c: dict[int, float], humidity_pct: float = 50.0, now_ms: int = NOW_MS):
    """How a room dried on the days that were measured, counted from ``START``; the others are as set."""
    measured = tuple(
        MeasuredDay(START + day, 24, day_c=c, night_c=c, humidity_pct=humidity_pct)
        for day, c in temperatures_c.items()
    )
    state = ColonyState("c", "lasius_niger", place=ROOM, measured_days=measured)
    return drying_days(climate_by_day(state, START, now_ms // DAY_MS), ROOM, now_ms=now_ms)


def read(day: int, **values) -> Event:
    return Event(f"w{day}", "water", (START + day) * DAY_MS, {"action": "read", **values})


def test_without_a_sensor_every_day_counts_for_one():
    state = ColonyState("c", "lasius_niger", place=ROOM)
    found = drying_days(climate_by_day(state, START, START + 40), ROOM, now_ms=NOW_MS)
    assert found is BY_SETTINGS
    assert found.until_ms(NOW_MS) == NOW_MS


def test_a_day_counts_for_what_its_air_lacks_beside_that_of_the_settings():
    """At 32 °C and 50 % the air lacks 1.80 times what it does at 22 °C: saturation 4759 and 2645 Pa (IAPWS-95)."""
    found = dried({10: 32.0})
    began_ms, next_ms = (START + 10) * DAY_MS, (START + 11) * DAY_MS
    assert (found.until_ms(next_ms) - found.until_ms(began_ms)) / DAY_MS == pytest.approx(1.80, abs=0.02)
    assert found.until_ms(began_ms) - found.until_ms(began_ms - DAY_MS) == DAY_MS
    assert found.until_ms(next_ms + DAY_MS) - found.until_ms(next_ms) == DAY_MS
    half = found.until_ms(began_ms + DAY_MS // 2) - found.until_ms(began_ms)
    assert half == pytest.approx((found.until_ms(next_ms) - found.until_ms(began_ms)) / 2)


def test_a_heat_wave_lowers_the_level_and_the_days_to_come_go_on_as_set():
    full = [read(0, action="refill")]
    as_set = gauge_of(reservoir(full, TUBE, ROOM, 0))
    hot = gauge_of(reservoir(full, TUBE, ROOM, 0, dried(dict.fromkeys(range(5, 15), 34.0))))
    extra_days = 10 * (drying(34.0, 50.0) / drying(22.0, 50.0) - 1)

    assert level_at(as_set, NOW_MS) - level_at(hot, NOW_MS) == pytest.approx(
        extra_days * as_set.rate_per_day, rel=1e-6
    )
    assert (hot.rate_per_day, hot.as_of_ms) == (as_set.rate_per_day, as_set.as_of_ms)


def test_a_warm_week_that_goes_on_makes_the_days_left_fewer():
    full = [read(0, action="refill")]
    as_set = reservoir(full, TUBE, ROOM, 0)
    warm = reservoir(full, TUBE, ROOM, 0, dried(dict.fromkeys(range(34, 41), 30.0)))
    assert warm.rate_per_day.best / as_set.rate_per_day.best == pytest.approx(
        drying(30.0, 50.0) / drying(22.0, 50.0)
    )


def test_days_to_come_that_are_warmer_change_nothing_of_what_is_left_today():
    full = [read(0, action="refill")]
    known = reservoir(full, TUBE, ROOM, 0, dried(dict.fromkeys(range(38, 41), 34.0)))
    gauge, as_set = gauge_of(known), reservoir(full, TUBE, ROOM, 0)
    pace = drying(34.0, 50.0) / drying(22.0, 50.0)

    assert (gauge.level, known.as_of_ms) == (1.0, START * DAY_MS)
    assert level_at(gauge, NOW_MS) == pytest.approx(1 - (38 + 2 * pace) * as_set.rate_per_day.best, abs=1e-6)


def test_what_a_hot_spell_took_is_no_leak_where_the_sensor_saw_it():
    """The tube loses 1 mm a day as set; in ten days of 38 °C and 20 % it loses five times as much."""
    steady = [read(day, level_mm=70 - day) for day in (0, 10, 20, 30)]
    log = [*steady, read(40, level_mm=2)]
    unseen = reservoir(log, TUBE, ROOM, 0)
    seen = reservoir(log, TUBE, ROOM, 0, dried(dict.fromkeys(range(30, 40), 38.0), humidity_pct=20.0))

    assert unseen.leak_probability > 0.5
    assert seen.leak_probability < unseen.leak_probability / 2
