"""What the census goes by: plain values that can be compared, kept and written down."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Final, NamedTuple

from ....model.kinds.words import Brood
from .groups import LifeGroup

BROOD: Final[tuple[Brood, ...]] = ("eggs", "larvae", "pupae")
EVER: Final = 100_000
"""A day that nobody lives to see: a rest without an end."""
HASHED: Final = 8
"""So many of the latest observations tell colonies apart at first sight (tests.bench.plan_cost, unchanged)."""
Spell = tuple[int, int]
"""The first day, and the first day after it."""


class Warmth(NamedTuple):
    """From ``day`` on it was so warm, until the next entry; the last one holds for the time to come."""

    day: int
    day_c: float
    night_c: float


class Seen(NamedTuple):
    """One thing that was seen or done on a day. ``event_id``: of the log, for the reasons; of ``protein`` none.

    ``what``: ``workers``, ``eggs``, ``larvae``, ``pupae`` were counted (``number``, or ``low`` and ``high``; ``low``
    alone: at least as many) or put into a word
    (``none``, ``few``, ``some``, ``many``, brood also ``seen``: one at least); ``added``: brood of the
    stage ``word`` was given (``number``, None: nobody wrote it down); ``died``: so many workers were found dead;
    ``protein``: what became of the insects that were offered, ``word`` ``taken`` or ``refused``; ``moved``: they live
    elsewhere since.
    """

    day: int
    what: str
    number: float | None = None
    word: str | None = None
    low: float | None = None
    high: float | None = None
    event_id: str = ""

    @property
    def any(self) -> bool:
        """Say whether it found any of what it looked for."""
        return (self.number or self.high or self.low or 0) > 0 or self.word not in (None, "none")


@dataclass(frozen=True, slots=True)
class Facts:
    """All that is known of a colony. Days are counted from 1970-01-01 in the household's zone.

    ``founding``: ``claustral``, ``semi_claustral``, ``parasitic`` or None, where it is a colony with workers;
    ``founded_day``: of the mating flight; ``known_day``: since when the colony is known; ``stage``: the keeper's word;
    ``warmth``: in order of days, at least one; ``warmth_sd_c``: how well it is known; ``rests``: spells of rest, past
    and planned; ``slow``: spells in which its yearly clock slows the colony; ``seen``: in order of days. ``offers``: by
    the day of what is said of ``protein``, its latest check, for the reasons: one more of a week that says the same
    changes nothing that is reckoned.
    """

    group: LifeGroup
    known_day: int
    warmth: tuple[Warmth, ...]
    founding: str | None = None
    founded_day: int | None = None
    stage: str | None = None
    warmth_sd_c: float = 1.0
    queens: int = 1
    rests: tuple[Spell, ...] = ()
    slow: tuple[Spell, ...] = ()
    seen: tuple[Seen, ...] = ()
    offers: Mapping[int, str] = field(default_factory=dict, compare=False)

    def told_by(self, seen: Seen) -> str:
        """Return the event that tells of something that was seen; nothing for what no log told."""
        return seen.event_id or (self.offers.get(seen.day, "") if seen.what == "protein" else "")

    def __hash__(self) -> int:
        """Return a hash of what is latest: few facts differ in what is older alone, and all is compared then."""
        return hash(
            (self.group, self.known_day, self.stage, self.warmth[-1:], len(self.seen), self.seen[-HASHED:])
        )


LOOKS_BACK_DAYS: Final = 300
BACK_ROUND_DAYS: Final = 64
"""Looks of so many days are taken in, of up to these more: the first of them stays the same for weeks."""


def looks_back_to(day: int) -> int:
    """Return the first day whose looks still tell something of a day: older ones speak of workers long dead."""
    return (day - LOOKS_BACK_DAYS) // BACK_ROUND_DAYS * BACK_ROUND_DAYS


def lately(facts: Facts, day: int) -> Facts:
    """Return the facts without what was seen before, where workers were counted since."""
    first = bisect_left(facts.seen, looks_back_to(day), key=lambda seen: seen.day)
    recent = facts.seen[first:]
    if first == 0 or not any(seen.what == "workers" and seen.any for seen in recent):
        return facts
    return replace(facts, seen=recent, known_day=recent[0].day)
