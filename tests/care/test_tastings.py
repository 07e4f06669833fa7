"""A tasting that runs: what the plan offers next, and what it says the foods are worth."""

from __future__ import annotations

from broodshelf.care.feeding.trial import Suggestion
from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.tastings import why_no_offer
from broodshelf.model.facts import ColonyState, Event, Lot, Rule, Tally, Tasting, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
FOODS = ("cricket", "mealworm", "egg")


def tasting_plan(outcomes: dict[str, list[str]], foods=FOODS, lots=(), **state):
    events = [Event("count", "count", NOW_MS - 200 * DAY_MS, {"workers": 80, "larvae": "some"})]
    at_ms = NOW_MS - 100 * DAY_MS
    for food, each in outcomes.items():
        for outcome in each:
            offer = {"need": "protein", "food_code": food, "amount": 1, "unit": "piece", "tasting_id": "t"}
            events.append(Event(f"f{at_ms}", "feeding", at_ms, offer))
            check = {"need": "protein", "feeding_id": f"f{at_ms}", "outcome": outcome}
            events.append(Event(f"c{at_ms}", "check", at_ms + DAY_MS // 2, check))
            at_ms += 3 * DAY_MS
    made = ColonyState(
        "c", state.pop("species_code", "lasius_niger"), vessel=Vessel("tube_16x150"), events=tuple(events), lots=lots,
        tasting=Tasting("t", foods, "2026-01-01"), **{"stage": "growing", **state},
    )  # fmt: skip
    return make_plan(made, NOW_MS)


def protein(plan):
    return next(task for task in plan.tasks if task.need == "protein")


def test_the_offer_of_a_tasting_is_logged_as_part_of_it():
    task = protein(tasting_plan({}))

    assert task.portion["food_code"] in FOODS
    assert task.suggested["set"]["tasting_id"] == "t"
    assert "tasting_new_food" in {reason["code"] for reason in task.reasons}


def test_what_is_always_taken_comes_out_as_the_best_and_is_offered():
    plan = tasting_plan({"egg": ["ignored"] * 6, "mealworm": ["ignored"] * 6, "cricket": ["all"] * 6})
    rated = {row["food_code"]: row for row in plan.tasting}

    assert plan.tasting[0]["food_code"] == "cricket"
    assert rated["cricket"]["best"] > 0.95
    assert abs(sum(row["best"] for row in plan.tasting) - 1) < 0.01
    assert protein(plan).portion["food_code"] == "cricket"


def test_a_food_that_colonies_like_it_took_is_tried_first_and_says_so():
    likes = {"mealworm": [Tally(40, 40), Tally(38, 40)], "cricket": [Tally(0, 40)], "egg": [Tally(0, 40)]}
    plan = tasting_plan({}, likes=likes)
    rated = {row["food_code"]: row for row in plan.tasting}
    task = protein(plan)
    (said,) = [reason for reason in task.reasons if reason["code"] == "tasting_likes"]

    assert task.portion["food_code"] == "mealworm"
    assert said["args"]["share"] > 85
    assert {food: row["likes"] for food, row in rated.items()} == {"mealworm": 2, "cricket": 1, "egg": 1}
    assert rated["mealworm"]["mean"] > 0.85 > 0.3 > rated["cricket"]["mean"]


def test_a_refused_origin_is_never_offered_in_a_tasting():
    lot = Lot("lot", "mealworm", "home_cockroach")
    plans = [tasting_plan({}, foods=("mealworm",), lots=(lot,), queens=day) for day in range(3)]

    assert all(protein(plan).portion.get("lot_id") is None for plan in plans)
    assert all(protein(plan).portion.get("origin") != "home_cockroach" for plan in plans)


def test_nothing_is_tasted_while_a_colony_settles():
    task = protein(tasting_plan({}, condition="settling"))

    assert "tasting_id" not in task.suggested["set"]


def test_a_tasting_of_seeds_offers_its_own_kinds_of_seed():
    plan = tasting_plan({}, foods=("chia", "canary_seed"), species_code="messor_barbarus")
    task = next(task for task in plan.tasks if task.need == "seeds")

    assert task.portion["food_code"] in ("chia", "canary_seed")
    assert task.suggested["set"]["tasting_id"] == "t"


def waits(**state):
    made = ColonyState(
        "c", "lasius_niger", vessel=Vessel("tube_16x150"),
        **{"stage": "growing", "tasting": Tasting("t", FOODS, "2026-01-01"), **state},
    )  # fmt: skip
    return make_plan(made, NOW_MS).tasting_waits


def test_a_tasting_that_offers_says_nothing_of_waiting_and_without_one_neither():
    assert waits() is None
    assert waits(tasting=None) is None


def test_a_tasting_that_offers_nothing_says_why():
    assert waits(condition="settling") == {"code": "tasting_not_now", "args": {"state": "settling"}}
    assert waits(tasting=Tasting("t", FOODS, "2026-06-01"))["code"] == "tasting_not_started"
    assert waits(tasting=Tasting("t", ("moon dust",), "2026-01-01"))["code"] == "tasting_no_safe_food"
    assert waits(rules=(Rule("protein", paused_until="2026-06-01"),))["code"] == "tasting_need_paused"


def test_whatever_a_tasting_waits_for_is_passed_on_where_it_names_no_food():
    waiting = Suggestion(None, ({"code": "tasting_wait", "args": {"until": "2026-05-06"}},))

    assert why_no_offer(waiting, ()) == waiting.reasons[0]
