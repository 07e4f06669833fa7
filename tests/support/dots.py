"""Dots on pictures by the phone's own modules, run by Node; and how well they fit what is known to be there."""

from __future__ import annotations

import json
import shutil
import subprocess
import tempfile
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from scipy.optimize import linear_sum_assignment

RUNNER = Path(__file__).parents[1] / "counting" / "propose.mjs"


def run(asked: Iterable[tuple[np.ndarray, dict[str, Any]]], way: str) -> list[dict[str, Any]]:
    """Return ``{dots, ms}`` for each luminance picture (bytes, rows first) with what the module is told."""
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    with tempfile.TemporaryDirectory() as folder:
        lines = []
        for number, (pixels, told) in enumerate(asked):
            file = Path(folder) / f"{number}.bin"
            file.write_bytes(np.ascontiguousarray(pixels, dtype=np.uint8).tobytes())
            height, width = pixels.shape
            lines.append(
                json.dumps({"way": way, "file": str(file), "width": width, "height": height, **told})
            )
        done = subprocess.run(
            [node, str(RUNNER)], input="\n".join(lines), capture_output=True, text=True, timeout=900
        )
    assert done.returncode == 0, done.stderr[-3000:]
    return [json.loads(line) for line in done.stdout.splitlines()]


@dataclass(frozen=True)
class Fit:
    """How dots fit what is there: right ones, false ones, missed ones."""

    right: int
    false: int
    missed: int

    @property
    def recall(self) -> float:
        """The share of what is there that has a dot."""
        return self.right / max(1, self.right + self.missed)

    @property
    def precision(self) -> float:
        """The share of the dots that are right."""
        return self.right / max(1, self.right + self.false)

    @property
    def error(self) -> float:
        """By how much the count is off, as a share of what is there; above 0 is too many."""
        return (self.false - self.missed) / max(1, self.right + self.missed)


def fit(dots: Sequence[Sequence[float]], there: Sequence[Sequence[float]], within_px: float) -> Fit:
    """Pair dots with what is there, each once, no farther apart than ``within_px``, as many and as near as can be."""
    if not dots or not there:
        return Fit(0, len(dots), len(there))
    apart = np.hypot(*(np.subtract.outer([d[i] for d in dots], [t[i] for t in there]) for i in (0, 1)))
    rows, columns = linear_sum_assignment(np.where(apart <= within_px, apart, 1e6))
    right = int((apart[rows, columns] <= within_px).sum())
    return Fit(right, len(dots) - right, len(there) - right)
