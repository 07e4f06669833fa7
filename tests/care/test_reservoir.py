"""Readings into rate and days left: rules for odd logs, and how well simulated tubes are learnt."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.care.gauges_by_event import apply_event
from tests.care.water_logs import LEAKING, REFILL, START_MS, STEADY, codes, eye, log, mm, water
from tests.support.said import words
from tests.support.tubes import FULL_MM, ROOM, TUBE, Keeper, rates_found

from broodshelf.care.catalogue import vessels
from broodshelf.care.water.loss_rate import GRID, LOG_PRIOR, RATIOS
from broodshelf.care.water.reservoir import gauge_of, is_urgent, reservoir
from broodshelf.model.facts import Place, Vessel
from broodshelf.model.gauges import DAY_MS, due_at_ms


def test_without_readings_size_and_air_speak():
    known = water()

    assert 80 <= known.days_left.best <= 105  # common practice: about 90 days
    assert (known.level_share, known.learnt, known.leak_probability) == (1.0, False, 0.0)
    assert codes(known) == ["water_unread", "water_physics"]


def test_a_warm_dry_place_and_a_smaller_tube_expect_less_time():
    usual = water().days_left.best

    assert water(place=Place(day_temp_c=30, night_temp_c=28, humidity_pct=30)).days_left.best < usual / 1.5
    assert water(vessel=Vessel("tube_10x70")).days_left.best < usual / 2
    assert water(place=Place("fridge")).days_left.best > usual * 2


def test_the_keepers_own_sizes_rule_over_the_catalogue():
    own = Vessel("tube_16x150", reservoir_length_mm=26)

    assert water((0, mm(13)), vessel=own).level_share == 0.5


def test_four_weekly_readings_teach_the_rate_and_the_days_left():
    known = water(*STEADY)

    # 16 mm in 28 days from a reservoir of 51.97 mm (hand calculation)
    assert known.rate_per_day.best == pytest.approx(16 / 28 / FULL_MM, rel=0.05)
    assert known.rate_per_day.low < 16 / 28 / FULL_MM < known.rate_per_day.high
    assert known.days_left.best == pytest.approx(36 * 28 / 16, rel=0.06)
    assert known.leak_probability < 0.02


def test_one_quarter_by_eye_agrees_with_the_posterior_by_brute_force():
    # prior x probability that a level of 1 +- 3 % less the loss is judged to lie between 3/8 and 5/8, over the grid
    known = water((0, REFILL), (20, eye("half")))
    usual = 1 / water().days_left.best

    def chance(u: float) -> float:
        left = 1 - 20 * usual * u
        spread = math.sqrt(2 * (0.03**2 + (0.15 * 20 * usual) ** 2 + 0.05**2))
        return math.erf((0.625 - left) / spread) - math.erf((0.375 - left) / spread)

    weights = [max(1e-9, chance(u)) * math.exp(p) for u, p in zip(RATIOS, LOG_PRIOR, strict=True)]
    middle = math.exp(sum(w * math.log(u) for w, u in zip(weights, RATIOS, strict=True)) / sum(weights))
    assert len(weights) == GRID
    assert known.rate_per_day.best / usual == pytest.approx(middle, rel=0.03)


def test_a_first_reading_moves_the_level_but_not_the_rate():
    # so the phone, which has only the gauge, agrees with the server until the next plan
    before = gauge_of(reservoir([], TUBE, ROOM, START_MS))
    (reading,) = log((3, eye("half")))
    after = gauge_of(reservoir([reading], TUBE, ROOM, START_MS))
    moved = apply_event(before, reading)

    assert (after.level, after.as_of_ms, after.rate_per_day) == (
        moved.level,
        moved.as_of_ms,
        moved.rate_per_day,
    )
    assert due_at_ms(after) == due_at_ms(moved)


@pytest.mark.parametrize(
    ("name", "step"),
    [("refill", (28.1, REFILL)), ("an unlogged refill", (35, mm(51))), ("a tilt back", (35, mm(46)))],
)
def test_a_rise_is_a_step_and_not_a_trend(name, step):
    before, after = water(*STEADY), water(*STEADY, step)

    assert after.rate_per_day.best == pytest.approx(before.rate_per_day.best, rel=0.01)
    assert after.leak_probability < 0.01


@pytest.mark.parametrize("filled", [(28.1, REFILL), (30, mm(52))], ids=["logged", "not logged"])
def test_learning_goes_on_after_a_refill(filled):
    one = water(*STEADY).rate_per_day
    known = water(*STEADY, filled, (37, mm(48)), (44, mm(44)), (51, mm(40)))
    two = known.rate_per_day

    assert two.high / two.low < one.high / one.low
    assert two.best == pytest.approx(one.best, rel=0.08)
    assert known.leak_probability < 0.05


def test_a_new_tube_keeps_a_hint_of_the_old_one():
    fast = [(0, REFILL), (7, mm(42)), (14, mm(32)), (21, mm(22))]
    same, fresh = water(*fast, (22, REFILL)), water(*fast, (22, {"action": "new_tube"}))
    moved = reservoir([*log(*fast), *log((22, {"fresh_reservoir": True}), kind="move")], TUBE, ROOM, START_MS)

    assert water().rate_per_day.best < fresh.rate_per_day.best < same.rate_per_day.best
    assert fresh.rate_per_day.high / fresh.rate_per_day.low > same.rate_per_day.high / same.rate_per_day.low
    assert moved.rate_per_day == fresh.rate_per_day
    assert (fresh.level_share, moved.level_share) == (1.0, 1.0)


def test_a_reading_on_the_day_of_the_refill_says_how_full_it_was_made():
    known = water((0, REFILL), (0.1, mm(40)), (7, mm(36)), (14, mm(32)))

    assert known.leak_probability < 0.05
    assert known.rate_per_day.best == pytest.approx(4 / 7 / FULL_MM, rel=0.1)


def test_an_empty_reservoir_that_nobody_watched_says_only_that_it_lasted_no_longer():
    long_dry = water((0, REFILL), (300, eye("empty")))

    assert long_dry.rate_per_day.best > 0.9 / 300
    assert long_dry.leak_probability < 0.1


def test_two_readings_in_the_same_minute_are_a_correction():
    slip = water(*STEADY[:-1], (28, mm(6)), (28 + 0.5 / 1440, mm(36)))

    assert slip.rate_per_day.best == pytest.approx(water(*STEADY).rate_per_day.best, rel=1e-3)
    assert slip.leak_probability < 0.02


def test_readings_out_of_order_are_put_in_order():
    assert reservoir(log(*reversed(STEADY)), TUBE, ROOM, START_MS).rate_per_day == water(*STEADY).rate_per_day


@pytest.mark.parametrize("level", [151, -1, math.nan, math.inf])
def test_a_reading_that_the_tube_cannot_show_is_left_out_and_said_so(level):
    known = water(*STEADY, (30, mm(level)))

    assert known.level_share == pytest.approx(36 / FULL_MM)
    assert "water_left_out" in codes(known)
    assert "water_left_out" not in codes(water(*STEADY, (30, mm(level)), (35, mm(32))))


def test_more_than_the_full_reservoir_but_within_the_tube_is_full():
    assert water((0, mm(60))).level_share == 1.0


def test_a_slip_of_the_pen_does_not_outweigh_the_other_readings():
    slip = water(*STEADY, (35, mm(2)), (42, mm(28)))

    assert slip.rate_per_day.low < 16 / 28 / FULL_MM < slip.rate_per_day.high
    assert slip.rate_per_day.best == pytest.approx(16 / 28 / FULL_MM, rel=0.2)
    assert slip.leak_probability < 0.5


def test_mm_in_a_nest_of_unknown_length_are_left_out_and_said_so():
    known = water((0, REFILL), (2, mm(8)), vessel=Vessel("nest_small"))

    assert known.level_share == 1.0
    assert "water_length_unknown" in codes(known)


def test_a_nest_is_due_at_a_quarter_and_not_always_urgent():
    gauge = gauge_of(reservoir(log((0, {"action": "hydrate"})), Vessel("nest_small"), ROOM, START_MS))

    assert gauge.due_level == 0.25
    assert 3 <= 1 / gauge.rate_per_day <= 10  # common practice: every 3 to 10 days
    assert not is_urgent(gauge, START_MS + 3 * DAY_MS)
    assert is_urgent(gauge, START_MS + 6 * DAY_MS)


def test_a_tube_is_due_at_14_days_and_urgent_at_4():
    gauge = gauge_of(
        reservoir(
            log((0, REFILL), (6, mm(44)), (12, mm(36)), (18, mm(28)), (24, mm(20))), TUBE, ROOM, START_MS
        )
    )
    at_ms = gauge.as_of_ms
    days_left = gauge.level / gauge.rate_per_day

    assert gauge.due_level == pytest.approx(14 * gauge.rate_per_day)
    assert not is_urgent(gauge, at_ms + round((days_left - 4.5) * DAY_MS))
    assert is_urgent(gauge, at_ms + round((days_left - 3.9) * DAY_MS))


def test_a_tube_that_never_lasts_14_days_is_not_due_while_more_than_half_full():
    gauge = gauge_of(reservoir([], Vessel("tube_10x70"), Place(day_temp_c=30, humidity_pct=30), START_MS))

    assert 1 / gauge.rate_per_day < 28
    assert gauge.due_level == 0.5


def test_every_reason_has_words():
    table = words()["reason"]
    for vessel in (TUBE, Vessel("nest_small")):
        for entries in ([], LEAKING, [*STEADY, (40, mm(999))]):
            assert set(codes(water(*entries, vessel=vessel))) <= set(table)


values_of_water = st.one_of(
    st.fixed_dictionaries({"action": st.sampled_from(["refill", "new_tube", "hydrate", "read", None])}),
    st.builds(mm, st.floats()),
    st.builds(eye, st.sampled_from(["full", "three_quarters", "half", "quarter", "empty", "?", ""])),
)


maybe = st.one_of(st.none(), st.floats())


@settings(max_examples=150, deadline=None)
@given(
    st.lists(st.tuples(st.floats(-400, 400), values_of_water), max_size=25),
    st.builds(
        Vessel,
        code=st.sampled_from([*vessels(), None, "unheard_of"]),
        bore_mm=maybe,
        length_mm=maybe,
        reservoir_ml=maybe,
        reservoir_length_mm=maybe,
    ),
    st.builds(Place, day_temp_c=maybe, night_temp_c=maybe, humidity_pct=maybe),
)
def test_no_log_vessel_or_place_breaks_the_gauge(entries, vessel, place):
    known = reservoir(log(*entries), vessel, place, START_MS)
    gauge = gauge_of(reservoir(log(*entries), vessel, place, START_MS))

    assert 0 <= known.leak_probability <= 1
    assert 0 < gauge.rate_low <= gauge.rate_per_day <= gauge.rate_high <= 24  # dry within the hour
    assert 0 <= gauge.due_level <= 1
    assert all(math.isfinite(d) for d in (known.days_left.low, known.days_left.best, known.days_left.high))


def test_four_weekly_readings_in_mm_find_the_rate_within_15_percent_in_most_tubes():
    close, covered = rates_found(80, Keeper(every_days=7), readings=4, seed=1)

    assert close >= 0.7
    assert 0.7 <= covered <= 0.95  # an interval of 80 %


def test_eight_readings_by_eye_every_two_weeks_do_too():
    close, _ = rates_found(60, Keeper(every_days=14, by_eye=True), readings=8, seed=2)

    assert close >= 0.7
