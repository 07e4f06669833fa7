"""Sends per second in one process, over https: ``python -m tests.bench.sender_rate [FOLDER_WITH_WEB_PUSH] [COUNT]``.

To 300 phones with keys of their own at three push services, as in a round. Against (a) encryption, a ready VAPID header
and a urllib3 POST in a loop, and (b) Node's ``web-push`` (npm) doing the same work, one and eight at a time. All are
warm before the first turn, and take turns, so that other work on the machine meets them alike.
"""

from __future__ import annotations

import itertools
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from base64 import urlsafe_b64decode
from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import asdict
from pathlib import Path
from typing import NamedTuple

import certifi
import http_ece
import urllib3
from cryptography.hazmat.primitives.asymmetric import ec
from tests.bench.local_push import HERE, LocalHosts, push_service
from tests.nudges.support import BrowserKeys
from tests.support.certificates import make_certificate

from broodshelf.nudges.channels.addresses import Phone
from broodshelf.nudges.channels.channel import Delivery
from broodshelf.nudges.channels.outcome import Sent
from broodshelf.nudges.channels.push.channel import PushChannel
from broodshelf.nudges.channels.push.rendering import render
from broodshelf.nudges.channels.push.vapid import VapidKey, load_or_make
from broodshelf.nudges.messages import Message

SERVICES = 3
PHONES = 300
SLICE = 30
DELIVERY = Delivery(
    "d" * 43, Message("Protein for Amber", ("x" * 200,), "https://shelf.example.org/"), 3600, True, "r"
)
BODY = render(DELIVERY.message, DELIVERY.id)
"""What Node sends, ready-made; the others render it anew each time."""


class Spent(NamedTuple):
    """Seconds on the clock, and of this process's processor."""

    clock_s: float
    processor_s: float


Way = Callable[[int], Spent]
"""Sends so many messages."""


def raw(text: str) -> bytes:
    return urlsafe_b64decode(text + "=" * (-len(text) % 4))


def timed(send: Callable[[Phone], None], phones: Sequence[Phone]) -> Way:
    """Make a way of what sends one message to one phone."""
    turn = itertools.cycle(phones)

    def way(count: int) -> Spent:
        begun, processor_s = time.perf_counter(), time.process_time()
        for phone in itertools.islice(turn, count):
            send(phone)
        return Spent(time.perf_counter() - begun, time.process_time() - processor_s)

    return way


def ours(phones: Sequence[Phone], key: VapidKey) -> Way:
    """The push channel as it is: rendered, checked, encrypted, signed, sent, the answer read."""
    channel = PushChannel(LocalHosts(), key, "mailto:keeper@example.org")

    def send(phone: Phone) -> None:
        outcome = channel.send(phone, DELIVERY, time.time_ns() // 1_000_000)
        assert outcome == Sent(), outcome

    return timed(send, phones)


def bare(phones: Sequence[Phone], key: VapidKey, certificate: Path) -> Way:
    """(a): the payload, its encryption and the same POST; keys, headers and connections are at hand."""
    pools = urllib3.PoolManager(ca_certs=str(certificate))
    now_ms = time.time_ns() // 1_000_000
    ready = {}
    for phone in phones:
        origin, _, path = phone.endpoint.rpartition("/ok")
        headers = {
            "Authorization": key.authorization(origin, "mailto:keeper@example.org", now_ms),
            "Content-Encoding": "aes128gcm",
            "Content-Type": "application/octet-stream",
            "TTL": "3600",
            "Urgency": "high",
            "Topic": "a-round",
        }
        pool = pools.connection_from_url(origin)
        ready[phone] = (pool, f"/ok{path}", headers, raw(phone.p256dh), raw(phone.auth))

    def send(phone: Phone) -> None:
        pool, path, headers, point, secret = ready[phone]
        body = http_ece.encrypt(
            render(DELIVERY.message, DELIVERY.id),
            private_key=ec.generate_private_key(ec.SECP256R1()),
            dh=point,
            auth_secret=secret,
            version="aes128gcm",
        )
        answer = pool.urlopen("POST", path, body=body, headers=headers, retries=False)
        assert answer.status == 201

    return timed(send, phones)


@contextmanager
def node(folder: str, phones: Sequence[Phone], certificate: Path) -> Iterator[Callable[[int], Way]]:
    """(b): one Node process that stays; gives a way for so many at once."""
    targets = certificate.with_name("targets.json")
    subscriptions = [asdict(phone) for phone in phones]
    targets.write_text(json.dumps([{"endpoint": s.pop("endpoint"), "keys": s} for s in subscriptions]))
    process = subprocess.Popen(
        ["node", str(HERE / "web_push_rate.mjs"), folder, str(targets)],
        env={**os.environ, "NODE_EXTRA_CA_CERTS": str(certificate)},
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, bufsize=1,
    )  # fmt: skip

    def at_once(lanes: int) -> Way:
        def way(count: int) -> Spent:
            assert process.stdin is not None and process.stdout is not None
            process.stdin.write(f"{count} {lanes} {len(BODY)}\n")
            return Spent(float(process.stdout.readline()), 0.0)

        return way

    try:
        yield at_once
    finally:
        process.kill()
        process.communicate()


def in_turns(ways: dict[str, Way], count: int) -> dict[str, list[Spent]]:
    """Return how long each way took for each slice, after one for warming up."""
    took: dict[str, list[Spent]] = {name: [] for name in ways}
    for turn in range(1 + count // SLICE):
        for name, way in ways.items():
            spent = way(PHONES if turn == 0 else SLICE)
            if turn:
                took[name].append(spent)
    return took


def main(web_push: str | None, count: int) -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as name, ExitStack() as stack:
        folder = Path(name)
        certificate = make_certificate(folder)
        certifi.where = lambda: str(certificate)
        key = load_or_make(folder, in_use=False)
        services = [stack.enter_context(push_service(certificate)) for _ in range(SERVICES)]
        phones = [Phone(f"{services[n % SERVICES]}/ok/{n}", **BrowserKeys().as_json) for n in range(PHONES)]
        ways = {"ours": ours(phones, key), "(a) bare loop": bare(phones, key, certificate)}
        if web_push:
            at_once = stack.enter_context(node(web_push, phones, certificate))
            ways |= {f"(b) web-push, {lanes} at a time": at_once(lanes) for lanes in (1, 8)}
        took = in_turns(ways, count)
    for name, spent in took.items():
        rates = [SLICE / each.clock_s for each in spent]
        print(f"{name}: {statistics.median(rates):,.0f} a second (median of {len(rates)} slices of {SLICE})")
    for name in list(took)[1:]:
        print(f"ours is {ratio(took, name, 'clock_s', 5):.2f} times {name}; in the tenth of the slices that "
              f"other work disturbed least {ratio(took, name, 'clock_s', 1):.2f}")  # fmt: skip
        if took[name][0].processor_s:
            print(f"  by the processor's time {ratio(took, name, 'processor_s', 5):.2f} times")


def ratio(took: dict[str, list[Spent]], name: str, what: str, tenth: int) -> float:
    """Compare what the slices took, each way's at the same tenth: 5 is the median."""
    theirs, mine = (
        statistics.quantiles((getattr(each, what) for each in took[way]), n=10)[tenth - 1]
        for way in (name, "ours")
    )
    return theirs / mine


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) > 1 else None, int(sys.argv[2]) if len(sys.argv) > 2 else 3000)
