"""What the phone pays: bytes shipped, the first control on a slow network, an offline start, from tap to saved.

    python -m tests.bench.phone_cost [--events 20000 | --bytes | --first-visit URL]

Chromium with a processor slowed down four times, the network at 1.6 Mbit/s with 150 ms round trips, the server
of ``broodshelf serve`` over HTTP/1.1 on loopback. Times are medians of a few runs, in ms.
"""

from __future__ import annotations

import argparse
import random
import re
import statistics
import tempfile
from pathlib import Path
from typing import Any, Final

from playwright.sync_api import CDPSession, Page, expect, sync_playwright
from playwright.sync_api import TimeoutError as Late
from tests.phone.conftest import claim, worker_ready
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.phone_bytes import CODE, SPOKEN, count, count_online, served, sum_of
from tests.support.server import Server
from tests.support.words import text

from broodshelf.web.shell import START_PATH

SLOWER: Final = 4
NETWORK: Final = {
    "offline": False,
    "latency": 150,
    "downloadThroughput": 200_000,
    "uploadThroughput": 200_000,
}
RUNS: Final = 5
TAPS: Final = 40
PAUSES_MS: Final = {"one after the other": 0, "after pauses of up to 1.5 s": 1500}
"""The first are sent together when they end; of the second some meet the sync of the tap before."""

SCRIPTS: Final = re.split(
    r"^// -+ .*$", Path(__file__).with_suffix(".js").read_text().split("\n", 1)[1], flags=re.M
)
SEED, WATCH, TAP = (script.strip() for script in SCRIPTS)


def slow(page: Page, *, network: bool) -> CDPSession:
    """Slow the page's processor and, where asked, its network."""
    session = page.context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    if network:
        session.send("Network.enable")
        session.send("Network.setCacheDisabled", {"cacheDisabled": True})
        session.send("Network.setBypassServiceWorker", {"bypass": True})
        session.send("Network.emulateNetworkConditions", NETWORK)
    return session


def usable_ms(page: Page, url: str) -> float:
    """Open ``url`` in a fresh page and return when its first control could be used, in ms after navigation began."""
    page.add_init_script(f"addEventListener('DOMContentLoaded', {WATCH})")
    lost: list[str] = []
    page.on("requestfailed", lambda request: lost.append(f"{request.url}: {request.failure}"))
    page.on("pageerror", lambda error: lost.append(str(error)))
    page.goto(url, wait_until="commit")
    try:
        page.wait_for_function("() => window.usableAt")
    except Late as late:
        raise RuntimeError(f"No control in 30 s; lost on the way: {lost}") from late
    return float(page.evaluate("() => window.usableAt"))


def bytes_shipped() -> dict[str, int]:
    """Return compressed bytes by part, and their sums.

    A browser asks for brotli over https and on its own machine; over plain http and behind some proxies for gzip.
    """
    shell = served()
    counted = count(shell)
    counted["the app without charts and labels"] = sum_of(counted, CODE)
    counted["the same with one language"] = sum_of(counted, SPOKEN)
    counted["what needs a connection, when all of it is opened, not among these"] = count_online(shell)
    counted["all that is downloaded"] = sum_of({part: counted[part] for part in count(shell)})
    return {
        **{f"{part}, {way}": size for part, sizes in counted.items() for way, size in sizes.items()},
        "number of scripts before the first control": len(START_PATH),
    }


def measure(events: int) -> dict[str, Any]:
    """Run everything once and return the figures by name."""
    found: dict[str, Any] = {}
    expect.set_options(timeout=60_000)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = Server(Path(folder) / "data").start()
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        try:
            found["first visit, first control, ms"] = statistics.median(
                _first_visit(browser, server.url) for _ in range(RUNS)
            )
            context = browser.new_context(viewport={"width": 390, "height": 844})
            page = context.new_page()
            claim(page, server)
            colony = page.url.rpartition("/")[2]
            worker_ready(page)
            page.goto(f"{server.url}/#/round")
            expect(page.get_by_text(text("saving-synced"))).to_be_visible()
            found["cold load of the round, first control, ms"] = statistics.median(
                fresh(context, f"{server.url}/#/round", network=True) for _ in range(RUNS)
            )
            page.evaluate(SEED, [events, colony])
            context.set_offline(True)
            found[f"offline start with {events} events, first control, ms"] = statistics.median(
                fresh(context, f"{server.url}/#/round", network=False) for _ in range(RUNS)
            )
            page.goto("about:blank")
            page.goto(f"{server.url}/#/round")
            expect(page.get_by_role("heading", name=text("round-title"))).to_be_visible()
            page.wait_for_function("() => document.querySelector('main .task')")
            page.wait_for_timeout(1000)  # what is seen of a long list is made piece by piece
            session = slow(page, network=False)
            for how, most_ms in PAUSES_MS.items():
                taps = sorted(_tap(page, most_ms) for _ in range(TAPS))
                name = f"tap to saved and painted with {events} events, {how}"
                found[f"{name}, median, ms"] = statistics.median(taps)
                found[f"{name}, p95, ms"] = taps[int(TAPS * 0.95) - 1]
            session.detach()
        finally:
            browser.close()
            server.stop()
    return found


def _tap(page: Page, most_ms: int) -> float:
    """Tap after a pause of up to so many ms; return how long it took, in ms."""
    page.wait_for_timeout(random.uniform(0, most_ms))
    return float(page.evaluate(TAP))


def _first_visit(browser: Any, url: str) -> float:
    context = browser.new_context(viewport={"width": 390, "height": 844})
    try:
        return fresh(context, f"{url}/", network=True)
    finally:
        context.close()


def fresh(context: Any, url: str, *, network: bool) -> float:
    """Open ``url`` in a fresh, slowed down page; return when its first control could be used, in ms."""
    page = context.new_page()
    try:
        slow(page, network=network)
        return usable_ms(page, url)
    finally:
        page.close()


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--events", type=int, default=20_000, help="spread over five years")
    parser.add_argument("--first-visit", metavar="URL", help="measure only a first visit to this server")
    parser.add_argument("--bytes", action="store_true", help="count bytes and measure no times")
    arguments = parser.parse_args()
    if arguments.first_visit:
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(
                executable_path=str(CHROMIUM), args=[*ARGUMENTS, "--ignore-certificate-errors"]
            )
            times = [_first_visit(browser, arguments.first_visit) for _ in range(RUNS)]
            print(f"first visit, first control, ms: {statistics.median(times):.0f}")
        return
    for name, value in bytes_shipped().items():
        print(f"{name}: {value}")
    if arguments.bytes:
        return
    for name, value in measure(arguments.events).items():
        print(f"{name}: {value:.0f}")


if __name__ == "__main__":
    main()
