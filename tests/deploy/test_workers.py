"""``broodshelf serve --workers N`` as it is started by hand: real processes on one port."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.support.machines import ask, wait_for
from tests.support.server import ROOT, free_port


class Supervised:
    """The supervisor and what its log says of the processes."""

    def __init__(self, folder: Path, **settings: str) -> None:
        self.port = free_port()
        self.log = folder / "log"
        kept = {k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")}
        ours = {"BROODSHELF_DATA": str(folder / "data"), "BROODSHELF_PORT": str(self.port), **settings}
        with self.log.open("wb") as log:
            self.process = subprocess.Popen(
                [sys.executable, "-m", "broodshelf.cli", "serve", "--workers", "2"],
                env={**kept, **ours}, cwd=ROOT, stdout=log, stderr=log,
            )  # fmt: skip

    def events(self, event: str) -> list[dict[str, object]]:
        """The lines of the log about one sort of event."""
        lines = (json.loads(line) for line in self.log.read_text().splitlines() if line.startswith("{"))
        return [line for line in lines if line["event"] == event]

    def pids(self, name: str) -> list[int]:
        """The processes that were started under a name, in order."""
        return [int(str(line["pid"])) for line in self.events("started") if line["process"] == name]

    def serves(self) -> bool:
        """Whether all are ready and one of them answers; an error with what was said if the supervisor gave up."""
        assert self.process.poll() is None, self.log.read_text()[-3000:]
        return bool(self.events("all are ready")) and self.answers()

    def answers(self) -> bool:
        """Whether somebody answers on the port that requests may be sent."""
        try:
            return ask(self.port, "GET", "/readyz").status == 200
        except OSError:
            return False


@pytest.fixture
def supervised(tmp_path) -> Iterator[Supervised]:
    """Two workers and a nudger on SQLite, all of them serving."""
    made = Supervised(tmp_path)
    try:
        wait_for(made.serves)
        yield made
    finally:
        made.process.kill()
        made.process.wait(20)
        wait_for(
            lambda: not any(_runs(pid) for each in made.events("started") for pid in [int(str(each["pid"]))])
        )


def _runs(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] != "Z"
    except FileNotFoundError:
        return False


@pytest.mark.long
def test_a_worker_that_dies_is_started_anew_and_the_other_goes_on_answering(supervised):
    for pid in supervised.pids("worker 1")[:1]:
        os.kill(pid, signal.SIGKILL)
    wait_for(lambda: len(supervised.pids("worker 1")) == 2)
    assert ask(supervised.port, "GET", "/api/nothing").status == 404  # by the other one, or by the new one
    wait_for(lambda: len(supervised.events("serving")) == 3)

    assert [line["process"] for line in supervised.events("ended")] == ["worker 1"]
    assert supervised.log.read_text().count("/#/claim/") == 1  # one link, however many serve


@pytest.mark.long
def test_told_to_stop_all_end_and_so_they_do_when_the_supervisor_is_killed(supervised):
    begun = [pid for name in ("worker 1", "worker 2", "nudger") for pid in supervised.pids(name)]
    assert all(_runs(pid) for pid in begun)
    supervised.process.send_signal(signal.SIGTERM)

    assert supervised.process.wait(60) == 0
    assert not any(_runs(pid) for pid in begun)
    assert len(supervised.events("stopping")) == 2


@pytest.mark.long
def test_a_setting_that_no_start_can_use_ends_the_supervisor_with_a_sentence(tmp_path):
    (tmp_path / "data").write_text("a file where the folder belongs")
    made = Supervised(tmp_path)

    assert made.process.wait(120) == 2
    assert "broodshelf: " in made.log.read_text()
