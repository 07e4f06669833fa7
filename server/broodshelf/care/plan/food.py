"""The food needs as gauge and task: how long the last feeding lasts, what to offer next, and why."""

from __future__ import annotations

from ...model.gauges import DAY_MS, Gauge, due_at_ms, not_before
from ...model.kinds import read
from ...model.kinds.log import Feeding
from ...model.kinds.plan import Portion, Reason
from ...model.needs import Need
from ...model.tasks import Task, TaskKey, reason
from ..catalogue.bands import interval
from ..colony.history import midnight_ms
from ..feeding.stores import FoodInterval
from ..feeding.trial import Suggestion
from .fed import eaten_share, last_counted_feeding
from .known import Known
from .own import own_rhythm
from .portions import is_prey, portion, serves, suggested
from .ration import Ration, lasts, ration_of


def food_need(need: Need, known: Known, tasting: Suggestion | None = None) -> tuple[Gauge, Task] | None:
    """Return the gauge and the task of a food need, or None where the keeper paused it.

    ``tasting``: what a running tasting would offer next.
    """
    state, switched = known.state, known.switched
    last, ignored = last_counted_feeding(need, state.events, switched.excused)
    own, paused, why_own, resumed_on = own_rhythm(need, known, None if last is None else last.happened_ms)
    if paused:
        return None
    ration = ration_of(need, known, own, last)
    only = tasting.food_code if tasting is not None and serves(tasting.food_code, need) else None
    served, why_served = portion(ration, known, only)
    log = suggested(need, served)
    if only is not None and tasting is not None and state.tasting is not None:
        why_served = (*tasting.reasons, *why_served)
        log = {**log, "set": {**log["set"], "tasting_id": state.tasting.id}}
    coming = lasts(ration, known, read(Feeding, log["set"]), 1.0)
    model = coming if last is None else lasts(ration, known, last.said, eaten_share(last, state.events))
    if own:
        days, low, high, next_days = own, own, own, own
    else:
        days, low, high = (d * switched.slower for d in (model.days, model.low_days, model.high_days))
        next_days = coming.days * switched.slower
    reasons = (
        *why_own,
        *_why(ration, known, model),
        *([reason("settling")] if switched.slower > 1 and not own else ()),
        *([reason("last_fed", at_ms=last.happened_ms)] if last is not None else ()),
        *([reason("never_fed")] if last is None and not ignored else ()),
        *([reason("ignored_did_not_count")] if ignored else ()),
    )
    start_ms, level = (known.since_ms, 0.0) if last is None else (last.happened_ms, days)
    start_ms, level = not_before(
        start_ms, level, max(days, next_days), _earliest_ms(need, known, start_ms, resumed_on)
    )
    learnt = ration.taught is not None and ration.taught.bound == "about"
    basis = "keeper" if own else "learnt" if learnt else "model"
    # full is what the suggested portion gives: so the phone is right when it logs that portion offline
    gauge = Gauge(
        need, "days", level, max(days, next_days), 1.0, days / high, days / low, start_ms,
        0.0, basis, None, reasons,
    )  # fmt: skip
    due = due_at_ms(gauge)
    return gauge, Task(
        TaskKey(need, last.id) if last else TaskKey(need), need, start_ms if due is None else due, from_gauge=True,
        portion=served, suggested=log, reasons=(*reasons, *why_served), cautions=_cautions(known, served),
    )  # fmt: skip


def _earliest_ms(need: Need, known: Known, last_ms: int, resumed_on: str | None) -> int | None:
    """Return the instant before which a food could not be given, or nobody knew that it was wanted so soon."""
    switched = known.switched
    found = [switched.food_from_ms, switched.awake_from_ms]
    if resumed_on is not None:
        found.append(midnight_ms(resumed_on, known.state.utc_offset_min))
    if need == "protein" and switched.larvae_from_ms is not None:
        before = interval(need, known.species, known.workers, has_larvae=False)
        found.append(min(switched.larvae_from_ms, last_ms + round(before.days * DAY_MS)))
    return max((at_ms for at_ms in found if at_ms is not None), default=None)


def _why(ration: Ration, known: Known, model: FoodInterval) -> list[Reason]:
    """Return why the interval is what it is: the model's reasons, the band's, and what checks taught."""
    usual, taught = ration.usual, ration.taught
    found: list[Reason] = list(model.reasons)
    found += [reason(code, low=usual.low_days, high=usual.high_days) for code in usual.reason_codes[1:]]
    if ration.need == "protein" and known.switched.maintenance is not None:
        # fed as if it had no larvae, though nobody looked: say the true cause
        found = [r for r in found if r["code"] not in ("maintenance_only", "no_larvae")]
        found.append(known.switched.maintenance)
    return found + list(taught.reasons if taught is not None else ())


def _cautions(known: Known, served: Portion) -> tuple[Reason, ...]:
    """Return the cautions that fit what is served: dead prey for a tube, a blade where something is cut with one."""
    if not is_prey(served):
        return ()
    dead = (reason("dead_only"),) if known.in_tube else ()
    with_a_blade = served["form"] == "cut" and served["unit"] != "leg"
    return (*dead, reason("blade")) if with_a_blade else dead
