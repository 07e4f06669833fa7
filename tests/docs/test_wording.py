"""Pages say what is. What was, and since when, stands in docs/changes and docs/decisions."""

from __future__ import annotations

import calendar
import re

import pytest
from tests.support.examples import ROOT

MONTHS = "|".join(calendar.month_name[1:])
DIARY = re.compile(
    rf"\b(?:no longer(?! than)|used to be|used to have|by now|not yet made|has come|(?:was|were) tried|works today"
    rf"|is mended|are mended|on \d+ (?:{MONTHS})|\(\d+ (?:{MONTHS}) \d+\))",
    re.IGNORECASE,
)


def pages() -> list[str]:
    """The pages about the present. The measurements have a day at each section, by their nature."""
    found = [*ROOT.glob("*.md"), *ROOT.glob("docs/**/*.md"), *ROOT.glob("fixtures/**/*.md")]
    names = (page.relative_to(ROOT).as_posix() for page in found)
    return sorted(
        name for name in names if not re.match(r"docs/(?:measurements\.md|decisions/|changes/)", name)
    )


@pytest.mark.parametrize("page", pages())
def test_a_page_says_what_is_and_not_what_was(page: str):
    text = (ROOT / page).read_text()
    said = [text[max(0, found.start() - 40) : found.end() + 40] for found in DIARY.finditer(text)]

    assert not said


@pytest.mark.parametrize(
    "sentence",
    [
        "How far it has come (30 November 2026): 248,152 operations.",
        "On 27 November 2026 nothing broke.",
        "each a saved case by now",
        "The cookie is no longer sent.",
        "Top-two sampling was tried.",
    ],
)
def test_the_sentences_of_a_diary_are_found(sentence: str):
    assert DIARY.search(sentence)
