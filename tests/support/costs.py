"""What each test costs: processor seconds with those of every process that it started, and seconds of the clock.

``pytest -p tests.support.costs --costs FILE`` appends a line of JSON to the file for each part (``setup``, ``call``,
``teardown``) of each test: ``test``, ``part``, ``processor_s``, ``wall_s``. ``python -m tests.support.costs FILE``
prints the sum, the costliest tests and the costliest files. With a run's workers beside each other each counts its
own processes, by a control group of its own; where the system gives none (not Linux, or no right to make one), what
a process costs counts when it ends and its starter waits for it.
"""

from __future__ import annotations

import json
import os
import sys
import time
from collections import defaultdict
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

GROUPS = Path("/sys/fs/cgroup")
GROUP_OF_A_WORKER = "TESTS_CONTROL_GROUP"
"""The variable that tells servers, which another process forks, whose they are."""


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--costs", metavar="FILE", help="append what each test costs to this file")


def pytest_configure(config: pytest.Config) -> None:
    if config.getoption("--costs"):
        config.pluginmanager.register(Costs(Path(config.getoption("--costs"))), "costs-of-tests")


class Costs:
    """Measures the parts of each test in this process."""

    def __init__(self, file: Path) -> None:
        self._file = file
        self._processor_s = own_group() or by_what_was_waited_for

    @pytest.hookimpl(wrapper=True, tryfirst=True)
    def pytest_runtest_setup(self, item: pytest.Item) -> Iterator[None]:
        yield from self._measured(item, "setup")

    @pytest.hookimpl(wrapper=True, tryfirst=True)
    def pytest_runtest_call(self, item: pytest.Item) -> Iterator[None]:
        yield from self._measured(item, "call")

    @pytest.hookimpl(wrapper=True, tryfirst=True)
    def pytest_runtest_teardown(self, item: pytest.Item) -> Iterator[None]:
        yield from self._measured(item, "teardown")

    def _measured(self, item: pytest.Item, part: str) -> Iterator[None]:
        processor_s, wall_s = self._processor_s(), time.perf_counter()
        try:
            yield
        finally:
            line = {
                "test": item.nodeid,
                "part": part,
                "processor_s": round(self._processor_s() - processor_s, 4),
                "wall_s": round(time.perf_counter() - wall_s, 4),
            }
            with self._file.open("a") as file:
                file.write(f"{json.dumps(line)}\n")


def join(group: Path) -> None:
    """Move this process to a control group."""
    (group / "cgroup.procs").write_text(str(os.getpid()))


def own_group() -> Callable[[], float] | None:
    """Move this process, and so all that it will start, to a group of its own; return what reads its seconds."""
    name = f"broodshelf-tests-{os.getpid()}"
    for parent, file, of_a_second in (("cpuacct", "cpuacct.usage", 1e9), ("", "cpu.stat", 1e6)):
        group = GROUPS / parent / name
        try:
            if not (GROUPS / parent / "cgroup.procs").exists():
                continue
            group.mkdir()
            join(group)
        except OSError:
            continue
        os.environ[GROUP_OF_A_WORKER] = str(group)
        return lambda group=group, file=file, of=of_a_second: _last_number(group / file) / of  # type: ignore[misc]
    return None


def _last_number(file: Path) -> int:
    """Read the file's number, or the one of its first line."""
    return int(file.read_text().split("\n")[0].split()[-1])


def by_what_was_waited_for() -> float:
    """Return the seconds of this process and of its children that are over."""
    return sum(os.times()[:4])


def report(file: Path, most: int = 20) -> str:
    """Return the sums of a file of costs as text."""
    tests: defaultdict[str, list[float]] = defaultdict(lambda: [0.0, 0.0])
    for line in file.read_text().splitlines():
        told = json.loads(line)
        tests[told["test"]][0] += told["processor_s"]
        tests[told["test"]][1] += told["wall_s"]
    files: defaultdict[str, list[float]] = defaultdict(lambda: [0.0, 0.0])
    for test, (processor_s, wall_s) in tests.items():
        files[test.partition("::")[0]][0] += processor_s
        files[test.partition("::")[0]][1] += wall_s
    lines = [f"{len(tests)} tests: {sum(p for p, _ in tests.values()):.0f} s of processors"]
    for title, costs in (("tests", tests), ("files", files)):
        lines.append(f"\nThe costliest {title}: seconds of processors, of the clock")
        dearest = sorted(costs.items(), key=lambda cost: -cost[1][0])[:most]
        lines += [f"{processor_s:8.2f} {wall_s:8.2f}  {name}" for name, (processor_s, wall_s) in dearest]
    return "\n".join(lines)


if __name__ == "__main__":
    print(report(Path(sys.argv[1]), *map(int, sys.argv[2:])))  # noqa: T201
