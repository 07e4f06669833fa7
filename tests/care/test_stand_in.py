"""What a stand-in is asked for: nothing that is a keeper's, and step by step. Common practice, no source."""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.stand_in import for_stand_in
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import KINDS
from broodshelf.model.needs import FAULTS, NEEDS
from broodshelf.model.tasks import FOR_STAND_IN, Task, TaskKey, reason

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
KEEPERS_WORDS = ("move_", "offer", "count", "tap them", "new tube", "fresh tube")


def at(days_ago: float, kind: str, event_id: str = "", **values) -> Event:
    return Event(event_id or f"{kind}{days_ago}", kind, NOW_MS - round(days_ago * DAY_MS), values)


LOGS = {
    "a dry tube": [at(1, "water", action="read", reading="empty")],
    "a low tube": [at(1, "water", action="read", reading="quarter")],
    "water that nobody read": [],
    "a full nest": [at(1, "water", action="read", reading="full"), at(0.5, "count", "n", workers=400)],
    "a nest that was offered": [at(8, "move", how="offered")],
    "mould near the brood": [at(0, "fault", fault="mould", mould_near_brood=True)],
    **{f"fault {fault}": [at(0, "fault", fault=fault)] for fault in FAULTS},
}


def stand_ins(*events: Event, **values) -> dict[str, dict]:
    """Return what a stand-in sees of a colony's tasks, by key."""
    given = {"stage": "growing", "vessel": Vessel("tube_16x150")} | values
    log = tuple(sorted((at(60, "count", workers=60, larvae="some"), *events), key=lambda e: e.happened_ms))
    tasks = make_plan(ColonyState("c", "lasius_niger", events=log, **given), NOW_MS).tasks
    return {str(t.key): {**t.as_json(), **t.stand_in} for t in tasks if t.stand_in is not None}


@pytest.mark.parametrize("log", LOGS)
def test_a_stand_in_is_asked_for_no_move_no_count_and_nothing_live(log):
    for key, seen in stand_ins(*LOGS[log]).items():
        assert not key.startswith(("room", "move_", "wake_up", "rest_fits", "ask", "mould_look"))
        suggested = seen["suggested"]
        if suggested is not None:
            assert "stand_in" in KINDS[suggested["kind"]].fields["happened_at"].writers
        assert (seen["portion"] or {}).get("form") not in ("live", "stunned")
        said = " ".join(words()["reason"][r["code"]] for r in seen["reasons"] if seen["need"] == "water")
        assert not any(word in said.lower() for word in KEEPERS_WORDS)


@pytest.mark.parametrize("log", ["a dry tube", "a low tube", "water that nobody read"])
def test_the_water_of_a_tube_is_told_step_by_step_and_ends_in_a_look_that_is_logged(log):
    (water,) = [seen for seen in stand_ins(*LOGS[log]).values() if seen["need"] == "water"]

    assert [r["code"] for r in water["reasons"]] == [
        "tube_step_still", "tube_step_find", "tube_step_good", "tube_step_bad",
    ]  # fmt: skip
    assert water["suggested"] == {"kind": "check", "set": {"need": "water"}}


def test_a_nest_is_watered_with_so_many_ml_step_by_step():
    nest = stand_ins(at(9, "water", action="hydrate"), vessel=Vessel("nest_small"))
    (water,) = [seen for seen in nest.values() if seen["need"] == "water"]
    steps = {r["code"]: r["args"] for r in water["reasons"]}

    assert list(steps) == ["nest_step_place", "nest_step_drip_ml", "nest_step_stop", "nest_step_bad"]
    assert steps["nest_step_drip_ml"]["ml"] == water["suggested"]["set"]["amount_ml"]


@pytest.mark.parametrize("form", ["live", "stunned"])
def test_prey_that_is_not_dead_is_given_killed(form):
    portion = {"food_code": "cricket", "amount": 1, "unit": "piece", "form": form}
    log = {"kind": "feeding", "set": {"need": "protein", **portion}}
    task = Task(
        TaskKey("protein", "f"),
        "protein",
        NOW_MS,
        portion=portion,
        suggested=log,
        reasons=(reason(f"prey_{form}"),),
    )
    seen = for_stand_in(task, in_tube=False)

    assert seen["portion"]["form"] == seen["suggested"]["set"]["form"] == "whole_dead"
    assert [r["code"] for r in seen["reasons"]] == [
        "helper_dead", "prey_step_place", "food_step_only", "food_step_close", "food_step_bad",
    ]  # fmt: skip


