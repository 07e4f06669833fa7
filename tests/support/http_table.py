"""The table of addresses in docs/http-api.md: ``python -m tests.support.http_table`` writes it anew.

Made from the doors of the views (web/guard.py): who may call, what is sent, and, from the last paragraph of a view's
docstring, what comes back.
"""

from __future__ import annotations

import re
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from flask import Flask
from marshmallow import Schema, fields

from broodshelf.app import create_app
from broodshelf.records.database import db
from broodshelf.settings import from_environment
from broodshelf.web.bodies import Id
from broodshelf.web.guard import WHO, Guarded, guarded_views
from broodshelf.web.request_body import Body, JsonBody

PAGE = Path(__file__).parents[2] / "docs/http-api.md"
BEGINS = "<!-- addresses: written by python -m tests.support.http_table -->\n"
ENDS = "<!-- end of addresses -->\n"


def table(app: Flask) -> str:
    """Return the table as Markdown, with what its words mean below."""
    views = sorted(guarded_views(app).items(), key=lambda item: (item[0][1], item[0][0]))
    return "\n".join(
        [
            "| method and path | who | what is sent | what comes back |",
            "|---|---|---|---|",
            *(_row(method, rule, view) for (method, rule), view in views),
            "",
            *(f"- **{who}**: {means}" for who, means in WHO.items()),
            "",
        ]
    )


def _row(method: str, rule: str, view: Guarded) -> str:
    door = view.door
    who = f"{door.who}, also after the pass" if door.after_the_pass else door.who
    return f"| {method} `{rule}` | {who} | {_sent(door.body)} | {comes_back(view)} |"


def comes_back(view: Guarded) -> str:
    """Return what a view's docstring says of its answer: the paragraph that an arrow begins."""
    said = re.search(r"^\s*→ (.+?)\s*\Z", view.__doc__ or "", re.M | re.S)
    assert said, f"the docstring of {view.__name__} does not say what comes back"
    return " ".join(said[1].split())


def _sent(body: Body | None) -> str:
    if body is None:
        return ""
    if isinstance(body, JsonBody) and body.schema is not None:
        return f"`{_shape(body.schema())}`"
    return body.says


def _shape(schema: Schema) -> str:
    return f"{{{', '.join(_fields(schema))}}}"


def _fields(schema: Schema) -> Iterator[str]:
    for name, field in schema.fields.items():
        shown = name if field.required else f"{name}?"
        yield f"{shown}: {inside}" if (inside := _inside(field)) else shown


def _inside(field: fields.Field[Any]) -> str:
    if isinstance(field, fields.Nested):
        return _shape(field.schema)
    if isinstance(field, fields.List):
        return "[…]"
    return "id or null" if isinstance(field, Id) and field.allow_none else ""


def with_table(page: str, made: str) -> str:
    """Return the page with this table between its two marks."""
    before, _, rest = page.partition(BEGINS)
    _, _, after = rest.partition(ENDS)
    assert after, f"{PAGE.name} has lost a mark of its table"
    return f"{before}{BEGINS}{made}{ENDS}{after}"


def main() -> None:
    """Write the table into the page."""
    with tempfile.TemporaryDirectory() as folder:
        app = create_app(from_environment({"BROODSHELF_DATA": folder}))
        PAGE.write_text(with_table(PAGE.read_text("utf-8"), table(app)), "utf-8")
        with app.app_context():
            db.engine.dispose()


if __name__ == "__main__":
    main()
