"""Of which form the fields are that people write: what a phone shows in other words than as it is stored."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import get_args

from ...model.kinds import KINDS, forms
from .rows import FieldForm


@cache
def fields_by_form() -> Mapping[FieldForm, list[str]]:
    """Return the names of fields by their form. A name is of one form, whatever kind it belongs to."""
    found: dict[FieldForm, list[str]] = {form: [] for form in get_args(FieldForm)}
    for kind in KINDS.values():
        for name, spec in kind.fields.items() if kind.group != "derived" else ():
            form = _form_of(spec.form)
            if form is not None and name not in found[form]:
                found[form].append(name)
    return found


def _form_of(form: forms.Form) -> FieldForm | None:
    match form:
        case forms.ListOf(each):
            return _form_of(each)
        case forms.Day():
            return "day"
        case forms.Instant():
            return "instant"
        case forms.Number(unit="°C"):
            return "warmth"
        case forms.Ref():
            return "record"
    return None
