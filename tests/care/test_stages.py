"""Founding, settling, seasons and doubts. Rules: common practice, no source, unless a test names one."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from tests.support.said import words

from broodshelf.care.catalogue import species
from broodshelf.care.colony.dossier import dossier_of
from broodshelf.care.colony.founding import workers_from_eggs
from broodshelf.care.colony.history import local_day, read_history
from broodshelf.care.colony.stages import ALL_FOOD, switches
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.quantities import OutOfRange

TODAY = "2026-05-20"
NOW_MS = 1_779_278_400_000  # 2026-05-20T12:00:00Z
LASIUS = species()["lasius_niger"]


def count(ago_days: float, **values) -> Event:
    return Event(f"count{ago_days}", "count", NOW_MS - round(ago_days * DAY_MS), values)


def switched(*events: Event, kind=LASIUS, workers: float | None = 30.0, today: str = TODAY, **values):
    state = ColonyState("c", kind.code, events=events, **values)
    return switches(dossier_of(state, kind), workers, today)


def codes(made) -> list[str]:
    return [notice["code"] for notice in made.notices]


def test_a_claustral_queen_is_left_in_peace_for_a_week_after_each_look():
    made = switched(count(2, workers=0), workers=0, stage="founding")

    assert made.off >= ALL_FOOD | {"room", "glance"}
    assert ("quiet_for", {"days": 5}) in [(n["code"], n["args"]) for n in made.notices]
    assert "quiet_look" in codes(switched(count(8, workers=0), workers=0, stage="founding"))


def test_feeding_a_claustral_queen_is_shown_as_a_choice():
    assert "fed_queens_choice" in codes(switched(workers=0, stage="founding"))
    assert "Your choice" in words()["notice"]["fed_queens_choice"]


@pytest.mark.parametrize(
    ("ago_days", "fed", "code"),
    [(0, False, "first_food_soon"), (1, False, "first_food_soon"), (2, True, "first_food_now"),
     (7, True, "first_food_now"), (8, True, None)],
)  # fmt: skip
def test_the_first_food_comes_two_to_seven_days_after_the_first_workers(ago_days, fed, code):
    made = switched(count(ago_days + 3, workers=0), count(ago_days, workers=4), workers=4)

    assert ("sugar" not in made.off) is fed
    assert [c for c in codes(made) if c.startswith("first_food")] == ([code] if code else [])


@pytest.mark.parametrize(
    "said",
    [
        {"workers": 5},
        {"workers_low": 4, "workers_high": 6},
        {"workers_at_least": 5},
        {"workers_coarse": "few"},
    ],
    ids=lambda said: next(iter(said)),
)
def test_the_first_workers_are_there_however_they_were_counted(said):
    """A picture of a part of the nest says only how many are there at least."""
    empty, seen = count(41, workers=0), count(0, **said)
    state = ColonyState("c", "lasius_niger", stage="founding", events=(empty, seen))
    plan = make_plan(state, NOW_MS)

    assert "first_food_soon" in [notice["code"] for notice in plan.notices]
    assert not {"sugar", "protein"} & {task.need for task in plan.tasks}


def test_a_colony_that_was_bought_with_workers_is_fed_at_once():
    made = switched(count(0, workers=12), workers=12)

    assert made.first_food is None
    assert "sugar" not in made.off


def test_semi_claustral_and_parasitic_queens_are_fed_and_the_host_is_asked_for():
    myrmica = species()["myrmica_rubra"]

    assert codes(switched(kind=myrmica, workers=0)) == ["semi_claustral"]
    parasite = switched(workers=0, founding_mode="parasitic")
    assert codes(parasite) == ["parasitic", "note_host"]
    assert "sugar" not in parasite.off
    assert "host species" in words()["notice"]["note_host"]
    noted = switched(workers=0, founding_mode="parasitic", host_species_code="lasius_niger")
    assert codes(noted) == ["parasitic"]


@pytest.mark.parametrize(
    ("stage", "workers", "nanitics"),
    [("nanitics", 40.0, True), ("founding", 8.0, True), ("founding", 40.0, False), ("growing", 8.0, False)],
)
def test_the_first_workers_are_nanitics(stage, workers, nanitics):
    assert switched(workers=workers, stage=stage).nanitics is nanitics


def test_of_a_hundred_eggs_about_55_become_workers():
    # Ito 1988, Camponotus kiusiuensis: total loss 44.9 ± 7.5 %; its four stages multiply to 44.6 %
    made = workers_from_eggs(100)

    assert 100 - made.best == pytest.approx(44.6, abs=0.05)
    assert 100 - made.best == pytest.approx(44.9, abs=1)
    assert made.high - made.best == pytest.approx(7.5)
    for eggs in (-1, math.nan, math.inf):
        with pytest.raises(OutOfRange):
            workers_from_eggs(eggs)


def test_refusals_mean_nothing_for_a_week_after_a_move_or_a_journey():
    def moved(ago_days: float):
        return switched(Event("m", "move", NOW_MS - round(ago_days * DAY_MS), {"how": "finished"}))

    made = moved(1)
    assert made.excused[0].holds(NOW_MS)
    assert made.notices[0] == {"code": "settles", "args": {"low": 2, "high": 6}}
    assert not moved(7).excused[0].holds(NOW_MS)
    assert "settles" not in codes(moved(7))
    assert switched(acquired_on="2026-05-18").excused[0].holds(NOW_MS)
    assert (made.slower, moved(7).slower) == (1.5, 1)


def test_a_new_colony_stays_apart_and_a_quarantine_counts_down_from_two_to_four_weeks():
    apart = switched(acquired_on="2026-05-10")
    assert {"code": "keep_apart", "args": {"low": 4, "high": 18}} in apart.notices

    def left(acquired_on):
        return switched(acquired_on=acquired_on, condition="quarantine").notices

    assert left("2026-05-01")[-1] == {"code": "quarantine_left", "args": {"low": 0, "high": 9}}
    assert left("2026-04-01")[-1]["code"] == "quarantine_over"
    later = switched(acquired_on="2026-01-01", condition="quarantine", condition_since="2026-05-10").notices
    assert later[-1] == {"code": "quarantine_left", "args": {"low": 4, "high": 18}}


def test_below_twelve_degrees_protein_is_off_and_says_why():
    made = switched(place=Place(day_temp_c=11.5))

    assert "protein" in made.off
    assert "sugar" not in made.off
    why = next(n for n in made.notices if n["code"] == "too_cold_for_protein")
    assert why["args"] == {"day_c": 11.5, "limit_c": 12.0}
    assert "protein" not in switched(place=Place(day_temp_c=12.0)).off


def clocked(code: str = "lasius_niger", **changes):
    return replace(species()[code], yearly_clock=True, **changes)


@pytest.mark.parametrize(
    ("today", "sign", "slow"),
    [("2026-08-14", 1, False), ("2026-08-15", 1, True), ("2027-02-26", 1, True), ("2027-02-27", 1, False),
     ("2026-02-15", -1, True), ("2026-08-30", -1, False), ("2026-10-01", -1, False)],
)  # fmt: skip
def test_a_species_with_a_yearly_clock_slows_down_from_late_summer_though_kept_warm(today, sign, slow):
    made = switched(kind=clocked(), today=today, latitude_sign=sign, place=Place(day_temp_c=25))

    assert made.protein_maintenance is slow
    assert ("yearly_clock" in codes(made)) is slow


def test_a_species_without_a_yearly_clock_goes_on():
    steady = replace(LASIUS, yearly_clock=False)
    assert not switched(kind=steady, today="2026-10-01", place=Place(day_temp_c=25)).protein_maintenance


def eggless(days: int, **values):
    """Counts without eggs, one a week up to today, in spring."""
    return [count(ago, workers=30, eggs="none", **values) for ago in range(days, -1, -7)]


def test_no_eggs_for_six_active_weeks_make_the_queen_doubtful_and_eight_stop_forecasts():
    assert "queen_doubt" not in codes(switched(*eggless(35)))
    six = switched(*eggless(42))
    assert six.notices[-1] == {"code": "queen_doubt", "args": {"weeks": 6}}
    assert not six.forecasts_off
    assert switched(*eggless(56)).forecasts_off
    assert "never dig" in words()["notice"]["queen_doubt"]


def test_where_the_census_expects_next_to_no_eggs_looks_without_any_do_not_accuse_the_queen():
    # a tiny colony that is kept at 14 °C, where black garden ants lay next to nothing: all of a few eggs are overlooked
    cool = Place(day_temp_c=14, night_temp_c=13)
    few = [count(ago, workers=2, eggs="none") for ago in (45, 3)]

    assert "queen_doubt" not in codes(switched(*few, place=cool))
    assert "queen_doubt" in codes(switched(*few, place=Place(day_temp_c=24, night_temp_c=22)))


def test_one_egg_or_a_count_that_did_not_look_does_not_accuse_the_queen():
    laid = [*eggless(56), count(0, workers=30, eggs="few")]
    assert "queen_doubt" not in codes(switched(*laid))
    assert "queen_doubt" not in codes(switched(count(56, workers=30), count(0, workers=30)))
    assert "queen_doubt" not in codes(switched(count(0, eggs="none")))


def test_weeks_of_winter_rest_do_not_accuse_the_queen():
    winter_ms = NOW_MS - 110 * DAY_MS  # 30 January
    events = [
        Event(f"w{i}", "count", winter_ms - i * 7 * DAY_MS, {"eggs": "none"}) for i in range(10, -1, -1)
    ]
    state = ColonyState("c", LASIUS.code, events=tuple(events))

    assert "queen_doubt" not in codes(switches(dossier_of(state, LASIUS), 30, str(local_day(winter_ms, 0))))


def test_males_only_stop_forecasts_at_once():
    made = switched(count(1, workers=30, eggs="few", males_only=True))

    assert codes(made) == ["males_only"]
    assert made.forecasts_off


def test_larvae_of_a_cocoon_spinner_want_substrate():
    spinner = species()["myrmecia_pilosula"]

    assert "cocoon_substrate" in codes(switched(count(1, larvae="few"), kind=spinner))
    assert "cocoon_substrate" not in codes(switched(count(1, larvae="none"), kind=spinner))
    assert "cocoon_substrate" not in codes(switched(count(1, larvae="few")))


def test_honeypot_nests_are_never_tilted_even_in_rest():
    honeypot = species()["myrmecocystus"]

    assert switched(kind=honeypot).cautions[0]["code"] == "never_tilt"
    assert switched(kind=honeypot, condition="resting").cautions[0]["code"] == "never_tilt"
    assert switched().cautions == ()


def test_a_resting_colony_counts_down_to_its_wake_up():
    made = switched(condition="resting", condition_until="2026-06-01")

    assert codes(made) == ["resting", "wakes_in"]
    assert made.notices[1]["args"] == {"days": 12}
    assert "sugar" in made.off


def test_the_log_is_read_in_one_pass():
    events = (count(8, workers=0), Event("f", "feeding", NOW_MS, {"need": "sugar"}), count(1, workers=4))

    assert read_history(iter(events)) == read_history(events)
    assert len(read_history(iter(events)).counts) == 2


def test_every_notice_and_caution_has_words():
    every = [
        switched(count(2, workers=0), workers=0, stage="founding"),
        switched(count(3, workers=0), count(1, workers=4), workers=4, acquired_on="2026-05-19"),
        switched(condition="quarantine", acquired_on="2026-05-01", place=Place(day_temp_c=5)),
        switched(condition="quarantine", acquired_on="2026-01-01"),
        switched(kind=clocked(guild="honeypot"), today="2026-09-01", place=Place(day_temp_c=25)),
        switched(*eggless(60)),
        switched(condition="queenless_suspected"),
        switched(condition="settling"),
        switched(condition="resting", condition_until="2026-06-01"),
        switched(workers=0, founding_mode="parasitic"),
        switched(workers=0, founding_mode="semi_claustral"),
        switched(count(1, larvae="few", males_only=True), kind=species()["myrmecia_pilosula"]),
    ]
    used = {code for made in every for code in codes(made)}

    assert len(used) >= 18
    assert used <= words()["notice"].keys()
    assert {c["code"] for made in every for c in made.cautions} <= words()["caution"].keys()
