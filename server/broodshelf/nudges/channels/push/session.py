"""Posting to push services over kept connections: what pywebpush's sender needs of a session, and no more.

It goes to the hosts of the policy only, follows no redirect, reads no proxy or password from its surroundings, and
never reads an answer of more than a few kilobytes.
"""

from __future__ import annotations

import ssl
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any, Final

import certifi
from urllib3 import BaseHTTPResponse, HTTPConnectionPool, HTTPSConnectionPool, PoolManager, Timeout
from urllib3.connection import HTTPSConnection

from .hosts import Endpoint, PushHosts

CONNECTIONS_PER_HOST: Final = 64
LONGEST_ANSWER_BYTES: Final = 4096
PHONES_KEPT: Final = 4096
"""Of so many phones what is worked out from the subscription is kept (``tests.bench.sender_rate``)."""


@dataclass(frozen=True, slots=True)
class Answer:
    """What a push service answered. ``text`` is empty: a body is never read, status and headers say it all."""

    status_code: int
    headers: Mapping[str, str]
    text: str = ""


class PushSession:
    """Stands where ``pywebpush.WebPusher`` takes a session of requests. Safe to use from several threads."""

    def __init__(self, hosts: PushHosts) -> None:
        self.read: Callable[[str], Endpoint] = lru_cache(maxsize=PHONES_KEPT)(hosts.read)
        self._pools = _pools(hosts)
        self._pool_of: dict[str, HTTPConnectionPool] = {}

    def post(self, url: str, *, data: bytes, headers: Mapping[str, str], timeout: Timeout) -> Answer:
        """Post once. Raises ``Blocked`` for an address outside the policy, urllib3's errors and ``OSError``."""
        endpoint = self.read(url)
        answer = self._pool(endpoint.origin).urlopen(
            "POST",
            endpoint.path,
            body=data,
            headers=headers,
            redirect=False,
            retries=False,
            timeout=timeout,
            preload_content=False,
        )
        _let_go(answer)
        return Answer(answer.status, answer.headers)

    def _pool(self, origin: str) -> HTTPConnectionPool:
        """Return the kept connections of a host; looking them up by address would cost a tenth of a send.

        ``python -m tests.bench.sender_rate`` pays for it.
        """
        pool = self._pool_of.get(origin)
        if pool is None:
            pool = self._pool_of[origin] = self._pools.connection_from_url(origin)
        return pool


def _pools(hosts: PushHosts) -> PoolManager:
    """Return pools that connect to the address that the policy has checked, not to whatever the name says later.

    Plain http exists only where the policy allows this machine.
    """

    class Connection(HTTPSConnection):
        def _new_conn(self) -> Any:
            name = self._dns_host
            self._dns_host = hosts.address_for(name.rstrip("."), self.port or 443)
            try:
                return super()._new_conn()
            finally:
                self._dns_host = name  # the certificate is checked against the name

    class Pool(HTTPSConnectionPool):
        ConnectionCls = Connection

    pools = PoolManager(maxsize=CONNECTIONS_PER_HOST, ssl_context=_trusted())
    pools.pool_classes_by_scheme = {"https": Pool, **({"http": HTTPConnectionPool} if hosts.loopback else {})}
    return pools


@cache
def _trusted() -> ssl.SSLContext:
    """Whose certificates are believed; reading them takes a seventh of a start, and one reading serves a process."""
    return ssl.create_default_context(cafile=certifi.where())


def _let_go(answer: BaseHTTPResponse) -> None:
    """Read a short answer so that its connection can be used again; hang up on a long or endless one."""
    length = answer.headers.get("Content-Length", "")
    if length == "0":  # as nearly all say; there is nothing to read
        answer.release_conn()
    elif answer.status == 204 or (length.isdigit() and int(length) <= LONGEST_ANSWER_BYTES):
        answer.drain_conn()
        answer.release_conn()
    else:
        answer.close()
