"""Plans before and after a log, from Python: the phone's overlay on the first must equal the second."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from typing import Any, Final

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import HOUR_MS

NOW_MS: Final = 1_777_636_800_000
GROWING: Final = ColonyState("colony", "lasius_niger", stage="growing", vessel=Vessel("tube_16x150"))
Log = tuple[str, Mapping[str, Any]]


def happened(name: str, hours_ago: float, kind: str, **said: Any) -> Event:
    """Return an event as it is stored."""
    at_ms = NOW_MS - round(hours_ago * HOUR_MS)
    at = dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).isoformat().replace("+00:00", "Z")
    return Event(name, kind, at_ms, {"colony_id": "colony", "happened_at": at, **said})


def counted(hours_ago: float) -> Event:
    return happened("count", hours_ago, "count", workers=12, larvae="some")


def round_cases() -> list[dict[str, Any]]:
    """Return all cases. ``of``: the kinds of tasks that are compared, None: all; ``by_now``: only what is due."""
    return [*_first_logs(), *_leftovers(), *_looks()]


def _case(
    name: str,
    before: ColonyState,
    logs: Iterable[Log],
    *,
    hours_ago: float = 1,
    of: str | None = None,
    by_now: bool = False,
) -> dict[str, Any]:
    new = [happened(f"e{i}", hours_ago, kind, **said) for i, (kind, said) in enumerate(logs)]
    after = replace(before, events=(*before.events, *new))
    return {
        "name": name,
        "colony": "colony",
        "now_ms": NOW_MS,
        "of": of,
        "by_now": by_now,
        "before": make_plan(before, NOW_MS).as_json(),
        "after": make_plan(after, NOW_MS).as_json(),
        "known": [{"id": e.id, "kind": e.kind, "set": dict(e.values)} for e in before.events],
        "log": [{"id": e.id, "kind": e.kind, "set": dict(e.values)} for e in new],
    }


def _first_logs() -> Iterator[dict[str, Any]]:
    before = replace(GROWING, events=(counted(48),))
    suggested: dict[str, Log] = {
        t.need: ("feeding", t.suggested["set"])
        for t in make_plan(before, NOW_MS).tasks
        if t.portion and t.suggested
    }
    logs: dict[str, list[Log]] = {
        "protein as suggested": [suggested["protein"]],
        "sugar as suggested": [suggested["sugar"]],
        "water read": [("water", {"action": "read", "reading": "half"})],
        "water read in mm": [("water", {"action": "read", "level_mm": 20})],
        "water filled": [("water", {"action": "refill"})],
        "nest watered": [("water", {"action": "hydrate"})],
        "a leak": [("fault", {"fault": "leak"})],
        "mould somewhere": [("fault", {"fault": "mould"})],
        "mould near the brood": [("fault", {"fault": "mould", "mould_near_brood": True})],
        "mould on less than a third": [("fault", {"fault": "mould", "mould_share": 0.33})],
        "mould on a third": [("fault", {"fault": "mould", "mould_share": 1 / 3})],
        "both foods as suggested": [suggested["protein"], suggested["sugar"]],
    }
    for name, log in logs.items():
        yield _case(name, before, log)


def _leftovers() -> Iterator[dict[str, Any]]:
    prey: dict[str, Any] = {"need": "protein", "food_code": "fruit_fly", "form": "whole_dead"}
    bad: dict[str, Any] = {"need": "protein", "food_code": "roach_nymph", "despite": ["home_cockroach"]}
    sugar: dict[str, Any] = {"need": "sugar", "food_code": "sugar_water"}
    given = (
        happened("prey", 30, "feeding", **prey),
        happened("drop", 70, "feeding", **sugar, form="drop"),
        happened("feeder", 120, "feeding", **sugar, form="feeder"),
        happened("bad", 6, "feeding", **bad),
    )
    before = replace(GROWING, events=(*sorted(given, key=lambda e: e.happened_ms), counted(1.5)))
    out = {"need": "leftovers", "leftovers_removed": True}
    logs: dict[str, list[Log]] = {
        "one leftover taken out": [("check", {**out, "feeding_id": "prey"})],
        "one of two eaten": [("check", {"outcome": "all", "feeding_id": "drop"})],
        "one of two ignored": [("check", {"outcome": "ignored", "feeding_id": "drop"})],
        "the poison taken out": [("check", {**out, "feeding_id": "bad"})],
        "taken out, of no feeding": [("check", out)],
        "a feeder filled anew": [("feeding", {**sugar, "form": "feeder"})],
        "poison given and taken out": [("feeding", bad), ("check", {**out, "feeding_id": "e0"})],
        "poison given, and another taken out": [("feeding", bad), ("check", {**out, "feeding_id": "bad"})],
    }
    for name, log in logs.items():
        yield _case(name, before, log, of="leftovers")
    drop = replace(GROWING, events=(given[1], counted(1.5)))
    yield _case("another drop", drop, [("feeding", {**sugar, "form": "drop"})], of="leftovers")
    older: list[Log] = [("feeding", {"need": "sugar", "form": "feeder"})]
    yield _case("an older feeder, written down later", before, older, hours_ago=130, of="leftovers")
    # the prey was due six hours ago, the drop ten: what was taken out seven hours ago was the drop
    yield _case("taken out before the next was due", before, [("check", out)], hours_ago=7, of="leftovers")


def _looks() -> Iterator[dict[str, Any]]:
    def colony(*events: Event, **values: Any) -> ColonyState:
        return replace(GROWING, events=tuple(sorted(events, key=lambda e: e.happened_ms)), **values)

    day = 24
    picture = happened("picture", 4 * day, "photo", sha256="0" * 64)
    spotted, lately = (
        colony(happened("spot", days * day, "fault", fault="mould"), picture) for days in (8, 5)
    )
    glance: list[Log] = [("check", {"need": "glance"})]
    unseen = colony(counted(31 * day))
    yield _case("a glance", unseen, glance, of="glance")
    yield _case("a note as a glance", unseen, [("note", {"text": "calm"})], of="glance")
    later: list[Log] = [("later", {"need": "glance", "until": "2026-05-01T11:30:00Z"})]
    yield _case("a glance put off until now", unseen, later, of="glance", by_now=True)
    outworld = Vessel("nest_small", has_outworld=True)
    barrier = happened("barrier", 9 * day, "check", need="barrier")
    open_nest = colony(barrier, happened("many", 5 * day, "count", workers=300), vessel=outworld)
    yield _case("the barrier", open_nest, [("check", {"need": "barrier"})], of="barrier")
    often = replace(open_nest, interval_days={"barrier": 2})
    yield _case("the barrier, every two days", often, [("check", {"need": "barrier"})], of="barrier")
    yield _case("a glance is no look at the barrier", open_nest, glance, of="barrier")
    resting = colony(
        counted(20 * day), condition="resting", condition_since="2026-04-12", resting_since="2026-04-12",
        place=Place("fridge", 6, 6),
    )  # fmt: skip
    yield _case("an airing", resting, [("check", {"need": "rest"})], of="rest_air", by_now=True)
    aired = happened("aired", 5 * day, "check", need="rest")
    again = replace(resting, events=(*resting.events, aired))
    yield _case("an airing before its day", again, [("check", {"need": "rest"})], of="rest_air")
    fed = happened(
        "bad", 2 * day, "feeding", need="protein", food_code="roach_nymph", origin="home_cockroach"
    )
    yield _case("a look after poison", colony(counted(60), fed), glance, of="risk_look", by_now=True)
    yield _case("a look at a spot of mould", spotted, glance, of="mould_look")
    yield _case("a look at it long before its day", lately, glance, of="mould_look")
    mites = colony(counted(60), happened("mites", 15 * day, "fault", fault="mites"))
    yield _case("whether a fault is over", mites, glance, of="fault")
    yield _case(
        "a look at a hot place", colony(counted(60), place=Place(day_temp_c=45)), glance, of="too_hot"
    )
    looked: list[Log] = [("check", {"need": "water"})]
    yield _case("a look at unknown water", colony(counted(20 * day)), looked, of="water_look", by_now=True)
