"""Pictures: sent after their record, once, whole; seen by whoever sees the record."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify

from ..errors import NotFound
from ..languages import told
from ..people.actor import Actor
from ..people.quotas import Share
from ..people.room import Coming
from ..records.database import reading, writing
from ..records.store import read_record
from . import bodies
from . import parts as p
from .guard import open_to

blueprint = Blueprint("photos", __name__)


@blueprint.put("/api/photos/<record_id>")
@open_to("session", body=bodies.JPEG, after_the_pass=True)
def send(actor: Actor, record_id: str, body: bytes) -> Response:
    """Take the picture of a photo record; the body is the JPEG whose hash the record holds.

    → `{stored: true}`; again: the same answer; 503 `busy` with `Retry-After` while other pictures are being looked at:
    send it later
    """

    def count() -> None:
        with p.sent_from_here(len(body)), writing() as connection:
            p.spend(connection, Share(pictures=1))
            p.take_room(connection, Coming(size_bytes=len(body), is_picture=True))

    p.parts().photos.keep(actor.household_id, _sha256_of(actor, record_id), body, count)
    return jsonify(stored=True)


@blueprint.get("/api/photos/<record_id>")
@open_to("session")
def read(actor: Actor, record_id: str) -> Response:
    """Return the picture of a photo record.

    → the picture, drawn anew by the server; 404 `not_sent_yet` until its phone has sent it
    """
    found = p.parts().photos.read(actor.household_id, _sha256_of(actor, record_id))
    if found is None:
        raise NotFound(told("problem-picture-not-sent"), code="not_sent_yet")
    return Response(found, content_type="image/jpeg")


def _sha256_of(actor: Actor, record_id: str) -> str:
    """Return the hash that the photo record holds; ``NotFound`` for whoever may not see the record."""
    with reading() as connection:
        record = read_record(connection, actor.household_id, record_id)
    if record is None or record.kind != "photo" or record.gone:
        raise NotFound(told("problem-no-picture"))
    if actor.window is not None and record.values.get("colony_id") not in actor.window.colony_ids:
        raise NotFound(told("problem-no-picture"))
    return str(record.values.get("sha256"))
