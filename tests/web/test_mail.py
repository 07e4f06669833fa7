"""Setting, confirming and taking away an address: only keepers, only with the code that was sent there."""

from __future__ import annotations

import re

import pytest
from sqlalchemy import select
from tests.support.mail_server import MailServer

from broodshelf.app import create_app
from broodshelf.nudges.tables import subscriptions
from broodshelf.records.database import db, reading
from broodshelf.settings import from_environment

ADDRESS = "mira@example.org"


@pytest.fixture
def server():
    with MailServer() as made:
        yield made


@pytest.fixture
def app(tmp_path, clock, server, templates):
    templates.of_an_app("sqlite", tmp_path)
    environment = {
        "BROODSHELF_DATA": str(tmp_path), "BROODSHELF_SMTP_HOST": "127.0.0.1",
        "BROODSHELF_SMTP_PORT": str(server.port), "BROODSHELF_SMTP_SECURITY": "none",
        "BROODSHELF_SMTP_FROM": "shelf@example.org",
    }  # fmt: skip
    made = create_app(from_environment(environment), clock)
    yield made
    with made.app_context():
        db.engine.dispose()


def set_address(browser, address: str = ADDRESS):
    headers = {"Sec-Fetch-Site": "same-origin"}
    path = f"/api/mail/{browser.me['person_id']}"
    return browser.client.put(path, json={"address": address}, headers=headers)


def take_away(browser):
    headers = {"Sec-Fetch-Site": "same-origin"}
    return browser.client.delete(f"/api/mail/{browser.me['person_id']}", json={}, headers=headers)


def confirm(browser, code: str):
    return browser.post(f"/api/mail/{browser.me['person_id']}/confirm", {"code": code})


def code_in(mail) -> str:
    found = re.match(r"\S{4}-\S{4}", mail["Subject"])
    assert found
    return found[0]


def mailboxes(app):
    with app.app_context(), reading() as connection:
        return connection.scalars(select(subscriptions.c.endpoint)).all()


def test_an_address_counts_once_its_code_was_typed_in(app, keeper, server):
    assert keeper.get("/api/mail").json == {"available": True, "people": []}
    assert set_address(keeper).json == {"outcome": "sent"}
    [mail] = server.taken
    assert mail["To"] == ADDRESS
    assert mailboxes(app) == []
    assert confirm(keeper, "BBBB-BBBB").json["code"] == "wrong_code"
    assert mailboxes(app) == []

    assert confirm(keeper, code_in(mail)).status_code == 200
    assert mailboxes(app) == [f"mailto:{ADDRESS}"]
    [person] = keeper.get("/api/mail").json["people"]
    assert (person["address"], person["confirmed"]) == (ADDRESS, True)
    assert confirm(keeper, code_in(mail)).status_code == 404  # a code works once


def test_a_code_ends_after_an_hour(keeper, server, clock):
    set_address(keeper)
    clock.now_ms += 3_600_001
    answer = confirm(keeper, code_in(server.taken[0]))

    assert (answer.status_code, answer.json["code"]) == (410, "code_ended")


def test_a_new_address_silences_the_old_one_until_it_is_confirmed(app, keeper, server):
    set_address(keeper)
    confirm(keeper, code_in(server.taken[0]))
    set_address(keeper, "new@example.org")
    assert mailboxes(app) == []
    confirm(keeper, code_in(server.taken[1]))
    assert mailboxes(app) == ["mailto:new@example.org"]

    assert take_away(keeper).status_code == 200
    assert mailboxes(app) == []
    assert keeper.get("/api/mail").json["people"] == []


@pytest.mark.parametrize(
    "address", ["mira", "a@b", "a b@example.org", "a@example.org\nBcc: x@example.org", "a@b.c>"]
)
def test_what_is_no_address_is_refused_and_named(keeper, server, address):
    answer = set_address(keeper, address)

    assert (answer.status_code, list(answer.json["fields"])) == (400, ["address"])
    assert server.taken == []


def test_nobody_can_be_flooded_with_codes(keeper, server):
    statuses = [set_address(keeper).status_code for _ in range(4)]

    assert statuses == [200, 200, 200, 429]
    assert len(server.taken) == 3


def test_another_households_person_is_unknown_and_addresses_never_sync(app, browser, keeper, server):
    other = browser().claim("Ada")
    set_address(keeper)
    other.me = {**other.me, "person_id": keeper.me["person_id"]}

    assert set_address(other).status_code == 404
    assert confirm(other, code_in(server.taken[0])).status_code == 404
    assert other.get("/api/mail").json["people"] == []
    assert ADDRESS not in keeper.sync().text
