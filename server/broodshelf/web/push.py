"""Nudges on this phone: listening, leaving, testing, acknowledging, and how well it hears."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify

from ..nudges import hearing, subscriptions
from ..records.apart import every_household
from ..records.database import reading, writing
from . import parts as p

blueprint = Blueprint("push", __name__, url_prefix="/api/push")


@blueprint.put("/subscription")
def subscribe() -> Response:
    """Remember where this phone listens."""
    actor, pusher = p.actor(), p.parts().pusher
    body = p.json_body()
    with every_household(), writing() as connection:  # an address may be another household's
        made = subscriptions.subscribe(connection, actor, body, pusher.hosts, pusher.key.key_id, p.now_ms())
    return jsonify(made)


@blueprint.delete("/subscription")
def unsubscribe() -> Response:
    """Forget where this phone listens."""
    actor = p.actor(after_the_pass=True)
    p.body()
    with writing() as connection:
        subscriptions.unsubscribe(connection, actor)
    return jsonify({})


@blueprint.post("/test")
def test() -> Response:
    """Send this phone a message at once."""
    actor, made = p.actor(), p.parts()
    p.body()
    return jsonify(subscriptions.send_test(actor, made.pusher.sender, made.settings.public_url, p.now_ms()))


@blueprint.post("/ack")
def acknowledge() -> Response:
    """Note that a phone's worker got a message; the id is the secret."""
    body = p.body()
    with every_household(), writing() as connection:
        subscriptions.acknowledge(connection, body["delivery_id"], body["shown"], p.now_ms())
    return jsonify({})


@blueprint.get("/health")
def health() -> Response:
    """Say how well this phone, the person's others and, to a keeper, the household's hear."""
    actor = p.actor()
    with reading() as connection:
        return jsonify(hearing.health(connection, actor, p.now_ms()))
