"""What somebody who keeps ants would sign of every plan, over any colony, season and log.

The bounds are the trade's (common practice, no source), checked from outside: by what a plan says and serves.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from tests.care.any_colony import colonies, day_of
from tests.support.said import say, say_portion, words

from broodshelf.care.catalogue import vessels
from broodshelf.care.colony.history import midnight_ms
from broodshelf.care.plan.make import Plan, make_plan
from broodshelf.model.facts import ColonyState, Event
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.tasks import Task

pytestmark = pytest.mark.long

FOOD = ("sugar", "protein", "seeds", "leaves")
ANY_COLONY = settings(max_examples=400, deadline=None, suppress_health_check=[HealthCheck.too_slow])


def food_tasks(plan: Plan) -> list[Task]:
    return [task for task in plan.tasks if task.need in FOOD]


def codes(found) -> set[str]:
    return {each["code"] for each in found}


def said(plan: Plan) -> list[tuple[str, str]]:
    """Every sentence of a plan with where it stands."""
    found = [(f"notice {n['code']}", say_found(n, "notice")) for n in plan.notices]
    found += [(f"caution {c['code']}", say_found(c, "caution")) for c in plan.cautions]
    for task in plan.tasks:
        found += [(f"{task.key} reason {r['code']}", say_found(r, "reason")) for r in task.reasons]
        found += [(f"{task.key} caution {c['code']}", say_found(c, "caution")) for c in task.cautions]
        if task.portion is not None:
            found.append((f"{task.key} portion", say_portion(task.portion)))
    return found


def say_found(each, section: str) -> str:
    """A code's words, from its own section or the one of reasons, where faults and notices may stand, too.

    How long ago something was is reckoned where it is shown, as the phone does.
    """
    for place in (section, "reason", "notice", "caution", "fault"):
        if each["code"] in words().get(place, {}):
            ago = {"days": 3} if "at_ms" in each["args"] else {}
            return say(place, each["code"], {**ago, **each["args"]})
    raise AssertionError(f"{each['code']} has no words")


def every_sentence_is_whole_and_every_number_is_one(plan: Plan, _state: ColonyState, _now_ms: int) -> None:
    json.dumps(plan.as_json(), allow_nan=False)
    for where, sentence in said(plan):
        assert not re.search(r"[?]\s*(days|%|°C|mg|workers)|nan|None|\{|\}|\[", sentence), (where, sentence)
        assert not re.search(r"(?<![\d.])-\d+(\.\d+)? (days?|weeks?|workers?|mg)", sentence), (
            where,
            sentence,
        )


def no_need_has_two_tasks_and_no_key_stands_twice(plan: Plan, _state: ColonyState, _now_ms: int) -> None:
    assert not [key for key, n in Counter(task.key for task in plan.tasks).items() if n > 1]
    assert not [need for need, n in Counter(task.need for task in food_tasks(plan)).items() if n > 1]


def who_is_left_in_peace_is_not_fed(plan: Plan, _state: ColonyState, _now_ms: int) -> None:
    peaceful = {"claustral", "claustral_fungus", "resting", "resting_summer", "settling"}

    told = codes(plan.notices) & peaceful
    if told - {"settling"}:
        assert not food_tasks(plan), (told, food_tasks(plan))
    if "settling" in told:
        assert not [task for task in plan.tasks if task.need == "room" and not task.urgent]


def nothing_alive_is_offered_in_a_tube(plan: Plan, state: ColonyState, _now_ms: int) -> None:
    vessel = vessels().get(state.vessel.code or "")
    moving = {"live", "stunned"} if vessel is None or vessel.tube else {"live"}

    assert not [task for task in food_tasks(plan) if (task.portion or {}).get("form") in moving]


def nothing_is_overdue_since_before_the_colony_was_known(plan: Plan, state: ColonyState, now_ms: int) -> None:
    began = [logged.happened_ms for logged in state.events[:1]]
    entered = [] if state.entered_on is None else [midnight_ms(state.entered_on, state.utc_offset_min)]
    since_ms = min([now_ms - DAY_MS, *began, *entered])

    for task in food_tasks(plan):
        assert task.due_at_ms >= since_ms, (task.key, day_of(task.due_at_ms), day_of(since_ms))


@ANY_COLONY
@given(colonies())
def test_whoever_keeps_ants_would_sign_any_plan(drawn):
    """One plan a colony is held against all that can be said of a plan alone."""
    state, now_ms = drawn
    plan = make_plan(state, now_ms)

    for holds in (
        every_sentence_is_whole_and_every_number_is_one,
        no_need_has_two_tasks_and_no_key_stands_twice,
        who_is_left_in_peace_is_not_fed,
        nothing_alive_is_offered_in_a_tube,
        nothing_is_overdue_since_before_the_colony_was_known,
    ):
        holds(plan, state, now_ms)


@ANY_COLONY
@given(colonies())
def test_what_a_task_suggests_is_not_asked_for_again_once_it_is_done(drawn):
    state, now_ms = drawn
    plan = make_plan(state, now_ms)

    for task in plan.tasks:
        if task.suggested is None:
            continue
        done = Event("done", task.suggested["kind"], now_ms, task.suggested["set"])
        after = make_plan(replace(state, events=(*state.events, done)), now_ms)
        still = [
            t
            for t in after.tasks
            if (t.key, t.suggested) == (task.key, task.suggested) and t.due_at_ms <= now_ms
        ]
        assert not still, (task.key, still)


@ANY_COLONY
@given(colonies())
def test_a_mended_fault_alarms_no_more(drawn):
    state, now_ms = drawn
    mended = tuple(
        replace(logged, values={**logged.values, "resolved_at": day_of(logged.happened_ms) + "T23:00:00+00:00"})
        if logged.kind == "fault" else logged
        for logged in state.events
    )  # fmt: skip
    plan = make_plan(replace(state, events=mended), now_ms)

    assert not [task for task in plan.tasks if task.key.what == "fault"]


@ANY_COLONY
@given(colonies())
def test_no_alarm_goes_on_for_four_months_without_a_word(drawn):
    """What was logged, and what is reckoned from it, is urgent for a while; only a setting of the keeper's stands."""
    state, now_ms = drawn
    soon, late = (
        {
            task.key
            for task in make_plan(state, now_ms + days * DAY_MS).tasks
            if task.urgent and task.need != "rest"
        }
        for days in (120, 240)
    )
    set_by_the_keeper = {key for key in soon if key.what in ("too_hot", "too_cold")}

    assert not (soon & late) - set_by_the_keeper
