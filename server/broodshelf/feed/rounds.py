"""What a feed shows: the rounds of the household or of a pass, gathered from occurrences."""

from __future__ import annotations

from collections import defaultdict
from typing import Final

from sqlalchemy import Connection, select

from ..errors import NotFound, SignedOut
from ..languages import told
from ..model.gauges import DAY_MS
from ..model.kinds import Pass, read
from ..model.tasks import FOR_STAND_IN
from ..people.language import language_of_person, tag_of_pass
from ..people.passes import window_of
from ..records.store import read_kind, read_record
from ..rounds.occurrence_rows import COLUMNS, as_occurrence
from ..rounds.tables import occurrences
from .render import Part, Round
from .tokens import Feed

PAST_DAYS: Final = 7
AHEAD_DAYS: Final = 60
"""Reach of a feed (RFC 5545 sets none): enough to see what was missed, short enough to stay small."""


def rounds_of(connection: Connection, feed: Feed, now_ms: int) -> tuple[str, list[Round]]:
    """Return the calendar's name and its rounds in order. Raises ``NotFound`` when the pass is no longer good."""
    household = read_record(connection, feed.household_id, feed.household_id)
    name = str(household.values.get("name") if household else "") or "Shelf"
    from_ms, to_ms = now_ms - PAST_DAYS * DAY_MS, now_ms + AHEAD_DAYS * DAY_MS
    colonies = {r.id: str(r.values["name"]) for r in read_kind(connection, feed.household_id, "colony")}
    if feed.pass_id is not None:
        try:
            window = window_of(connection, feed.household_id, feed.pass_id, now_ms)
        except SignedOut:
            raise NotFound(told("problem-pass-over")) from None
        colonies = {key: value for key, value in colonies.items() if key in window.colony_ids}
        from_ms, to_ms = max(from_ms, window.starts_ms), min(to_ms, window.ends_ms - 1)
    o = occurrences.c
    query = (
        select(*COLUMNS)
        .where(o.household_id == feed.household_id, o.at_ms.between(from_ms, to_ms))
        .order_by(o.at_ms, o.local_date, o.slot, o.subject_id, o.need)
    )
    gathered: dict[tuple[str, str], list[Part]] = defaultdict(list)
    times: dict[tuple[str, str], int] = {}
    for row in map(as_occurrence, connection.execute(query)):
        if row.subject_id in colonies and (feed.pass_id is None or row.task_what in FOR_STAND_IN):
            key = (row.local_date, row.slot)
            changed_ms = max(_made_ms(row.id), row.told_ms or 0, row.closed_ms or 0)
            times.setdefault(key, row.at_ms)
            gathered[key].append(
                Part(colonies[row.subject_id], row.need, row.state == "done", row.urgent, changed_ms)
            )
    made = [
        Round(f"{day}/{slot}", times[day, slot], tuple(parts), day, slot)
        for (day, slot), parts in gathered.items()
    ]
    return name, made


def language_of_feed(connection: Connection, feed: Feed) -> str | None:
    """Return the tag of whom a feed is for: of the pass, else of the keeper who made its address."""
    if feed.pass_id is not None:
        record = read_record(connection, feed.household_id, feed.pass_id)
        return None if record is None else tag_of_pass(read(Pass, record.values))
    return (
        None if feed.person_id is None else language_of_person(connection, feed.household_id, feed.person_id)
    )


def _made_ms(id_: str) -> int:
    """Return when a UUIDv7 was made: its first 48 bits (RFC 9562, section 5.7)."""
    return int(id_.replace("-", "")[:12], 16)
