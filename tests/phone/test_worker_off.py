"""The way out when a build on the phones is broken: the worker leaves, the log stays."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, worker_ready
from tests.support.words import text

pytestmark = pytest.mark.browser

LEFT = """async () => {
  for (let tries = 0; tries < 200; tries += 1) {
    const workers = await navigator.serviceWorker.getRegistrations();
    const copies = await caches.keys();
    if (!workers.length && !copies.length) return true;
    await new Promise((done) => setTimeout(done, 50));
  }
  return false;
}"""


def test_with_the_worker_off_the_copy_leaves_the_phone_and_the_log_stays(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    server.kill()
    page.goto(f"{server.url}/#/round")
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    server.settings["BROODSHELF_WORKER"] = "off"
    server.start()

    page.evaluate("() => navigator.serviceWorker.ready.then((r) => r.update()).then(() => null, () => null)")
    expect(
        page.locator("body[data-worker=off]")
    ).to_be_attached()  # the worker has sent the page away from itself
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    assert page.evaluate(LEFT)

    page.reload()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    expect(page.get_by_role("region", name=text("round-done"))).to_be_visible()
    assert page.evaluate(LEFT)  # the page did not register it again
