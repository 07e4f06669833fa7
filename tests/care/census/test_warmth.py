"""Which weeks of warmth a census is told of: those that were measured as far back as it looks, else the settings."""

from __future__ import annotations

from dataclasses import replace

from broodshelf.care.colony.census.facts import Warmth
from broodshelf.care.plan.known import know
from broodshelf.model.facts import ColonyState, Event, MeasuredDay, Place
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000
TODAY = NOW_MS // DAY_MS
WEEK = TODAY // 7


def founder(*cool: tuple[int, float | None, float | None]) -> ColonyState:
    """A queen whose flight was six weeks ago, in a room of 24 °C; of some weeks ago day and night were measured."""
    days = tuple(
        MeasuredDay((WEEK - ago) * 7 + day, 24, day_c=day_c, night_c=night_c)
        for ago, day_c, night_c in cool
        for day in range(7)
    )
    return ColonyState(
        "c", "lasius_niger", stage="founding", founded_on="2026-03-22", place=Place("room", 24, 24), measured_days=days,
        events=(Event("look", "count", NOW_MS - 2 * DAY_MS, {"workers": 0, "eggs": "some"}),),
    )  # fmt: skip


def test_weeks_that_were_measured_stand_where_they_were_and_the_setting_between_them():
    state = founder((9, 18.1, 15.9), (5, None, 20.0))

    assert know(state, NOW_MS).facts.warmth == (
        Warmth(0, 24, 24), Warmth((WEEK - 9) * 7, 18, 16), Warmth((WEEK - 8) * 7, 24, 24),
        Warmth((WEEK - 5) * 7, 24, 20), Warmth((WEEK - 4) * 7, 24, 24),
    )  # fmt: skip


def test_cool_weeks_a_month_ago_put_the_first_workers_off():
    cool = [(ago, 17.0, 15.0) for ago in range(6, 2, -1)]

    plain, cooled = (know(state, NOW_MS).living.first_workers for state in (founder(), founder(*cool)))
    assert cooled.best > plain.best + 7


def test_what_was_typed_months_ago_reaches_the_census_too():
    at_ms = (WEEK - 9) * 7 * DAY_MS + 12 * 3_600_000
    state = replace(founder(), climate_readings=(Event("r", "climate", at_ms, {"temperature_c": 30.0}),))

    warm = [entry.day // 7 for entry in know(state, NOW_MS).facts.warmth if entry.day_c > 24]
    assert warm[0] == WEEK - 9  # and speaks for two weeks more
    assert warm[-1] <= WEEK - 7
