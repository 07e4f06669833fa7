"""One round trip: answer the phone's operations, then give it what is new. One write transaction."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection

from ..errors import WrongDevice
from ..people.actor import Actor
from ..people.leaving import NOBODY, Left, end_people
from ..people.passes import hold_to_dates
from ..records.home.ending import note_ended
from ..records.store import Ledger
from . import envelope
from .answering import answer_operations
from .feed import Cursor, Page, Wanted, read_page
from .scope import known_colonies, scope_of

Recompute = Callable[[Ledger, set[str], int], None]
"""Makes the plans of these colonies again: ``rounds.recompute.touched``."""


@dataclass(frozen=True, slots=True)
class Answer:
    """The JSON text for the phone, and where the household stands after it."""

    text: str
    rev: int
    epoch: str
    left: Left = NOBODY
    """What ended because people were deleted: the caller ends where they listen, and notes it outside the database."""


def exchange(
    connection: Connection, actor: Actor, body: Mapping[str, Any], now_ms: int, recompute: Recompute
) -> Answer:
    """Answer a ``/api/sync`` body. The caller owns the write transaction.

    Raises ``BadRequest``, ``TooLarge``, ``UpgradeRequired`` or ``WrongDevice``; then nothing is stored.
    """
    request = envelope.parse(body)
    if request.device != actor.device_id:
        raise WrongDevice
    ledger = Ledger(connection, actor.household_id)
    outcome = answer_operations(
        ledger, actor, request.operations, now_ms, epoch_known=request.epoch == ledger.epoch
    )
    ledger.flush()
    note_ended(connection, "person", actor.household_id, sorted(outcome.left), now_ms)
    note_ended(connection, "person_back", actor.household_id, sorted(outcome.back), now_ms)
    left = end_people(ledger, outcome.left, now_ms) if outcome.left else NOBODY
    held = [hold_to_dates(ledger, pass_id, now_ms) for pass_id in sorted(outcome.passes)]
    ledger.flush()
    touched = outcome.touched.union(left.colonies, *held)
    if outcome.touches_all:
        touched = touched | known_colonies(connection, actor.household_id)
    if touched:
        recompute(ledger, touched, now_ms)
        ledger.flush()
    page = _page(connection, actor, request, ledger)
    return Answer(_text(ledger, outcome.answers, page, actor, now_ms), ledger.rev, ledger.epoch, left)


def _page(connection: Connection, actor: Actor, request: envelope.SyncRequest, ledger: Ledger) -> Page:
    if actor.window is not None and actor.window.state == "ended":
        held = (
            request.cursor if request.epoch == ledger.epoch else None
        )  # a cursor of another epoch leads nowhere
        return Page([], [], held or "", more=False, reset=False, first=False)
    wanted = Wanted(Cursor.read(request.cursor), request.limit, start_over=request.epoch != ledger.epoch)
    return read_page(ledger, scope_of(connection, actor), wanted)


def _text(ledger: Ledger, answers: list[dict[str, Any]], page: Page, actor: Actor, now_ms: int) -> str:
    window = actor.window
    head = json.dumps(
        {
            "epoch": ledger.epoch,
            "cursor": page.cursor,
            "more": page.more,
            "reset": page.reset,
            "first": page.first,
            "schema": envelope.SCHEMA,
            "server_time": now_ms,
            "pass": {"state": window.state, "starts_on": window.starts_on, "ends_on": window.ends_on}
            if window
            else None,
            "answers": answers,
        },
        ensure_ascii=False,
        separators=(",", ":"),
    )
    return f'{head[:-1]},"rows":[{",".join(page.rows)}],"gone":[{",".join(page.gone)}]}}'
