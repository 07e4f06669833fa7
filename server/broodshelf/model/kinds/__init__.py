"""The registry of record kinds: kind x field x form x who may write it.

This one table drives validation on the way in, the field merge, the guard inside ``/api/sync``, the whitelist of a
stand-in and the types that the phone's modules are checked against. Add a field here first; everything else follows.

Three groups of kinds:

* ``register``: a thing with a present state (a colony, a vessel, a pass). Merged field by field.
* ``event``: something that happened (a feeding, a fault). Never conflicts; amended or voided by later
  operations on the same id.
* ``derived``: written by the server only (a colony's plan, what was measured on a day).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, TypeVar

from . import forms
from .climate_days import PlaceDay
from .colonies import Colony, Rule
from .forms import FieldSpec, Kind, Scope, kind_of
from .house import Household, Pass, Person, Place, Vessel
from .larder import Lot, Tasting
from .log import (
    Answers,
    AtPlace,
    Boost,
    Check,
    Climate,
    Count,
    Fault,
    Feeding,
    Happened,
    Later,
    Move,
    Note,
    OfColony,
    Photo,
    Water,
)
from .plan import Plan
from .writers import HOUSE, KEEPER, SERVER, Writers

__all__ = [
    "HOUSE",
    "KEEPER",
    "KINDS",
    "SERVER",
    "Colony",
    "FieldSpec",
    "Household",
    "Kind",
    "Lot",
    "Part",
    "Pass",
    "Person",
    "Place",
    "PlaceDay",
    "Rule",
    "Tasting",
    "Vessel",
    "forms",
    "read",
    "required_fields",
]


@dataclass(slots=True, kw_only=True)
class Kept:
    """What every record says: whether it was deleted."""

    gone: bool | None = None


def _register(name: str, part: type, scope: Scope = "household") -> Kind:
    return kind_of(name, "register", part, Kept, writers=KEEPER, scope=scope)


def _of_colony(name: str, part: type, writers: Writers = HOUSE) -> Kind:
    return kind_of(name, "event", OfColony, Happened, Answers, Kept, part, writers=writers, scope="colony")


KINDS: Final[Mapping[str, Kind]] = {
    kind.name: kind
    for kind in (
        _register("household", Household),
        _register("person", Person),
        _register("place", Place),
        _register("vessel", Vessel),
        _register("colony", Colony, "colony"),
        _register("lot", Lot),
        _register("rule", Rule, "colony"),
        _register("tasting", Tasting),
        _register("pass", Pass),
        _of_colony("feeding", Feeding),
        _of_colony("check", Check),
        _of_colony("water", Water),
        _of_colony("fault", Fault),
        _of_colony("count", Count, KEEPER),
        _of_colony("move", Move, KEEPER),
        _of_colony("boost", Boost, KEEPER),
        kind_of("climate", "event", AtPlace, Happened, Answers, Kept, Climate, writers=KEEPER),
        _of_colony("note", Note),
        _of_colony("photo", Photo),
        _of_colony("later", Later),
        kind_of("plan", "derived", Plan, Kept, writers=SERVER, scope="colony"),
        kind_of("place_day", "derived", PlaceDay, Kept, writers=SERVER),
    )
}
"""Every kind by its name."""


def required_fields(kind: Kind) -> frozenset[str]:
    """Return the names of the fields without which a record of this kind cannot be made."""
    return _REQUIRED[kind.name]


_REQUIRED: Final = {
    kind.name: frozenset(name for name, spec in kind.fields.items() if spec.required)
    for kind in KINDS.values()
}

Part = TypeVar("Part")
"""One of the dataclasses that describe a kind."""


def read(part: type[Part], values: Mapping[str, Any]) -> Part:
    """Return what the stored fields of a record say, as one of the dataclasses that describe its kind.

    What the dataclass does not know is left out. Raises ``TypeError`` if a field is missing without which no such
    record is made.
    """
    names = part.__annotations__
    return part(**{name: value for name, value in values.items() if name in names})
