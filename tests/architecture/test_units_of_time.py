"""An hour and a day in ms are said once a language: in ``model/gauges.py``, for the phone in ``care/rules.js``."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

TOP = Path(__file__).parents[2]
SERVER = sorted(p for p in (TOP / "server/broodshelf").rglob("*.py") if "versions" not in p.parts)
PHONE = sorted(p for p in (TOP / "pwa").rglob("*.js") if "vendor" not in p.parts)
SAID_IN = {"server/broodshelf/model/gauges.py", "pwa/care/rules.js"}
AGAIN = re.compile(
    r"(?<![\w.])(?:3600000|86400000|3\.6e6|8\.64e7)(?![\w.])"
    r"|\b60 ?\* ?60 ?\* ?1000\b|\b3600 ?\* ?1000\b|\b24 ?\* ?HOUR_MS\b|\bHOUR_MS ?\* ?24\b"
    r"|\b(?:HOUR|DAY)_MS\b(?:: Final(?:\[int\])?)? = "
)


def said_again(source: str) -> Iterator[str]:
    """Yield what says an hour or a day in ms, however it is written; digits may stand in groups."""
    for match in AGAIN.finditer(re.sub(r"(?<=\d)_(?=\d)", "", source)):
        yield match[0]


def test_an_hour_and_a_day_are_said_once_a_language():
    paths = {path.relative_to(TOP).as_posix(): path for path in (*SERVER, *PHONE)}
    found = [
        f"{name}: {said}"
        for name, path in paths.items()
        if name not in SAID_IN
        for said in said_again(path.read_text("utf-8"))
    ]

    assert paths.keys() >= SAID_IN
    assert found == []


def test_the_walk_finds_what_it_is_for():
    for line in (
        "const A_DAY = 86_400_000;",
        "KEPT_MS = 24 * 3600 * 1000",
        "at + hours * 3600000",
        "60 * 60 * 1000",
        "DAY_MS: Final = 24 * HOURS",
        "const HOUR_MS = anything;",
        "SHOWN_DAYS * 24 * HOUR_MS",
        "ms / 3.6e6",
    ):
        assert list(said_again(line)), line
    for line in ("7 * DAY_MS", "LATER_MS = HOUR_MS;", "DAY_S = 86_400", "if DAY_MS == 1:", "13_600_000"):
        assert not list(said_again(line)), line
