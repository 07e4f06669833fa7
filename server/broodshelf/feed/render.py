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

from ..languages import in_list, language_of, say, say_code
from ..languages.saying import knows, message_id
from ..languages.tags import read_tag

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


def render(
    feed_id: str, name: str, public_url: str, rounds: Iterable[Round], language: str | None = None
) -> bytes:
    """Return the calendar as bytes, in the language of a tag.

    UIDs come from the feed's id and the round's key, so they stay.
    """
    tag = language_of(language)
    calendar = Calendar()
    calendar.add("prodid", f"-//Broodshelf//Rounds//{read_tag(tag).language.upper()}")
    calendar.add("version", "2.0")
    calendar.add("name", _plain(name))
    calendar.add("x-wr-calname", _plain(name))
    calendar.add("refresh-interval", REFRESH, parameters={"VALUE": "DURATION"})
    calendar.add("x-published-ttl", "PT1H")
    for each in rounds:
        calendar.add_component(_event(uuid.UUID(feed_id), public_url, each, tag))
    return bytes(calendar.to_ical())


def _event(namespace: uuid.UUID, public_url: str, each: Round, tag: str) -> Event:
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
    event.add("summary", _summary(open_parts or each.parts, tag))
    event.add("description", _description(open_parts or each.parts, tag))
    event.add("url", f"{public_url}/#/round")
    if open_parts:
        alarm = Alarm()
        alarm.add("uid", str(uuid.uuid5(namespace, f"{each.key}/alarm")))
        alarm.add("action", "DISPLAY")
        alarm.add("description", _summary(open_parts, tag))
        alarm.add("trigger", dt.timedelta(0))
        event.add_component(alarm)
    return event


def _summary(parts: Iterable[Part], tag: str) -> str:
    parts = list(parts)
    needs = _needs(parts, tag)
    colonies = list(dict.fromkeys(part.colony for part in parts))
    if len(colonies) == 1:
        what = say(tag, "calendar-summary", {"needs": needs, "colony": colonies[0]})
    else:
        what = say(tag, "calendar-summary-many", {"needs": needs, "n": len(colonies)})
    urgent = any(part.urgent for part in parts)
    return _plain(say(tag, "calendar-now", {"what": what}) if urgent else what)


def _description(parts: Iterable[Part], tag: str) -> str:
    by_colony: dict[str, list[Part]] = defaultdict(list)
    for part in parts:
        by_colony[_plain(part.colony)].append(part)
    return "\n".join(
        say(tag, "calendar-line", {"colony": colony, "needs": _needs(of_it, tag)})
        for colony, of_it in by_colony.items()
    )


def _needs(parts: Iterable[Part], tag: str) -> str:
    """Return what is needed as a list that begins a sentence."""
    first, *others = dict.fromkeys(part.need for part in parts)
    return in_list([say_code(tag, "need", first), *(_inside(need, tag) for need in others)], tag)


def _inside(need: str, tag: str) -> str:
    name = message_id("need", need)
    return say(tag, f"{name}.inside") if knows(name) else say_code(tag, "need", need)


def _plain(text: str) -> str:
    """Return a name without control characters, which TEXT values may not hold (RFC 5545, section 3.3.11)."""
    return "".join(" " if unicodedata.category(char) == "Cc" else char for char in text).strip()
