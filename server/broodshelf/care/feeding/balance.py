"""A warning when a colony gets more protein than sugar for long.

High-protein diets shortened the lives of *Lasius niger* workers up to tenfold (Dussutour & Simpson 2012); larvae
soften the harm greatly (Dussutour & Simpson 2009). Only a log without holes may warn (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from ...model.facts import Event, Logged
from ...model.gauges import DAY_MS
from ...model.kinds.log import Feeding
from ...model.kinds.plan import Reason
from ...model.tasks import reason
from ..colony.outcomes import with_outcomes

WATCHED_DAYS: Final = 21
LONGEST_GAP_DAYS: Final = 7
"""A week without any feeding in it is a hole in the log, not a fast (common practice, no source)."""
SOME: Final = 0.5
"""The share taken as eaten when 'some' was (common practice, no source)."""
MOST_PROTEIN_PER_SUGAR: Final = 1.0
"""Ants that choose for themselves take about half as much protein as sugar (Cook et al. 2012)."""

Content = Callable[[Logged[Feeding]], tuple[float, float] | None]
"""Returns the protein and the sugar [mg] of a feeding as offered; None where they are not known."""


def balance_warning(events: Sequence[Event], now_ms: int, content: Content) -> Reason | None:
    """Return the warning when protein outweighed sugar over three weeks of complete log, else None.

    The log is complete when something is older than 21 days, no week of them lacks a feeding, and every feeding's
    content is known. ``ignored`` counts as nothing, ``some`` as half. ``events`` in the order of happening.
    """
    start_ms = now_ms - WATCHED_DAYS * DAY_MS
    if not events or events[0].happened_ms > start_ms:
        return None
    protein_mg = sugar_mg = 0.0
    last_ms = now_ms
    for feeding, check in with_outcomes(events):
        if feeding.happened_ms > now_ms:
            continue
        if feeding.happened_ms < start_ms:
            break
        if last_ms - feeding.happened_ms > LONGEST_GAP_DAYS * DAY_MS or (known := content(feeding)) is None:
            return None
        last_ms = feeding.happened_ms
        share = 1.0 if check is None else {"ignored": 0.0, "some": SOME}.get(str(check.said.outcome), 1.0)
        protein_mg += share * known[0]
        sugar_mg += share * known[1]
    if last_ms - start_ms > LONGEST_GAP_DAYS * DAY_MS or protein_mg <= MOST_PROTEIN_PER_SUGAR * sugar_mg:
        return None
    return reason(
        "protein_outweighs_sugar",
        weeks=WATCHED_DAYS // 7,
        protein_mg=round(protein_mg),
        sugar_mg=round(sugar_mg),
    )
