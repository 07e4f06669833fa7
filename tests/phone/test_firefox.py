"""Firefox, end to end: a real push, encrypted by the server and decrypted by the browser, when something is due."""

from __future__ import annotations

import datetime as dt
import json
import zoneinfo
from collections.abc import Iterator

import pytest
from tests.support.browser_push import BrowserPush
from tests.support.firefox import Phone
from tests.support.machines.keepers import noon_zone
from tests.support.server import Server
from tests.support.words import like, text

pytestmark = [pytest.mark.browser, pytest.mark.long]

NOTIFICATIONS = (
    "navigator.serviceWorker.ready.then((r) => r.getNotifications())"
    ".then((all) => all.map((n) => ({title: n.title, body: n.body, items: n.data?.items?.length ?? 0})))"
)


@pytest.fixture
def service(push_of_firefox) -> BrowserPush:
    """The push service, which has taken nothing of this test's yet."""
    push_of_firefox.taken.clear()
    return push_of_firefox


@pytest.fixture
def nudging(tmp_path) -> Iterator[Server]:
    made = Server(tmp_path / "data", "tests.support.serve_here").start()
    yield made
    made.stop()


def claim(browser: Phone, server: Server) -> None:
    browser.goto(f"{server.url}/#/claim/{server.claim_code()}")
    browser.type("person", "Mira")
    browser.press(text("start-claim-it"))
    browser.type("name", "Amber")
    browser.press(text("colony-form-add"))
    browser.shows(text("welcome-plan"))
    browser.shows(text("saving-synced"))


def test_a_test_nudge_reaches_firefox_and_its_worker_says_so(service, nudging, firefox):
    with firefox.phone() as browser:
        claim(browser, nudging)
        browser.js("(location.hash = '#/settings')")
        browser.press(text("phone-nudges-ask"))
        browser.shows(text("phone-nudges-state-on"))
        browser.press(text("phone-nudges-test"))
        browser.shows(text("phone-nudges-tested-heard"))
        shown = browser.until(f"{NOTIFICATIONS}.then((all) => all.length && all)")

        assert shown[0]["title"] == text("nudge-test-title")
        sent = {name.lower(): value for name, value in service.taken[0].items()}
        assert sent["content-encoding"] == "aes128gcm"
        assert sent["authorization"].startswith("vapid ")


def test_a_firefox_that_is_offline_fetches_nothing_also_over_a_connection_that_it_had_kept(nudging, firefox):
    with firefox.phone() as browser:
        browser.goto(f"{nudging.url}/")
        fetched = "fetch('/healthz', {cache: 'no-store'}).then((answer) => answer.text(), () => null)"
        assert browser.js(fetched)
        browser.offline(True)
        while_offline = browser.js(fetched)
        browser.offline(False)

        assert while_offline is None
        assert browser.js(fetched)


def keep_household(browser: Phone, values: dict[str, object]) -> None:
    browser.js(
        "import(`/static/${document.body.dataset.build}/signals/actions.js`).then(async (actions) => {"
        " const { rowsOf } = await import(`/static/${document.body.dataset.build}/signals/rows.js`);"
        f" await actions.keep('household', {json.dumps(values)}, rowsOf('household')[0].id); }})"
    )


def test_what_is_due_at_the_care_hour_is_told_once_and_not_again_when_it_was_done(service, nudging, firefox):
    with firefox.phone() as browser:
        claim(browser, nudging)
        zone = noon_zone()  # nothing is told again on another day
        soon = dt.datetime.now(zoneinfo.ZoneInfo(zone)) + dt.timedelta(minutes=5)
        care_hour = {"care_hours": [f"{soon:%H:%M}"], "quiet_from": None, "quiet_to": None}
        keep_household(browser, care_hour | {"zone": zone, "patience_hours": 2})
        browser.js("(location.hash = '#/settings')")
        browser.press(text("phone-nudges-ask"))
        browser.shows(text("phone-nudges-state-on"))
        browser.shows(text("saving-synced"))
        nudging.move_clock(60_000)
        assert not service.taken

        nudging.move_clock(6 * 60_000)
        shown = browser.until(f"{NOTIFICATIONS}.then((all) => all.length && all)")
        assert "Amber" in shown[0]["title"] + shown[0]["body"]
        assert shown[0]["items"] >= 1

        browser.offline(True)
        browser.js("(location.hash = '#/round?nudge=1')")
        told = json.dumps(like("round-all", colony="Amber").pattern)
        all_done = (
            f"[...document.querySelectorAll('button')].find((b) => RegExp({told}, 'i').test(b.innerText))"
        )
        browser.until(f"Boolean({all_done})")
        browser.js(f"{all_done}.click()")
        browser.shows(text("saving-saved"))
        browser.offline(False)
        browser.js("window.dispatchEvent(new Event('online'))")
        browser.shows(text("saving-synced"))
        sent = len(service.taken)
        nudging.move_clock(3 * 3_600_000)  # past the household's patience: nothing was left undone

        assert len(service.taken) == sent == 1


def test_a_leak_flagged_on_one_phone_nudges_the_other_keeper_at_once_and_the_flagger_not(
    service, nudging, firefox
):
    with firefox.phone() as listener, firefox.phone() as flagger:
        claim(listener, nudging)
        # quiet hours would hold an urgent nudge back; this household has none
        keep_household(listener, {"quiet_from": None, "quiet_to": None})
        listener.js("(location.hash = '#/settings')")
        listener.press(text("phone-nudges-ask"))
        listener.shows(text("phone-nudges-state-on"))
        flagger.goto(f"{nudging.url}/")
        flagger.press(text("start-join-one"))
        code = flagger.until("document.querySelector('.code')?.innerText")
        listener.js(
            "fetch('/api/pairings/approve', {method: 'POST', headers: {'Content-Type': 'application/json'},"
            f" body: JSON.stringify({{code: {json.dumps(code)}, person_name: 'Jon'}})}}).then((r) => r.status)"
        )
        flagger.shows(text("round-title"))
        flagger.js("(location.hash = '#/shelf')")
        flagger.press("Amber")
        flagger.press(text("event-kind-fault"))
        flagger.press(text("log-report"))
        about_amber = "(all) => all.filter(({ title, body }) => `${title} ${body}`.includes('Amber'))"
        told = f"{NOTIFICATIONS}.then({about_amber})"
        shown = listener.until(f"{told}.then((some) => some.length && some)", 40)

        assert len(shown) == 1  # besides that a phone was let in
        assert flagger.js(NOTIFICATIONS) == []
