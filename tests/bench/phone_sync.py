"""What sync costs in a real phone's store: ``python -m tests.bench.phone_sync``. Chromium, no slow-down, medians.

First pull of 10,000 rows into an empty store, against bare work on the same rows: one bulk add into IndexedDB, plus
SELECT and JSON on the server; and how long one log takes until it is on the disk.
"""

from __future__ import annotations

import json
import logging
import sqlite3
import statistics
import tempfile
import time
from pathlib import Path

from playwright.sync_api import sync_playwright
from tests.faults.lab import COLONY, LAB, behind_proxy, open_tab
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.server import Server

RUNS = 5
ROWS = 10_000
PULL = """async () => {
  const { store } = lab;
  const tables = ['rows', 'outbox', 'journal', 'conflicts'];
  const { inTransaction } = await import(`/static/${lab.build}/database/open.js`);
  await inTransaction(store.name, [...tables, 'meta'], 'readwrite', async (tx) => {
    await Promise.all([...tables.map((name) => tx.objectStore(name).clear()),
      tx.objectStore('meta').delete('cursor'), tx.objectStore('meta').delete('epoch')]);
  });
  const start = performance.now();
  const said = await lab.sync();
  const took = performance.now() - start;
  return [took, said, (await store.snapshot()).rows.length];
}"""
BULK_ADD = """async () => {
  const { rows } = await lab.store.snapshot();
  const { openDB } = await import(`/static/${lab.build}/vendor/idb.js`);
  const db = await openDB(`bare-${Math.random()}`, 1, { upgrade(made) {
    const store = made.createObjectStore('rows', { keyPath: 'id' });
    store.createIndex('by_kind', 'kind');
    store.createIndex('by_colony', ['set.colony_id', 'happened_ms']);
  } });
  const start = performance.now();
  const tx = db.transaction(['rows'], 'readwrite', { durability: 'strict' });
  for (const row of rows) tx.objectStore('rows').add(row);
  await tx.done;
  return performance.now() - start;
}"""
SAVE = """async ([colony, count]) => {
  const took = [];
  for (let i = 0; i < count; i += 1) {
    const start = performance.now();
    await lab.write([`saved ${i}`], colony);
    took.push(performance.now() - start);
  }
  return took;
}"""


def main() -> None:
    """Measure and print, with the limits beside."""
    logging.disable(logging.CRITICAL)
    with (
        tempfile.TemporaryDirectory() as folder,
        sync_playwright() as playwright,
        behind_proxy(Server(Path(folder) / "data")) as shelf,
    ):
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        page = open_tab(browser.new_context(), shelf)
        page.set_default_timeout(120_000)
        page.evaluate(LAB)
        for _ in range(10):
            page.evaluate(
                "([colony, n]) => lab.write(Array.from({length: n}, (_, i) => `log ${i}`), colony)"
                ".then(() => lab.sync())",
                [COLONY, ROWS // 10],
            )
        pulls, adds, reads = [], [], []
        for _ in range(RUNS):
            before = shelf.proxy.requests
            took, said, rows = page.evaluate(PULL)
            assert said == "even" and rows >= ROWS, (said, rows)
            requests = shelf.proxy.requests - before
            pulls.append(took)
            adds.append(page.evaluate(BULK_ADD))
            reads.append(_select_and_dump(shelf.server.data))
        saves = sorted(page.evaluate(SAVE, [COLONY, 200]))
        browser.close()
    pull, bare = statistics.median(pulls), statistics.median(adds) + statistics.median(reads)
    print(
        f"first pull of {ROWS:,} rows into the phone's store: {pull:.0f} ms in {requests} requests (limit 12); "
        f"bulk add {statistics.median(adds):.0f} ms + SELECT and JSON {statistics.median(reads):.0f} ms: "
        f"{pull / bare:.2f} times (limit 1.5)"
    )
    print(f"one log on the disk: median {statistics.median(saves):.1f} ms, p95 {saves[189]:.1f} ms (limit 3)")


def _select_and_dump(data: Path) -> float:
    connection = sqlite3.connect(data / "broodshelf.sqlite3")
    start = time.perf_counter()
    rows = connection.execute("SELECT id, kind, rev, made_ms, person_id, fields FROM records").fetchall()
    json.loads(json.dumps(rows))
    took = (time.perf_counter() - start) * 1000
    connection.close()
    return took


if __name__ == "__main__":
    main()
