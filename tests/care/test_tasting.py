"""Acceptance of foods against published posteriors; the trial's rules; the simulation of five foods."""

from __future__ import annotations

import datetime as dt
import random
import statistics

import numpy as np
import pytest
import scipy
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.bench.tasting_offers import by_tasting, compare, in_turn, one_trial
from tests.support.said import say, words

from broodshelf.care.catalogue import origins
from broodshelf.care.feeding.tasting import (
    NOTHING_KNOWN,
    Acceptance,
    Tasted,
    chance_of_being_best,
    drawn,
    likes_of,
    pooled_prior,
    tally_of,
)
from broodshelf.care.feeding.trial import Candidate, Offer, Trial, acceptances, suggest
from broodshelf.model.facts import Tally
from broodshelf.model.quantities import OutOfRange

GOOD = "bought_or_bred"
FIVE = ("cricket", "egg", "fruit_fly", "mealworm", "waxworm")
ALL_FIVE = tuple(Candidate(food, GOOD) for food in FIVE)
parameters = st.floats(0.5, 60)
STEPS = 5_000


def trial(*offers: Offer, candidates=ALL_FIVE, **values) -> Trial:
    return Trial("2026-05-01", candidates, offers, **values)


def next_food(a_trial, today="2026-05-20", states=frozenset({"growing"}), seed=1):
    suggestion = suggest(a_trial, today=today, states=states, rng=random.Random(seed))
    for reason in suggestion.reasons:
        assert "?" not in say("reason", reason["code"], reason["args"])
        assert reason["code"] in words()["reason"]
    return suggestion


def test_the_placenta_praevia_posterior_is_the_published_one():
    # Gelman et al., Bayesian Data Analysis 3rd ed., section 2.4: 437 girls of 980, uniform prior; mean 0.446, sd 0.016,
    # central 95 % interval 0.415 to 0.477; further digits from scipy
    posterior = NOTHING_KNOWN.after(Tally(437, 980))
    interval = posterior.interval(0.95)

    assert (posterior.mean, posterior.sd) == (
        pytest.approx(0.44603, abs=1e-5),
        pytest.approx(0.01585, abs=1e-5),
    )
    assert (interval.low, interval.high) == (
        pytest.approx(0.41507, abs=1e-4),
        pytest.approx(0.47720, abs=1e-4),
    )


def test_the_rat_tumour_posterior_is_the_published_one():
    # same book, section 5.1: 4 of 14 with the prior Beta(1.4, 8.6); the book prints 0.223 and 0.083 (unrounded prior)
    posterior = Acceptance(1.4, 8.6).after(Tally(4, 14))

    assert (posterior.a, posterior.b) == (pytest.approx(5.4), pytest.approx(18.6))
    assert (posterior.mean, posterior.sd) == (
        pytest.approx(0.2250, abs=1e-4),
        pytest.approx(0.0835, abs=1e-4),
    )


@pytest.mark.parametrize(
    ("prior", "low", "high"),
    [(Acceptance(1, 1), 0.39026, 0.89074), (Acceptance(0.5, 0.5), 0.39418, 0.90731)],
)
def test_seven_of_ten_has_the_published_interval(prior, low, high):
    # scipy, uniform and Jeffreys prior
    interval = prior.after(Tally(7, 10)).interval(0.95)

    assert (interval.low, interval.high) == (pytest.approx(low, abs=1e-4), pytest.approx(high, abs=1e-4))


def test_the_chance_of_being_best_is_exact_where_it_is_known():
    # P(X > Y) = 1/6 for X ~ Beta(1, 2), Y ~ Beta(2, 1): the integral of x·2(1-x)·x dx over 0..1
    chances = chance_of_being_best({"x": Acceptance(1, 2), "y": Acceptance(2, 1)})

    assert chances["x"] == pytest.approx(1 / 6, abs=1e-6)


