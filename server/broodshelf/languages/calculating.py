"""What calculators ask for and say, by their codes: the same words on the command line and over HTTP."""

from __future__ import annotations

import re
from typing import Any, Final

from ..model.quantities import OutOfRange
from .saying import knows, message_id, say, say_code
from .told import Told, told

_BETWEEN: Final = re.compile(r"[^a-z0-9]+")


def title_of(tag: str | None, calculator: str) -> str:
    """Return a calculator's name."""
    return say_code(tag, "reckon", calculator)


def input_id(calculator: str, name: str) -> str:
    """Return the id of the message for what an input asks for: one code may ask two things in two calculators."""
    of_its_own = message_id("calculator-input", f"{calculator}-{name}")
    return of_its_own if knows(of_its_own) else message_id("calculator-input", name)


def unit_of(tag: str | None, unit: str) -> str:
    """Return a unit in words: ``mg/d`` is ``mg a day``; one of measure stays as it is."""
    name = f"calculator-unit-{_BETWEEN.sub('-', unit).strip('-')}"
    return say(tag, name) if unit and knows(name) else unit


def usual_of(tag: str | None, name: str, left_out: str) -> str:
    """Return what counts where an input is left out: in words, or the figure; empty if nothing does."""
    usual = message_id("calculator-usual", name)
    return say(tag, usual) if knows(usual) else left_out


def why_refused(calculator: str, error: ValueError) -> Told:
    """Return why a calculator did not take its inputs: ``OutOfRange``, or ``Refused`` with its code."""
    if isinstance(error, OutOfRange):
        what: Any = input_id(calculator, error.name)
        what = told(what) if knows(what) else error.name
        return told(
            "problem-out-of-range",
            what=what,
            value=error.value,
            unit=error.unit,
            low=error.low,
            high=error.high,
        )
    code, args = getattr(error, "code", None), dict(getattr(error, "args_of_code", {}))
    if code is None:
        return told("problem-input-wrong", why=str(error))
    if "calculator" in args:
        args["calculator"] = told(message_id("reckon", args["calculator"]))
    return told(message_id("problem", code), **args)
