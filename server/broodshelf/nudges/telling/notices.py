"""Telling the other keepers what happened at the household's doors: by the same queue and with the same promises."""

from __future__ import annotations

import json
import secrets
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection, and_, insert, select

from ...model import kinds
from ...model.gauges import DAY_MS
from ...people.tables import devices
from ...records.store import read_all, read_kind
from ..tables import deliveries, subscriptions

USEFUL_MS: Final = DAY_MS


@dataclass(frozen=True, slots=True)
class Notice:
    """What the keepers of a household are told: a code of the messages and what goes into its sentence.

    ``by``: the person who did it and is not told.
    """

    what: str
    args: Mapping[str, Any]
    by: str | None = None


def tell_keepers(
    connection: Connection, household_id: str, notice: Notice, key_ids: Collection[str], now_ms: int
) -> int:
    """Queue a message to every phone and mailbox of the keepers; return how many.

    ``key_ids``: who listens with one of these can be reached (``channels.channel.Channels.key_ids``).
    """
    people = read_all(kinds.Person, read_kind(connection, household_id, "person"))
    keepers = [id_ for id_, said in people.items() if said.role == "keeper" and id_ != notice.by]
    s, d = subscriptions.c, devices.c
    phones = connection.execute(
        select(s.id, s.host)
        .outerjoin(devices, and_(d.household_id == s.household_id, d.id == s.device_id))
        .where(
            s.household_id == household_id,
            s.person_id.in_(keepers),
            s.key_id.in_(key_ids),
            d.revoked_ms.is_(None),
        )
    ).all()
    told = json.dumps({"what": notice.what, "args": dict(notice.args)}, ensure_ascii=False)
    rows = [
        {
            "household_id": household_id,
            "id": secrets.token_urlsafe(32),
            "subscription_id": phone.id,
            "host": phone.host,
            "state": "waiting",
            "wake_ms": now_ms,
            "made_ms": now_ms,
            "useless_ms": now_ms + USEFUL_MS,
            "notice": told,
        }
        for phone in phones
    ]
    if rows:
        connection.execute(insert(deliveries), rows)
    return len(rows)
