"""What was ended after a backup stays ended when the backup is restored, whatever it was."""

from __future__ import annotations

import logging

import pytest
from sqlalchemy import select
from tests.support.house import House
from tests.support.households import Requester, by_id

from broodshelf.errors import Gone, NotFound, SignedOut
from broodshelf.feed.tokens import find_feed, make_feed, revoke_feed
from broodshelf.keeping.backup import backup, restore
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import Person
from broodshelf.people import pairing, passes
from broodshelf.people.actor import Actor
from broodshelf.people.devices import Owner, Phone, actor_of, sign_in, sign_out
from broodshelf.people.households import Founding, add_person, claim, make_claim_code
from broodshelf.people.tables import mail_addresses
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger, read_record


@pytest.fixture
def house(tmp_path, templates):
    templates.of_an_app("sqlite", tmp_path / "data")
    logging.disable(logging.CRITICAL)
    with House(tmp_path / "data") as made:
        yield made
    logging.disable(logging.NOTSET)


def back_up_then(house, tmp_path, end) -> None:
    """Back up, let ``end`` end something, and restore the backup as the command does."""
    backup(house.settings, tmp_path / "kept.tar.gz")
    house.now_ms += 1000
    end()
    house.stop()
    restore(house.settings, tmp_path / "kept.tar.gz")
    house.start()


def in_household(house, work):
    with writing() as connection:
        return work(connection)


def given_pass(house) -> str:
    made = house.new_id()

    def put(connection):
        ledger = Ledger(connection, house.household_id)
        values = {"name": "P", "colony_ids": [], "starts_on": "2026-05-01", "ends_on": "2026-05-30"}
        ledger.put(made, "pass", values, now_ms=house.now_ms, person_id=house.person_id)
        ledger.flush()

    in_household(house, put)
    return made


def test_a_session_that_was_signed_out_stays_signed_out(house, tmp_path):
    phone = house.phone()
    token = house.tokens[phone.device_id]
    back_up_then(
        house,
        tmp_path,
        lambda: in_household(house, lambda c: sign_out(c, house.household_id, phone.device_id, house.now_ms)),
    )
    with reading() as connection, pytest.raises(SignedOut):
        actor_of(connection, token, house.now_ms)


def test_a_cookie_that_a_later_sign_in_replaced_stays_replaced(house, tmp_path):
    phone = house.phone()
    token = house.tokens[phone.device_id]
    back_up_then(house, tmp_path, lambda: house.let_in(phone.device_id))
    with reading() as connection, pytest.raises(SignedOut):
        actor_of(connection, token, house.now_ms)


def replace_feed(connection, house):
    return make_feed(connection, house.household_id, None, house.person_id, house.now_ms)


def end_feed(connection, house):
    revoke_feed(connection, house.household_id, None, house.now_ms)


@pytest.mark.parametrize("end", [replace_feed, end_feed])
def test_a_calendar_address_that_was_ended_or_replaced_stays_so(house, tmp_path, end):
    token = in_household(house, lambda c: replace_feed(c, house))
    back_up_then(house, tmp_path, lambda: in_household(house, lambda c: end(c, house)))
    with reading() as connection, pytest.raises(NotFound):
        find_feed(connection, token, house.now_ms)


def test_a_link_that_was_replaced_stays_replaced(house, tmp_path):
    pass_id = given_pass(house)

    def link(connection):
        return passes.make_link(connection, house.household_id, pass_id, house.now_ms)

    old = in_household(house, link)
    back_up_then(house, tmp_path, lambda: in_household(house, link))
    with reading() as connection, pytest.raises(Gone):
        passes.find_pass(connection, house.now_ms, secret=old.secret)


def test_a_pairing_that_was_collected_is_not_collected_again(house, tmp_path):
    keeper = Actor(house.household_id, house.person_id, house.new_id(), "keeper")
    asked = in_household(house, lambda c: pairing.ask(c, house.new_id(), "new", house.now_ms))
    in_household(
        house,
        lambda c: pairing.approve(c, keeper, asked.code, pairing.KnownKeeper(house.person_id), house.now_ms),
    )

    def collect(connection):
        return pairing.collect(connection, asked.pairing_id, asked.collect_secret, house.now_ms)

    back_up_then(house, tmp_path, lambda: in_household(house, collect))
    with writing() as connection, pytest.raises(Gone):
        collect(connection)


def test_a_code_back_into_a_household_works_once_across_a_restore(house, tmp_path):
    code = in_household(
        house, lambda c: make_claim_code(c, house.now_ms, house.household_id, house.person_id)
    )

    def use(connection):
        return claim(connection, code, Founding(), house.now_ms)

    back_up_then(house, tmp_path, lambda: in_household(house, use))
    with writing() as connection, pytest.raises(Gone):
        use(connection)


