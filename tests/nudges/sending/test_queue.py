"""Messages on their way: leases, retries, pauses, refusals. On both databases."""

from __future__ import annotations

import pytest
from sqlalchemy import select, update
from tests.nudges.support import KEY_ID, Shelf, ms

from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.channels.outcome import TOO_LARGE, Gone, Refused, RetryLater, Sent
from broodshelf.nudges.outcomes.marking import mark
from broodshelf.nudges.sending.queue import LEASE_MS, MOST_ATTEMPTS, claim, release, waiting_hosts
from broodshelf.nudges.tables import deliveries, nudger_state, nudges, subscriptions, vendor_pauses
from broodshelf.nudges.telling.tell import tell_due
from broodshelf.people.tables import devices
from broodshelf.records.database import reading, writing

ROUND_MS = ms("2026-05-04T18:30")
HOST = "127.0.0.1:9"


@pytest.fixture
def waiting(shelf: Shelf) -> Shelf:
    """A shelf with one message that waits to be sent."""
    shelf.colony(shelf.person("Mira"))
    shelf.now_ms = ROUND_MS
    with writing() as connection:
        tell_due(connection, [shelf.id], {KEY_ID}, ROUND_MS)
    return shelf


def take(owner: str, now_ms: int, most: int = 10):
    with writing() as connection:
        return claim(connection, owner, HOST, now_ms, most)


def say(message, owner: str, outcome, now_ms: int) -> bool:
    with writing() as connection:
        return mark(connection, message, owner, outcome, now_ms)


def row(table=deliveries):
    with reading() as connection:
        return connection.execute(select(table)).one()


def test_a_message_is_claimed_by_one_only(waiting):
    [message] = take("one", ROUND_MS)

    assert [item.need for item in message.items] == ["protein"]
    assert take("two", ROUND_MS) == []
    assert take("two", ROUND_MS + LEASE_MS - 1) == []


def test_a_claim_that_ran_out_is_taken_over_and_the_first_owners_mark_changes_nothing(waiting):
    [mine] = take("one", ROUND_MS)
    [theirs] = take("two", ROUND_MS + LEASE_MS)

    assert mine.id == theirs.id
    assert say(mine, "one", Sent(), ROUND_MS + LEASE_MS) is False
    assert row().state == "waiting"
    assert say(theirs, "two", Sent(), ROUND_MS + LEASE_MS) is True
    assert (row().state, row(subscriptions).delivered_ms) == ("sent", ROUND_MS + LEASE_MS)
    assert take("one", ROUND_MS + DAY_MS) == []


def test_a_claim_given_back_can_be_taken_at_once_and_does_not_count_as_a_try(waiting):
    batch = take("one", ROUND_MS)
    with writing() as connection:
        release(connection, batch, "one", ROUND_MS)

    assert take("two", ROUND_MS)[0].attempts == 1


def test_failures_wait_longer_and_longer_until_the_message_is_useless(waiting):
    now_ms, waits = ROUND_MS, []
    while row().state == "waiting":
        for message in take("one", now_ms):  # none in the quiet hours
            say(message, "one", RetryLater("status_500"), now_ms)
            waits.append(row().wake_ms - now_ms)
        now_ms = row().wake_ms

    assert waits[:5] == [30_000, 120_000, 480_000, 1_800_000, 1_800_000]
    assert row().state == "dropped"
    assert len(waits) <= MOST_ATTEMPTS


def test_a_message_that_nobody_ever_brings_to_an_end_is_given_up(waiting):
    now_ms = ROUND_MS
    for _ in range(MOST_ATTEMPTS):
        assert take("crashes", now_ms)
        now_ms += LEASE_MS

    assert take("crashes", now_ms) == []
    assert (row().state, row().outcome) == ("dropped", "gave_up")


