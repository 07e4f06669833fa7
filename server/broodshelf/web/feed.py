"""Calendar feeds: making and ending their addresses, and serving them to calendars."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify, request

from ..errors import NotFound
from ..feed import tokens
from ..feed.memory import read_known, remember
from ..feed.moves import follow
from ..feed.render import render
from ..feed.rounds import rounds_of
from ..records.apart import enter, every_household
from ..records.database import reading, writing
from . import parts as p

blueprint = Blueprint("feed", __name__)


@blueprint.post("/api/feeds")
def make() -> Response:
    """Make a feed's address; shown once. The old address of the same feed ends."""
    actor, pass_id = p.keeper(), p.body()["pass_id"]
    with writing() as connection:
        token = tokens.make_feed(connection, actor.household_id, pass_id, p.now_ms())
    return jsonify(url=f"{p.parts().settings.public_url}/feed/{token}.ics")


@blueprint.post("/api/feeds/revoke")
def revoke() -> Response:
    """End a feed's address."""
    actor, pass_id = p.keeper(), p.body()["pass_id"]
    with writing() as connection:
        tokens.revoke_feed(connection, actor.household_id, pass_id, p.now_ms())
    return jsonify({})


@blueprint.get("/feed/<token>.ics")
def read(token: str) -> Response:
    """Serve a feed: the same bytes and the same strong ETag until something changes."""
    try:
        with every_household(), reading() as connection:
            feed = tokens.find_feed(connection, token, p.now_ms())
        enter(feed.household_id)
        with reading() as connection:
            name, found = rounds_of(connection, feed, p.now_ms())
            before = read_known(connection, feed)
    except NotFound:
        p.count_try("feed")
        raise
    rounds, known = follow(before, found, p.now_ms())
    if known != before:
        with writing() as connection:
            rounds = remember(connection, feed, found, p.now_ms())
    body = render(feed.id, name, p.parts().settings.public_url, rounds)
    response = Response(body, content_type="text/calendar; charset=utf-8")
    response.headers["Cache-Control"] = "private, no-cache"
    response.headers["X-Robots-Tag"] = "noindex"
    response.add_etag()
    response.make_conditional(request)
    return response
