"""How long a need may be put off: by a stand-in until the pass ends, and what cannot wait by hours only.

Water, room and leftovers may wait from an evening's round to the next morning's, counted from the first wish since
somebody last looked: a wish after a wish does not add up, whoever makes it and whatever its own date says.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from sqlalchemy import and_, func, select

from ..model.gauges import DAY_MS, HOUR_MS
from ..model.needs import CANNOT_WAIT, NEEDS
from ..people.actor import Actor
from ..records.store import Ledger
from ..records.tables import records
from ..records.types import happened_ms
from .house_rules import Refusal

CAN_WAIT_H: Final = 14
"""Common practice, no source: over night, from a round at 18:30 to the next one at 08:00."""
LONGEST_DAYS: Final = 366


def put_off_refusal(
    ledger: Ledger, actor: Actor, record_id: str, whole: Mapping[str, Any], now_ms: int
) -> Refusal | None:
    """Return why a wish to put something off is refused, or None. ``whole``: the event as it would then stand."""
    if whole.get("gone") or not whole.get("until") or not whole.get("happened_at"):
        return None
    until_ms, at_ms = happened_ms(whole["until"]), happened_ms(whole["happened_at"])
    if actor.window is not None and until_ms > actor.window.ends_ms:
        return Refusal("outside_pass", "until", "pass_end")
    if until_ms - max(at_ms, 0) > LONGEST_DAYS * DAY_MS:
        return Refusal("bad_value", "until", "a_year")
    if whole.get("need") not in CANNOT_WAIT or until_ms <= now_ms:
        return None
    begun_ms = min(_first_wish_ms(ledger, record_id, whole, now_ms), at_ms, now_ms)
    if until_ms > begun_ms + CAN_WAIT_H * HOUR_MS:
        return Refusal("bad_value", "until", "cannot_wait", {"hours": CAN_WAIT_H})
    return None


def _first_wish_ms(ledger: Ledger, record_id: str, whole: Mapping[str, Any], now_ms: int) -> int:
    """Return when this need was first put off since somebody last looked; ``now_ms`` if it was not.

    Wishes that were taken back count as well. Of the two instants that a phone gives, the earlier one counts.
    """
    c = records.c
    here = and_(c.household_id == ledger.household_id, c.colony_id == whole["colony_id"])
    looked = ledger.connection.scalar(
        select(func.max(c.happened_ms)).where(
            here, c.kind == NEEDS[whole["need"]].answered_by, c.gone.is_(False), c.happened_ms <= now_ms
        )
    )
    ids = ledger.connection.scalars(
        select(c.id).where(here, c.kind == "later", c.topic == "", c.happened_ms > (looked or 0))
    ).all()
    ledger.load(ids)
    wishes = [wish for i in ids if i != record_id and (wish := ledger.get(i)) is not None]
    first = [
        min(wish.happened_ms or now_ms, wish.made_ms)
        for wish in wishes
        if wish.values.get("need") == whole["need"]
    ]
    return min((at_ms for at_ms in first if at_ms > (looked or 0)), default=now_ms)
