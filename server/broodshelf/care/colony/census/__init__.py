"""The living census: what is in the nest today and on every day of the next half year.

``of(facts, day)`` is the whole of it: from what is known (``facts``) to a ``Census`` with ``today``, ``by_day``,
``first_workers``, ``new_workers``, ``nest_full``, ``reasons`` and ``states``. See docs/care-model/colony.md.
"""

from __future__ import annotations

from ..counted_workers import MOST_WORKERS
from .counted import Brood, Census, census_of
from .facts import Facts, Seen, Warmth
from .groups import LifeGroup, life_group
from .outlook import of
from .pace import larval_days

__all__ = [
    "MOST_WORKERS",
    "Brood",
    "Census",
    "Facts",
    "LifeGroup",
    "Seen",
    "Warmth",
    "census_of",
    "larval_days",
    "life_group",
    "of",
]
