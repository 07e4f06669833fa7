"""The phone's own storage and sync in a real browser, without screens, and the served household behind the proxy."""

from __future__ import annotations

import json
import random
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from playwright.sync_api import BrowserContext, Page
from tests.support.fault_proxy import FaultProxy
from tests.support.server import Server

LAB = """async () => {
  const build = (await (await fetch('/')).text()).match(/data-build="([^"]+)"/)[1];
  const from = (name) => import(`/static/${build}/${name}.js`);
  const [{ Store }, { drain }, open, api] = await Promise.all(
    ['database/store', 'sync/drain', 'database/open', 'sync/api'].map(from));
  const device = await open.currentDevice();
  const lab = { api, build, drain, store: device ? new Store(device) : null };
  lab.claim = async (code, id) => {
    const me = await api.post('/api/claim', {
      code, device: { id, name: 'a phone' }, person_name: 'Mira', household_name: 'Shelf', zone: 'UTC' });
    await open.setCurrentDevice(me.device_id);
    lab.store = new Store(me.device_id);
    await lab.store.setMeta({ me });
  };
  lab.write = (texts, colony, at) => lab.store.enqueue(texts.map((text, i) => ({
    kind: 'note', id: crypto.randomUUID(),
    set: { colony_id: colony, happened_at: '2026-05-01T12:00:00.000+00:00', text } })), at ?? Date.now());
  lab.sync = () => drain(lab.store).then(() => 'even', (error) => error.name + ' ' + (error.code ?? ''));
  lab.unsent = async () => (await lab.store.unsent()).map((entry) => entry.op.set.text);
  lab.rows = async () => (await lab.store.snapshot()).rows
    .filter((row) => row.kind === 'note').map((row) => row.set.text).sort();
  lab.journal = () => open.inTransaction(open.databaseOf(lab.store.deviceId), ['journal'], 'readonly',
    async (tx) => (await tx.objectStore('journal').getAll()).flatMap((page) => page.ops ?? [page.op])
      .map((op) => op.set.text).filter(Boolean));
  window.lab = lab;
  return Boolean(lab.store);
}"""
COLONY = "019dd000-0000-7000-8000-0000000000aa"
dice = random.Random(20261125)
DEVICE = "019dd000-0000-7000-8000-0000000000dd"


@contextmanager
def behind_proxy(server: Server) -> Iterator[Shelf]:
    """Start the server with the fault proxy before it, which is its public address; stop it at the end."""
    with FaultProxy(server.port) as proxy:
        server.settings["BROODSHELF_PUBLIC_URL"] = proxy.url
        server.start()
        try:
            yield Shelf(server, proxy)
        finally:
            server.stop()


class Shelf:
    """The server, the proxy before it, and what the server's own database says."""

    def __init__(self, server: Server, proxy: FaultProxy) -> None:
        self.server, self.proxy = server, proxy

    @property
    def lab_url(self) -> str:
        """A page of our origin without the app, so that nothing syncs by itself."""
        return f"{self.proxy.url}/healthz"

    def stored(self) -> list[str]:
        """Return the texts of all notes on the server, sorted: one that is there twice stands twice."""
        with sqlite3.connect(self.server.data / "broodshelf.sqlite3") as connection:
            rows = connection.execute("SELECT fields FROM records WHERE kind = 'note'").fetchall()
        connection.close()
        return sorted(json.loads(row[0])["text"] for row in rows)

    def operations_per_record(self) -> list[int]:
        """Return how many history lines each note has: one, if nothing was done twice."""
        query = (
            "SELECT count(*) FROM revisions WHERE record_id IN (SELECT id FROM records WHERE kind = 'note')"
            " GROUP BY record_id"
        )
        with sqlite3.connect(self.server.data / "broodshelf.sqlite3") as connection:
            found = [row[0] for row in connection.execute(query)]
        connection.close()
        return found

    def kill_in(self, delay_s: float) -> threading.Timer:
        """Kill the server so much later, from a thread of its own."""
        timer = threading.Timer(delay_s, self.server.kill)
        timer.start()
        return timer


def open_tab(context: BrowserContext, shelf: Shelf) -> Page:
    """Open a tab of the one phone; the first claims the household and adds a colony."""
    page = context.new_page()
    page.goto(shelf.lab_url)
    if not page.evaluate(LAB):
        page.evaluate("([code, device]) => lab.claim(code, device)", [shelf.server.claim_code(), DEVICE])
        page.evaluate(
            "(id) => lab.store.enqueue([{kind: 'colony', id, set: {name: 'Amber'}}]).then(() => lab.sync())",
            COLONY,
        )
    return page


def write(page: Page, *texts: str) -> None:
    page.evaluate("([texts, colony]) => lab.write(texts, colony).then(() => null)", [list(texts), COLONY])


def sync(page: Page) -> str:
    answer: str = page.evaluate("() => lab.sync()")
    return answer


def state(page: Page) -> dict[str, Any]:
    found: dict[str, Any] = page.evaluate(
        "async () => ({unsent: await lab.unsent(), rows: await lab.rows()})"
    )
    return found


def kill_while_it_syncs(shelf: Shelf, page: Page, times: int) -> tuple[list[str], int]:
    """Kill the server during a sync, again and again; return what was written, and how many kills came after a commit.

    The moment is random around the commit: later after a kill that came before it, earlier after one behind it.
    """
    written: list[str] = []
    committed, delay_s = 0, 0.1
    for kill in range(times):
        texts = [f"kill {kill} {i}" for i in range(20)]
        write(page, *texts)
        written += texts
        timer = shelf.kill_in(delay_s * dice.uniform(0.6, 1.4))
        sync(page)
        timer.join()
        late = set(texts) <= set(shelf.stored())
        committed += late
        delay_s *= 0.7 if late else 1.4
        shelf.server.start()
    assert sync(page) == "even"
    return written, committed


__all__ = [
    "Shelf",
    "dice",
    "kill_while_it_syncs",
    "open_tab",
    "state",
    "sync",
    "write",
]
