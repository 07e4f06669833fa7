"""Is the server well? For whoever watches it."""

from __future__ import annotations

from flask import Blueprint, Response, jsonify
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from .. import __version__
from ..records.database import reading
from . import parts as p

blueprint = Blueprint("health", __name__)


@blueprint.get("/healthz")
def healthz() -> tuple[Response, int]:
    """Answer 200 when the database answers, else 503."""
    try:
        with reading() as connection:
            connection.execute(text("SELECT 1"))
        database = "ok"
    except SQLAlchemyError as error:
        database = type(error).__name__
    good = database == "ok"
    body = jsonify(ok=good, version=__version__, build=p.parts().shell.build, database=database)
    return body, 200 if good else 503
