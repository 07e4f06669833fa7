"""The OpenAPI 3.1 document of the API: ``python -m tests.support.openapi > openapi.json``.

Made from the routes of the app and their doors (web/guard.py), which say who may call and what is sent, the docstrings
of their views, which say what comes back, the registry of kinds and the calculators. Nothing of it is written twice.
It is for whoever works on the API and for the fuzzer; the server does not serve it.
"""

from __future__ import annotations

import json
import math
import re
import sys
import tempfile
from collections.abc import Mapping
from typing import Any

from apispec import APISpec
from apispec.ext.marshmallow import MarshmallowPlugin, OpenAPIConverter
from flask import Flask
from marshmallow import Schema, fields
from tests.support.http_table import comes_back

from broodshelf import __version__
from broodshelf.app import create_app
from broodshelf.care.calculators import CALCULATORS, Calculator
from broodshelf.languages import say
from broodshelf.languages.calculating import input_id
from broodshelf.model.kinds import KINDS, required_fields
from broodshelf.records.database import db
from broodshelf.records.schemas import field_of
from broodshelf.records.types import LAST_MS, Day, Happened, Whole
from broodshelf.settings import from_environment
from broodshelf.sync import envelope
from broodshelf.web.bodies import INPUTS, SYNC, Id
from broodshelf.web.guard import guarded_views
from broodshelf.web.request_body import Body, PictureBody

UUID = {"type": "string", "pattern": "^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"}
SECURITY = {"session": [{"session": []}], "keeper": [{"session": []}], "sensor": [{"sensor": []}]}
PROBLEM = {
    "type": "object",
    "required": ["type", "title", "status", "detail", "code"],
    "properties": {
        "type": {"type": "string"},
        "title": {"type": "string"},
        "status": {"type": "integer"},
        "detail": {"type": "string"},
        "code": {"type": "string"},
        "fields": {"type": "object"},
        "reference": {"type": "string"},
    },
}


def document(app: Flask) -> dict[str, Any]:
    """Return the document."""
    plugin = MarshmallowPlugin(schema_name_resolver=lambda _: None)
    made = APISpec(
        title="Broodshelf",
        version=__version__,
        openapi_version="3.1.0",
        plugins=[plugin],
        info={
            "description": "Care for a shelf of ant colonies. The contract of sync is in docs/sync.md.",
            "license": {"name": "MIT", "identifier": "MIT"},
        },
        servers=[{"url": "/"}],
    )
    converter = plugin.converter
    assert converter is not None
    for add in (_whole_texts, _days_and_instants):
        converter.add_attribute_function(add)
    made.components.security_scheme(
        "session", {"type": "apiKey", "in": "cookie", "name": "__Host-session"}
    ).security_scheme("sensor", {"type": "http", "scheme": "bearer"}).schema("Problem", PROBLEM).schema(
        "Operation", _operation(converter)
    )
    for (method, rule), view in sorted(guarded_views(app).items(), key=lambda item: item[0][1]):
        door = view.door
        operation = {
            "operationId": f"{view.__module__.rpartition('.')[2]}.{view.__name__}",
            "summary": (view.__doc__ or "").strip().splitlines()[0],
            "description": f"For: {door.who}. What comes back: {comes_back(view)}",
            "security": SECURITY.get(door.who, []),
            "parameters": [_parameter(name) for name in re.findall(r"<(?:path:)?([^>]+)>", rule)],
            "responses": {
                "200": {"description": "Done; see the description."},
                "default": {
                    "description": "A problem.",
                    "content": {
                        "application/problem+json": {"schema": {"$ref": "#/components/schemas/Problem"}}
                    },
                },
            },
        }
        if door.body is not None:
            operation["requestBody"] = {"required": True, "content": _content(converter, door.body)}
        path = re.sub(r"<(?:path:)?([^>]+)>", r"{\1}", rule)
        made.path(path=path, operations={method.lower(): operation})
    return made.to_dict()


def _parameter(name: str) -> dict[str, Any]:
    known: dict[str, Any] = {"code": {"enum": sorted(CALCULATORS)}}
    schema = known.get(name, UUID if name.endswith("_id") else {"type": "string"})
    return {"name": name, "in": "path", "required": True, "schema": schema}


