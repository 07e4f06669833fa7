"""What a phone downloads, counted on the files as they are served: ``count()``.

Bodies as they are compressed, each by itself. The headers of the answers are not among them; the browser test of a
first visit counts those as they go over the line.
"""

from __future__ import annotations

import json
from functools import cache

from broodshelf.care import catalogue
from broodshelf.languages.phones_file import names_of, phones_files
from broodshelf.web.compact import ways
from broodshelf.web.parcels import CHARTS_AND_LABELS, COUNTING_ON_PICTURES, DECODER, ONLINE, SCREENS
from broodshelf.web.shell import START_PATH, File, Shell, find_folder

CODE = ("page", "style sheet", "modules before the first control", "screens", "worker")
"""The app without charts, labels and counting: what every phone needs to run it."""
SPOKEN = (*CODE, "messages of the start", "messages of the screens")
"""The same with what it says in one language."""


@cache
def served() -> Shell:
    """The shell as a server makes it, once: packing its files takes a second."""
    words = json.dumps(catalogue.as_json(), ensure_ascii=False, separators=(",", ":")).encode()
    return Shell(find_folder(), {"catalogue.json": words, **phones_files()})


def count(shell: Shell) -> dict[str, dict[str, int]]:
    """Return bytes by part and encoding. A phone fetches every part once for each build, the messages of one
    language; the decoder of labels only where its browser has none. What works online only is fetched when it is
    opened, and not counted.
    """
    files, words = shell.files, names_of("en")
    parts: dict[str, list[File]] = {
        "page": [shell.page("en")],
        "style sheet": [files["style.css"]],
        "modules before the first control": [files[name] for name in START_PATH],
        "screens": [shell.parcels[SCREENS]],
        "worker": [shell.worker],
        "charts and labels": [shell.parcels[CHARTS_AND_LABELS]],
        "counting on pictures": [shell.parcels[COUNTING_ON_PICTURES], files[words["counting"]]],
        "decoder of labels": [files[DECODER]],
        "messages of the start": [files[words["first"]]],
        "messages of the screens": [files[words["screens"]]],
        "messages of charts and labels": [files[words["charts"]]],
        "catalogue and its messages": [files["catalogue.json"], files[words["catalogue"]]],
        "manifest and icons": [shell.manifest, files["icons/tube.svg"], files["icons/tube-192.png"]],
    }
    return {
        part: {way: sum(len(file.compressed(way) or file.body) for file in each) for way in ways()}
        for part, each in parts.items()
    }


def count_online(shell: Shell) -> dict[str, int]:
    """Return the bytes of what works with a connection only, if all of it is opened, by encoding."""
    names = [name for name in shell.files if name.startswith(ONLINE)] + [names_of("en")["online"]]
    each = [shell.files[name] for name in names]
    return {way: sum(len(file.compressed(way) or file.body) for file in each) for way in ways()}


def sum_of(counted: dict[str, dict[str, int]], parts: tuple[str, ...] | None = None) -> dict[str, int]:
    """Return the sum of some parts, or of all, by encoding."""
    return {
        way: sum(sizes[way] for part, sizes in counted.items() if parts is None or part in parts)
        for way in ways()
    }
