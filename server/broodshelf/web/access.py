"""Signing in and out: claim, me, pairing, devices."""

from __future__ import annotations

from typing import Any

import segno
from flask import Blueprint, Response, jsonify
from sqlalchemy import Connection

from ..errors import BadRequest
from ..languages import ENGLISH, say, told
from ..nudges.channels.push.subscriptions import forget_device
from ..people import devices, households, pairing
from ..people.actor import Actor
from ..people.devices import Owner, Phone, Session
from ..people.households import Founding
from ..people.journal import Doer
from ..people.language import begin_language
from ..people.pairing import KnownKeeper, NewKeeper
from ..records.apart import enter, every_household
from ..records.database import reading, writing
from ..records.home.ending import note_ended
from ..records.store import read_record
from ..records.tables import households as households_table
from ..sync.envelope import SCHEMA
from . import bodies
from . import parts as p
from .guard import Given, open_to
from .journal import counting_wrong_codes, note, note_and_tell

blueprint = Blueprint("access", __name__, url_prefix="/api")
COOKIE_DAYS = 400


@blueprint.post("/claim")
@open_to("all", body=bodies.CLAIM)
def claim(body: Given) -> Response:
    """Claim a household with a printed code, or come back into one; without a code where everybody may begin one.

    → me + cookie; the last three only for a new household; 403 `signup_closed` without a code where one is needed
    """
    p.count_try("claim")
    code = body.get("code")
    phone = phone_of(body["device"], code or "")
    with counting_wrong_codes("claim"), every_household(), writing() as connection:
        session = devices.sign_in_again(connection, phone.again_hash, p.now_ms())
        if session is None:
            session = _let_in(connection, phone, _claimed(connection, body, code))
    return signed_in(session)


def _claimed(connection: Connection, body: Given, code: str | None) -> Owner:
    """Return whose the phone is that claims: of a new household or, with the code of a way back, of a known one."""
    founding = Founding(
        body.get("person_name"), body.get("household_name"), body.get("zone"), p.asked_language()
    )
    if code is None:
        p.count_newcomer(connection)
        return Owner(*households.found(connection, founding, p.now_ms()))
    invited = p.parts().settings.signup != "closed"
    return Owner(*households.claim(connection, code, founding, p.now_ms(), invited=invited))


@blueprint.post("/claim/look")
@open_to("all", body=bodies.LOOK)
def look_claim(body: Given) -> Response:
    """Say whom a printed code lets back in, so that a known person is not asked for a name; with an empty code only
    whether one is needed.

    → `{person_name}`: whom the code lets back in, null for a new household; without a code `{begin}`: what to call
    beginning one, null where that may not be
    """
    if not body["code"]:
        is_open = p.parts().settings.signup == "open"
        return jsonify(begin=say(p.asked_language() or ENGLISH, "signup-begin") if is_open else None)
    p.count_try("look")
    with counting_wrong_codes("claim"), every_household(), reading() as connection:
        return jsonify(person_name=households.whose(connection, body["code"], p.now_ms()))


@blueprint.get("/me")
@open_to("session", after_the_pass=True)
def me(actor: Actor) -> Response:
    """Say who this phone is.

    → `{household_id, person_id, device_id, role, name, epoch, schema, server_time, build, vapid_public_key, pass}`
    """
    return jsonify(describe(actor))


@blueprint.get("/whoami")
@open_to("all")
def whoami() -> Response:
    """Say who this browser is, or nobody: for one that knows it no more, as its storage was emptied.

    → `{me}`: as `/api/me` says, or `null` for nobody; a browser whose storage was emptied comes back in by it
    """
    actor = p.actor_or_none()
    return jsonify(me=None if actor is None else describe(actor))


@blueprint.post("/logout")
@open_to("session", body=bodies.NOTHING, after_the_pass=True)
def logout(actor: Actor) -> Response:
    """End this phone's session at its own wish.

    → `{}` and the cookie is cleared
    """
    with writing() as connection:
        devices.sign_out(connection, actor.household_id, actor.device_id, p.now_ms())
        forget_device(connection, actor.household_id, actor.device_id)
    response = jsonify({})
    response.delete_cookie(
        p.cookie_name(), path="/", secure=p.parts().settings.secure, httponly=True, samesite="Lax"
    )
    return response


@blueprint.post("/pairings")
@open_to("all", body=bodies.DEVICE)
def ask_pairing(body: Given) -> Response:
    """Open a pairing for the new phone that asks.

    → `{pairing_id, code, collect_secret, expires_ms, qr_svg}` (the new phone shows the code)
    """
    p.count_try("pair")
    device = body["device"]
    with writing() as connection:
        asked = pairing.ask(connection, device["id"], device["name"], p.now_ms(), device.get("secret"))
    link = f"{p.parts().settings.public_url}/#/approve/{asked.code}"
    return jsonify(
        pairing_id=asked.pairing_id,
        code=asked.code,
        collect_secret=asked.collect_secret,
        expires_ms=asked.expires_ms,
        qr_svg=qr_svg(link),
    )


