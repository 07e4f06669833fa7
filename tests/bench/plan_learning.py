"""What whole plans learn of invented colonies' appetites: ``python -m tests.bench.plan_learning``.

Prints the table of docs/care-model/energy.md (40 runs, 8 checks), then the same after 4 and 16 checks.
"""

from __future__ import annotations

import sys

from tests.care.plan_learning_simulation import APPETITES, SIZES, verdict

RUNS = 40
WORDS = {"appetite_at_least": "at least", "appetite_at_most": "at most", "appetite_hidden": "cannot"}


def cell(need: str, workers: int, appetite: float, checks: int = 8) -> str:
    """Return the median of the figures over the true appetite, or what most plans say instead of a figure."""
    found = verdict(need, workers, appetite, RUNS, checks=checks)
    others = ", ".join(f"{found.said[code]} {WORDS[code]}" for code in WORDS if code in found.said)
    if found.claims * 2 < RUNS or found.median is None:
        return others
    return f"{found.median / appetite:.2f} of {found.claims}" + (f", {others}" if others else "")


def rows(checks: int = 8) -> list[str]:
    """Return the table for so many checks."""
    made = [
        "| need, workers | " + " | ".join(f"appetite {a:g}" for a in APPETITES) + " |",
        "|---|" + "---|" * len(APPETITES),
    ]
    for need in ("protein", "sugar"):
        for workers in SIZES:
            cells = (cell(need, workers, appetite, checks) for appetite in APPETITES)
            made.append(f"| {need}, {workers:,} | " + " | ".join(cells) + " |")
    return made


def main() -> None:
    """Print the tables."""
    for checks in (8, 4, 16):
        sys.stdout.write(f"after {checks} checks, {RUNS} runs\n" + "\n".join(rows(checks)) + "\n")


if __name__ == "__main__":
    main()
