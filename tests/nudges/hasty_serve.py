"""``broodshelf serve`` with a nudger that ticks twice a second: ``python -m tests.nudges.hasty_serve serve``."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from functools import partial

from broodshelf import cli
from broodshelf.nudges import nudger

TICK_S = 0.5


def main(arguments: Sequence[str]) -> int:
    """Serve until told to stop."""
    nudger.Ticking = partial(nudger.Ticking, every_s=TICK_S)  # type: ignore[misc,assignment]
    return cli.main([*arguments])


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
