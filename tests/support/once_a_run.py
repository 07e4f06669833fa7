"""What is made once for all processes of a test run, which lie beside each other in one folder."""

from __future__ import annotations

import fcntl
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest


def folder_of_the_run(factory: pytest.TempPathFactory, config: pytest.Config) -> Path:
    """Return the folder that the workers of a run share, or that of a run in one process."""
    own = factory.getbasetemp()
    return own.parent if hasattr(config, "workerinput") else own


@contextmanager
def alone(file: Path) -> Iterator[None]:
    """Keep every other process out of the same block until this one leaves it or ends."""
    with file.open("a") as held:
        fcntl.flock(held, fcntl.LOCK_EX)
        yield


def made_once(path: Path, make: Callable[[Path], object]) -> Path:
    """Return ``path``, a file or folder which the first process that asks lets ``make`` write; the others wait.

    It is made under another name, beside: what a process left that was killed is not taken for the whole.
    """
    with alone(path.with_name(f"{path.name}.lock")):
        if not path.exists():
            begun = path.with_name(f"{path.name}.begun")
            make(begun)
            begun.rename(path)
    return path
