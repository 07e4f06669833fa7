"""Invented colonies of known appetite, fed and checked by the whole plan: does it find what they eat, or say it cannot?

The colony is drawn here independently of the learner. Protein: it wants ``appetite x day`` of its usual need for the
days since it was last fed, four at most, and carries it off with a pace of 8 hours. Sugar: hour by hour it uses
``appetite x day`` of the usual and fills its crops, which hold what they hold whatever the appetite, with the same
pace, as long as sugar is there; a drop is taken away after 60 hours, a feeder when it is filled again. ``day`` is
log-normal. One check in twenty is a refusal of the prey, one in fifty is wrong, prey of one size differs by a sixth.
Feedings are what the plan suggests, when it is due or up to half a day later; the keeper looks after 10 to 36 hours at
prey, after one to two and a half days at sugar, and reads a feeder in quarters.

    python -m tests.bench.plan_learning       prints the table of docs/care-model/energy.md
"""

from __future__ import annotations

import math
import random
import statistics
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cache

from broodshelf.care.feeding.content import content_mg
from broodshelf.care.feeding.stores import store_mg
from broodshelf.care.plan.known import Known, know
from broodshelf.care.plan.make import Plan, make_plan
from broodshelf.care.plan.ration import ration_of
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS, HOUR_MS, READINGS

START_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
APPETITES = (0.3, 1.0, 3.0)
SIZES = (8, 60, 300, 2_000)
CHECKS = 8
DAY_SD, PACE_H = 0.3, 8.0
BOUNDS = ("appetite_learnt", "appetite_at_least", "appetite_at_most", "appetite_hidden")


@dataclass
class Colony:
    """An invented colony: its log as the keeper writes it, and what only the simulation knows."""

    workers: int
    appetite: float
    dice: random.Random
    log: list[Event] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.log.append(_counted(self.workers, "n", START_MS - DAY_MS))
        known, self.first_plan = _before_the_first_feeding(self.workers)
        self.usual_mg = {need: ration_of(need, known, None).mg_per_day.best for need in ("protein", "sugar")}
        self.crop_mg = store_mg(known.census.workers, known.worker_mg).best
        self.in_crop_mg = self.crop_mg / 2
        self.left_after_h = 0.0

    def state(self, now_ms: int) -> ColonyState:
        return _state(self.workers, self.log, now_ms)

    def wants(self) -> float:
        return self.appetite * self.dice.lognormvariate(0, DAY_SD)


def _counted(workers: int, name: str, at_ms: int) -> Event:
    return Event(name, "count", at_ms, {"workers": workers, "larvae": "some"})


def _state(workers: int, log: Sequence[Event], now_ms: int) -> ColonyState:
    """It stays as large as it is: the keeper has just counted it."""
    stage = "nanitics" if workers < 20 else "growing"
    vessel = Vessel("tube_16x150" if workers < 100 else "nest_large")
    return ColonyState(
        "c", "lasius_niger", stage=stage, vessel=vessel, place=Place("room", 25, 22, 50),
        acquired_on="2025-09-01", events=(*log, _counted(workers, "m", now_ms - 1)),
    )  # fmt: skip


@cache
def _before_the_first_feeding(workers: int) -> tuple[Known, Plan]:
    """Return what is known and planned of a colony of this size when it begins, whatever it will eat."""
    state = _state(workers, [_counted(workers, "n", START_MS - DAY_MS)], START_MS)
    return know(state, START_MS), make_plan(state, START_MS)


def told(colony: Colony, need: str, now_ms: int) -> tuple[str, float]:
    """Return what the plan says of the appetite: the code of its reason and the figure, 1 where there is none."""
    gauge = next(g for g in make_plan(colony.state(now_ms), now_ms).gauges if g.need == need)
    found = next((r for r in gauge.reasons if r["code"] in BOUNDS), None)
    return ("nothing", 1.0) if found is None else (found["code"], found["args"].get("times", 1.0))


