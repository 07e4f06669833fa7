"""Steps drawn at random, for runs too long for hypothesis. The same seed gives the same steps."""

from __future__ import annotations

import random
from collections.abc import Iterator
from typing import Any

from tests.support.world import LONG_AWAY_DAYS

WEIGHTS: dict[str, int] = {
    "log": 30, "feed": 8, "found": 2, "rename": 12, "amend": 8, "void": 5, "unvoid": 2, "bad": 1, "mend": 1, "sync": 16, "lose": 6,
    "double": 3, "late": 3, "begin": 6, "advance": 14, "crash": 4, "page": 1, "skew": 2, "upgrade": 1, "backup": 1,
    "restore": 1, "days": 1, "revoke": 1,
}  # fmt: skip


def draw(seed: int, count: int, phones: int, weights: dict[str, int] | None = None) -> Iterator[list[Any]]:
    """Yield ``count`` steps."""
    chance = random.Random(seed)
    table = weights or WEIGHTS
    names = chance.choices(list(table), list(table.values()), k=count)
    for name in names:
        who = chance.randrange(phones)
        yield {
            "late": lambda: [name, chance.randrange(8)],
            "begin": lambda who=who: [name, who, chance.randrange(2)],
            "advance": lambda who=who: [name, who, chance.randrange(2), chance.randint(1, 5)],
            "crash": lambda who=who: [name, who, chance.randint(1, 6)],
            "page": lambda who=who: [name, who, chance.choice((1, 3, 10, 1000))],
            "skew": lambda who=who: [name, who, chance.choice((-26, -1, 0, 1, 26))],
            "backup": lambda: [name],
            "restore": lambda: [name, chance.randrange(4), chance.randrange(2)],
            "days": lambda: [name, chance.choice((1, 1, 3, 40, LONG_AWAY_DAYS))],
        }.get(
            name,
            lambda who=who: (
                [name, who]
                if name in ("found", "bad", "mend", "sync", "lose", "double", "upgrade", "revoke")
                else [name, who, chance.randrange(6)]
            ),
        )()
