"""A keeper who does for two months just what the plan says, checked day by day against the trade's bands.

The bands, and that a plan stays within half to twice of them: common practice, no source. They are written down here
once more, apart from the code, and the days between feedings are counted from the log that comes of it.
"""

from __future__ import annotations

import itertools
from functools import cache

import pytest
from tests.care.any_colony import YEAR_START_MS, event

from broodshelf.care.catalogue import species
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS

pytestmark = pytest.mark.long

SPRING_MS = YEAR_START_MS + 121 * DAY_MS  # the first of May, when every species of the north is awake
DAYS = 60
BY_SIZE = ((20, (3, 7), (3, 5)), (100, (3, 5), (2, 4)), (1_000, (2, 4), (2, 3)), (10**9, (2, 3), (1, 2)))
WORKERS = (8, 20, 21, 60, 100, 101, 300, 301, 2_000)
KEPT = (
    "lasius_niger",
    "messor_barbarus",
    "camponotus_ligniperda",
    "myrmica_rubra",
    "myrmecia_large",
    "pheidole_pallidula",
)


def bands(code: str, workers: int, larvae: bool) -> dict[str, tuple[float, float]]:
    """Days between feedings by the trade's table: sugar and protein, by guild and size."""
    kind = species()[code]
    sugar, protein = next((sugar, protein) for most, sugar, protein in BY_SIZE if workers <= most)
    if not larvae or kind.guild == "harvester":
        protein = (7, 14)
    elif kind.hunts_by_sight:
        protein = (3, 5)
    if kind.hunts_by_sight:
        sugar = (5, 7)
    slow = 1.5 if kind.slow else 1.0
    found = {"sugar": sugar, "protein": protein}
    if kind.guild == "harvester":
        del found["sugar"]  # optional for them, never nagged
    return {need: (low * slow, high * slow) for need, (low, high) in found.items()}


@cache
def two_months_by_the_plan(code: str, workers: int, larvae: str) -> tuple[Event, ...]:
    """Do what is due twice a day, tell after a day that all was taken, and count again every two weeks."""
    log: tuple[Event, ...] = ()
    vessel = Vessel("tube_16x150" if workers <= 100 else "nest_medium")
    at_ms = SPRING_MS
    for half_days in range(DAYS * 2):
        at_ms = SPRING_MS + half_days * DAY_MS // 2
        if half_days % 28 == 0:
            log = (*log, event("count", half_days, at_ms, workers=workers, larvae=larvae, queens=1))
        waiting = [fed for fed in log if fed.kind == "feeding" and at_ms - fed.happened_ms == DAY_MS]
        log += tuple(event("check", int(fed.id), at_ms, feeding_id=fed.id, outcome="all") for fed in waiting)
        state = ColonyState(
            id="c",
            species_code=code,
            stage="growing",
            vessel=vessel,
            place=Place(day_temp_c=25.0),
            events=log,
        )
        for place, task in enumerate(make_plan(state, at_ms).tasks):
            if task.due_at_ms <= at_ms and task.suggested is not None:
                kind, values = task.suggested["kind"], task.suggested["set"]
                number = 1_000 + half_days * 10 + place
                log = (
                    *log,
                    Event(str(number) if kind == "feeding" else f"{kind}{number}", kind, at_ms, values),
                )
    return log


@pytest.mark.parametrize("larvae", ["none", "some"])
@pytest.mark.parametrize("workers", WORKERS)
@pytest.mark.parametrize("code", KEPT)
def test_the_days_between_feedings_stay_within_half_to_twice_the_band(code, workers, larvae):
    log = two_months_by_the_plan(code, workers, larvae)

    grown = bands(
        code, 4 * workers, larvae != "none"
    )  # nobody counts: the census may believe in so many at the end
    for need, (low, high) in bands(code, workers, larvae != "none").items():
        low = min(low, grown[need][0])
        fed_ms = [fed.happened_ms for fed in log if fed.kind == "feeding" and fed.values["need"] == need]
        gaps = [(later - earlier) / DAY_MS for earlier, later in itertools.pairwise(fed_ms)]
        assert len(fed_ms) >= DAYS / (2 * high), (need, len(fed_ms))
        # the keeper comes every half day, so a gap may be up to half a day longer than what is due
        assert all(low / 2 <= gap <= 2 * high + 0.5 for gap in gaps), (need, (low, high), gaps)


@pytest.mark.parametrize("workers", [20, 100, 300, 1_000])
def test_one_worker_more_does_not_change_the_rhythm_by_days(workers):
    fewer, more = (two_months_by_the_plan("lasius_niger", n, "some") for n in (workers, workers + 1))

    for need in ("sugar", "protein"):
        counted = [
            sum(1 for e in log if e.kind == "feeding" and e.values["need"] == need) for log in (fewer, more)
        ]
        usual_days = [DAYS / number for number in counted]
        assert abs(usual_days[0] - usual_days[1]) <= 1.0, (need, usual_days)
