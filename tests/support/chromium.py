"""Chromium as the tests start it."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from playwright.sync_api import Browser, Playwright

CHROMIUM: Final = Path("/usr/bin/chromium")
SHELL: Final = Path("/usr/lib/chromium/chromium-headless-shell")
"""The same Chromium without a window around its pages; they cost half. It shows no
notifications and knows no background sync."""
ARGUMENTS: Final = [
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync",
]  # fmt: skip
ONE_RENDERER: Final = "--renderer-process-limit=1"
"""One process for all pages of a context, as on a small phone: otherwise each page's first is thrown away unused. Not
for tabs that are to run at the same time."""


@contextmanager
def launched(
    playwright: Playwright, binary: Path = SHELL, *, more: tuple[str, ...] = (), home: Path | None = None
) -> Iterator[Browser]:
    """Start the browser and close it at the end. A missing browser is a failure, not a skip.

    ``more``: arguments besides; ``home``: whose list of authorities it reads.
    """
    assert binary.exists(), (
        f"{binary} is not installed; ./deploy/test installs it (Debian: chromium, chromium-headless-shell)."
    )
    environment = {**os.environ, "HOME": str(home)} if home else None
    browser = playwright.chromium.launch(
        executable_path=str(binary), args=[*ARGUMENTS, *more], env=environment
    )
    yield browser
    browser.close()
