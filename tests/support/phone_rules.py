"""The phone's lists of words and its rules, written from the server's by ``python -m tests.support.phone_rules``.

``care/rules.js``: what the start goes by, also before the catalogue came. ``care/codes.js``: what screens ask for.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from pathlib import Path
from typing import Any, Final, get_args

from tests.support.phone_types import GROUPS, MOST, WORDS

from broodshelf.care.colony.crowding import DEEP_MOULD_SHARE
from broodshelf.care.feeding.trial import NOT_WHILE
from broodshelf.model import gauges, needs, tasks
from broodshelf.model.kinds import KINDS, words
from broodshelf.sync.put_off import CAN_WAIT_H

CARE: Final = Path(__file__).parents[2] / "pwa" / "care"
WRITTEN: Final = "// Written by `python -m tests.support.phone_rules`; a test fails when it is stale.\n\n"
CHOSEN: Final = {
    "STAGES": words.Stage,
    "CONDITIONS": words.Condition,
    "GUILDS": words.Guild,
    "FOUNDING_MODES": words.FoundingMode,
    "PLACE_TYPES": words.PlaceType,
    "SIZES": words.SizeClass,
    "TINTS": words.Tint,
    "READINGS": words.WaterReading,
    "OUTCOMES": words.Outcome,
    "COARSE": words.Coarse,
    "FAULTS": needs.FaultCode,
}
"""What a screen offers, in the order in which it is offered."""
Rules = tuple[tuple[str, str, Any], ...]
"""Each with its name, what it is and where the server says it, its value."""
START: Final[Rules] = (
    ("HOUR_MS", "", gauges.HOUR_MS),
    ("DAY_MS", "", gauges.DAY_MS),
    (
        "SHARES",
        "A water reading as a share of the full reservoir: model/gauges.py. @type {Record<string, number>}",
        gauges.READINGS,
    ),
    (
        "FILLS",
        "What a water log does that leaves the reservoir full: model/gauges.py. @type {string[]}",
        sorted(gauges.FILLS),
    ),
    ("EMPTY_BELOW_MM", "Less water than this is none: model/gauges.py.", gauges.EMPTY_BELOW_MM),
    (
        "DEEP_MOULD_SHARE",
        "Of the plug, from which mould is an alarm: care/colony/crowding.py.",
        DEEP_MOULD_SHARE,
    ),
    (
        "THINGS",
        "The kinds of things. @type {Array<import('../kinds.d.ts').Kind>}",
        [kind.name for kind in KINDS.values() if kind.group == "register"],
    ),
)
"""What the start needs."""
LATER: Final[Rules] = (
    ("CAN_WAIT_H", "So long may wait what may not: sync/put_off.py.", CAN_WAIT_H),
    (
        "NO_LONGER_KEPT",
        "Conditions of a colony for which nothing is asked: model/kinds/words.py. @type {string[]}",
        sorted(words.NO_LONGER_KEPT),
    ),
    (
        "NOT_WHILE",
        "States in which a refusal means nothing: care/feeding/trial.py. @type {string[]}",
        sorted(NOT_WHILE),
    ),
    (
        "FOUNDING_LOOK_DAYS",
        "A founding queen is looked at once in so many days: model/tasks.py.",
        tasks.FOUNDING_LOOK_DAYS,
    ),
    ("STALLED_LOOK_DAYS", "The same of one whose founding stalled.", tasks.STALLED_LOOK_DAYS),
    ("ASK_AHEAD_DAYS", "So long before the day nobody is asked.", tasks.ASK_AHEAD_DAYS),
)
"""What screens alone ask for."""


def phone_rules() -> dict[str, str]:
    """Return the files as they have to be, by name."""
    codes = [_of_type(name, WORDS[get_args(each)], get_args(each)) for name, each in CHOSEN.items()]
    events = [kind.name for kind in KINDS.values() if kind.group == "event"]
    codes.append(_of_type("EVENT_KINDS", GROUPS["event"], events))
    return {
        "codes.js": "// What can be chosen from, in the order in which it is offered, and rules of screens alone.\n"
        + "".join([WRITTEN, *codes, *map(_rule, LATER)]),
        "rules.js": "// Units of time, and what the server's rules go by where a phone has to do the same.\n"
        + "".join([WRITTEN, *map(_rule, START)]),
    }


def _rule(rule: tuple[str, str, Any]) -> str:
    name, said, value = rule
    return (f"/** {said} */\n" if said else "") + _stated(name, value)


def _of_type(name: str, type_: str, each: Iterable[str]) -> str:
    return f"/** @type {{Array<import('../kinds.d.ts').{type_}>}} */\n{_stated(name, list(each))}"


def _stated(name: str, value: Any) -> str:
    line = f"export const {name} = {_literal(value)};\n"
    if len(line) <= MOST + 1 or not isinstance(value, list):
        return line
    return f"export const {name} = [\n" + "".join(f"  {_literal(each)},\n" for each in value) + "];\n"


def _literal(value: Any) -> str:
    if isinstance(value, list):
        return f"[{', '.join(map(_literal, value))}]"
    if isinstance(value, dict):
        return f"{{ {', '.join(f'{key}: {_literal(each)}' for key, each in value.items())} }}"
    if isinstance(value, str):
        return f"'{value}'"
    if isinstance(value, int) or value == int(value):
        return f"{int(value):_}"
    part = Fraction(value).limit_denominator(10)  # a third is read as such
    return str(value) if len(str(value)) < 6 else f"{part.numerator} / {part.denominator}"


if __name__ == "__main__":
    for file, text in phone_rules().items():
        (CARE / file).write_text(text, "utf-8")
