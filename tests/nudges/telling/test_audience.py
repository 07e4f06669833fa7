"""Who hears of what, as pure rules."""

from __future__ import annotations

import pytest

from broodshelf.nudges.telling.audience import Matter, PassDates, Person, hearers

MIRA, ANTON = Person("mira", "keeper", True), Person("anton", "keeper", True)
JO = Person("jo", "stand_in", True, "pass")
HOUSE = (MIRA, ANTON, JO)
PASS = PassDates("pass", frozenset({"amber"}), "2026-05-01", "2026-05-09")
TODAY = "2026-05-04"


def test_a_due_need_goes_to_the_keeper_who_usually_sees_to_the_colony():
    assert hearers(Matter("birch", usual="anton"), HOUSE, [PASS], TODAY) == ("anton",)
    assert hearers(Matter("birch"), HOUSE, [PASS], TODAY) == ("mira",)


def test_a_due_need_goes_to_the_stand_in_of_the_colony():
    assert hearers(Matter("amber", usual="anton"), HOUSE, [PASS], TODAY) == ("jo",)


@pytest.mark.parametrize(("day", "expected"), [
    ("2026-04-30", "mira"), ("2026-05-01", "jo"), ("2026-05-09", "jo"), ("2026-05-10", "mira"),
])  # fmt: skip
def test_a_pass_counts_from_its_first_to_its_last_day(day, expected):
    assert hearers(Matter("amber"), HOUSE, [PASS], day) == (expected,)


def test_nobody_is_chosen_whose_phones_do_not_listen():
    deaf = Person("anton", "keeper", False)

    assert hearers(Matter("birch", usual="anton"), (deaf, MIRA), [], TODAY) == ("mira",)
    assert hearers(Matter("birch"), (deaf,), [], TODAY) == ()
    assert hearers(Matter("amber"), (MIRA, Person("jo", "stand_in", False, "pass")), [PASS], TODAY) == (
        "mira",
    )


def test_a_stand_in_never_hears_of_another_colony_however_urgent():
    assert hearers(Matter("birch", urgent=True), HOUSE, [PASS], TODAY) == ("mira", "anton")
    assert hearers(Matter("birch", told=frozenset({"mira"})), HOUSE, [PASS], TODAY) == ("anton",)


def test_what_is_urgent_goes_to_everyone_but_its_flagger():
    assert hearers(Matter("amber", urgent=True, flagger="jo"), HOUSE, [PASS], TODAY) == ("mira", "anton")
    assert hearers(Matter("amber", urgent=True, flagger="mira"), (MIRA,), [PASS], TODAY) == ()


def test_the_flagger_hears_of_a_fault_that_is_still_open_the_day_after():
    matter = Matter("amber", urgent=True, follows=True, flagger="mira")

    assert hearers(matter, (MIRA, ANTON), [], TODAY) == ("mira", "anton")


def test_the_second_time_goes_to_those_who_have_not_heard_or_else_again():
    assert hearers(Matter("amber", told=frozenset({"jo"})), HOUSE, [PASS], TODAY) == ("mira", "anton")
    assert hearers(Matter("birch", told=frozenset({"mira"})), (MIRA,), [], TODAY) == ("mira",)


def test_what_was_left_undone_yesterday_goes_to_everyone():
    assert hearers(Matter("amber", follows=True), HOUSE, [PASS], TODAY) == ("mira", "anton", "jo")
