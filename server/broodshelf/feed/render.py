"""Rounds as an iCalendar (RFC 5545, 7986): one event a round, in UTC, the same bytes for the same rounds. Pure.

Events, not to-do entries: common calendars do not show those. UTC: the household's zone rules are settled already.
"""

from __future__ import annotations

import datetime as dt
import unicodedata
import uuid
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from icalendar import Alarm, Calendar, Event

from ..care import wording

LASTS: Final = dt.timedelta(minutes=15)
REFRESH: Final = dt.timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class Part:
    """One need of one colony in a round. ``changed_ms``: when it last changed, ms since 1970 UTC."""

    colony: str
    need: str
    done: bool
    urgent: bool
    changed_ms: int


@dataclass(frozen=True, slots=True)
class Round:
    """One round: its key inside the feed, when it is (ms since 1970 UTC) and what is to be done.

    ``sequence`` counts how often it moved, ``moved_ms`` says when it did last.
    """

    key: str
    at_ms: int
    parts: tuple[Part, ...]
    local_date: str = ""
    slot: str = ""
    sequence: int = 0
    moved_ms: int | None = None


def render(feed_id: str, name: str, public_url: str, rounds: Iterable[Round]) -> bytes:
    """Return the calendar as bytes. UIDs come from the feed's id and the round's key, so they stay."""
    calendar = Calendar()
    calendar.add("prodid", "-//Broodshelf//Rounds//EN")
    calendar.add("version", "2.0")
    calendar.add("name", _plain(name))
    calendar.add("x-wr-calname", _plain(name))
    calendar.add("refresh-interval", REFRESH, parameters={"VALUE": "DURATION"})
    calendar.add("x-published-ttl", "PT1H")
    for each in rounds:
        calendar.add_component(_event(uuid.UUID(feed_id), public_url, each))
    return bytes(calendar.to_ical())


def _event(namespace: uuid.UUID, public_url: str, each: Round) -> Event:
    event = Event()
    open_parts = [part for part in each.parts if not part.done]
    starts = dt.datetime.fromtimestamp(each.at_ms // 1000, dt.UTC)
    changed_ms = max(each.moved_ms or 0, *(part.changed_ms for part in each.parts))
    changed = dt.datetime.fromtimestamp(changed_ms // 1000, dt.UTC)
    event.add("uid", str(uuid.uuid5(namespace, each.key)))
    event.add("dtstamp", changed)
    event.add("last-modified", changed)
    event.add("sequence", each.sequence)
    event.add("dtstart", starts)
    event.add("dtend", starts + LASTS)
    event.add("transp", "TRANSPARENT")
    event.add("status", "CONFIRMED" if open_parts else "CANCELLED")
    event.add("summary", _summary(open_parts or each.parts))
    event.add("description", _description(open_parts or each.parts))
    event.add("url", f"{public_url}/#/round")
    if open_parts:
        alarm = Alarm()
        alarm.add("uid", str(uuid.uuid5(namespace, f"{each.key}/alarm")))
        alarm.add("action", "DISPLAY")
        alarm.add("description", _summary(open_parts))
        alarm.add("trigger", dt.timedelta(0))
        event.add_component(alarm)
    return event


def _summary(parts: Iterable[Part]) -> str:
    parts = list(parts)
    needs = list(dict.fromkeys(wording.say("need", part.need) for part in parts))
    colonies = list(dict.fromkeys(part.colony for part in parts))
    who = colonies[0] if len(colonies) == 1 else f"{len(colonies)} colonies"
    urgent = "Now: " if any(part.urgent for part in parts) else ""
    words = ", ".join(needs)
    return _plain(f"{urgent}{words[:1].upper()}{words[1:]} for {who}")


def _description(parts: Iterable[Part]) -> str:
    by_colony: dict[str, list[str]] = defaultdict(list)
    for part in parts:
        by_colony[part.colony].append(wording.say("need", part.need))
    return "\n".join(f"{_plain(colony)}: {', '.join(needs)}" for colony, needs in by_colony.items())


def _plain(text: str) -> str:
    """Return a name without control characters, which TEXT values may not hold (RFC 5545, section 3.3.11)."""
    return "".join(" " if unicodedata.category(char) == "Cc" else char for char in text).strip()
