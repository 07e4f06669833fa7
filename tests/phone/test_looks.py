"""Looks that can be computed or measured: contrast, targets, axe, in every look, width and text size."""

from __future__ import annotations

import itertools
import re

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, open_colony
from tests.phone.contrast import contrast, tokens
from tests.phone.looks import (
    LOOKS,
    MEASURE,
    ROOT,
    TEXT,
    WIDTHS,
    axe_findings,
    dress,
    show,
    states,
)
from tests.support.words import text

PARTS = 3
"""The states are shared among so many tests, so that they may run side by side."""
PHONE_PX = 390
MEASURED = (*((width, TEXT[0]) for width in WIDTHS), (min(WIDTHS), TEXT[1]))
"""Widths and text sizes in which places are measured; looks differ in colours alone."""
BODY_TEXT = 4.5  # WCAG 2.2, success criterion 1.4.3, level AA
GRAPHICS = 3.0  # WCAG 2.2, success criterion 1.4.11
TEXT_PAIRS = [
    *itertools.product(("ink", "ink-soft", "act", "warn"), ("paper", "card")),
    ("ink", "sunk"), ("ink-soft", "sunk"), ("on-walnut", "walnut"), ("on-walnut-soft", "walnut"),
    ("on-act", "act"), ("on-warn", "warn"), ("paper", "ink"), ("walnut", "on-walnut"),
]  # fmt: skip
GRAPHIC_PAIRS = [
    *itertools.product(("glass-line",), ("paper", "card", "glass")),
    ("act", "glass"), ("good", "paper"), ("ink", "glass"), ("warn", "glass"),
    ("protein", "paper"), ("water", "paper"),
]  # fmt: skip


def test_the_contrast_formula_gives_the_published_extremes():
    """21:1 for black on white and 1:1 for a colour on itself: WCAG 2.2, definition of contrast ratio."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#3f7f8c", "#3f7f8c") == 1


@pytest.mark.parametrize("look", LOOKS)
def test_every_pair_of_colours_that_meets_is_far_enough_apart(look):
    colours = tokens()[look]
    too_near = {
        f"{front} on {back}": round(found, 2)
        for pairs, least in ((TEXT_PAIRS, BODY_TEXT), (GRAPHIC_PAIRS, GRAPHICS))
        for front, back in pairs
        if (found := contrast(colours[front], colours[back])) < least
    }

    assert too_near == {}


def test_dark_by_the_phone_and_dark_by_choice_are_the_same():
    sheet = (ROOT / "pwa/style/tokens.css").read_text()
    by_phone = re.search(r":root:not\(\[data-look\]\) \{(.*?)\}", sheet, re.S)
    by_choice = re.search(r':root\[data-look="dark"\] \{(.*?)\}', sheet, re.S)
    assert by_phone and by_choice

    assert by_phone[1].split() == by_choice[1].split()


def test_dim_red_sends_out_hardly_any_green_or_blue():
    """Red means red: whatever is lit has at most half as much green and blue as red."""
    for name, colour in tokens()["red"].items():
        red, green, blue = (int(colour[i : i + 2], 16) for i in (1, 3, 5))
        assert max(green, blue) <= red / 2, name


@pytest.mark.browser
@pytest.mark.long
@pytest.mark.without_worker
@pytest.mark.parametrize("part", range(PARTS))
def test_every_screen_and_sheet_is_clean_for_axe_and_has_room_for_a_thumb_in_each_look_width_and_text_size(
    phone, server, part
):
    """Pairwise for axe: each state meets each look, each width and each text size, and these meet each other.

    Every target is at least 48 px, and 8 px from the next, and nothing runs over the edge, in every width. What is
    chosen is read whole on a phone of usual width and text.
    """
    page = phone()
    claim(page, server)
    colony_id = page.url.rpartition("/")[2]
    broken: dict[str, object] = {}
    cramped: dict[str, object] = {}
    for i, state in enumerate(states(colony_id)[part::PARTS]):
        show(page, state)
        # steps of 1 through lists of 3 and 2 meet in all six ways (3 and 2 have no common factor)
        looks = {(WIDTHS[(i + j) % 3], TEXT[(i + j) % 2]): look for j, look in enumerate(LOOKS)}
        for width, size in sorted({*looks, *MEASURED}):
            look = looks.get((width, size))
            dress(page, width, look or LOOKS[0], size)
            if look and (found := axe_findings(page)):
                broken[f"{state.name}, {look}, {width}, {size}"] = found
            if (width, size) not in MEASURED:
                continue
            measured = page.evaluate(MEASURE)
            cut = measured["cut"] if width >= PHONE_PX and size == TEXT[0] else []
            if measured["small"] or measured["close"] or cut or measured["over"] > 0:
                cramped[f"{state.name}, {width}, {size}"] = measured

    assert broken == {}
    assert cramped == {}


@pytest.mark.without_worker
@pytest.mark.browser
def test_the_keyboard_alone_opens_a_sheet_moves_the_level_and_logs_it(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-water"), exact=True).focus()
    page.keyboard.press("Enter")
    level = page.get_by_role("slider", name=text("log-level"))
    expect(level).to_be_visible()
    level.focus()
    page.keyboard.press("End")
    page.keyboard.press("ArrowDown")
    expect(level).to_have_attribute("aria-valuetext", text("event-reading-three-quarters"))
    page.get_by_role("button", name=text("log-read")).focus()
    page.keyboard.press("Enter")

    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text(
        text("event-read", level=text("event-reading-three-quarters"))
    )
    expect(page.get_by_role("dialog")).to_have_count(0)
