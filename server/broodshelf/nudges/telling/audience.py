"""Who hears of what. Pure.

A due need goes first to whoever is in charge of the colony: the stand-ins whose pass covers it today, else the
keeper who usually sees to it. After the household's patience it goes to the others, or again to the same. What
is urgent, and what was told on an earlier day and not done, goes to everyone at once.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from ...model.kinds.words import PersonRole


@dataclass(frozen=True, slots=True)
class Person:
    """A keeper or stand-in. ``reachable``: at least one of their phones listens."""

    id: str
    role: PersonRole
    reachable: bool
    pass_id: str | None = None


@dataclass(frozen=True, slots=True)
class PassDates:
    """A pass that was not taken back: its colonies, first and last day (ISO dates in the household's zone)."""

    id: str
    colony_ids: frozenset[str]
    starts_on: str
    ends_on: str

    def covers(self, colony_id: str, today: str) -> bool:
        """Say whether the pass lets its holder look after a colony on a day."""
        return colony_id in self.colony_ids and self.starts_on <= today <= self.ends_on


@dataclass(frozen=True, slots=True)
class Matter:
    """What is to be told. ``usual``: the keeper who last saw to the colony; ``flagger``: who reported the fault.

    ``keepers_only``: no stand-in is asked for it.
    """

    colony_id: str
    urgent: bool = False
    follows: bool = False
    usual: str | None = None
    flagger: str | None = None
    told: frozenset[str] = frozenset()
    keepers_only: bool = False


def hearers(
    matter: Matter, people: Sequence[Person], passes: Iterable[PassDates], today: str
) -> tuple[str, ...]:
    """Return the ids of those who hear of it now, in the order of ``people``; only people who can be reached.

    ``matter.told`` holds who heard of it earlier in the same round; empty the first time. Whoever reported a
    fault knows of it, and hears again only if it is still open on a later day.
    """
    covering = {p.id for p in passes if p.covers(matter.colony_id, today)}
    if matter.keepers_only:
        covering = set()
    standing_in = [p.id for p in people if p.role == "stand_in" and p.pass_id in covering and p.reachable]
    keepers = [p.id for p in people if p.role == "keeper" and p.reachable]
    everyone = [p.id for p in people if p.id in (*keepers, *standing_in)]
    if matter.told:
        chosen = [i for i in everyone if i not in matter.told] or everyone
    elif matter.urgent or matter.follows:
        chosen = everyone
    else:
        chosen = standing_in or ([matter.usual] if matter.usual in keepers else keepers[:1])
    knows = None if matter.follows else matter.flagger
    return tuple(i for i in chosen if i is not None and i != knows)
