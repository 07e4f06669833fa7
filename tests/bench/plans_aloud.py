"""Plans to be read aloud: ``python -m tests.bench.plans_aloud [WORD ...]`` prints some sixty, or those that match.

Whoever changes a rule of care reads the plans that it changes and asks: would I sign that? The colonies are invented.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from typing import Any

from tests.care.any_colony import YEAR_START_MS, day_of, event
from tests.support.said import say, say_portion

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Lot, Place, Vessel
from broodshelf.model.gauges import DAY_MS

MAY, AUGUST, DECEMBER = (YEAR_START_MS + days * DAY_MS for days in (130, 235, 345))
TUBE, NEST, BIG = (
    Vessel("tube_16x150"),
    Vessel("nest_small", has_outworld=True),
    Vessel("nest_large", has_outworld=True),
)
ROOM, CELLAR, FRIDGE = Place("room", 24, 21), Place("cellar", 12, 11), Place("fridge", 6, 6)


def ago(now_ms: int, days: float, kind: str, **values: Any) -> Event:
    """Return what happened so many days ago."""
    return event(kind, round(days * 10), now_ms - round(days * DAY_MS), **values)


def fed(now_ms: int, days: float, food: str, need: str, amount: float = 1, unit: str = "piece") -> Event:
    """Return a feeding."""
    return ago(now_ms, days, "feeding", food_code=food, need=need, amount=amount, unit=unit)


def kept(
    code: str | None, *, workers: int | None = None, larvae: str | None = None, **more: Any
) -> dict[str, Any]:
    """Return a colony as its keeper entered it, counted four days ago if anything was counted."""
    return {"code": code, "workers": workers, "larvae": larvae, **more}


def shelf() -> Iterator[tuple[str, int, dict[str, Any]]]:
    """Yield a name, an instant and a colony."""
    sizes = (8, 60, 300, 2_000)
    for code in (
        "lasius_niger",
        "camponotus_ligniperda",
        "messor_barbarus",
        "myrmica_rubra",
        "pheidole_pallidula",
    ):
        for workers in sizes:
            home = {"vessel": TUBE if workers <= 60 else NEST if workers <= 300 else BIG}
            yield (
                f"{code} {workers} in May",
                MAY,
                kept(code, workers=workers, larvae="some", stage="growing", **home),
            )
    for code in ("lasius_niger", "messor_barbarus", "myrmica_rubra", "acromyrmex", "temnothorax"):
        yield (
            f"{code} founding queen",
            MAY,
            kept(code, stage="founding", queens=1, founded_on=day_of(MAY - 20 * DAY_MS)),
        )
        yield (
            f"{code} queen with 4 first workers",
            MAY,
            kept(code, workers=4, larvae="few", stage="founding", queens=1),
        )
        yield f"{code} of which nothing is said", MAY, kept(code)
    for code in (
        "lasius_niger",
        "camponotus_ligniperda",
        "messor_structor",
        "prenolepis",
        "myrmecocystus",
    ):
        grown = {"workers": 80, "larvae": "few", "stage": "growing"}
        yield f"{code} 80 in late August", AUGUST, kept(code, **grown)
        yield (
            f"{code} 80 resting in a cellar",
            DECEMBER,
            kept(code, condition="resting", place=CELLAR, **grown),
        )
        yield f"{code} 80 awake in December", DECEMBER, kept(code, **grown)
    rest = kept("lasius_niger", workers=80, larvae="few", condition="resting", place=ROOM)
    yield "lasius resting in a warm room", DECEMBER, rest
    cold = kept("oecophylla", workers=500, larvae="many", place=CELLAR)
    yield "weavers in a cellar", DECEMBER, cold
    yield (
        "harvester at 31",
        MAY,
        kept("messor_barbarus", workers=200, larvae="some", place=Place("cabinet", 31, 27)),
    )
    yield (
        "lasius at 31",
        MAY,
        kept("lasius_niger", workers=200, larvae="some", place=Place("cabinet", 31, 27)),
    )
    yield (
        "lasius in the fridge at 6",
        DECEMBER,
        kept("lasius_niger", workers=60, condition="resting", place=FRIDGE),
    )
    for mm in (0.8, 12, 40):
        yield (
            f"own species of {mm} mm",
            MAY,
            kept("own", workers=40, larvae="some", worker_length_mm=mm, guild="omnivore"),
        )
    mould = (ago(MAY, 1, "fault", fault="mould"),)
    yield "mould seen", MAY, kept("lasius_niger", workers=40, larvae="some", also=mould)
    dry = (ago(MAY, 1, "water", action="read", reading="empty"),)
    yield "dry tube", MAY, kept("lasius_niger", workers=40, larvae="some", also=dry)
    offered = (ago(MAY, 2, "move", how="offered"),)
    yield "new tube offered", MAY, kept("lasius_niger", workers=90, larvae="some", also=offered)
    risky = (
        ago(MAY, 1, "feeding", food_code="roach_nymph", need="protein", origin="home_cockroach", amount=1),
    )
    yield "a cockroach from the kitchen", MAY, kept("lasius_niger", workers=40, larvae="some", also=risky)
    yield "no queen", MAY, kept("lasius_niger", workers=40, larvae="none", queens=0)
    yield (
        "settling",
        MAY,
        kept("lasius_niger", workers=40, larvae="some", condition="settling", condition_since=day_of(MAY)),
    )


def state_of(now_ms: int, given: dict[str, Any]) -> ColonyState:
    """Return the colony with a usual log: counted, fed and its water read."""
    code, workers, larvae = given.pop("code"), given.pop("workers"), given.pop("larvae")
    log = list(given.pop("also", ()))
    if workers is not None:
        log.append(ago(now_ms, 4, "count", workers=workers, larvae=larvae, queens=given.get("queens", 1)))
        log.append(fed(now_ms, 3, "sugar_water", "sugar", 1, "drop"))
        log.append(fed(now_ms, 5, "fruit_fly", "protein"))
    log.append(ago(now_ms, 12, "water", action="read", reading="three_quarters"))
    log.sort(key=lambda logged: logged.happened_ms)
    home = {"vessel": TUBE, "place": ROOM, "lots": (Lot("lot", "cricket", "bought_or_bred"),)}
    return ColonyState(id="c", species_code=code, events=tuple(log), latitude_deg=48, **{**home, **given})


def sentences(section: str, found: Any) -> Iterator[str]:
    """Yield the words of reasons, notices or cautions."""
    for each in found:
        args = {"days": "so many", **each["args"]} if "at_ms" in each["args"] else each["args"]
        words = say(section, each["code"], args)
        yield words if words != each["code"].replace("_", " ") else say("reason", each["code"], args)


def read_aloud(name: str, now_ms: int, given: dict[str, Any]) -> str:
    """Return a plan as lines of text."""
    plan = make_plan(state_of(now_ms, dict(given)), now_ms)
    lines = [f"== {name}, {day_of(now_ms)}"]
    for task in plan.tasks:
        in_days = (task.due_at_ms - now_ms) / DAY_MS
        what = say_portion(task.portion) if task.portion else say("todo", task.need)
        lines.append(f"  {'! ' if task.urgent else ''}{task.need}: {what}, in {in_days:.1f} days")
        lines += [f"      {words}" for words in sentences("reason", task.reasons)]
        lines += [f"      (!) {words}" for words in sentences("caution", task.cautions)]
    lines += [f"  - {words}" for words in sentences("notice", plan.notices)]
    return "\n".join(lines)


if __name__ == "__main__":
    for title, at_ms, colony in shelf():
        if all(word in title for word in sys.argv[1:]):
            print(read_aloud(title, at_ms, colony), end="\n\n")
