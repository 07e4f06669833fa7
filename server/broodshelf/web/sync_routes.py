"""The sync endpoint, a record's history, and QR codes for labels."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify
from marshmallow import fields, validate

from ..errors import NotFound
from ..records.database import reading, writing
from ..records.store import read_history
from ..rounds.recompute import touched
from ..sync.exchange import exchange
from . import parts as p
from .access import qr_svg

blueprint = Blueprint("sync", __name__, url_prefix="/api")


@blueprint.post("/sync")
def sync() -> Response:
    """Make one round trip (docs/sync.md)."""
    actor = p.actor()
    body = p.json_body(p.SYNC_BODY_BYTES)
    with writing() as connection:
        answer = exchange(connection, actor, body, p.now_ms(), touched)
    p.parts().marks.note(actor.household_id, answer.rev, answer.epoch)
    return Response(answer.text, content_type="application/json")


@blueprint.get("/records/<record_id>/history")
def history(record_id: str) -> Response:
    """Return what happened to a record, newest first."""
    actor = p.keeper()
    with reading() as connection:
        revisions = read_history(connection, actor.household_id, p.check_id(record_id))
    if not revisions:
        raise NotFound("There is no such record in this household.")
    return jsonify(revisions=revisions)


@blueprint.post("/qr")
def qr() -> Response:
    """Draw QR codes, for printable labels."""
    p.keeper()
    item = fields.String(validate=validate.Length(min=1, max=300))
    texts = fields.List(item, required=True, validate=validate.Length(min=1, max=60))
    body = p.checked({"texts": texts}, p.json_body())
    return jsonify(svgs=[qr_svg(text) for text in body["texts"]])
