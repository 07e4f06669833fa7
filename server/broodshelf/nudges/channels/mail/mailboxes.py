"""The mailboxes that nudges go to: one a person, in a row among the subscriptions."""

from __future__ import annotations

from sqlalchemy import Connection, delete, exists, insert

from ....people.tables import mail_addresses
from ....records.ids import uuid7
from ...tables import subscriptions
from ..addresses import MAIL, Mailbox


def listen_by_mail(
    connection: Connection, household_id: str, person_id: str, address: str, now_ms: int
) -> None:
    """Let a confirmed mailbox hear a person's nudges, in place of any other of theirs."""
    forget_mailbox(connection, household_id, person_id)
    connection.execute(
        insert(subscriptions).values(
            id=uuid7(now_ms),
            household_id=household_id,
            person_id=person_id,
            device_id=uuid7(now_ms),
            endpoint=Mailbox(address).endpoint,
            host=MAIL,
            p256dh="",
            auth="",
            key_id=MAIL,
            created_ms=now_ms,
            seen_ms=now_ms,
            failures=0,
        )
    )


def forget_mailbox(connection: Connection, household_id: str, person_id: str) -> None:
    """Send no more mail to a person."""
    s = subscriptions.c
    connection.execute(
        delete(subscriptions).where(s.household_id == household_id, s.person_id == person_id, s.host == MAIL)
    )


def forget_unconfirmed(connection: Connection) -> None:
    """Send no more mail where a person has no confirmed address: none of the household's keepers could end it."""
    s, m = subscriptions.c, mail_addresses.c
    confirmed = exists().where(
        m.household_id == s.household_id, m.person_id == s.person_id, m.confirmed_ms.is_not(None)
    )
    connection.execute(delete(subscriptions).where(s.host == MAIL, ~confirmed))
