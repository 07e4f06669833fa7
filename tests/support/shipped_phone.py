"""A phone that is the app itself: ``pwa/database`` and ``pwa/sync`` in Node, on an IndexedDB in memory.

It takes the place of ``StoredPhone`` in a household's world. Its ``drain`` stops where the app waits for the network;
what is not stored by then is lost with a kill, as each answer is stored in one transaction.
"""

from __future__ import annotations

import json
import shutil
import subprocess
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path
from types import TracebackType
from typing import Any

from tests.support.stored_phone import Network

HERE = Path(__file__).parent
PWA = HERE.parents[1] / "pwa"


class Phones:
    """The process that the phones of a test run live in: ``with Phones() as phones``, a class for worlds."""

    def __init__(self, pwa: Path = PWA) -> None:
        self.pwa = pwa

    def __enter__(self) -> Phones:
        node = shutil.which("node")
        assert node, "Node is needed to run the app's own code; deploy/test installs it"
        self._process = subprocess.Popen(
            [node, "--experimental-default-type=module", "phones.mjs", str(self.pwa)],
            cwd=HERE / "node", stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        )  # fmt: skip
        self._tabs = count()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        assert self._process.stdin is not None
        self._process.stdin.close()
        self._process.wait(10)
        if self._process.stdout is not None:
            self._process.stdout.close()

    def __call__(self, device_id: str, new_id: Callable[[], str], clock: Callable[[], int]) -> ShippedPhone:
        """Make a phone."""
        return ShippedPhone(self, device_id, new_id, clock)

    def ask(self, what: str, now_ms: int, **asked: Any) -> Any:
        """Let the app do something at this time of the phone's clock; return what it says."""
        assert self._process.stdin is not None and self._process.stdout is not None
        self._process.stdin.write(json.dumps({"do": what, "now": now_ms, **asked}) + "\n")
        self._process.stdin.flush()
        line = self._process.stdout.readline()
        assert line, "the app's process ended"
        answer = json.loads(line)
        assert "failed" not in answer, answer["failed"]
        return answer["said"]

    def new_tab(self) -> int:
        """Return a name for a tab."""
        return next(self._tabs)


class ShippedPhone:
    """What a world asks of a phone, answered by the app."""

    def __init__(
        self, phones: Phones, device_id: str, new_id: Callable[[], str], clock: Callable[[], int]
    ) -> None:
        self.phones = phones
        self.device_id = device_id
        self.new_id = new_id
        self.server_clock = clock
        self.clock_ahead_ms = 0
        self.schema = 1
        self.page = 1000

    def now_ms(self) -> int:
        """What this phone's clock says."""
        return self.server_clock() + self.clock_ahead_ms

    def ask(self, what: str, **asked: Any) -> Any:
        """Let the app do something with this phone's store."""
        return self.phones.ask(what, self.now_ms(), device=self.device_id, **asked)

    def enter(self, person_id: str, role: str = "keeper") -> None:
        """Sign in as a person."""
        self.ask("enter", me={"person_id": person_id, "role": role})

    def write(self, kind: str, values: dict[str, Any], record_id: str | None = None) -> str:
        """Queue one operation; return its record's id."""
        record_id = record_id or self.new_id()
        self.ask("write", change={"kind": kind, "id": record_id, "set": values})
        return record_id

    def mend(self, op_id: str, values: dict[str, Any]) -> list[str]:
        """Put a mended operation in the place of a rejected one; return all that were replaced."""
        replaced: list[str] = self.ask("mend", op_id=op_id, set=values)
        return replaced

    def overlay(self) -> dict[str, dict[str, Any]]:
        """What its screens show."""
        seen: dict[str, dict[str, Any]] = self.ask("overlay")
        return seen

    def waiting(self) -> list[dict[str, Any]]:
        """What is to be sent, oldest first."""
        entries = [entry for entry in self.outbox.values() if entry["state"] == "waiting"]
        return [entry["op"] for entry in sorted(entries, key=lambda e: e["n"])]

    @property
    def rows(self) -> dict[str, dict[str, Any]]:
        return self._read("rows")

    @property
    def outbox(self) -> dict[str, dict[str, Any]]:
        return self._read("outbox")

    @property
    def journal(self) -> dict[str, dict[str, Any]]:
        return self._read("journal")

    @property
    def conflicts(self) -> dict[str, Any]:
        return self._read("conflicts")

    @property
    def meta(self) -> dict[str, Any]:
        return self._read("meta")

    def _read(self, name: str) -> dict[str, Any]:
        kept: dict[str, Any] = self.ask("read", name=name)
        return kept

    def drain(self, network: Network) -> Iterator[str]:
        """Let the app sync; stop before and after each request."""
        tab = self.phones.new_tab()
        stop = self.ask("begin", tab=tab)
        try:
            while "body" in stop:
                yield "sending"
                body = {**stop["body"], "limit": self.page, "schema": self.schema}
                try:
                    answer = network(json.dumps(body).encode())
                except Exception:
                    self.ask("reply", tab=tab, answer=None)
                    raise
                yield "answered"
                stop = self.ask("reply", tab=tab, answer=answer)
                yield "stored"
        except GeneratorExit:
            self.ask("kill", tab=tab)
            raise
        assert "error" not in stop, stop["error"]
