"""marshmallow schemas made from the registry: what an operation may set, with a message for each field."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from marshmallow import Schema, ValidationError, fields, validate

from ..model.kinds import KINDS, FieldSpec, forms
from .quick.validation import NOT_SURE, Quick, quick_check
from .types import SHA256, UUID, WALL_TIME, Day, Happened, Whole, check_zone, finite

LONGEST_NAME: Final = 60


@dataclass(frozen=True, slots=True)
class FieldError:
    """The first thing that is wrong with what an operation sets."""

    code: str
    field: str
    why: str
    """For whoever writes a client, in English."""
    wanted: str = "form"
    """What the field takes: a code that phones have words for, with its arguments; empty where ``code`` says all."""
    args: Mapping[str, Any] | None = None


def field_of(spec: FieldSpec) -> fields.Field[Any]:
    """Return the marshmallow field of a field of the registry. It may be null unless a new record requires it."""
    made = _field(spec.form)
    made.allow_none = not spec.required
    return made


def _field(form: forms.Form) -> fields.Field[Any]:
    """Return a field for values of this form, none of them null."""
    match form:
        case forms.Text(most):
            return fields.String(validate=validate.Length(max=most))
        case forms.Choice(words, why):
            return fields.String(validate=validate.OneOf(words, error=why))
        case forms.Number(low, high):
            return fields.Float(validate=[finite, validate.Range(min=low, max=high)], allow_nan=False)
        case forms.WholeNumber(low, high):
            return fields.Integer(strict=True, validate=validate.Range(min=low, max=high))
        case forms.Flag():
            return fields.Boolean(truthy={True}, falsy={False})
        case forms.Day():
            return Day()
        case forms.Instant():
            return Happened()
        case forms.WallTime():
            return fields.String(validate=Whole(WALL_TIME, "Not a wall-clock time, e.g. 18:30."))
        case forms.Zone():
            return fields.String(validate=check_zone)
        case forms.Ref():
            return fields.String(validate=Whole(UUID, "Not a UUID in lower case."))
        case forms.Sha256():
            return fields.String(validate=Whole(SHA256, "Not a SHA-256 in lower case."))
        case forms.ListOf(each, most):
            return fields.List(_field(each), validate=validate.Length(max=most))
        case forms.TableOf(words, each):
            return fields.Dict(keys=_field(words), values=_field(each))
        case forms.Whatever():
            return fields.Raw()
    raise TypeError(f"A form of values without a marshmallow field: {form!r}.")


@cache  # made once a kind: tests.bench.sync_cost
def _schema(kind: str) -> Schema:
    made = {name: field_of(spec) for name, spec in KINDS[kind].fields.items()}
    return Schema.from_dict(dict(made), name=f"{kind.title()}Fields")()


def check_fields(kind: str, values: Mapping[str, Any]) -> tuple[dict[str, Any], FieldError | None]:
    """Validate ``values`` for ``kind``; return the loaded values and the first error, if any.

    ``kind`` must be in the registry. Every field may be null except those that a new record requires.
    """
    specs = KINDS[kind].fields
    for name, value in values.items():
        if name not in specs:
            short = name[:LONGEST_NAME]  # the answer is kept: it may not be as long as whoever sent it likes
            return {}, FieldError("unknown_field", short, f"A {kind} has no field {short!r}.", "")
        if value is None and specs[name].required:
            return {}, FieldError("bad_value", name, "May not be empty.", "empty")
    loaded = _quickly(kind, values)
    if loaded is not None:
        return loaded, None
    try:
        loaded = _schema(kind).load(dict(values), partial=True)
    except ValidationError as error:
        name, messages = next(iter(dict(error.messages_dict).items()))
        wanted, args = _wanted(specs[str(name)].form)
        return {}, FieldError("bad_value", str(name), _first_sentence(messages), wanted, args)
    return dict(loaded), None


def _wanted(form: forms.Form) -> tuple[str, dict[str, Any]]:
    match form:
        case forms.Text(most):
            return "text", {"most": most}
        case forms.Choice():
            return "choice", {}
        case forms.Number(low, high) | forms.WholeNumber(low, high):
            return "number", {"low": low, "high": high}
        case forms.Day():
            return "day", {}
        case forms.Instant():
            return "instant", {}
    return "form", {}


@cache  # made once a kind: tests.bench.sync_cost
def _quick_checks(kind: str) -> Mapping[str, Quick]:
    return {name: quick_check(spec.form) for name, spec in KINDS[kind].fields.items()}


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
