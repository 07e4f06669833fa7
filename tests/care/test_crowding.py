"""Room, nest moves and mould. Common practice, no source, throughout."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.support.said import words

from broodshelf.care.colony.crowding import Dwelling, Growth, mould_grade, move_advice, room_for, room_gauge
from broodshelf.model.gauges import DAY_MS, due_at_ms, level_at
from broodshelf.model.quantities import Estimate, OutOfRange

NOW_MS = 1_779_278_400_000
ROOM = Estimate(50, 75, 100)


def advice(workers: float = 20, **values):
    return move_advice(Dwelling(workers=Estimate.exactly(workers), room=ROOM, **{"in_tube": True, **values}))


def codes(reasons) -> list[str]:
    return [r["code"] for r in reasons]


def test_a_tube_holds_50_to_100_small_or_20_to_30_large_workers():
    small, large = room_for(75, 4), room_for(75, 10)

    assert (small.low, small.high) == pytest.approx((50, 100))
    assert 20 <= large.best <= 30
    assert large.low <= 20
    assert large.high >= 30


@pytest.mark.parametrize(("room", "mm"), [(math.nan, 4), (0, 4), (75, 0), (75, 60), (75, math.inf)])
def test_impossible_sizes_are_refused(room, mm):
    with pytest.raises(OutOfRange):
        room_for(room, mm)


def test_free_room_shrinks_as_the_colony_grows_and_is_due_at_a_tenth():
    growth = Growth(Estimate(0.01, 0.02, 0.03), 4)
    gauge = room_gauge(Estimate.exactly(45), ROOM, NOW_MS, growth)

    assert level_at(gauge, NOW_MS) == pytest.approx(0.4)
    assert gauge.rate_per_day == pytest.approx(0.02 * 45 / 75)
    assert due_at_ms(gauge) == pytest.approx(NOW_MS + 25 * DAY_MS)  # hand: (0.4 - 0.1) / 0.012
    assert gauge.basis == "learnt"


def test_without_growth_the_room_gauge_stands_still():
    gauge = room_gauge(Estimate.exactly(45), ROOM, NOW_MS)

    assert (gauge.rate_low, gauge.rate_high, gauge.basis) == (0, 0, "common_practice")
    assert due_at_ms(gauge) is None


@given(st.floats(0, 1e6), st.floats(0.8, 1e5), st.floats(-1, 1))
def test_the_room_gauge_is_sound_for_any_colony(workers, room, rate):
    growth = Growth(Estimate(rate - 0.1, rate, rate + 0.1), 3)
    gauge = room_gauge(Estimate.exactly(workers), Estimate(room / 2, room, room * 2), NOW_MS, growth)

    assert 0 <= gauge.level <= 1
    assert 0 <= gauge.rate_low <= gauge.rate_per_day <= gauge.rate_high


def test_nobody_moves_without_a_reason():
    assert not advice().due
    assert not advice(water_low=False).due


@pytest.mark.parametrize(
    ("values", "code"),
    [
        ({"workers": 70}, "room_full"),
        ({"water_low": True}, "move_water_low"),
        ({"seen_dry": True}, "move_dry"),
        ({"mould": "offer"}, "move_mould"),
        ({"open_faults": frozenset({"flood"})}, "move_flood"),
    ],
)
def test_each_reason_makes_a_move_due(values, code):
    made = advice(**values)

    assert made.due
    assert code in codes(made.reasons)


def test_low_water_in_a_nest_is_filled_up_not_moved_away_from():
    assert not advice(in_tube=False, water_low=True).due
    assert not advice(in_tube=False, seen_dry=True).force


def test_only_a_nest_that_was_seen_dry_or_flooded_is_moved_by_force():
    assert "move_no_shaking" in codes(advice(70).checklist)
    assert not advice(70).force
    assert not advice(water_low=True).force
    for made in (advice(water_low=True, seen_dry=True), advice(open_faults=frozenset({"flood"}))):
        assert made.force
        assert "move_force" in codes(made.checklist)
        assert "move_no_shaking" not in codes(made.checklist)


def test_the_checklist_offers_darkens_lights_and_waits_in_this_order():
    assert codes(advice(70).checklist)[:4] == ["move_beside", "move_darken", "move_light", "move_wait"]
    assert codes(advice(70, guild="honeypot").checklist)[-1] == "never_tilt"


@pytest.mark.parametrize(
    ("yellow", "near", "share", "grade"),
    [(True, False, 0.5, "nothing"), (False, False, 0.0, "nothing"), (False, False, 0.1, "watch"),
     (False, False, 1 / 3, "offer"), (False, True, 0.05, "offer")],
)  # fmt: skip
def test_mould_is_graded(yellow, near, share, grade):
    assert mould_grade(yellow_only=yellow, near_brood=near, plug_share=share) == grade


def test_every_code_has_words():
    flooded = frozenset({"flood"})
    made = [advice(70, water_low=True, mould="offer", open_faults=flooded, guild="honeypot")]
    made += [advice(seen_dry=True), advice()]

    assert {c for a in made for c in codes(a.reasons)} <= words()["reason"].keys()
    assert {c for a in made for c in codes(a.checklist)} <= words()["reason"].keys()
    growth = Growth(Estimate(0.01, 0.02, 0.03), 4)
    gauge = room_gauge(Estimate.exactly(45), ROOM, NOW_MS, growth)
    assert set(codes(gauge.reasons)) <= words()["reason"].keys()
