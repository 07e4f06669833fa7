"""A served household whose server is killed again and again under a real browser: ``python -m tests.bench.long_kills``.

Chromium writes 20 logs and syncs through the fault proxy; the server gets SIGKILL at a random moment and is started
again. In the end every log must be there exactly once. Figures of a run are in docs/measurements.md.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from pathlib import Path

from playwright.sync_api import sync_playwright
from tests.faults.lab import behind_proxy, kill_while_it_syncs, open_tab, state
from tests.support.chromium import ARGUMENTS, CHROMIUM
from tests.support.server import Server


def main() -> int:
    """Kill, compare, print; 1 if a log was lost or doubled."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("--kills", type=int, default=200)
    kills = wanted.parse_args().kills
    started = time.monotonic()
    with (
        tempfile.TemporaryDirectory() as folder,
        sync_playwright() as playwright,
        behind_proxy(Server(Path(folder) / "data")) as shelf,
    ):
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        page = open_tab(browser.new_context(), shelf)
        written, committed = kill_while_it_syncs(shelf, page, kills)
        there, held, once = shelf.stored(), state(page), set(shelf.operations_per_record()) == {1}
        browser.close()
    good = there == sorted(written) == held["rows"] and not held["unsent"] and once
    print(
        f"{kills} kills ({committed} after the commit) in {time.monotonic() - started:.0f} s: "
        f"{len(written):,} logs written, {len(there):,} stored, {len(held['rows']):,} on the phone; "
        f"{'each exactly once' if good else 'NOT EACH EXACTLY ONCE'}"
    )
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
