"""Parts that are fetched when they are first shown."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

TWICE = """async () => {
  const { lazy } = await import(`/static/${document.body.dataset.build}/components/lazy.js`);
  const { h, render } = await import('preact');
  const place = () => document.body.appendChild(document.createElement('div'));
  const Part = () => h('p', { class: 'came' });
  let ask, come;
  const asked = new Promise((done) => { ask = done; });
  const module = new Promise((done) => { come = () => done({ Part }); });
  const Lazy = lazy(() => { ask(); return module; }, 'Part');
  render(h(Lazy), place());
  await asked;
  render(h(Lazy), place());
  come(); // before the second one could ask for it
}"""


def test_a_part_that_comes_in_the_moment_in_which_another_place_shows_it_stands_in_both(phone, server):
    page = phone()
    page.goto(server.url)
    page.evaluate(TWICE)

    expect(page.locator(".came")).to_have_count(2)
