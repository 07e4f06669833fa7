"""The sync endpoint, a record's history, and QR codes for labels."""

from __future__ import annotations

import gzip
import json
from typing import Any, Final

from flask import Blueprint, Response, jsonify, request
from sqlalchemy import Connection

from ..errors import NotFound
from ..languages import ENGLISH, told
from ..people.actor import Actor
from ..people.quotas import Share
from ..people.room import Counted, coming_with, counted_of, word_of_room
from ..records.database import reading, writing
from ..records.history import read_gone, read_history
from ..records.soundness import Soundness
from ..records.store import read_record
from ..rounds.recompute import touched
from ..sync.exchange import exchange
from . import bodies
from . import parts as p
from .access import qr_svg
from .guard import Given, open_to
from .seeing_off import see_off

blueprint = Blueprint("sync", __name__, url_prefix="/api")

MOST_GONE: Final = 200
COMPRESSED_FROM_BYTES: Final = 1_400
"""What fits into one packet is sent as it is."""
GZIP_LEVEL: Final = 2
"""Higher levels save a tenth and cost three times as long."""


@blueprint.post("/sync")
@open_to("session", body=bodies.SYNC, after_the_pass=True)
def sync(actor: Actor, body: Given) -> Response:
    """Make one round trip.

    → docs/sync.md
    """
    ops = body.get("ops")
    counted: Counted | None = None
    brings = isinstance(ops, list) and len(ops) > 0
    size_bytes = (request.content_length or bodies.SYNC_BODY_BYTES) if brings else 0
    with p.sent_from_here(size_bytes), writing() as connection:
        if isinstance(ops, list) and ops:
            p.spend(connection, Share(operations=len(ops), size_bytes=size_bytes))
            counted = p.take_room(connection, coming_with(ops, size_bytes))
        answer = exchange(connection, actor, body, p.now_ms(), touched)
        see_off(connection, actor, answer.left)
        told = _told(connection, actor) or _word_of_room(connection, actor, counted)
    p.parts().witness.marks.note(actor.household_id, answer.rev, answer.epoch)
    text = answer.text if told is None else f'{answer.text[:-1]},"told":{json.dumps(told)}}}'
    return _sent(text.encode())


def _told(connection: Connection, actor: Actor) -> dict[str, Any] | None:
    """Return what keepers should know of the server's database and its backups."""
    if actor.role != "keeper":
        return None

    def patience_days() -> float | None:
        household = read_record(connection, actor.household_id, actor.household_id)
        return household.values.get("backup_patience_days") if household is not None else None

    return Soundness(p.parts().home.kept).told(connection, patience_days, p.now_ms())


def _word_of_room(connection: Connection, actor: Actor, counted: Counted | None) -> dict[str, Any] | None:
    """Return what keepers should know of a household that is nearly full; ``counted`` where it is known already."""
    if actor.role != "keeper":
        return None
    language = p.asked_language() or ENGLISH
    known = counted or counted_of(connection, actor.household_id)
    return word_of_room(known, p.parts().settings.room, p.now_ms(), language)


def _sent(body: bytes) -> Response:
    """Send JSON, compressed where that saves a phone's time. No answer holds a secret beside what others wrote."""
    response = Response(body, content_type="application/json")
    response.vary.add("Accept-Encoding")
    if len(body) > COMPRESSED_FROM_BYTES and "gzip" in request.headers.get("Accept-Encoding", ""):
        response.set_data(gzip.compress(body, GZIP_LEVEL, mtime=0))
        response.headers["Content-Encoding"] = "gzip"
    return response


@blueprint.get("/records/<record_id>/history")
@open_to("keeper")
def history(actor: Actor, record_id: str) -> Response:
    """Return what happened to a record, newest first.

    → `{revisions: [{rev, at_ms, by, op_id, asked, before, lost}]}`
    """
    with reading() as connection:
        revisions = read_history(connection, actor.household_id, record_id)
    if not revisions:
        raise NotFound(told("problem-no-record"))
    return jsonify(revisions=revisions)


@blueprint.get("/records/gone")
@open_to("keeper")
def gone(actor: Actor) -> Response:
    """Return what was deleted last and can be taken back by an ordinary operation.

    → `{gone: [{id, kind, rev, at_ms, by, set}]}`: the 200 records that went last, newest first; each can be taken back
    """
    with reading() as connection:
        return jsonify(gone=read_gone(connection, actor.household_id, MOST_GONE))


@blueprint.post("/qr")
@open_to("keeper", body=bodies.TEXTS)
def qr(body: Given) -> Response:
    """Draw QR codes, for printable labels.

    → `{svgs: […]}`, of 60 texts at most
    """
    return jsonify(svgs=[qr_svg(text) for text in body["texts"]])
