"""Calculators that stand by themselves, the same for the command line and the app.

To add one, write it beside these, put it into ``CALCULATORS``, and its words into ``languages/en/reckon.ftl`` and
``calculators.ftl``.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from .brood import BROOD
from .model import Calculator, Input, Line, Refused
from .prey import PREY
from .sweet import COOLING, DILUTE, SUGAR_WATER
from .water import TUBE_WATER

CALCULATORS: Final[Mapping[str, Calculator]] = {
    each.code: each for each in (SUGAR_WATER, DILUTE, COOLING, PREY, TUBE_WATER, BROOD)
}


def calculator(code: str) -> Calculator:
    """Return a calculator by its code; a name with dashes means the same. ``ValueError`` for an unknown one."""
    found = CALCULATORS.get(code.replace("-", "_"))
    if found is None:
        raise Refused("no_calculator", known=", ".join(CALCULATORS))
    return found


__all__ = ["CALCULATORS", "Calculator", "Input", "Line", "calculator"]
