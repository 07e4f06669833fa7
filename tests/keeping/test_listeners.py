"""Who no longer listened when a backup was put back is not nudged again by it. On both engines."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection
from tests.keeping.test_restore import restore_by_command
from tests.nudges.support import KEY_ID, LOOPBACK, BrowserKeys
from tests.support.house import House
from tests.support.households import Requester

from broodshelf.cli import main
from broodshelf.model.kinds import Person
from broodshelf.nudges.channels.addresses import MAIL
from broodshelf.nudges.channels.mail.mailboxes import forget_mailbox, listen_by_mail
from broodshelf.nudges.channels.push.subscriptions import forget_device, subscribe
from broodshelf.nudges.telling.house import read_houses
from broodshelf.people import mail
from broodshelf.people.devices import sign_out
from broodshelf.people.households import add_person
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger


def household_restored(house, archive):
    assert main(["household", "restore", house.household_id, str(archive)]) == 0


def listening_phone(connection: Connection, house: House, phone: Requester) -> str:
    """Subscribe a phone; return the id of its subscription."""
    body = {
        "endpoint": f"http://127.0.0.1:9/{phone.device_id}", "keys": BrowserKeys().as_json, "key_id": KEY_ID,
    }  # fmt: skip
    return subscribe(connection, phone.actor, body, LOOPBACK, KEY_ID, house.now_ms)["id"]


def confirmed_mailbox(connection: Connection, house: House, person_id: str) -> None:
    address = f"{person_id}@example.org"
    code = mail.ask(connection, house.household_id, person_id, address, house.now_ms)
    mail.confirm(connection, house.household_id, person_id, code, house.now_ms)
    listen_by_mail(connection, house.household_id, person_id, address, house.now_ms)


@pytest.mark.parametrize("put_back", [restore_by_command, household_restored])
def test_a_phone_that_signed_out_and_an_address_that_was_taken_away_hear_nothing_after_a_restore(
    house, tmp_path, put_back
):
    leaves, stays = house.phone(), house.phone()
    with writing() as connection:
        ledger = Ledger(connection, house.household_id)
        ada = add_person(ledger, Person(name="Ada", role="keeper"), house.now_ms)
        ledger.flush()
        listening_phone(connection, house, leaves)
        phone = listening_phone(connection, house, stays)
        for person_id in (house.person_id, ada):
            confirmed_mailbox(connection, house, person_id)
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    house.now_ms += 1000
    with writing() as connection:  # as web/access.py and web/mail.py do
        sign_out(connection, house.household_id, leaves.device_id, house.now_ms)
        forget_device(connection, house.household_id, leaves.device_id)
        mail.forget(connection, house.household_id, house.person_id, house.now_ms)
        forget_mailbox(connection, house.household_id, house.person_id)
    put_back(house, tmp_path / "kept.tar.gz")
    with reading() as connection:
        [(_, found)] = read_houses(connection, [house.household_id], {KEY_ID, MAIL}, house.now_ms).items()

    assert found.phones[house.person_id] == [(phone, "127.0.0.1:9")]
    assert [host for _, host in found.phones[ada]] == [MAIL]
