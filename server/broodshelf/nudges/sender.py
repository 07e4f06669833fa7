"""Sending one encrypted message to one phone's push service (RFC 8030, 8188, 8291, 8292).

The address of a subscription never reaches a log; its SHA-256 prefix does.
"""

from __future__ import annotations

import hashlib
import ssl
import threading
from base64 import urlsafe_b64encode
from dataclasses import dataclass
from email.utils import parsedate_to_datetime
from functools import lru_cache
from typing import Any, Final, Protocol, cast

import certifi
import http_ece
from cryptography.hazmat.primitives.asymmetric import ec
from urllib3 import BaseHTTPResponse, HTTPConnectionPool, HTTPSConnectionPool, PoolManager, Timeout
from urllib3.connection import HTTPSConnection
from urllib3.exceptions import HTTPError

from ..logs import say
from .answers import Outcome, Refused, RetryLater, read_answer
from .push_hosts import Blocked, Endpoint, PushHosts, from_base64url, wrong_key
from .vapid import VapidKey

TIMEOUT_S: Final = (3.0, 10.0)
"""To connect, and for each wait for an answer."""
CONNECTIONS_PER_HOST: Final = 64
LONGEST_ANSWER_BYTES: Final = 4096
TOKEN_KEPT_MS: Final = 6 * 3_600_000
"""Vendors ask that a token be used for at least an hour; half of its 12 hours leaves a margin."""
CLOCK_OFF_S: Final = 60
CLOCK_EVERY_MS: Final = 60_000
SHORTEST_TTL_S: Final = 300
LONGEST_TTL_S: Final = 86_400


@dataclass(frozen=True, slots=True)
class Target:
    """A phone's subscription: where to send and what to encrypt for."""

    endpoint: str
    p256dh: str
    auth: str

    @property
    def mark(self) -> str:
        """What logs may say of the address."""
        return hashlib.sha256(self.endpoint.encode()).hexdigest()[:12]


@dataclass(frozen=True, slots=True)
class Message:
    """``body`` is plain text of at most 3000 bytes; ``topic`` lets a newer message replace one still queued."""

    body: bytes
    ttl_s: int
    urgent: bool
    topic: str


class Sender(Protocol):
    """Whoever can send a message; tests and other channels bring their own."""

    def send(self, target: Target, message: Message, now_ms: int) -> Outcome:
        """Send and say what came of it; never raises for what a push service or the network does."""


