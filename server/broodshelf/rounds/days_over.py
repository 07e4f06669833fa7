"""Days of places that are over by the household's clock and not written yet, or not as they are known by now."""

from __future__ import annotations

from sqlalchemy import Connection

from ..records.store import Ledger, read_record
from ..records.zones import household_in, zone_of
from ..sensing.days import midnight_ms, oldest_due, write_days
from .recompute import care_clock


def households_with_days_over(connection: Connection, now_ms: int) -> set[str]:
    """Return the households of which some hour of an earlier day is not in the record of its day."""
    found = set()
    for household_id, hour_ms in oldest_due(connection).items():
        household = household_in(read_record(connection, household_id, household_id))
        if household is not None and hour_ms < midnight_ms(zone_of(household), now_ms):
            found.add(household_id)
    return found


def write_days_over(connection: Connection, household_id: str, now_ms: int) -> int:
    """Write those days; return how many."""
    ledger = Ledger(connection, household_id)
    written = write_days(ledger, care_clock(ledger).zone, now_ms)
    ledger.flush()
    return written