def test_in_heat_a_stand_in_calls_and_switches_the_heating_off():
    (hot,) = [seen for key, seen in stand_ins(place=Place("room", 35)).items() if key.startswith("too_hot")]

    assert [r["code"] for r in hot["reasons"]] == ["too_hot", "helper_call", "helper_heater", "helper_tell"]


PORTIONS = {
    "drops": ("sugar", {"food_code": "sugar_water", "amount": 2, "unit": "drop", "form": "drop"}),
    "a feeder": ("sugar", {"food_code": "sugar_water", "amount": 1, "unit": "ml", "form": "feeder"}),
    "killed prey": (
        "protein",
        {"food_code": "fruit_fly", "amount": 3, "unit": "piece", "form": "whole_dead"},
    ),
    "cut prey": ("protein", {"food_code": "cricket", "amount": 1, "unit": "piece", "form": "cut"}),
    "a slice": ("protein", {"food_code": "mealworm", "amount": 1, "unit": "slice", "form": "cut"}),
    "seeds": ("seeds", {"food_code": "chia", "amount": 9, "unit": "seed", "form": "whole"}),
    "leaves": ("leaves", {"food_code": "bramble_leaves", "amount": 2, "unit": "leaf", "form": "whole"}),
    "a crumb": ("protein", {"food_code": "egg", "amount": 1, "unit": "piece", "form": "piece"}),
}
FIRST_STEPS = {
    "drops": "drop_step_take",
    "a feeder": "feeder_step_out",
    "killed prey": "prey_step_take",
    "cut prey": "prey_step_take",
    "a slice": "prey_step_take",
    "seeds": "seed_step_take",
    "leaves": "leaf_step_take",
    "a crumb": "piece_step_take",
}


@pytest.mark.parametrize("served", PORTIONS)
def test_each_way_of_giving_food_has_its_steps_and_says_last_when_to_call(served):
    need, portion = PORTIONS[served]
    task = Task(TaskKey(need, "start"), need, NOW_MS, portion=portion, reasons=(reason("keeps_own_rhythm"),))
    told = [each["code"] for each in for_stand_in(task, in_tube=True)["reasons"]]

    assert told[0] == FIRST_STEPS[served]
    assert told[-1] == "food_step_bad"
    assert ("prey_step_cut" in told) is (served in ("cut prey", "a slice"))


@pytest.mark.parametrize("what", sorted(FOR_STAND_IN))
def test_every_task_of_a_stand_in_has_three_to_five_steps(what):
    need = what if what in NEEDS else "glance"
    portion = next((p for n, p in PORTIONS.values() if n == need), None)
    why = reason("reported", fault="leak") if what == "fault" else reason("sensed")
    task = Task(TaskKey(what, "start"), need, NOW_MS, portion=portion, reasons=(why,))
    for in_tube in (True, False):
        steps = [each for each in for_stand_in(task, in_tube=in_tube)["reasons"] if each is not why]

        assert 2 <= len(steps) <= 5
        assert len(steps) >= 3 or steps[0]["code"] == "helper_call", "nothing is done but to call"


@pytest.mark.parametrize("fault", FAULTS)
def test_every_fault_begins_with_a_call_and_ends_with_what_to_say(fault):
    task = Task(TaskKey("fault", "f"), "water", NOW_MS, reasons=(reason("reported", fault=fault),))
    told = [each["code"] for each in for_stand_in(task, in_tube=True)["reasons"]]

    assert told[0] == "helper_call"
    assert told[-1] == "helper_tell"


def test_every_step_has_words():
    seen = [each for log in LOGS.values() for each in stand_ins(*log).values()]

    assert {r["code"] for each in seen for r in each["reasons"]} <= words()["reason"].keys()
