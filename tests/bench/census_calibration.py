"""Whether the census's ranges come true: ``python -m tests.bench.census_calibration [COLONIES] [KINDS] [GROUPS]``.

Colonies are simulated ant by ant (tests/care/census), by seeds that no constant of the census was tuned on. Prints, by
kind, group and question, how many of 100 intervals of 80 % held the truth, and how wide they are against a line through
the same counts, which held so many: as both say it, and once each is drawn out or in until it holds 80 of 100; draws
the reliability curves into docs/images/census-reliability.svg. Takes about ten minutes of a processor with 300
colonies.
"""

from __future__ import annotations

import math
import statistics
import sys
from collections.abc import Iterable
from pathlib import Path
from statistics import NormalDist

from tests.care.census.calibration import GROUPS, JUDGED_ON, KINDS, Told, many, share_held

PICTURE = Path(__file__).parents[2] / "docs/images/census-reliability.svg"
LEVELS = [level / 20 for level in range(1, 20)]
SIDE = 220
COLUMNS = (
    *("kind", "group", "question", "colonies", "held", "below", "above", "width"),
    *("of a line's", "that held", "both at 80"),
)


def main(colonies: int, kinds: tuple[str, ...], groups: tuple[str, ...]) -> None:
    """Measure, print, draw."""
    print(f"| {' | '.join(COLUMNS)} |")
    print("|---" * len(COLUMNS) + "|")
    curves: dict[str, list[Told]] = {}
    for kind in kinds:
        for code in groups:
            for question, said in many(kind, code, colonies, JUDGED_ON).items():
                curves.setdefault(f"{kind}: {question}", []).extend(said)
                print("| " + " | ".join(map(str, (kind, code, question, *row_of(said)))) + " |", flush=True)
    PICTURE.write_text(picture(curves), "utf-8")


def row_of(said: list[Told]) -> tuple[str, ...]:
    """Return what is printed of one case."""
    below, above = (
        sum(misses) / len(said)
        for misses in ((one.truth < one.low for one in said), (one.truth > one.high for one in said))
    )
    lined = [one for one in said if one.line]
    width = statistics.median(one.width for one in said)
    cells = [str(len(said)), *(f"{share:.2f}" for share in (share_held(said), below, above)), f"{width:.2f}"]
    if not lined:
        return (*cells, "", "", "")
    narrower = statistics.median(one.width / one.line for one in lined)
    held = sum(one.line_reach <= 1 for one in lined) / len(lined)
    even = narrower * stretch(one.reach for one in lined) / stretch(one.line_reach for one in lined)
    return (*cells, f"{narrower:.2f}", f"{held:.2f} of {len(lined)}", f"{even:.2f}")


def stretch(reaches: Iterable[float]) -> float:
    """Return by how much intervals must be drawn out to hold 80 of 100: below 1 they may be drawn in."""
    ordered = sorted(reaches)
    return ordered[math.ceil(0.8 * len(ordered)) - 1]


def reliability(said: list[Told]) -> list[float]:
    """Return the share held by intervals of each level, drawn from those of 80 % as a bell's."""
    eighty = NormalDist().inv_cdf(0.9)
    found = []
    for level in LEVELS:
        reach = NormalDist().inv_cdf(0.5 + level / 2) / eighty
        found.append(sum(one.reach <= reach for one in said) / len(said))
    return found


def picture(curves: dict[str, list[Told]]) -> str:
    """Return one small square a question: said along, held upwards; the straight line is what should be."""
    cells = []
    for number, (title, said) in enumerate(curves.items()):
        left, top = number % 3 * (SIDE + 40) + 30, number // 3 * (SIDE + 60) + 30
        points = " ".join(
            f"{left + level * SIDE:.1f},{top + SIDE - held * SIDE:.1f}"
            for level, held in zip(LEVELS, reliability(said), strict=True)
        )
        cells.append(
            f'<rect x="{left}" y="{top}" width="{SIDE}" height="{SIDE}" fill="none" stroke="#999"/>'
            f'<line x1="{left}" y1="{top + SIDE}" x2="{left + SIDE}" y2="{top}" stroke="#999" stroke-dasharray="4"/>'
            f'<polyline points="{points}" fill="none" stroke="#b5541c" stroke-width="2"/>'
            f'<text x="{left}" y="{top - 8}" font-size="13">{title} ({len(said)})</text>'
        )
    rows = -(-len(curves) // 3)
    width, height = 3 * (SIDE + 40) + 20, rows * (SIDE + 60) + 10
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" font-family="sans-serif" fill="#222">'
        + "".join(cells)
        + "</svg>\n"
    )


if __name__ == "__main__":
    given = sys.argv[1:]
    main(
        int(given[0]) if given else 300,
        tuple(given[1].split(",")) if len(given) > 1 else KINDS,
        tuple(given[2].split(",")) if len(given) > 2 else GROUPS,
    )
