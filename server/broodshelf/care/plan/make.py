"""From what is known about a colony to its plan: gauges, tasks, notices, cautions. Deterministic and pure."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import Any, Final

from ...model.facts import ColonyState
from ...model.gauges import DAY_MS, Gauge
from ...model.kinds import plan as planned
from ...model.kinds.plan import GrowthAhead, LivingCensus, Reason, SeasonWarmth, TastedFood
from ...model.needs import ALL_FOOD, FOOD_NEEDS
from ...model.tasks import Task, reason
from ..catalogue import cautions_of, species
from ..colony.offered_nest import offer_stands
from ..colony.place_alarms import Around, place_alarms
from ..colony.temperature import limits_of, temperature_tasks
from ..feeding.balance import balance_warning
from ..feeding.tint import tint_cautions, tint_notices
from .faults import fault_tasks
from .fed import feeding_content
from .food import food_need
from .growing import (
    census_shown,
    coming_notice,
    full_notice,
    growth_ahead,
    growth_of,
    rest_or_first,
    resting_notice,
    stalled_notice,
    wide_notice,
)
from .known import Known, know
from .leftovers import leftovers_tasks
from .risk import risky_feedings, watch_tasks
from .stand_in import for_stand_in
from .tastings import next_in_tasting, told, trial_of, why_no_offer
from .upkeep import upkeep
from .warmth import otherwise_than_set, season_warmth

MODEL_VERSION: Final = "4"


@dataclass(frozen=True, slots=True)
class Plan:
    """What a colony needs, with reasons. Instants in ms since 1970 UTC."""

    colony_id: str
    computed_at_ms: int
    valid_until_ms: int
    gauges: tuple[Gauge, ...] = ()
    tasks: tuple[Task, ...] = ()
    notices: tuple[Reason, ...] = ()
    cautions: tuple[Reason, ...] = ()
    tasting: tuple[TastedFood, ...] = ()
    tasting_waits: Reason | None = None
    growth: GrowthAhead | None = None
    census: LivingCensus | None = None
    warmth: SeasonWarmth | None = None

    def as_json(self, inputs_rev: int = 0) -> dict[str, Any]:
        """Return the shape of docs/http-api.md, "A plan". ``inputs_rev``: of the household when it was made."""
        row = planned.Plan(
            colony_id=self.colony_id,
            computed_at_ms=self.computed_at_ms,
            valid_until_ms=self.valid_until_ms,
            model_version=MODEL_VERSION,
            gauges=[gauge.as_json() for gauge in self.gauges],
            tasks=[task.as_json() for task in self.tasks],
            notices=list(self.notices),
            cautions=list(self.cautions),
            tasting=list(self.tasting),
            tasting_waits=self.tasting_waits,
            growth=self.growth,
            census=self.census,
            warmth=self.warmth,
            inputs_rev=inputs_rev,
        )
        return {field.name: getattr(row, field.name) for field in fields(row)}


def make_plan(state: ColonyState, now_ms: int) -> Plan:
    """Return the plan of a colony at an instant. Later events than ``now_ms`` are taken as they stand.

    Raises ``OutOfRange`` for a state that cannot be (a length, count or temperature outside every range).
    """
    known = know(state, now_ms)
    valid_until = now_ms + DAY_MS
    if known.switched.nothing_at_all:
        return Plan(state.id, now_ms, valid_until)
    trial = trial_of(known)
    tasting = next_in_tasting(trial, known)
    foods = [food_need(need, known, tasting) for need in FOOD_NEEDS if need not in known.switched.off]
    growth = growth_of(known)
    kept, single = upkeep(known, growth)
    pairs = [pair for pair in foods if pair is not None]
    cautions = (reason("stings"),) if known.species.stings else ()
    tasks = [task for _, task in pairs] + single + list(known.switched.tasks)
    offered = known.history.offered if offer_stands(known.history, now_ms) else None
    tasks += fault_tasks(
        known.faults, state.events, now_ms, offered_ms=offered.happened_ms if offered is not None else None
    )
    tasks += _place_tasks(known)
    risky = risky_feedings(state, now_ms)
    tasks += watch_tasks(risky, state.events, now_ms)
    tasks = [replace(task, cautions=cautions + task.cautions) for task in tasks]
    tasks += leftovers_tasks(state.events, now_ms, frozenset(feeding.id for feeding in risky))
    in_tube = known.in_tube
    tasks = [replace(task, stand_in=for_stand_in(task, in_tube=in_tube)) for task in tasks]
    tasks.sort(key=lambda task: task.order)
    gauges = (*(gauge for gauge, _ in pairs), *kept)
    tinted = tint_notices(state.lots, state.events, now_ms)
    shown = (*(reason(code) for code in cautions_of(known.species)), *tint_cautions(tinted))
    return Plan(
        state.id, now_ms, valid_until, gauges, tuple(tasks), (*_notices(known), *tinted), shown,
        tuple(told(trial)), why_no_offer(tasting, tasks), growth_ahead(known), census_shown(known),
        season_warmth(known),
    )  # fmt: skip


def _place_tasks(known: Known) -> list[Task]:
    """Return the alarms of the colony's place. One that is too hot or cold by now needs no word of how it got there."""
    state, history, switched = known.state, known.history, known.switched
    outside = temperature_tasks(known, resting=switched.resting, now_ms=known.now_ms)
    limits = limits_of(known.species)
    around = Around(
        limits.hot_c,
        limits.hot_source,
        resting_fridge=switched.resting and state.place.place_type == "fridge",
        nest_dries=not known.in_tube,
        utc_offset_min=state.utc_offset_min,
        looked_ms=history.glanced_ms,
        water_seen_ms=history.water_seen_ms,
    )
    sensed = place_alarms(state.hours, around, known.now_ms)
    return outside + [task for task in sensed if not outside or task.need != "glance"]


def _notices(known: Known) -> list[Reason]:
    """Return what the keeper should know besides what is to be done."""
    state, switched = known.state, known.switched
    resting = switched.resting
    brood = resting_notice(known) if resting else None
    found: list[Reason] = [*known.rest_sensed, *rest_or_first(known, switched.notices)]
    found += [] if brood is None else [brood]
    if state.species_code not in species():
        found.append(reason("species_unknown"))
    if not switched.off >= ALL_FOOD:  # where nothing is fed, nothing is reckoned
        found += known.limits
    otherwise = otherwise_than_set(known)
    found += [] if otherwise is None else [otherwise]
    if not resting and not switched.forecasts_off:
        stalled = stalled_notice(known)
        coming = (coming_notice(known), wide_notice(known)) if stalled is None else (stalled,)
        ahead = (*coming, full_notice(known))
        found += [notice for notice in ahead if notice is not None]
    if not resting and known.species.guild == "harvester" and known.workers > 0:
        found.append(reason("granary"))
    if not resting and "sugar" not in switched.off:
        tilted = balance_warning(
            state.events, known.now_ms, lambda feeding: feeding_content(known, feeding.said)
        )
        found += [tilted] if tilted is not None else []
    if known.counted.basis != "unknown" and not resting:
        told = {"alone": "workers_fell_to_zero", "empty": "workers_fell_to_zero"}.get(switched.stage)
        found += [why for why in known.counted.reasons(known.now_ms) if why["code"] != told]
    return found