def test_a_mail_address_that_was_taken_away_gets_no_mail_again(house, tmp_path):
    from broodshelf.people import mail

    in_household(
        house, lambda c: mail.ask(c, house.household_id, house.person_id, "m@example.org", house.now_ms)
    )
    back_up_then(
        house,
        tmp_path,
        lambda: in_household(
            house, lambda c: mail.forget(c, house.household_id, house.person_id, house.now_ms)
        ),
    )
    with reading() as connection:
        assert connection.execute(select(mail_addresses)).all() == []


def second_keeper(house) -> tuple[str, str]:
    """Add a keeper with a phone; return the person's id and the phone's token."""
    device_id, person_id = house.new_id(), house.new_id()

    def let_in(connection):
        ledger = Ledger(connection, house.household_id)
        add_person(ledger, Person(name="Ada", role="keeper"), house.now_ms, person_id=person_id)
        ledger.flush()
        owner = Owner(house.household_id, person_id)
        return sign_in(connection, Phone(device_id, "b"), owner, house.now_ms)

    return person_id, in_household(house, let_in).token


def change_person(house, phone: Requester, person_id: str, values) -> None:
    import json

    phone.person_id = house.person_id
    phone.write("person", values, person_id)
    phone.take(json.loads(house.post(phone, json.dumps(phone.request()).encode())))


def test_a_person_who_was_removed_stays_removed_with_their_phones(house, tmp_path):
    phone = house.phone()
    person_id, token = second_keeper(house)
    back_up_then(house, tmp_path, lambda: change_person(house, phone, person_id, {"gone": True}))
    with reading() as connection:
        assert read_record(connection, house.household_id, person_id).gone
        with pytest.raises(SignedOut):
            actor_of(connection, token, house.now_ms)


def test_the_calendar_of_a_person_who_left_stays_ended_although_they_came_back(house, tmp_path):
    phone = house.phone()
    person_id, _token = second_keeper(house)
    token = in_household(house, lambda c: make_feed(c, house.household_id, None, person_id, house.now_ms))

    def leave_and_return():
        for gone in (True, False):
            house.now_ms += 1000
            phone.now_ms = house.now_ms
            change_person(house, phone, person_id, {"gone": gone})

    back_up_then(house, tmp_path, leave_and_return)
    with reading() as connection, pytest.raises(NotFound):
        find_feed(connection, token, house.now_ms)


def test_a_person_who_came_back_is_there_after_a_restore(house, tmp_path):
    phone = house.phone()
    person_id, _token = second_keeper(house)

    def leave_and_return():
        change_person(house, phone, person_id, {"gone": True})
        house.now_ms += 1000
        phone.now_ms = house.now_ms
        change_person(house, phone, person_id, {"gone": False})

    back_up_then(house, tmp_path, leave_and_return)
    with reading() as connection:
        assert not read_record(connection, house.household_id, person_id).gone


def test_a_pass_that_was_taken_back_and_is_offered_by_a_phone_that_missed_it_is_taken_back(house, tmp_path):
    import json

    backup(house.settings, tmp_path / "kept.tar.gz")
    house.now_ms += 1000
    pass_id = given_pass(house)
    phone = house.phone()
    answer = json.loads(house.post(phone, json.dumps(phone.request()).encode()))
    phone.take(answer)
    row = by_id(answer["rows"])[pass_id]
    house.revocations.add("pass", house.household_id, pass_id, house.now_ms)
    house.stop()
    restore(house.settings, tmp_path / "kept.tar.gz")
    house.start()
    house.let_in(phone.device_id)
    phone.write("pass", row["set"], pass_id, adopt=True, by=row["by"], made_ms=row["made_ms"], device=None)
    house.post(phone, json.dumps(phone.request()).encode())
    with reading() as connection:
        record = read_record(connection, house.household_id, pass_id)

    assert record.person_id == house.person_id
    assert record.values["revoked_at_ms"] == house.now_ms


def test_what_was_purged_does_not_rise_from_a_backup_older_than_its_deletion(house, tmp_path):
    from broodshelf.records.purge import purge_gone

    colony = house.new_id()

    def put(values):
        def work(connection):
            ledger = Ledger(connection, house.household_id)
            ledger.put(colony, "colony", values, now_ms=house.now_ms)
            ledger.flush()

        in_household(house, work)

    def purge():
        put({"gone": True})
        house.now_ms += 401 * DAY_MS
        in_household(house, lambda c: purge_gone(c, house.household_id, house.now_ms))

    put({"name": "Amber"})
    back_up_then(house, tmp_path, purge)
    with reading() as connection:
        assert read_record(connection, house.household_id, colony) is None
