"""Steps drawn at random, for runs too long for hypothesis. The same seed gives the same steps."""

from __future__ import annotations

import random
from collections.abc import Iterator, Mapping
from typing import Any

from tests.support.world import LONG_AWAY_DAYS

WEIGHTS: Mapping[str, int] = {
    "burst": 14, "log": 30, "feed": 10, "found": 2,
    "rename": 14, "amend": 10, "void": 6, "unvoid": 2, "bad": 1, "mend": 1,
    "sync": 12, "lose": 5, "double": 3, "late": 3, "begin": 5, "advance": 12, "crash": 5, "page": 1, "skew": 2,
    "upgrade": 1, "backup": 1, "restore": 1, "days": 1, "revoke": 1,
}  # fmt: skip
"""How often each step is drawn."""
RESTORING: Mapping[str, int] = {
    **WEIGHTS, "burst": 2, "rename": 20, "amend": 20, "void": 10, "unvoid": 6, "backup": 4, "restore": 5, "days": 3,
}  # fmt: skip
"""Many restores, and changes of what was there before them."""
WHO_ONLY = ("found", "bad", "mend", "sync", "lose", "double", "upgrade", "revoke")


def draw(seed: int, count: int, phones: int, weights: Mapping[str, int] = WEIGHTS) -> Iterator[list[Any]]:
    """Yield ``count`` steps."""
    chance = random.Random(seed)
    for name in chance.choices(list(weights), list(weights.values()), k=count):
        yield [name, *_numbers(name, chance, chance.randrange(phones))]


def _numbers(name: str, chance: random.Random, who: int) -> list[int]:
    match name:
        case "backup":
            return []
        case "late":
            return [chance.randrange(8)]
        case "restore":
            return [chance.randrange(4), chance.randrange(2)]
        case "days":
            return [chance.choice((1, 1, 3, 40, LONG_AWAY_DAYS))]
        case "begin":
            return [who, chance.randrange(2)]
        case "advance":
            return [who, chance.randrange(2), chance.randint(1, 5)]
        case "crash":
            return [who, chance.randint(1, 6)]
        case "page":
            return [who, chance.choice((10, 100, 1000))]
        case "skew":
            return [who, chance.choice((-26, -1, 0, 1, 26))]
        case _ if name in WHO_ONLY:
            return [who]
        case _:
            return [who, chance.randrange(6)]
