"""Who listens no more although a database that was put back says so."""

from __future__ import annotations

from collections.abc import Collection

from sqlalchemy import Connection

from .mail.mailboxes import forget_unconfirmed
from .push.subscriptions import forget_device


def unsubscribe(connection: Connection, signed_out: Collection[tuple[str, str]]) -> None:
    """Forget where phones that signed out listen, by household and id, and mailboxes whose address was taken away."""
    for household_id, device_id in signed_out:
        forget_device(connection, household_id, device_id)
    forget_unconfirmed(connection)
