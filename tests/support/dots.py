"""Dots on pictures by the phone's own modules, run by Node; and how well they fit what is known to be there."""

from __future__ import annotations

import atexit
import json
import shutil
import subprocess
import tempfile
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from threading import Timer
from typing import Any

import numpy as np
from scipy.optimize import linear_sum_assignment

RUNNER = Path(__file__).parents[1] / "counting" / "propose.mjs"
MOST_S = 900


def run(asked: Iterable[tuple[np.ndarray, dict[str, Any]]], way: str) -> list[dict[str, Any]]:
    """Return ``{made, ms}`` for each luminance picture (bytes, rows first) with what the module is told."""
    answers = []
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "luminance"
        for pixels, told in asked:
            file.write_bytes(np.ascontiguousarray(pixels, dtype=np.uint8).tobytes())
            height, width = pixels.shape
            answers.append(
                _runner().ask({"way": way, "file": str(file), "width": width, "height": height, **told})
            )
    return answers


class _Runner:
    """Node with the phone's modules, for all pictures of this process."""

    def __init__(self) -> None:
        node = shutil.which("node")
        assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
        pipe = subprocess.PIPE
        self._node = subprocess.Popen([node, str(RUNNER)], stdin=pipe, stdout=pipe, text=True)
        atexit.register(self._node.communicate)

    def ask(self, picture: dict[str, Any]) -> dict[str, Any]:
        """Return what it makes of one picture. Where it fails, it has said why on the standard error."""
        assert self._node.stdin and self._node.stdout
        end = Timer(MOST_S, self._node.kill)
        end.start()
        print(json.dumps(picture), file=self._node.stdin, flush=True)
        line = self._node.stdout.readline()
        end.cancel()
        if not line:
            _runner.cache_clear()  # the next picture finds another one
        assert line, "Node failed on a picture"
        answer: dict[str, Any] = json.loads(line)
        return answer


_runner = cache(_Runner)


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
