"""What a calculator is: inputs with units, result lines, formula, source and limits."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from ...model.quantities import Estimate, within

Value = float | str | bool
Kind = Literal["number", "choice", "yes_no"]


@dataclass(frozen=True, slots=True)
class Input:
    """One thing to fill in. ``low`` and ``high`` in ``unit``, both allowed.

    ``default`` None: it may be left out; ``left_out`` is the figure that is taken then, if it is one.
    """

    name: str
    unit: str = ""
    default: Value | None = None
    low: float = -math.inf
    high: float = math.inf
    choices: tuple[str, ...] = ()
    kind: Kind = "number"
    left_out: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """A line of a result: a code of section ``reckoned`` (or ``reason``) and its arguments."""

    code: str
    args: Mapping[str, Any]
    section: str = "reckoned"


class Refused(ValueError):  # noqa: N818 - named after what happened, like ``OutOfRange``
    """Inputs that a calculator cannot take: a code, and what it says of them."""

    def __init__(self, code: str, **args: Any) -> None:
        super().__init__(f"{code}: {args}")
        self.code, self.args_of_code = code, args


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

    def run(self, given: Mapping[str, Value | None]) -> tuple[Line, ...]:
        """Return the result lines; what is not given has its default.

        Raises ``OutOfRange`` outside a formula's range, by the input's name, and ``Refused`` for an unknown name or
        choice.
        """
        known = {each.name for each in self.inputs}
        if unknown := sorted(set(given) - known):
            raise Refused("no_input", calculator=self.code, name=unknown[0])
        return self.work({each.name: _read(each, given.get(each.name)) for each in self.inputs})


def _read(each: Input, value: Value | None) -> Value | None:
    chosen = each.default if value is None else value
    if chosen is None:
        return None
    if each.kind == "number":
        return within(each.name, float(chosen), each.unit, each.low, each.high)
    if each.kind == "choice" and chosen not in each.choices:
        raise Refused("not_a_choice", name=each.name, value=chosen, choices=", ".join(each.choices))
    return chosen


def yes_no(name: str, *, default: bool = False) -> Input:
    """Return an input that is ticked or not."""
    return Input(name, default=default, kind="yes_no")
