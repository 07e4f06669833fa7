"""A species of the keeper's own: every length that can be entered gets a plan, and says where a formula ends."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.care.stories import FOODS, Story, needs, notices
from tests.support.said import say

from broodshelf.care.catalogue import Species
from broodshelf.care.colony.body import FRESH_MG, LENGTH_MM, WORKER_MM, worker_fresh_mg
from broodshelf.model.facts import Place
from broodshelf.model.kinds.words import FOUNDING_MODES, GUILDS, STAGES
from broodshelf.model.quantities import OutOfRange
from broodshelf.records.schemas import check_fields


def own(length_mm: float) -> Species:
    return Species(None, "", (length_mm, length_mm), "omnivore", "claustral")


@settings(max_examples=150, deadline=None)
@given(
    length_mm=st.floats(*WORKER_MM),
    workers=st.integers(0, 20_000),
    stage=st.sampled_from([*STAGES, None]),
    guild=st.sampled_from(GUILDS),
    founds=st.sampled_from(FOUNDING_MODES),
    day_c=st.floats(-10, 45),
)
def test_every_length_that_can_be_entered_gets_a_plan(length_mm, workers, stage, guild, founds, day_c):
    colony = Story(
        "2026-07-20", None, worker_length_mm=length_mm, stage=stage, guild=guild, founding_mode=founds,
        place=Place(day_temp_c=day_c),
    ).counted(4, workers=workers, larvae="some")  # fmt: skip

    assert "water" in needs(colony)
    fed = bool(needs(colony) & FOODS)
    assert ("length_clamped" in notices(colony)) is (fed and length_mm > LENGTH_MM[1])


@pytest.mark.parametrize(
    ("length_mm", "stage", "said"),
    [
        (0.8, "nanitics", {"mass_clamped_low"}),
        (0.8, "growing", {"mass_clamped_low"}),
        (4.0, "nanitics", set()),
        (4.0, "growing", set()),
        (30.0, "growing", {"mass_clamped_high"}),
        (40.0, "growing", {"length_clamped", "mass_clamped_high"}),
        (40.0, "nanitics", {"length_clamped", "mass_clamped_high"}),
    ],
)
def test_the_ends_of_the_formulas_are_said(length_mm, stage, said):
    colony = Story("2026-07-20", None, worker_length_mm=length_mm, stage=stage).counted(4, workers=8)
    clamped = {code: args for code, args in notices(colony).items() if "clamped" in code}

    assert clamped.keys() == said
    assert not [text for text in (say("notice", code, args) for code, args in clamped.items()) if "?" in text]
    assert {"sugar", "protein"} <= needs(colony)


@given(st.floats(*WORKER_MM), st.booleans())
def test_the_mass_of_any_worker_lies_where_the_rates_are_known(length_mm, nanitic):
    mass = worker_fresh_mg(own(length_mm), nanitic=nanitic)

    assert FRESH_MG[0] <= mass.low <= mass.best <= mass.high <= FRESH_MG[1]


def test_a_longer_ant_than_the_formulas_know_weighs_as_much_as_the_longest_they_know():
    assert worker_fresh_mg(own(40), nanitic=False) == worker_fresh_mg(own(35), nanitic=False)


@pytest.mark.parametrize("length_mm", [0.79, 40.1, math.nan])
def test_what_no_ant_measures_is_refused_by_name_where_it_is_entered(length_mm):
    _, error = check_fields("colony", {"name": "Amber", "worker_length_mm": length_mm})

    assert error is not None
    assert "worker_length_mm" in str(error)
    with pytest.raises(OutOfRange, match="worker length"):
        worker_fresh_mg(own(length_mm), nanitic=False)


@pytest.mark.parametrize(("day_c", "used_c"), [(5, 10), (45, 40)])
def test_a_place_beyond_the_rates_says_as_what_it_is_reckoned(day_c, used_c):
    said = notices(Story("2026-07-20", place=Place("room", day_c, day_c)).counted(4))

    assert said["temperature_clamped"] == {"mean_c": day_c, "used_c": used_c}
    assert "temperature_clamped" not in notices(Story("2026-07-20", place=Place("room", 24, 20)).counted(4))
