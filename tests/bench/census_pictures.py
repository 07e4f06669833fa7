"""Draws a founding as the census sees it, docs/images/census-founding.svg: ``python -m tests.bench.census_pictures``.

At the left its stages by the day; at the right between which days the first workers are said to come, after each answer
to 'have you seen pupae?', asked on one day.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from broodshelf.care.colony import census
from broodshelf.care.colony.census.groups import LIFE_GROUPS
from broodshelf.care.colony.census.outlook import Census, Inside

PICTURE = Path(__file__).parents[2] / "docs/images/census-founding.svg"
DAY = 20_600
ASKED = 28
SIDE = 260
STAGES: tuple[tuple[str, str, Callable[[Inside], float]], ...] = (
    ("eggs", "#b58a1c", lambda inside: inside.eggs.best),
    ("larvae", "#5a8f3c", lambda inside: inside.larvae.best),
    ("pupae", "#3c6f9f", lambda inside: inside.pupae.best),
    ("workers", "#222", lambda inside: inside.workers.best),
)


def said(word: str | None = None, day: int = 0) -> Census:
    """Return the census of a *Lasius niger* founding at 25 °C, unless a look at its pupae found ``word``."""
    seen = () if word is None else (census.Seen(DAY + ASKED, "pupae", word=word),)
    warmth = (census.Warmth(DAY, 25, 25),)
    facts = census.Facts(LIFE_GROUPS["lasius"], DAY, warmth, "claustral", DAY, "founding", seen=seen)
    return census.of(facts, DAY + day)


def picture() -> str:
    """Return the drawing."""
    cells, top = [], 30
    plain = said()
    days = range(0, 81, 2)
    insides = [plain.on(DAY + day) for day in days]
    most = max(number(inside) for _, _, number in STAGES for inside in insides)
    for row, (name, colour, number) in enumerate(STAGES):
        points = " ".join(
            f"{30 + day / 80 * SIDE:.0f},{top + SIDE - number(inside) / most * SIDE:.0f}"
            for day, inside in zip(days, insides, strict=True)
        )
        cells.append(f'<polyline points="{points}" fill="none" stroke="{colour}" stroke-width="2"/>')
        cells.append(f'<text x="{36 + 70 * row}" y="{top - 8}" font-size="13" fill="{colour}">{name}</text>')
    cells += [
        f'<text x="{30 + day / 80 * SIDE:.0f}" y="{top + SIDE + 16}" font-size="12">{day}</text>'
        for day in (0, 20, 40, 60)
    ]
    answers = (("before the look", None), ("pupae seen", "seen"), ("not yet", "none"))
    left = SIDE + 160
    for row, (name, word) in enumerate(answers):
        spell = said(word, ASKED).first_workers
        y = top + 60 * row + 50
        x = [left + (end - DAY - 20) / 50 * SIDE for end in (spell.low, spell.best, spell.high)]
        told = f"{spell.low - DAY:.0f} to {spell.high - DAY:.0f}"
        cells.append(f'<path d="M{x[0]:.0f} {y}H{x[2]:.0f}" stroke="#b5541c" stroke-width="8"/>')
        cells.append(f'<circle cx="{x[1]:.0f}" cy="{y}" r="6" fill="#222"/>')
        cells.append(f'<text x="{left}" y="{y - 14}" font-size="13">{name}: day {told}</text>')
    cells += [
        f'<text x="{left + (day - 20) / 50 * SIDE:.0f}" y="{top + SIDE + 16}" font-size="12">{day}</text>'
        for day in (30, 40, 50, 60)
    ]
    frames = "".join(
        f'<rect x="{x}" y="{top}" width="{SIDE}" height="{SIDE}" fill="none" stroke="#999"/>'
        for x in (30, left)
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {left + SIDE + 20} {SIDE + 60}" '
        f'font-family="sans-serif" fill="#222">{frames}{"".join(cells)}</svg>\n'
    )


if __name__ == "__main__":
    PICTURE.write_text(picture(), "utf-8")