def _content(converter: OpenAPIConverter, body: Body) -> dict[str, Any]:
    """Return what is sent, by its media type."""
    if isinstance(body, PictureBody):
        return {"image/jpeg": {"schema": {"maxLength": body.most_bytes, "contentMediaType": "image/jpeg"}}}
    if body is SYNC:
        return {"application/json": {"schema": _sync()}}
    if body is INPUTS:
        each = [_inputs(made) for _, made in sorted(CALCULATORS.items())]
        return {"application/json": {"schema": {"anyOf": each}}}
    assert body.schema is not None, f"nothing is known of what is sent as {body.says}"
    return {"application/json": {"schema": _closed(converter, body.schema)}}


def _closed(converter: OpenAPIConverter, schema: type[Schema]) -> dict[str, Any]:
    """Return the schema of a body that takes no other fields."""
    return {"type": "object", **converter.schema2jsonschema(schema()), "additionalProperties": False}


def _sync() -> dict[str, Any]:
    optional_id = {**UUID, "type": ["string", "null"]}
    return {
        "type": "object",
        "required": ["device", "schema"],
        "properties": {
            "device": UUID,
            "epoch": optional_id,
            "cursor": {"type": ["string", "null"], "maxLength": 100},
            "schema": {"type": "integer", "minimum": envelope.OLDEST_SCHEMA, "maximum": envelope.SCHEMA},
            "device_time": {"type": "integer"},
            "ops": {
                "type": "array",
                "maxItems": envelope.MOST_OPERATIONS,
                "items": {"$ref": "#/components/schemas/Operation"},
            },
            "limit": {"type": "integer", "minimum": 1, "maximum": envelope.MOST_ROWS},
        },
    }


def _operation(converter: OpenAPIConverter) -> dict[str, Any]:
    """Return the schema of an operation: what holds for all of them, and for each kind what it may set."""
    number = {"type": "integer", "minimum": 0, "maximum": 2**53}
    shared = {
        "op_id": UUID,
        "id": UUID,
        "made_at": {"type": "integer", "minimum": 0, "maximum": LAST_MS},
        "skew_ms": {"type": "integer", "minimum": -LAST_MS, "maximum": LAST_MS},
        "base_rev": number,
        "base_epoch": {**UUID, "type": ["string", "null"]},
        "n": number,
        "adopt": {"type": "boolean"},
    }
    kinds = []
    for kind in KINDS.values():
        if kind.group == "derived":
            continue
        made = Schema.from_dict({name: field_of(spec) for name, spec in kind.fields.items()})
        values = {
            **_closed(converter, made),
            "minProperties": 1,
            "x-a-new-record-needs": sorted(required_fields(kind)),
        }
        kinds.append(
            {
                "type": "object",
                "title": kind.name,
                "properties": {"kind": {"const": kind.name}, "set": values},
            }
        )
    return {
        "type": "object",
        "required": ["op_id", "kind", "id", "set", "made_at"],
        "properties": shared,
        "oneOf": kinds,
    }


def _inputs(calculator: Calculator) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for each in calculator.inputs:
        what = say(None, input_id(calculator.code, each.name))
        schema: dict[str, Any] = {"description": f"{what} {each.unit}".strip()}
        if each.kind == "choice":
            schema["enum"] = list(each.choices)
        else:
            schema["type"] = "number" if each.kind == "number" else "boolean"
        ends = {"minimum": each.low, "maximum": each.high} if each.kind == "number" else {}
        found[each.name] = schema | {name: end for name, end in ends.items() if math.isfinite(end)}
    return {"type": "object", "properties": found, "additionalProperties": False}


def _whole_texts(_: OpenAPIConverter, field: fields.Field[Any], **__: Any) -> Mapping[str, Any]:
    if isinstance(field, Id):
        return {"pattern": UUID["pattern"]}
    patterns = [each.pattern.pattern for each in field.validators if isinstance(each, Whole)]
    return {"pattern": f"^(?:{patterns[0]})$"} if patterns else {}


def _days_and_instants(_: OpenAPIConverter, field: fields.Field[Any], **__: Any) -> Mapping[str, Any]:
    if isinstance(field, Day):
        return {"format": "date"}
    return {"format": "date-time"} if isinstance(field, Happened) else {}


def main() -> None:
    """Print the document of an app without a household."""
    with tempfile.TemporaryDirectory() as folder:
        app = create_app(from_environment({"BROODSHELF_DATA": folder}))
        json.dump(document(app), sys.stdout, indent=1, ensure_ascii=False)
        with app.app_context():
            db.engine.dispose()


if __name__ == "__main__":
    main()
