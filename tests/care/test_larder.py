"""The larder forecast against days counted by hand."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.support.said import words

from broodshelf.care.plan.larder import Stock, Use, forecast, spoils_first
from broodshelf.model.quantities import Estimate, OutOfRange

TODAY = "2026-05-01"


def crickets(lot_id="lot", amount=10.0, **values) -> Stock:
    return Stock(lot_id, "cricket", "piece", amount, **values)


def use(low=1.0, best=1.0, high=1.0, food="cricket", unit="piece") -> Use:
    return Use(food, unit, Estimate(low, best, high))


def one(lots, *uses, **values):
    (outlook,) = forecast(lots, uses or (use(),), today=TODAY, **values)
    return outlook


def test_ten_crickets_at_one_a_day_run_out_on_the_eleventh_day():
    outlook = one([crickets()])

    assert (outlook.runs_out, outlook.buy_by) == (
        "2026-05-11",
        "2026-05-07",
    )  # eaten 1st to 10th; 4 days' lead


def test_an_uncertain_use_buys_for_the_hungry_case():
    outlook = one([crickets()], use(0.5, 1, 2))

    assert (outlook.runs_out_early, outlook.runs_out, outlook.buy_by) == (
        "2026-05-06",
        "2026-05-11",
        "2026-05-02",
    )


def test_the_lot_that_spoils_first_is_eaten_first():
    outlook = one([crickets("late", 5, use_by="2026-06-01"), crickets("soon", 5, use_by="2026-05-06")])

    assert outlook.spoils == ()
    assert outlook.runs_out == "2026-05-11"


def test_what_cannot_be_eaten_in_time_spoils_and_does_not_count():
    outlook = one([crickets(amount=10, use_by="2026-05-03")])  # three days, three eaten

    assert [(s.lot_id, s.on, s.amount) for s in outlook.spoils] == [("lot", "2026-05-03", 7)]
    assert outlook.runs_out == "2026-05-04"


def test_a_lot_on_hold_does_not_feed_anyone_before_its_day():
    outlook = one([crickets(amount=2), crickets("held", 50, offer_from="2026-05-10")])

    assert outlook.runs_out == "2026-05-03"


def test_nothing_in_the_house_is_bought_today():
    outlook = one([])

    assert (outlook.runs_out, outlook.buy_by, outlook.reasons[0]["code"]) == (TODAY, TODAY, "larder_out")


def test_what_lasts_beyond_the_horizon_needs_no_shopping():
    outlook = one([crickets(amount=1000)])

    assert (outlook.runs_out, outlook.buy_by, outlook.reasons[0]["code"]) == (None, None, "larder_lasts")


def test_an_unknown_amount_stays_unknown():
    outlook = one([crickets(amount=None)])

    assert (outlook.runs_out, outlook.reasons[0]["code"]) == (None, "larder_amount_unknown")


def test_the_list_begins_with_what_must_be_bought_first():
    lots = [crickets(amount=20), Stock("s", "sugar_water", "ml", 6)]
    outlooks = forecast(lots, [use(), use(food="sugar_water", unit="ml")], today=TODAY)

    assert [outlook.food_code for outlook in outlooks] == ["sugar_water", "cricket"]


def test_what_spoils_is_listed_in_the_order_of_its_last_day():
    lots = [crickets("b", 90, use_by="2026-05-20"), Stock("a", "egg", "piece", 9, use_by="2026-05-03")]
    outlooks = forecast(lots, [use(), use(food="egg")], today=TODAY)

    assert [spoiling.lot_id for spoiling in spoils_first(outlooks)] == ["a", "b"]


def test_a_food_that_nobody_uses_is_left_out():
    assert forecast([crickets()], [use(0, 0, 0)], today=TODAY) == ()


def test_pieces_and_millilitres_are_not_mixed():
    with pytest.raises(ValueError, match="make them the same"):
        one([crickets()], use(unit="mg"))


@pytest.mark.parametrize("amount", [-1, math.nan, math.inf])
def test_an_amount_that_cannot_be_is_refused(amount):
    with pytest.raises(OutOfRange):
        crickets(amount=amount)


def test_a_lead_time_that_cannot_be_is_refused():
    with pytest.raises(OutOfRange):
        one([crickets()], lead_days=-1)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.tuples(st.floats(0, 200), st.integers(0, 60), st.integers(0, 60)), max_size=5),
    st.floats(0.01, 20),
)
def test_nothing_appears_or_vanishes(rows, per_day):
    days = [f"2026-{5 + n // 30:02d}-{1 + n % 30:02d}" for n in range(61)]
    lots = [crickets(f"l{i}", amount, offer_from=days[start], use_by=days[end])
            for i, (amount, start, end) in enumerate(rows)]  # fmt: skip
    outlook = one(lots, use(per_day / 2, per_day, per_day * 2))

    assert sum(s.amount for s in outlook.spoils) <= sum(lot.amount for lot in lots) + 0.1
    assert outlook.runs_out_early <= (outlook.runs_out or "9999")
    assert TODAY <= outlook.buy_by <= outlook.runs_out_early
    assert all(reason["code"] in words()["reason"] for reason in outlook.reasons)


def test_a_use_that_grows_empties_the_larder_sooner():
    # 1 a day today, 3 a day in ten days: 1 + 1.2 + 1.4 + 1.6 + 1.8 + 2.0 = 9, so that the seventh day has too little
    growing = Use("cricket", "piece", Estimate.exactly(1), ((10, Estimate.exactly(3)),))

    assert growing.on(5).best == 2
    assert growing.on(100).best == 3
    assert one([crickets()], growing).runs_out == "2026-05-07"
