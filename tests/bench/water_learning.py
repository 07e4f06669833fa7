"""How well readings teach a tube's loss and find leaks: ``python -m tests.bench.water_learning [TUBES]``.

Seeds are fixed. Figures of a run with the default 1,000 tubes are in docs/care-model/water.md.
"""

from __future__ import annotations

import sys
from itertools import islice
from random import Random
from timeit import repeat

from tests.support.tubes import (
    ROOM,
    TUBE,
    USUAL_MM_DAY,
    Keeper,
    false_alarms,
    leaks_found,
    lived_in,
    rates_found,
)

from broodshelf.care.water import reservoir
from broodshelf.model.facts import Event

WAYS = {
    "mm every 4 days": Keeper(4),
    "mm every week": Keeper(7),
    "mm every week, 2 mm of noise": Keeper(7, noise_mm=2),
    "mm every 2 weeks": Keeper(14),
    "by eye every week": Keeper(7, by_eye=True),
    "by eye every 2 weeks": Keeper(14, by_eye=True),
}


def main(tubes: int) -> None:
    """Measure and print."""
    for name, keeper in WAYS.items():
        print(name)
        for readings in (2, 4, 8):
            close, covered = rates_found(tubes, keeper, readings, seed=11)
            print(
                f"  rate after {readings} readings: {close:.0%} within 15 %, {covered:.0%} in the 80 % interval"
            )
        alarms, months = false_alarms(max(1, tubes // 5), keeper, 182, seed=12)
        print(f"  false alarms: {alarms} in {months:.0f} tube-months, {100 * alarms / months:.2f} in 100")
        for haste in (1.5, 3, 4, 8):
            for start, words in ((True, "at a reading"), (False, "at any hour")):
                found = leaks_found(tubes, keeper, haste, 13, at_a_reading=start)
                said = ", ".join(f"{share:.0%}" for share in found)
                print(f"  {haste} times the loss from {words} on: {said} flagged within 1, 2, 3 readings")
    speed()


def speed() -> None:
    """Print the time of one gauge among 500 events, one in eight of them about water."""
    for name in ("mm every week", "by eye every week"):
        _, log = next(islice(lived_in(Random(14), WAYS[name], USUAL_MM_DAY), 60, None))
        events = [
            e
            for reading in log[:62]
            for e in (
                reading,
                *(Event("x", "feeding", reading.happened_ms, {"need": "sugar"}) for _ in range(7)),
            )
        ]

        def again(log: list[Event] = events) -> None:
            reservoir.gauge_of(reservoir.reservoir(log, TUBE, ROOM, 0))

        def after_a_reading(log: list[Event] = events) -> None:
            reservoir._learn.cache_clear()
            reservoir.gauge_of(reservoir.reservoir(log, TUBE, ROOM, 0))

        steady, fresh = (min(repeat(f, number=50, repeat=20)) / 50 * 1000 for f in (again, after_a_reading))
        print(f"{len(events)} events, {name}: {steady:.3f} ms; right after a new reading {fresh:.3f} ms")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1000)
