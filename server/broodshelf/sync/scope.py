"""What an actor may see: every row for a keeper; the rows about their colonies for a stand-in.

A stand-in's scope is a set of record ids; its hash travels in the cursor, so a pass whose colonies change
(or a colony that moved to another vessel) leads to a full pull of the new scope.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass

from sqlalchemy import ColumnElement, Connection, or_, select, true

from ..people.actor import Actor
from ..records.store import read_kind
from ..records.tables import records

KEEPER_SCOPE = "whole"
"""Another word than a released server used makes every keeper's phone pull anew."""
SHARED_KINDS = ("household", "person", "lot")
"""Kinds that a stand-in sees whatever their colonies: names to sign with, and what there is to feed."""


@dataclass(frozen=True, slots=True)
class Scope:
    """Which rows to deliver. ``version`` changes whenever rows enter or leave."""

    version: str
    where: ColumnElement[bool]
    colony_ids: frozenset[str] | None = None

    @property
    def whole(self) -> bool:
        """Whether this is all there is, as keepers get it."""
        return self.colony_ids is None


def scope_of(connection: Connection, actor: Actor) -> Scope:
    """Return the scope of an actor as it is now."""
    if actor.window is None:
        return Scope(KEEPER_SCOPE, true())
    colony_ids = actor.window.colony_ids
    around: set[str] = {actor.window.pass_id}
    for colony in read_kind(connection, actor.household_id, "colony"):
        if colony.id in colony_ids:
            around.update(v for v in (colony.values.get("vessel_id"), colony.values.get("place_id")) if v)
    names = sorted(colony_ids | around)
    version = hashlib.sha256(" ".join(names).encode()).hexdigest()[:16]
    where = or_(
        records.c.id.in_(sorted(around)),
        records.c.colony_id.in_(sorted(colony_ids)),
        records.c.kind.in_(SHARED_KINDS),
    )
    return Scope(version, where, colony_ids)


def known_colonies(connection: Connection, household_id: str) -> frozenset[str]:
    """Return the ids of a household's colonies that are not gone."""
    return frozenset(
        connection.execute(
            select(records.c.id).where(
                records.c.household_id == household_id, records.c.kind == "colony", records.c.gone.is_(False)
            )
        ).scalars()
    )
