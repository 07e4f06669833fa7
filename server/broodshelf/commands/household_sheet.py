"""A printable sheet of invitations: a page of HTML with a card for each, its QR code drawn into it."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from html import escape
from pathlib import Path

import segno

from ..languages import say
from ..people.invitations import Invitation
from ..records.epochs import write_whole

STYLE = """
@page { size: A4; margin: 12mm }
body { font: 11pt/1.35 sans-serif; margin: 0; color: #000; background: #fff }
main { display: grid; grid-template-columns: 1fr 1fr }
article { border: 0.2mm dashed #888; padding: 5mm; break-inside: avoid; box-sizing: border-box; height: 65mm }
article svg { float: inline-start; width: 38mm; height: 38mm; margin-inline-end: 4mm }
h2 { font-size: 12pt; margin: 0 0 2mm }
p { margin: 0 0 1.5mm; overflow-wrap: anywhere }
.code { font: 10pt monospace; clear: both }
"""


@dataclass(frozen=True, slots=True)
class Card:
    """An invitation as it is handed out; ``expires_on`` is the last whole day (UTC) on which it is good."""

    number: int
    code: str
    link: str
    server: str
    expires_on: str


def cards(invitations: Iterable[Invitation], public_url: str) -> list[Card]:
    """Return what stands on each card."""
    return [
        Card(
            each.number,
            each.code,
            f"{public_url}/#/claim/{each.code}",
            public_url,
            f"{dt.datetime.fromtimestamp(each.expires_ms / 1000, dt.UTC) - dt.timedelta(days=1):%Y-%m-%d}",
        )
        for each in invitations
    ]


def write(sheet: Sequence[Card], target: Path, tag: str) -> None:
    """Write the page, readable by its owner only, because each card lets somebody in."""
    articles = "\n".join(_article(card, tag) for card in sheet)
    title = escape(say(tag, "sheet-title"))
    page = (
        f'<!doctype html>\n<html lang="{escape(tag)}">\n<meta charset="utf-8">\n<title>{title}</title>\n'
        f"<style>{STYLE}</style>\n<main>\n{articles}\n</main>\n</html>\n"
    )
    target.parent.mkdir(parents=True, exist_ok=True)
    write_whole(target, page)


def _article(card: Card, tag: str) -> str:
    drawn = segno.make(card.link, error="m").svg_inline(scale=4, border=4, omitsize=True)
    words = [
        say(tag, "sheet-how"),
        say(tag, "sheet-until", {"on": card.expires_on}),
        say(tag, "sheet-or-code", {"server": card.server}),
    ]
    lines = "".join(f"<p>{escape(each)}</p>" for each in words)
    heading = escape(say(tag, "sheet-number", {"number": card.number}))
    return f'<article><h2>{heading}</h2>{drawn}{lines}<p class="code">{escape(card.code)}</p></article>'
