"""The diary of a long log: every line once and in order, what waits among them, found by search, and a light page.

Longer than 300 lines because all of it is asked of one long log, and what is asked of its lines stands once.
"""

from __future__ import annotations

import time
from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
from playwright.sync_api import Browser, Page, expect
from tests.phone.conftest import add_colony, claim
from tests.phone.inside import wait_synced
from tests.phone.test_story import go, online_again
from tests.support.kept_shelf import KeptShelf, kept_shelf
from tests.support.server import Server
from tests.support.words import first_count, text

from broodshelf.model.gauges import HOUR_MS

pytestmark = pytest.mark.browser

NOTES = 150
MOST_LINES = 84
"""The first page, those in view and those a screen away, as every line is at least 48 px high."""

LOG = """async ([colony, notes]) => {
  const { logAll } = await import(`/static/${document.body.dataset.build}/signals/actions.js`);
  await logAll(notes.map(([text, ms]) => ({ kind: 'note', set: {
    colony_id: colony, text, happened_at: new Date(ms).toISOString().replace('Z', '+00:00'),
  } })));
}"""
CHANGE = """async ([text, set]) => {
  const build = document.body.dataset.build;
  const { openStore } = await import(`/static/${build}/signals/session.js`);
  const { keep } = await import(`/static/${build}/signals/actions.js`);
  const row = (await openStore().snapshot()).rows.find((each) => each.set.text === text);
  await keep(row.kind, set, row.id);
}"""
DIARY = f"[aria-label={text('colony-diary')}]"
FIRST_COUNT = first_count()
LINES = f"""() => [...document.querySelectorAll('{DIARY} .words')].map((each) => each.textContent)
  .filter((words) => words !== '{FIRST_COUNT}')"""
"""Without what the colony was said to have when it was added."""
ALL_READ = f"""() => [...document.querySelectorAll('{DIARY} > button, {DIARY} > [style*=height]')]
  .map((each) => each.getBoundingClientRect())
  .every((box) => box.top >= innerHeight || box.bottom < 0)"""
"""Nothing in view waits to be read: neither the end of the last page nor the empty space of another."""
SCROLL = """(step_px) => {
  const before = scrollY;
  scrollBy({ top: step_px, behavior: 'instant' });
  return scrollY !== before;
}"""
THROUGH = f"""async (step_px) => {{
  const frame = () => new Promise(requestAnimationFrame);
  const views = [];
  do {{
    await frame(); // what goes out of reach is let go of after a frame
    await frame();
    for (const began = performance.now(); !({ALL_READ})(); await frame()) {{
      if (performance.now() > began + 15_000) throw new Error('what is in view was never read');
    }}
    views.push(({LINES})());
  }} while (({SCROLL})(step_px));
  return views;
}}"""
"""Scroll to the end; tell the lines that stood there after each step."""
LET_GO_AS_IT_GOES = """
window.IntersectionObserver = class extends IntersectionObserver {
  constructor(tell, options) {
    super((seen, self) => {
      tell(seen, self);
      if (!seen.at(-1).isIntersecting) window.letGo?.();
    }, options);
  }
};"""
READ_AGAIN_AND_HOLD = """async () => {
  const build = document.body.dataset.build;
  const { openStore } = await import(`/static/${build}/signals/session.js`);
  const { stored } = await import(`/static/${build}/signals/rows.js`);
  const store = openStore();
  const slice = store.slice.bind(store);
  const held = new Promise((done) => { window.letGo = done; });
  let asked;
  const begun = new Promise((done) => { asked = done; });
  store.slice = async (...which) => {
    const read = await slice(...which);
    asked();
    await held;
    return read;
  };
  stored.value += 1;
  await begun;
}"""
"""All pages in reach are read from the disk again, and nothing comes of it until the first of them goes."""
NOW_MS = round(time.time() * 1000)
WHEN = [NOW_MS + (i - 400) * 6 * HOUR_MS for i in range(NOTES)]
"""From 100 days ago to 63 days ago: none of them is held in memory."""


def log_notes(page: Page, server: Server, when: list[int] = WHEN) -> None:
    """Claim a shelf, log ``note 0`` to ``note n`` at its colony and sync them."""
    claim(page, server)
    page.evaluate(LOG, [page.url.rpartition("/")[2], [[f"note {i}", ms] for i, ms in enumerate(when)]])
    wait_synced(page)


@pytest.fixture(scope="module")
def long_shelf(chromium: Browser, claimed_shelf: KeptShelf, tmp_path_factory) -> KeptShelf:
    """A shelf whose colony has the long log."""
    return kept_shelf(chromium, tmp_path_factory.mktemp("long"), log_notes, claimed_shelf)


