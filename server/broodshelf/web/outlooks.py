"""Looking ahead and reckoning: the larder, a holiday, and the calculators by themselves."""

from __future__ import annotations

import dataclasses
import datetime as dt
import math
from typing import Any

from flask import Blueprint, Response, jsonify

from ..care.calculators import CALCULATORS, Calculator, Input
from ..care.calculators.model import Refused
from ..care.plan.holiday import travel_rules
from ..care.plan.larder import spoils_first
from ..errors import BadRequest, NotFound
from ..languages import say, say_code, told
from ..languages.calculating import input_id, title_of, usual_of, why_refused
from ..languages.choosing import in_units_of
from ..languages.saying import message_id
from ..model.quantities import OutOfRange
from ..people.actor import Actor
from ..people.language import language_of_person
from ..records.database import reading
from ..records.zones import read_zone
from ..rounds.outlook import holiday_outlook, larder_left, larder_outlook
from . import bodies
from . import parts as p
from .guard import Given, open_to

blueprint = Blueprint("outlooks", __name__, url_prefix="/api")


@blueprint.get("/larder")
@open_to("keeper")
def larder(actor: Actor) -> Response:
    """Return what is left of each lot, how long each food lasts and what will spoil.

    → `{left: [{lot_id, amount, given}], outlooks: [{food_code, runs_out_early, runs_out, buy_by, spoils, reasons}],
    spoils}`, the food to buy first and the lot that spoils first at the front; `left`: what the feedings since its
    amount was written down leave of a lot
    """
    with reading() as connection:
        zone = read_zone(connection, actor.household_id)
        today = dt.datetime.fromtimestamp(p.now_ms() / 1000, zone).date().isoformat()
        left = larder_left(connection, actor.household_id)
        found = larder_outlook(connection, actor.household_id, today, left)
    return jsonify(
        left=[dataclasses.asdict(lot) for lot in left],
        outlooks=[dataclasses.asdict(outlook) for outlook in found],
        spoils=[dataclasses.asdict(lot) for lot in spoils_first(found)],
    )


@blueprint.post("/holiday")
@open_to("keeper", body=bodies.HOLIDAY)
def holiday(actor: Actor, body: Given) -> Response:
    """Return what to top up before and which colonies need nobody.

    → `{colonies: [{colony_id, verdict, top_up, visit_every_days, reasons}], travel}`
    """
    leave_on, return_on = body["leave_on"], body["return_on"]
    try:
        with reading() as connection:
            found = holiday_outlook(connection, actor.household_id, leave_on, return_on, p.now_ms())
    except OutOfRange as error:
        raise BadRequest(
            told("problem-holiday-days"),
            fields={"return_on": str(error)},
        ) from None
    return jsonify(colonies=[dataclasses.asdict(colony) for colony in found], travel=list(travel_rules()))


@blueprint.get("/reckon")
@open_to("session")
def calculators() -> Response:
    """Return every calculator with its inputs, formula, source and limits.

    → `{calculators: [{code, title, inputs, formula, source, limits}]}`
    """
    return jsonify(calculators=[_about(each, p.asked_language()) for each in CALCULATORS.values()])


@blueprint.post("/reckon/<code>")
@open_to("session", body=bodies.INPUTS)
def reckon(actor: Actor, code: str, body: Given) -> Response:
    """Return what a calculator says of the inputs in the body.

    → `{lines}`
    """
    found = CALCULATORS.get(code)
    if found is None:
        raise NotFound(told("problem-no-calculator"))
    try:
        lines = found.run(_typed(found, body))
    except ValueError as error:
        why = why_refused(code, error)
        raise BadRequest(why, fields={getattr(error, "name", ""): str(why)}) from None
    with reading() as connection:
        own = language_of_person(connection, actor.household_id, actor.person_id)
    language = in_units_of(p.asked_language(), own)
    return jsonify(lines=[say_code(language, line.section, line.code, line.args) for line in lines])


def _typed(found: Calculator, given: dict[str, Any]) -> dict[str, Any]:
    kinds = {each.name: each.kind for each in found.inputs}
    takes = {"number": (int, float), "choice": (str,), "yes_no": (bool,)}
    for name, value in given.items():
        if name not in kinds:
            raise BadRequest(
                why_refused(found.code, Refused("no_input", calculator=found.code, name=name)),
                fields={name: "unknown"},
            )
        wrong = not isinstance(value, takes[kinds[name]]) or (
            kinds[name] == "number" and value in (True, False)
        )
        if value is not None and wrong:
            raise BadRequest(
                told(message_id("problem-input", kinds[name]), name=name),
                fields={name: f"not a {kinds[name]}"},
            )
    return given


def _about(each: Calculator, language: str | None) -> dict[str, Any]:
    return {
        "code": each.code,
        "title": title_of(language, each.code),
        "inputs": [_input(each.code, one, language) for one in each.inputs],
        "formula": say_code(language, "reckon_formula", each.code),
        "source": say_code(language, "reckon_source", each.code),
        "limits": say_code(language, "reckon_limits", each.code),
    }


def _input(calculator: str, one: Input, language: str | None) -> dict[str, Any]:
    shown = {
        k: None if isinstance(v, float) and not math.isfinite(v) else v
        for k, v in dataclasses.asdict(one).items()
    }
    words = {
        "what": say(language, input_id(calculator, one.name)),
        "left_out": usual_of(language, one.name, one.left_out),
    }
    return {**shown, **words}
