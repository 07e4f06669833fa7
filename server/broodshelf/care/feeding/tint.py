"""Coloured sugar water: who drank, and what a keeper should know before and after offering it.

Common practice, no source: no published strength, fading time or safety test of a food colour in ants was found.
Studies with dyed food looked at larvae after 1, 8 and 24 hours (Chong et al. 2002, abstract) and at workers and larvae
for 2 to 72 hours (*Monomorium pharaonis*, 2005, abstract).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Final

from ...model.facts import Event, Lot, tells
from ...model.gauges import DAY_MS
from ...model.kinds.log import Check, Feeding
from ...model.kinds.plan import Reason
from ...model.tasks import reason

LOOK_DAYS: Final = 4
"""The last look is after 72 hours; a day more to make it up."""


def tint_notices(lots: Iterable[Lot], events: Sequence[Event], now_ms: int) -> tuple[Reason, ...]:
    """Return what to look for after a tinted lot was offered, and where the colour was seen so far.

    ``events`` in the order of happening. Empty where nothing tinted was offered in the last four days.
    """
    tints = {lot.id: lot.tint for lot in lots if lot.tint}
    seen: set[str] = set()
    looked = False
    for event in reversed(events):
        if event.happened_ms > now_ms:
            continue
        if event.happened_ms < now_ms - LOOK_DAYS * DAY_MS:
            break
        if tells(event, Check) and event.said.colour_seen is not None:
            seen.update(event.said.colour_seen)
            looked = True
        if tells(event, Feeding) and event.said.lot_id in tints:
            told = (reason(_seen_code(seen)),) if looked else ()
            return (reason("tint_offered"), *told)
    return ()


def tint_cautions(notices: Sequence[Mapping[str, object]]) -> tuple[Reason, ...]:
    """Return the caution that goes with a tinted lot on offer."""
    return (reason("tint"),) if notices else ()


def _seen_code(seen: set[str]) -> str:
    if "brood" in seen:
        return "tint_in_brood"
    return "tint_in_gasters" if seen else "tint_nowhere"
