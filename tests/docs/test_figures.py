"""What was measured stands on one page: the others name limits that the code keeps, and no other seconds or sizes."""

from __future__ import annotations

import re

import pytest
from tests.support.examples import ROOT

FIGURE = re.compile(r"(?<![\w.,])\d[\d.,]*\s?(?:ms|s|KiB|kB|MiB|MB|GiB|GB)\b")

LIMITS = {
    "care-model/energy.md": ({"86,400 s"}, "a day, in a formula"),
    "http-api.md": (
        {"64 KiB", "1 MiB", "10 MB", "500 MB", "1 GB"},
        "how large a body may be, how much may be sent",
    ),
    "phone.md": ({"0.3 s", "3 s"}, "how long the phone gathers taps before it syncs"),
    "self-hosting.md": (
        {"75 s", "10 s", "60 s", "300 s", "3 s", "6 s", "30 s", "1 GB"},
        "when a connection is ended, how long a stop takes at most, what a household may keep of pictures",
    ),
    "sensors.md": ({"1 s", "4 MiB", "64 KiB"}, "when a broker is tried again, how much is taken at once"),
    "sync.md": ({"1 MiB", "10 s"}, "how large a request may be, how long plans may take within one"),
}
"""By page: the limits of the product that it names, and what they limit."""


def pages() -> list[str]:
    """The pages that say what is: not what was measured, decided or changed."""
    docs = ROOT / "docs"
    names = (page.relative_to(docs).as_posix() for page in docs.glob("**/*.md"))
    return sorted(name for name in names if not re.match(r"measurements\.md|decisions/|changes/", name))


@pytest.mark.parametrize("page", pages())
def test_a_page_names_limits_and_leaves_what_was_measured_to_the_measurements(page: str):
    """What is found here belongs to a section of docs/measurements.md, or to ``LIMITS`` if the code keeps it."""
    limits, _ = LIMITS.get(page, (set(), ""))

    assert set(FIGURE.findall((ROOT / "docs" / page).read_text())) == limits


def test_what_is_looked_for_is_found():
    text = "a plan takes 0.8 ms, a search 1,250 s and 3.6MB; 5 sorts, 12 shelves, 2 kinds"

    assert FIGURE.findall(text) == ["0.8 ms", "1,250 s", "3.6MB"]
