"""A small shelf that is exported and imported."""

from __future__ import annotations

from tests.keeping.shelves import empty_household
from tests.support.households import HAPPENED, NOON_MS, Requester, no_plans

from broodshelf.keeping.bringing_in import bring_in, make_household
from broodshelf.keeping.entries import Export, gather
from broodshelf.records.database import reading, writing


def gathered(household_id: str) -> Export:
    with reading() as connection:
        return gather(connection, household_id)


def imported(export: Export, household_id: str | None = None, recompute=no_plans):
    with writing() as connection:
        household_id = household_id or make_household(connection, export, NOON_MS)
        return bring_in(connection, household_id, export.entries, NOON_MS, recompute)


def small_shelf() -> tuple[str, Requester, str]:
    """A household with one colony that was fed once; return its id, the phone and the feeding's id."""
    household_id = empty_household()
    phone = Requester(household_id)
    colony = phone.write("colony", {"name": "Amber", "species_code": "lasius_niger"})["id"]
    fed = phone.write("feeding", {"colony_id": colony, "happened_at": HAPPENED, "need": "sugar"})["id"]
    phone.sync()
    return household_id, phone, fed
