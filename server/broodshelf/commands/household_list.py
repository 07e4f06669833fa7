"""``broodshelf household list``: who is on this server and how much each takes, in the terminal only."""

from __future__ import annotations

import argparse
import datetime as dt
from dataclasses import dataclass

from sqlalchemy import Connection, func, select

from ..app import system_clock
from ..languages import say
from ..languages.numbers import number_in_words
from ..people.invitations import tally
from ..people.room import MIB, share_percent
from ..people.sizes import Size, measure
from ..people.tables import devices
from ..records.database import reading
from ..records.photo_files import PhotoFiles
from ..records.store import read_kind
from ..records.tables import households
from ..settings import Room, Settings
from ..web.parts import parts
from .opened import opened

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
    with opened(settings), reading() as connection:
        lines = gather(connection, parts().photos)
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


def gather(connection: Connection, photos: PhotoFiles) -> list[Line]:
    """Return every household with its size, oldest first."""
    ids = connection.scalars(select(households.c.id).order_by(households.c.created_ms, households.c.id)).all()
    sizes = measure(connection, photos, ids)
    d = devices.c
    seen = {
        household_id: int(at_ms)
        for household_id, at_ms in connection.execute(
            select(d.household_id, func.max(d.last_seen_ms)).group_by(d.household_id)
        )
    }
    return [
        Line(
            household_id,
            name_of(connection, household_id),
            len(read_kind(connection, household_id, "person")),
            seen.get(household_id),
            sizes[household_id],
        )
        for household_id in ids
    ]


def name_of(connection: Connection, household_id: str) -> str:
    """Return a household's name as a terminal may show it: what is no letter or sign of a line is left out."""
    rows = read_kind(connection, household_id, "household")
    name = str(rows[0].values.get("name", "")) if rows else ""
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
