"""Looking at a backup as a restore would, and changing nothing: is it whole, what is in it, from when is it."""

from __future__ import annotations

import datetime as dt
import tempfile
from pathlib import Path

from ..errors import CannotKeep
from .backup import FORMAT, unpack
from .dumps import check_database, require_households, sha256_of


def verify(source: Path) -> str:
    """Return in words what a backup holds. Raises ``CannotKeep`` saying what is wrong with it."""
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        manifest = unpack(source, folder)
        if manifest.get("format") != FORMAT or manifest.get("engine") not in ("sqlite", "postgresql"):
            raise CannotKeep(f"{source} is of a format that this version does not know.")
        counts = check_database(folder / "database", manifest["engine"])
        require_households(counts)
        pictures = manifest.get("pictures", {})
        broken = [name for name, told in pictures.items() if not _is_as_it_was(folder / name, told)]
    if broken:
        raise CannotKeep(
            f"{source} is damaged: {len(broken)} pictures are not as they were, e.g. {broken[0]}."
        )
    made_ms = manifest.get("made_ms")
    made = f", made {dt.datetime.fromtimestamp(made_ms / 1000, dt.UTC):%Y-%m-%d %H:%M} UTC" if made_ms else ""
    return (
        f"{source} is whole{made} by version {manifest.get('version')} on {manifest['engine']}: "
        f"{counts['households']} households, {counts['records']} records, {len(pictures)} pictures."
    )


def _is_as_it_was(picture: Path, told: str) -> bool:
    return picture.is_file() and sha256_of(picture) == told
