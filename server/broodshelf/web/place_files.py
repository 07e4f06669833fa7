"""The hours of a place as a file: brought in from a sensor's own table, and given out in the same form."""

from __future__ import annotations

import datetime as dt
from typing import Any

from flask import Blueprint, Response, jsonify
from sqlalchemy import Connection

from ..errors import BadRequest, NotFound
from ..languages import language_of, told
from ..model.gauges import HOUR_MS
from ..people.actor import Actor
from ..records.database import reading, writing
from ..records.store import read_record
from ..records.zones import read_zone
from ..sensing.intake import hours_by_place
from ..sensing.sheet import Columns, hours_that_are_new, read_sheet, take_in, write_sheet
from . import bodies
from . import parts as p
from .guard import Given, open_to

blueprint = Blueprint("place_files", __name__, url_prefix="/api")


@blueprint.post("/places/<place_id>/file")
@open_to("keeper", body=bodies.PLACE_FILE)
def bring_in(actor: Actor, place_id: str, body: Given) -> Response:
    """Read a sensor's table in CSV into the hours of a place; with `preview` nothing is stored.

    → `{rows, hours, new_hours, from_ms, until_ms, low_c, high_c, bad_rows, bad: [{line, why}]}`; `new_hours`: those in
    which nothing was measured yet, the others stay as they are; `bad`: the first 20 rows that cannot be read
    """
    if "temperature" not in body and "humidity" not in body:
        raise BadRequest(told("problem-name-a-column"), fields={"temperature": "missing"})
    now_ms = p.now_ms()
    with reading() as connection:
        zone = dt.UTC if body["utc"] else _zone_at(connection, actor.household_id, place_id)
    columns = Columns(
        body["time"], body.get("temperature"), body.get("humidity"), body["unit"], body["dates"], zone
    )
    found = read_sheet(body["text"], columns, now_ms)
    with reading() if body["preview"] else writing() as connection:
        _zone_at(connection, actor.household_id, place_id)  # it may have gone meanwhile
        new = hours_that_are_new(connection, actor.household_id, place_id, found.readings)
        if not body["preview"]:
            take_in(connection, new)
    bad = [{"line": line, "why": why.in_language(language_of(p.asked_language()))} for line, why in found.bad]
    return jsonify({**_told(found.readings, len(new)), "bad_rows": found.bad_rows, "bad": bad})


@blueprint.get("/places/<place_id>/hours.csv")
@open_to("keeper")
def give_out(actor: Actor, place_id: str) -> Response:
    """Return all hours of a place as a table in CSV that `POST /api/places/<place_id>/file` takes.

    → `text/csv`: time with its UTC offset, temperature_c, least_c, most_c, humidity_pct
    """
    with reading() as connection:
        zone = _zone_at(connection, actor.household_id, place_id)
        hours = hours_by_place(connection, actor.household_id, 0, p.now_ms() + 1, place_id).get(place_id, [])
    answer = Response(write_sheet(hours, zone), mimetype="text/csv")
    answer.headers["Content-Disposition"] = 'attachment; filename="place-hours.csv"'
    return answer


def _zone_at(connection: Connection, household_id: str, place_id: str) -> dt.tzinfo:
    """Return the household's zone. Raises ``NotFound`` for a place that is not here."""
    place = read_record(connection, household_id, place_id)
    if place is None or place.kind != "place" or place.gone:
        raise NotFound(told("problem-no-place"))
    return read_zone(connection, household_id)


def _told(readings: Any, new_hours: int) -> dict[str, Any]:
    instants = [one.at_ms for one in readings]
    warm = [one.temperature_c for one in readings if one.temperature_c is not None]
    return {
        "rows": len(instants),
        "hours": len({at_ms // HOUR_MS for at_ms in instants}),
        "new_hours": new_hours,
        "from_ms": min(instants, default=None),
        "until_ms": max(instants, default=None),
        "low_c": min(warm, default=None),
        "high_c": max(warm, default=None),
    }
