"""The phone's files, read, joined and packed once for all apps that one process makes: most of what an app costs.

So is the archive of them that an app keeps for pages that are still open after an update.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from pathlib import Path

import pytest

from broodshelf import app
from broodshelf.records.home import folder as data_folder
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
        patch.setattr(app, "Shell", shell)
        for module, name in ((app, "phones_files"), (app, "_words")):
            patch.setattr(module, name, cache(getattr(module, name)))
        _pack_builds_once(patch)
        yield


def _pack_builds_once(patch: pytest.MonkeyPatch) -> None:
    """Keep the files of a build as the same archive each time, and know it again without unpacking it."""
    pack, is_sound = cache(past_builds._packed), data_folder._is_sound
    known: set[bytes] = set()

    def packed(of: Shell) -> bytes:
        known.add(pack(of))
        return pack(of)

    patch.setattr(past_builds, "_packed", packed)
    patch.setattr(data_folder, "_is_sound", lambda path: path.read_bytes() in known or is_sound(path))
