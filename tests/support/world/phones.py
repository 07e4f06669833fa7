"""Phones that are the app itself: ``pwa/database`` and ``pwa/sync`` in Node, on an IndexedDB in memory.

One process holds the phones of many worlds (tests/support/node/phones.mjs). What happens on a phone is written to it
and not waited for, until something is asked: a tab's next stop, or what is on a phone's disk.
"""

from __future__ import annotations

import atexit
import json
import shutil
import subprocess
from collections.abc import Callable
from functools import cache
from itertools import count
from pathlib import Path
from types import TracebackType
from typing import Any

NODE = Path(__file__).parents[1] / "node"
PWA = Path(__file__).parents[3] / "pwa"

Network = Callable[[bytes], tuple[int, bytes]]
"""Carries a request; returns the status and the text of its answer, or (0, b"") if none arrives."""


class Phones:
    """The process that phones live in: ``with Phones() as phones``."""

    def __enter__(self) -> Phones:
        node = shutil.which("node")
        assert node, "Node is needed to run the app's own code; deploy/test installs it"
        self._process = subprocess.Popen(
            [node, "--experimental-default-type=module", "phones.mjs"],
            cwd=NODE, stdin=subprocess.PIPE, stdout=subprocess.PIPE,
        )  # fmt: skip
        assert self._process.stdin is not None and self._process.stdout is not None
        self._to, self._from = self._process.stdin, self._process.stdout
        self._tabs = count()
        self.turns = 0
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None = None,
        error: BaseException | None = None,
        tb: TracebackType | None = None,
    ) -> None:
        self._to.close()
        self._process.wait(10)
        self._from.close()

    def tell(self, command: str, now_ms: int, *, text: bytes = b"", **told: Any) -> None:
        """Let something happen at this time of the phone's clock."""
        self.turns += command != "read"
        self._to.write(json.dumps({"do": command, "now": now_ms, **told}).encode() + b"\n")
        if text:
            self._to.write(text + b"\n")

    def ask(self, command: str, now_ms: int, **asked: Any) -> Any:
        """Let something happen and return what is said of it."""
        self.tell(command, now_ms, ask=True, **asked)
        self._to.flush()
        answer = json.loads(self.line())
        if isinstance(answer, dict) and "failed" in answer:
            raise AssertionError(answer["failed"])
        return answer

    def line(self) -> bytes:
        """Return the next line that the process says."""
        line = self._from.readline()
        assert line, "the app's process ended"
        return line[:-1]

    def processor_s(self) -> float:
        """Return how many seconds of processor this process has used."""
        used: float = self.ask("used", 0)
        return used

    def new_tab(self) -> int:
        """Return a number for a tab."""
        return next(self._tabs)


@cache
def shared_phones() -> Phones:
    """Return one process for all worlds of this one."""
    made = Phones().__enter__()
    atexit.register(made.__exit__)
    return made


class Phone:
    """One phone. ``folder`` is the app that runs on it, ``clock`` the server's."""

    def __init__(
        self, phones: Phones, device_id: str, clock: Callable[[], int], me: dict[str, str], folder: Path = PWA
    ) -> None:
        self.phones = phones
        self.device_id = device_id
        self.server_clock = clock
        self.clock_ahead_ms = 0
        self.schema = 1
        self.page = 1000
        self._read_at: int | None = None
        self.tell("phone", folder=str(folder), me=me)

    def now_ms(self) -> int:
        """What this phone's clock says."""
        return self.server_clock() + self.clock_ahead_ms

    def tell(self, command: str, **told: Any) -> None:
        """Let something happen on this phone."""
        self.phones.tell(command, self.now_ms(), device=self.device_id, **told)

    def ask(self, command: str, **asked: Any) -> Any:
        """Let something happen on this phone and return what is said of it."""
        return self.phones.ask(command, self.now_ms(), device=self.device_id, **asked)

    def do(self, what: str, record_id: str, which: int, at: int) -> None:
        """Let a person do something with one of the records that the phone shows."""
        self.tell("person", what=what, id=record_id, which=which, at=at)

    def write(self, kind: str, values: dict[str, Any], record_id: str) -> None:
        """Let a person write these values."""
        self.tell("person", change={"kind": kind, "id": record_id, "set": values})

    def mend(self) -> list[str]:
        """Let a person mend what was refused and can be mended; return the operations that were replaced."""
        replaced: list[str] = self.ask("mend")
        return replaced

    def disk(self) -> dict[str, Any]:
        """Return what is on the disk, read beside the app: its stores by name, and the operations ``written``."""
        if self._read_at != self.phones.turns:
            self._disk: dict[str, Any] = self.ask("read")
            self._read_at = self.phones.turns
        return self._disk

    @property
    def rows(self) -> dict[str, dict[str, Any]]:
        rows: dict[str, dict[str, Any]] = self.disk()["rows"]
        return rows

    @property
    def outbox(self) -> dict[str, dict[str, Any]]:
        outbox: dict[str, dict[str, Any]] = self.disk()["outbox"]
        return outbox

    @property
    def conflicts(self) -> dict[str, Any]:
        conflicts: dict[str, Any] = self.disk()["conflicts"]
        return conflicts

    @property
    def meta(self) -> dict[str, Any]:
        meta: dict[str, Any] = self.disk()["meta"]
        return meta

    def forget(self) -> None:
        """Throw away what is on its disk."""
        self.tell("forget")


class Tab:
    """A tab that syncs: ``advance`` lets it run to its next stop, ``run`` to the end.

    It stops before and after each request and, once it has an answer, before each transaction with its storage.
    """

    def __init__(self, phone: Phone, network: Network) -> None:
        self.phone = phone
        self.network = network
        self.number = phone.phones.new_tab()
        self.stop: dict[str, Any] = {"at": "beginning"}
        self.body = b""

    def advance(self, *, holds: bool = True) -> bool:
        """Let it run to its next stop; say whether it can go on."""
        match self.stop["at"]:
            case "beginning":
                self._take(self._ask("begin", limit=self.phone.page, schema=self.phone.schema))
            case "network":
                status, text = self.network(self.body)
                self._take(self._ask("reply", status=status, text=text, holds=holds))
                self._only_these_fail(status)
            case "storage":
                self._take(self._ask("goOn"))
        return bool(self.stop["at"] != "end")

    def run(self) -> None:
        """Let it run to the end, stopping nowhere but for the network."""
        while self.advance(holds=False):
            pass

    def kill(self) -> None:
        """Let go of it where it stands: nothing more of it reaches the disk."""
        if self.stop["at"] != "beginning":
            self._tell("close")

    def _take(self, stop: dict[str, Any]) -> None:
        self.stop = stop
        if stop["at"] == "network":
            self.body = self.phone.phones.line()
        elif stop["at"] == "end":
            self._tell("close")

    def _only_these_fail(self, status: int) -> None:
        """A sync fails if no answer came or the server let the phone not in, and else never."""
        error = self.stop.get("error")
        if self.stop["at"] == "end":
            expected = None if status == 200 else status
            assert (error and error["status"]) == expected, (status, error)

    def _tell(self, what: str) -> None:
        self.phone.phones.tell(what, self.phone.now_ms(), tab=self.number)

    def _ask(self, what: str, **asked: Any) -> Any:
        return self.phone.ask(what, tab=self.number, **asked)
