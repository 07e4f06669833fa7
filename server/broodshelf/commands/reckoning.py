"""``broodshelf reckon``: the calculators by themselves, with formula, source and limits."""

from __future__ import annotations

import sys
from typing import Any

from ..care.calculators import CALCULATORS, Calculator
from ..care.calculators.model import Input
from ..languages import say, say_code
from ..languages.calculating import input_id, title_of, unit_of, usual_of, why_refused
from ..languages.numbers import number_in_words


def reckon(calculator: Calculator, given: dict[str, Any], tag: str) -> int:
    """Print what a calculator says, with its formula, source and limits; status 2 for input outside them."""
    inputs = {each.name: given[each.name] for each in calculator.inputs}
    try:
        lines = calculator.run(inputs)
    except ValueError as error:
        print(f"broodshelf: {why_refused(calculator.code, error).in_language(tag)}", file=sys.stderr)
        return 2
    print(title_of(tag, calculator.code))
    for line in lines:
        print(f"  {say_code(tag, line.section, line.code, line.args)}")
    for each in calculator.inputs:
        value = each.default if inputs[each.name] is None else inputs[each.name]
        if value not in (None, False):
            what = {"what": say(tag, input_id(calculator.code, each.name)), "value": _shown(each, value, tag)}
            print(f"    {say(tag, 'command-reckon-with', what)}")
    for message, section in (("how", "formula"), ("from", "source"), ("limits", "limits")):
        text = {"text": say_code(tag, f"reckon_{section}", calculator.code)}
        print(f"    {say(tag, f'command-reckon-{message}', text)}")
    return 0


def _shown(each: Input, value: Any, tag: str) -> str:
    if value is True:
        return say(tag, "command-yes-word")
    if isinstance(value, float):
        return f"{number_in_words(value, tag)} {unit_of(tag, each.unit)}".rstrip()
    return str(value)


def add_parsers(commands: Any, tag: str) -> None:
    """Add a parser for each calculator, with an option for each of its inputs."""
    for code, calculator in CALCULATORS.items():
        parser = commands.add_parser(code.replace("_", "-"), help=title_of(tag, code))
        for each in calculator.inputs:
            flag, what = f"--{each.name.replace('_', '-')}", _help(code, each, tag).replace("%", "%%")
            if each.kind == "yes_no":
                parser.add_argument(flag, action="store_true", default=None, help=what)
            elif each.kind == "choice":
                parser.add_argument(flag, choices=each.choices, help=what)
            else:
                parser.add_argument(flag, type=float, help=what, metavar=each.unit or "N")


def _help(calculator: str, each: Input, tag: str) -> str:
    usual = usual_of(tag, each.name, each.left_out)
    if each.default not in (None, False):
        usual = _shown(Input(each.name), each.default, tag)
    args = {
        "what": say(tag, input_id(calculator, each.name)),
        "unit": unit_of(tag, each.unit),
        "usual": usual,
    }
    return say(tag, f"command-input{'-unit' if each.unit else ''}{'-usual' if usual else ''}", args)
