"""A nudge that was put off in the evening rings in the morning, not at night. On both databases."""

from __future__ import annotations

import json

import pytest
from sqlalchemy import select, update
from tests.nudges.support import KEY_ID, Shelf, ms

from broodshelf.model.gauges import HOUR_MS
from broodshelf.nudges.channels.outcome import RetryLater
from broodshelf.nudges.outcomes.marking import mark
from broodshelf.nudges.sending.queue import claim
from broodshelf.nudges.tables import deliveries, nudge_items
from broodshelf.nudges.telling.tell import tell_due
from broodshelf.records.database import reading, writing

EVENING, MORNING = "2026-05-04T21:00", "2026-05-05T07:30"


def tell(shelf: Shelf, at: str) -> Shelf:
    shelf.at(at)
    with writing() as connection:
        assert tell_due(connection, [shelf.id], {KEY_ID}, shelf.now_ms) == {shelf.id: 1}
    return shelf


@pytest.fixture
def told(shelf: Shelf) -> Shelf:
    """A shelf, quiet from 21:30 to 07:30, whose round of 18:30 is told at 21:00: the server was away."""
    shelf.colony(shelf.person("Mira"))
    return tell(shelf, EVENING)


def take(at: str):
    with writing() as connection:
        return claim(connection, "one", "127.0.0.1:9", ms(at), 10)


def test_a_nudge_whose_push_service_was_out_of_order_in_the_evening_rings_when_the_quiet_hours_end(told):
    [message] = take(EVENING)
    with writing() as connection:
        mark(connection, message, "one", RetryLater("status_503", 3600), ms(EVENING))
    night = [take(f"2026-05-0{at}") for at in ("4T22:00", "5T00:30", "5T02:10", "5T06:00", "5T07:29")]
    [again] = take(MORNING)

    assert night == [[]] * 5
    assert [item.colony for item in again.items] == ["Amber"]
    assert again.attempts == 2  # holding back is no try


def test_a_nudge_held_back_at_night_is_looked_at_often_enough_for_a_clock_that_is_set_right(told):
    take("2026-05-04T22:00")
    with reading() as connection:
        wake_ms = connection.scalar(select(deliveries.c.wake_ms))

    assert ms("2026-05-04T22:00") < wake_ms <= ms("2026-05-04T22:00") + HOUR_MS


def test_what_could_kill_wakes_at_night_however_late_it_is(told):
    with writing() as connection:
        item = json.loads(connection.scalar(select(nudge_items.c.item)))
        connection.execute(update(nudge_items).values(item=json.dumps({**item, "what": "freezing"})))
    [message] = take("2026-05-05T02:10")

    assert message.useless_ms == ms(EVENING) + 12 * HOUR_MS


def test_a_push_service_keeps_a_nudge_no_longer_than_until_the_quiet_hours_begin(told):
    [message] = take(EVENING)

    assert message.useless_ms == ms("2026-05-04T21:30")


def test_a_care_hour_in_the_quiet_hours_is_sent_on_time_or_in_the_morning(bare_app, tmp_path):
    shelf = Shelf(bare_app, ms("2026-05-01T12:00"), tmp_path, care_hours=["23:00"])
    shelf.colony(shelf.person("Mira"))
    tell(shelf, "2026-05-04T23:00")
    [message] = take("2026-05-04T23:05")
    with writing() as connection:
        mark(connection, message, "one", RetryLater("status_503", 600), ms("2026-05-04T23:05"))
    shelf.nudger.close()

    assert take("2026-05-04T23:16") == []
    assert len(take(MORNING)) == 1
