"""The food needs: how long the last feeding lasts, what to offer next, and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from ..catalogue import foods
from ..colony.arrival import Settling
from ..colony.census import Brood
from ..colony.history import midnight_ms
from ..feeding.appetite import protein_mg_per_day, sugar_mg_per_day
from ..feeding.content import content_mg
from ..feeding.learning import Learnt, learnt
from ..feeding.stores import (
    FRESH_DAYS,
    KEPT_IN_HAND,
    FoodInterval,
    protein_interval,
    store_mg,
    sugar_interval,
)
from ..feeding.trial import Suggestion
from ..gauges import DAY_MS, Gauge, due_at_ms, not_before
from ..quantities import Estimate
from .bands import Interval, interval
from .known import Known
from .own import own_rhythm
from .portions import FEEDER_FROM_WORKERS, Appetite, portion, suggested
from .state import Event
from .tasks import Task, reason

FOOD_NEEDS = ("sugar", "protein", "seeds", "leaves")
EATEN = {"all": 1.0, "some": 0.5}
"""Of a feeding that was checked: common practice, no source. One that nobody checked counts as eaten."""


def food_need(need: str, known: Known, tasting: Suggestion | None = None) -> tuple[Gauge, Task] | None:
    """Return the gauge and the task of a food need, or None where the keeper paused it.

    ``tasting``: what a running tasting would offer next.
    """
    state, switched = known.state, known.switched
    own, paused, why_own, resumed_on = own_rhythm(need, known)
    if paused:
        return None
    last, ignored = last_counted_feeding(need, state.events, switched.excused)
    usual = _band(need, known)
    taught = _learnt(need, known, usual)
    appetite = _appetite(need, known, taught)
    only = tasting.food_code if tasting is not None and _serves(tasting.food_code, need) else None
    served, why_served = portion(need, known, appetite, own or usual.days, only)
    log = suggested(need, served)
    if only is not None and tasting is not None and state.tasting is not None:
        why_served = (*tasting.reasons, *why_served)
        log["set"]["tasting_id"] = state.tasting.id
    coming = _interval(need, known, usual, taught, appetite, served, 1.0)
    model = coming
    if last is not None:
        eaten = EATEN.get(_outcome(last, state.events), 1.0)
        model = _interval(need, known, usual, taught, appetite, last.values, eaten)
    if own:
        days, low, high, next_days = own, own, own, own
    else:
        days, low, high = (d * switched.slower for d in (model.days, model.low_days, model.high_days))
        next_days = coming.days * switched.slower
    reasons = (
        *why_own,
        *_why(need, known, usual, model, taught),
        *([reason("settling")] if switched.slower > 1 and not own else ()),
        *([reason("last_fed", at_ms=last.happened_ms)] if last is not None else ()),
        *([reason("never_fed")] if last is None and not ignored else ()),
        *([reason("ignored_did_not_count")] if ignored else ()),
    )
    start_ms, level = (known.since_ms, 0.0) if last is None else (last.happened_ms, days)
    start_ms, level = not_before(
        start_ms, level, max(days, next_days), _earliest_ms(need, known, start_ms, resumed_on)
    )
    basis = "keeper" if own else "learnt" if taught is not None and taught.checks else "model"
    # full is what the suggested portion gives: so the phone is right when it logs that portion offline
    gauge = Gauge(
        need, "days", level, max(days, next_days), 1.0, days / high, days / low, start_ms,
        0.0, basis, None, reasons,
    )  # fmt: skip
    due = due_at_ms(gauge)
    return gauge, Task(
        f"{need}:{last.id if last else 'start'}", need, start_ms if due is None else due, from_gauge=True,
        portion=served, suggested=log, reasons=(*reasons, *why_served), cautions=_cautions(need, known, served),
    )  # fmt: skip


def _earliest_ms(need: str, known: Known, last_ms: int, resumed_on: str | None) -> int | None:
    """Return the instant before which a food could not be given, or nobody knew that it was wanted so soon."""
    switched = known.switched
    found = [switched.food_from_ms, switched.awake_from_ms]
    if resumed_on is not None:
        found.append(midnight_ms(resumed_on, known.state.utc_offset_min))
    if need == "protein" and switched.larvae_from_ms is not None:
        before = interval(need, known.species, known.workers, has_larvae=False)
        found.append(min(switched.larvae_from_ms, last_ms + round(before.days * DAY_MS)))
    return max((at_ms for at_ms in found if at_ms is not None), default=None)


def _serves(food_code: str | None, need: str) -> bool:
    return food_code is not None and foods()[food_code].need == need


def _why(
    need: str, known: Known, usual: Interval, model: FoodInterval, taught: Learnt | None
) -> list[Mapping[str, Any]]:
    """Return why the interval is what it is: the model's reasons, the band's, and what checks taught."""
    found: list[Mapping[str, Any]] = list(model.reasons)
    found += [reason(code, low=usual.low_days, high=usual.high_days) for code in usual.reason_codes[1:]]
    if need == "protein" and known.switched.maintenance is not None:
        # fed as if it had no larvae, though nobody looked: say the true cause
        found = [r for r in found if r["code"] not in ("maintenance_only", "no_larvae")]
        found.append(known.switched.maintenance)
    return found + list(taught.reasons if taught is not None else ())


def _cautions(need: str, known: Known, served: Mapping[str, Any]) -> tuple[Mapping[str, Any], ...]:
    if need != "protein":
        return ()
    dead = (reason("dead_only"),) if known.in_tube else ()
    return (*dead, reason("blade")) if served.get("form") == "cut" else dead


def last_counted_feeding(
    need: str, events: tuple[Event, ...], excused: Sequence[Settling] = ()
) -> tuple[Event | None, bool]:
    """Return the last feeding that was taken, and whether a later one was ignored.

    What was ignored in an ``excused`` spell counts as offered: the refusal says nothing.
    """
    ignored_ids: set[object] = set()
    ignored = False
    for event in reversed(events):
        if event.kind == "check" and event.values.get("outcome") == "ignored":
            if not any(spell.holds(event.happened_ms) for spell in excused):
                ignored_ids.add(event.values.get("feeding_id"))
        elif event.kind == "feeding" and event.values.get("need") == need:
            if event.id not in ignored_ids or need != "protein":
                return event, ignored
            ignored = True
    return None, ignored


def _band(need: str, known: Known) -> Interval:
    larvae = _brood(known).larvae
    return interval(
        need,
        known.species,
        known.workers,
        has_larvae=None if larvae is None else larvae != "none",
        queen_fed=known.switched.queen_fed,
    )


def _brood(known: Known) -> Brood:
    """Return the brood that protein is for: in the quiet part of its year a colony only keeps itself."""
    brood = known.census.brood
    return (
        replace(brood, larvae="none", larvae_n=Estimate.exactly(0))
        if known.switched.protein_maintenance
        else brood
    )


def _appetite(need: str, known: Known, taught: Learnt | None) -> Appetite | None:
    """Return what the colony uses of sugar or protein a day, as far as it is learnt."""
    if taught is None:
        return None
    if need == "sugar":
        usual = sugar_mg_per_day(known.census.workers, known.worker_mg, known.temp_c)
    else:
        usual = _protein_mg_per_day(known)
    return Appetite(usual.times(taught.multiplier), taught.serving_share)


def _protein_mg_per_day(known: Known) -> Estimate:
    sugar_too = "sugar" not in known.switched.off
    return protein_mg_per_day(
        _brood(known), known.census.workers, known.brood_mg, known.temp_c, sugar_offered=sugar_too
    )


def _learnt(need: str, known: Known, usual: Interval) -> Learnt | None:
    if need not in ("sugar", "protein"):
        return None
    if need == "sugar":
        use = sugar_mg_per_day(known.census.workers, known.worker_mg, known.temp_c).best
        filled = store_mg(known.census.workers, known.worker_mg).best * KEPT_IN_HAND
        takes_mg = filled + use * FRESH_DAYS["drop"].best
    else:
        takes_mg = _protein_mg_per_day(known).best * (usual.low_days + usual.high_days) / 2

    def share_of(feeding: Event) -> float | None:
        offered = _content(known, feeding.values)[0 if need == "protein" else 1]
        return None if offered is None or takes_mg <= 0 else offered / takes_mg

    return learnt(known.state.events, need, known.now_ms, share_of, excused=known.switched.excused)


def _interval(
    need: str,
    known: Known,
    usual: Interval,
    taught: Learnt | None,
    appetite: Appetite | None,
    values: Mapping[str, Any],
    share: float,
) -> FoodInterval:
    """Return how long a feeding with these fields lasts of which ``share`` was or will be eaten."""
    band = (usual.low_days, usual.high_days)
    seeds_feed_the_brood = need == "protein" and known.species.guild == "harvester"
    if taught is None or appetite is None or seeds_feed_the_brood or known.switched.queen_fed:
        why = reason("interval_band", low=usual.low_days, high=usual.high_days)
        return FoodInterval(usual.days, usual.low_days, usual.high_days, "interval_band", (why,))
    protein, sugar = _content(known, values)
    if need == "sugar":
        form = values.get("form")
        if form not in FRESH_DAYS:
            form = "feeder" if known.workers > FEEDER_FROM_WORKERS else "drop"
        return sugar_interval(
            workers=known.census.workers, worker_mg=known.worker_mg, temp_c=known.temp_c, band=band,
            form=str(form), offered_mg=sugar, multiplier=taught.multiplier,
        )  # fmt: skip
    # while servings are still growing towards the estimate, their size says little: the trade's band rules
    counted = protein is not None and appetite.mg_per_day.best > 0 and appetite.serving_share >= 1
    eaten = protein * share if protein is not None and counted else None
    return protein_interval(
        brood=_brood(known),
        need_mg_per_day=appetite.mg_per_day,
        temp_c=known.temp_c,
        band=band,
        eaten_mg=eaten,
    )


def _outcome(feeding: Event, events: tuple[Event, ...]) -> str:
    for event in reversed(events):
        if event.happened_ms < feeding.happened_ms:
            break
        if (
            event.kind == "check"
            and event.values.get("feeding_id") == feeding.id
            and event.values.get("outcome")
        ):
            return str(event.values["outcome"])
    return ""


def _content(known: Known, values: Mapping[str, Any]) -> tuple[float | None, float | None]:
    lot = next((lot for lot in known.state.lots if lot.id == values.get("lot_id")), None)
    return content_mg(values, lot.percent_ww if lot else None)


def feeding_content(known: Known, feeding: Event) -> tuple[float, float] | None:
    """Return protein and sugar [mg] of a feeding, or None where one of them is not known."""
    protein, sugar = _content(known, feeding.values)
    return None if protein is None or sugar is None else (protein, sugar)
