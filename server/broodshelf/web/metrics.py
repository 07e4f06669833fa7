"""Numbers for Prometheus: to this machine, or to whoever has the operator's token."""

from __future__ import annotations

import hmac

from flask import Blueprint, Response, request
from prometheus_client import CONTENT_TYPE_LATEST, generate_latest

from ..errors import NotFound
from ..nudges.runner import nudger_health
from ..records.apart import every_household
from ..records.database import reading
from . import parts as p
from .callers import came_through_a_proxy, is_this_machine

blueprint = Blueprint("metrics", __name__)


@blueprint.get("/metrics")
def metrics() -> Response:
    """Give the numbers of this process and of the database. For others than the operator there is no such page."""
    if not (_has_token() or _from_this_machine()):
        raise NotFound
    measures = p.parts().pusher.measures
    with every_household(), reading() as connection:
        health = nudger_health(connection, p.now_ms())
    measures.oldest_due.set(health["waiting_ms"] / 1000)
    measures.last_tick.set((health["last_tick_ms"] or 0) / 1000)
    return Response(generate_latest(measures.registry), content_type=CONTENT_TYPE_LATEST)


def _has_token() -> bool:
    token = p.parts().settings.metrics_token
    scheme, _, given = request.headers.get("Authorization", "").partition(" ")
    return bool(token) and scheme == "Bearer" and hmac.compare_digest(given.encode(), token.encode())


def _from_this_machine() -> bool:
    """Behind a proxy on this machine every visitor would seem to come from here: who came through one did not."""
    return is_this_machine(request.remote_addr) and not came_through_a_proxy(request.environ)
