"""The service worker in real Chromium: every push shows one notification; an action on it logs offline."""

from __future__ import annotations

import json
import sqlite3
import time
from collections.abc import Callable, Iterator
from contextlib import closing

import pytest
from playwright.sync_api import Browser, Page, Playwright, expect
from tests.phone.conftest import claim, worker_ready
from tests.support.chromium import CHROMIUM, launched
from tests.support.server import Server
from tests.support.words import text

pytestmark = pytest.mark.browser


@pytest.fixture(scope="session")
def chromium(playwright: Playwright) -> Iterator[Browser]:
    """The whole browser: notifications and background sync are its own."""
    with launched(playwright, CHROMIUM) as browser:
        yield browser


MALFORMED = [
    "", "not json", "null", "[]", "{}", '{"notification": null}', '{"notification": 7}', '{"broodshelf": {}}',
    '{"notification": {"title": "x"}, "broodshelf": {"items": 3}}', '{"notification": {}}',
]  # fmt: skip

RECORD = """() => {
  const show = ServiceWorkerRegistration.prototype.showNotification;
  self.titles = [];
  ServiceWorkerRegistration.prototype.showNotification = async function (title, options) {
    await show.call(this, title, options);
    self.titles.push(title);
  };
}"""
"""Note in the worker what was shown. Asking for the list while one is just appearing makes Chromium forget it."""
HEARD = """async (count) => {
  for (let tries = 0; self.titles.length < count && tries < 500; tries += 1) {
    await new Promise((done) => setTimeout(done, 20));
  }
  return self.titles;
}"""

NOTE_WHAT_IS_ASKED_FOR = """() => {
  const register = SyncManager.prototype.register;
  self.asked = [];
  SyncManager.prototype.register = async function (tag) {
    await register.call(this, tag);
    self.asked.push(tag);
  };
}"""
"""Note in the page which syncs the browser promised. Its own event comes at once: it sees the network, not our cut."""


def until(page: Page, ready: Callable[[], bool]) -> None:
    """Let the browser's messages in until a state is there that no page shows."""
    deadline = time.monotonic() + 15
    while not ready():
        assert time.monotonic() < deadline, "waited in vain"
        page.wait_for_timeout(20)


class Push:
    """Delivers push messages and sync events to the page's worker by the browser's own debugging protocol."""

    def __init__(self, page: Page, server: Server) -> None:
        self.page, self.origin = page, server.url
        page.context.grant_permissions(["notifications"], origin=server.url)
        self.session = page.context.new_cdp_session(page)
        self.registrations: list[str] = []
        self.session.on(
            "ServiceWorker.workerRegistrationUpdated",
            lambda event: self.registrations.extend(r["registrationId"] for r in event["registrations"]),
        )
        self.session.send("ServiceWorker.enable")
        until(page, lambda: bool(self.registrations))  # told after the answer to `enable`
        self.worker = page.context.service_workers[0]
        self.worker.evaluate(RECORD)
        self.count = 0

    def deliver(self, data: str) -> list[str]:
        """Deliver one message and return the titles of all notifications that were shown so far."""
        self.session.send(
            "ServiceWorker.deliverPushMessage",
            {"origin": self.origin, "registrationId": self.registrations[-1], "data": data},
        )
        self.count += 1
        titles: list[str] = self.worker.evaluate(HEARD, self.count)
        return titles

    def dispatch_sync(self, tag: str) -> None:
        """The event that the browser sends when the connection is back."""
        self.session.send(
            "ServiceWorker.dispatchSyncEvent",
            {
                "origin": self.origin,
                "registrationId": self.registrations[-1],
                "tag": tag,
                "lastChance": False,
            },
        )


def feedings(server: Server) -> int:
    """How many feedings the server has."""
    with closing(sqlite3.connect(server.data / "broodshelf.sqlite3")) as connection:
        (count,) = connection.execute("SELECT count(*) FROM records WHERE kind = 'feeding'").fetchone()
    return int(count)


def test_every_push_shows_exactly_one_notification_however_malformed(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    push = Push(page, server)

    for data in MALFORMED:
        titles = push.deliver(data)

    assert titles == ["x" if '"x"' in data else "Broodshelf" for data in MALFORMED]


def test_a_nudge_brings_the_number_on_the_icon_and_shows_where_none_can_be_drawn(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    push = Push(page, server)
    push.worker.evaluate(
        """() => {
          self.badges = [];
          navigator.setAppBadge = (due) => {
            self.badges.push(due);
            return due === 3 ? Promise.resolve() : Promise.reject(new TypeError('no number'));
          };
        }"""
    )
    for badge in (3, "many"):
        push.deliver(json.dumps({"notification": {"title": "Protein"}, "app_badge": badge}))

    assert push.deliver(json.dumps({"notification": {"title": "without"}})) == [
        "Protein",
        "Protein",
        "without",
    ]
    assert push.worker.evaluate("() => self.badges") == [3, "many"]


def test_done_on_a_nudge_logs_offline_and_reaches_the_server_once(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    push = Push(page, server)
    colony_id = page.url.rpartition("/")[2]
    feeding = {"need": "protein", "food_code": "fruit_fly", "amount": 1, "unit": "piece"}
    item = {
        "colony_id": colony_id,
        "need": "protein",
        "task_key": "protein:start",
        "suggested": {"kind": "feeding", "set": feeding},
    }
    nudge = {"notification": {"title": "Protein for Amber"}, "broodshelf": {"items": [item]}}
    assert push.deliver(json.dumps(nudge)) == ["Protein for Amber"]
    page.context.set_offline(True)
    page.context.service_workers[0].evaluate(
        """async () => {
          const [notification] = await self.registration.getNotifications();
          const event = new NotificationEvent('notificationclick', { notification, action: 'log' });
          const waits = [];
          event.waitUntil = (promise) => waits.push(promise);
          self.dispatchEvent(event);
          await Promise.all(waits);
        }"""
    )
    page.goto(f"{server.url}/#/round")
    expect(page.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    page.context.set_offline(False)
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()

    expect(
        page.get_by_role("region", name=text("round-done")).get_by_text(
            text("portion-piece", n=1, food=text("food-fruit-fly.counted", n=1))
        )
    ).to_have_count(1)


def test_logs_made_offline_are_sent_by_the_worker_after_the_app_was_closed(phone, server):
    page = phone(background_sync=True)
    claim(page, server)
    worker_ready(page)
    worker = Push(page, server)
    page.context.grant_permissions(["background-sync"], origin=server.url)
    page.goto(f"{server.url}/#/round")
    page.evaluate(NOTE_WHAT_IS_ASKED_FOR)
    page.context.set_offline(True)
    page.get_by_role("button", name=text("round-as-suggested")).first.click()
    expect(page.get_by_text(f"{text('saving-waiting', count=1)} · {text('saving-offline')}")).to_be_visible()
    page.wait_for_function("() => self.asked.length > 0")
    assert set(page.evaluate("() => self.asked")) == {"logs"}

    page.goto("about:blank")
    page.context.set_offline(False)
    worker.dispatch_sync("logs")
    until(page, lambda: feedings(server) > 0)  # nothing on the phone tells: no page is open

    assert feedings(server) == 1
