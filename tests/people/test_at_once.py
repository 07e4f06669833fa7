"""The same request twice at once, on PostgreSQL: the second waits for the first and finds what it left."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from copy import copy
from dataclasses import replace
from typing import Any

import pytest
from flask import Flask
from sqlalchemy import Engine, event, func, select, text
from tests.nudges.killing import wait_for
from tests.nudges.support import LOOPBACK, BrowserKeys
from tests.people.support import apply, listen
from tests.support.mail_server import MailServer
from tests.web.conftest import Browser

from broodshelf.app import create_app
from broodshelf.records.database import db, reading
from broodshelf.records.tables import households
from broodshelf.settings import from_environment

ADDRESS = "http://127.0.0.1:9/mira"
COOKIE = "broodshelf_session"
Request = Callable[[], Any]


@pytest.fixture
def server() -> Iterator[MailServer]:
    with MailServer() as made:
        yield made


@pytest.fixture
def app(templates, tmp_path, clock, notebook, server) -> Iterator[Flask]:
    environment = {
        "BROODSHELF_DATA": str(tmp_path),
        "BROODSHELF_DATABASE_URL": templates.of_an_app("postgresql", tmp_path),
        "BROODSHELF_SMTP_HOST": "127.0.0.1", "BROODSHELF_SMTP_PORT": str(server.port),
        "BROODSHELF_SMTP_SECURITY": "none", "BROODSHELF_SMTP_FROM": "shelf@example.org",
    }  # fmt: skip
    made = create_app(from_environment(environment), clock, LOOPBACK, notebook)
    yield made
    with made.app_context():
        db.engine.dispose()


def meet(app: Flask, written: str, first: Request, second: Request) -> tuple[Any, Any]:
    """Make two requests that meet, and return their answers.

    The first rests once it has said what begins with ``written``, before it commits, until the second waits for a
    lock or is over.
    """
    with app.app_context():
        engine = db.engine
    begun: list[Future[Any]] = []

    def rest(_connection: Any, _cursor: Any, statement: str, *_: Any) -> None:
        if statement.startswith(written) and not begun:
            begun.append(beside.submit(second))
            wait_for(lambda: begun[0].done() or waits(engine))

    with ThreadPoolExecutor(1) as beside:
        event.listen(engine, "after_cursor_execute", rest)
        try:
            answer = first()
        finally:
            event.remove(engine, "after_cursor_execute", rest)
        return answer, begun[0].result()


def waits(engine: Engine) -> bool:
    query = "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'"
    with engine.connect() as connection:
        return bool(connection.scalar(text(query)))


def twin(phone: Browser) -> Browser:
    """Return the same phone, able to make a second request beside its first."""
    other = copy(phone)
    other.client = phone.app.test_client()
    cookie = phone.client.get_cookie(COOKIE)
    assert cookie is not None
    other.client.set_cookie(COOKIE, cookie.value)
    return other


def statuses(answers: Sequence[Any]) -> list[int]:
    return [each.status_code for each in answers]


def test_of_two_approvals_of_one_phone_the_second_is_told_that_it_is_over_and_makes_nobody(
    app, browser, keeper
):
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    body = {"code": asked["code"], "person_name": "Jon"}
    answers = meet(
        app,
        "UPDATE pairings",
        lambda: keeper.post("/api/pairings/approve", body),
        lambda: twin(keeper).post("/api/pairings/approve", body),
    )
    rows = keeper.sync().json["rows"]

    assert statuses(answers) == [200, 410]
    assert answers[1].json["code"] == "pairing_ended"
    assert sorted(row["set"]["name"] for row in rows if row["kind"] == "person") == ["Jon", "Mira"]


def test_a_phone_that_says_twice_at_once_where_it_listens_is_kept_once(app, keeper):
    keys = BrowserKeys()
    answers = meet(
        app,
        "INSERT INTO push_subscriptions",
        lambda: listen(keeper, ADDRESS, keys),
        lambda: listen(twin(keeper), ADDRESS, keys),
    )

    assert statuses(answers) == [200, 200]
    assert answers[0].json == answers[1].json


def test_a_link_that_is_made_twice_at_once_is_the_second_ones(app, browser, keeper):
    colony = apply(keeper, "colony", {"name": "Amber"})
    pass_id = apply(
        keeper,
        "pass",
        {"name": "Grandpa", "colony_ids": [colony], "starts_on": "2026-05-01", "ends_on": "2026-05-03"},
    )
    path = f"/api/passes/{pass_id}/link"
    answers = meet(
        app, "INSERT INTO pass_secrets", lambda: keeper.post(path), lambda: twin(keeper).post(path)
    )

    assert statuses(answers) == [200, 200]
    opened = [
        browser().post("/api/passes/open", {"code": each.json["code"], "device": keeper.device()})
        for each in answers
    ]
    assert statuses(opened) == [410, 200]


def test_a_mail_address_that_is_said_twice_at_once_is_confirmed_by_the_second_code(app, keeper, server):
    path = f"/api/mail/{keeper.me['person_id']}"

    def ask(phone: Browser) -> Any:
        headers = {"Sec-Fetch-Site": "same-origin"}
        return phone.client.put(path, json={"address": "mira@example.org"}, headers=headers)

    answers = meet(app, "INSERT INTO mail_addresses", lambda: ask(keeper), lambda: ask(twin(keeper)))

    assert statuses(answers) == [200, 200]
    codes = [str(mail["Subject"])[:9] for mail in server.taken]
    assert statuses([keeper.post(f"{path}/confirm", {"code": code}) for code in codes]) == [400, 200]


def test_a_calendar_that_is_made_twice_at_once_has_one_address(app, browser, keeper):
    body = {"pass_id": None}
    answers = meet(
        app,
        "INSERT INTO feed_tokens",
        lambda: keeper.post("/api/feeds", body),
        lambda: twin(keeper).post("/api/feeds", body),
    )
    paths = [each.json["url"].removeprefix("http://127.0.0.1:8080") for each in answers]

    assert [browser().get(path).status_code for path in paths] == [404, 200]


def test_a_phone_that_asks_again_before_its_first_answer_is_there_begins_one_household(app, browser):
    parts = app.extensions["broodshelf"]
    app.extensions["broodshelf"] = replace(parts, settings=replace(parts.settings, signup="open"))
    names = {"person_name": "Ada", "household_name": "Attic", "zone": "UTC"}
    phone = browser()

    def begin(of: Browser) -> Any:
        device = {**of.device(), "secret": "s" * 43}
        return of.post("/api/claim", {"device": device, **names})

    _, heard = meet(app, "INSERT INTO devices", lambda: begin(browser()), lambda: begin(phone))

    assert heard.status_code == 200
    assert phone.get("/api/me").json == heard.json
    with app.app_context(), reading() as connection:
        assert connection.execute(select(func.count()).select_from(households)).scalar_one() == 1
