"""What a page says to stand on docs/measurements.md is what a command of tests/bench writes there."""

from __future__ import annotations

import re

import pytest
from tests.bench.measurements import PAGE, sections_of
from tests.bench.what_is_measured import MEASUREMENTS
from tests.support.examples import ROOT

LINK = re.compile(r"measurements\.md\)(.*?)(?:[.;]\s|$)", re.MULTILINE)
NAME = re.compile(r"`([a-z]+(?:-[a-z]+)*)`")


def named_in(text: str) -> set[str]:
    """The sections that a page names: words in backticks after a link, to the end of the sentence."""
    return {name for rest in LINK.findall(text) for name in NAME.findall(rest)}


def pages_that_name_sections() -> list[str]:
    found = [*ROOT.glob("*.md"), *ROOT.glob("docs/**/*.md")]
    return sorted(page.relative_to(ROOT).as_posix() for page in found if named_in(page.read_text()))


def test_the_names_after_a_link_are_found():
    text = "See [measurements](../measurements.md), `plan` and `phone-sync` (`python -m tests.bench.a`). Not `this`."

    assert named_in(text) == {"plan", "phone-sync"}
    assert len(pages_that_name_sections()) > 5


@pytest.mark.parametrize("page", pages_that_name_sections())
def test_a_section_that_a_page_names_is_one_that_a_command_writes(page: str):
    assert named_in((ROOT / page).read_text()) <= {one.name for one in MEASUREMENTS}


@pytest.mark.parametrize("page", pages_that_name_sections())
def test_a_section_that_a_page_names_is_there(page: str):
    """What is missing was never run, or failed: ``python -m tests.bench.measurements NAME`` writes it."""
    assert sorted(named_in((ROOT / page).read_text()) - sections_of(PAGE.read_text()).keys()) == []
