"""Brood: degree-days against published development times."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest

from broodshelf.care.colony.brood import STAGES, days_to_worker
from broodshelf.care.colony.census.groups import LIFE_GROUPS as GROUPS
from broodshelf.care.colony.census.groups import life_group
from broodshelf.model.quantities import OutOfRange

PUBLISHED = json.loads(
    (Path(__file__).parents[2] / "fixtures/published/brood_argentine_ant.json").read_text()
)
ARGENTINE = GROUPS["linepithema"]


def measured(stage: str, *, fitted: bool) -> dict[int, float]:
    left_out = PUBLISHED["left_out"].get(stage, []) if fitted else []
    low_c, high_c = ARGENTINE.low_c, ARGENTINE.high_c
    return {
        int(c): days
        for c, days in PUBLISHED["days"][stage].items()
        if low_c <= int(c) <= high_c and int(c) not in left_out
    }


@pytest.mark.parametrize("stage", STAGES)
def test_thresholds_and_degree_days_are_the_lines_through_the_published_times(stage):
    points = measured(stage, fitted=True)
    slope, intercept = np.polyfit(list(points), [1 / days for days in points.values()], 1)

    assert getattr(ARGENTINE, stage).threshold_c == pytest.approx(-intercept / slope, abs=0.01)
    assert getattr(ARGENTINE, stage).degree_days == pytest.approx(1 / slope, rel=0.001)


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


@pytest.mark.parametrize(
    ("code", "temperature_c", "low", "high"),
    [
        ("monomorium", 27, 25, 54),  # Fowler et al. 1993, M. pharaonis
        ("solenopsis", 28, 20, 45),  # small workers, Taiwan national centre page, second-hand
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
    assert life_group("myrmica").code == "myrmica"
    assert life_group("camponotus").code == "camponotus"
    assert life_group("atta").code == life_group(None).code == "other"
    assert max(GROUPS.values(), key=lambda group: group.spread).code == "other"
