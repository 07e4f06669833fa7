"""Brood: degree-days against published development times, and forecasts from what was seen."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest

from broodshelf.care.catalogue import species, words
from broodshelf.care.colony.brood import (
    BroodSeen,
    brood_notice,
    brood_seen,
    days_to_worker,
    next_workers,
)  # fmt: skip
from broodshelf.care.colony.brood_groups import GROUPS, STAGES, brood_group
from broodshelf.care.colony.climate import climate_of
from broodshelf.care.colony.history import Count
from broodshelf.model.facts import Place
from broodshelf.model.quantities import OutOfRange

DAY_MS = 86_400_000
NOW_MS = 1_779_278_400_000
PUBLISHED = json.loads(
    (Path(__file__).parents[2] / "fixtures/published/brood_argentine_ant.json").read_text()
)
ARGENTINE = GROUPS["argentine"]


def measured(stage: str, *, fitted: bool) -> dict[int, float]:
    left_out = PUBLISHED["left_out"].get(stage, []) if fitted else []
    low_c, high_c = ARGENTINE.low_c, ARGENTINE.high_c
    return {
        int(c): days
        for c, days in PUBLISHED["days"][stage].items()
        if low_c <= int(c) <= high_c and int(c) not in left_out
    }


def climate(day_c: float, night_c: float | None = None):
    return climate_of(
        Place(day_temp_c=day_c, night_temp_c=day_c if night_c is None else night_c), now_ms=NOW_MS
    )


@pytest.mark.parametrize("stage", STAGES)
def test_thresholds_and_degree_days_are_the_lines_through_the_published_times(stage):
    points = measured(stage, fitted=True)
    slope, intercept = np.polyfit(list(points), [1 / days for days in points.values()], 1)

    assert ARGENTINE.stage(stage).threshold_c == pytest.approx(-intercept / slope, abs=0.01)
    assert ARGENTINE.stage(stage).degree_days == pytest.approx(1 / slope, rel=0.001)


@pytest.mark.parametrize("stage", STAGES)
def test_each_stage_is_foretold_within_a_ninth_of_its_published_time(stage):
    for temperature_c, days in measured(stage, fitted=True).items():
        made = days_to_worker(ARGENTINE, temperature_c, temperature_c, stages=[stage])

        assert made.best == pytest.approx(days, rel=0.11), temperature_c


def test_the_whole_way_from_egg_to_worker_is_foretold_within_four_percent():
    for temperature_c in (21, 24, 28, 30):  # Abril et al. 2010; 26 °C is left out for its larval time
        days = sum(PUBLISHED["days"][stage][str(temperature_c)] for stage in STAGES)

        assert days_to_worker(ARGENTINE, temperature_c, temperature_c).best == pytest.approx(days, rel=0.04)


def test_myrmica_quickens_by_3_1_from_15_to_25_degrees():
    # Elmes & Wardlaw 1983: Q10 about 3.1 over 15..25 °C, slope 0.0491 log10 per °C
    cold, warm = days_to_worker(GROUPS["myrmica"], 15, 15), days_to_worker(GROUPS["myrmica"], 25, 25)

    assert cold.best / warm.best == pytest.approx(3.1, abs=0.05)
    assert math.log10(cold.best / warm.best) / 10 == pytest.approx(0.0491, abs=0.001)


def test_lasius_pupates_about_a_month_after_laying_at_25_degrees():
    # Lasius japonicus, Sociobiology 2015 (abstract); the table is built on it
    assert days_to_worker(GROUPS["lasius"], 25, 25, stages=["eggs", "larvae"]).best == pytest.approx(30)


@pytest.mark.parametrize(
    ("code", "temperature_c", "low", "high"),
    [
        ("monomorium", 27, 25, 54),  # Fowler et al. 1993, M. pharaonis
        ("fire_ant", 28, 20, 60),  # Taiwan national centre page, second-hand
        ("camponotus", 25, 45, 75),  # about 60 days, Japanese Ant Image Database
    ],
)
def test_other_groups_stay_within_what_is_published_of_them(code, temperature_c, low, high):
    made = days_to_worker(GROUPS[code], temperature_c, temperature_c)

    assert low <= made.best <= high
    assert made.low == pytest.approx(low, rel=0.25)
    assert made.high == pytest.approx(high, rel=0.25)


@pytest.mark.parametrize("code", GROUPS)
def test_no_group_is_asked_outside_its_published_range(code):
    group = GROUPS[code]
    for inside in (group.low_c, group.high_c):
        assert days_to_worker(group, inside, inside).best > 0
    for outside in (group.low_c - 0.1, group.high_c + 0.1, 60.0, math.nan, math.inf):
        with pytest.raises(OutOfRange):
            days_to_worker(group, outside, outside)


def test_warmth_hastens_and_a_cool_night_counts_for_half_the_day():
    days = [days_to_worker(ARGENTINE, c, c).best for c in (22, 24, 26, 28)]

    assert days == sorted(days, reverse=True)
    even, swing = days_to_worker(ARGENTINE, 25, 25), days_to_worker(ARGENTINE, 28, 22)
    assert swing.best == pytest.approx(even.best)  # linear above the thresholds: only the mean matters


def test_the_genus_finds_the_group_and_a_stranger_gets_the_widest():
    assert brood_group(species()["myrmica_rubra"]).code == "myrmica"
    assert brood_group(species()["camponotus_ligniperda"]).code == "camponotus"
    assert brood_group(species()["atta"]).code == "other"
    spread = {code: group.high_share / group.low_share for code, group in GROUPS.items()}
    assert max(spread, key=spread.__getitem__) == "other"


def counted(ago_days: float, eggs=None, larvae=None, pupae=None, workers=None) -> Count:
    some = None if workers is None else workers > 0
    return Count(NOW_MS - round(ago_days * DAY_MS), workers, some, eggs, larvae, pupae)


def test_the_oldest_brood_is_found_with_the_time_it_came():
    counts = [
        counted(30, "few", "none", "none"),
        counted(20, "few", "some", "none"),
        counted(10),
        counted(5, "few", "few", "none"),
    ]

    seen = brood_seen(counts)
    assert seen == BroodSeen("larvae", NOW_MS - 20 * DAY_MS, NOW_MS - 30 * DAY_MS)
    assert brood_seen([counted(1, "none", "none", "none"), counted(0)]) is None


def test_brood_watched_from_the_start_hatches_when_the_data_say():
    # Abril et al. 2010 at 28 °C: 43.0 days of larva and 9.0 of pupa; seen hatching from the egg a day ago
    larvae = BroodSeen("larvae", NOW_MS - DAY_MS, NOW_MS - DAY_MS)
    assert next_workers(ARGENTINE, climate(28), larvae, NOW_MS).best == pytest.approx(51.0, rel=0.03)

    # laid ten days ago: 68.0 days in all
    eggs = BroodSeen("eggs", NOW_MS - 10 * DAY_MS, NOW_MS - 10 * DAY_MS)
    assert next_workers(ARGENTINE, climate(28), eggs, NOW_MS).best == pytest.approx(58.0, rel=0.03)


def test_brood_that_came_between_two_counts_is_taken_to_have_come_midway():
    # hand calculation: 99.9 / (28 - 17.31) = 9.35 days of pupa, less (4 + 2) / 2
    pupae = BroodSeen("pupae", NOW_MS - 2 * DAY_MS, NOW_MS - 4 * DAY_MS)

    assert next_workers(ARGENTINE, climate(28), pupae, NOW_MS).best == pytest.approx(6.35, abs=0.01)


def test_an_interval_is_narrower_the_closer_the_watch_and_never_below_zero():
    close = next_workers(ARGENTINE, climate(26), BroodSeen("pupae", NOW_MS, NOW_MS - 2 * DAY_MS), NOW_MS)
    loose = next_workers(ARGENTINE, climate(26), BroodSeen("pupae", NOW_MS, None), NOW_MS)

    assert 0 <= loose.low <= close.low <= close.best <= close.high
    assert loose.low == 0
    assert loose.best < close.best


def test_pupae_that_have_long_been_there_may_hatch_on_any_day():
    made = next_workers(ARGENTINE, climate(26), BroodSeen("pupae", NOW_MS - 90 * DAY_MS, None), NOW_MS)

    assert made.low == 0
    assert made.best < 11.4  # Abril et al. 2010: the pupal time at 26 °C
    assert made.high >= 11.4


def test_the_countdown_has_words_and_says_why_there_is_none():
    lasius = brood_group(species()["lasius_niger"])
    founding = [counted(12, "few", "none", "none", workers=0), counted(1, "few", "few", "none", workers=0)]

    first = brood_notice(lasius, climate(25), founding, NOW_MS)
    assert first is not None
    assert first["code"] == "first_workers_in"
    # larvae 1 to 12 days old at 25 °C: 19 + 17 days less the age, with the group's spread
    assert first["args"]["low"] <= 36 - 6.5 <= first["args"]["high"]
    grown = brood_notice(lasius, climate(25), [counted(1, pupae="few", workers=9)], NOW_MS)
    assert grown is not None
    assert grown["code"] == "next_workers_in"
    cold = brood_notice(lasius, climate(15), founding, NOW_MS)
    assert cold is not None
    assert cold["code"] == "brood_no_forecast"
    assert brood_notice(lasius, climate(25), [counted(1, "none", "none", "none")], NOW_MS) is None
    assert {first["code"], grown["code"], cold["code"]} <= words()["notice"].keys()


def test_every_group_names_its_source():
    for group in GROUPS.values():
        assert "common practice" in group.source or any(ch.isdigit() for ch in group.source), group.code
        assert group.low_share < 1 < group.high_share


def test_the_table_in_the_docs_is_the_one_in_the_code():
    docs = (Path(__file__).parents[2] / "docs/care-model/colony.md").read_text()
    for code, group in GROUPS.items():
        days = round(days_to_worker(group, 25, 25).best)
        assert f"| {code} | {group.low_c:g}–{group.high_c:g} | {days} |" in docs
