"""``broodshelf household list``: who is on this server and how much each takes, in the terminal only."""

from __future__ import annotations

import argparse
import datetime as dt
import json
from dataclasses import dataclass

from sqlalchemy import Connection, func, select

from ..app import system_clock
from ..languages import say
from ..languages.numbers import number_in_words
from ..people.invitations import tally
from ..people.room import MIB, all_counted, not_counted_lately, recount, share_percent
from ..people.sizes import Size
from ..people.tables import devices
from ..records.database import reading, writing
from ..records.photo_files import PhotoFiles
from ..records.store import read_kind
from ..records.tables import households, records
from ..settings import Room, Settings
from ..web.parts import parts
from .opened import opened

AT_ONCE = 20
"""Households that are counted in one transaction."""
HEADINGS = ("name", "id", "people", "seen", "records", "pictures", "mib", "share")


@dataclass(frozen=True, slots=True)
class Line:
    """A household as the operator sees it; ``seen_ms``: when one of its phones last spoke to the server."""

    id: str
    name: str
    people: int
    seen_ms: int | None
    size: Size


def show(settings: Settings, _chosen: argparse.Namespace, tag: str) -> int:
    """Print a table of all households, oldest first, and how many invitations are open."""
    with opened(settings):
        count_anew(parts().photos, system_clock())
        with reading() as connection:
            lines = gather(connection)
            invited = tally(connection, system_clock())
    rows = [
        [say(tag, f"command-list-{name}") for name in HEADINGS],
        *(_cells(line, settings.room, tag) for line in lines),
    ]
    widths = [max(len(row[n]) for row in rows) for n in range(len(HEADINGS))]
    for row in rows:
        texts = [cell.ljust(width) for cell, width in zip(row[:2], widths[:2], strict=True)]
        numbers = [cell.rjust(width) for cell, width in zip(row[2:], widths[2:], strict=True)]
        print("  ".join([*texts, *numbers]).rstrip())
    counts = {"open": invited.open, "used": invited.used, "expired": invited.expired}
    print(say(tag, "command-list-invitations", counts))
    return 0


def count_anew(photos: PhotoFiles, now_ms: int) -> None:
    """Count the households that were not counted within a month, some at a time; all others are believed."""
    with reading() as connection:
        wanted = not_counted_lately(connection, now_ms)
    for begin in range(0, len(wanted), AT_ONCE):
        with writing() as connection:
            recount(connection, photos, wanted[begin : begin + AT_ONCE], now_ms)


def gather(connection: Connection) -> list[Line]:
    """Return every household with its size as it was counted, oldest first: none of its logs is read."""
    sizes, h, d = all_counted(connection), households.c, devices.c
    of_house = (records.c.household_id == h.id) & records.c.gone.is_(False)
    own = select(records.c.fields).where(of_house, records.c.kind == "household").limit(1).scalar_subquery()
    people = select(func.count()).where(of_house, records.c.kind == "person").scalar_subquery()
    seen = select(func.max(d.last_seen_ms)).where(d.household_id == h.id).scalar_subquery()
    rows = connection.execute(select(h.id, own, people, seen).order_by(h.created_ms, h.id))
    return [
        Line(household_id, _shown(own_fields), number, seen_ms, sizes.get(household_id, Size()))
        for household_id, own_fields, number, seen_ms in rows
    ]


def name_of(connection: Connection, household_id: str) -> str:
    """Return a household's name as a terminal may show it."""
    rows = read_kind(connection, household_id, "household")
    return _printable(str(rows[0].values.get("name", ""))) if rows else ""


def _shown(fields: str | None) -> str:
    return _printable(str(json.loads(fields).get("name", ""))) if fields else ""


def _printable(name: str) -> str:
    """Leave out what is no letter or sign of a line."""
    return "".join(letter for letter in name if letter.isprintable())


def _cells(line: Line, room: Room, tag: str) -> list[str]:
    size = line.size
    seen = f"{dt.datetime.fromtimestamp(line.seen_ms / 1000, dt.UTC):%Y-%m-%d %H:%M}" if line.seen_ms else "–"
    return [
        line.name,
        line.id,
        str(line.people),
        seen,
        number_in_words(size.records, tag),
        number_in_words(size.pictures, tag),
        number_in_words(round(size.size_bytes / MIB, 1), tag),
        f"{share_percent(size, room)} %",
    ]
