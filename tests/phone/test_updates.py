"""New builds while the app is in use: no page mixes two, nothing is missing, no log is lost.

Longer than 300 lines because one build server and its three builds serve every test here.
"""

from __future__ import annotations

import json
import sqlite3
import time
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import groupby
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Playwright, expect
from tests.phone.conftest import NO_BACKGROUND_SYNC, claim, open_colony, opening, worker_ready
from tests.phone.test_story import go
from tests.support.chromium import launched
from tests.support.kept_shelf import KeptShelf
from tests.support.server import Server
from tests.support.words import text

pytestmark = pytest.mark.browser

READY = text("frame-banner-update")
LOAD = """(() => {
  const seen = JSON.parse(sessionStorage.getItem('seen') ?? '[]');
  const builds = new Set();
  new PerformanceObserver((list) => {
    for (const { name } of list.getEntries()) {
      const build = new URL(name).pathname.match(/^.static.([0-9a-f]{16})./)?.[1];
      if (build) builds.add(build);
    }
    sessionStorage.setItem('seen', JSON.stringify([...seen, [...builds]]));
  }).observe({ type: 'resource', buffered: true });
  addEventListener('load', async () => {
    while (!document.querySelector('nav.bottom')) await new Promise((shown) => setTimeout(shown, 20));
    const build = document.body.dataset.build;
    const { log } = await import(`/static/${build}/signals/actions.js`);
    for (let i = 0; localStorage.getItem('keep_logging'); i += 1) {
      const text = `${build} ${crypto.randomUUID()}`;
      await log('note', { colony_id: localStorage.getItem('keep_logging'), text });
      await logged(text);
      await new Promise((later) => setTimeout(later, 30));
    }
  });
})()"""
"""In each page: note the builds of all files that it fetches, one list a load, and log all the time while asked to."""
LOOK = "() => navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => 'looked', () => 'failed')"
SETTLED = """async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  for (let tries = 0; registration.installing && tries < 500; tries += 1) {
    await new Promise((done) => setTimeout(done, 20));
  }
  return caches.keys();
}"""
"""Wait until no build is being fetched; return the copies on this phone."""
COPIES = "() => caches.keys()"
HELD_UP = """if (!sessionStorage.getItem('held')) {
  sessionStorage.setItem('held', 'yes');
  const { register } = ServiceWorkerContainer.prototype;
  ServiceWorkerContainer.prototype.register = async function (...how) {
    await new Promise((go) => { window.goOn = go; });
    return register.apply(this, how);
  };
}"""
"""The first load of a page stops where it would begin to listen for new workers."""
DEAF = """if (!sessionStorage.getItem('deaf')) {
  sessionStorage.setItem('deaf', 'yes');
  ServiceWorker.prototype.postMessage = () => undefined;
}"""
"""The first load of a page cannot make a waiting worker take over; Chromium at times leaves one waiting by itself."""


@pytest.fixture(scope="module")
def side_by_side(playwright: Playwright) -> Iterator[Browser]:
    """A Chromium whose tabs run at the same time, each in a process of its own."""
    with launched(playwright) as browser:
        yield browser


@pytest.fixture
def phone(side_by_side: Browser) -> Iterator[Callable[[], Page]]:
    with opening(side_by_side) as opened:
        yield lambda: opened(NO_BACKGROUND_SYNC)


@pytest.fixture
def server(tmp_path: Path, claimed_shelf: KeptShelf) -> Iterator[Server]:
    made = Server(claimed_shelf.copy_to(tmp_path / "data"), "tests.support.serve_here").start()
    yield made
    made.stop()


def on_build(page: Page, build: str) -> None:
    expect(page.locator(f"body[data-build='{build}']")).to_be_attached()


def notes(server: Server) -> Counter[str]:
    with sqlite3.connect(server.data / "broodshelf.sqlite3") as connection:
        rows = connection.execute("SELECT fields FROM records WHERE kind = 'note'").fetchall()
    connection.close()
    return Counter(json.loads(row[0])["text"] for row in rows)


def wait_for_logs(page: Page, logged: list[str], build: str, count: int) -> None:
    """Let the tabs log on until so many were made by pages of a build."""
    deadline = time.monotonic() + 60
    while sum(text.startswith(build) for text in logged) < count:
        assert time.monotonic() < deadline, f"only {len(logged)} logs in a minute"
        page.wait_for_timeout(10)  # lets the binding's messages in; the state waited for is the count


