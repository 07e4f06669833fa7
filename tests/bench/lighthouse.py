"""Lighthouse on a first visit: ``python -m tests.bench.lighthouse PATH_OF_LIGHTHOUSE``.

It is a package of npm (``npm install lighthouse``) and too large to come with every test run; give the path of
its ``cli/index.js``. Five runs with its own slow phone and network; the medians are printed.
"""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.support.chromium import CHROMIUM
from tests.support.server import Server

RUNS = 5
LOOKED_AT = ("performance", "accessibility", "best-practices")


def main() -> None:
    """Print the median of each category in five runs, and the figures that performance is made of."""
    [lighthouse] = sys.argv[1:]
    scores: dict[str, list[float]] = {name: [] for name in LOOKED_AT}
    figures: dict[str, list[float]] = {}
    with tempfile.TemporaryDirectory() as folder:
        server = Server(Path(folder) / "data").start()
        try:
            for _ in range(RUNS):
                report = _run(lighthouse, server.url, Path(folder) / "report.json")
                for name in LOOKED_AT:
                    scores[name].append(100 * report["categories"][name]["score"])
                for name in ("first-contentful-paint", "largest-contentful-paint", "total-blocking-time"):
                    figures.setdefault(name, []).append(report["audits"][name]["numericValue"])
        finally:
            server.stop()
    print("| first visit, HTTP/1.1 from `serve` | median of 5 |")
    print("|---|---|")
    for name, values in scores.items():
        print(f"| {name} | {statistics.median(values):.0f} |")
    for name, values in figures.items():
        print(f"| {name} | {statistics.median(values):.0f} ms |")


def _run(lighthouse: str, url: str, report: Path) -> dict[str, dict[str, dict[str, float]]]:
    flags = ["--chrome-flags=--headless=new --no-sandbox --disable-gpu", "--quiet", "--output=json"]
    subprocess.run(
        [
            "node",
            lighthouse,
            url,
            *flags,
            f"--output-path={report}",
            f"--only-categories={','.join(LOOKED_AT)}",
        ],
        env={**os.environ, "CHROME_PATH": str(CHROMIUM)},
        check=True,
    )
    found: dict[str, dict[str, dict[str, float]]] = json.loads(report.read_text())
    return found


if __name__ == "__main__":
    main()
