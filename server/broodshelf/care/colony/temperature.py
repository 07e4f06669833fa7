"""Too hot and too cold: the limits of a species and the alarms by a place's reading or setting.

The limits are catalogue/temperatures.toml, each with its source or 'common practice'. A rest that does not fit its
place is ``season_words``'; it takes the frost limit from here.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import takewhile
from typing import Any, Final

from ...model.facts import Hour
from ...model.gauges import DAY_MS, HOUR_MS
from ...model.kinds.plan import Reason
from ...model.tasks import Task, TaskKey, check_of, reason
from ..catalogue import Species, temperatures
from .climate import FRESH_DAYS
from .dossier import Dossier

ALARM_DAYS: Final = 1
"""A reading is an alarm for a day: what is older says little of now, and the next reading speaks for itself."""
SENSED_ALARM_MS: Final = 3 * HOUR_MS
"""A sensor that said nothing for longer speaks of the past; then readings and settings decide again."""
FREEZING_C: Final = 0.0


@dataclass(frozen=True, slots=True)
class Limits:
    """Over ``hot_c`` and, awake, under ``cold_c`` is an alarm; in a rest under ``frost_c``. Sources in words."""

    hot_c: float
    hot_source: str
    cold_c: float
    cold_source: str
    frost_c: float


def limits_of(species: Species) -> Limits:
    """Return the limits of a species: its own, else its genus', its guild's, else the usual ones."""
    table = temperatures()
    usual = table["usual"]
    frost_c = FREEZING_C
    if species.rest is not None and not species.rest.summer:
        frost_c = max(FREEZING_C, species.rest.low_c - usual["frost_below_rest"])
    # of a kind that rests, and of one that nobody knows, awake is no warmer a business than at rest
    tropical = species.code is not None and species.rest is None
    cold = table["usual_tropical"] if tropical else {"cold_c": frost_c, "cold_source": usual["cold_source"]}
    rows: list[Mapping[str, Any]] = [
        table["species"].get(species.code or "", {}),
        table["genus"].get(species.genus or "", {}),
        table["guild"].get(species.guild, {}),
        {"hot_c": usual["hot_c"], "hot_source": usual["hot_source"], **cold},
    ]
    hot, cool = (next(row for row in rows if end in row) for end in ("hot_c", "cold_c"))
    return Limits(float(hot["hot_c"]), hot["hot_source"], float(cool["cold_c"]), cool["cold_source"], frost_c)


def temperature_tasks(colony: Dossier, *, resting: bool, now_ms: int) -> list[Task]:
    """Return an urgent task if the place is outside the limits by its sensors, its latest reading or its setting.

    While a sensor speaks (an hour within the last three), its means of an hour decide: the alarm begins with the first
    hour outside, ends with the first inside, and a look at the colony quiets it until it was inside once. Heat and
    frost that a sensor measures are tasks of their own, which are told at night, too; of the others a setting, or an
    old reading that ran out, must not wake anybody.
    A reading is an alarm for a day.

    A setting is an alarm only while no reading of the last two weeks speaks for the place and nobody has looked at the
    colony (a check of the need ``glance``) in that time. Cold is one for a colony
    that is awake; a heater that is flagged as faulty is a task of its own, like every fault.
    """
    limits = limits_of(colony.species)
    place, hours, looked_ms = colony.state.place, colony.state.hours, colony.history.glanced_ms
    sensed = next((h for h in reversed(hours) if h.temperature_c is not None and h.hour_ms <= now_ms), None)
    if sensed is not None and now_ms - sensed.hour_ms <= SENSED_ALARM_MS:
        return _sensed_alarm(limits, hours, sensed, resting=resting, now_ms=now_ms, looked_ms=looked_ms)
    latest = max(
        (
            e
            for e in colony.state.climate_readings
            if e.said.temperature_c is not None and e.happened_ms <= now_ms
        ),
        key=lambda e: e.happened_ms,
        default=None,
    )
    if latest is not None and now_ms - latest.happened_ms <= FRESH_DAYS * DAY_MS:
        if now_ms - latest.happened_ms > ALARM_DAYS * DAY_MS:
            return []
        temperature_c = float(latest.said.temperature_c or 0)
        if looked_ms is not None and looked_ms > latest.happened_ms:
            return []
        return _alarm(limits, [temperature_c], latest.id, latest.happened_ms, resting=resting)
    if looked_ms is not None and now_ms - looked_ms <= FRESH_DAYS * DAY_MS:
        return []
    set_c = [each for each in (place.day_temp_c, place.night_temp_c) if each is not None]
    return _alarm(limits, set_c, "place", now_ms - now_ms % DAY_MS, resting=resting)


def _sensed_alarm(
    limits: Limits,
    hours: Sequence[Hour],
    latest: Hour,
    *,
    resting: bool,
    now_ms: int,
    looked_ms: int | None,
) -> list[Task]:
    known = [hour for hour in hours if hour.hour_ms <= now_ms and hour.temperature_c is not None]
    outside = list(takewhile(lambda hour: _is_outside(limits, hour, resting=resting), reversed(known)))
    if not outside or (looked_ms is not None and looked_ms > outside[-1].hour_ms):
        return []
    began_ms = outside[-1].hour_ms
    # the oldest hour goes after two weeks: what has lasted for longer must not begin anew with each hour
    began = "always" if len(outside) == len(known) else str(began_ms)
    return _measured(limits, latest.temperature_c, f"sensor-{began}", began_ms, resting=resting)


def _is_outside(limits: Limits, hour: Hour, *, resting: bool) -> bool:
    return bool(_measured(limits, hour.temperature_c, "", hour.hour_ms, resting=resting))


def _measured(
    limits: Limits, temperature_c: float | None, about: str, at_ms: int, *, resting: bool
) -> list[Task]:
    """Return the alarm that an hour of a sensor is."""
    if temperature_c is None:
        return []
    frost_c = limits.frost_c if resting else FREEZING_C
    if temperature_c > limits.hot_c:
        why = _why("overheating", temperature_c, limits.hot_c, limits.hot_source)
        return [_look(TaskKey("overheating", about), at_ms, why)]
    if temperature_c < frost_c:
        # above freezing it is only too cold for the rest of this kind: no water freezes then
        code = "freezing" if temperature_c < FREEZING_C else "rest_colder"
        why = reason(code, temperature_c=round(temperature_c, 1), limit_c=round(frost_c))
        return [_look(TaskKey("freezing", about), at_ms, why)]
    return _alarm(limits, [temperature_c], about, at_ms, resting=resting)


def _alarm(limits: Limits, seen_c: list[float], about: str, at_ms: int, *, resting: bool) -> list[Task]:
    if not seen_c:
        return []
    hottest_c, coldest_c = max(seen_c), min(seen_c)
    if hottest_c > limits.hot_c:
        why = _why("too_hot", hottest_c, limits.hot_c, limits.hot_source)
        return [_look(TaskKey("too_hot", about), at_ms, why)]
    if not resting and coldest_c < limits.cold_c:
        why = _why("too_cold", coldest_c, limits.cold_c, limits.cold_source)
        return [_look(TaskKey("too_cold", about), at_ms, why)]
    return []


def _look(key: TaskKey, at_ms: int, why: Reason) -> Task:
    return Task(key, "glance", at_ms, urgent=True, suggested=check_of("glance"), reasons=(why,))


def _why(code: str, temperature_c: float, limit_c: float, source: str) -> Reason:
    return reason(code, temperature_c=round(temperature_c, 1), limit_c=round(limit_c), source=source)