class WebPushSender:
    """The real one. Safe to use from several threads; connections are kept and shared between them."""

    def __init__(self, hosts: PushHosts, key: VapidKey, subject: str) -> None:
        self._hosts, self._key, self._subject = hosts, key, subject
        self._tokens: dict[str, tuple[str, int]] = {}
        self._lock = threading.Lock()
        self._pools = push_pools(hosts)
        self._pool_of: dict[str, HTTPConnectionPool] = {}
        self._compared_ms = -CLOCK_EVERY_MS

    def send(self, target: Target, message: Message, now_ms: int) -> Outcome:
        """Encrypt, sign and send; return what the push service's answer means."""
        try:
            endpoint = self._hosts.read(target.endpoint)
        except Blocked as error:
            return self._said(target, Refused("blocked_host", suspect=True), str(error))
        try:
            body = encrypt(target, message.body)
        except ValueError as error:
            return self._said(target, Refused("bad_keys", suspect=True), type(error).__name__)
        headers = {
            "Authorization": self._token(endpoint.origin, now_ms),
            "Content-Encoding": "aes128gcm",
            "Content-Type": "application/octet-stream",
            "TTL": str(max(SHORTEST_TTL_S, min(LONGEST_TTL_S, message.ttl_s))),
            "Urgency": "high" if message.urgent else "normal",
            "Topic": message.topic,
        }
        if endpoint.host.endswith("notify.windows.com"):
            headers["X-WNS-Cache-Policy"] = "cache"  # it refuses a TTL without this header
        try:
            answer = self._pool(endpoint).urlopen(
                "POST",
                endpoint.path,
                body=body,
                headers=headers,
                redirect=False,
                retries=False,
                timeout=Timeout(*TIMEOUT_S),
                preload_content=False,
            )
            _let_go(answer)
        except Blocked as error:
            return self._said(target, Refused("blocked_address", suspect=True), str(error))
        except (HTTPError, OSError) as error:  # their text holds the address
            return self._said(target, RetryLater("network", vendor=True), type(error).__name__)
        if not 0 <= now_ms - self._compared_ms < CLOCK_EVERY_MS:
            self._compared_ms = now_ms
            self._compare_clocks(answer.headers.get("Date"), now_ms)
        outcome = read_answer(answer.status, answer.headers.get("Retry-After"), now_ms)
        return self._said(target, outcome, answer.headers.get("X-WNS-Error-Description", "")[:200])

    def _pool(self, endpoint: Endpoint) -> HTTPConnectionPool:
        """Return the kept connections of a host; looking them up by address would cost a tenth of a send."""
        pool = self._pool_of.get(endpoint.origin)
        if pool is None:
            pool = self._pool_of[endpoint.origin] = self._pools.connection_from_url(endpoint.origin)
        return pool

    def _token(self, origin: str, now_ms: int) -> str:
        with self._lock:
            token, made_ms = self._tokens.get(origin, ("", 0))
            if not token or not 0 <= now_ms - made_ms < TOKEN_KEPT_MS:
                token = self._key.authorization(origin, self._subject, now_ms)
                self._tokens[origin] = (token, now_ms)
            return token

    def _said(self, target: Target, outcome: Outcome, why: str) -> Outcome:
        reason = getattr(outcome, "reason", None)
        if reason is not None:
            say("push not taken", phone=target.mark, reason=reason, why=why)
        return outcome

    def _compare_clocks(self, date: str | None, now_ms: int) -> None:
        """Warn when a push service's clock and ours differ: its tokens and our care hours would suffer."""
        try:
            off_s = round(parsedate_to_datetime(date or "").timestamp() - now_ms / 1000)
        except ValueError:
            return
        if abs(off_s) > CLOCK_OFF_S:
            say("clock differs from the push service's", seconds=off_s)


def encrypt(target: Target, body: bytes) -> bytes:
    """Return ``body`` encrypted for a phone (RFC 8291). Raises ``ValueError`` for keys that cannot encrypt."""
    point, secret = _raw_keys(target.p256dh, target.auth)
    made = http_ece.encrypt(
        body,
        private_key=ec.generate_private_key(ec.SECP256R1()),
        dh=point,
        auth_secret=secret,
        version="aes128gcm",
    )
    return cast(bytes, made)


@lru_cache(maxsize=4096)
def _raw_keys(p256dh: str, auth: str) -> tuple[bytes, bytes]:
    if wrong_key(p256dh, auth) is not None:
        raise ValueError("keys that cannot encrypt")
    return from_base64url(p256dh), from_base64url(auth)


def topic_of(name: str) -> str:
    """Return a ``Topic`` (RFC 8030, section 5.4: at most 32 base64url characters) for a name."""
    return urlsafe_b64encode(hashlib.sha256(name.encode()).digest()).decode()[:32]


def push_pools(hosts: PushHosts) -> PoolManager:
    """Return connection pools that read no proxy or password from their surroundings.

    They connect to the address that the policy has checked, not to whatever the name says a moment later; plain
    http exists only where the policy allows this machine.
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

    trusted = ssl.create_default_context(cafile=certifi.where())
    pools = PoolManager(maxsize=CONNECTIONS_PER_HOST, ssl_context=trusted)
    pools.pool_classes_by_scheme = {"https": Pool, **({"http": HTTPConnectionPool} if hosts.loopback else {})}
    return pools


def _let_go(answer: BaseHTTPResponse) -> None:
    """Read a short answer so that its connection can be used again; hang up on a long or endless one."""
    length = answer.headers.get("Content-Length", "")
    if answer.status == 204 or (length.isdigit() and int(length) <= LONGEST_ANSWER_BYTES):
        answer.drain_conn()
        answer.release_conn()
    else:
        answer.close()
