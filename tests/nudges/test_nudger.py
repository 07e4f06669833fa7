"""The nudger as a whole: several at once, killed, next to a hanging push service, with a household that fails."""

from __future__ import annotations

import os
import signal
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path

import pytest
from sqlalchemy import select, update
from tests.nudges.push_service import PushService
from tests.nudges.support import Shelf, ms, real_channels
from tests.support.forked_server import forker

from broodshelf.nudges import nudger as nudger_module
from broodshelf.nudges.channels.push.vapid import load_or_make
from broodshelf.nudges.health.nudger import nudger_health
from broodshelf.nudges.nudger import Nudger
from broodshelf.nudges.sending import lanes
from broodshelf.nudges.sending.queue import LEASE_MS
from broodshelf.nudges.tables import deliveries, nudges
from broodshelf.records.database import reading, writing
from broodshelf.records.trouble import trouble
from broodshelf.rounds.tables import occurrences, plan_times


def wait_for(what: Callable[[], bool], seconds: float = 20) -> None:
    deadline = time.monotonic() + seconds
    pause = threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(0.01)


@pytest.fixture
def service() -> Iterator[PushService]:
    with PushService() as made:
        yield made


@pytest.fixture
def real_nudger(shelf: Shelf, tmp_path: Path) -> Iterator[Callable[[], Nudger]]:
    """Make nudgers that really send, all with the same key."""
    made: list[Nudger] = []

    def make() -> Nudger:
        made.append(shelf.new_nudger(real_channels(tmp_path)))
        return made[-1]

    yield make
    for nudger in made:
        nudger.close()


def everyone_is_told_of_a_leak(shelf: Shelf, endpoints: list[str]) -> None:
    """One household, a keeper for every endpoint, and a leak that all of them have to hear of."""
    flagger = shelf.person("Mira", listens=False)
    for number, endpoint in enumerate(endpoints):
        shelf.listen(shelf.person(f"keeper {number}", listens=False), endpoint)
    colony_id = shelf.colony(flagger)
    shelf.log(flagger, "fault", {"colony_id": colony_id, "fault": "leak"})


def states() -> Counter[str]:
    with reading() as connection:
        return Counter(connection.scalars(select(deliveries.c.state)).all())


@pytest.mark.long
def test_nudgers_killed_in_the_middle_lose_nothing_and_repeat_only_what_was_in_their_hands(
    shelf: Shelf, service: PushService, real_nudger, tmp_path: Path
):
    count = 60
    everyone_is_told_of_a_leak(shelf, [service.url(f"/slow/{n}") for n in range(count)])
    load_or_make(tmp_path, in_use=False)
    url = shelf.app.config["SQLALCHEMY_DATABASE_URI"]
    told = [url, str(tmp_path), str(shelf.now_ms)]
    log = tmp_path / "nudgers.log"
    processes = [forker().fork("tests.nudges.nudger_process", told, os.environ, log) for _ in range(2)]
    try:
        # both have messages in their hands, or one found the household in the other's and ended
        wait_for(lambda: len(service.taken) > 1 or any(p.poll() is not None for p in processes), 60)
        processes[0].send_signal(signal.SIGKILL)
        service.release.set()
        assert processes[1].wait(60) == 0
    finally:
        for process in processes:
            process.kill()
            process.wait(10)
    nudger = real_nudger()
    for later_ms in (0, LEASE_MS + 30_000):  # what the dead one held is free after its lease
        nudger.tick(shelf.now_ms + later_ms)
        nudger.finish()
    requests = Counter(taken.path for taken in service.taken)

    assert len(requests) == count
    assert states() == {"sent": count}
    assert sum(requests.values()) - count <= 1
    with reading() as connection:
        assert len(connection.execute(select(nudges)).all()) == count


