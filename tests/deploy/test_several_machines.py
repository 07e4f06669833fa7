"""Two servers and two nudgers that have PostgreSQL in common and nothing else, replaced while phones use them.

The database commits to the disk, the proxy is the shipped one, each process has an empty folder of its own.
"""

from __future__ import annotations

import json
import threading
from collections.abc import Iterator

import pytest
from flask import Flask
from sqlalchemy import func, select
from tests.support.caddy import Caddy
from tests.support.machines import Keeper, Process, PushService, ask, new_keeper, wait_for
from tests.support.postgresql import durable_cluster
from tests.support.server import free_port

from broodshelf.nudges.tables import deliveries, nudge_items, subscriptions
from broodshelf.records import database
from broodshelf.records.home.shared import SharedNotes
from broodshelf.records.home.tables import taken
from broodshelf.records.tables import revisions
from broodshelf.rounds.tables import occurrences

HOUSES, LISTENERS = 3, 2
SECRET = "an-invented-secret-of-the-tests"


@pytest.fixture
def url() -> Iterator[str]:
    """A database whose commits are on the disk."""
    with durable_cluster() as cluster:
        yield cluster.new_database()


@pytest.fixture
def database_itself(url: str) -> Iterator[None]:
    """The database, for what the test asks of it directly."""
    app = Flask("test")
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    database.prepare(app)
    with app.app_context():
        yield
        database.db.engine.dispose()


def count(column: object, *where: object) -> int:
    with database.reading() as connection:
        return connection.scalar(select(func.count(column)).where(*where)) or 0


def all_noted(service: PushService) -> bool:
    """Whether the database knows of every message that was answered."""
    return sum(service.taken.values()) == count(taken.c.delivery_id)


def kill_on_the_line(victim: Process, service: PushService) -> None:
    """Kill a process while messages are on the line: they have left, and nobody was told that they arrived."""
    with service.held():
        wait_for(lambda: service.waiting > 0 and all_noted(service))
        victim.kill()


@pytest.mark.long
def test_nothing_is_lost_or_doubled_while_machines_are_killed_and_replaced_one_after_the_other(
    tmp_path, url, database_itself
):
    port = free_port()
    settings = {
        "BROODSHELF_DATABASE_URL": url,
        "BROODSHELF_SECRET": SECRET,
        "BROODSHELF_PUBLIC_URL": f"http://127.0.0.1:{port}",
        "BROODSHELF_TRUSTED_PROXY_HOPS": "1",
    }
    one, two = (Process(tmp_path / name, "serve", settings) for name in ("one", "two"))
    third, fourth = (Process(tmp_path / name, "nudger", settings) for name in ("third", "fourth"))
    machines = [one, two, third, fourth]
    keepers: list[Keeper] = []
    threads: list[threading.Thread] = []
    try:
        for machine in reversed(machines):  # all at once, on a database without a table
            machine.begin()
        wait_for(lambda: all(machine.is_ready() for machine in machines))
        with PushService() as service, Caddy(tmp_path / "caddy", one.port, two.port, port=port):
            with database.reading() as connection:
                key_id = SharedNotes("push_key").read(connection)["key_id"]
            keepers = [new_keeper(port, f"house{n}", service, key_id, LISTENERS) for n in range(HOUSES)]
            threads = [threading.Thread(target=keeper.run) for keeper in keepers]
            for thread in threads:
                thread.start()

            def some_more_is_logged() -> None:
                wanted = [len(keeper.pictures) + 1 for keeper in keepers]

                def is_logged() -> bool:
                    assert not any(keeper.broken for keeper in keepers), [k.broken for k in keepers]
                    return all(len(k.pictures) >= n for k, n in zip(keepers, wanted, strict=True))

                wait_for(is_logged)

            def failures() -> int:
                return sum(len(keeper.failures) for keeper in keepers)

            some_more_is_logged()
            assert failures() == 0, [keeper.failures for keeper in keepers]
            assert one.leave() == 0  # told to stop, it answers what was sent to it: nobody notices
            some_more_is_logged()
            one.begin(build="the next version")
            wait_for(one.is_ready)
            some_more_is_logged()
            assert failures() == 0, [keeper.failures for keeper in keepers]

            for machine in (two, third, one):  # killed in the middle, also while the versions differ
                kill_on_the_line(machine, service)
                some_more_is_logged()
                machine.begin(build="the next version")
                wait_for(machine.is_ready)
                some_more_is_logged()
            assert fourth.leave() == 0
            fourth.begin(build="the next version")
            wait_for(fourth.is_ready)
            some_more_is_logged()

            for keeper in keepers:
                keeper.stop()
            for thread in threads:
                thread.join()
            leaks = sum(keeper.leaks for keeper in keepers)
            told = (occurrences.c.need == "water", occurrences.c.urgent, occurrences.c.state == "sent")
            wait_for(lambda: count(occurrences.c.id, *told) == leaks)
            wait_for(lambda: count(deliveries.c.id, deliveries.c.state == "waiting") == 0)
            every_message_was_taken_once(service)
            every_record_and_picture_is_there_from_both(keepers, one, two)
            each_has_the_files_of_the_others_version(one, two)
            a_revoked_phone_is_out_everywhere(keepers[0], one, two)
    finally:
        for keeper in keepers:
            keeper.give_up()
        for thread in threads:
            thread.join()
        for machine in machines:
            machine.done()


