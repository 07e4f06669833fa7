"""Newton's law of cooling against textbook examples."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from broodshelf.care.feeding.cooling import VESSELS_PER_MIN, cooled_to_c, k_from_two_readings, minutes_until
from broodshelf.model.quantities import Estimate, OutOfRange


def celsius(fahrenheit: float) -> float:
    return (fahrenheit - 32) / 1.8


def test_the_coffee_of_openstax_calculus_cools_as_printed():
    # OpenStax, Calculus Volume 2, section 2.8, from memory: poured at 200 °F into a 70 °F room, 180 °F after 2 min;
    # k = ln(13/11)/2; it reaches 175 °F after about 2.5 min and 155 °F after about 5 min, to the nearest half minute
    room = celsius(70)
    k = k_from_two_readings(celsius(200), celsius(180), room, 2)

    assert k == pytest.approx(math.log(13 / 11) / 2)
    assert round(2 * cooled_minutes(200, 175, room, k)) / 2 == 2.5
    assert round(2 * cooled_minutes(200, 155, room, k)) / 2 == 5.0


def cooled_minutes(start_f: float, target_f: float, room_c: float, k: float) -> float:
    # the target of minutes_until may be any temperature; the room only has to be below it
    return minutes_until(celsius(start_f), room_c, k, celsius(target_f)).best


def test_the_coffee_of_the_dartmouth_calculus_example_cools_as_worked_by_hand():
    # Dartmouth online calculus text, section 3.2: 170 °F in a room of 70 °F, first cooling by 20 °F a minute, so
    # k = 20/100; to 110 °F it takes ln(100/40)/0.2 = 4.581 min (problem read, answer worked by hand)
    assert cooled_minutes(170, 110, celsius(70), 0.2) == pytest.approx(4.5815, abs=0.001)


def test_a_cup_that_cools_from_95_to_61_degrees_in_half_an_hour_has_a_k_of_0_02():
    # a school examination problem: room 20 °C, k = 0.02 as printed (to two figures)
    assert round(k_from_two_readings(95, 61, 20, 30), 2) == 0.02


@settings(deadline=None)
@given(st.floats(31, 100), st.floats(0, 29), st.floats(0.001, 1))
def test_after_the_minutes_named_it_has_the_temperature_named(start, room, k):
    minutes = minutes_until(start, room, k).best
    if minutes <= 10_000:
        assert cooled_to_c(start, room, minutes, k) == pytest.approx(30, abs=1e-6)


@settings(deadline=None)
@given(st.floats(31, 100), st.sampled_from(sorted(VESSELS_PER_MIN)))
def test_a_slower_vessel_and_a_warmer_start_take_longer(start, vessel):
    wait = minutes_until(start, 21, VESSELS_PER_MIN[vessel])

    assert 0 < wait.low < wait.best < wait.high
    assert minutes_until(start + 5, 21, VESSELS_PER_MIN[vessel]).best > wait.best


def test_what_is_cool_already_may_be_offered_at_once():
    assert minutes_until(25, 20, 0.03) == Estimate(0, 0, 0)


@pytest.mark.parametrize(
    ("start", "room"), [(90, 30), (90, 29.9), (90, 40), (math.nan, 20), (150, 20), (90, math.inf)]
)
def test_it_never_cools_below_the_room_and_nonsense_is_refused(start, room):
    with pytest.raises(OutOfRange):
        minutes_until(start, room, 0.03)


@pytest.mark.parametrize("later", [95, 96, 20, 15])
def test_two_readings_that_show_no_cooling_give_no_constant(later):
    with pytest.raises(OutOfRange):
        k_from_two_readings(95, later, 20, 10)
