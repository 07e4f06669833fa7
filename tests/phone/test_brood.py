"""What a keeper sees of the nest: the days, one question with one tap, a founding that stalls, the line of time.

The species has no yearly clock, so that its plan asks on any date.
"""

from __future__ import annotations

import datetime as dt
import re
import time
from typing import Any

import pytest
from playwright.sync_api import Locator, Page, expect
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.looks import AXE, LOOKS, MEASURE, axe_findings, dress
from tests.support.words import any_of, like, text

from broodshelf.languages import say

pytestmark = pytest.mark.browser
SPECIES = "camponotus_nicobarensis"
"""Tropical, claustral; nobody measured its stages (census/groups.py)."""


def day(days_ago: float) -> str:
    return (dt.datetime.now(dt.UTC) - dt.timedelta(days=days_ago)).isoformat(timespec="milliseconds")


def add(page: Page, name: str, colony: dict[str, Any], counts: dict[float, dict[str, Any]]) -> str:
    """Make a colony with its counts by days ago, send all, and show it; return its id."""
    made = page.evaluate(
        """async ([colony, counts]) => {
          const at = (name) => import(`/static/${document.body.dataset.build}/signals/${name}.js`);
          const { keep, logAll } = await at('actions');
          const id = await keep('colony', colony);
          await logAll(counts.map((set) => ({ kind: 'count', set: { ...set, colony_id: id } })));
          await (await at('sync')).syncNow();
          return id;
        }""",
        [
            {"name": name, "queens": 1, "species_code": SPECIES, **colony},
            [{"happened_at": day(ago), **seen} for ago, seen in counts.items()],
        ],
    )
    page.goto(f"{page.url.partition('#')[0]}#/colony/{made}")
    expect(page.get_by_role("heading", name=name, exact=True)).to_be_visible()
    return str(made)


def found(page: Page) -> str:
    """A queen whose pupae are due."""
    seen = {"workers": 0, "eggs": "some", "larvae": "some", "pupae": "none"}
    return add(page, "Cedar", {"stage": "founding", "founded_on": day(54)[:10]}, {20: seen})


def card(page: Page) -> Locator:
    return page.get_by_role("region", name=text("brood-first"))


def answer(page: Page, words: str) -> None:
    card(page).get_by_role("button", name=f"{text('event-stage-pupae')}: {words}", exact=True).click()


def diary(page: Page) -> Locator:
    return page.get_by_role("region", name=text("colony-diary"))


ASKED = any_of(*(like(f"brood-ask-{when}-seen", brood="pupae") for when in ("by", "now")))
STAGES = ("eggs", "small-larvae", "large-larvae", "pupae", "workers")


