"""Whether the census's ranges come true: ``python -m tests.bench.census_calibration [COLONIES] [KINDS] [GROUPS]``.

Colonies are simulated ant by ant (tests/care/census). Prints, by kind, group and question, how many of 100 intervals of
80 % held the truth, and how wide they are against a line through the same counts; draws the reliability curves into
docs/images/census-reliability.svg. Seeds are fixed. Takes about a quarter of an hour with 300 colonies.
"""

from __future__ import annotations

import statistics
import sys
from pathlib import Path
from statistics import NormalDist

from tests.care.census.calibration import GROUPS, KINDS, Told, many, share_held

PICTURE = Path(__file__).parents[2] / "docs/images/census-reliability.svg"
LEVELS = [level / 20 for level in range(1, 20)]
SIDE = 220


def main(colonies: int, kinds: tuple[str, ...], groups: tuple[str, ...]) -> None:
    """Measure, print, draw."""
    print("| kind | group | question | colonies | held | width | of a line's |")
    print("|---|---|---|---|---|---|---|")
    curves: dict[str, list[Told]] = {}
    for kind in kinds:
        for code in groups:
            for question, said in many(kind, code, colonies).items():
                curves.setdefault(f"{kind}: {question}", []).extend(said)
                width = statistics.median(one.width for one in said)
                shares = [one.width / one.line for one in said if one.line]
                against = f"{statistics.median(shares):.2f}" if shares else ""
                row = (kind, code, question, len(said), f"{share_held(said):.2f}", f"{width:.2f}", against)
                print("| " + " | ".join(map(str, row)) + " |", flush=True)
    PICTURE.write_text(picture(curves), "utf-8")


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
