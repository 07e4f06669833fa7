"""Plans per second, and how the cost grows with the log: ``python -m tests.bench.plan_cost``.

Beside each plan stands what it costs without a census, in the same run. Of the census the least of many runs is told:
on a busy machine the others say how busy it is. One row is a colony that was counted every day for five years,
workers and all brood; the last one's sugar is checked, too, and it is in a tasting that other colonies had before.
``unchanged`` is all that a plan spends on the census when nothing was logged: facts from the log, and what was
reckoned; ``in a process that has just begun`` nothing of it is remembered.
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable
from dataclasses import replace
from unittest.mock import patch

from broodshelf.care.catalogue import foods
from broodshelf.care.colony import census
from broodshelf.care.plan import known as known_module
from broodshelf.care.plan.known import know
from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.today import foretold
from broodshelf.model.facts import ColonyState, Event, Place, Tally, Tasting, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000
RUNS, NEW_COUNTS = 301, 21


def colony(events: int) -> ColonyState:
    """A colony in a test tube that is fed every half day, checked, read and counted."""
    made = [Event("first", "count", NOW_MS - 500 * DAY_MS, {"workers": 40, "larvae": "some"})]
    step = 0
    while len(made) < events:
        at_ms = NOW_MS - (events - step) * DAY_MS // 3
        need, food = (
            ("protein", {"food_code": "cricket", "size_class": "extra_small", "amount": 1, "unit": "piece"})
            if step % 2
            else ("sugar", {"food_code": "sugar_water", "amount": 1, "unit": "drop", "form": "drop"})
        )
        made.append(Event(f"f{step}", "feeding", at_ms, {"need": need, **food}))
        if step % 2:
            outcome = {"need": "protein", "feeding_id": f"f{step}", "outcome": "all" if step % 3 else "some"}
            made.append(Event(f"k{step}", "check", at_ms + DAY_MS // 4, {**outcome, "after_h": 6}))
        if step % 10 == 0:
            made.append(Event(f"w{step}", "water", at_ms + 1, {"action": "read", "level_mm": 50 - step % 30}))
        if step % 25 == 0:
            seen = {"workers": 40 + step, "larvae": "some", "eggs": "few", "pupae": "some"}
            made.append(Event(f"c{step}", "count", at_ms + 2, seen))
        step += 1
    late_ms = NOW_MS - DAY_MS // 24 - max(event.happened_ms for event in made)
    made = [replace(event, happened_ms=event.happened_ms + late_ms) for event in made]  # to this hour
    return ColonyState(
        "x", "lasius_niger", stage="growing", vessel=Vessel("tube_16x150"), place=Place("room", 25, 22, 50),
        events=tuple(sorted(made[:events], key=lambda event: event.happened_ms)),
    )  # fmt: skip


def counted_daily(years: int) -> ColonyState:
    """A colony of 60 to 400 workers that is counted with all its brood every day, fed every day and checked."""
    days = round(365.25 * years)
    made = []
    for day in range(days):
        at_ms = NOW_MS - (days - day) * DAY_MS + DAY_MS // 2
        workers = 60 + round(340 * day / days)
        made.append(
            Event(
                f"c{day}",
                "count",
                at_ms,
                {"workers": workers, "larvae": "some", "eggs": "few", "pupae": "some"},
            )
        )
        need, food, unit = ("protein", "cricket", "piece") if day % 2 else ("sugar", "sugar_water", "drop")
        given = {"need": need, "food_code": food, "amount": 1, "unit": unit}
        made.append(Event(f"f{day}", "feeding", at_ms + 1, given))
        if day % 2:
            told = {"need": need, "feeding_id": f"f{day}", "outcome": "all", "after_h": 6}
            made.append(Event(f"k{day}", "check", at_ms + DAY_MS // 4, told))
    return ColonyState(
        "x", "lasius_niger", stage="growing", vessel=Vessel("tube_16x150"), place=Place("room", 25, 22, 50),
        events=tuple(made),
    )  # fmt: skip


def tasting(state: ColonyState) -> ColonyState:
    """The same colony, whose sugar is checked, too, and which is in a tasting of five foods that others know."""
    codes = tuple(code for code, food in foods().items() if food.need == "protein")[:5]
    drunk = [
        Event(f"s{each.id}", "check", each.happened_ms + DAY_MS // 6,
              {"need": "sugar", "feeding_id": each.id, "outcome": "some", "after_h": 4})
        for each in state.events
        if each.kind == "feeding" and each.values["need"] == "sugar"
    ]  # fmt: skip
    told = [each for each in (*state.events, *drunk) if each.happened_ms <= NOW_MS]
    return replace(
        state,
        events=tuple(sorted(told, key=lambda event: event.happened_ms)),
        tasting=Tasting("t", codes, "2026-04-01"),
        likes={code: [Tally(n % 5, 5) for n in range(12)] for code in codes},
    )


def main() -> None:
    """Print the median of a plan in steady state, for 50 to 5,000 events, and of the census in it."""
    print(
        "| events | plan, ms (median of 301) | plans per second | us per event | least | without a census "
        "| census: unchanged | with a new count | with a new look at everything | first plan of a process |"
    )
    print("|---|---|---|---|---|---|---|---|---|---|")
    daily = counted_daily(5)
    for name, state in (
        *((str(events), colony(events)) for events in (50, 500, 5_000)),
        ("5 years daily", daily),
        ("500 and a tasting", tasting(colony(500))),
    ):
        events = len(state.events)
        begun = milliseconds(lambda state=state: make_plan(state, NOW_MS))
        took = [
            milliseconds(lambda run=run, state=state: make_plan(state, NOW_MS + run)) for run in range(RUNS)
        ]
        median = statistics.median(took)
        known = know(state, NOW_MS)
        assert known.facts is not None
        assert known.living is not None
        day = known.living.day
        same = min(milliseconds(lambda known=known: unchanged(known)) for _ in range(RUNS))
        count, look = (least_new(known.facts, day, brood) for brood in ((), ("eggs", "larvae", "pupae")))
        with patch.object(known_module, "foretold", lambda *_: (None, None)):
            plain = min(
                milliseconds(lambda run=run, state=state: make_plan(state, NOW_MS + run))
                for run in range(RUNS)
            )
        of_plan = (
            f"{median:.2f}",
            f"{1000 / median:.0f}",
            f"{median * 1000 / events:.2f}",
            f"{min(took):.2f}",
        )
        cells = (name, *of_plan, f"{plain:.2f}", f"{same:.3f}", f"{count:.2f}", f"{look:.2f}", f"{begun:.0f}")
        print("| " + " | ".join(cells) + " |")


def unchanged(known: known_module.Known) -> None:
    """Do what a plan does for its census."""
    foretold(known, known.switched, NOW_MS)


def least_new(facts: census.Facts, day: int, brood: tuple[str, ...]) -> float:
    """Return what a census costs after a count that nobody took in before, with these words of brood."""
    took = []
    for run in range(NEW_COUNTS):
        seen = [census.Seen(day, "workers", number=60.0 + run)]
        seen += [census.Seen(day, stage, word="some", event_id=str(run)) for stage in brood]
        fresh = replace(facts, seen=(*facts.seen, *seen))
        took.append(milliseconds(lambda fresh=fresh: census.of(fresh, day)))
    return min(took)


def milliseconds(work: Callable[[], object]) -> float:
    """Return the processor time of a piece of work."""
    begun = time.process_time_ns()
    work()
    return (time.process_time_ns() - begun) / 1e6


if __name__ == "__main__":
    main()
