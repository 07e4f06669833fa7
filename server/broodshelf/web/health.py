"""Is the server well? For whoever watches it."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response, jsonify

from .. import __version__
from ..nudges.health.nudger import nudger_health
from ..records.apart import every_household
from ..records.database import reading
from ..records.trouble import trouble_of
from . import parts as p
from .guard import open_to

blueprint = Blueprint("health", __name__)


@blueprint.get("/readyz")
@open_to("all")
def readyz() -> tuple[Response, int]:
    """Answer 200 while requests should be sent here, for a proxy that has several servers to choose from.

    → `{ready, build, database, stopping}`; 503 when the database is away or its schema is behind, and from the moment
    when the process was told to stop. Nudges and the disk are `/healthz`'s matter
    """
    readiness = p.parts().readiness
    with every_household():
        found = readiness.look()
    good = found == "ok" and not readiness.stopping
    body = jsonify(ready=good, build=p.parts().shell.build, database=found, stopping=readiness.stopping)
    return body, 200 if good else 503


@blueprint.get("/healthz")
@open_to("all")
def healthz() -> tuple[Response, int]:
    """Answer 200 when the store takes what it is given and nudges go out in time.

    → `{ok, version, build, database, nudger: {ok, last_tick_ms, waiting_ms}}`; 503 when not ok, 507 when the disk is
    full. `database`: `ok`, or the code of what is wrong with the store (below)
    """
    nudger: dict[str, Any] = {}
    with every_household():
        found = p.parts().probe.look(p.now_ms())
    try:
        with every_household(), reading() as connection:
            nudger = nudger_health(connection, p.now_ms())
    except Exception as error:
        found = found or trouble_of(error)
        if found is None:
            raise
    # a server that has just started has not ticked yet
    ticks = bool(nudger) and (nudger["ok"] or nudger["last_tick_ms"] is None)
    good = found is None and ticks
    body = jsonify(
        ok=good,
        version=__version__,
        build=p.parts().shell.build,
        database="ok" if found is None else found.problem_code,
        nudger=nudger,
    )
    return body, 200 if good else 503 if found is None else found.status
