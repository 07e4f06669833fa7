"""When the phone itself fails: damaged entries, dead handles, a full disk, a login page, an app that is too old."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect
from tests.phone.between import between
from tests.phone.conftest import claim, worker_ready
from tests.phone.test_story import go, online_again
from tests.support.kept_shelf import KeptShelf
from tests.support.server import Server
from tests.support.words import text

pytestmark = pytest.mark.browser

PUT = """async (entry) => {
  const name = (await indexedDB.databases()).map((d) => d.name).find((n) => n.startsWith('broodshelf-'));
  const db = await new Promise((done) => { indexedDB.open(name).onsuccess = (e) => done(e.target.result); });
  const tx = db.transaction('outbox', 'readwrite');
  tx.objectStore('outbox').put(entry);
  await new Promise((done) => { tx.oncomplete = done; });
  db.close();
}"""
FAIL = """([name, times]) => {
  const real = IDBDatabase.prototype.transaction;
  let left = times;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    if (mode === 'readwrite' && left > 0) { left -= 1; throw new DOMException('made by a test', name); }
    return real.call(this, stores, mode, options);
  };
}"""

LEFT_IN_A_WRITE = """async () => {
  const build = document.body.dataset.build;
  const { currentDevice, databaseOf, inTransaction } = await import(`/static/${build}/database/open.js`);
  const name = databaseOf(await currentDevice());
  let times = 0;
  let begun;
  const under_way = new Promise((done) => { begun = done; });
  const written = inTransaction(name, ['meta'], 'readwrite', async (tx) => {
    times += 1;
    while (times === 1) {
      await tx.objectStore('meta').count();
      begun();
    }
    return `written at try ${times}`;
  });
  await under_way;
  dispatchEvent(new PageTransitionEvent('pagehide', { persisted: true }));
  const db = await new Promise((done) => { indexedDB.open(name).onsuccess = (e) => done(e.target.result); });
  const later = new Promise((done) => { db.transaction('meta', 'readwrite').oncomplete = () => done('went on'); });
  const soon = (what) => Promise.race([what, new Promise((done) => setTimeout(() => done('held up'), 5000))]);
  const other = await soon(later);
  const meanwhile = await Promise.race([written, 'not yet']);
  dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
  return [other, meanwhile, await soon(written)];
}"""
"""The page is left, as browsers tell it, while it writes without end, and shown again after another page wrote."""


def one_tap(page: Page) -> None:
    protein = page.get_by_role("article").filter(has_text=text("need-protein"))
    protein.get_by_role("button", name=text("round-as-suggested")).click()


@pytest.mark.parametrize("lost", ["op", "n", "set"])
def test_a_damaged_entry_is_shown_and_exported_and_holds_nothing_up(phone, server, lost, tmp_path):
    page = phone()
    claim(page, server)
    entry = {
        "op_id": "x",
        "n": 1,
        "state": "waiting",
        "op": {"op_id": "x", "kind": "note", "id": "y", "set": {"text": "hm"}, "made_at": 1},
    }
    (entry["op"] if lost == "set" else entry).pop(lost)
    if lost == "n":
        entry["op"].pop("id")
    page.evaluate(PUT, entry)
    page.reload()
    page.get_by_role("link", name=text("saving-attention", count=1)).click()
    expect(
        page.get_by_role("heading", name=text("attention-title"))
    ).to_be_visible()  # no tasks of the round any more
    expect(page.get_by_role("article")).to_contain_text(text("saving-state-attention"))
    with page.expect_download() as download:
        page.get_by_role("button", name=text("attention-export")).click()
    download.value.save_as(tmp_path / "kept.json")
    go(page, server, "#/round")
    one_tap(page)

    assert [e["op_id"] for e in json.loads((tmp_path / "kept.json").read_text())["entries"]] == ["x"]
    expect(page.get_by_role("region", name=text("round-done"))).to_contain_text(text("saving-state-synced"))
    expect(page.get_by_role("link", name=text("saving-attention", count=1))).to_be_visible()


def test_a_dead_handle_is_opened_anew_and_the_log_is_saved(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    page.evaluate(FAIL, ["InvalidStateError", 1])
    one_tap(page)

    expect(page.get_by_role("region", name=text("round-done"))).to_contain_text(text("saving-state-synced"))


def test_a_full_disk_is_said_and_the_need_stays_until_it_is_saved(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    worker_ready(page)
    page.context.set_offline(True)
    page.evaluate(FAIL, ["QuotaExceededError", 1])
    one_tap(page)
    expect(page.get_by_text(text("saving-not-saved"))).to_be_visible()
    expect(page.get_by_role("article").filter(has_text=text("need-protein"))).to_be_visible()
    one_tap(page)
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    online_again(page)


def test_an_app_that_is_too_old_says_so_and_keeps_its_logs(phone, server):
    page = phone()
    claim(page, server)
    too_old = {"status": 426, "code": "upgrade_required", "detail": text("problem-title-upgrade-required")}
    go(page, server, "#/round")
    with between(page, "/api/sync", too_old):
        one_tap(page)
        expect(page.get_by_role("alert")).to_contain_text(text("problem-title-upgrade-required"))
        expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    online_again(page)


@pytest.fixture
def proxied(tmp_path: Path, claimed_shelf: KeptShelf) -> Iterator[Server]:
    made = Server(claimed_shelf.copy_to(tmp_path / "proxied"), "tests.support.serve_here").start()
    yield made
    made.stop()


CACHED = """async () => {
  const texts = [];
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) texts.push(await (await cache.match(request)).text());
  }
  return texts;
}"""
INSTALLED = """async () => {
  for (let tries = 0; tries < 100; tries += 1) {
    const found = await navigator.serviceWorker.getRegistration();
    if (found?.active) return 'active';
    if (!found && tries > 5) return (await caches.keys()).length ? 'left something' : 'nothing';
    await new Promise((done) => setTimeout(done, 100));
  }
  return 'never settled';
}"""


def test_a_login_page_in_between_is_never_stored_as_the_app_and_loses_nothing(phone, proxied):
    page = phone()
    claim(page, proxied)
    worker_ready(page)
    login = proxied.data / "login-page"
    login.write_text("/")
    go(page, proxied, "#/round")
    page.reload()
    one_tap(page)
    expect(page.get_by_role("alert")).to_contain_text(text("saving-asks-sign-in"))
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    assert not any("Sign in to the network" in text for text in page.evaluate(CACHED))
    login.unlink()
    online_again(page)


@pytest.mark.parametrize(("behind_a_login", "installed"), [(True, "nothing"), (False, "active")])
def test_a_shell_with_a_login_page_in_it_is_not_installed_at_all(phone, proxied, behind_a_login, installed):
    page = phone()
    build = page.request.get(f"{proxied.url}/healthz").json()["build"]
    if behind_a_login:
        (proxied.data / "login-page").write_text(f"/static/{build}/parcels/screens.txt")
    page.goto(proxied.url)
    expect(page.get_by_role("button", name=text("start-join-one"))).to_be_visible()

    assert page.evaluate(INSTALLED) == installed


def test_a_page_that_is_left_while_it_writes_lets_other_pages_write_and_writes_when_it_is_shown_again(
    phone, server
):
    """WebKit may keep a page that is left with its transaction open: the next one then never opened."""
    page = phone()
    claim(page, server)

    assert page.evaluate(LEFT_IN_A_WRITE) == ["went on", "not yet", "written at try 2"]
