"""Water and room of a colony: what nobody saw is unknown, an offer is no move, force only after a look."""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
FORCE = "move_force"


def log(kind: str, days_ago: float, event_id: str = "", **values) -> Event:
    return Event(event_id or f"{kind}{days_ago}", kind, NOW_MS - round(days_ago * DAY_MS), values)


def read(reading: str, days_ago: float = 0) -> Event:
    return log("water", days_ago, "w", action="read", reading=reading)


def colony(*events: Event, **values) -> ColonyState:
    given = {"stage": "growing", "species_code": "lasius_niger", "vessel": Vessel("tube_16x150")} | values
    count = log("count", 200, workers=20, larvae="some")
    return ColonyState(id="c", events=tuple(sorted((count, *events), key=lambda e: e.happened_ms)), **given)


def plan_of(*events: Event, **values):
    return make_plan(colony(*events, **values), NOW_MS)


def tasks(plan, *prefixes: str) -> list:
    return [t for t in plan.tasks if t.key.what in prefixes]


def codes(task) -> list[str]:
    return [r["code"] for r in task.reasons]


def test_water_that_nobody_read_is_one_look_and_never_force():
    # 200 days on the shelf, twice as long as a full reservoir lasts: by the reckoning it is dry, but nobody looked
    plan = plan_of()
    water = [t for t in plan.tasks if t.need == "water"]

    assert [str(t.key) for t in water] == ["water_look:start"]
    assert not water[0].urgent
    assert water[0].suggested == {"kind": "check", "set": {"need": "water"}}
    assert not any(FORCE in codes(t) for t in plan.tasks)
    assert not tasks(plan, "room")


def test_a_look_at_unread_water_is_asked_for_again_after_two_weeks():
    looked = log("check", 1, "k", need="water")
    (task,) = tasks(plan_of(looked), "water_look")

    assert task.due_at_ms == looked.happened_ms + 14 * DAY_MS


def test_the_first_look_of_a_colony_that_came_today_is_not_overdue():
    state = ColonyState(id="c", species_code="lasius_niger", vessel=Vessel("tube_16x150"))
    (task,) = tasks(make_plan(state, NOW_MS), "water_look")

    assert task.due_at_ms > NOW_MS


@pytest.mark.parametrize("acquired_on", [None, "2024-05-01"])
def test_the_first_look_stays_where_it_was_however_long_nothing_is_logged(acquired_on):
    state = ColonyState(
        id="c", species_code="lasius_niger", vessel=Vessel("tube_16x150"), stage="founding",
        acquired_on=acquired_on, entered_on="2026-05-01",
    )  # fmt: skip
    looks = [tasks(make_plan(state, NOW_MS + later * DAY_MS), "water_look") for later in (0, 60)]

    assert [[task.due_at_ms for task in look] for look in looks] == [[NOW_MS + round(6.5 * DAY_MS)]] * 2


@pytest.mark.parametrize("days_ago", [50, 70])
def test_a_reservoir_that_only_the_reckoning_empties_is_low_and_never_emptied_by_hand(days_ago):
    plan = plan_of(read("half", days_ago))
    (water,) = tasks(plan, "water")

    assert water.due_at_ms <= NOW_MS
    assert FORCE not in codes(water)
    assert "move_no_shaking" in codes(water)
    assert water.suggested["set"] == {"how": "offered"}


def test_force_is_advised_once_a_person_saw_it_dry_or_flooded():
    (dry,) = tasks(plan_of(read("empty")), "water")
    (flooded,) = tasks(plan_of(read("full"), log("fault", 0, fault="flood")), "room")

    assert FORCE in codes(dry)
    assert dry.suggested["set"]["how"] == "forced"
    assert FORCE in codes(flooded)


@pytest.mark.parametrize("last", ["half", "empty"])
def test_what_nobody_spoke_of_for_long_after_it_was_dry_is_unknown_again_and_no_alarm_for_ever(last):
    plan = plan_of(read(last, 150))
    (look,) = [t for t in plan.tasks if t.need == "water"]

    assert (str(look.key), look.urgent) == ("water_look:w", False)
    assert "water_look_again" in codes(look)
    assert not any(t.urgent or FORCE in codes(t) for t in plan.tasks)


def test_low_water_and_a_full_tube_ask_for_one_fresh_tube_and_not_for_two():
    crowd = log("count", 0, "many", workers=90, larvae="many")
    both, room = plan_of(read("quarter"), crowd), plan_of(read("full"), crowd)

    (task,) = [t for t in both.tasks if "move_beside" in codes(t)]
    assert task.need == "water"
    assert {"move_water_low", "room_full"} <= set(codes(task))
    assert [t.need for t in room.tasks if "move_beside" in codes(t)] == ["room"]