@settings(max_examples=25, deadline=None)
@given(parameters, parameters, parameters, parameters)
def test_the_chance_of_being_best_agrees_with_an_integral_over_scipys_distributions(a, b, c, d):
    chances = chance_of_being_best({"x": Acceptance(a, b), "y": Acceptance(c, d)})
    x, y = scipy.stats.beta(a, b), scipy.stats.beta(c, d)
    # the mean over quantiles of x: what is averaged rises from 0 to 1, so equal steps are off by half a step at most
    expected = y.cdf(x.ppf((np.arange(STEPS) + 0.5) / STEPS)).mean()

    assert chances["x"] == pytest.approx(expected, abs=2e-3)
    assert sum(chances.values()) == pytest.approx(1)


def test_foods_of_equal_record_are_equally_likely_to_be_the_best():
    chances = chance_of_being_best(dict.fromkeys(FIVE, Acceptance(3, 2)))

    assert list(chances.values()) == pytest.approx([0.2] * 5)


def test_without_other_colonies_nothing_is_known():
    assert pooled_prior([]) == pooled_prior([Tally()]) == Acceptance(1, 1)


def test_a_colony_leans_on_its_likes_until_its_own_record_speaks():
    likes = [Tally(9, 10), Tally(8, 10), Tally(10, 10)]
    prior = pooled_prior(likes)

    assert 0.75 < prior.mean < 0.95
    assert NOTHING_KNOWN.after(Tally(0, 2)).mean < prior.after(Tally(0, 2)).mean
    assert prior.after(Tally(0, 40)).mean < 0.25  # forty refusals of its own outweigh its likes


def test_the_same_species_tells_more_than_the_same_guild_and_another_guild_nothing():
    # a quarter for the guild: no source
    others = [
        Tasted("lasius_niger", "omnivore", "egg", Tally(8, 8)),
        Tasted("formica_fusca", "omnivore", "egg", Tally(0, 8)),
        Tasted("harpegnathos", "predator", "egg", Tally(0, 8)),
        Tasted(None, "omnivore", "cricket", Tally(4, 8)),
    ]

    assert likes_of("lasius_niger", "omnivore", others) == {
        "egg": [Tally(8, 8), Tally(0, 2)],
        "cricket": [Tally(1, 2)],
    }
    assert likes_of(None, "predator", others) == {"egg": [Tally(0, 2)]}


def test_unlike_colonies_say_less_than_colonies_that_agree():
    agree, differ = pooled_prior([Tally(10, 20)] * 4), pooled_prior([Tally(0, 20), Tally(20, 20)] * 2)

    assert agree.mean == pytest.approx(differ.mean, abs=0.01)
    assert agree.sd < differ.sd


@pytest.mark.parametrize(
    ("taken", "offered"), [(3, 2), (-1, 2), (1, -1), (float("nan"), 2), (1, float("inf"))]
)
def test_a_tally_that_cannot_be_is_refused(taken, offered):
    with pytest.raises(OutOfRange):
        Tally(taken, offered)


def test_some_taken_counts_half():
    # common practice, no source
    assert tally_of(["all", "some", "ignored"]) == Tally(1.5, 3)


def test_the_same_seed_gives_the_same_suggestion():
    offers = trial(Offer("2026-05-02", "egg", "all"))

    assert next_food(offers, seed=7) == next_food(offers, seed=7)
    assert len({next_food(offers, seed=seed).food_code for seed in range(40)}) > 1


def test_drawing_favours_what_is_taken_and_still_tries_its_rival():
    # P(best) by quadrature is how often a food is drawn, within four standard errors of 2,000 draws
    foods = {"egg": Acceptance(9, 2), "cricket": Acceptance(6, 4), "waxworm": Acceptance(1, 30)}
    rng = random.Random(3)
    drawn_foods = [drawn(foods, rng) for _ in range(2000)]

    for food, chance in chance_of_being_best(foods).items():
        error = 4 * (chance * (1 - chance) / 2000) ** 0.5
        assert drawn_foods.count(food) / 2000 == pytest.approx(chance, abs=error + 1e-3)


