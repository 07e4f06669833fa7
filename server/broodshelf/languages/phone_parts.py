"""Which part of a language a phone fetches when: the one decision about it, by the subjects of the messages.

``first`` comes with the page: what stands around every screen, the round and its reasons. ``catalogue`` comes beside
the catalogue. ``screens`` comes with the first screen that is loaded later. ``charts`` comes with charts and labels,
``counting`` with counting on pictures, and ``online`` with what works with a connection only, so phones keep that part
no more than its scripts.
``tests/languages/test_phone_parts.py`` holds each script of the phone to the parts that are there when it runs.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

FIRST: Final = "first"
CATALOGUE: Final = "catalogue"
SCREENS: Final = "screens"
CHARTS: Final = "charts"
COUNTING: Final = "counting"
ONLINE: Final = "online"
PARTS: Final = (FIRST, CATALOGUE, SCREENS, CHARTS, COUNTING, ONLINE)
KEPT: Final = (FIRST, CATALOGUE, SCREENS, CHARTS, COUNTING)
"""What a phone keeps for a day without a connection."""
SERVER_ONLY: Final = frozenset(
    {"calendar", "command-line", "doctor", "households", "mail", "nudges", "problems", "reckoned"}
)
"""What no phone says."""
_PART_OF: Final[Mapping[str, str]] = {
    **dict.fromkeys(
        (
            "cautions",
            "diary",
            "faults",
            "frame",
            "needs",
            "reasons-climate",
            "reasons-faults",
            "reasons-feeding",
            "reasons-nest",
            "reasons-prey",
            "reasons-tasting",
            "reasons-water",
            "round",
        ),
        FIRST,
    ),
    **dict.fromkeys(("foods", "origins", "species", "vessels"), CATALOGUE),
    **dict.fromkeys(("brood", "charts", "climate", "labels"), CHARTS),
    "counting": COUNTING,
    **dict.fromkeys(
        (
            "brood-sources",
            "calculators",
            "doors",
            "history",
            "journeys",
            "look",
            "phone-nudges",
            "reckon",
            "sensors",
            "travel",
        ),
        ONLINE,
    ),
}


def part_of(subject: str) -> str:
    """Return the part that the messages of a subject, the name of their file, belong to on a phone."""
    return _PART_OF.get(subject, SCREENS)