def run(
    need: str, workers: int, appetite: float, dice: random.Random, checks: int = CHECKS
) -> tuple[str, float]:
    """Return what the plan says after so many feedings that were checked."""
    colony = Colony(workers, appetite, dice)
    at_ms = START_MS
    last_ms = START_MS - 3 * DAY_MS
    for n in range(checks):
        plan = make_plan(colony.state(at_ms), at_ms) if n else colony.first_plan
        task = next(t for t in plan.tasks if t.need == need and t.portion)
        if n:
            at_ms = max(at_ms, task.due_at_ms) + round(dice.uniform(0, 12) * HOUR_MS)
        feeding = Event(f"f{n}", "feeding", at_ms, task.suggested["set"])
        colony.log.append(feeding)
        if need == "protein":
            after_h, seen = _eats(colony, feeding, (at_ms - last_ms) / DAY_MS)
        else:
            after_h, seen = _drinks(colony, feeding, (at_ms - last_ms) / DAY_MS if n else 0)
        last_ms = at_ms
        at_ms += round(after_h * HOUR_MS)
        values = {"feeding_id": feeding.id, "need": need, **seen}
        colony.log.append(Event(f"k{n}", "check", at_ms, values))
    return told(colony, need, at_ms)


def _eats(colony: Colony, feeding: Event, gap_days: float) -> tuple[float, dict[str, str]]:
    dice = colony.dice
    after_h = dice.uniform(10, 36)
    if dice.random() < 0.05:
        return after_h, {"outcome": "ignored"}
    offered_mg = content_mg(feeding.said)[0] * dice.lognormvariate(0, 1 / 6)
    wanted_mg = colony.wants() * colony.usual_mg["protein"] * min(4.0, max(0.5, gap_days))
    gone = wanted_mg * (1 - math.exp(-after_h / PACE_H)) >= offered_mg
    if dice.random() < 0.02:
        gone = not gone
    return after_h, {"outcome": "all" if gone else "some"}


def _drinks(colony: Colony, feeding: Event, gap_days: float) -> tuple[float, dict[str, str]]:
    """Live through the days since the last filling without, then through those until the look with sugar."""
    dice, use_mg = colony.dice, colony.wants() * colony.usual_mg["sugar"] / 24
    in_feeder = feeding.values["form"] == "feeder"
    dry_h = max(0.0, gap_days * 24 - colony.left_after_h) if gap_days else 0.0
    colony.in_crop_mg = max(0.0, colony.in_crop_mg - use_mg * dry_h)
    offered_mg = left_mg = content_mg(feeding.said)[1]
    after_h = dice.uniform(24, 60)
    seen_mg = left_mg
    there_h = 24 * 6 if in_feeder else 60
    colony.left_after_h = 0.0
    for hour in range(there_h):
        filling = (colony.crop_mg - colony.in_crop_mg) * (1 - math.exp(-1 / PACE_H))
        drunk_mg = min(left_mg, use_mg + filling)
        left_mg -= drunk_mg
        colony.in_crop_mg = max(0.0, colony.in_crop_mg + drunk_mg - use_mg)
        colony.left_after_h = hour + 1.0
        if hour < after_h:
            seen_mg = left_mg
        elif left_mg <= 0 or hour > 96:
            break
    share = seen_mg / offered_mg
    if in_feeder:
        level = min(READINGS, key=lambda name: abs(READINGS[name] - share))
        outcome = {"empty": {"outcome": "all"}, "full": {}}.get(level, {"outcome": "some"})
        return after_h, {"level": level, **outcome}
    gone = share < 0.05
    if dice.random() < 0.02:
        gone = not gone
    return after_h, {"outcome": "all" if gone else "some"}


@dataclass(frozen=True)
class Verdict:
    """What the plans of many colonies alike say: how often which, and the median of the figures they claim."""

    said: dict[str, int]
    median: float | None

    @property
    def claims(self) -> int:
        return self.said.get("appetite_learnt", 0)


@cache
def _begun(
    need: str, workers: int, appetite: float, checks: int, seed: int
) -> tuple[random.Random, list[tuple[str, float]]]:
    """Return the dice of these colonies and what was said of those that lived so far: nobody lives twice."""
    return random.Random(f"{seed} {need} {workers} {appetite}"), []


def verdict(
    need: str, workers: int, appetite: float, runs: int = 40, *, checks: int = CHECKS, seed: int = 20260501
) -> Verdict:
    """Return what the plans of ``runs`` colonies of this size and appetite say after so many checks."""
    dice, lived = _begun(need, workers, appetite, checks, seed)
    lived += [run(need, workers, appetite, dice, checks) for _ in range(runs - len(lived))]
    found = lived[:runs]
    said = {code: sum(c == code for c, _ in found) for code in (*BOUNDS, "nothing")}
    figures = [figure for code, figure in found if code == "appetite_learnt"]
    return Verdict({c: n for c, n in said.items() if n}, statistics.median(figures) if figures else None)
