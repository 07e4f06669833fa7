"""What a calculator is: inputs with units, result lines, formula, source and limits."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from ...model.quantities import Estimate, within
from ..wording import say

Value = float | str | bool
Kind = Literal["number", "choice", "yes_no"]


@dataclass(frozen=True, slots=True)
class Input:
    """One thing to fill in. ``low`` and ``high`` in ``unit``, both allowed.

    ``default`` None: it may be left out, and ``left_out`` says what is taken then.
    """

    name: str
    what: str
    unit: str = ""
    default: Value | None = None
    low: float = -math.inf
    high: float = math.inf
    choices: tuple[str, ...] = ()
    kind: Kind = "number"
    left_out: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """A line of a result, worded in section ``reckoned`` (or ``reason``) of the word table."""

    code: str
    args: Mapping[str, Any]
    section: str = "reckoned"

    def __str__(self) -> str:
        return say(self.section, self.code, self.args)


def spread(estimate: Estimate, digits: int | None = None) -> dict[str, float]:
    """Return an estimate as the arguments of a line, rounded: whole numbers unless ``digits`` are asked for."""
    parts = {"low": estimate.low, "best": estimate.best, "high": estimate.high}
    return {name: round(value, digits) for name, value in parts.items()}


@dataclass(frozen=True, slots=True)
class Calculator:
    """A calculator with everything that a person needs to trust it or not."""

    code: str
    inputs: tuple[Input, ...]
    work: Callable[[Mapping[str, Any]], tuple[Line, ...]]

    @property
    def title(self) -> str:
        """Its name in words."""
        return say("reckon", self.code)

    @property
    def formula(self) -> str:
        """How it reckons."""
        return say("reckon_formula", self.code)

    @property
    def source(self) -> str:
        """Where its formula and figures are from."""
        return say("reckon_source", self.code)

    @property
    def limits(self) -> str:
        """Where it holds, and how far it may be off."""
        return say("reckon_limits", self.code)

    def run(self, given: Mapping[str, Value | None]) -> tuple[Line, ...]:
        """Return the result lines; what is not given has its default.

        Raises ``OutOfRange`` outside a formula's range and ``ValueError`` for an unknown name or choice.
        """
        known = {each.name for each in self.inputs}
        if unknown := sorted(set(given) - known):
            raise ValueError(f"{self.code} has no input {unknown[0]}; it has {', '.join(sorted(known))}")
        return self.work({each.name: _read(each, given.get(each.name)) for each in self.inputs})


def _read(each: Input, value: Value | None) -> Value | None:
    chosen = each.default if value is None else value
    if chosen is None:
        return None
    if each.kind == "number":
        return within(each.what, float(chosen), each.unit, each.low, each.high)
    if each.kind == "choice" and chosen not in each.choices:
        raise ValueError(f"{each.name} is {chosen}; it must be one of {', '.join(each.choices)}")
    return chosen


def yes_no(name: str, what: str, *, default: bool = False) -> Input:
    """Return an input that is ticked or not."""
    return Input(name, what, default=default, kind="yes_no")
