"""Telling keepers that a sensor fell silent or measures nonsense: once for each time, never in quiet hours."""

from __future__ import annotations

from collections.abc import Collection

from sqlalchemy import Connection

from ...model import kinds
from ...model.gauges import HOUR_MS
from ...records.store import read_record
from ...records.zones import household_in
from ...rounds.wall_clock import CareClock
from ...sensing.trouble import new_troubles
from .notices import Notice, tell_keepers


def tell_troubles(connection: Connection, household_id: str, key_ids: Collection[str], now_ms: int) -> int:
    """Tell what is newly wrong with a household's sensors; return how many messages that makes.

    In quiet hours nothing is told, and it is found again when they are over.
    """
    household = household_in(read_record(connection, household_id, household_id))
    if CareClock.of(household).is_quiet(now_ms):
        return 0
    told = 0
    for trouble in new_troubles(connection, household_id, now_ms):
        place = read_record(connection, household_id, trouble.sensor.place_id)
        args = {
            "sensor": trouble.sensor.name,
            "place": kinds.read(kinds.Place, place.values).name if place is not None else "",
            "hours": (now_ms - trouble.since_ms) // HOUR_MS,
        }
        notice = Notice(f"sensor_{trouble.word}", args)
        told += tell_keepers(connection, household_id, notice, key_ids, now_ms)
    return told
