"""Calendar feeds: making and ending their addresses, and serving them to calendars."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify, request

from ..errors import NotFound
from ..feed import tokens
from ..feed.memory import read_known, remember
from ..feed.moves import follow
from ..feed.render import render
from ..feed.rounds import language_of_feed, rounds_of
from ..people.actor import Actor
from ..records.apart import enter, every_household
from ..records.database import reading, writing
from . import bodies
from . import parts as p
from .guard import Given, open_to

blueprint = Blueprint("feed", __name__)


@blueprint.post("/api/feeds")
@open_to("keeper", body=bodies.FEED_OF)
def make(actor: Actor, body: Given) -> Response:
    """Make a feed's address. The old address of the same feed ends.

    → `{url}`, shown once
    """
    with writing() as connection:
        token = tokens.make_feed(connection, actor.household_id, body["pass_id"], actor.person_id, p.now_ms())
    return jsonify(url=f"{p.parts().settings.public_url}/feed/{token}.ics")


@blueprint.post("/api/feeds/revoke")
@open_to("keeper", body=bodies.FEED_OF)
def revoke(actor: Actor, body: Given) -> Response:
    """End a feed's address.

    → `{}`
    """
    with writing() as connection:
        tokens.revoke_feed(connection, actor.household_id, body["pass_id"], p.now_ms())
    return jsonify({})


@blueprint.get("/feed/<token>.ics")
@open_to("token")
def read(token: str) -> Response:
    """Serve a feed: the same bytes and the same strong ETag until something changes.

    → `text/calendar`, strong ETag
    """
    try:
        with every_household(), reading() as connection:
            feed = tokens.find_feed(connection, token, p.now_ms())
        enter(feed.household_id)
        with reading() as connection:
            name, found = rounds_of(connection, feed, p.now_ms())
            before = read_known(connection, feed)
            language = language_of_feed(connection, feed)
    except NotFound:
        p.count_try("feed")
        raise
    rounds, known = follow(before, found, p.now_ms())
    if known != before:
        with writing() as connection:
            rounds = remember(connection, feed, found, p.now_ms())
    body = render(feed.id, name, p.parts().settings.public_url, rounds, language)
    response = Response(body, content_type="text/calendar; charset=utf-8")
    response.headers["Cache-Control"] = "private, no-cache"
    response.headers["X-Robots-Tag"] = "noindex"
    response.add_etag()
    response.make_conditional(request)
    return response
