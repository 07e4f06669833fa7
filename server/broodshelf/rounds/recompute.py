"""Making plans again, in the transaction that changed the records."""

from __future__ import annotations

import logging

from ..care.plan.make import make_plan
from ..care.plan.state import ColonyState
from ..logs import say
from ..records.ids import plan_id
from ..records.store import Ledger
from .colony_state import colony_states


def touched(ledger: Ledger, colony_ids: set[str], now_ms: int) -> None:
    """Make the plans of these colonies and put them where they changed. The caller flushes the ledger.

    A colony whose plan cannot be made keeps its log and its old plan; the failure is logged, because losing
    a log to a fault of ours would be worse than an old plan.
    """
    inputs_rev = ledger.rev
    for state in colony_states(ledger.connection, ledger.household_id, colony_ids, now_ms):
        try:
            plan = make_plan(state, now_ms).as_json()
        except Exception as error:  # noqa: BLE001 - see the docstring
            _log_failure(state, error)
            continue
        ledger.put(plan_id(state.id), "plan", {**plan, "inputs_rev": inputs_rev}, now_ms=now_ms)


def _log_failure(state: ColonyState, error: Exception) -> None:
    say("plan failed", logging.ERROR, colony_id=state.id, error=f"{type(error).__name__}: {error}")
    logging.getLogger("broodshelf").error("traceback of plan %s", state.id, exc_info=error)