def test_what_the_room_task_suggests_is_that_a_nest_was_offered():
    (room,) = tasks(plan_of(read("full"), log("count", 0, "many", workers=90)), "room")

    assert room.suggested == {"kind": "move", "set": {"how": "offered"}}


LOW = read("quarter", 10)


def offered(days_ago: float) -> Event:
    return log("move", days_ago, "m", how="offered")


def test_an_offer_is_looked_at_after_a_week_and_after_four_and_is_then_over():
    def after(*events, offered_ago):
        return [
            (str(t.key), round((t.due_at_ms - NOW_MS) / DAY_MS), codes(t))
            for t in tasks(plan_of(LOW, offered(offered_ago), *events), "move_look", "move_end")
        ]

    ((key, due, why),) = after(offered_ago=3)
    assert (key, due) == ("move_look:m", 4)
    assert {"offer_light", "move_wait"} <= set(why)  # light on the old one, one to four weeks
    ((key, due, why),) = after(log("check", 1, "k", need="room"), offered_ago=8)
    assert (key, due) == ("move_end:m", 20)
    assert "offer_ends" in why
    assert after(log("check", 0, "k", need="room"), offered_ago=28) == []
    assert after(offered_ago=43) == []


def test_while_an_offer_stands_nobody_is_asked_to_offer_another():
    crowd = log("count", 9, "many", workers=90)
    plan = plan_of(LOW, crowd, offered(2))

    assert not any("move_beside" in codes(t) for t in plan.tasks)
    after_four_weeks = plan_of(LOW, crowd, offered(30), log("check", 1, "k", need="room"))
    assert any("move_beside" in codes(t) for t in after_four_weeks.tasks)


def test_a_tube_that_was_seen_dry_under_an_offer_may_be_emptied_by_hand_and_one_that_should_be_dry_is_looked_at():
    (seen,) = tasks(plan_of(read("empty", 1), offered(9)), "water")
    (due,) = tasks(plan_of(read("quarter", 40), offered(20)), "water")

    assert FORCE in codes(seen)
    assert (due.urgent, due.suggested) == (True, None)
    assert "offer_water" in codes(due)
    assert FORCE not in codes(due)


def test_under_an_offer_a_flooded_nest_is_emptied_and_nobody_is_told_to_wait():
    plan = plan_of(read("full", 12), offered(9), log("fault", 0, "f", fault="flood"))
    told = [code for task in plan.tasks for code in codes(task)]

    assert FORCE in told
    assert not {"move_no_shaking", "move_wait"} & set(told)
    assert not tasks(plan, "move_look", "move_end")


def settling(plan) -> bool:
    return "settles" in [n["code"] for n in plan.notices]


def test_settling_begins_when_they_moved_and_not_when_a_nest_was_offered():
    assert not settling(plan_of(offered(1)))
    assert settling(plan_of(offered(10), log("move", 1, how="finished")))


def test_an_offer_with_fresh_water_does_not_fill_the_tube_that_they_live_in():
    offer = log("move", 1, how="offered", fresh_reservoir=True)
    gauge = next(g for g in plan_of(read("quarter", 2), offer).gauges if g.need == "water")

    assert gauge.level == 0.25


def test_a_move_ends_the_leak_of_the_nest_that_they_left():
    leak, moved = log("fault", 3, "leak", fault="leak"), log("move", 1, how="finished", fresh_reservoir=True)

    assert tasks(plan_of(leak), "fault")
    assert not tasks(plan_of(leak, moved), "fault")


def test_a_suspected_leak_is_a_look_and_its_haste_is_no_alarm():
    level = [
        log("water", ago, f"w{ago}", action="read", level_mm=mm) for ago, mm in ((21, 48), (14, 44), (7, 40))
    ]
    leak = log("water", 0.5, "w", action="read", level_mm=22)
    plan = plan_of(*level, leak)

    assert tasks(plan, "leak")
    assert not any(t.urgent for t in plan.tasks)


@pytest.mark.parametrize(
    "events", [(LOW, offered(3)), (LOW, offered(30)), (read("quarter", 40), offered(20)), ()]
)
def test_every_reason_has_words(events):
    for task in plan_of(*events).tasks:
        if task.need in ("water", "room"):
            assert set(codes(task)) <= words()["reason"].keys()


def test_a_colony_that_settles_is_not_asked_whether_it_moved_again():
    came = {"acquired_on": "2026-04-29"}

    assert tasks(plan_of(read("full", 1), offered(8)), "move_look")
    assert not tasks(plan_of(read("full", 1), offered(8), **came), "move_look")