def every_message_was_taken_once(service: PushService) -> None:
    d, s = deliveries.c, subscriptions.c
    query = (
        select(s.endpoint, func.count(d.id))
        .join(deliveries, (d.household_id == s.household_id) & (d.subscription_id == s.id))
        .where(d.state == "sent")
        .group_by(s.endpoint)
    )
    with database.reading() as connection:
        sent = dict(tuple(row) for row in connection.execute(query))
        states = set(connection.scalars(select(d.state).distinct()))
    assert states == {"sent"}
    assert {service.url(path): n for path, n in service.taken.items()} == sent
    assert count(nudge_items.c.nudge_id) >= LISTENERS * HOUSES


def every_record_and_picture_is_there_from_both(keepers: list[Keeper], *servers: Process) -> None:
    with database.reading() as connection:
        once = select(func.count()).group_by(revisions.c.op_id).where(revisions.c.op_id.is_not(None))
        assert set(connection.scalars(once)) == {1}
    for keeper in keepers:
        assert not keeper.phone.waiting
        assert {v["verdict"] for v in keeper.phone.verdicts.values()} == {"applied"}
        for server in servers:
            assert _ids_at(keeper, server) >= set(keeper.logged)
            for photo in keeper.pictures:
                answer = ask(server.port, "GET", f"/api/photos/{photo}", **keeper.headers)
                assert (answer.status, answer.body[:2]) == (200, b"\xff\xd8")


def _ids_at(keeper: Keeper, server: Process) -> set[str]:
    """Everything that a server tells a phone that has nothing."""
    found: set[str] = set()
    asked = {"device": keeper.phone.device_id, "epoch": None, "cursor": None, "schema": 1, "ops": [],
             "device_time": keeper.phone.now_ms, "limit": 1000}  # fmt: skip
    while True:
        body = json.dumps(asked).encode()
        answer = ask(
            server.port, "POST", "/api/sync", body, **keeper.headers, **{"Content-Type": "application/json"}
        )
        told = json.loads(answer.body)
        found |= {row["id"] for row in told["rows"]}
        if not told["more"]:
            return found
        asked |= {"epoch": told["epoch"], "cursor": told["cursor"]}


def each_has_the_files_of_the_others_version(*servers: Process) -> None:
    builds = [json.loads(ask(server.port, "GET", "/readyz").body)["build"] for server in servers]
    for server in servers:
        for build in builds:
            assert ask(server.port, "GET", f"/static/{build}/main.js").status == 200


def a_revoked_phone_is_out_everywhere(keeper: Keeper, here: Process, there: Process) -> None:
    device = keeper.phone.device_id
    assert ask(there.port, "GET", "/api/me", **keeper.headers).status == 200
    answer = ask(
        here.port, "POST", f"/api/devices/{device}/revoke", b"{}", **keeper.headers,
        **{"Content-Type": "application/json"},
    )  # fmt: skip
    assert answer.status == 200
    assert ask(there.port, "GET", "/api/me", **keeper.headers).status == 401
