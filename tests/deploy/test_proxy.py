"""The server behind the shipped proxy: a real Caddy with deploy/Caddyfile, and real connections."""

from __future__ import annotations

import json
import re
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.support.caddy import Caddy, proxied
from tests.support.server import ROOT, Server
from tests.support.sockets import Crowd, connect, get, read_answer, status_of

from broodshelf.records.ids import uuid7

MORE_THAN_PLACES = 540
"""The server has 512 places for connections."""
TRIES = 20
"""Wrong codes that an address may try in a minute."""


@pytest.fixture
def shelf(tmp_path: Path) -> Iterator[tuple[Server, Caddy]]:
    """A server that trusts one proxy, and the proxy."""
    with proxied(tmp_path) as made:
        yield made


def post(
    port: int, path: str, body: object, origin: int, source: str = "127.0.0.1", headers: str = ""
) -> bytes:
    """Send JSON from one of this machine's addresses, as a page of the shelf would."""
    raw = json.dumps(body).encode()
    head = (
        f"POST {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nOrigin: http://127.0.0.1:{origin}\r\n"
        f"Content-Type: application/json\r\nContent-Length: {len(raw)}\r\n{headers}Connection: close\r\n\r\n"
    )
    with connect(port, source) as connection:
        connection.sendall(head.encode() + raw)
        return read_answer(connection)


def guess(caddy: Caddy, source: str, headers: str = "") -> int:
    body = {"code": "BBBB-BBBB", "device": {"id": uuid7(1_790_000_000_000), "name": "a phone"}}
    return status_of(post(caddy.port, "/api/passes/open", body, caddy.port, source, headers))


@pytest.mark.long
def test_a_strangers_wrong_codes_stop_the_stranger_and_not_the_owner(shelf):
    server, caddy = shelf
    begun, statuses, ended = [], [], []
    while statuses.count(429) < 2 and len(statuses) < 3 * TRIES:
        forged = f"203.0.113.{len(statuses)}"
        begun.append(time.time() // 60)
        statuses.append(guess(caddy, "127.0.0.2", f"X-Forwarded-For: {forged}\r\nX-Real-IP: {forged}\r\n"))
        ended.append(time.time() // 60)
    claim = {
        "code": server.claim_code(),
        "device": {"id": uuid7(1_790_000_000_000), "name": "the owner's phone"},
        "person_name": "Mira",
        "household_name": "Shelf",
        "zone": "Europe/Vienna",
    }
    claimed = post(caddy.port, "/api/claim", claim, caddy.port, "127.0.0.3")
    cookie = re.search(rb"broodshelf_session=[^;]+", claimed)
    assert cookie
    signed_in = f"Cookie: {cookie[0].decode()}\r\n"

    assert (set(statuses), statuses.count(429)) == ({410, 429}, 2)
    taken = [span for *span, status in zip(begun, ended, statuses, strict=True) if status == 410]
    for minute in [at for at, status in zip(begun, statuses, strict=True) if status == 429]:
        surely = sum(first == last == minute for first, last in taken)
        perhaps = sum(
            first <= minute <= last for first, last in taken
        )  # with those during which a minute ended
        assert surely <= TRIES <= perhaps
    assert status_of(claimed) == 200
    assert guess(caddy, "127.0.0.3") == 410
    # the owner at the stranger's own address
    assert status_of(get(caddy.port, "/api/me", "127.0.0.2", signed_in)) == 200
    assert guess(caddy, "127.0.0.2", signed_in) == 410


def test_the_numbers_are_for_this_machine_and_not_for_the_proxys_visitors(shelf):
    server, caddy = shelf
    for headers in (
        "",
        "X-Forwarded-For: 127.0.0.1\r\n",
        "Forwarded: for=127.0.0.1\r\n",
        "X-Real-IP: ::1\r\n",
    ):
        assert status_of(get(caddy.port, "/metrics", headers=headers)) == 404
        assert status_of(get(server.port, "/metrics", headers=headers)) == (404 if headers else 200)


def test_a_proxy_that_the_settings_forgot_opens_the_numbers_to_nobody(tmp_path):
    server = Server(tmp_path / "data")
    server.start()
    try:
        with Caddy(tmp_path / "caddy", server.port) as caddy:
            assert status_of(get(caddy.port, "/metrics")) == 404
    finally:
        server.stop()


@pytest.mark.parametrize(
    "words",
    [
        b"",
        b"GET / HTTP/1.1\r\nHost: 127.0.0.1\r\n",
        b"POST /api/sync HTTP/1.1\r\nHost: %s\r\nContent-Type: application/json\r\nContent-Length: 5000\r\n\r\n{",
    ],
    ids=["silent", "half a head", "half a body"],
)
def test_half_sent_requests_keep_nobody_out_directly_or_through_the_proxy(shelf, words):
    server, caddy = shelf
    for port in (server.port, caddy.port):
        with Crowd(port) as crowd:
            crowd.add(MORE_THAN_PLACES, words.replace(b"%s", f"127.0.0.1:{port}".encode()))

            assert [status_of(get(port)) for _ in range(3)] == [200] * 3
            assert status_of(get(server.port)) == 200


@pytest.mark.long
def test_idle_browsers_keep_nobody_out_directly_or_through_the_proxy(shelf):
    server, caddy = shelf
    for port in (server.port, caddy.port):
        with Crowd(port) as crowd:
            for _ in range(MORE_THAN_PLACES):
                crowd.add(
                    1, f"GET / HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nAccept-Encoding: gzip\r\n\r\n".encode()
                )
                assert status_of(read_answer(crowd.connections[-1])) == 200

            assert status_of(get(port)) == 200


def test_a_body_that_is_too_large_is_stopped_at_the_proxy(shelf):
    _, caddy = shelf
    raw = b"x" * (2 * 1024 * 1024 + 1)
    with connect(caddy.port) as connection:
        connection.sendall(
            f"POST /api/sync HTTP/1.1\r\nHost: 127.0.0.1:{caddy.port}\r\n"
            f"Content-Length: {len(raw)}\r\n\r\n".encode()
            + raw
        )
        assert status_of(read_answer(connection)) in (413, 502)


def test_the_proxy_has_an_end_for_every_wait():
    recipe = (ROOT / "deploy/Caddyfile").read_text()

    for limit in ("read_header", "read_body", "write", "idle", "max_header_size", "max_size", "keepalive"):
        assert re.search(rf"^\t+{limit} \d+\w+$", recipe, re.MULTILINE), limit
