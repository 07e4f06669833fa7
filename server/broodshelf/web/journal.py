"""The keepers' journal: reading it, and writing down what happens at the doors while it happens."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Final, Literal

from flask import Blueprint, Response, jsonify
from sqlalchemy import Connection

from ..errors import BadRequest, Gone
from ..nudges.telling.notices import Notice, tell_keepers
from ..people import journal
from ..people.actor import Actor
from ..people.journal import Doer, What
from ..records.apart import every_household
from ..records.database import reading, writing
from ..records.store import read_record
from . import parts as p
from .guard import open_to

blueprint = Blueprint("journal", __name__, url_prefix="/api")
WRONG: Final = frozenset({"claim_code_ended", "pairing_ended", "pass_revoked", "wrong_code"})
"""Problems of a code that opens nothing."""


@blueprint.get("/journal")
@open_to("keeper")
def show(actor: Actor) -> Response:
    """Return what happened at the household's doors.

    → `{entries: [{id, at_ms, what, by, args}]}`, newest first, at most 500. `what`: `new_phone`, `phone_removed`,
    `person_removed`, `way_back`, `link_made`, `pass_opened`, `pass_ended`, `wrong_codes` (`count`, `where`; one a day,
    place and person), `export`, `import`, `restore`
    """
    with reading() as connection:
        return jsonify(entries=journal.entries(connection, actor.household_id))


def note(connection: Connection, actor: Actor, what: What, **args: str | int) -> None:
    """Write down what somebody who is signed in did."""
    journal.note(connection, Doer.of(actor), what, p.now_ms(), **args)


def note_and_tell(connection: Connection, doer: Doer, what: What, **args: str | int) -> None:
    """Write down what happened and tell the household's keepers but the one who did it."""
    now_ms, pusher = p.now_ms(), p.parts().pusher
    journal.note(connection, doer, what, now_ms, **args)
    household_id, person_id = doer.household_id, doer.person_id
    person = None if person_id is None else read_record(connection, household_id, person_id)
    named = {"person": str(person.values.get("name")) if person is not None else "", **args}
    notice = Notice(what, named, by=person_id)
    tell_keepers(connection, household_id, notice, pusher.channels.key_ids, now_ms)


@contextmanager
def counting_wrong_codes(where: Literal["claim", "pass", "pairing", "mail"]) -> Iterator[None]:
    """Note a code that opens nothing: in the household of who typed it, else where such a code could have opened."""
    try:
        yield
    except (Gone, BadRequest) as problem:
        if problem.problem_code in WRONG:
            _note_wrong_code(where)
        raise


def _note_wrong_code(where: Literal["claim", "pass", "pairing", "mail"]) -> None:
    known, now_ms = p.actor_or_none(), p.now_ms()
    if known is not None:
        with writing() as connection:
            journal.note_wrong_code(connection, Doer.of(known), where, now_ms)
        return
    if where not in ("claim", "pass"):
        return
    with every_household(), writing() as connection:
        for household_id in journal.concerned(connection, where, now_ms):
            journal.note_wrong_code(connection, Doer(household_id), where, now_ms)
