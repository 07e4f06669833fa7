"""What addresses send is counted by each process and told to the others: nobody waits for a neighbour's commit."""

from __future__ import annotations

import json
import threading

import pytest
from sqlalchemy import select
from tests.support.house import House
from tests.support.households import NOON_MS, Requester

from broodshelf.model.gauges import HOUR_MS
from broodshelf.people import quotas
from broodshelf.people.devices import Owner, Phone, sign_in
from broodshelf.people.households import found_household
from broodshelf.people.senders import TELL_MS, Senders, tell_amounts
from broodshelf.people.tables import attempts
from broodshelf.records.database import reading, writing
from broodshelf.web import sync_routes


@pytest.fixture(params=["sqlite", "postgresql"])
def house(request, templates, tmp_path):
    """A served household on either database."""
    with House(tmp_path, templates.of_an_app(request.param, tmp_path)) as made:
        yield made


def colony_on(phone: Requester) -> bytes:
    phone.write("colony", {"name": "Amber"})
    return json.dumps(phone.request()).encode()


def telling(now_ms: int):
    def tell(amounts):
        with writing() as connection:
            return tell_amounts(connection, amounts, now_ms)

    return tell


@pytest.mark.parametrize("house", ["postgresql"], indirect=True)
def test_a_household_does_not_wait_until_a_neighbour_behind_its_address_has_committed(house, monkeypatch):
    with writing() as connection:
        household_id, person_id = found_household(connection, "Ada", "Other", "UTC", NOON_MS)
        neighbour = Requester(household_id, person_id=person_id)
        session = sign_in(
            connection, Phone(neighbour.device_id, "b"), Owner(household_id, person_id), NOON_MS
        )
    house.tokens[neighbour.device_id] = session.token
    slow = house.phone()
    inside, go_on = threading.Event(), threading.Event()
    really = sync_routes.exchange

    def exchange(connection, actor, *more):
        done = really(connection, actor, *more)
        if actor.device_id == slow.device_id:  # all is written, nothing committed
            inside.set()
            assert go_on.wait(60)
        return done

    monkeypatch.setattr(sync_routes, "exchange", exchange)
    answers = []
    first = threading.Thread(target=lambda: answers.append(house.send(slow.device_id, colony_on(slow))))
    first.start()
    try:
        assert inside.wait(60)
        second = threading.Thread(
            target=lambda: answers.append(house.send(neighbour.device_id, colony_on(neighbour)))
        )
        second.start()
        second.join(30)
        assert [status for status, _ in answers] == [200]  # answered while the other one is held
    finally:
        go_on.set()
        first.join(60)
        second.join(60)
    assert [status for status, _ in answers] == [200, 200]


def test_what_a_process_counted_is_in_the_database_and_counts_for_another_one(house):
    one, other = Senders(), Senders()
    assert one.add("192.0.2.1", 60, NOON_MS, most_kib=100)
    one.tell(NOON_MS, telling(NOON_MS))
    assert other.add("192.0.2.1", 30, NOON_MS, most_kib=100)
    other.tell(NOON_MS, telling(NOON_MS))
    with reading() as connection:
        counted = connection.execute(select(attempts.c.bucket, attempts.c.count)).all()
    assert counted == [("sent:192.0.2.1", 90)]

    assert not other.add("192.0.2.1", 11, NOON_MS, most_kib=100)
    assert other.add("192.0.2.2", 11, NOON_MS, most_kib=100)
    assert other.add("192.0.2.1", 10, NOON_MS, most_kib=100)


def test_who_was_refused_is_let_in_again_when_the_hour_is_over(house):
    senders = Senders()
    assert senders.add("192.0.2.1", 100, NOON_MS, most_kib=100)
    senders.tell(NOON_MS, telling(NOON_MS))
    now_ms = NOON_MS
    for _ in range(4):  # whoever is refused asks again, and that alone has the sum looked up
        now_ms += HOUR_MS // 4 - 2 * TELL_MS
        assert not senders.add("192.0.2.1", 1, now_ms, most_kib=100)
        senders.tell(now_ms, telling(now_ms))

    now_ms += HOUR_MS // 4
    senders.add("192.0.2.1", 1, now_ms, most_kib=100)
    senders.tell(now_ms, telling(now_ms))
    assert senders.add("192.0.2.1", 1, now_ms, most_kib=100)


def test_what_could_not_be_told_is_told_later(house):
    senders = Senders()
    senders.add("192.0.2.1", 5, NOON_MS, most_kib=100)

    def fail(_amounts):
        raise RuntimeError

    with pytest.raises(RuntimeError):
        senders.tell(NOON_MS, fail)
    later_ms = NOON_MS + TELL_MS
    senders.tell(later_ms, telling(later_ms))
    with reading() as connection:
        assert connection.scalars(select(attempts.c.count)).all() == [5]


def test_what_was_not_taken_does_not_count(house, monkeypatch):
    monkeypatch.setattr(quotas, "ADDRESS_KIB_AN_HOUR", 5)
    phone = house.phone()
    body = colony_on(phone)
    big = body.replace(b'"Amber"', json.dumps("x" * 4_500).encode())
    for _ in range(3):  # each is refused as a whole: the clock of the phone is no number
        assert house.send(phone.device_id, big.replace(b'"schema": 1', b'"schema": "x"'))[0] == 400
    assert house.send(phone.device_id, big)[0] == 200
    assert house.send(phone.device_id, big)[0] == 429
