"""Who writes a kind or a field. What a stand-in may is what ``HOUSE`` writes, inside of the pass that they came by.

``sync/who_may_write.py`` holds every operation to it.
"""

from __future__ import annotations

from typing import Final, Literal

Role = Literal["keeper", "stand_in", "server"]
Writers = frozenset[Role]

KEEPER: Final[Writers] = frozenset({"keeper"})
SERVER: Final[Writers] = frozenset({"server"})
HOUSE: Final[Writers] = frozenset({"keeper", "stand_in"})
"""A keeper, and for the colonies of their pass a stand-in."""
