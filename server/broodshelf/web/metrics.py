"""Numbers for Prometheus: to this machine, or to whoever has the operator's token."""

from __future__ import annotations

from flask import Blueprint, Response
from prometheus_client import CONTENT_TYPE_LATEST, generate_latest

from ..nudges.health.nudger import nudger_health
from ..records.apart import every_household
from ..records.database import reading
from . import parts as p
from .guard import open_to

blueprint = Blueprint("metrics", __name__)


@blueprint.get("/metrics")
@open_to("operator")
def metrics() -> Response:
    """Give the numbers of this process and of the database.

    → Prometheus text (docs/self-hosting.md)
    """
    measures = p.parts().pusher.measures
    with every_household(), reading() as connection:
        health = nudger_health(connection, p.now_ms())
    measures.oldest_due.set(health["waiting_ms"] / 1000)
    measures.last_tick.set((health["last_tick_ms"] or 0) / 1000)
    return Response(generate_latest(measures.registry), content_type=CONTENT_TYPE_LATEST)
