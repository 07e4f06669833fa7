"""Sending one encrypted message to one phone's push service by pywebpush."""

from __future__ import annotations

import hashlib
import threading
from base64 import urlsafe_b64encode
from collections.abc import Callable
from email.utils import parsedate_to_datetime
from functools import lru_cache
from typing import Final

from pywebpush import WebPusher
from urllib3 import Timeout
from urllib3.exceptions import HTTPError

from ....logs import say
from ....model.gauges import HOUR_MS
from ..addresses import Phone
from ..channel import Delivery
from ..outcome import Outcome, Refused, RetryLater, Sent
from .answers import read_answer
from .hosts import Blocked, Endpoint, PushHosts, wrong_key
from .rendering import render
from .session import PHONES_KEPT, Answer, PushSession
from .vapid import VapidKey

TIMEOUT: Final = Timeout(connect=3.0, read=10.0)
"""In seconds: to connect, and for each wait for an answer."""
TOKEN_KEPT_MS: Final = 6 * HOUR_MS
"""Vendors ask that a token be used for at least an hour; half of its 12 hours leaves a margin."""
CLOCK_OFF_S: Final = 60
CLOCK_EVERY_MS: Final = 60_000
SHORTEST_TTL_S: Final = 300
LONGEST_TTL_S: Final = 86_400


class PushChannel:
    """Brings messages to phones. Safe to use from several threads; they share the kept connections."""

    def __init__(self, hosts: PushHosts, key: VapidKey, subject: str) -> None:
        self._key, self._subject = key, subject
        self._session = PushSession(hosts)
        self._pusher: Callable[[Phone], WebPusher] = lru_cache(maxsize=PHONES_KEPT)(self._make_pusher)
        self._tokens: dict[str, tuple[str, int]] = {}
        self._lock = threading.Lock()
        self._compared_ms = -CLOCK_EVERY_MS

    def send(self, to: Phone, delivery: Delivery, now_ms: int) -> Outcome:
        """Render, encrypt, sign and send; return what the push service's answer means."""
        payload = render(delivery.message, delivery.id)
        try:
            endpoint = self._session.read(to.endpoint)
        except Blocked as error:
            return _said(to, Refused("blocked_host", suspect=True), str(error))
        wrong = wrong_key(to.p256dh, to.auth)
        if wrong is not None:
            return _said(to, Refused("bad_keys", suspect=True), wrong)
        try:
            answer: Answer = self._pusher(to).send(
                payload, self._headers(endpoint, delivery, now_ms), timeout=TIMEOUT
            )
        except Blocked as error:
            return _said(to, Refused("blocked_address", suspect=True), str(error))
        except (HTTPError, OSError) as error:  # their text holds the address
            return _said(to, RetryLater("network", vendor=True), type(error).__name__)
        self._compare_clocks(answer, now_ms)
        outcome = read_answer(answer.status_code, answer.headers)
        if isinstance(outcome, Sent):
            return outcome
        return _said(to, outcome, answer.headers.get("X-WNS-Error-Description", "")[:200])

    def _make_pusher(self, to: Phone) -> WebPusher:
        subscription = {"endpoint": to.endpoint, "keys": {"p256dh": to.p256dh, "auth": to.auth}}
        return WebPusher(subscription, self._session)

    def _headers(self, endpoint: Endpoint, delivery: Delivery, now_ms: int) -> dict[str, str]:
        headers = {
            "Authorization": self._token(endpoint.origin, now_ms),
            "Content-Type": "application/octet-stream",
            "TTL": str(max(SHORTEST_TTL_S, min(LONGEST_TTL_S, delivery.useful_s))),
            "Urgency": "high" if delivery.urgent else "normal",
            "Topic": topic_of(delivery.topic),
        }
        if endpoint.host.endswith("notify.windows.com"):
            headers["X-WNS-Cache-Policy"] = "cache"  # it refuses a TTL without this header
        return headers

    def _token(self, origin: str, now_ms: int) -> str:
        with self._lock:
            token, made_ms = self._tokens.get(origin, ("", 0))
            if not token or not 0 <= now_ms - made_ms < TOKEN_KEPT_MS:
                token = self._key.authorization(origin, self._subject, now_ms)
                self._tokens[origin] = (token, now_ms)
            return token

    def _compare_clocks(self, answer: Answer, now_ms: int) -> None:
        """Warn, once a minute, when a push service's clock and ours differ: tokens and care hours would suffer."""
        if 0 <= now_ms - self._compared_ms < CLOCK_EVERY_MS:
            return
        self._compared_ms = now_ms
        try:
            off_s = round(parsedate_to_datetime(answer.headers.get("Date", "")).timestamp() - now_ms / 1000)
        except ValueError:
            return
        if abs(off_s) > CLOCK_OFF_S:
            say("clock differs from the push service's", seconds=off_s)


def topic_of(name: str) -> str:
    """Return a ``Topic`` (RFC 8030, section 5.4: at most 32 base64url characters) for a name."""
    return urlsafe_b64encode(hashlib.sha256(name.encode()).digest()).decode()[:32]


def _said(to: Phone, outcome: Outcome, why: str) -> Outcome:
    reason = getattr(outcome, "reason", None)
    if reason is not None:
        say("push not taken", phone=to.mark, reason=reason, why=why)
    return outcome
