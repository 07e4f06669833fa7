"""What checks teach about a colony's appetite, proved on invented colonies of known appetite."""

from __future__ import annotations

import itertools
import math
import random

import pytest
import scipy  # a part of it is loaded when it is first asked for
from hypothesis import given
from hypothesis import strategies as st
from tests.care.appetite_simulation import APPETITES, learnt_after, share_within
from tests.support.said import say

from broodshelf.care.colony.arrival import Settling, settlings
from broodshelf.care.feeding.belief import DAY_SD, PRIOR_SD
from broodshelf.care.feeding.learning import MOST_SHARE, Learnt, learnt
from broodshelf.model.facts import Event
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.quantities import OutOfRange


def checked(
    *outcomes: str, after_h: float = 24, every_days: float = 3, foods: tuple[str, ...] = ("cricket",)
):
    """Return a log of feedings, each checked once with its outcome."""
    log: list[Event] = []
    for n, outcome in enumerate(outcomes):
        at_ms = round(n * every_days * DAY_MS)
        food = foods[n % len(foods)]
        log.append(Event(f"f{n}", "feeding", at_ms, {"need": "protein", "food_code": food}))
        values = {"feeding_id": f"f{n}", "need": "protein", "outcome": outcome, "after_h": after_h}
        log.append(Event(f"c{n}", "check", at_ms + DAY_MS, values))
    return log


def learn(log: list[Event], days_later: float = 0, share: float | None = None) -> Learnt:
    now_ms = (log[-1].happened_ms if log else 0) + round(days_later * DAY_MS)
    return learnt(log, "protein", now_ms, lambda feeding: share)


@pytest.mark.parametrize("appetite", APPETITES)
def test_most_colonies_are_known_within_a_fifth_after_eight_checks(appetite):
    """Seeded; the share of 150 runs. The full table stands in docs/care-model/energy.md."""
    assert share_within(appetite, runs=150) > 0.6


def test_over_all_appetites_three_colonies_in_four_are_known_within_a_fifth():
    shares = [share_within(appetite, runs=100) for appetite in APPETITES]

    assert sum(shares) / len(shares) > 0.72


def test_before_learning_none_of_the_unusual_colonies_is_within_a_fifth():
    """What the simulation would show if nothing were learnt: the prior says 1."""
    assert learn([]).multiplier.best == 1
    assert share_within(2.0, checks=1, runs=50) == 0


def test_more_checks_make_it_surer():
    dice = random.Random(7)
    spreads = []
    for checks in (1, 4, 12):
        runs = [learnt_after(1.0, dice, checks).multiplier for _ in range(20)]
        spreads.append(sum(math.log(m.high / m.low) for m in runs))

    assert spreads == sorted(spreads, reverse=True)


def test_the_posterior_is_that_of_bayes_rule():
    """One offer of the usual size, gone at the end: the density is the normal prior times a normal integral.

    Its 10 % and 90 % points by numerical integration with scipy; 2 % of checks tell nothing.
    """

    def density(x):
        return scipy.stats.norm.pdf(x, 0, PRIOR_SD) * (0.01 + 0.98 * scipy.stats.norm.cdf(x / DAY_SD))

    total = scipy.integrate.quad(density, -2, 2)[0]
    known = learn(checked("all", after_h=500), share=1.0).multiplier
    low, high = math.log(known.low), math.log(known.high)

    assert scipy.integrate.quad(density, -2, low)[0] / total == pytest.approx(0.1, abs=0.01)
    assert scipy.integrate.quad(density, -2, high)[0] / total == pytest.approx(0.9, abs=0.01)


def test_all_taken_raises_some_taken_lowers():
    assert learn(checked("all")).multiplier.best > 1.1
    assert learn(checked("some")).multiplier.best < 0.95


def test_the_sooner_all_is_gone_the_more_it_says():
    by_hours = [
        learn(checked("all", after_h=hours), share=0.5).multiplier.best for hours in (1, 6, 12, 24, 48)
    ]

    assert by_hours == sorted(by_hours, reverse=True)
    assert by_hours[0] > 1.1 * by_hours[-1]


def test_some_left_after_an_hour_says_next_to_nothing():
    assert learn(checked("some", after_h=1)).multiplier.best == pytest.approx(1, abs=0.05)


def test_one_check_never_moves_it_by_more_than_half():
    """At most 1.5 times per check (common practice, no source)."""
    log = checked(*["all"] * 6, after_h=1)
    steps = [learn(log[: 2 * n]).multiplier.best for n in range(7)]

    for before, after in itertools.pairwise(steps):
        assert after / before <= 1.5 + 1e-9
    assert steps[1] == pytest.approx(1.5)


def test_without_checks_it_drifts_back_in_about_four_weeks():
    """Common practice, no source."""
    log = checked(*["all"] * 6)
    drift = [learn(log, days).multiplier.best for days in (0, 7, 14, 21, 28, 200)]

    assert drift[0] == drift[1] > drift[2] > drift[3] > drift[4] == drift[5]
    assert drift[5] == pytest.approx(1)
    assert learn(log, 28).multiplier.high == pytest.approx(learn([]).multiplier.high)


