"""A long shelf: a tap touches what it changes, and what is not seen is not made before what is."""

from __future__ import annotations

import time

import pytest
from playwright.sync_api import Page, expect
from tests.bench.full_shelf import SHELF
from tests.phone.conftest import claim, worker_ready
from tests.support.words import text

from broodshelf.web.parcels import ONLINE

pytestmark = pytest.mark.browser

WATCH = """() => {
  window.drawn = [];
  for (const task of document.querySelectorAll('main .task')) {
    const name = task.querySelector('.open').textContent;
    new MutationObserver(() => window.drawn.push(name)).observe(
      task, { attributes: true, childList: true, characterData: true, subtree: true });
  }
}"""
"""Note the task of every change inside one that stands on the page now."""
FIRST_MADE = """new MutationObserver((_, watcher) => {
  const made = document.querySelectorAll('main .task, .diary > li').length;
  if (!made) return;
  window.firstMade = made;
  watcher.disconnect();
}).observe(document, { childList: true, subtree: true });"""
"""How many tasks or lines of the diary there were when there were the first."""
AT_FIRST_PAINTING = """new MutationObserver((_, watcher) => {
  if (!document.querySelector('main .tube-set')) return;
  watcher.disconnect();
  requestAnimationFrame(() => {
    window.atFirst = [...document.querySelectorAll('main section')].map((each) => each.getAttribute('aria-label'));
  });
}).observe(document, { childList: true, subtree: true });"""
"""What else stood on a colony's page when its tubes were painted first."""

SEE_ALL = """async () => {
  const frame = () => new Promise((next) => requestAnimationFrame(next));
  for (let calm = 0, before = -1; calm < 10; calm = document.body.scrollHeight === before ? calm + 1 : 0) {
    before = document.body.scrollHeight;
    scrollTo(0, before);
    await frame();
  }
  scrollTo(0, 0);
}"""
"""Scroll to the end of a list that grows, and back."""
MADE_BY_A_TAP = """() => new Promise((seen) => {
  const tasks = (nodes) => [...nodes].filter((each) => each.matches?.('.task'));
  new MutationObserver((changes, watcher) => {
    if (!changes.some((each) => tasks(each.removedNodes).length)) return;
    watcher.disconnect();
    const made = changes.flatMap((each) => tasks(each.addedNodes));
    seen(made.map((task) => task.querySelector('strong').textContent));
  }).observe(document.querySelector('main'), { childList: true, subtree: true });
  document.querySelector('main .task .actions .main').click();
})"""
"""Do the first task; tell whose tasks come at the moment when it goes."""

NUMBER_LINES = "() => document.querySelectorAll('.done-list li').forEach((line, i) => { line.number = i; })"
NUMBERS = "() => [...document.querySelectorAll('.done-list li')].map((line) => line.number ?? null)"
SOURCES = """(online) => performance.getEntriesByType('resource')
  .filter(({ name }) => name.includes('/static/') && name.endsWith('.js'))
  .filter(({ name }) => !online.some((end) => name.endsWith(end)))
  .map((each) => each.workerFinalSourceType)"""
TRIED = """async () => {
  const { saving } = await import(`/static/${document.body.dataset.build}/signals/saving.js`);
  await new Promise((done) => saving.subscribe(({ syncing }) => syncing || done()));
}"""
"""Wait until no try to send is under way."""
WAITED_FOR = """async (count) => {
  const from = (name) => import(`/static/${document.body.dataset.build}/${name}.js`);
  const [{ openStore }, { rowsOf }, { syncNow }, { uuid7 }] = await Promise.all(
    ['signals/session', 'signals/rows', 'signals/sync', 'database/ids'].map(from));
  const [colony] = rowsOf('colony');
  await openStore().enqueue(Array.from({ length: count }, () => ({
    kind: 'note', id: uuid7(), set: { colony_id: colony.id, happened_at: new Date().toISOString(), text: 'counted' },
  })));
  let waited = 0;
  const listen = EventTarget.prototype.addEventListener;
  EventTarget.prototype.addEventListener = function (...told) {
    if (this instanceof IDBRequest && told[0] === 'success') waited += 1;
    return listen.apply(this, told);
  };
  await syncNow();
  EventTarget.prototype.addEventListener = listen;
  const left = await openStore().unsent();
  return [left.length, waited];
}"""
"""Send so many logs; tell how many are left, and how many requests to the disk somebody waited for one by one."""
DONE_LATELY = """async () => {
  const [{ doneLately }, { eventsByColony }] = await Promise.all(
    ['round', 'lists'].map((name) => import(`/static/${document.body.dataset.build}/care/${name}.js`)));
  const HOUR_MS = 3_600_000;
  const now = 100 * HOUR_MS;
  const row = (id, kind, hours, set) => [
    id, { id, kind, rev: 1, set, state: 'synced', happened_ms: now - hours * HOUR_MS }];
  const rows = new Map([
    row('yesterday', 'feeding', 13, { colony_id: 'a' }),
    row('older', 'feeding', 11, { colony_id: 'a' }),
    row('new', 'check', 2, { colony_id: 'a' }),
    row('repeat', 'feeding', 3, { colony_id: 'a', possible_repeat: true }),
    row('put off', 'later', 1, { colony_id: 'b', need: 'sugar', until: '2026-05-01T12:00:00.000+00:00' }),
    row('at a place', 'climate', 1, { place_id: 'p' }),
  ]);
  return doneLately(eventsByColony(rows).values(), now).map(({ id }) => id);
}"""


