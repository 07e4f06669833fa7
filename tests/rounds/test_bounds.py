"""No search through time goes on for ever, also over what an older server took; plans have a budget."""

from __future__ import annotations

import datetime as dt
import zoneinfo

import pytest
from sqlalchemy import select
from tests.support.households import NOON_MS

from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import Household, Rule
from broodshelf.records.database import writing
from broodshelf.records.ids import plan_id, uuid7
from broodshelf.records.store import Ledger, read_kind
from broodshelf.rounds.own_rules import OwnRule
from broodshelf.rounds.recompute import stale, touched
from broodshelf.rounds.tables import occurrences, plan_times
from broodshelf.rounds.wall_clock import SEARCHED_DAYS, CareClock

CLOCK = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("08:00", "18:30"))


def test_care_hours_come_to_an_end():
    assert (
        len(list(CLOCK.care_hours_from(NOON_MS))) == 2 * SEARCHED_DAYS - 3
    )  # noon: a day and a morning are past


@pytest.mark.parametrize("weekdays", [[None], [7], ["1"], [[1]], [None, 7]])
def test_weekdays_that_are_none_rule_nothing(weekdays):
    rule = OwnRule.of(Rule(colony_id="a", need="sugar", weekdays=weekdays))

    assert rule.weekdays == frozenset()
    assert next(rule.hours_from(CLOCK, NOON_MS)).local_date == dt.date(2026, 5, 1)


def test_a_rule_that_no_day_meets_ends_its_search():
    rule = OwnRule("sugar", weekdays=frozenset({9}), every_days=3)

    assert list(rule.hours_from(CLOCK, NOON_MS)) == []
    assert rule.days_after(NOON_MS, CLOCK) == 3


@pytest.mark.parametrize("day", ["9999-12-31", "2199-01-01"])
def test_a_pause_of_an_older_server_ends_where_days_end(day):
    rule = OwnRule.of(Rule(colony_id="a", need="sugar", paused_until=day))

    assert rule.paused_until == "2100-12-31"
    assert next(rule.hours_from(CLOCK, NOON_MS)).local_date == dt.date(2100, 12, 31)
    assert rule.pause_ends_ms(CLOCK) == 4_133_890_800_000  # date -d '2100-12-31 00:00 +0100' +%s


@pytest.mark.parametrize(
    "values", [{"paused_until": "2026-02-31"}, {"at": "24:61"}, {"at": None, "paused_until": None}]
)
def test_what_no_clock_can_keep_says_nothing(values):
    assert OwnRule.of(Rule(colony_id="a", need="sugar", **values)) == OwnRule("sugar")


def test_a_household_whose_hours_or_zone_are_none_keeps_the_usual_ones():
    odd = Household(
        name="Odd", zone="Mars/Base", care_hours=[None, "25:00"], quiet_from="x", quiet_to="07:00"
    )

    assert CareClock.of(odd) == CareClock(zoneinfo.ZoneInfo("UTC"), ("18:30",), None, "07:00")


@pytest.fixture
def shelf(household_id):
    """A household with as many colonies as asked for, and whatever an older server stored."""

    def made(colonies: int, **odd):
        with writing() as connection:
            ledger = Ledger(connection, household_id)
            ledger.put(household_id, "household", {"name": "Shelf", "zone": "UTC"}, now_ms=NOON_MS)
            ids = [uuid7(NOON_MS) for _ in range(colonies)]
            for colony_id in ids:
                values = {
                    "name": "Amber",
                    "stage": "growing",
                    "acquired_on": "2026-01-01",
                    **odd.get("colony", {}),
                }
                ledger.put(colony_id, "colony", values, now_ms=NOON_MS)
            for rule in odd.get("rules", ()):
                ledger.put(uuid7(NOON_MS), "rule", {"colony_id": ids[0], **rule}, now_ms=NOON_MS)
            ledger.flush()
        return household_id, ids

    return made


def plans(household_id: str) -> dict[str, dict]:
    with writing() as connection:
        return {r.values["colony_id"]: r.values for r in read_kind(connection, household_id, "plan")}


def test_a_stored_rule_of_null_spins_neither_now_nor_after_a_restart(shelf):
    household_id, (colony_id,) = shelf(
        1,
        rules=[
            {"need": "sugar", "weekdays": [None]},
            {"need": "protein", "weekdays": [None], "paused_until": "9999-12-31"},
        ],
    )
    for now_ms in (NOON_MS, NOON_MS + 2 * DAY_MS):
        with writing() as connection:
            ledger = Ledger(connection, household_id)
            touched(ledger, {colony_id}, now_ms)
            ledger.flush()
    with writing() as connection:
        waiting = {row.need: row.local_date for row in connection.execute(select(occurrences))}

    assert {"code": "plan_failed", "args": {}} not in plans(household_id)[colony_id]["notices"]
    assert waiting["sugar"] <= "2026-05-06"


def test_a_day_that_no_calendar_has_stops_no_plan(shelf):
    odd = {"founded_on": "2026-02-31", "acquired_on": "2026-02-30", "condition_until": "9999-99-99"}
    household_id, (colony_id,) = shelf(1, colony={**odd, "condition": "settling"})
    with writing() as connection:
        ledger = Ledger(connection, household_id)
        touched(ledger, {colony_id}, NOON_MS)
        ledger.flush()

    assert {"code": "plan_failed", "args": {}} not in plans(household_id)[colony_id]["notices"]


def test_plans_that_get_no_turn_within_the_budget_are_left_to_the_nudger(shelf, caplog):
    household_id, ids = shelf(3)
    seconds = iter([0.0, 100.0, 100.0])
    with writing() as connection:
        ledger = Ledger(connection, household_id)
        touched(ledger, set(ids), NOON_MS, lambda: next(seconds))
        ledger.flush()
        first = [colony_id for colony_id in ids if ledger.get(plan_id(colony_id)) is not None]
        times = {row.colony_id: row.valid_until_ms for row in connection.execute(select(plan_times))}
        stale(ledger, NOON_MS)
        ledger.flush()

    assert len(first) == 1
    assert [r.values["colonies"] for r in caplog.records if r.message == "plans are left to the nudger"] == [
        2
    ]
    assert sorted(times[colony_id] <= NOON_MS for colony_id in ids) == [False, True, True]
    assert plans(household_id).keys() == set(ids)
