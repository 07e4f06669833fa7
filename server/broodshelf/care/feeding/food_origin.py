"""Where a food comes from, and what that means before it is offered. The rules are catalogue/origins.toml.

The same rules run on the phone (``pwa/care/origin.js``), held by ``fixtures/conformance/origin.json``.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from ..catalogue import origins
from ..catalogue.rows import Verdict


@dataclass(frozen=True, slots=True)
class OriginVerdict:
    """What to do with a food of this origin. ``until``: the day from which a held food may be offered."""

    verdict: Verdict
    reason_code: str
    until: str | None = None

    @property
    def offerable(self) -> bool:
        """Whether a plan may suggest this food now."""
        return self.verdict in ("fine", "wash")


def origin_verdict(origin: str, *, got_on: str | None, today: str) -> OriginVerdict:
    """Return the verdict for an origin. Days are ISO dates; an unknown code counts as origin unknown."""
    rules = origins()
    code = origin if origin in rules else "unknown"
    rule = rules[code]
    if rule["verdict"] != "hold":
        return OriginVerdict(rule["verdict"], code)
    got = dt.date.fromisoformat(got_on or today)
    until = (got + dt.timedelta(days=rule["hold_days"])).isoformat()
    return OriginVerdict("fine" if today >= until else "hold", code, until)