def test_a_refusal_is_first_the_foods():
    refused = learn(checked("some", "some", "ignored"))

    assert refused.multiplier == learn(checked("some", "some"), 3).multiplier
    assert refused.checks == 2
    assert refused.reasons[-1]["code"] == "refusal_food"


def test_the_same_food_refused_for_weeks_stays_the_foods_fault():
    assert learn(checked(*["ignored"] * 6)).checks == 0


def test_three_foods_refused_on_end_are_a_low_appetite():
    refused = learn(checked(*["ignored"] * 4, foods=("cricket", "fruit_fly", "egg")))

    assert refused.multiplier.best < 0.9
    assert refused.checks == 2


@pytest.mark.parametrize(
    "state",
    [
        Event("m", "move", 0, {"how": "finished"}),
        Event("n", "count", 0, {"larvae": "none", "pupae": "many"}),
    ],
    ids=["settling after a move", "all brood pupae"],
)
def test_a_refusal_is_the_states_before_it_is_anything_else(state):
    log = [state, *checked(*["ignored"] * 4, every_days=1.5, foods=("cricket", "fruit_fly"))]
    refused = learnt(log, "protein", log[-1].happened_ms, excused=settlings(log, utc_offset_min=0))

    assert refused.checks == 0
    assert refused.reasons == ({"code": "refusal_state", "args": {}},)


def test_a_refusal_before_the_rest_is_excused_and_one_before_that_is_not():
    log = checked(*["ignored"] * 4, foods=("cricket", "fruit_fly"))
    now_ms = log[-1].happened_ms

    assert learnt(log, "protein", now_ms, excused=[Settling(0, now_ms + 1)]).checks == 0
    assert learnt(log, "protein", now_ms, excused=[Settling(now_ms, now_ms + 1)]).checks == 1
    assert learnt(log, "protein", now_ms).checks == 2


def test_only_checks_of_the_need_teach_and_a_check_may_leave_its_need_open():
    log = checked("all", "all")
    bare = [
        Event(e.id, e.kind, e.happened_ms, {k: v for k, v in e.values.items() if k != "need"})
        if e.kind == "check"
        else e
        for e in log
    ]

    assert learnt(log, "sugar", 5 * DAY_MS).checks == 0
    assert learn(bare) == learn(log)
    assert learnt(bare, "sugar", 5 * DAY_MS).checks == 0


def test_what_happens_later_teaches_nothing_yet():
    log = checked("all", "all", "some")

    assert learnt(log, "protein", log[3].happened_ms) == learn(log[:4])


def test_what_was_learnt_is_said_in_words():
    told = learn(checked("all", "some")).reasons[0]

    assert say("reason", told["code"], told["args"]) == (
        f"Learnt from 2 checks: this colony eats about {told['args']['times']} times the usual."
    )


@pytest.mark.parametrize(("outcome", "bound"), [("all", "at_least"), ("some", "at_most")])
def test_checks_that_all_point_one_way_give_a_bound_and_no_figure(outcome, bound):
    known = learn(checked(*[outcome] * 8), share=1.0)

    assert known.bound == bound
    assert [r["code"] for r in known.reasons] == [f"appetite_{bound}"]


@pytest.mark.parametrize(("outcome", "share"), [("some", 6.0), ("all", 0.1)])
def test_a_check_that_could_hardly_come_out_another_way_teaches_nothing(outcome, share):
    known = learn(checked(*[outcome] * 8, after_h=48), share=share)

    assert (known.multiplier.best, known.checks, known.bound) == (1, 0, None)
    assert [r["code"] for r in known.reasons] == ["appetite_hidden"]


@pytest.mark.parametrize("bad", [-1.0, math.nan, math.inf])
def test_an_offer_or_a_delay_that_cannot_be_is_refused(bad):
    with pytest.raises(OutOfRange):
        learn(checked("all"), share=bad)
    with pytest.raises(OutOfRange):
        learn(checked("all", after_h=bad))


@given(
    st.lists(
        st.tuples(st.sampled_from(["all", "some", "ignored"]), st.floats(0, 2_000), st.floats(0, 100)),
        max_size=40,
    ),
    st.floats(0, 60),
)
def test_whatever_the_checks_say_the_appetite_stays_finite_and_in_order(checks, days_later):
    log = []
    for n, (outcome, after_h, _) in enumerate(checks):
        log.append(Event(f"f{n}", "feeding", n * DAY_MS, {"need": "protein", "food_code": f"food{n % 3}"}))
        values = {"feeding_id": f"f{n}", "outcome": outcome, "after_h": after_h}
        log.append(Event(f"c{n}", "check", n * DAY_MS, values))
    shares = {f"f{n}": share for n, (_, _, share) in enumerate(checks)}
    now_ms = len(checks) * DAY_MS + round(days_later * DAY_MS)
    known = learnt(log, "protein", now_ms, lambda feeding: shares[feeding.id])

    assert 0.1 < known.multiplier.low <= known.multiplier.best <= known.multiplier.high < 10
    assert known.checks <= 12


def test_a_worm_before_one_tiny_ant_teaches_as_much_as_the_most_there_is():
    log = checked("all")

    assert learn(log, share=1e9) == learn(log, share=MOST_SHARE)
