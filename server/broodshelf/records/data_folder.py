"""The data folder: its owner's only, and a damaged file in it is set aside and kept, never a stop of the server.

What a start sets aside keeps its name with ``.damaged-N`` behind it; ``broodshelf doctor`` names it until somebody
has looked and taken it away.
"""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import suppress
from itertools import count
from pathlib import Path
from typing import Final

from ..logs import say

PRIVATE: Final = 0o700
OTHERS: Final = 0o077
"""The rights of everybody but the owner."""
DAMAGED: Final = ".damaged-"


def make_private(folder: Path) -> None:
    """Make the data folder, or take from others what they could read; what lies in it is behind it."""
    folder.mkdir(mode=PRIVATE, parents=True, exist_ok=True)
    for path in (folder, *(p for p in folder.iterdir() if p.suffix != ".pem" and not p.is_symlink())):
        try:
            if (mode := path.stat().st_mode) & OTHERS:
                path.chmod(mode & 0o700)
        except OSError as error:
            say(
                f"{path} can be read by others and is not ours to change",
                logging.WARNING,
                error=str(error.errno),
            )


def make_folder(folder: Path) -> None:
    """Make a folder of the data folder; a file that stands in its place is set aside."""
    if folder.exists() and not folder.is_dir():
        set_aside(folder, "a file stood where a folder belongs")
    folder.mkdir(mode=PRIVATE, parents=True, exist_ok=True)


def set_aside(path: Path, why: str) -> Path:
    """Rename what is damaged, so that it is kept and in nobody's way; say so loudly. Returns its new place."""
    aside = next(each for n in count(1) if not (each := path.with_name(f"{path.name}{DAMAGED}{n}")).exists())
    with suppress(FileNotFoundError):  # another process that starts now was faster
        path.rename(aside)
    say(f"damaged: {why}; {path} is kept as {aside.name}", logging.ERROR)
    return aside


def set_aside_before(folder: Path) -> Iterator[Path]:
    """Yield what earlier starts set aside and nobody has taken away yet."""
    for part in (folder, *(folder / name for name in ("marks", "builds", "taken"))):
        if part.is_dir():
            yield from sorted(path for path in part.iterdir() if DAMAGED in path.name)