def full_shelf(page: Page, server) -> None:
    claim(page, server)
    worker_ready(page)
    page.evaluate(SHELF, [4, 40])
    page.context.set_offline(True)
    page.goto(f"{server.url}/#/round")
    expect(page.locator("main .task").first).to_be_visible()
    page.evaluate(SEE_ALL)
    expect(page.get_by_role("region", name=text("round-next"))).to_be_visible()
    expect(page.get_by_role("region", name=text("round-done"), exact=True)).to_be_visible()


def test_a_tap_on_a_task_draws_only_the_tasks_of_its_colony_anew(phone, server):
    page = phone()
    full_shelf(page, server)
    tapped = page.locator("main .task", has=page.locator(".actions .main")).last
    colony = tapped.locator("strong").inner_text()
    done = page.locator(".done-list li")
    before = done.count()
    page.evaluate(WATCH)
    tapped.locator(".actions .main").click()
    expect(done).to_have_count(before + 1)
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()

    assert page.locator("main .task").count() > 5
    assert [name for name in page.evaluate("() => window.drawn") if colony not in name] == []


def test_a_long_round_is_made_as_far_as_it_is_looked_at(phone, server):
    page = phone()
    full_shelf(page, server)
    tasks = page.locator("main .task")
    everything = tasks.count()
    page.add_init_script(FIRST_MADE)
    page.reload()
    expect(tasks.nth(5)).to_be_attached()
    page.wait_for_timeout(1000)  # as long as it took to make all of them
    unseen = everything - tasks.count()
    page.evaluate(SEE_ALL)

    assert page.evaluate("() => window.firstMade") == 3
    assert unseen > 5
    expect(tasks).to_have_count(everything)


def test_a_colony_is_painted_before_its_plan_and_its_diary_are_made(phone, server):
    page = phone()
    full_shelf(page, server)
    page.add_init_script(FIRST_MADE + AT_FIRST_PAINTING)
    page.goto(f"{server.url}/?#/shelf")  # another address, so that the app starts
    page.locator("main a[href^='#/colony/']").first.click()
    expect(page.locator(".diary > li").nth(6)).to_be_attached()

    assert page.evaluate("() => window.atFirst") == []
    assert page.evaluate("() => window.firstMade") < 12  # a page ends with an instant


def test_a_tap_makes_no_task_of_another_colony(phone, server):
    page = phone()
    full_shelf(page, server)
    page.reload()
    expect(page.locator("main .task").nth(5)).to_be_attached()
    colony = (
        page.locator("main .task", has=page.locator(".actions .main")).first.locator("strong").inner_text()
    )
    made = page.evaluate(MADE_BY_A_TAP)

    assert [name for name in made if name != colony] == []


def test_what_is_done_stands_newest_first_and_another_log_leaves_its_lines_as_they_are(phone, server):
    page = phone()
    full_shelf(page, server)
    lines = page.locator(".done-list li")
    at_first = lines.count()
    page.locator("main .task .actions .main").first.click()
    expect(lines).to_have_count(at_first + 1)
    before = at_first + 1
    page.evaluate(NUMBER_LINES)
    page.locator("main .task .actions .main").first.click()
    expect(lines).to_have_count(before + 1)
    after_a_log = page.evaluate(NUMBERS)
    page.locator(".toast button").click()
    expect(lines).to_have_count(before)

    assert after_a_log == [None, *range(before)]
    assert page.evaluate(NUMBERS) == [*range(before)]


@pytest.mark.without_worker
def test_what_was_done_lately_is_told_whatever_it_was_and_a_task_put_off_is_not(phone, server):
    """Twelve hours back; what may be a repeat is among it, what happened at a place, too."""
    page = phone()
    page.goto(server.url)

    assert page.evaluate(DONE_LATELY) == ["at a place", "new", "repeat", "older"]


def test_a_start_takes_its_modules_from_the_cache_without_asking_the_worker_for_each(phone, server):
    """``workerFinalSourceType``: Resource Timing with the routes of Service Workers."""
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.context.set_offline(True)
    page.reload()
    expect(page.get_by_role("heading", name="Amber")).to_be_visible()
    # the cards of the colony ask for theirs a moment later
    page.wait_for_function(f"(online) => ({SOURCES})(online).length > 8", arg=[*ONLINE])

    assert {*page.evaluate(SOURCES, [*ONLINE])} == {"cache"}


def test_the_answer_to_a_full_outbox_waits_for_no_more_requests_than_that_to_a_few_logs(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    (left_of_few, for_few), (left_of_many, for_many) = (page.evaluate(WAITED_FOR, n) for n in (3, 300))

    assert (left_of_few, left_of_many) == (0, 0)
    assert for_many < for_few + 100


def test_where_no_server_is_heard_the_taps_of_some_seconds_are_one_try(phone, server):
    page = phone()
    full_shelf(page, server)
    expect(page.get_by_text(text("saving-offline"))).to_be_visible()
    tries: list[str] = []
    page.on("request", lambda request: tries.append(request.url))
    page.clock.install()
    page.clock.pause_at(time.time() + 1)  # however slow the machine is: its time goes when it is told to
    done = page.locator("main .task .actions .main").first
    for count in (1, 2, 3):
        done.click()
        expect(page.get_by_text(text("saving-waiting", count=count))).to_be_visible()
        page.clock.run_for(1400)
        page.evaluate(TRIED)
    page.clock.run_for(1600)
    page.evaluate(TRIED)

    assert tries.count(f"{server.url}/api/sync") == 1
