"""From start to ready, and the memory of ``serve``: ``python -m tests.bench.start_cost``.

Baseline in the same run: a bare Python that imports Flask, SQLAlchemy and waitress and ends.
"""

from __future__ import annotations

import re
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from tests.support.server import ColdServer

RUNS = 5
BARE = "import flask, sqlalchemy, waitress"


def main() -> None:
    """Print medians of five starts on an empty and on a used data folder."""
    bare, first, again, memory = [], [], [], []
    with tempfile.TemporaryDirectory() as folder:
        for run in range(RUNS):
            begun = time.perf_counter()
            subprocess.run([sys.executable, "-c", BARE], check=True)
            bare.append(time.perf_counter() - begun)
            for took in (first, again):
                server = ColdServer(Path(folder) / f"data{run}")
                begun = time.perf_counter()
                server.start()
                took.append(time.perf_counter() - begun)
                assert server.process is not None
                status = Path(f"/proc/{server.process.pid}/status").read_text()
                memory.append(int(re.search(r"VmRSS:\s+(\d+)", status)[1]) / 1024)
                server.stop()
    print("| what | median of 5 | times a bare import |")
    print("|---|---|---|")
    base = statistics.median(bare)
    print(f"| bare Python importing Flask, SQLAlchemy, waitress | {base:.2f} s | 1 |")
    for name, took in (("first start (migrations, keys)", first), ("later start", again)):
        median = statistics.median(took)
        print(f"| {name} | {median:.2f} s | {median / base:.1f} |")
    print(f"| memory of serve, resident | {statistics.median(memory):.0f} MiB | |")


if __name__ == "__main__":
    main()
