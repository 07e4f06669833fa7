"""Sends per second in one process, over https: ``python -m tests.bench.sender_rate [FOLDER_WITH_WEB_PUSH] [COUNT]``.

Against (a) encryption, a ready VAPID header and a urllib3 POST in a loop, and (b) Node's ``web-push`` (npm) doing
the same work, one and eight at a time. Figures of a run are in docs/nudges.md.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from base64 import urlsafe_b64decode
from collections.abc import Callable, Sequence
from pathlib import Path

import certifi
import http_ece
import urllib3
from cryptography.hazmat.primitives.asymmetric import ec
from tests.bench.local_push import HERE, LocalHosts, push_service
from tests.nudges.support import BrowserKeys
from tests.support.mail_server import make_certificate

from broodshelf.nudges.answers import Sent
from broodshelf.nudges.sender import Message, Target, WebPushSender
from broodshelf.nudges.vapid import VapidKey, load_or_make

ROUNDS = 5
SLICE = 20
BODY = b"x" * 400


def raw(text: str) -> bytes:
    return urlsafe_b64decode(text + "=" * (-len(text) % 4))


class Bare:
    """(a): nothing but encryption and a POST on one connection; no check, no reading of what the answer means."""

    def __init__(self, url: str, keys: dict[str, str], key: VapidKey, certificate: Path) -> None:
        self.pool = urllib3.PoolManager(ca_certs=str(certificate)).connection_from_url(url)
        self.path, self.dh, self.auth = f"/{url.rpartition('/')[2]}", raw(keys["p256dh"]), raw(keys["auth"])
        origin = url.rpartition("/")[0]
        now_ms = time.time_ns() // 1_000_000
        self.headers = {
            "Authorization": key.authorization(origin, "mailto:keeper@example.org", now_ms),
            "Content-Encoding": "aes128gcm", "TTL": "3600", "Urgency": "high", "Topic": "a-round",
        }  # fmt: skip

    def send(self) -> None:
        body = http_ece.encrypt(
            BODY, private_key=ec.generate_private_key(ec.SECP256R1()), dh=self.dh, auth_secret=self.auth,
            version="aes128gcm",
        )  # fmt: skip
        answer = self.pool.urlopen("POST", self.path, body=body, headers=self.headers, retries=False)
        assert answer.status == 201


def in_turns(ways: Sequence[Callable[[], None]], count: int) -> list[float]:
    """Return how long each way took for ``count`` sends, in slices by turns: other work then meets both alike."""
    took = [0.0] * len(ways)
    for way in ways:
        way()
    for _ in range(count // SLICE):
        for number, way in enumerate(ways):
            begun = time.perf_counter()
            for _ in range(SLICE):
                way()
            took[number] += time.perf_counter() - begun
    return took


def main(web_push: str | None, count: int) -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as folder:
        certificate = make_certificate(Path(folder))
        certifi.where = lambda: str(certificate)
        keys = BrowserKeys().as_json
        key = load_or_make(Path(folder), in_use=False)
        with push_service(certificate) as url:
            endpoint = f"{url}/ok"
            bare = Bare(endpoint, keys, key, certificate)
            ours = WebPushSender(LocalHosts(), key, "mailto:keeper@example.org")
            target = Target(endpoint, keys["p256dh"], keys["auth"])
            message = Message(BODY, 3600, True, "a-round")

            def send() -> None:
                outcome = ours.send(target, message, time.time_ns() // 1_000_000)
                assert outcome == Sent(), outcome

            def node(at_once: int) -> float:
                command = ["node", str(HERE / "web_push_rate.mjs"), str(web_push), endpoint, keys["p256dh"],
                           keys["auth"], str(count), str(at_once)]  # fmt: skip
                environment = {**os.environ, "NODE_EXTRA_CA_CERTS": str(certificate)}
                return float(subprocess.run(command, env=environment, check=True, capture_output=True).stdout)

            rates: dict[str, list[float]] = {name: [] for name in ("ours", "(a) bare loop")}
            for _ in range(ROUNDS):
                took = in_turns((send, bare.send), count)
                for name, seconds in zip(rates, took, strict=True):
                    rates[name].append(count / seconds)
            for at_once in (1, 8) if web_push else ():
                name = f"(b) web-push, {at_once} at a time"
                rates[name] = [count / node(at_once) for _ in range(ROUNDS)]
            for name, found in rates.items():
                print(
                    f"{name}: {statistics.median(found):,.0f} a second "
                    f"(of {ROUNDS} runs: {min(found):,.0f} to {max(found):,.0f})"
                )
            mine = rates["ours"]
            for name in list(rates)[1:]:
                ratio = statistics.median(m / r for m, r in zip(mine, rates[name], strict=True))
                print(f"ours is {ratio:.2f} times {name}")


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else None, int(sys.argv[2]) if len(sys.argv) > 2 else 1000)
