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


def any_of(*values: Any) -> st.SearchStrategy[Any]:
    """Return one of these values."""
    return st.sampled_from(values)


# made once: to make and check them for each colony costs three times as much as to draw
FOOD, OUTCOME, WORD, CONDITION = (
    any_of(*OFFERED),
    any_of(None, *OUTCOMES),
    any_of(None, *WORDS),
    any_of(*CONDITIONS),
)
UNITS = {
    unit: any_of(unit, "ml") if unit == "drop" else any_of(unit)
    for unit in {f.unit for f in foods().values()}
}
AMOUNT = any_of(1, 2, 5, 20)
WORKERS = st.one_of(st.none(), any_of(*SIZES))
MALES, QUEENS = any_of(None, None, None, True), any_of(None, None, 0, 1, 3)
FAULT, IS_MENDED = any_of(*FAULTS), any_of(False, True)
ACTION, READING = any_of("read", "read", "refill", "new_tube", "hydrate"), any_of(*WATER_READINGS)
BY_MM, LEVEL_MM = st.booleans(), st.integers(0, 80)
OTHER, HOW = any_of("move", "boost", "check"), any_of("offered", "on_its_own", "forced", "finished")
BROOD, BROUGHT = any_of("eggs", "larvae", "pupae"), any_of(None, 5, 50)
AGES = st.lists(st.one_of(st.floats(0.05, 14), st.floats(14, 365)), max_size=14)
DAY_OF_YEAR = st.integers(0, 364)
SPECIES = any_of(*sorted(species()), None, "of_its_keeper")
AGO_MS = st.one_of(st.none(), st.integers(0, 200).map(lambda days: days * DAY_MS))
LOTS = st.integers(0, 2)
RULES = st.lists(
    st.builds(Rule, any_of("sugar", "protein", "seeds", "leaves"), any_of(1.0, 4.0, 30.0)), max_size=1
)
LENGTH_MM, FOUNDING, GUILD = st.floats(0.8, 40), any_of(None, *FOUNDING_MODES), any_of(None, *GUILDS)
STAGE = any_of("founding", "nanitics", "growing", "mature", None)
COLONY_QUEENS = any_of(None, 0, 1, 1, 5)
VESSEL = any_of(*sorted(vessels()), None)
DAY_TEMP_C = st.one_of(st.none(), st.floats(3, 36))
HUMIDITY_PCT = st.one_of(st.none(), st.floats(10, 95))
LATITUDE_SIGN = any_of(1, -1)


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
    food = foods()[draw(FOOD)]
    unit = draw(UNITS[food.unit])
    fed = event(
        "feeding", number, at_ms, need=food.need, food_code=food.code, unit=unit,
        form="feeder" if unit == "ml" else food.form, amount=draw(AMOUNT),
    )  # fmt: skip
    outcome = draw(OUTCOME)
    if outcome is None:
        return [fed]
    checked = event("check", number, at_ms + DAY_MS // 2, feeding_id=fed.id, outcome=outcome)
    return [fed, checked]


@st.composite
def counts(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a count: exact, coarse or of the brood alone."""
    workers = draw(WORKERS)
    males = draw(MALES)
    queens = draw(QUEENS)
    return [
        event(
            "count", number, at_ms, workers=workers, eggs=draw(WORD), larvae=draw(WORD), pupae=draw(WORD),
            males_only=males, queens=queens,
        )
    ]  # fmt: skip


@st.composite
def faults(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a fault that somebody reported, mended or not."""
    mended = day_of(at_ms + DAY_MS) + "T12:00:00+00:00" if draw(IS_MENDED) else None
    return [event("fault", number, at_ms, fault=draw(FAULT), resolved_at=mended)]


@st.composite
def waters(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a look at the water, by words or in mm, or a refill."""
    action = draw(ACTION)
    if action != "read":
        return [event("water", number, at_ms, action=action)]
    by_mm = draw(BY_MM)
    reading = None if by_mm else draw(READING)
    level_mm = draw(LEVEL_MM) if by_mm else None
    return [event("water", number, at_ms, action="read", reading=reading, level_mm=level_mm)]


@st.composite
def others(draw: st.DrawFn, number: int, at_ms: int) -> list[Event]:
    """Return a move, added brood, or a quiet look."""
    kind = draw(OTHER)
    if kind == "move":
        how = draw(HOW)
        return [event("move", number, at_ms, how=how)]
    if kind == "boost":
        brood = draw(BROOD)
        return [event("boost", number, at_ms, brood=brood, number=draw(BROUGHT))]
    return [event("check", number, at_ms, need="glance")]


LOGGED: tuple[Callable[[int, int], st.SearchStrategy[list[Event]]], ...] = (
    feedings, feedings, feedings, counts, waters, faults, others,
)  # fmt: skip
HAPPENS = any_of(*LOGGED)


@st.composite
def logs(draw: st.DrawFn, now_ms: int) -> tuple[Event, ...]:
    """Return up to a year of log before ``now_ms``, most of it lately, in the order in which it happened."""
    ages = draw(AGES)
    found: list[Event] = []
    for number, age_days in enumerate(ages):
        happens = draw(HAPPENS)
        found += draw(happens(number, now_ms - round(age_days * DAY_MS)))
    return tuple(sorted(found, key=lambda logged: logged.happened_ms))


@st.composite
def colonies(draw: st.DrawFn) -> tuple[ColonyState, int]:
    """Return any colony and the instant at which its plan is asked for."""
    now_ms = YEAR_START_MS + draw(DAY_OF_YEAR) * DAY_MS + DAY_MS // 2
    code = draw(SPECIES)
    own = code == "of_its_keeper"
    condition = draw(CONDITION)

    def some_day() -> str | None:
        ago_ms = draw(AGO_MS)
        return None if ago_ms is None else day_of(now_ms - ago_ms)

    since = some_day() if condition else None
    lots = tuple(
        Lot(f"lot{i}", draw(FOOD), "bought_or_bred", got_on=day_of(now_ms - 2 * DAY_MS))
        for i in range(draw(LOTS))
    )
    state = ColonyState(
        id="c",
        species_code=code,
        worker_length_mm=draw(LENGTH_MM) if own else None,
        founding_mode=draw(FOUNDING) if own else None,
        guild=draw(GUILD) if own else None,
        stage=draw(STAGE),
        condition=condition,
        condition_since=since,
        resting_since=since if condition == "resting" else None,
        founded_on=some_day(),
        acquired_on=some_day(),
        entered_on=some_day(),
        queens=draw(COLONY_QUEENS),
        rules=tuple(draw(RULES)),
        vessel=Vessel(draw(VESSEL)),
        place=Place(
            day_temp_c=draw(DAY_TEMP_C),
            humidity_pct=draw(HUMIDITY_PCT),
        ),
        lots=lots,
        events=draw(logs(now_ms)),
        latitude_sign=draw(LATITUDE_SIGN),
    )
    return state, now_ms
