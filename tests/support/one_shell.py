"""The phone's files, read, joined, compressed and put into an archive once for all apps that one process makes.

That is most of what an app costs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from pathlib import Path

import pytest

from broodshelf.languages.phones_file import phones_files
from broodshelf.web import compact, past_builds
from broodshelf.web.shell import Shell


@contextmanager
def one_shell() -> Iterator[None]:
    """Give every app that is made in this block the same shell, as long as files and packages are the same."""

    @cache
    def made(folder: Path, extra: frozenset[tuple[str, bytes]], worker_on: bool, _packages: object) -> Shell:
        return Shell(folder, dict(extra), worker_on=worker_on)

    def shell(folder: Path, extra: Mapping[str, bytes], *, worker_on: bool = True) -> Shell:
        # a test that takes the packages away loads ``compact`` anew, and its functions are others then
        return made(folder, frozenset(extra.items()), worker_on, compact.ways)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("broodshelf.app.Shell", shell)
        patch.setattr("broodshelf.app.phones_files", cache(phones_files))
        patch.setattr(past_builds, "_packed", cache(past_builds._packed))
        yield
