"""A shelf that was made once, by hand, and is given whole to each test: the server's data and what the phone holds.

``kept_shelf`` makes it and ``copy_to`` puts its data where a server will start; ``move_in`` makes a page the phone
that made it, at the screen where that was left.
"""

from __future__ import annotations

import json
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page, expect
from tests.support.server import Server
from tests.support.templates import SQLITE_FILE
from tests.support.words import text

PHONE: dict[str, Any] = {
    "viewport": {"width": 390, "height": 844},
    "has_touch": True,
    "timezone_id": "Europe/Vienna",
    "locale": "en-GB",
}
"""What a phone is, as Playwright says it of a context."""
KEPT = "kept"

RESTORE = """(({ databases, local }) => {
  for (const { name, value } of local) localStorage.setItem(name, value);
  const made = ({ name, version, stores }) => new Promise((done, failed) => {
    const opening = indexedDB.open(name, version);
    opening.onupgradeneeded = () => stores.forEach(({ name: store, records, indexes, ...how }) => {
      const kept = opening.result.createObjectStore(store, { ...how, keyPath: how.keyPath ?? how.keyPathArray });
      indexes.forEach(({ name: index, ...of }) => kept.createIndex(index, of.keyPath ?? of.keyPathArray, of));
      records.forEach(({ key, value }) => kept.put(value, key));
    });
    opening.onsuccess = () => done(opening.result.close());
    opening.onerror = () => failed(opening.error);
  });
  globalThis.movedIn = Promise.all(databases.map(made));
})"""
"""Puts back what a phone holds, its databases as the app had made them, before the app's first line runs: whatever
that opens waits for what was opened before (https://w3c.github.io/IndexedDB/#connection-queue)."""


@dataclass(frozen=True)
class KeptShelf:
    """A server's data folder, and beside it what its phone holds."""

    data: Path

    def copy_to(self, data: Path) -> Path:
        """Put the server's data into a new folder, and beside it what the phone holds. Return the folder."""
        shutil.copytree(self.data, data)
        shutil.copy(_held(self.data), _held(data))
        return data


def kept_shelf(
    chromium: Browser, folder: Path, make: Callable[[Page, Server], object], begun: KeptShelf | None = None
) -> KeptShelf:
    """Make a shelf with one phone, from nothing or from one that was begun before, and keep what both sides hold.

    Its data is in ``folder / KEPT``. ``make`` returns when all is synced.
    """
    data = folder / KEPT
    server = Server(begun.copy_to(data) if begun else data).start()
    context = chromium.new_context(**PHONE)
    context.set_default_timeout(15_000)
    try:
        page = context.new_page()
        make(page, server)
        state = context.storage_state(indexed_db=True)
    finally:
        context.close()
        server.stop()
    _leave_one_file(data / SQLITE_FILE)
    origin = state["origins"][0]
    held = {
        "cookies": [{"name": each["name"], "value": each["value"]} for each in state["cookies"]],
        "storage": {"databases": origin["indexedDB"], "local": origin["localStorage"]},
        "at": page.url.removeprefix(server.url),
    }
    assert "Encoded" not in json.dumps(held), "the phone holds what is no JSON; teach RESTORE to put it back"
    _held(server.data).write_text(json.dumps(held))
    return KeptShelf(server.data)


def _leave_one_file(database: Path) -> None:
    """Bring what the killed server left in its log into the database, or every copy would begin with that."""
    with closing(sqlite3.connect(database)) as connection:
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def was_claimed(server: Server) -> bool:
    """Say whether a server has a shelf whose phone a page can be."""
    return _held(server.data).exists()


def move_in(page: Page, server: Server) -> None:
    """Make a new page the phone that made this server's shelf, and let it sync."""
    held = json.loads(_held(server.data).read_text())
    page.context.add_cookies([{**cookie, "url": server.url, "httpOnly": True} for cookie in held["cookies"]])
    before_all_else = f"{RESTORE}({json.dumps(held['storage'])})"
    with page.expect_response("**/api/sync") as synced, page.add_init_script(before_all_else):
        page.goto(f"{server.url}{held['at']}")
    page.evaluate("movedIn")  # raises what could not be put back
    assert synced.value.request.post_data_json["cursor"], "the phone found nothing of what was put back"
    expect(page.locator("main:not(.plain) h1").first).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def claim_by_hand(page: Page, server: Server) -> None:
    """Claim a household that nobody has claimed yet as Mira, and add a colony in a test tube."""
    page.goto(f"{server.url}/#/claim/{server.claim_code()}")
    page.get_by_label(text("start-your-name")).fill("Mira")
    page.get_by_role("button", name=text("start-claim-it")).click()
    add_colony(page, "Amber")


def add_colony(page: Page, name: str) -> None:
    """Fill in the form for a new colony that is open; wait for its plan, and until everything has been sent."""
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill(name)
    page.get_by_role("combobox", name=text("colony-form-species")).fill("Lasius niger")
    page.get_by_role("button", name=text("colony-form-add")).click()
    expect(page.get_by_role("heading", name=text("welcome-plan"))).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def _held(data: Path) -> Path:
    return data.with_name(f"{data.name}.phone.json")
