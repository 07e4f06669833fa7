"""What colonies that are like a tasting one took before: where its tasting starts from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Final

from sqlalchemy import Connection

from ..care.colony.arrival import settlings_of
from ..care.feeding.tasting import Tasted, likes_of
from ..care.plan.known import species_of
from ..care.plan.tastings import taken_in_tastings
from ..model import kinds
from ..model.facts import ColonyState
from ..records.recent import Entry, read_recent
from ..records.store import Record, read_all
from .facts_of import log_of

MOST: Final = 12
"""How many other colonies are asked, those of its species first: what a plan reads stays bounded."""


def with_likes(
    connection: Connection,
    household_id: str,
    states: Iterable[ColonyState],
    colonies: Iterable[Record],
    since_ms: int,
) -> list[ColonyState]:
    """Return the states, with likes put in where a tasting runs; without one nothing is read.

    ``colonies``: all of the household; ``since_ms``: how far back their logs count.
    """
    others = [
        ColonyState(colony_id, colony.species_code, guild=colony.guild, acquired_on=colony.acquired_on)
        for colony_id, colony in read_all(kinds.Colony, colonies).items()
    ]
    logs: dict[str, Sequence[Entry]] = {}
    found = []
    for state in states:
        if state.tasting is None:
            found.append(state)
            continue
        like = _like(state, others)
        logs |= read_recent(connection, household_id, [o.id for o in like if o.id not in logs], since_ms)
        found.append(replace(state, likes=likes_of(state.species_code, _guild(state), _tasted(like, logs))))
    return found


def _like(state: ColonyState, others: Iterable[ColonyState]) -> list[ColonyState]:
    same = [o for o in others if o.id != state.id and (_same_species(o, state) or _guild(o) == _guild(state))]
    return sorted(same, key=lambda other: (not _same_species(other, state), other.id))[:MOST]


def _same_species(one: ColonyState, other: ColonyState) -> bool:
    return one.species_code is not None and one.species_code == other.species_code


def _guild(state: ColonyState) -> str:
    return species_of(state).guild


def _tasted(colonies: Iterable[ColonyState], logs: Mapping[str, Sequence[Entry]]) -> list[Tasted]:
    found = []
    for colony in colonies:
        events = log_of(logs[colony.id])
        taken = taken_in_tastings(events, settlings_of(replace(colony, events=events)))
        found += [
            Tasted(colony.species_code, _guild(colony), food_code, tally)
            for food_code, tally in taken.items()
        ]
    return found