@pytest.fixture
def long_server(tmp_path, long_shelf: KeptShelf) -> Iterator[Server]:
    """A server with that shelf."""
    made = Server(long_shelf.copy_to(tmp_path / "long")).start()
    yield made
    made.stop()


def long_log(page: Page, server: Server) -> str:
    """Be the phone of the long log and open its colony. Return its id."""
    claim(page, server)
    return open_log(page, server, NOTES)


def open_log(page: Page, server: Server, notes: int) -> str:
    """Open the colony whose diary was just logged, or was when the shelf was made. Return its id."""
    colony_id = page.url.rpartition("/")[2]
    go(page, server, f"#/colony/{colony_id}")
    page.reload()  # what was just logged is on the disk alone
    expect(page.get_by_text(f"note {notes - 1}", exact=True)).to_be_visible()
    return colony_id


def scrolled_through(page: Page, step_px: int = 500) -> list[str]:
    """Scroll to the end of the diary and return the lines in the order in which they came, each once."""
    views: list[list[str]] = page.evaluate(THROUGH, step_px)
    for lines in views:
        assert len(lines) == len(set(lines)), "a line stands in two pages"
        assert len(lines) <= MOST_LINES
    return list(dict.fromkeys(line for lines in views for line in lines))


def iso(ms: int) -> str:
    return datetime.fromtimestamp(ms / 1000, UTC).isoformat()


def newest_first(numbers: range | list[int]) -> list[str]:
    return [f"note {i}" for i in sorted(numbers, reverse=True)]


@pytest.mark.without_worker
def test_scrolling_brings_every_line_once_and_in_order_and_the_page_stays_light(phone, long_server):
    page = phone()
    long_log(page, long_server)
    down = scrolled_through(page)
    expect(page.get_by_text("note 0", exact=True)).to_be_in_viewport()
    middle = page.get_by_text("note 75", exact=True)
    away = middle.count()
    scrolled_through(page, -500)

    assert down == newest_first(range(NOTES))
    assert away == 0
    expect(page.get_by_text(f"note {NOTES - 1}", exact=True)).to_be_attached()
    expect(page.get_by_text("note 0", exact=True)).to_have_count(0)


@pytest.mark.without_worker
def test_each_day_is_named_once_though_a_page_ends_within_it(phone, long_server):
    page = phone()
    page.set_viewport_size({"width": 390, "height": 2400})  # many pages at once
    long_log(page, long_server)
    expect(page.get_by_text(f"note {NOTES - 30}", exact=True)).to_be_attached()
    days = (
        page.get_by_role("region", name=text("colony-diary"))
        .get_by_role("heading", level=3)
        .all_text_contents()
    )

    assert len(days) > 7
    assert len(days) == len(set(days))


@pytest.mark.without_worker
def test_the_next_page_also_comes_by_a_button_where_the_view_is_not_watched(phone, long_server):
    page = phone()
    page.add_init_script(
        "window.IntersectionObserver = class { observe() {} disconnect() {} unobserve() {} };"
    )
    long_log(page, long_server)
    expect(page.get_by_text("note 139", exact=True)).to_have_count(0)
    page.get_by_role("button", name=text("diary-earlier")).press("Enter")
    expect(page.get_by_text("note 139", exact=True)).to_be_attached()
    expect(page.get_by_role("button", name=text("diary-earlier"))).to_be_focused()

    assert page.evaluate(LINES) == newest_first(range(139, NOTES))


