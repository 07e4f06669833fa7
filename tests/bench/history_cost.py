"""What a long history costs the phone: tasks over 50 ms while it is opened, scrolled and searched.

    python -m tests.bench.history_cost [--events 100000] [--pages 40]

Chromium with a processor slowed down four times, one colony with all the events, the server on loopback.
A task is what the browser calls a long task: it kept the page busy for more than 50 ms.
"""

from __future__ import annotations

import argparse
import re
import statistics
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from playwright.sync_api import Page, expect, sync_playwright
from tests.bench.phone_cost import SEED, slow
from tests.phone.conftest import claim, worker_ready
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.server import Server

WATCH_TASKS, OPEN, NEXT_PAGE, SEARCH = (
    script.strip()
    for script in re.split(
        r"^// -+ .*$", Path(__file__).with_suffix(".js").read_text().split("\n", 1)[1], flags=re.M
    )
)
SETTLED_S: Final = 2


@contextmanager
def tasks(page: Page, what: str) -> Iterator[None]:
    """Print how many long tasks there were meanwhile, and the longest."""
    page.evaluate("() => { window.longTasks.length = 0; }")
    yield
    time.sleep(SETTLED_S)
    long = page.evaluate("() => window.longTasks")
    print(f"{what}, tasks over 50 ms: {len(long)}, the longest {max(long, default=0):.0f} ms")


def measure(events: int, pages: int) -> None:
    """Open, scroll and search, and print what each cost."""
    expect.set_options(timeout=120_000)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = Server(Path(folder) / "data").start()
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        try:
            page = browser.new_page(viewport={"width": 390, "height": 844})
            claim(page, server)
            colony = page.url.rpartition("/")[2]
            worker_ready(page)
            page.evaluate(SEED, [events, colony])
            page.goto("about:blank")
            page.goto(f"{server.url}/#/shelf")
            expect(page.get_by_role("link", name="Amber").first).to_be_visible()
            slow(page, network=False)
            page.evaluate(WATCH_TASKS)
            with tasks(page, "opening the colony"):
                opened_ms = page.evaluate(OPEN)
            print(f"opening the colony, first line of the diary: {opened_ms:.0f} ms")
            with tasks(page, f"{pages} pages back"):
                turns = [page.evaluate(NEXT_PAGE) for _ in range(pages)]
            times = sorted(turn["ms"] for turn in turns)
            print(
                f"next page painted, median and longest: {statistics.median(times):.0f}, {times[-1]:.0f} ms"
            )
            for what in ("nodes", "lines"):
                print(f"most {what} in the page: {max(turn[what] for turn in turns)}")
            with tasks(page, "a search that finds nothing"):
                searched_ms = page.evaluate(SEARCH, "no such thing")
            print(f"a search that finds nothing, to its end: {searched_ms:.0f} ms")
        finally:
            browser.close()
            server.stop()


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--events", type=int, default=100_000, help="spread over five years")
    parser.add_argument("--pages", type=int, default=40)
    arguments = parser.parse_args()
    measure(arguments.events, arguments.pages)


if __name__ == "__main__":
    main()
