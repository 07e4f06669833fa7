"""``broodshelf reckon``: the calculators by themselves, with formula, source and limits."""

from __future__ import annotations

import sys
from typing import Any

from ..care.calculators import CALCULATORS, Calculator


def reckon(calculator: Calculator, given: dict[str, Any]) -> int:
    """Print what a calculator says, with its formula, source and limits; status 2 for input outside them."""
    inputs = {each.name: given[each.name] for each in calculator.inputs}
    try:
        lines = calculator.run(inputs)
    except ValueError as error:
        print(f"broodshelf: {error}", file=sys.stderr)
        return 2
    print(calculator.title, *(f"  {line}" for line in lines), sep="\n")
    for each in calculator.inputs:
        value = each.default if inputs[each.name] is None else inputs[each.name]
        if value not in (None, False):
            shown = (
                f"{value:g} {each.unit}" if isinstance(value, float) else "yes" if value is True else value
            )
            print(f"    with {each.what}: {shown}")
    for head, text in (
        ("how", calculator.formula),
        ("from", calculator.source),
        ("limits", calculator.limits),
    ):
        print(f"    {head}: {text}")
    return 0


def add_parsers(commands: Any) -> None:
    """Add a parser for each calculator, with an option for each of its inputs."""
    for code, calculator in CALCULATORS.items():
        parser = commands.add_parser(code.replace("_", "-"), help=calculator.title)
        for each in calculator.inputs:
            flag = f"--{each.name.replace('_', '-')}"
            usual = each.left_out if each.default in (None, False) else each.default
            usual = f" (else {usual})" if usual else ""
            what = f"{each.what}{f', {each.unit}' if each.unit else ''}{usual}".replace("%", "%%")
            if each.kind == "yes_no":
                parser.add_argument(flag, action="store_true", default=None, help=what)
            elif each.kind == "choice":
                parser.add_argument(flag, choices=each.choices, help=what)
            else:
                parser.add_argument(flag, type=float, help=what, metavar=each.unit or "N")
