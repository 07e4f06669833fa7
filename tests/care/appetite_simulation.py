"""Invented colonies with a known appetite, fed and checked: does ``learnt`` find it?

What a check shows, drawn here independently of the learner: a colony wants ``appetite x day`` of its usual food,
``day`` log-normal; by hour h it has carried off ``1 - exp(-h / pace)`` of that; the offer is gone if that covers
it. One offer in twenty is refused whatever the appetite, one check in fifty is wrong. Offers follow the plan in
steps of an eighth of the usual portion (a leg is the smallest), checks come after 10 to 36 hours, every 2 to 4 days.

    python -m tests.care.appetite_simulation        prints the share of runs within 20 % after 8 checks
"""

from __future__ import annotations

import math
import random
import sys

from broodshelf.care.feeding.learning import Learnt, learnt
from broodshelf.model.facts import Event
from broodshelf.model.gauges import HOUR_MS

START_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
APPETITES = (0.3, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0)


def learnt_after(
    appetite: float,
    dice: random.Random,
    checks: int = 8,
    day_sd: float = 0.3,
    pace_h: float = 8.0,
    steps: int = 8,
) -> Learnt:
    """Return what is learnt about a colony of this appetite after so many checks that were logged."""
    events: list[Event] = []
    shares: dict[str, float] = {}
    now_ms = START_MS
    for n in range(checks):
        known = learnt(events, "protein", now_ms, lambda feeding: shares[feeding.id])
        served = max(1, round(known.multiplier.best * steps)) / steps
        feeding_id = f"f{n}"
        shares[feeding_id] = served
        events.append(Event(feeding_id, "feeding", now_ms, {"need": "protein", "food_code": f"food{n % 2}"}))
        after_h = dice.uniform(10, 36)
        outcome = _outcome(appetite, served, after_h, dice, day_sd, pace_h)
        values = {"feeding_id": feeding_id, "need": "protein", "outcome": outcome, "after_h": after_h}
        events.append(Event(f"c{n}", "check", now_ms + round(after_h * HOUR_MS), values))
        now_ms += round(dice.uniform(48, 96) * HOUR_MS)
    return learnt(events, "protein", events[-1].happened_ms, lambda feeding: shares[feeding.id])


def share_within(
    appetite: float, tolerance: float = 0.2, runs: int = 200, seed: int = 20260501, **model
) -> float:
    """Return the share of runs whose learnt multiplier lies within ``tolerance`` of the true appetite."""
    dice = random.Random(f"{seed} {appetite}")
    found = (learnt_after(appetite, dice, **model).multiplier.best for _ in range(runs))
    return sum(abs(multiplier / appetite - 1) <= tolerance for multiplier in found) / runs


def _outcome(
    appetite: float, served: float, after_h: float, dice: random.Random, day_sd: float, pace_h: float
) -> str:
    if dice.random() < 0.05:
        return "ignored"
    carried_off = appetite * dice.lognormvariate(0, day_sd) * (1 - math.exp(-after_h / pace_h))
    gone = carried_off >= served
    if dice.random() < 0.02:
        gone = not gone
    return "all" if gone else "some"


def main() -> None:
    """Write the table of docs/care-model/energy.md."""
    models = {
        "as the learner believes": {},
        "days vary less (SD 0.2)": {"day_sd": 0.2},
        "days vary more (SD 0.4)": {"day_sd": 0.4},
        "eats faster (4 h)": {"pace_h": 4.0},
        "eats slower (12 h)": {"pace_h": 12.0},
        "portions in quarters": {"steps": 4},
        "as believed, 4 checks": {"checks": 4},
        "as believed, 12 checks": {"checks": 12},
    }
    sys.stdout.write("| true appetite | " + " | ".join(f"{a:g}" for a in APPETITES) + " | all |\n")
    for name, model in models.items():
        shares = [share_within(appetite, **model) for appetite in APPETITES]
        cells = [f"{share:.0%}" for share in [*shares, sum(shares) / len(shares)]]
        sys.stdout.write(f"| {name} | " + " | ".join(cells) + " |\n")


if __name__ == "__main__":
    main()