@blueprint.post("/pairings/collect")
@open_to("all", body=bodies.COLLECT)
def collect_pairing(body: Given) -> Response:
    """Sign the new phone in once a keeper has approved it.

    → `{state: "waiting"}` or me + cookie
    """
    pairing_id, secret = body["pairing_id"], body["collect_secret"]
    asks = devices.again_hash(secret, pairing_id)
    with every_household(), writing() as connection:
        session = devices.sign_in_again(connection, asks, p.now_ms())
        if session is None:
            got = pairing.collect(connection, pairing_id, secret, p.now_ms())
            if got is None:
                return jsonify(state="waiting")
            begin_language(connection, got.household_id, got.person_id, p.asked_language(), p.now_ms())
            phone = Phone(got.device_id, got.device_name, asks)
            session = _let_in(connection, phone, Owner(got.household_id, got.person_id))
    return signed_in(session)


@blueprint.post("/pairings/look")
@open_to("keeper", body=bodies.CODE)
def look_pairing(body: Given) -> Response:
    """Show the keeper which phone shows this code.

    → `{device_name, asked_ms}`
    """
    p.count_try("approve")
    with counting_wrong_codes("pairing"), reading() as connection:
        return jsonify(pairing.look(connection, body["code"], p.now_ms()))


@blueprint.post("/pairings/approve")
@open_to("keeper", body=bodies.APPROVE)
def approve_pairing(actor: Actor, body: Given) -> Response:
    """Let the phone with this code in: as somebody who is there (`person_id`), or as somebody new (`person_name`).

    → `{}`; 400 with both or neither
    """
    if ("person_id" in body) == ("person_name" in body):
        raise BadRequest(
            told("problem-one-of-two", one="person_id", other="person_name"),
            fields={"person_id": "one of the two"},
        )
    whom = KnownKeeper(body["person_id"]) if "person_id" in body else NewKeeper(body["person_name"])
    p.count_try("approve")
    with counting_wrong_codes("pairing"), writing() as connection:
        pairing.approve(connection, actor, body["code"], whom, p.now_ms())
    return jsonify({})


@blueprint.get("/devices")
@open_to("keeper")
def list_devices(actor: Actor) -> Response:
    """List the household's phones.

    → `{devices: [{id, name, person_id, role, pass_id, created_ms, last_seen_ms, here}]}`
    """
    with reading() as connection:
        return jsonify(devices=devices.list_devices(connection, actor))


@blueprint.post("/devices/<device_id>/revoke")
@open_to("keeper", body=bodies.NOTHING)
def revoke_device(actor: Actor, device_id: str) -> Response:
    """Sign a phone out for good.

    → `{}`
    """
    with writing() as connection:
        name = devices.revoke_device(connection, actor.household_id, device_id, p.now_ms())
        note(connection, actor, "phone_removed", phone=name)
        forget_device(connection, actor.household_id, device_id)
        note_ended(connection, "device", actor.household_id, [device_id], p.now_ms())
    return jsonify({})


def phone_of(device: Given, asked_with: str) -> Phone:
    """Return the phone that introduces itself and asks with this code or link."""
    return Phone(device["id"], device["name"], devices.again_hash(device.get("secret"), asked_with))


def _let_in(connection: Connection, phone: Phone, owner: Owner) -> Session:
    session = devices.sign_in(connection, phone, owner, p.now_ms())
    doer = Doer(owner.household_id, owner.person_id, phone.id)
    note_and_tell(connection, doer, "new_phone", phone=phone.name)
    return session


def describe(actor: Actor) -> dict[str, Any]:
    """Return what a phone is told about itself (docs/http-api.md, ``/api/me``)."""
    with reading() as connection:
        epoch = (
            connection.execute(households_table.select().where(households_table.c.id == actor.household_id))
            .one()
            .epoch
        )
        person = read_record(connection, actor.household_id, actor.person_id)
    window = actor.window
    return {
        "household_id": actor.household_id,
        "person_id": actor.person_id,
        "device_id": actor.device_id,
        "role": actor.role,
        "name": person.values.get("name") if person else None,
        "epoch": epoch,
        "schema": SCHEMA,
        "server_time": p.now_ms(),
        "build": p.parts().shell.build,
        "vapid_public_key": p.parts().pusher.key.public,
        "pass": {
            "id": window.pass_id,
            "state": window.state,
            "starts_on": window.starts_on,
            "ends_on": window.ends_on,
        }
        if window
        else None,
    }


def signed_in(session: Session) -> Response:
    """Answer a sign-in: who this phone now is, and the cookie."""
    with every_household(), reading() as connection:
        actor = devices.actor_of(connection, session.token, p.now_ms())
    enter(actor.household_id)
    response = jsonify(describe(actor))
    response.set_cookie(
        p.cookie_name(),
        session.token,
        max_age=COOKIE_DAYS * 24 * 3600,
        path="/",
        secure=p.parts().settings.secure,
        httponly=True,
        samesite="Lax",
    )
    return response


def qr_svg(text: str) -> str:
    """Return a QR code as an SVG text."""
    return str(segno.make(text, error="m").svg_inline(scale=6, border=2))
