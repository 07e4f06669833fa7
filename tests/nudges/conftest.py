"""A shelf on both databases."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from flask import Flask
from tests.nudges.support import Shelf, ms


@pytest.fixture
def shelf(bare_app: Flask, tmp_path: Path) -> Iterator[Shelf]:
    """A household in UTC on 1 May 2026 at noon, with rounds at 08:00 and 18:30."""
    made = Shelf(bare_app, ms("2026-05-01T12:00"), tmp_path)
    yield made
    made.nudger.close()
