"""What a push service has taken and the database does not know yet: one line a message, in a file of this machine.

Between a service's answer and our mark in the database lies a commit, and under load a wait for its turn. A
process that dies there would send the message again; whoever takes its claim over reads here that it arrived.
The write is one system call, so a killed process loses nothing of it.
"""

from __future__ import annotations

import os
import secrets
from collections.abc import Collection
from contextlib import suppress
from pathlib import Path
from threading import Lock
from typing import Final

from ...model.gauges import DAY_MS
from ..data_folder import make_folder

FOLDER: Final = "taken"
LINES_PER_FILE: Final = 20_000
KEPT_MS: Final = DAY_MS
"""Claims run out after a minute; a day leaves room for clocks that were set."""


class TakenFiles:
    """One process's file among those of all processes that share a data folder. Safe to use from several threads."""

    def __init__(self, data: Path) -> None:
        self._folder = data / FOLDER
        make_folder(self._folder)
        self._file: int | None = None
        self._lines = 0
        self._lock = Lock()

    def taken(self, delivery_id: str) -> None:
        """Note that a message was taken."""
        with self._lock:
            if self._file is None or self._lines >= LINES_PER_FILE:
                last, self._file, self._lines = self._file, self._begin(), 0
                if last is not None:
                    os.close(last)  # only now that there is another: its number is soon another file's
            os.write(self._file, f"{delivery_id}\n".encode())
            self._lines += 1

    def among(self, delivery_ids: Collection[str]) -> set[str]:
        """Return which of these messages any process of this machine has seen taken."""
        found: set[str] = set()
        if delivery_ids:
            asked = {each.encode(): each for each in delivery_ids}
            for path in self._folder.iterdir():
                found |= {asked[line] for line in asked.keys() & set(_read(path).split())}
        return found

    def tidy(self, now_ms: int) -> None:
        """Forget files that nobody has written to for a day."""
        for path in self._folder.iterdir():
            with suppress(
                FileNotFoundError, IsADirectoryError, PermissionError
            ):  # gone already, or none of ours
                if now_ms - path.stat().st_mtime * 1000 > KEPT_MS:
                    path.unlink()

    def close(self) -> None:
        """Let go of the file; what it says stays."""
        with self._lock:
            if self._file is not None:
                os.close(self._file)
                self._file = None

    def _begin(self) -> int:
        path = self._folder / secrets.token_hex(8)
        return os.open(path, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)


def _read(path: Path) -> bytes:
    """Return what a file holds; nothing for one that another process tidied up this moment, or that is none of ours.

    A line that was damaged is no message's id, so at worst a message is sent again.
    """
    try:
        return path.read_bytes()
    except OSError:
        return b""
