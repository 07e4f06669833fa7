"""Firefox, end to end: a real push, encrypted by the server and decrypted by the browser, when something is due."""

from __future__ import annotations

import json
from collections.abc import Iterator

import pytest
from tests.support.browser_push import BrowserPush
from tests.support.firefox import Firefox, push_preferences
from tests.support.server import Server

pytestmark = pytest.mark.browser

NOTIFICATIONS = (
    "navigator.serviceWorker.ready.then((r) => r.getNotifications())"
    ".then((all) => all.map((n) => ({title: n.title, body: n.body, items: n.data?.items?.length ?? 0})))"
)


@pytest.fixture
def service() -> Iterator[BrowserPush]:
    with BrowserPush() as made:
        yield made


@pytest.fixture
def nudging(tmp_path) -> Iterator[Server]:
    made = Server(tmp_path / "data", "tests.support.serve_here").start()
    yield made
    made.stop()


def claim(browser: Firefox, server: Server) -> None:
    browser.goto(f"{server.url}/#/claim/{server.claim_code()}")
    browser.type("person", "Mira")
    browser.press("Claim it")
    browser.type("name", "Amber")
    browser.press("Add the colony")
    browser.shows("The plan")
    browser.shows("All synced")


def test_a_test_nudge_reaches_firefox_and_its_worker_says_so(service, nudging):
    with Firefox(push_preferences(service.port)) as browser:
        claim(browser, nudging)
        browser.js("(location.hash = '#/settings')")
        browser.press("Tell me when something is due")
        browser.shows("Nudges come to this phone.")
        browser.press("Send a test")
        browser.shows("It came. Nudges work on this phone.")
        shown = browser.until(f"{NOTIFICATIONS}.then((all) => all.length && all)")

        assert shown[0]["title"] == "Nudges work on this phone"
        sent = {name.lower(): value for name, value in service.taken[0].items()}
        assert sent["content-encoding"] == "aes128gcm"
        assert sent["authorization"].startswith("vapid ")


def test_a_leak_flagged_on_one_phone_nudges_the_other_keeper_at_once_and_the_flagger_not(service, nudging):
    with Firefox(push_preferences(service.port)) as listener, Firefox({}) as flagger:
        claim(listener, nudging)
        # quiet hours would hold an urgent nudge back; this household has none
        listener.js(
            "import(`/static/${document.body.dataset.build}/signals/actions.js`).then(async (a) => {"
            " const s = await import(`/static/${document.body.dataset.build}/signals/shelf.js`);"
            " const house = s.rowsOf('household')[0];"
            " await a.keep('household', {quiet_from: null, quiet_to: null}, house.id); })"
        )
        listener.js("(location.hash = '#/settings')")
        listener.press("Tell me when something is due")
        listener.shows("Nudges come to this phone.")
        flagger.goto(f"{nudging.url}/")
        flagger.press("Join a shelf that exists")
        code = flagger.until("document.querySelector('.code')?.innerText")
        listener.js(
            "fetch('/api/pairings/approve', {method: 'POST', headers: {'Content-Type': 'application/json'},"
            f" body: JSON.stringify({{code: {json.dumps(code)}, person_name: 'Jon'}})}}).then((r) => r.status)"
        )
        flagger.shows("The round")
        flagger.js("(location.hash = '#/shelf')")
        flagger.press("Amber")
        flagger.press("Something is wrong")
        flagger.press("Report it")
        shown = listener.until(f"{NOTIFICATIONS}.then((all) => all.length && all)", 40)

        assert "Amber" in shown[0]["title"] + shown[0]["body"]
        assert flagger.js(NOTIFICATIONS) == []
