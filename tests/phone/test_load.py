"""A long shelf: a tap touches what it changes, and what is not seen is not made before what is."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect
from tests.bench.full_shelf import SHELF
from tests.phone.conftest import claim, worker_ready

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


def full_shelf(page: Page, server) -> None:
    claim(page, server)
    worker_ready(page)
    page.evaluate(SHELF, [4, 40])
    page.context.set_offline(True)
    page.goto(f"{server.url}/#/round")
    expect(page.get_by_role("region", name="Next days")).to_be_visible()
    expect(page.get_by_role("region", name="Done", exact=True)).to_be_visible()


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
    expect(page.get_by_text("1 saved on this phone")).to_be_visible()

    assert page.locator("main .task").count() > 5
    assert [name for name in page.evaluate("() => window.drawn") if colony not in name] == []


def test_a_long_round_begins_with_what_is_seen_and_then_makes_the_rest(phone, server):
    page = phone()
    full_shelf(page, server)
    everything = page.locator("main .task").count()
    page.add_init_script(FIRST_MADE)
    page.reload()
    expect(page.locator("main .task")).to_have_count(everything)

    assert page.evaluate("() => window.firstMade") <= 5 < everything