def test_a_hanging_push_service_does_not_delay_another(shelf: Shelf, service: PushService, real_nudger):
    with PushService() as other:
        hanging = [service.url(f"/slow/{n}") for n in range(12)]
        everyone_is_told_of_a_leak(shelf, hanging + [other.url(f"/ok/{n}") for n in range(3)])
        nudger = real_nudger()
        nudger.tick(shelf.now_ms)
        wait_for(lambda: states()["sent"] == 3)

        assert {taken.path for taken in other.taken} == {"/ok/0", "/ok/1", "/ok/2"}
        assert states()["waiting"] == 12
        service.release.set()
        nudger.finish()
        assert states()["sent"] == 15


def test_a_phone_that_has_left_does_not_stop_the_rest_of_its_batch(
    shelf: Shelf, service: PushService, real_nudger, tmp_path: Path
):
    everyone_is_told_of_a_leak(shelf, [service.url(p) for p in ("/ok/1", "/status/410", "/ok/2", "/ok/3")])
    nudger = real_nudger()
    nudger.tick(shelf.now_ms)
    nudger.finish()

    assert states() == {"sent": 3}


def test_a_push_service_that_asks_for_a_pause_is_left_alone_and_served_afterwards(
    shelf: Shelf, service: PushService, real_nudger, tmp_path: Path
):
    everyone_is_told_of_a_leak(shelf, [service.url(f"/retry/90/{n}") for n in range(30)])
    nudger = real_nudger()
    for later_ms in (0, 5000, 60_000):
        nudger.tick(shelf.now_ms + later_ms)
        nudger.finish()

    assert len(service.taken) == 1
    assert states() == {"waiting": 30}


def test_one_phone_that_is_told_to_wait_does_not_hold_up_the_others_of_its_service(
    shelf: Shelf, service: PushService, real_nudger
):
    """Some services limit single phones (429): the others' turn comes first after the pause."""
    everyone_is_told_of_a_leak(shelf, [service.url(p) for p in ("/retry/60/0", "/ok/1", "/ok/2", "/ok/3")])
    nudger = real_nudger()
    for later_ms in (0, 120_000):  # the pause counts from the answer, which is late on a busy machine
        nudger.tick(shelf.now_ms + later_ms)
        nudger.finish()

    assert states() == {"sent": 3, "waiting": 1}


def test_two_nudgers_in_one_process_tell_everyone_once(shelf: Shelf, service: PushService, real_nudger):
    everyone_is_told_of_a_leak(shelf, [service.url(f"/ok/{n}") for n in range(25)])
    nudgers = [real_nudger() for _ in range(2)]
    threads = [threading.Thread(target=nudger.tick, args=(shelf.now_ms,)) for nudger in nudgers]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    for nudger in nudgers:
        nudger.finish()

    assert Counter(taken.path for taken in service.taken) == {f"/ok/{n}": 1 for n in range(25)}


def test_a_household_that_fails_rests_for_an_hour_and_the_others_are_told(
    bare_app, monkeypatch, caplog, tmp_path
):
    good, bad = (Shelf(bare_app, ms("2026-05-01T12:00"), tmp_path) for _ in range(2))
    for shelf in (good, bad):
        shelf.colony(shelf.person(shelf.id))
    real, tries = nudger_module.tell_due, []

    def fragile(connection, household_ids, key_ids, now_ms):
        if bad.id in household_ids:
            tries.append(now_ms)
            raise ZeroDivisionError
        return real(connection, household_ids, key_ids, now_ms)

    monkeypatch.setattr(nudger_module, "tell_due", fragile)
    told = good.at("2026-05-04T18:30").tick()
    good.at("2026-05-04T18:35").tick()
    monkeypatch.setattr(nudger_module, "tell_due", real)
    later = good.at("2026-05-04T19:30").tick()
    good.nudger.close()

    assert told == ["Protein for Amber"]
    assert len(tries) == 2  # with the others, then alone; not again at 18:35
    assert later == ["Protein for Amber"]
    assert "nudges failed" in caplog.text


