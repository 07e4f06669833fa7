"""The keeper's own rhythm in the plan: days, days of the week, a pause; and what no rhythm can put off."""

from __future__ import annotations

import pytest

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Rule, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # noon of 2026-05-01, UTC
COUNT = Event("n", "count", NOW_MS - 10 * DAY_MS, {"workers": 150, "larvae": "some"})
CHECK = Event("k", "check", NOW_MS - 3 * DAY_MS, {"need": "barrier"})
NEST = {"vessel": Vessel("tube_16x150", has_outworld=True), "events": (COUNT, CHECK)}


def plan(*rules: Rule, **state):
    return make_plan(ColonyState("c", "lasius_niger", **{**NEST, **state}, rules=rules), NOW_MS)


def due_days(made, need):
    return next((t.due_at_ms - NOW_MS) / DAY_MS for t in made.tasks if t.need == need)


def codes(made, need):
    return [r["code"] for g in made.gauges if g.need == need for r in g.reasons]


@pytest.mark.parametrize(("need", "last_days"), [("barrier", 3), ("glance", 3)])
def test_a_regular_look_comes_as_often_as_the_keeper_wants(need, last_days):
    usual, own = plan(), plan(Rule(need, 5.0))

    assert due_days(own, need) == pytest.approx(5.0 - last_days)
    assert due_days(own, need) != due_days(usual, need)
    assert codes(own, need)[0] == "interval_keeper"
    assert "interval_keeper" not in codes(usual, need)


@pytest.mark.parametrize(
    ("entered_on", "barrier", "glance"), [("2026-04-28", 7 - 3.5, 30 - 3.5), ("2026-03-02", -0.5, 30 - 60.5)]
)
def test_a_look_that_nobody_took_yet_is_due_since_the_colony_is_known(entered_on, barrier, glance):
    """But since when its barrier was to be looked at nobody knows: it is due today, and not overdue."""
    made = plan(events=(), stage="growing", entered_on=entered_on)

    assert (due_days(made, "barrier"), due_days(made, "glance")) == (barrier, glance)


def test_the_interval_that_stands_in_the_colony_counts_for_looks_too():
    assert due_days(plan(interval_days={"barrier": 4}), "barrier") == pytest.approx(1.0)


def test_a_rhythm_by_the_clock_says_so_and_names_no_number_of_days():
    made = plan(Rule("sugar", days_after=lambda _: 2.79))

    assert codes(made, "sugar")[0] == "interval_chosen"
    assert "interval_keeper" not in codes(made, "sugar")


@pytest.mark.parametrize("need", ["sugar", "protein", "barrier", "glance"])
def test_a_pause_takes_a_need_out_of_the_plan_until_its_day(need):
    assert need not in [t.need for t in plan(Rule(need, paused_until="2026-05-02")).tasks]
    assert need in [t.need for t in plan(Rule(need, paused_until="2026-05-01")).tasks]


def test_no_pause_and_no_interval_hides_a_dry_reservoir_a_leak_or_heat():
    dry = Event("w", "water", NOW_MS - DAY_MS, {"action": "read", "reading": "empty"})
    leak = Event("f", "fault", NOW_MS - DAY_MS, {"fault": "leak"})
    rules = [Rule(need, 60.0, "2099-01-01") for need in ("water", "glance", "room", "sugar")]
    made = plan(*rules, events=(COUNT, dry, leak), place=Place("room", 35.0))

    urgent = {task.key.what for task in made.tasks if task.urgent}
    assert urgent == {"water", "fault", "too_hot"}