@pytest.mark.without_worker
def test_what_happened_in_one_instant_is_not_torn_apart_at_the_end_of_a_page(phone, server):
    page = phone()
    log_notes(page, server, [WHEN[0] + (i // 7) * HOUR_MS for i in range(70)])
    open_log(page, server, 70)
    lines = scrolled_through(page)

    assert sorted(lines) == sorted(newest_first(range(70)))
    hours = [int(line.split()[1]) // 7 for line in lines]
    assert hours == sorted(hours, reverse=True)


def test_what_waits_on_the_phone_stands_where_it_belongs_on_every_page(phone, long_server):
    """Offline: a log of long ago, one moved from the first page to the last, one moved the other way, one voided."""
    page = phone()
    colony_id = long_log(page, long_server)
    page.context.set_offline(True)
    page.evaluate(LOG, [colony_id, [["found in a notebook", WHEN[60] + HOUR_MS]]])
    for note, change in (
        ("note 149", {"happened_at": iso(WHEN[0] - HOUR_MS)}),
        ("note 3", {"happened_at": iso(NOW_MS - HOUR_MS)}),
        ("note 40", {"gone": True}),
        ("note 20", {"text": "note 20, put right"}),
    ):
        page.evaluate(CHANGE, [note, change])
    expect(page.get_by_text("note 3", exact=True)).to_be_attached()
    expected = newest_first(range(NOTES))
    expected.remove("note 40")
    expected.remove("note 149")
    expected.remove("note 3")
    expected[expected.index("note 20")] = "note 20, put right"
    expected.insert(expected.index("note 60"), "found in a notebook")
    expected = ["note 3", *expected, "note 149"]

    assert scrolled_through(page) == expected
    online_again(page)
    page.evaluate("() => scrollTo(0, 0)")
    expect(page.get_by_text("note 3", exact=True)).to_be_attached()
    expect(page.get_by_text("note 149", exact=True)).to_have_count(0)  # its end is let go of first
    assert scrolled_through(page) == expected


@pytest.mark.without_worker
def test_a_page_that_is_read_again_while_it_goes_out_of_reach_stays_away(phone, long_server):
    """What its disk answers in the same moment in which it went comes too late."""
    page = phone()
    page.add_init_script(LET_GO_AS_IT_GOES)
    long_log(page, long_server)
    scrolled_through(page)
    page.evaluate(READ_AGAIN_AND_HOLD)
    page.evaluate("() => scrollTo({ top: 0, behavior: 'instant' })")
    expect(page.get_by_text(f"note {NOTES - 1}", exact=True)).to_be_attached()
    page.wait_for_function(f"() => ({LINES})().every((words) => words.split(' ')[1] >= {NOTES // 2})")


@pytest.mark.without_worker
def test_a_void_takes_a_line_off_a_later_page_and_undo_brings_it_back(phone, long_server):
    page = phone()
    long_log(page, long_server)
    line = page.get_by_role("listitem").filter(has=page.get_by_text("note 110", exact=True))
    while not line.count():
        assert page.evaluate(SCROLL, 500), "the end of the diary, and no such line"
        page.wait_for_function(ALL_READ)
    line.get_by_role("button", name=text("diary-void")).click()
    expect(line).to_have_count(0)
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    expect(line).to_have_count(0)
    page.get_by_role("button", name=text("round-undo")).click()

    expect(line).to_have_count(1)


@pytest.mark.without_worker
def test_a_search_finds_lines_of_all_pages_and_says_when_there_is_nothing(phone, long_server):
    page = phone()
    long_log(page, long_server)
    search = page.get_by_label(text("diary-search"))
    search.fill("note 1")
    found = [i for i in range(NOTES) if f"note {i}".startswith("note 1")]
    expect(page.get_by_text("note 149", exact=True)).to_be_attached()
    assert scrolled_through(page) == newest_first(found)

    search.fill("note 7")
    expect(page.get_by_text("note 7", exact=True)).to_be_attached()
    expect(page.get_by_role("region", name=text("colony-diary")).get_by_role("listitem")).to_have_count(11)
    search.fill("no such thing")
    expect(page.get_by_text(text("diary-none"))).to_be_visible()
    search.fill("")
    expect(page.get_by_text("note 149", exact=True)).to_be_attached()


@pytest.mark.without_worker
def test_a_kind_is_shown_alone(phone, long_server):
    page = phone()
    colony_id = long_log(page, long_server)
    page.evaluate(
        """async ([colony, when]) => {
          const { log } = await import(`/static/${document.body.dataset.build}/signals/actions.js`);
          await log('count', { colony_id: colony, workers: 12, happened_at: when });
        }""",
        [colony_id, iso(WHEN[5])],
    )
    page.get_by_role("combobox", name=text("diary-kind")).select_option(text("event-kind-count"))
    expect(page.get_by_text(text("event-counted", seen=text("event-workers", count=12)))).to_be_visible()

    assert page.evaluate(LINES) == [text("event-counted", seen=text("event-workers", count=12))]
    page.get_by_role("combobox", name=text("diary-kind")).select_option(text("event-kind-feeding"))
    expect(page.get_by_text(text("diary-none"))).to_be_visible()


@pytest.mark.without_worker
def test_a_diary_holds_one_colony_alone(phone, long_server):
    page = phone()
    long_log(page, long_server)
    go(page, long_server, "#/colony/new")
    add_colony(page, "Birch")

    expect(page.get_by_text(FIRST_COUNT)).to_be_visible()
    assert page.evaluate(LINES) == []