@pytest.mark.parametrize(("held_up", "times"), [("tell_due", 2), ("stale", 1)])
def test_a_database_that_was_held_for_a_moment_delays_nudges_by_no_more_than_half_a_minute(
    shelf: Shelf, monkeypatch, held_up, times
):
    """What is due is asked for twice: with other households, then alone."""
    shelf.colony(shelf.person("Mira"))
    shelf.at("2026-05-04T18:29").tick()
    with writing() as connection:  # a plan that is to be made anew when the round comes
        connection.execute(update(plan_times).values(valid_until_ms=ms("2026-05-04T18:30")))
    real, tries = getattr(nudger_module, held_up), count(1)

    def at_first_held(*asked):
        if next(tries) <= times:
            raise trouble("locked")
        return real(*asked)

    monkeypatch.setattr(nudger_module, held_up, at_first_held)
    told = [shelf.at(at).tick() for at in ("2026-05-04T18:30", "2026-05-04T18:30:30")]

    assert told == [[], ["Protein for Amber"]]


def test_a_plan_that_fails_is_tried_once_an_hour(shelf: Shelf, monkeypatch, caplog):
    shelf.colony(shelf.person("Mira"))
    tries = []

    def broken(state, now_ms):
        tries.append(now_ms)
        raise ZeroDivisionError

    monkeypatch.setattr("broodshelf.rounds.recompute.make_plan", broken)
    for at in ("2026-05-03T12:00", "2026-05-03T12:05", "2026-05-03T12:59", "2026-05-03T13:00"):
        shelf.at(at).tick()

    assert tries == [ms("2026-05-03T12:00"), ms("2026-05-03T13:00")]
    assert "plan failed" in caplog.text


def test_health_wants_a_recent_tick_and_nothing_left_lying(shelf: Shelf):
    shelf.colony(shelf.person("Mira"))

    def well(at: str) -> bool:
        with reading() as connection:
            return bool(nudger_health(connection, ms(at))["ok"])

    assert not well("2026-05-01T12:00")
    shelf.at("2026-05-01T12:00").tick()
    assert well("2026-05-01T12:00:30")
    assert not well("2026-05-01T12:00:31")
    assert well("2026-05-01T11:59:45")  # two machines may differ
    assert not well("2026-05-01T11:00")  # the clock was set back, and nobody has ticked since
    with reading() as connection:
        left = nudger_health(connection, ms("2026-05-04T18:31:01"))
    assert left["waiting_ms"] == 61_000  # the round of 18:30 and nobody ticks


def test_the_embedded_nudger_ticks_by_itself_and_stops(shelf: Shelf):
    shelf.colony(shelf.person("Mira"))
    shelf.at("2026-05-04T18:30")
    before = set(threading.enumerate())
    stop = shelf.nudger.start()
    try:
        wait_for(lambda: len(shelf.notebook.sent) == 1)
    finally:
        stop()
    with reading() as connection:
        told = connection.scalars(select(occurrences.c.state).where(occurrences.c.state == "sent")).all()

    assert told == ["sent"]
    assert set(threading.enumerate()) <= before


def test_a_slow_push_service_gets_more_lanes(
    shelf: Shelf, service: PushService, real_nudger, monkeypatch: pytest.MonkeyPatch
):
    """200 ms an answer, 120 messages: one lane would take 24 s; the lanes that are open at once are counted."""
    monkeypatch.setattr(lanes, "BATCH", 10)
    everyone_is_told_of_a_leak(shelf, [service.url(f"/after/200/{n}") for n in range(120)])
    nudger = real_nudger()
    nudger.tick(shelf.now_ms)
    nudger.finish()

    assert service.most_at_once >= 8
    assert states() == {"sent": 120}


def test_a_quick_push_service_is_served_by_one_lane(shelf: Shelf, real_nudger, monkeypatch):
    monkeypatch.setattr(lanes, "QUICK_MS", 60_000.0)  # whatever a busy machine makes of it
    with PushService() as service:
        everyone_is_told_of_a_leak(shelf, [service.url(f"/after/1/{n}") for n in range(60)])
        nudger = real_nudger()
        nudger.tick(shelf.now_ms)
        nudger.finish()
        assert service.most_at_once == 1
        assert states() == {"sent": 60}
