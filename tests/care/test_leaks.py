"""When readings make a leak suspected, and how often wrongly: of odd logs and of simulated tubes."""

from __future__ import annotations

import pytest
from tests.care.water_logs import LEAKING, REFILL, START_MS, STEADY, codes, eye, log, mm, water
from tests.support.tubes import ROOM, TUBE, Keeper, false_alarms, leaks_found

from broodshelf.care.water.look_today import look_today_task
from broodshelf.care.water.reservoir import reservoir
from broodshelf.model.facts import Vessel


def test_a_sudden_loss_asks_for_a_look_today_and_is_never_urgent():
    known = water(*LEAKING)
    task = look_today_task(known, log(*LEAKING))

    assert known.leak_probability > 0.75
    assert (str(task.key), task.need, task.urgent, task.due_at_ms) == (
        "leak:e5",
        "water",
        False,
        known.as_of_ms,
    )
    assert task.reasons[0]["args"]["chance"] > 75
    assert look_today_task(water(*STEADY), log(*STEADY)) is None


@pytest.mark.parametrize(
    ("kind", "values"), [("check", {"need": "water"}), ("fault", {"fault": "leak"}), ("water", REFILL)]
)
def test_once_somebody_looked_the_task_is_gone(kind, values):
    looked = [*log(*LEAKING), *log((35.1, values), kind=kind)]

    assert look_today_task(reservoir(looked, TUBE, ROOM, START_MS), looked) is None


BEFORE_THE_LOSS = {
    "weekly mm": (STEADY, 7, [mm(left) for left in range(36, -1, -1)]),
    "overnight": (STEADY, 0.5, [mm(left) for left in range(36, -1, -1)]),
    "the first week of a tube": ([(0, REFILL)], 7, [mm(left) for left in range(52, -1, -1)]),
    "the night after a refill": ([(0, REFILL)], 0.5, [mm(left) for left in range(52, -1, -1)]),
    "by eye": ([(0, REFILL), (7, eye("full"))], 2, [eye(r) for r in ("full", "half", "quarter", "empty")]),
}


@pytest.mark.parametrize("case", BEFORE_THE_LOSS)
def test_the_worse_a_loss_the_surer_the_suspicion_and_the_fewer_the_days_left(case):
    before, days, losses = BEFORE_THE_LOSS[case]
    found = [water(*before, (before[-1][0] + days, loss)) for loss in losses]
    chances = [known.leak_probability for known in found]
    left = [known.days_left.best for known in found]

    assert chances == sorted(chances)
    assert left == sorted(left, reverse=True)
    assert chances[0] < 0.01
    assert chances[-1] > 0.99


@pytest.mark.parametrize("level", [12, 6, 2, 0])
def test_a_loss_beyond_every_factor_that_is_thought_of_is_suspected_at_once(level):
    # 36 mm to 12 and less in half a day: more than a hundred times what four weeks taught
    known = water(*STEADY, (28.5, mm(level)))

    assert known.look_today
    assert known.days_left.best < 1


def test_a_refill_that_is_half_gone_by_the_next_morning_is_a_loss_and_not_how_full_it_was_made():
    assert water((0, REFILL), (0.6, eye("half"))).look_today
    assert water((0, REFILL), (0.6, mm(20))).look_today
    assert not water((0, REFILL), (0.6, eye("three_quarters"))).look_today


def test_readings_longer_than_the_reckoned_reservoir_show_a_loss_where_nobody_entered_the_length():
    # the catalogue's 16 x 150 mm tube is full at 52 mm; this keeper made more
    long = [(0, mm(95)), (7, mm(91)), (14, mm(87)), (21, mm(83))]
    sound, leaking = water(*long), water(*long, (22, mm(60)))

    assert sound.full_mm == 95
    assert sound.level_share == pytest.approx(83 / 95)
    assert not sound.look_today
    assert sound.rate_per_day.best * 95 == pytest.approx(4 / 7, rel=0.25)
    assert leaking.look_today
    entered = Vessel("tube_16x150", reservoir_length_mm=52)
    assert water((0, mm(95)), vessel=entered).full_mm == 52


def test_two_readings_in_mm_tell_a_loss_where_nothing_tells_the_length():
    known = water((0, REFILL), (1.1, mm(40)), (1.6, mm(4)), vessel=Vessel("nest_small"))

    assert known.full_mm == 40
    assert known.look_today
    assert "water_length_guessed" in codes(known)


def test_a_look_that_found_nothing_ends_the_suspicion_and_the_days_left_are_the_usual_again():
    looked = [*log(*LEAKING), *log((35.1, {"need": "water"}), kind="check")]
    calm = reservoir(looked, TUBE, ROOM, START_MS)

    assert calm.leak_probability == 0
    assert "leak_suspected" not in codes(calm)
    assert calm.days_left.best > 2 * water(*LEAKING).days_left.best


def test_a_leak_of_three_times_is_flagged_within_two_weekly_readings():
    _, second, third = leaks_found(150, Keeper(every_days=7), 3, seed=3, at_a_reading=True)

    assert second >= 0.9
    assert third >= 0.95


def test_a_hasty_reader_is_noticed_and_not_taken_for_a_leak():
    alarms, months = false_alarms(50, Keeper(7, noise_mm=2), 182, seed=5)

    assert alarms / months < 0.03  # 11 in 100 tube-months if every reader were thought careful


@pytest.mark.parametrize("keeper", [Keeper(7), Keeper(14, by_eye=True)], ids=["mm", "by eye"])
def test_sound_tubes_raise_fewer_than_one_false_alarm_in_100_months(keeper):
    alarms, months = false_alarms(50, keeper, 182, seed=4)

    assert months > 290
    assert alarms / months < 0.01
