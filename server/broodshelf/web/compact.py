"""Fewer bytes for the phone: scripts and styles without what only their writers need, and compressed bodies.

Two packages do most of it, and neither is needed: the extra ``compact`` brings them where there are wheels.
Without ``minify`` only the comments of scripts and styles stay at home; without ``brotli`` there is gzip alone.
"""

from __future__ import annotations

import gzip
import json
import re
import subprocess
import sys
from collections.abc import Callable, Mapping
from functools import lru_cache
from importlib.util import find_spec
from pathlib import Path
from typing import Final

from ..logs import say

try:
    import brotli
except ImportError:
    brotli = None

KINDS: Final[Mapping[str, str]] = {
    ".js": "application/javascript",
    ".mjs": "application/javascript",
    ".css": "text/css",
}
LONGEST_S: Final = 30
_MINIFY_ALL: Final = Path(__file__).with_name("minify_all.py")
_NOTES: Final = re.compile(r"/\*\*.*?\*/ ?|^[ \t]*//[^\n]*$", re.S | re.M)
_TAKEN_APART: Final = re.compile(r"(^[ \t]*|(?<=[;{}] ))const (?=[\[{])", re.M)
"""A declaration that takes a value apart, at the start of a line or after another statement."""
_INDENT: Final = re.compile(r"(?<=>) *\n *| *\n *(?=/?>|<|\$\{)|(?<=\n) +")
"""After minifying, lines are left in markup only. There spaces at their beginning mean nothing, and beside a tag or a
part that is filled in not even the line break: htm leaves it out. Between attributes it parts them."""
_STYLE_NOTES: Final = re.compile(r"/\*.*?\*/", re.S)


def compact(files: Mapping[str, bytes]) -> dict[str, bytes]:
    """Return the files with each script and style sheet as one that does the same in fewer bytes."""
    texts = {name: body.decode() for name, body in files.items() if Path(name).suffix in KINDS}
    smaller = _minified(tuple(texts.items())) or {
        name: _without_notes(name, text) for name, text in texts.items()
    }
    return {**files, **{name: text.encode() for name, text in smaller.items()}}


@lru_cache(maxsize=2)
def _minified(texts: tuple[tuple[str, str], ...]) -> dict[str, str] | None:
    """Return the texts minified, by name; None where this machine cannot.

    In a process of its own: the package brings the runtime of another language, 10 MiB and threads that no fork
    would survive.
    """
    if find_spec("minify") is None:
        return None
    told = json.dumps([(name, KINDS[Path(name).suffix], _in_order(name, text)) for name, text in texts])
    try:
        done = subprocess.run(  # noqa: S603  our own script
            [sys.executable, "-P", _MINIFY_ALL], input=told, capture_output=True, text=True, timeout=LONGEST_S,
            check=True,
        )  # fmt: skip
        return {name: _INDENT.sub("", text) for name, text in json.loads(done.stdout).items()}
    except (OSError, subprocess.SubprocessError, ValueError) as error:
        say("the phone's files could not be minified; they are served larger", reason=str(error))
        return None


def _in_order(name: str, text: str) -> str:
    """Keep the minifier from putting ``const [b] = g(a)`` before the ``const a = f()`` that it follows.

    That would break the names and the order of what is done. It does not join declarations of two sorts, so these
    become ``let``.
    """
    return text if name.endswith(".css") else _TAKEN_APART.sub(r"\1let ", text)


def _without_notes(name: str, text: str) -> str:
    """Leave out the comments, but none of the line breaks: lines keep their numbers."""
    if name.endswith(".mjs"):
        return text  # a library, published without comments
    notes = _NOTES if name.endswith(".js") else _STYLE_NOTES
    return notes.sub(lambda match: "\n" * match[0].count("\n"), text)


def ways() -> dict[str, Callable[[bytes], bytes]]:
    """Return how a body can be compressed here, the smallest first, by the name in ``Content-Encoding``."""
    plain: dict[str, Callable[[bytes], bytes]] = {"gzip": lambda body: gzip.compress(body, 9, mtime=0)}
    return plain if brotli is None else {"br": lambda body: brotli.compress(body, quality=11), **plain}
