"""A household's time zone."""

from __future__ import annotations

import zoneinfo

from sqlalchemy import Connection

from ..model import kinds
from .store import Record, read_record


def household_in(record: Record | None) -> kinds.Household | None:
    """Return what a household's record of itself says; None without one."""
    return None if record is None else kinds.read(kinds.Household, record.values)


def zone_of(household: kinds.Household | None) -> zoneinfo.ZoneInfo:
    """Return a household's zone; UTC for one that this machine no longer knows, and without a household."""
    try:
        return zoneinfo.ZoneInfo("UTC" if household is None else household.zone)
    except (zoneinfo.ZoneInfoNotFoundError, ValueError):
        return zoneinfo.ZoneInfo("UTC")


def read_zone(connection: Connection, household_id: str) -> zoneinfo.ZoneInfo:
    """Return the zone of a household by its id."""
    return zone_of(household_in(read_record(connection, household_id, household_id)))
