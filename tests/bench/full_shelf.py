"""What a full shelf costs the phone: the start, a tap, a scroll through the diary, and a full outbox.

    python -m tests.bench.full_shelf [--colonies 8] [--events 100000] [--years 5]
    python -m tests.bench.full_shelf --colonies 40 --events 58400 --years 2

Chromium, and the server of ``broodshelf serve`` on loopback. Colonies have species, vessels and logs of the last
weeks, so many tasks are due; the years before are written straight into the phone's store. All but the outbox is
measured offline with a processor slowed down four times.
"""

from __future__ import annotations

import argparse
import re
import statistics
import tempfile
import time
from pathlib import Path
from typing import Any, Final

from playwright.sync_api import BrowserContext, Page, expect, sync_playwright
from tests.bench.phone_cost import TAP, fresh, slow
from tests.phone.conftest import claim, worker_ready
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.server import Server

SHELF, YEARS, WATCH_TASKS, OPEN, SCROLL, QUEUE, SEND, DUE = (
    script.strip()
    for script in re.split(
        r"^// -+ .*$", Path(__file__).with_suffix(".js").read_text().split("\n", 1)[1], flags=re.M
    )
)
LOGGED_DAYS: Final = 60
RUNS: Final = 5
TAPS: Final = 40
STEPS: Final = 600
QUEUED: Final = 1000
SETTLED_S: Final = 1.5


def measure(colonies: int, events: int, years: int) -> None:
    """Build the shelf and print each figure as it is found."""
    expect.set_options(timeout=120_000)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = Server(Path(folder) / "data").start()
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        try:
            context = browser.new_context(viewport={"width": 390, "height": 844})
            page = context.new_page()
            page.set_default_timeout(120_000)
            claim(page, server)
            worker_ready(page)
            page.evaluate(SHELF, [colonies - 1, LOGGED_DAYS])  # and the one that was added with the claim
            _outbox(page, server)
            page.evaluate(YEARS, [events, years])
            context.set_offline(True)
            _start(context, server)
            _taps(page, server)
            _diary(page, server)
        finally:
            browser.close()
            server.stop()


def _outbox(page: Page, server: Server) -> None:
    _open_round(page, server)
    times: list[dict[str, Any]] = []
    for _ in range(RUNS):
        page.evaluate(QUEUE, QUEUED)
        times.append(page.evaluate(SEND))
    took, asked = (statistics.median(each[name] for each in times) for name in ("took", "asked"))
    print(
        f"{QUEUED} logs sent, until the outbox is empty and painted: {took:.0f} ms, of these {asked:.0f} ms "
        f"in {times[0]['requests']} requests"
    )


def _start(context: BrowserContext, server: Server) -> None:
    times = [fresh(context, f"{server.url}/#/round", network=False) for _ in range(RUNS)]
    print(f"offline start, first control: {statistics.median(times):.0f} ms, the longest {max(times):.0f}")


def _taps(page: Page, server: Server) -> None:
    _open_round(page, server)
    due, ahead = page.evaluate(DUE)
    session = slow(page, network=False)
    taps = sorted(float(page.evaluate(TAP)) for _ in range(TAPS))
    print(
        f"tap to saved and painted, {due} tasks due and {ahead} ahead: median {statistics.median(taps):.0f} ms, "
        f"p95 {taps[int(TAPS * 0.95) - 1]:.0f} ms"
    )
    session.detach()


def _diary(page: Page, server: Server) -> None:
    page.goto(f"{server.url}/#/shelf")
    page.get_by_role("main").locator("a[href^='#/colony/']").first.wait_for()
    session = slow(page, network=False)
    page.evaluate(WATCH_TASKS)
    page.evaluate(OPEN)
    time.sleep(SETTLED_S)
    _print_tasks(page, "a colony opened")
    seen = page.evaluate(SCROLL, STEPS)
    time.sleep(SETTLED_S)
    _print_tasks(page, f"the diary scrolled by {seen['down_px']:.0f} px, {seen['nodes']} nodes at most")
    session.detach()


def _print_tasks(page: Page, what: str) -> None:
    """Print how many long tasks there were since the last time, and forget them."""
    long = page.evaluate("() => window.longTasks.splice(0)")
    print(f"{what}, tasks over 50 ms: {len(long)}, the longest {max(long, default=0):.0f} ms")


def _open_round(page: Page, server: Server) -> None:
    page.goto("about:blank")
    page.goto(f"{server.url}/#/round")
    page.wait_for_function("() => document.querySelector('main .task')")
    page.wait_for_timeout(1000)  # what is seen of a long list is made piece by piece


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--colonies", type=int, default=8)
    parser.add_argument("--events", type=int, default=100_000)
    parser.add_argument("--years", type=int, default=5)
    arguments = parser.parse_args()
    measure(arguments.colonies, arguments.events, arguments.years)


if __name__ == "__main__":
    main()
