"""Coloured sugar water: who drank. Common practice, no source."""

from __future__ import annotations

import pytest
from tests.support.said import say

from broodshelf import languages
from broodshelf.care.plan.make import make_plan
from broodshelf.languages.entries import SOURCE
from broodshelf.model.facts import ColonyState, Event, Lot, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000
DYED = Lot("dyed", "sugar_water", "home_mixed", tint="blue")
OFFERED = {"need": "sugar", "food_code": "sugar_water", "amount": 1, "unit": "drop", "lot_id": "dyed"}


def plan(*log: Event):
    count = Event("n", "count", NOW_MS - 30 * DAY_MS, {"workers": 60, "larvae": "some"})
    return make_plan(
        ColonyState("c", "lasius_flavus", vessel=Vessel("tube_16x150"), lots=(DYED,), events=(count, *log)),
        NOW_MS,
    )


def offered(days_ago: float) -> Event:
    return Event("f", "feeding", NOW_MS - round(days_ago * DAY_MS), OFFERED)


def looked(*where: str) -> Event:
    return Event("k", "check", NOW_MS, {"need": "sugar", "feeding_id": "f", "colour_seen": list(where)})


def told(made) -> list[str]:
    return [n["code"] for n in made.notices if n["code"].startswith("tint")]


def test_after_a_tinted_drop_the_plan_says_when_to_look_and_what_is_not_known():
    made = plan(offered(1))

    assert told(made) == ["tint_offered"]
    assert "tint" in [c["code"] for c in made.cautions]
    assert "No published strength" in languages.say(SOURCE, "caution-tint.more")
    assert "common practice" in say("notice", "tint_offered")


@pytest.mark.parametrize(
    ("where", "code"),
    [(("gasters",), "tint_in_gasters"), (("gasters", "brood"), "tint_in_brood"), ((), "tint_nowhere")],
)
def test_a_keeper_sees_who_drank(where, code):
    assert told(plan(offered(1), looked(*where))) == ["tint_offered", code]


def test_four_days_later_and_without_a_tinted_lot_nothing_is_said():
    assert told(plan(offered(4.1))) == []
    assert told(plan()) == []
    assert "tint" not in [c["code"] for c in plan().cautions]


def test_where_the_colour_shows_teaches_nothing_about_appetite():
    assert told(plan(offered(1), looked("brood"))) == ["tint_offered", "tint_in_brood"]
    gauge = next(g for g in plan(offered(1), looked("brood")).gauges if g.need == "sugar")

    assert not [r for r in gauge.reasons if r["code"].startswith("appetite")]