def synced(page: Page) -> None:
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def test_seen_is_one_tap_offline_and_the_plan_that_comes_asks_no_more(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    found(page)
    expect(card(page)).to_contain_text(ASKED)
    page.context.set_offline(True)
    answer(page, text("brood-ask-yes"))

    expect(card(page)).to_contain_text(like("brood-ask-told", brood="pupae"))
    expect(card(page)).to_contain_text(text("brood-ask-waits"))
    expect(card(page).get_by_role("button")).to_have_count(0)
    expect(diary(page)).to_contain_text(
        text("event-counted", seen=text("event-counted-pupae", amount="seen"))
    )
    page.reload()
    expect(card(page)).to_contain_text(like("brood-ask-told", brood="pupae"))
    page.context.set_offline(False)
    synced(page)
    expect(card(page)).not_to_contain_text(like("brood-ask-told", brood="pupae"))
    expect(card(page)).not_to_contain_text(ASKED)


@pytest.mark.without_worker
def test_not_yet_puts_the_days_off_names_itself_among_the_reasons_and_is_taken_back(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    before = card(page).locator(".lead").inner_text()
    answer(page, text("brood-ask-not-yet"))
    expect(card(page)).to_contain_text(like("brood-ask-looked"))
    synced(page)
    expect(card(page).locator(".lead")).not_to_have_text(before)
    card(page).get_by_text(text("brood-why-title")).click()
    today = page.evaluate("() => new Date().toLocaleDateString([], { day: 'numeric', month: 'long' })")
    expect(card(page)).to_contain_text(
        like("brood-why-line", day=today, seen=text("brood-why-seen-none", brood="pupae"))
    )
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()

    expect(card(page)).to_contain_text(ASKED)
    synced(page)
    expect(card(page).locator(".lead")).to_have_text(before)


@pytest.mark.without_worker
def test_cannot_see_teaches_nothing_and_gives_a_week_of_peace(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    before = card(page).locator(".lead").inner_text()
    answer(page, text("brood-ask-cannot-see"))

    expect(card(page)).to_contain_text(like("brood-ask-looked"))
    expect(diary(page)).to_contain_text(text("brood-ask-remark", brood="pupae"))
    synced(page)
    expect(card(page).locator(".lead")).to_have_text(before)
    expect(card(page)).not_to_contain_text(ASKED)
    answer(page, text("brood-ask-early"))  # whoever sees them all the same says so with one tap
    expect(diary(page)).to_contain_text(
        text("event-counted", seen=text("event-counted-pupae", amount="seen"))
    )


@pytest.mark.without_worker
def test_the_keyboard_answers_and_stays_at_the_card(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    card(page).get_by_role("button", name=text("brood-ask-not-yet")).focus()
    page.keyboard.press("Enter")

    expect(card(page)).to_contain_text(like("brood-ask-looked"))
    expect(card(page).locator(":focus")).to_have_count(1)


@pytest.mark.without_worker
def test_what_the_days_begin_with_is_said_in_the_keepers_language_around_what_was_published(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    page.evaluate("() => localStorage.setItem('language', 'de')")
    page.reload()
    page.locator("details.why summary").click()

    source = say("de", "brood-source-camponotus")
    assert "Japanese Ant Image Database" in source
    expect(page.locator("details.why")).to_contain_text(source)


@pytest.mark.without_worker
def test_a_group_that_nobody_measured_is_told_so_in_plain_words(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    expect(card(page)).to_contain_text(text("brood-why-unmeasured"))
    add(
        page,
        "Birch",
        {"species_code": "lasius_niger", "stage": "growing"},
        {9: {"workers": 30, "larvae": "many"}},
    )

    grown = page.get_by_role("region", name=text("brood-next"))
    expect(grown).to_be_visible()
    expect(grown).not_to_contain_text(text("brood-why-unmeasured"))


@pytest.mark.without_worker
def test_a_founding_that_stalled_shows_what_keepers_do_in_place_of_the_days(phone, server):
    page = phone()
    claim(page, server)
    add(
        page,
        "Cedar",
        {"stage": "founding", "founded_on": day(300)[:10]},
        {60: {"workers": 0, "eggs": "some"}},
    )
    steps = page.get_by_role("region", name=text("stalled-title"))

    expect(steps.get_by_role("listitem")).to_have_count(6)
    expect(steps).to_contain_text(text("stalled-unfed-2"))
    expect(page.get_by_text(like("brood-between"))).to_have_count(0)


def test_the_line_of_time_is_drawn_offline_with_its_summary_its_marks_and_its_table(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    found(page)
    page.context.set_offline(True)
    page.reload()
    card(page).get_by_text(text("brood-open")).click()
    drawing = card(page).get_by_role("img", name=like("brood-line-summary"))

    expect(drawing.locator("path.band")).to_have_count(5)
    expect(drawing.locator("circle.hollow")).to_have_count(2)  # no pupae and no workers, twelve days ago
    expect(drawing).to_contain_text(text("brood-line-stage-small-larvae"))
    expect(card(page)).to_contain_text(drawing.get_attribute("aria-label") or "?")
    end = drawing.get_attribute("aria-label")
    card(page).get_by_role("button", name=text("brood-line-reach-182")).click()
    expect(drawing).not_to_have_attribute("aria-label", end or "")
    card(page).get_by_text(text("part-table")).click()
    table = card(page).get_by_role("table")
    expect(table.get_by_role("columnheader")).to_have_text(
        [text("brood-line-day"), *(text(f"brood-line-stage-{stage}") for stage in STAGES)]
    )
    stages = page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`))"
        ".planOf(location.hash.split('/').at(-1)).set.census.stages.length"
    )
    expect(table.locator("tbody tr")).to_have_count(stages)


@pytest.mark.without_worker
def test_the_card_the_steps_and_the_drawing_are_clean_for_axe_and_fit_in_every_look_and_width(phone, server):
    page = phone()
    claim(page, server)
    found(page)
    for part in (text("brood-why-title"), text("brood-open"), text("part-table")):
        card(page).get_by_text(part).click()
    expect(card(page).locator("tbody tr").first).to_be_visible()
    page.evaluate(AXE)
    broken = {}
    for look in LOOKS:
        for width, size in ((390, "100%"), (320, "100%"), (320, "200%")):
            dress(page, width, look, size)
            measured = page.evaluate(MEASURE)
            if (
                (rules := axe_findings(page))
                or measured["over"] > 0
                or measured["small"]
                or measured["close"]
            ):
                broken[f"{look}, {width}, {size}"] = (rules, measured)

    assert broken == {}


def ahead(days: int | str) -> re.Pattern[str]:
    """What finds in how many days workers hatch at the latest, or most likely; ``days`` may be a pattern."""
    return re.compile(
        "|".join(
            [
                text("brood-days", low=r"\d+", high=days),
                text("brood-days-about", days=days),
                text("brood-at-latest", days=days),
                text("brood-likely", best=".+", days=days, high=".+"),
            ]
        )
    )


def test_the_days_until_the_next_workers_run_down(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    open_colony(page, server)
    about = page.get_by_role("region", name=text("brood-next")).locator("p.soft").first
    expect(about).to_contain_text(ahead(r"\d+"))
    days = next(int(each) for each in ahead(r"(\d+)").search(about.inner_text()).groups() if each)
    page.context.set_offline(True)
    page.clock.set_fixed_time(time.time() + 3 * 86_400)
    page.reload()

    expect(about).to_contain_text(ahead(days - 3))
