"""What is said and asked of a colony for its stage, its queen and the cold."""

from __future__ import annotations

import datetime as dt

from ...model.kinds.plan import Reason
from ...model.needs import Need
from ...model.tasks import Task, TaskKey, reason
from ..catalogue import Species
from ..catalogue.bands import interval
from .climate import Climate
from .founding import left_in_peace
from .history import midnight_ms
from .life_stage import founding_mode
from .seen import Seen

Notice = Reason


def stage_notices(seen: Seen, window: tuple[dt.date, dt.date] | None) -> list[Notice]:
    """Return what its stage asks of the keeper: how a queen founds, when the first food comes (``window``)."""
    stage, species = seen.stage, seen.species
    if stage == "claustral":
        return list(left_in_peace(seen.state, species, seen.history, seen.day))
    if stage == "workers":
        hosts = seen.state.stage == "founding" and founding_mode(seen.state, species) == "parasitic"
        first = [] if window is None else [_first_food_notice(window, seen.day)]
        return [*first, *([reason("parasitic_hosts"), *_host(seen)] if hosts else [])]
    if stage == "unknown":
        return [reason("stage_unknown")]
    if stage == "empty":
        return [reason("colony_empty")]
    if stage == "parasitic":
        given = seen.counted.brood.pupae not in (None, "none")
        return [reason("parasitic_pupae" if given else "parasitic"), *_host(seen)]
    code = f"{stage}_{species.guild}" if species.guild in ("harvester", "fungus_grower") else stage
    need: Need = "leaves" if species.guild == "fungus_grower" else "protein"
    usual = interval(need, species, 0, has_larvae=None, queen_fed=True)
    return [reason(code, low=_whole(usual.low_days), high=_whole(usual.high_days))]


def queen_notices(seen: Seen, *, suspected: bool) -> list[Notice]:
    """Return what is to be said of the queen; ``suspected``: the keeper doubts her."""
    if seen.stage == "empty":
        return []
    if suspected:
        lays = seen.doubt is None and any(
            count.eggs not in (None, "none") for count in seen.history.counts[-1:]
        )
        return [reason("queen_lays" if lays else "queenless")]
    return [] if seen.doubt is None else [seen.doubt.notice]


def asked(seen: Seen) -> list[Task]:
    """Return what the keeper is asked because nobody else can know it: today, until it is answered."""
    today_ms = midnight_ms(seen.day.isoformat(), seen.state.utc_offset_min)
    if seen.stage == "unknown":
        return [Task(TaskKey("ask", "stage"), "glance", today_ms, reasons=(reason("ask_stage"),))]
    if seen.stage == "alone":
        return [Task(TaskKey("ask", "workers"), "glance", today_ms, reasons=(reason("ask_workers"),))]
    return []


def cold_notice(species: Species, climate: Climate, limit_c: float) -> Notice:
    """Return why there is no protein in the cold: a species without a rest is never told to rest."""
    code = "too_cold_for_protein"
    if species.rest is None:
        code = "too_cold_perhaps_rest" if species.code is None else "too_cold_for_species"
    return reason(code, day_c=round(climate.day_c.best, 1), limit_c=limit_c)


def _host(seen: Seen) -> list[Notice]:
    """Ask for the host where nobody has noted it yet."""
    return [] if seen.state.host_species_code else [reason("note_host")]


def _first_food_notice(days: tuple[dt.date, dt.date], today: dt.date) -> Notice:
    low, high = ((day - today).days for day in days)
    return reason("first_food_soon", low=low, high=high) if low > 0 else reason("first_food_now", days=high)


def _whole(days: float) -> float:
    return int(days) if float(days).is_integer() else days
