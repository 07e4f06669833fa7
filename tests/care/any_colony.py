"""Any colony that a keeper could enter, with a year of its log: what the promises of a plan are checked on.

Invented throughout. A log may be as odd as a person's: feedings that were never due, counts that contradict each
other, faults that nobody mended. What cannot be entered at all is not made here: the kinds of records judge that.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from typing import Any

from hypothesis import strategies as st

from broodshelf.care.catalogue import foods, species, vessels
from broodshelf.model.facts import ColonyState, Event, Lot, Place, Rule, Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds.words import FOUNDING_MODES, GUILDS, OUTCOMES, WATER_READINGS
from broodshelf.model.needs import FAULTS
from broodshelf.records.schemas import check_fields

YEAR_START_MS = 1_767_225_600_000
"""2026-01-01T00:00:00Z"""
WORDS = ("none", "few", "some", "many")
CONDITIONS = ("well", "settling", "resting", "queenless_suspected", "quarantine", None)
SIZES = (0, 1, 4, 8, 20, 21, 60, 100, 101, 300, 301, 1_000, 2_000, 20_000)
OFFERED = tuple(sorted(foods()))


def day_of(at_ms: int) -> str:
    """Return the calendar day (UTC) of an instant."""
    return dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).date().isoformat()


def event(kind: str, place: int, at_ms: int, **values: Any) -> Event:
    """Return an event as the server stores it; values that no phone may send fail here."""
    given = {name: value for name, value in values.items() if value is not None}
    sent = {k: f"00000000-0000-7000-8000-{v:0>12}" if k == "feeding_id" else v for k, v in given.items()}
    _, error = check_fields(kind, sent)
    assert error is None, error
    return Event(f"{kind}{place}" if kind != "feeding" else str(place), kind, at_ms, given)


@st.composite
def feedings(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a feeding, and perhaps what became of it."""
    food = foods()[draw(st.sampled_from(OFFERED))]
    unit = draw(st.sampled_from([food.unit, "ml"] if food.unit == "drop" else [food.unit]))
    fed = event(
        "feeding", number, at_ms, need=food.need, food_code=food.code, unit=unit,
        form="feeder" if unit == "ml" else food.form, amount=draw(st.sampled_from([1, 2, 5, 20])),
    )  # fmt: skip
    outcome = draw(st.sampled_from([None, *OUTCOMES]))
    if outcome is None:
        return [fed]
    checked = event("check", number, at_ms + DAY_MS // 2, feeding_id=fed.id, outcome=outcome)
    return [fed, checked]


@st.composite
def counts(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a count: exact, coarse or of the brood alone."""
    word = st.sampled_from([None, *WORDS])
    workers = draw(st.one_of(st.none(), st.sampled_from(SIZES)))
    males = draw(st.sampled_from([None, None, None, True]))
    queens = draw(st.sampled_from([None, None, 0, 1, 3]))
    return [
        event(
            "count", number, at_ms, workers=workers, eggs=draw(word), larvae=draw(word), pupae=draw(word),
            males_only=males, queens=queens,
        )
    ]  # fmt: skip


@st.composite
def faults(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a fault that somebody reported, mended or not."""
    mended = draw(st.sampled_from([None, day_of(at_ms + DAY_MS) + "T12:00:00+00:00"]))
    return [event("fault", number, at_ms, fault=draw(st.sampled_from(list(FAULTS))), resolved_at=mended)]


@st.composite
def waters(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a look at the water, by words or in mm, or a refill."""
    action = draw(st.sampled_from(["read", "read", "refill", "new_tube", "hydrate"]))
    if action != "read":
        return [event("water", number, at_ms, action=action)]
    by_mm = draw(st.booleans())
    reading = None if by_mm else draw(st.sampled_from(WATER_READINGS))
    level_mm = draw(st.integers(0, 80)) if by_mm else None
    return [event("water", number, at_ms, action="read", reading=reading, level_mm=level_mm)]


@st.composite
def others(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a move, added brood, or a quiet look."""
    kind = draw(st.sampled_from(["move", "boost", "check"]))
    if kind == "move":
        how = draw(st.sampled_from(["offered", "on_its_own", "forced", "finished"]))
        return [event("move", number, at_ms, how=how)]
    if kind == "boost":
        brood = draw(st.sampled_from(["eggs", "larvae", "pupae"]))
        return [event("boost", number, at_ms, brood=brood, number=draw(st.sampled_from([None, 5, 50])))]
    return [event("check", number, at_ms, need="glance")]


LOGGED: tuple[Callable[[int, int], st.SearchStrategy[list[Event]]], ...] = (
    feedings, feedings, feedings, counts, waters, faults, others,
)  # fmt: skip


@st.composite
def logs(draw: st.DrawFn, now_ms: int) -> tuple[Event, ...]:
    """Return up to a year of log before ``now_ms``, most of it lately, in the order in which it happened."""
    ages = draw(st.lists(st.one_of(st.floats(0.05, 14), st.floats(14, 365)), max_size=14))
    found: list[Event] = []
    for number, age_days in enumerate(ages):
        happens = draw(st.sampled_from(LOGGED))
        found += draw(happens(number, now_ms - round(age_days * DAY_MS)))
    return tuple(sorted(found, key=lambda logged: logged.happened_ms))


@st.composite
def colonies(draw: st.DrawFn) -> tuple[ColonyState, int]:
    """Return any colony and the instant at which its plan is asked for."""
    now_ms = YEAR_START_MS + draw(st.integers(0, 364)) * DAY_MS + DAY_MS // 2
    code = draw(st.sampled_from([*sorted(species()), None, "of_its_keeper"]))
    own = code == "of_its_keeper"
    condition = draw(st.sampled_from(CONDITIONS))
    days_ago = st.one_of(st.none(), st.integers(0, 200).map(lambda days: day_of(now_ms - days * DAY_MS)))
    since = draw(days_ago) if condition else None
    lots = tuple(
        Lot(f"lot{i}", draw(st.sampled_from(OFFERED)), "bought_or_bred", got_on=day_of(now_ms - 2 * DAY_MS))
        for i in range(draw(st.integers(0, 2)))
    )
    rule = st.builds(
        Rule, st.sampled_from(["sugar", "protein", "seeds", "leaves"]), st.sampled_from([1.0, 4.0, 30.0])
    )
    state = ColonyState(
        id="c",
        species_code=code,
        worker_length_mm=draw(st.floats(0.8, 40)) if own else None,
        founding_mode=draw(st.sampled_from([None, *FOUNDING_MODES])) if own else None,
        guild=draw(st.sampled_from([None, *GUILDS])) if own else None,
        stage=draw(st.sampled_from(["founding", "nanitics", "growing", "mature", None])),
        condition=condition,
        condition_since=since,
        resting_since=since if condition == "resting" else None,
        founded_on=draw(days_ago),
        acquired_on=draw(days_ago),
        queens=draw(st.sampled_from([None, 0, 1, 1, 5])),
        rules=tuple(draw(st.lists(rule, max_size=1))),
        vessel=Vessel(draw(st.sampled_from([*sorted(vessels()), None]))),
        place=Place(
            day_temp_c=draw(st.one_of(st.none(), st.floats(3, 36))),
            humidity_pct=draw(st.one_of(st.none(), st.floats(10, 95))),
        ),
        lots=lots,
        events=draw(logs(now_ms)),
        latitude_sign=draw(st.sampled_from([1, -1])),
    )
    return state, now_ms
