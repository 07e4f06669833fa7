"""The bounded read sees the newest of each topic, whatever else fills the log. On SQLite and on PostgreSQL."""

from __future__ import annotations

import datetime as dt

from tests.support.households import NOON_MS

from broodshelf.model.gauges import HOUR_MS
from broodshelf.records.database import reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.recent import MOST, read_recent
from broodshelf.records.store import Ledger


def fill(household_id, events):
    """Write events given as (hours before noon, kind, values); return the colony's id and the events' ids."""
    colony_id = uuid7(NOON_MS)
    with writing() as connection:
        ledger = Ledger(connection, household_id)
        ledger.put(colony_id, "colony", {"name": "Amber"}, now_ms=NOON_MS)
        ids = []
        for hours, kind, values in events:
            at = dt.datetime.fromtimestamp(NOON_MS / 1000 - hours * 3600, dt.UTC).isoformat()
            whole = {"colony_id": colony_id, "happened_at": at, **values}
            ids.append(ledger.put(uuid7(NOON_MS), kind, whole, now_ms=NOON_MS).id)
        ledger.flush()
    return colony_id, ids


def recent_ids(household_id, colony_id, since_ms=0):
    with reading() as connection:
        return [event.id for event in read_recent(connection, household_id, [colony_id], since_ms)[colony_id]]


def test_many_feedings_of_one_need_do_not_hide_the_last_of_another(household_id):
    protein = (900, "feeding", {"need": "protein"})
    sugar = [(hours, "feeding", {"need": "sugar"}) for hours in range(400, 0, -4)]
    colony_id, ids = fill(household_id, [protein, *sugar])

    assert recent_ids(household_id, colony_id) == [ids[0], *ids[-MOST:]]


def test_a_fault_stays_in_sight_until_it_is_resolved(household_id):
    resolved = {"fault": "mould", "resolved_at": "2026-05-01T11:00:00Z"}
    leak = (900, "fault", {"fault": "leak"})
    colony_id, ids = fill(household_id, [leak, *((h, "fault", resolved) for h in range(100, 0, -1))])
    assert ids[0] in recent_ids(household_id, colony_id)
    with writing() as connection:
        ledger = Ledger(connection, household_id)
        ledger.put(ids[0], "fault", {"resolved_at": "2026-05-01T11:00:00Z"}, now_ms=NOON_MS)
        ledger.flush()

    assert recent_ids(household_id, colony_id)[-MOST:] == ids[-MOST:]


def test_the_first_event_of_all_is_kept_because_it_says_since_when_the_colony_is_looked_after(household_id):
    notes = [(hours, "note", {"text": "n"}) for hours in range(200, 0, -1)]
    colony_id, ids = fill(household_id, notes)

    assert recent_ids(household_id, colony_id) == [ids[0], *ids[-MOST:]]
    assert recent_ids(household_id, colony_id, NOON_MS - 10 * HOUR_MS) == ids[-10:]


def test_a_voided_event_is_not_seen(household_id):
    colony_id, ids = fill(
        household_id, [(2, "feeding", {"need": "sugar"}), (1, "feeding", {"need": "sugar", "gone": True})]
    )

    assert recent_ids(household_id, colony_id) == ids[:1]
