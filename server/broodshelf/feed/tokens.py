"""The secret addresses of calendar feeds: one for the household and one for each pass."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, insert, select

from ..errors import NotAllowed, NotFound
from ..languages import told
from ..model.gauges import DAY_MS
from ..people.calendars import end_calendars
from ..people.secrets import hash_token, new_token
from ..people.tables import feed_tokens
from ..records.ids import uuid7
from ..records.store import lock, read_record

LASTS_MS = 365 * DAY_MS
"""A feed's address ends after a year, so that one that was given away and forgotten does not live for ever."""


@dataclass(frozen=True, slots=True)
class Feed:
    """A feed that may be read. ``pass_id`` is None for the whole household; ``person_id``: whose it is, if known."""

    id: str
    household_id: str
    pass_id: str | None
    person_id: str | None = None


def make_feed(
    connection: Connection, household_id: str, pass_id: str | None, person_id: str, now_ms: int
) -> str:
    """Make a feed's token and return it; the old one of the same feed ends. Raises for a pass taken back."""
    lock(connection, household_id)
    if pass_id is not None:
        record = read_record(connection, household_id, pass_id)
        if record is None or record.kind != "pass":
            raise NotFound(told("problem-no-pass-yet"))
        if record.gone or record.values.get("revoked_at_ms"):
            raise NotAllowed(told("problem-pass-taken-back"), code="pass_revoked")
    revoke_feed(connection, household_id, pass_id, now_ms)
    token = new_token()
    connection.execute(
        insert(feed_tokens).values(
            id=uuid7(now_ms),
            household_id=household_id,
            pass_id=pass_id,
            person_id=None if pass_id is not None else person_id,
            token_hash=hash_token(token),
            made_ms=now_ms,
            expires_ms=now_ms + LASTS_MS,
        )
    )
    return token


def revoke_feed(connection: Connection, household_id: str, pass_id: str | None, now_ms: int) -> None:
    """End a feed's address. Nothing happens if there is none."""
    end_calendars(connection, household_id, feed_tokens.c.pass_id.is_not_distinct_from(pass_id), now_ms)


def find_feed(connection: Connection, token: str, now_ms: int) -> Feed:
    """Return the feed of a token. Raises ``NotFound`` for one that is unknown, ended or revoked."""
    row = connection.execute(
        select(feed_tokens).where(feed_tokens.c.token_hash == hash_token(token))
    ).one_or_none()
    if row is None or row.expires_ms < now_ms:
        raise NotFound(told("problem-no-feed"))
    return Feed(row.id, row.household_id, row.pass_id, row.person_id)
