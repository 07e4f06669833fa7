"""How tests are gathered; the fixtures that every room's tests share are those of ``tests.support.fixtures``."""

from __future__ import annotations

import gc
import importlib
import logging
import os
from collections.abc import Generator, Iterator

import pytest
from tests.support.in_memory import in_memory


def pytest_configure(config: pytest.Config) -> None:
    """Let ``tmp_path`` lie in memory, unless somebody says where; give the fixtures to who runs tests.

    Who only hands them out to workers needs nothing of what they import, which is more than a second.
    """
    if folder := in_memory():
        os.environ.setdefault("PYTEST_DEBUG_TEMPROOT", str(folder))
    if hasattr(config, "workerinput") or not config.getoption("numprocesses", None):
        config.pluginmanager.register(importlib.import_module("tests.support.fixtures"))


def pytest_sessionstart() -> None:
    """Do not let Python look for garbage while tests are gathered, and seldom later.

    At its usual pace that is a fifth of what a plan costs.
    """
    gc.disable()
    gc.set_threshold(50_000, 20, 100)


def pytest_collection_finish() -> None:
    """Let it pass over what stays for the whole run: modules and tests."""
    gc.freeze()
    gc.enable()


@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol() -> Generator[None, object, object]:
    """Take away where a command that a test ran began to log to.

    That stream ends with its test: each later line of any test of this worker would tell at length that it is closed.
    """
    loggers = logging.getLogger(), logging.getLogger("broodshelf")
    before = [(each, [*each.handlers], each.level, each.propagate) for each in loggers]
    try:
        return (yield)
    finally:
        for logger, handlers, level, spreads in before:
            logger.handlers, logger.propagate = handlers, spreads
            if logger.level != level:
                logger.setLevel(level)


@pytest.hookimpl(wrapper=True, tryfirst=True)  # before what is left out is, and after the order was drawn
def pytest_collection_modifyitems(items: list[pytest.Item]) -> Iterator[None]:
    """Mark what runs once more, on the second database, and what wants a browser; let workers begin with long tests.

    A worker that came to one of a minute at the end would let the others wait.
    """
    for item in items:
        if "postgresql" in item.name.rpartition("[")[2].rstrip("]").split("-"):
            item.add_marker(pytest.mark.again)
        if {"playwright", "firefox"} & {*getattr(item, "fixturenames", ())}:
            item.add_marker(pytest.mark.browser)
    yield
    if workers := os.environ.get("PYTEST_XDIST_WORKER_COUNT"):
        items[:] = long_ones_first(items, int(workers))


def long_ones_first(items: list[pytest.Item], workers: int) -> list[pytest.Item]:
    """Return the tests so that each of as many equal shares as there are workers begins with its share of long ones."""
    marked = [item for item in items if item.get_closest_marker("long")]
    others = [item for item in items if not item.get_closest_marker("long")]

    def share(of: list[pytest.Item], worker: int) -> list[pytest.Item]:
        return of[len(of) * worker // workers : len(of) * (worker + 1) // workers]

    return [item for worker in range(workers) for of in (marked, others) for item in share(of, worker)]
