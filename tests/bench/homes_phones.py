"""Phones as a process of their own that costs little: ``python -m tests.bench.homes_phones``, told what to do by lines.

Each line on standard input is a JSON object, each answer a line on standard output. Connections are kept, requests are
texts into which two ids and a cursor are put, answers are not parsed; of waits each counts from when the request was
due, not from when it could be sent.
"""

from __future__ import annotations

import gzip
import http.client
import itertools
import json
import random
import re
import sys
import threading
import time
from collections import Counter
from typing import Any

from broodshelf.records.ids import uuid7

AT_ONCE = 100
"""So many requests may wait for an answer; a server that is that far behind has failed the step."""
CURSOR = re.compile(rb'"cursor":"([^"]*)"')
MORE = re.compile(rb'"more":(true|false)')
BODY = (
    '{{"device":"{device}","epoch":"{epoch}","cursor":"{cursor}","schema":1,"device_time":{now},"limit":1000,'
    '"ops":[{{"op_id":"{op}","kind":"feeding","id":"{row}","set":{{"colony_id":"{colony}","need":"sugar",'
    '"happened_at":"{at}"}},"made_at":{now},"skew_ms":0,"base_rev":0,"base_epoch":"{epoch}","n":0}}]}}'
)
PULL = '{{"device":"{device}","epoch":{epoch},"cursor":{cursor},"schema":1,"device_time":{now},"limit":1000,"ops":[]}}'


class Line:
    """A kept connection to the server."""

    def __init__(self, port: int) -> None:
        self._http = http.client.HTTPConnection("127.0.0.1", port, timeout=120)

    def sync(self, cookie: str, address: str, body: str) -> bytes:
        """Make a round trip; return the answer as JSON text. Anything but 200 raises."""
        headers = {
            "Content-Type": "application/json",
            "Sec-Fetch-Site": "same-origin",
            "Accept-Encoding": "gzip",
            "Accept-Language": "en",
            "Cookie": f"broodshelf_session={cookie}",
            "X-Forwarded-For": address,
        }
        self._http.request("POST", "/api/sync", body, headers)
        answer = self._http.getresponse()
        text = answer.read()
        if answer.getheader("Content-Encoding") == "gzip":
            text = gzip.decompress(text)
        if answer.status != 200:
            raise RuntimeError(f"{answer.status}: {text[:300]!r}")
        return text


class Town:
    """What the phones of all households know; ``about`` is what ``homes_served.Town`` wrote down."""

    def __init__(self, about: dict[str, Any], seed: int) -> None:
        self.port, self._about = about["port"], about
        self._cursors: dict[str, str] = {}
        self._chance, self._lock = random.Random(seed), threading.Lock()
        self.late = Counter[str]()

    def log_one(self, line: Line) -> None:
        """Send one log from some household and take what is new there."""
        about, now_ms = self._about, time.time_ns() // 1_000_000
        with self._lock:
            house = self._chance.choice(about["households"])
            colony = self._chance.choice(about["colonies"])
        at = time.strftime("%Y-%m-%dT%H:%M:%S.000+00:00", time.gmtime(now_ms / 1000))
        body = BODY.format(
            device=about["device"], epoch=about["epoch"], cursor=self._cursors.get(house, about["cursor"]),
            now=now_ms, op=uuid7(now_ms), row=uuid7(now_ms), colony=colony, at=at,
        )  # fmt: skip
        text = line.sync(f"{house}{about['device']}", address_of(house), body)
        if b'"verdict":"applied"' not in text and b'"verdict": "applied"' not in text:
            raise RuntimeError(text[:400])
        if found := CURSOR.search(text):
            self._cursors[house] = found[1].decode()

    def pull_all(self, line: Line, device: str) -> int:
        """Take everything of the large household, as a phone that was let in just now; return how many pages."""
        about, epoch, cursor = self._about, "null", "null"
        for pages in itertools.count(1):
            body = PULL.format(device=device, epoch=epoch, cursor=cursor, now=time.time_ns() // 1_000_000)
            text = line.sync(f"{about['large']}{device}", address_of(about["large"]), body)
            found, more = CURSOR.search(text), MORE.search(text)
            assert found is not None and more is not None
            epoch, cursor = f'"{about["large_epoch"]}"', f'"{found[1].decode()}"'
            if more[1] == b"false":
                return pages
        raise AssertionError


def address_of(household_id: str) -> str:
    """An address of its own for each household."""
    number = int(household_id[-6:], 16)
    return f"10.{number >> 16 & 255}.{number >> 8 & 255}.{number & 255}"


def at_a_rate(town: Town, rate: float, seconds: float) -> dict[str, Any]:
    """Log so often for so long, come what may; return the waits in ms."""
    number, waits, failures = itertools.count(), [], Counter[str]()
    begun = time.perf_counter() + 0.2

    def phone() -> None:
        line = Line(town.port)
        while (turn := next(number)) < rate * seconds:
            due_s = begun + turn / rate
            time.sleep(max(0.0, due_s - time.perf_counter()))
            try:
                town.log_one(line)
            except (OSError, RuntimeError, http.client.HTTPException) as error:
                failures[str(error)[:200]] += 1
                line = Line(town.port)
            waits.append(round((time.perf_counter() - due_s) * 1000, 1))

    _together([threading.Thread(target=phone) for _ in range(AT_ONCE)])
    return {"waits_ms": waits, "failures": dict(failures), "took_s": time.perf_counter() - begun}


def pull_together(town: Town, devices: list[str]) -> dict[str, Any]:
    """Let these phones take everything at once; return how long each took, in ms."""
    took: list[float] = []
    pages: list[int] = []

    def phone(device: str) -> None:
        begun = time.perf_counter()
        pages.append(town.pull_all(Line(town.port), device))
        took.append(round((time.perf_counter() - begun) * 1000))

    _together([threading.Thread(target=phone, args=(device,)) for device in devices])
    return {"waits_ms": took, "pages": pages}


def _together(threads: list[threading.Thread]) -> None:
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()


def main() -> int:
    """Do what each line asks for."""
    town = None
    for text in sys.stdin:
        told = json.loads(text)
        if "port" in told:
            town, done = Town(told, told["seed"]), {}
        elif town is None:
            raise RuntimeError("the first line says where the server is")
        elif "pulls" in told:
            done = pull_together(town, told["pulls"])
        else:
            done = at_a_rate(town, told["rate"], told["seconds"])
        print(json.dumps(done), flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
