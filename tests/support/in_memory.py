"""Where the files of a run lie: in memory, if there is room.

Each commit of SQLite waits for a disk, and ext4 looks long for an inode where many files were deleted just before: a
copy of a PostgreSQL database, which is 425 files, took ten times the processor there.
"""

from __future__ import annotations

import os
import shutil
from pathlib import Path
from typing import Final

MEMORY: Final = Path("/dev/shm")
LEAST_FREE_BYTES: Final = 8 * 2**30
"""Twice what the databases and data folders of a whole run come to."""


def in_memory() -> Path | None:
    """Return a folder that lies in memory, None where there is none or too little room."""
    there = MEMORY.is_dir() and os.access(MEMORY, os.W_OK)
    return MEMORY if there and shutil.disk_usage(MEMORY).free > LEAST_FREE_BYTES else None
