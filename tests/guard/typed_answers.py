"""Answers held to ``pwa/answers.d.ts`` by the phone's own type checker.

Each answer is written out as a value of its address's type. A value that stands there as it is may have no field that
its type does not know, unlike one that comes by a name, so all that differs is found.
"""

from __future__ import annotations

import dataclasses
import itertools
import json
import re
import subprocess
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path
from typing import Any

from tests.guard.asked_answers import INTERFACES, Typed

TOP = Path(__file__).parents[2]
TYPES = TOP / "pwa/answers.d.ts"
TSC = TOP / "tests/support/node/node_modules/.bin/tsc"
UNIONS = ("kind", "verdict")
"""By these an object says of which of several shapes it is."""
Put = Callable[[Any], Any]
"""Makes an answer in which something else stands in one place."""


def complaints(folder: Path, answers: Sequence[Typed]) -> dict[int, str]:
    """Return what the type checker says of the answers, by their places; all are checked at once."""
    names = ", ".join(INTERFACES.values())
    lines = [f"import type {{ {names} }} from {json.dumps(str(TYPES))};"]
    for place, each in enumerate(answers):
        lines.append(f"export const answer_{place}: {each.type} = {json.dumps(each.told)};")
    (folder / "answers.ts").write_text("\n".join(lines), "ascii")
    config = {"extends": str(TOP / "pwa/jsconfig.json"), "include": ["answers.ts"], "exclude": []}
    (folder / "tsconfig.json").write_text(json.dumps(config), "utf-8")
    run = subprocess.run(
        [TSC, "-p", folder, "--pretty", "false"], capture_output=True, text=True, check=False
    )
    said: dict[int, str] = {}
    for words in filter(None, re.split(r"\n(?=\S)", run.stdout.strip())):
        found = re.match(r"\S*answers\.ts\((\d+),\d+\): error (.*)", words, re.S)
        assert found, words
        place = int(found[1]) - 2
        said[place] = f"{said.get(place, '')}\n{found[2]}".strip()
    assert bool(said) == bool(run.returncode), run.stdout + run.stderr
    return said


def each_once(answers: Iterable[Typed]) -> list[Typed]:
    """Return the answers without those that say the same as one before."""
    return [*{(each.type, json.dumps(each.told)): each for each in answers}.values()]


def places(answer: Typed) -> Iterator[tuple[str, Any, Put]]:
    """Give every place of an answer: the way there, what stands there, and what puts something else there.

    The way is the same for all of a list; of a list, that place alone is left.
    """

    def inside(here: Any, way: str, put: Put) -> Iterator[tuple[str, Any, Put]]:
        yield way, here, put
        if isinstance(here, dict):
            shape = "".join(f"<{here[name]}>" for name in UNIONS if isinstance(here.get(name), str))
            for name, value in here.items():
                yield from inside(
                    value, f"{way}{shape}.{name}", lambda new, name=name: put({**here, name: new})
                )
        elif isinstance(here, list):
            for value in here:
                yield from inside(value, f"{way}[]", lambda new: put([new]))

    def whole(told: Any) -> Typed:
        return dataclasses.replace(answer, told=told)

    yield from inside(answer.told, f"{answer.interface} {answer.key} ", whole)


def spoilt(answers: Iterable[Typed]) -> dict[str, Typed]:
    """Return answers that no type may take: each object once with a field more, each other value of another type."""
    made: dict[str, Typed] = {}
    for way, here, put in itertools.chain.from_iterable(map(places, answers)):
        if isinstance(here, dict):
            made.setdefault(f"{way} with a field more", put({**here, "not_of_the_type": 1}))
        elif here is not None and not isinstance(here, list):
            made.setdefault(f"{way} of another type", put({"not_of_the_type": 1}))
    return made
