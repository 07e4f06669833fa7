"""Looking at a backup as a restore would, and changing nothing: is it whole, what is in it, from when is it."""

from __future__ import annotations

import datetime as dt
import tempfile
from pathlib import Path

from ..errors import CannotKeep
from ..languages import Told, told
from .backup import FORMAT, unpack
from .dumps import check_database, require_households, sha256_of


def verify(source: Path) -> Told:
    """Return what a backup holds. Raises ``CannotKeep`` saying what is wrong with it."""
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        manifest = unpack(source, folder)
        if manifest.get("format") != FORMAT or manifest.get("engine") not in ("sqlite", "postgresql"):
            raise CannotKeep(told("backup-unknown-format", path=source))
        counts = check_database(folder / "database", manifest["engine"])
        require_households(counts)
        pictures = manifest.get("pictures", {})
        broken = [name for name, told in pictures.items() if not _is_as_it_was(folder / name, told)]
    if broken:
        raise CannotKeep(told("backup-pictures", path=source, n=len(broken), first=broken[0]))
    made_ms = manifest.get("made_ms")
    made = {"made": f"{dt.datetime.fromtimestamp(made_ms / 1000, dt.UTC):%Y-%m-%d %H:%M}"} if made_ms else {}
    return told(
        "command-verified" if made else "command-verified-undated",
        path=source, version=manifest.get("version"), engine=manifest["engine"], **made,
        households=counts["households"], records=counts["records"], pictures=len(pictures),
    )  # fmt: skip


def _is_as_it_was(picture: Path, told: str) -> bool:
    return picture.is_file() and sha256_of(picture) == told
