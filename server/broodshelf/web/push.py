"""Nudges on this phone: listening, leaving, testing, acknowledging, and how well it hears."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify

from ..nudges.channels.push import subscriptions
from ..nudges.health import phones
from ..nudges.sending.at_once import send_test
from ..people.actor import Actor
from ..records.apart import every_household
from ..records.database import reading, writing
from . import bodies
from . import parts as p
from .guard import Given, open_to

blueprint = Blueprint("push", __name__, url_prefix="/api/push")


@blueprint.put("/subscription")
@open_to("session", body=bodies.SUBSCRIPTION)
def subscribe(actor: Actor, body: Given) -> Response:
    """Remember where this phone listens.

    → `{id}`
    """
    pusher = p.parts().pusher
    with every_household(), writing() as connection:  # an address may be another household's
        made = subscriptions.subscribe(connection, actor, body, pusher.hosts, pusher.key.key_id, p.now_ms())
    return jsonify(made)


@blueprint.delete("/subscription")
@open_to("session", body=bodies.NOTHING, after_the_pass=True)
def unsubscribe(actor: Actor) -> Response:
    """Forget where this phone listens.

    → `{}`
    """
    with writing() as connection:
        subscriptions.unsubscribe(connection, actor)
    return jsonify({})


@blueprint.post("/test")
@open_to("session", body=bodies.NOTHING)
def test(actor: Actor) -> Response:
    """Send this phone a message at once.

    → `{delivery_id, outcome}`
    """
    made = p.parts()
    return jsonify(send_test(actor, made.pusher.channels, made.settings.public_url, p.now_ms()))


@blueprint.post("/ack")
@open_to("all", body=bodies.ACKNOWLEDGED)
def acknowledge(body: Given) -> Response:
    """Note that a phone's worker got a message.

    → `{}` (the id is unguessable)
    """
    with every_household(), writing() as connection:
        subscriptions.acknowledge(connection, body["delivery_id"], body["shown"], p.now_ms())
    return jsonify({})


@blueprint.get("/health")
@open_to("session")
def health(actor: Actor) -> Response:
    """Say how well this phone, the person's others and, to a keeper, the household's hear.

    → `{subscribed, key_id, last_delivered_ms, last_ack_ms, last_outcome, devices: [{id, name, here, seen_ms,
    last_delivered_ms, last_ack_ms, last_outcome, silent}], silent_elsewhere: [{id, name, person_id, person, why,
    last_ack_ms, seen_ms}]}`; `silent_elsewhere` tells keepers of other people's phones, `why` is `unheard` or `unseen`
    """
    with reading() as connection:
        return jsonify(phones.health(connection, actor, p.now_ms()))
