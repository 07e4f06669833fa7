"""Is the server well? For whoever watches it."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, Response, jsonify
from sqlalchemy.exc import SQLAlchemyError

from .. import __version__
from ..nudges.runner import nudger_health
from ..records.database import reading
from . import parts as p

blueprint = Blueprint("health", __name__)


@blueprint.get("/healthz")
def healthz() -> tuple[Response, int]:
    """Answer 200 when the database answers and nudges go out in time, else 503."""
    nudger: dict[str, Any] = {}
    try:
        with reading() as connection:
            nudger = nudger_health(connection, p.now_ms())
        database = "ok"
    except SQLAlchemyError as error:
        database = type(error).__name__
    # a server that has just started has not ticked yet
    good = database == "ok" and (nudger["ok"] or nudger["last_tick_ms"] is None)
    body = jsonify(
        ok=good, version=__version__, build=p.parts().shell.build, database=database, nudger=nudger
    )
    return body, 200 if good else 503
