"""Passes: link, status, taking back, and opening one without an account."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify

from ..errors import BadRequest, NotFound
from ..languages import told
from ..people import devices, passes
from ..people.actor import Actor
from ..people.devices import Owner
from ..people.journal import Doer
from ..records.apart import every_household
from ..records.database import reading, writing
from ..records.home.ending import note_ended
from ..records.store import Ledger
from ..rounds.recompute import touched
from . import bodies
from . import parts as p
from .access import phone_of, qr_svg, signed_in
from .guard import Given, open_to
from .journal import counting_wrong_codes, note, note_and_tell

blueprint = Blueprint("passes", __name__, url_prefix="/api/passes")


@blueprint.post("/<pass_id>/link")
@open_to("keeper", body=bodies.NOTHING)
def make_link(actor: Actor, pass_id: str) -> Response:
    """Make a new link and code.

    → `{link, code, qr_svg}`: a new secret each time, shown once
    """
    with writing() as connection:
        made = passes.make_link(connection, actor.household_id, pass_id, p.now_ms())
        note_and_tell(connection, Doer.of(actor), "link_made", **{"pass": made.name})
    link = f"{p.parts().settings.public_url}/#/pass/{made.secret}"
    return jsonify(link=link, code=made.code, qr_svg=qr_svg(link))


@blueprint.get("/<pass_id>")
@open_to("keeper")
def status(actor: Actor, pass_id: str) -> Response:
    """Say how a pass stands and which phones opened it.

    → `{state, link_made_ms, devices, last_used_ms}`
    """
    with reading() as connection:
        return jsonify(passes.pass_status(connection, actor.household_id, pass_id, p.now_ms()))


@blueprint.post("/<pass_id>/revoke")
@open_to("keeper", body=bodies.NOTHING)
def revoke(actor: Actor, pass_id: str) -> Response:
    """Take a pass back.

    → `{}`
    """
    with writing() as connection:
        ledger = Ledger(connection, actor.household_id)
        colonies = passes.end_pass(ledger, pass_id, p.now_ms())
        if colonies is None:
            raise NotFound(told("problem-no-pass"))
        ledger.flush()
        if colonies:
            touched(ledger, colonies, p.now_ms())
            ledger.flush()
        given = ledger.get(pass_id)
        note(connection, actor, "pass_ended", **{"pass": str(given.values["name"]) if given else ""})
        note_ended(connection, "pass", actor.household_id, [pass_id], p.now_ms())
    return jsonify({})


@blueprint.post("/open")
@open_to("all", body=bodies.OPEN_PASS)
def open_pass(body: Given) -> Response:
    """Open a pass by secret or code. A signed-in keeper sees a preview and stays who they are.

    → me + cookie; a signed-in keeper gets `{preview: {…}}` and no new session; 400 with both secret and code or neither
    """
    if ("secret" in body) == ("code" in body):
        raise BadRequest(
            told("problem-one-of-two", one="secret", other="code"), fields={"secret": "one of the two"}
        )
    p.count_try("pass")
    visitor = p.actor_or_none()
    with counting_wrong_codes("pass"), every_household(), writing() as connection:
        household_id, record, window = passes.find_pass(
            connection, p.now_ms(), secret=body.get("secret"), code=body.get("code")
        )
        if visitor is not None and visitor.role == "keeper":
            return jsonify(preview={"id": record.id, "state": window.state, **record.values})
        phone = phone_of(body["device"], body.get("secret") or body["code"])
        session = devices.sign_in_again(connection, phone.again_hash, p.now_ms())
        if session is None:
            person_id = passes.admit(connection, household_id, record, p.now_ms(), p.asked_language())
            owner = Owner(household_id, person_id, "stand_in", record.id)
            session = devices.sign_in(connection, phone, owner, p.now_ms())
            named = {"phone": phone.name, "pass": str(record.values["name"])}
            note_and_tell(connection, Doer(household_id, person_id, phone.id), "pass_opened", **named)
    return signed_in(session)
