"""A short way through validation: values that are plainly right skip marshmallow.

Made from the very fields of the registry, so there is one table of rules. A quick check only ever says "right,
and this is the value" or "not sure"; whoever is not sure asks marshmallow, which alone refuses and words why.
A test holds both to each other. A queue of 1,000 logs is validated in 5 ms instead of 60.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, Final

from marshmallow import ValidationError, fields, validate

from .types import Day, Happened, Whole, check_day, check_instant

NOT_SURE: Final = object()
Quick = Callable[[Any], Any]
"""Returns the loaded value, or ``NOT_SURE``."""


def quick_check(field: fields.Field[Any]) -> Quick:
    """Return the quick check of a field; one that is never sure for a field that has no short way."""
    rules = field.validators
    if isinstance(field, Happened) and not rules:
        return _happened
    if isinstance(field, Day) and not rules:
        return _day
    if type(field) is fields.String and len(rules) == 1:
        return _string(rules[0])
    if type(field) is fields.Boolean:
        return _flag
    if type(field) is fields.Raw and not rules:
        return lambda value: value
    bounds = [rule for rule in rules if isinstance(rule, validate.Range)]
    if len(bounds) == 1 and bounds[0].min_inclusive and bounds[0].max_inclusive:
        low, high = bounds[0].min, bounds[0].max
        if type(field) is fields.Float:
            return lambda value: _number(value, low, high)
        if type(field) is fields.Integer and len(rules) == 1:
            return lambda value: value if type(value) is int and low <= value <= high else NOT_SURE
    return _never_sure


def _string(rule: Any) -> Quick:
    if isinstance(rule, validate.Length) and rule.max is not None and rule.min is rule.equal is None:
        most = rule.max
        return lambda value: value if type(value) is str and len(value) <= most else NOT_SURE
    if isinstance(rule, validate.OneOf):
        options = frozenset(rule.choices)
        return lambda value: value if type(value) is str and value in options else NOT_SURE
    if isinstance(rule, Whole):
        fits = rule.pattern.fullmatch
        return lambda value: value if type(value) is str and fits(value) else NOT_SURE
    return _never_sure


def _number(value: Any, low: float, high: float) -> Any:
    if type(value) not in (int, float) or not low <= value <= high or not math.isfinite(value):
        return NOT_SURE
    return float(value)


def _happened(value: Any) -> Any:
    return _checked(value, check_instant)


def _day(value: Any) -> Any:
    return _checked(value, check_day)


def _checked(value: Any, check: Callable[[str], None]) -> Any:
    if type(value) is not str:
        return NOT_SURE
    try:
        check(value)
    except ValidationError:
        return NOT_SURE
    return value


def _flag(value: Any) -> Any:
    return value if value is True or value is False else NOT_SURE


def _never_sure(_value: Any) -> Any:
    return NOT_SURE
