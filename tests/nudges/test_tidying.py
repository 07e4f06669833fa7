"""What the daily tidying forgets, and what it keeps."""

from __future__ import annotations

from sqlalchemy import select
from tests.nudges.support import Shelf

from broodshelf.nudges.tidying import tidy_when_due
from broodshelf.records.database import reading
from broodshelf.records.tables import households, records

DAY_MS = 86_400_000


def places(shelf: Shelf) -> list[str]:
    with reading() as connection:
        return list(connection.scalars(select(records.c.id).where(records.c.kind == "place")))


def test_rows_gone_for_over_400_days_are_purged_and_younger_ones_stay(shelf: Shelf):
    phone = shelf.person("Mira", listens=False)
    old, young = (shelf.log(phone, "place", {"name": name}) for name in ("Window", "Cellar"))
    shelf.log(phone, "place", {"gone": True}, old)
    shelf.now_ms += 300 * DAY_MS
    shelf.log(phone, "place", {"gone": True}, young)
    shelf.now_ms += 101 * DAY_MS
    tidy_when_due(shelf.now_ms)

    assert places(shelf) == [young]
    with reading() as connection:
        assert connection.scalar(select(households.c.purged_rev)) > 0


def test_it_is_done_once_a_day(shelf: Shelf):
    phone = shelf.person("Mira", listens=False)
    gone = shelf.log(phone, "place", {"name": "Window"})
    tidy_when_due(shelf.now_ms + 400 * DAY_MS)
    shelf.log(phone, "place", {"gone": True}, gone)
    tidy_when_due(shelf.now_ms + 400 * DAY_MS + 1)

    assert places(shelf) == [gone]
