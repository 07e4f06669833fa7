"""People who were deleted: the end of where they listen, and the note of it that outlives a restore."""

from __future__ import annotations

from sqlalchemy import Connection

from ..nudges.channels.mail.mailboxes import forget_mailbox
from ..nudges.channels.push.subscriptions import forget_device
from ..people.actor import Actor
from ..people.leaving import Left
from ..records.home.ending import note_ended
from ..records.store import read_record
from . import parts as p
from .journal import note


def see_off(connection: Connection, actor: Actor, left: Left) -> None:
    """End where these people and phones listen, and note them as ended before the database says so."""
    now_ms, household_id = p.now_ms(), actor.household_id
    for person_id in left.people:
        forget_mailbox(connection, household_id, person_id)
        person = read_record(connection, household_id, person_id)
        note(connection, actor, "person_removed", name=str(person.values["name"]) if person else "")
    for device_id in left.devices:
        forget_device(connection, household_id, device_id)
        note_ended(connection, "device", household_id, [device_id], now_ms)
    for pass_id in left.passes:
        note_ended(connection, "pass", household_id, [pass_id], now_ms)
