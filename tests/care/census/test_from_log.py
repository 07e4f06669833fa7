"""What the census takes from a log as the app writes it."""

from __future__ import annotations

import datetime as dt

import pytest

from broodshelf.care.catalogue import species
from broodshelf.care.colony.census.from_log import facts_of
from broodshelf.care.colony.dossier import dossier_of
from broodshelf.care.colony.season import season_of
from broodshelf.care.plan.growing import census_shown
from broodshelf.care.plan.known import Known, know
from broodshelf.model.facts import ColonyState, Event
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_779_278_400_000  # 2026-05-20T12:00:00Z
TODAY = dt.date(2026, 5, 20)


def insects_told(*outcomes: str, fed: str = "protein", **said) -> list[str | None]:
    """Return what the census hears of offers, a few days apart, of which each was checked a day later."""
    events = []
    for number, outcome in enumerate(outcomes):
        at_ms = NOW_MS - (3 * number + 2) * DAY_MS
        events.append(Event(f"f{number}", "feeding", at_ms, {"need": fed}))
        check = {"feeding_id": f"f{number}", "outcome": outcome, **said}
        events.append(Event(f"k{number}", "check", at_ms + DAY_MS, check))
    state = ColonyState(
        "c", "lasius_niger", stage="growing", events=tuple(sorted(events, key=lambda e: e.happened_ms))
    )
    colony = dossier_of(state, species()["lasius_niger"])
    facts = facts_of(colony, season_of(state, colony.species, colony.climate, TODAY), TODAY)
    return [seen.word for seen in facts.seen if seen.what == "protein"]


@pytest.mark.parametrize(
    "said", [{}, {"need": "protein"}, {"need": "leftovers", "leftovers_removed": True}], ids=str
)
def test_insects_that_were_taken_or_refused_are_heard_of_whatever_need_their_check_names(said):
    # an offer every third day: weeks of two or three each
    assert set(insects_told(*["ignored"] * 6, **said)) == {"refused"}
    assert set(insects_told(*["all", "some"] * 3, **said)) == {"taken"}


def test_what_became_of_sugar_says_nothing_of_the_larvae():
    assert insects_told(*["ignored"] * 6, fed="sugar") == []


def test_one_more_check_of_a_week_that_says_the_same_reckons_nothing_anew_and_is_the_one_that_is_named():
    def known_after(checks: int) -> Known:
        events = [Event("n", "count", NOW_MS - 20 * DAY_MS, {"workers": 300, "larvae": "none"})]
        for number in range(checks):
            at_ms = NOW_MS - (12 - number) * DAY_MS  # all in one week, which began the day before the first
            events.append(Event(f"f{number}", "feeding", at_ms, {"need": "protein"}))
            check = {"feeding_id": f"f{number}", "need": "protein", "outcome": "ignored"}
            events.append(Event(f"k{number}", "check", at_ms + DAY_MS // 4, check))
        return know(ColonyState("c", "myrmica_rubra", stage="growing", events=tuple(events)), NOW_MS)

    three, four = known_after(3), known_after(4)

    assert three.living is four.living
    for known, latest in ((three, "k2"), (four, "k3")):
        assert {"census_fewer": latest} in [
            {r["code"]: r["args"]["event_id"]} for r in census_shown(known)["why"]
        ]
