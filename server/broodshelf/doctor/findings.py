"""One thing that ``broodshelf doctor`` looked at, and how it stands."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ..languages import Told

Level = Literal["good", "look", "bad"]


@dataclass(frozen=True, slots=True)
class Finding:
    """What was looked at, as a code, and how it stands; ``bad`` keeps the shelf from working, ``look`` may."""

    level: Level
    about: str
    words: Told