def test_a_push_service_that_asks_for_a_pause_gets_it_for_all_its_phones(waiting):
    other = waiting.person("Anton")
    with writing() as connection:
        subscription = connection.scalar(
            select(subscriptions.c.id).where(subscriptions.c.device_id == other.device_id)
        )
        first = connection.execute(select(deliveries)).one()
        connection.execute(
            deliveries.insert().values(
                **{**first._asdict(), "id": "another", "nudge_id": None, "subscription_id": subscription}
            )
        )
    batch = take("one", ROUND_MS, most=1)
    say(batch[0], "one", RetryLater("status_429", 90, vendor=True), ROUND_MS)

    assert take("two", ROUND_MS + 89_999) == []
    with reading() as connection:
        assert waiting_hosts(connection, ROUND_MS + 89_999) == {}
        assert waiting_hosts(connection, ROUND_MS + 90_000) == {HOST: 2}
    assert len(take("two", ROUND_MS + 90_000)) == 2


def test_a_pause_set_under_a_clock_that_ran_ahead_does_not_hold(waiting):
    with writing() as connection:
        connection.execute(vendor_pauses.insert().values(host=HOST, until_ms=ms("2200-01-01T00:00")))
        connection.execute(update(deliveries).values(wake_ms=ms("2200-01-01T00:00")))

    assert len(take("one", ROUND_MS)) == 1


def test_a_phone_that_has_left_is_forgotten_with_its_messages(waiting):
    [message] = take("one", ROUND_MS)
    say(message, "one", Gone(), ROUND_MS)
    with reading() as connection:
        assert connection.execute(select(subscriptions)).all() == []
        assert connection.execute(select(deliveries)).all() == []
        assert len(connection.execute(select(nudges)).all()) == 1


def test_a_message_that_was_too_large_is_sent_once_more_in_short(waiting):
    [message] = take("one", ROUND_MS)
    say(message, "one", TOO_LARGE, ROUND_MS)
    [again] = take("one", ROUND_MS)
    say(again, "one", TOO_LARGE, ROUND_MS)

    assert (message.short, again.short) == (False, True)
    assert (row().state, row().outcome) == ("refused", "too_large")
    assert row(subscriptions).failures == 0


def refuse(shelf: Shelf, times: int, now_ms: int) -> None:
    for _ in range(times):
        with writing() as connection:
            connection.execute(
                update(deliveries).values(
                    state="waiting", wake_ms=now_ms, attempts=0, useless_ms=now_ms + DAY_MS
                )
            )
        [message] = take("one", now_ms)
        say(message, "one", Refused("status_403", suspect=True), now_ms)


def test_a_refused_phone_is_kept_and_counted(waiting):
    refuse(waiting, 3, ROUND_MS)

    assert (row(subscriptions).failures, row(subscriptions).suspect_since_ms) == (3, ROUND_MS)
    assert row(subscriptions).outcome == "status_403"


@pytest.mark.parametrize("others_work", [True, False])
def test_a_phone_refused_for_a_week_is_deleted_only_if_others_at_that_service_are_served(
    waiting, others_work
):
    other = waiting.person("Anton")
    refuse(waiting, 9, ROUND_MS)
    if others_work:
        with writing() as connection:
            connection.execute(
                update(subscriptions)
                .where(subscriptions.c.device_id == other.device_id)
                .values(delivered_ms=ROUND_MS + DAY_MS)
            )
    refuse(waiting, 1, ROUND_MS + 7 * DAY_MS)
    with reading() as connection:
        left = connection.execute(select(subscriptions)).all()

    assert len(left) == (1 if others_work else 2)


def test_a_success_clears_what_was_held_against_a_phone(waiting):
    refuse(waiting, 3, ROUND_MS)
    with writing() as connection:
        connection.execute(update(deliveries).values(state="waiting", wake_ms=ROUND_MS))
    [message] = take("one", ROUND_MS)
    say(message, "one", Sent(), ROUND_MS)

    assert (row(subscriptions).failures, row(subscriptions).suspect_since_ms) == (0, None)


def test_nothing_is_sent_to_a_phone_that_was_revoked_in_the_meantime(waiting):
    with writing() as connection:
        connection.execute(update(devices).values(revoked_ms=ROUND_MS))

    assert take("one", ROUND_MS) == []
    assert row().outcome == "phone_revoked"


def test_old_nudges_are_forgotten_after_ninety_days(waiting):
    waiting.tick()
    waiting.now_ms = ROUND_MS + 91 * DAY_MS
    waiting.tick()
    with reading() as connection:
        made = connection.scalars(select(nudges.c.made_ms)).all()
        tidied = connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tidy"))

    assert ROUND_MS not in made
    assert tidied == waiting.now_ms
