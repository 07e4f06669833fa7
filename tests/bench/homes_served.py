"""``broodshelf serve --workers 2`` as its keeper runs it, and what its processes and PostgreSQL's cost.

Only the policy of push hosts is another one, so that nudges may go to a push service on this machine.
"""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
import tarfile
import time
from collections.abc import Mapping
from pathlib import Path
from typing import Any, Final

from tests.support.machines import ask
from tests.support.server import ROOT, free_port

TICKS_A_S: Final = os.sysconf("SC_CLK_TCK")
START_S: Final = 180
ON_THIS_MACHINE: Final = """\
from functools import partial
import broodshelf.app as app
app.PushHosts = partial(app.PushHosts, loopback=True)
"""


def code_of(revision: str, folder: Path) -> Path:
    """Unpack an earlier revision's server and phone; return the folder for Python's path."""
    packed = subprocess.run(
        ["git", "archive", revision, "server", "pwa", "pyproject.toml"],
        cwd=ROOT, check=True, capture_output=True,
    )  # fmt: skip
    with tarfile.open(fileobj=io.BytesIO(packed.stdout)) as archive:
        archive.extractall(folder, filter="data")
    return folder / "server"


class Served:
    """The supervisor, its processes and what its log says of them. ``code``: the folder of the package."""

    def __init__(self, folder: Path, code: Path, workers: int, settings: Mapping[str, str]) -> None:
        self.port, self._log = free_port(), folder / f"served-{time.monotonic_ns()}.log"
        patched = folder / "patched"
        patched.mkdir(exist_ok=True)
        (patched / "sitecustomize.py").write_text(ON_THIS_MACHINE)
        kept = {k: v for k, v in os.environ.items() if not k.startswith(("BROODSHELF_", "PYTHON"))}
        python = {"PYTHONPATH": f"{patched}:{code}"}
        with self._log.open("wb") as log:
            self._process = subprocess.Popen(
                [sys.executable, "-m", "broodshelf.cli", "serve", "--workers", str(workers)],
                env={**kept, **python, **settings, "BROODSHELF_PORT": str(self.port)},
                cwd=code.parent, stdout=log, stderr=log,
            )  # fmt: skip

    def wait(self) -> None:
        """Wait until all processes serve."""
        until_s = time.monotonic() + START_S
        while not (self._events("all are ready") and self._answers()):
            if self._process.poll() is not None or time.monotonic() > until_s:
                raise RuntimeError(self._log.read_text()[-3000:])
            time.sleep(0.1)

    def _answers(self) -> bool:
        try:
            return ask(self.port, "GET", "/readyz").status == 200
        except OSError:
            return False

    def _events(self, event: str) -> list[dict[str, Any]]:
        lines = (json.loads(line) for line in self._log.read_text().splitlines() if line.startswith("{"))
        return [line for line in lines if line["event"] == event]

    def pids(self) -> dict[str, int]:
        """The serving processes by name."""
        return {str(line["process"]): int(line["pid"]) for line in self._events("started")}

    def failures(self) -> dict[str, int]:
        """What the log has of errors, counted."""
        found: dict[str, int] = {}
        for line in self._log.read_text().splitlines():
            if '"ERROR"' in line or '"error"' in line:
                event = str(json.loads(line).get("event"))
                found[event] = found.get(event, 0) + 1
        return found

    def stop(self) -> None:
        """Tell it to stop and wait; kill it if it does not."""
        self._process.terminate()
        try:
            self._process.wait(90)
        except subprocess.TimeoutExpired:
            self._process.kill()
            self._process.wait(10)


def processor_s(pid: int) -> float:
    """How long a process ran on a processor, with those of its children that ended; 0 for one that is gone."""
    try:
        fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    except OSError:
        return 0.0
    return sum(map(int, fields[11:15])) / TICKS_A_S


def children_of(pid: int) -> list[int]:
    """The processes that a process started and that run."""
    found = []
    for path in Path("/proc").glob("[0-9]*/stat"):
        try:
            if int(path.read_text().rpartition(")")[2].split()[1]) == pid:
                found.append(int(path.parent.name))
        except OSError:
            continue
    return found


def pss_mib(pid: int) -> float:
    """What a process takes of the memory, pages that several share divided among them."""
    for line in Path(f"/proc/{pid}/smaps_rollup").read_text().splitlines():
        if line.startswith("Pss:"):
            return int(line.split()[1]) / 1024
    return 0.0


class Meter:
    """Processor time between two readings: the serving processes by name, PostgreSQL and the phones as a whole."""

    def __init__(self, served: Served, postmaster: int, phones: list[int]) -> None:
        self._pids, self._postmaster, self._phones = served.pids(), postmaster, phones
        self._begun, self._was = time.perf_counter(), self._read()

    def _read(self) -> dict[str, float]:
        database = [self._postmaster, *children_of(self._postmaster)]
        return {
            **{name: processor_s(pid) for name, pid in self._pids.items()},
            "PostgreSQL": sum(map(processor_s, database)),
            "phones": sum(map(processor_s, self._phones)),
            "machine": _machine_s(),
        }

    def used_s(self) -> dict[str, float]:
        """Seconds of a processor since the meter was made, by process."""
        now = self._read()
        return {name: now[name] - self._was[name] for name in now}

    def shares(self) -> dict[str, float]:
        """The same in processors: 1 is one that does nothing else."""
        took_s = time.perf_counter() - self._begun
        return {name: used / took_s for name, used in self.used_s().items()}


def _machine_s() -> float:
    """What all processors of the machine worked, whoever for."""
    fields = list(map(int, Path("/proc/stat").read_text().splitlines()[0].split()[1:]))
    return (sum(fields[:8]) - fields[3] - fields[4]) / TICKS_A_S