@pytest.mark.parametrize("when", [None, "2026-04-30", "2026-06-01"])
def test_nothing_is_suggested_outside_a_trial_that_the_keeper_started(when):
    a_trial = None if when is None else trial(ended_on="2026-05-31")
    suggestion = next_food(a_trial, today=when or "2026-05-20")

    assert (suggestion.food_code, suggestion.reasons[0]["code"]) == (None, "tasting_not_started")


@pytest.mark.parametrize("state", ["founding", "settling", "resting", "queenless_suspected"])
def test_nothing_is_tasted_while_a_refusal_would_mean_nothing(state):
    suggestion = next_food(trial(), states=frozenset({state, "growing"}))

    assert (suggestion.food_code, suggestion.reasons[0]["code"]) == (None, "tasting_not_now")


@settings(deadline=None)
@given(
    st.lists(
        st.tuples(
            st.integers(0, 30), st.sampled_from(FIVE), st.sampled_from(["all", "some", "ignored", None])
        )
    ),
    st.integers(0, 40),
    st.integers(0, 1000),
)
def test_there_are_never_two_new_foods_within_a_week(history, day, seed):
    begin = dt.date(2026, 5, 1)
    offers = [Offer(str(begin + dt.timedelta(d)), food, outcome) for d, food, outcome in history if d <= day]
    suggestion = next_food(trial(*offers), today=str(begin + dt.timedelta(day)), seed=seed)
    tried = {offer.food_code for offer in offers}

    if suggestion.food_code is not None and suggestion.food_code not in tried and tried:
        newest = max(min(o.day for o in offers if o.food_code == food) for food in tried)
        assert begin + dt.timedelta(day) >= dt.date.fromisoformat(newest) + dt.timedelta(days=7)


def test_a_second_new_food_waits_a_week_and_for_the_check_of_the_first():
    fresh = trial(Offer("2026-05-10", "egg", "all"))
    unchecked = trial(Offer("2026-05-10", "egg"))

    assert {next_food(fresh, today="2026-05-16", seed=s).food_code for s in range(30)} == {"egg"}
    assert len({next_food(fresh, today="2026-05-17", seed=s).food_code for s in range(30)}) > 1
    assert {next_food(unchecked, today="2026-06-17", seed=s).food_code for s in range(30)} == {"egg"}


@pytest.mark.parametrize("origin", [*origins(), "never_heard_of"])
def test_an_origin_that_must_not_be_offered_is_never_suggested(origin):
    suspect = Candidate("cricket", origin, got_on="2026-05-20")
    offers = trial(candidates=(suspect, Candidate("egg", GOOD)))
    suggested = {next_food(offers, seed=seed).food_code for seed in range(40)}

    assert ("cricket" in suggested) == (
        origins().get(origin, {"verdict": "refuse"})["verdict"] in ("fine", "wash")
    )


def test_a_trial_without_any_safe_food_says_so():
    suggestion = next_food(trial(candidates=(Candidate("cricket", "home_cockroach"),)))

    assert (suggestion.food_code, suggestion.reasons[0]["code"]) == (None, "tasting_no_safe_food")


def test_known_likes_are_used_in_a_trial():
    rated = acceptances(trial(likes={"egg": [Tally(9, 10)], "cricket": [Tally(1, 10)]}))

    assert rated["egg"].mean > rated["waxworm"].mean > rated["cricket"].mean


def test_the_best_of_five_foods_is_found_with_fewer_offers_than_in_turn():
    # seeds fixed; docs/care-model/food.md has the figures of 200 trials
    found = compare(30)
    offers = {name: statistics.mean(each.offers for each in trials) for name, trials in found.items()}

    assert offers["by tasting, three likes known"] < 0.5 * offers["by tasting"]
    assert offers["by tasting"] < 0.85 * offers["in turn"]
    assert all(sum(each.right for each in trials) >= 27 for trials in found.values())


def test_a_trial_can_be_run_again():
    assert one_trial(by_tasting, 5) == one_trial(by_tasting, 5)
    assert one_trial(in_turn, 5) == one_trial(in_turn, 5)
