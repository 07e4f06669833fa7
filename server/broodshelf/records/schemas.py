"""marshmallow schemas made from the registry: what an operation may set, with a message for each field."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from marshmallow import Schema, ValidationError

from .kinds import KINDS
from .quick import NOT_SURE, Quick, quick_check

LONGEST_NAME: Final = 60


@dataclass(frozen=True, slots=True)
class FieldError:
    """The first thing that is wrong with what an operation sets."""

    code: str
    field: str
    why: str


@cache
def _schema(kind: str) -> Schema:
    made = {name: spec.make() for name, spec in KINDS[kind].fields.items()}
    return Schema.from_dict(dict(made), name=f"{kind.title()}Fields")()


def check_fields(kind: str, values: Mapping[str, Any]) -> tuple[dict[str, Any], FieldError | None]:
    """Validate ``values`` for ``kind``; return the loaded values and the first error, if any.

    ``kind`` must be in the registry. Every field may be null except those that a new record requires.
    """
    specs = KINDS[kind].fields
    for name, value in values.items():
        if name not in specs:
            short = name[:LONGEST_NAME]  # the answer is kept: it may not be as long as whoever sent it likes
            return {}, FieldError("unknown_field", short, f"A {kind} has no field {short!r}.")
        if value is None and specs[name].required:
            return {}, FieldError("bad_value", name, "May not be empty.")
    loaded = _quickly(kind, values)
    if loaded is not None:
        return loaded, None
    try:
        loaded = _schema(kind).load(dict(values), partial=True)
    except ValidationError as error:
        name, messages = next(iter(dict(error.messages_dict).items()))
        return {}, FieldError("bad_value", str(name), _first_sentence(messages))
    return dict(loaded), None


@cache
def _quick_checks(kind: str) -> Mapping[str, Quick]:
    return {name: quick_check(spec.make()) for name, spec in KINDS[kind].fields.items()}


def _quickly(kind: str, values: Mapping[str, Any]) -> dict[str, Any] | None:
    """Return the loaded values if all are plainly right, else None."""
    checks = _quick_checks(kind)
    loaded = {}
    for name, value in values.items():
        sure = None if value is None else checks[name](value)
        if sure is NOT_SURE:
            return None
        loaded[name] = sure
    return loaded


def _first_sentence(messages: Any) -> str:
    while isinstance(messages, Mapping):
        messages = next(iter(messages.values()))
    return str(messages[0] if isinstance(messages, list) else messages)
