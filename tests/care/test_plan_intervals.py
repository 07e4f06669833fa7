"""How often a plan feeds and for which reason. Bands and rules: common practice, no source."""

from __future__ import annotations

import pytest
from tests.care.planned import NOW_MS, count, fed, state, task

from broodshelf.care.feeding.content import content_mg
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import Event, Place, Rule
from broodshelf.model.gauges import DAY_MS, HOUR_MS
from broodshelf.model.kinds import read
from broodshelf.model.kinds.log import Feeding


def test_without_larvae_protein_can_wait_a_week_or_two():
    plan = make_plan(state(events=(count(50, "none"), fed("protein", 0))), NOW_MS)
    gauge = next(g for g in plan.gauges if g.need == "protein")

    assert gauge.capacity == 10.5  # the middle of 7 to 14 days
    assert "no_larvae" in [r["code"] for r in gauge.reasons]


@pytest.mark.parametrize(
    ("workers", "sugar", "protein"),
    [(12, (3, 7), (3, 5)), (60, (3, 5), (2, 4)), (500, (2, 4), (2, 3)), (5_000, (2, 3), (1, 2))],
)
def test_omnivores_stay_within_half_to_twice_the_band_of_their_size(workers, sugar, protein):
    # the bands: common practice, no source
    gauges = {g.need: g.capacity for g in make_plan(state(events=(count(workers),)), NOW_MS).gauges}

    assert sugar[0] / 2 <= gauges["sugar"] <= sugar[1] * 2
    assert protein[0] / 2 <= gauges["protein"] <= protein[1] * 2


def test_the_plan_names_the_ruling_figure():
    plan = make_plan(state(events=(count(60), fed("sugar", 1, food="sugar_water"))), NOW_MS)
    codes = [r["code"] for r in task(plan, "sugar").reasons]

    assert {"crop_lasts", "freshness_rules", "last_fed"} <= set(codes)


def test_what_was_learnt_from_checks_changes_the_next_plan():
    def after(outcome):
        events = [count(60, "some", 40)]
        for i in range(6):
            offer = {
                "need": "protein",
                "food_code": "cricket",
                "size_class": "extra_small",
                "amount": 3,
                "unit": "piece",
            }
            feeding = Event(f"f{i}", "feeding", NOW_MS - (20 - 3 * i) * DAY_MS, offer)
            told = outcome if i else "some" if outcome == "all" else "all"
            check = {"need": "protein", "feeding_id": f"f{i}", "outcome": told, "after_h": 24}
            events += [feeding, Event(f"c{i}", "check", feeding.happened_ms + DAY_MS, check)]
        return make_plan(state(events=tuple(events)), NOW_MS)

    eager, dainty = after("all"), after("some")
    gauge = {g.need: g for g in eager.gauges}["protein"]

    assert gauge.basis == "learnt"
    assert "appetite_learnt" in [r["code"] for r in gauge.reasons]
    held = [content_mg(read(Feeding, task(plan, "protein").suggested["set"]))[0] for plan in (eager, dainty)]
    assert held[0] > 1.4 * held[1]  # three pieces, and two


def test_a_first_serving_is_a_third_and_grows_with_what_was_eaten_up():
    first = task(make_plan(state(events=(count(300, "many"),)), NOW_MS), "protein")

    assert "prey_first_third" in [r["code"] for r in first.reasons]


def test_late_in_the_year_a_temperate_species_kept_warm_gets_little_protein_and_the_true_reason():
    november = NOW_MS + 208 * DAY_MS
    seen = Event("c", "count", november - 40 * DAY_MS, {"workers": 60, "larvae": "some"})
    plan = make_plan(state(place=Place(day_temp_c=25), events=(seen,)), november)
    gauge = {g.need: g for g in plan.gauges}["protein"]
    codes = {r["code"] for r in gauge.reasons}

    assert gauge.capacity >= 7
    assert "quiet_season" in codes
    assert not {"no_larvae", "maintenance_only"} & codes


def test_nanitics_are_planned_with_nanitic_mass():
    grown = make_plan(state(stage="growing", events=(count(40),)), NOW_MS)
    small = make_plan(state(stage="nanitics", events=(count(8),)), NOW_MS)
    size = {r["code"]: r["args"] for r in task(small, "protein").reasons}["prey_size"]

    assert size["worker_mm"] == 3  # the shortest worker of the species
    assert {r["code"]: r["args"] for r in task(grown, "protein").reasons}["prey_size"]["worker_mm"] > 3


def test_the_keepers_own_rhythm_rules():
    plan = make_plan(
        state(rules=(Rule("protein", every_days=2.0),), events=(count(12), fed("protein", 0.5))), NOW_MS
    )
    gauge = next(g for g in plan.gauges if g.need == "protein")

    assert (gauge.capacity, gauge.basis) == (2.0, "keeper")


def test_an_ignored_protein_offer_counts_as_nothing():
    check = Event("k", "check", NOW_MS, {"feeding_id": "f2", "outcome": "ignored"})
    plan = make_plan(
        state(events=(count(12), fed("protein", 6, "f1"), fed("protein", 1, "f2"), check)), NOW_MS
    )

    assert str(task(plan, "protein").key) == "protein:f1"
    assert task(plan, "protein").due_at_ms == NOW_MS - 2 * DAY_MS  # offered 6 days ago, every 4 days


@pytest.mark.parametrize(
    ("outcomes", "counted", "days_ago"), [(("ignored", "all"), "f2", 1), (("all", "ignored"), "f1", 6)]
)
def test_what_a_later_check_says_of_a_feeding_overrules_an_earlier_one(outcomes, counted, days_ago):
    checks = [
        Event(f"k{n}", "check", NOW_MS - (2 - n) * HOUR_MS, {"feeding_id": "f2", "outcome": outcome})
        for n, outcome in enumerate(outcomes)
    ]
    offers = (fed("protein", 6, "f1"), fed("protein", 1, "f2"))
    protein = task(make_plan(state(events=(count(12), *offers, *checks)), NOW_MS), "protein")
    said = {why["code"]: why["args"] for why in protein.reasons}

    assert str(protein.key) == f"protein:{counted}"
    assert said["last_fed"] == {"at_ms": NOW_MS - days_ago * DAY_MS}
    assert ("ignored_did_not_count" in said) == (counted == "f1")