def test_two_tabs_log_through_two_updates_with_no_mix_no_gap_and_no_loss(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    logged: list[str] = []
    refused: list[str] = []
    page.context.expose_binding("logged", lambda _source, text: logged.append(text))
    page.context.on(
        "response",
        lambda answer: refused.append(answer.url) if "/static/" in answer.url and not answer.ok else None,
    )
    page.context.add_init_script(LOAD)
    page.evaluate("() => localStorage.setItem('keep_logging', location.hash.split('/').pop())")
    tabs = [page, page.context.new_page()]
    for tab in tabs:
        tab.goto(f"{server.url}/?{id(tab)}#/round")
    builds = [server.build()]
    wait_for_logs(page, logged, builds[0], 10)
    for name in ("B", "C"):
        builds.append(server.become(name))
        assert page.evaluate(LOOK) == "looked"
        for tab in tabs:
            expect(tab.get_by_text(READY)).to_be_visible()
            on_build(tab, builds[-2])  # nothing changes before a person says so
        page.get_by_role("button", name=text("frame-banner-use-it")).click()
        for tab in tabs:
            on_build(tab, builds[-1])
        wait_for_logs(page, logged, builds[-1], 10)
    page.evaluate("() => localStorage.removeItem('keep_logging')")
    for tab in tabs:
        expect(tab.get_by_text(text("saving-synced"))).to_be_visible()
    stored = notes(server)

    assert len(set(builds)) == 3
    for tab in tabs:
        loads = tab.evaluate("() => JSON.parse(sessionStorage.getItem('seen'))")
        assert [each for each, _ in groupby(loads)] == [[b] for b in builds]  # an update may reload once more
    assert refused == []
    assert page.evaluate(COPIES) == [f"shell-{builds[-1]}"]
    assert set(logged) <= set(stored)
    assert set(stored.values()) == {1}
    assert {text.split()[0] for text in stored} == set(builds)


def test_an_update_that_cannot_be_fetched_whole_waits_and_one_that_was_works_offline(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    first = server.build()
    server.kill()
    assert page.evaluate(LOOK) == "failed"
    page.reload()
    on_build(page, first)

    (server.data / "another-build").write_text("B")
    server.start()
    second = server.build()
    (server.data / "login-page").write_text(f"/static/{second}/parcels/screens.txt")
    assert page.evaluate(LOOK) == "looked"
    assert page.evaluate(SETTLED) == [f"shell-{first}"]
    expect(page.get_by_text(READY)).to_be_hidden()

    (server.data / "login-page").unlink()
    page.evaluate(LOOK)
    expect(page.get_by_text(READY)).to_be_visible()
    server.kill()
    page.get_by_role("button", name=text("frame-banner-use-it")).click()
    on_build(page, second)
    go(page, server, "#/round")
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    page.reload()
    on_build(page, second)
    server.start()
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def test_a_newer_update_takes_the_place_of_one_that_waits_also_for_a_tab_that_opens_in_between(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    first = server.build()
    for name in ("B", "C"):
        last = server.become(name)
        page.evaluate(LOOK)
        expect(page.get_by_text(READY)).to_be_visible()
        assert f"shell-{last}" in page.evaluate(SETTLED)
    tab = page.context.new_page()
    tab.goto(server.url)
    on_build(tab, first)
    expect(tab.get_by_text(READY)).to_be_visible()
    tab.get_by_role("button", name=text("frame-banner-use-it")).click()

    for each in (page, tab):
        on_build(each, last)
    assert page.evaluate(COPIES) == [f"shell-{last}"]


def test_a_page_taken_over_while_it_still_loads_comes_again_in_the_build_of_its_worker(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    first = server.build()
    tab = page.context.new_page()
    tab.add_init_script(HELD_UP)
    tab.goto(server.url)
    tab.wait_for_function("() => window.goOn !== undefined")
    last = server.become("B")
    page.evaluate(LOOK)
    page.get_by_role("button", name=text("frame-banner-use-it")).click()
    on_build(page, last)
    on_build(tab, first)
    tab.evaluate("() => window.goOn()")

    on_build(tab, last)
    expect(tab.get_by_text(READY)).to_be_hidden()


def test_a_new_version_waits_in_a_tab_where_somebody_writes_and_comes_when_that_is_saved(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    first = server.build()
    tab = page.context.new_page()
    open_colony(tab, server)
    tab.get_by_role("button", name=text("event-kind-note"), exact=True).click()
    field = tab.get_by_role("dialog").get_by_role("textbox").first
    field.fill("Two of them carry a lar")
    last = server.become("B")
    page.evaluate(LOOK)
    page.get_by_role("button", name=text("frame-banner-use-it")).click()
    on_build(page, last)
    expect(tab.get_by_text(text("frame-banner-update-waits"))).to_be_attached()
    expect(field).to_have_value("Two of them carry a lar")
    on_build(tab, first)
    field.press_sequentially("va.")
    tab.get_by_role("dialog").get_by_role("button", name=text("log-keep-note")).click()
    on_build(tab, last)

    expect(tab.get_by_text("Two of them carry a larva.")).to_be_visible()
    expect(tab.get_by_text(text("saving-synced"))).to_be_visible()
    assert notes(server) == {"Two of them carry a larva.": 1}


def test_use_it_now_loads_the_page_again_also_when_the_new_worker_is_left_waiting(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.add_init_script(DEAF)
    page.reload()
    last = server.become("B")
    page.evaluate(LOOK)
    page.get_by_role("button", name=text("frame-banner-use-it")).click()
    page.wait_for_function("() => !ServiceWorker.prototype.postMessage.toString().includes('undefined')")
    page.get_by_role("button", name=text("frame-banner-use-it")).click()

    on_build(page, last)


def test_a_page_of_an_old_build_without_a_copy_gets_its_own_screens_from_the_server(chromium, server):
    context = chromium.new_context(service_workers="block")
    page = context.new_page()
    claim(page, server)
    first = server.build()
    assert server.become("B") != first
    fetched: list[tuple[str, bool]] = []
    page.on("response", lambda answer: fetched.append((answer.url, answer.ok)))
    page.evaluate("() => { location.hash = '#/larder'; }")
    expect(page.get_by_role("heading", name=text("frame-nav-larder")).first).to_be_visible()
    static = [(url, ok) for url, ok in fetched if "/static/" in url]

    assert any(url.endswith("/screens/larder.js") for url, _ in static)
    assert all(ok and f"/static/{first}/" in url for url, ok in static)
    context.close()


def test_a_server_that_moves_on_while_a_build_is_fetched_leaves_no_copy_with_two_builds(phone, server):
    page = phone()
    page.goto(server.url)
    expect(page.get_by_role("button", name=text("start-join-one"))).to_be_visible()
    worker_ready(page)
    first, other = server.build(), "0123456789abcdef"
    said = page.evaluate(
        """async ([build, other]) => {
          const { install } = await import(`/static/${build}/worker/shell.js`);
          const ahead = { files: ['/'], parcels: [], decoder: '/' };
          return install(other, ahead).then(() => 'installed', (error) => error.message);
        }""",
        [first, other],
    )

    assert said == f"/ is of another build than {other}"
    assert page.evaluate(COPIES) == [f"shell-{first}"]


def test_a_login_page_in_the_browsers_own_cache_does_not_stop_an_update_for_ever(phone, server):
    page = phone()
    page.goto(server.url)
    worker_ready(page)
    asked = page.evaluate(
        """async () => {
          const { build } = document.body.dataset;
          const { install } = await import(`/static/${build}/worker/shell.js`);
          const file = `/static/${build}/main.js`;
          const asked = [];
          const real = window.fetch;
          window.fetch = (request) => {
            asked.push(request.cache);
            const held = request.cache === 'default' && request.url.endsWith(file);
            return held ? Promise.resolve(new Response('Sign in')) : real(request);
          };
          await install(build, { files: [file], parcels: [], decoder: '/' });
          const kept = await (await caches.open(`shell-${build}`)).match(file);
          return [asked.toSorted(), (await kept.text()).includes('Sign in')];
        }"""
    )

    assert asked == [["default", "no-cache", "reload"], False]


def test_an_app_that_stays_open_looks_for_a_new_version_when_it_comes_into_view_once_an_hour(phone, server):
    page = phone()
    page.clock.install()
    claim(page, server)
    worker_ready(page)
    page.evaluate(
        """() => {
          window.looked = 0;
          const update = ServiceWorkerRegistration.prototype.update;
          ServiceWorkerRegistration.prototype.update = function () { window.looked += 1; return update.call(this); };
        }"""
    )
    into_view = "() => document.dispatchEvent(new Event('visibilitychange'))"
    page.evaluate(into_view)
    assert page.evaluate("() => looked") == 0
    server.become("B")
    page.clock.fast_forward("01:00:01")
    page.evaluate(into_view)

    expect(page.get_by_text(READY)).to_be_visible()
    assert page.evaluate("() => looked") == 1
