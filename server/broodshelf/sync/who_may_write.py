"""Who may write what: the registry's writers, the pass of a stand-in, the house's rules, how long what may wait."""

from __future__ import annotations

from typing import Any

from ..languages import ENGLISH, say_code
from ..people.actor import Actor, PassWindow
from ..records.types import happened_ms
from .batch import Batch, Change
from .house_rules import house_refusal
from .put_off import put_off_refusal


class Refused(Exception):  # noqa: N818 - an answer, not a failure
    """An operation that is answered with ``rejected``: its code and arguments, as docs/sync.md lists them."""

    def __init__(self, code: str, **args: Any) -> None:
        self.code, self.args_ = code, args


def refused_because(code: str, field: str, reason: str, **args: Any) -> Refused:
    """Return a refusal with its reason, which phones say in their language, and in English for whoever writes one."""
    return Refused(code, field=field, reason=reason, why=say_code(ENGLISH, "refused", reason, args), **args)


def guard(batch: Batch, change: Change) -> None:
    """Raise ``Refused`` for what this actor may not write, or what would break the household."""
    actor, op = batch.actor, change.op
    _keep_to_the_registry(actor, change)
    whole = {**(change.record.values if change.record is not None else {}), **change.values}
    if actor.window is not None:
        _keep_to_the_pass(actor, actor.window, change, whole)
    refusal = house_refusal(batch.ledger, op, change.values, change.record)
    if refusal is None and op.kind == "later":
        refusal = put_off_refusal(batch.ledger, actor, op.id, whole, batch.now_ms)
    if refusal is not None:
        raise refused_because(refusal.code, refusal.field, refusal.reason, **(refusal.args or {}))


def _keep_to_the_registry(actor: Actor, change: Change) -> None:
    offered = change.op.adopt
    if offered and actor.role != "keeper":
        # only keepers give back what a restore took, with the names of others on it
        raise Refused("not_allowed")
    for name in change.values:
        writers = change.kind.fields[name].writers
        if actor.role not in writers and not (offered and actor.role == "keeper"):
            raise Refused("not_allowed", field=name)


def _keep_to_the_pass(actor: Actor, window: PassWindow, change: Change, whole: dict[str, Any]) -> None:
    """A stand-in logs for the colonies and in the dates of the pass, and changes what is their own."""
    record = change.record
    if change.kind.group != "event" or (record is not None and record.person_id != actor.person_id):
        raise Refused("not_allowed")
    happened = whole.get("happened_at")
    if whole.get("colony_id") not in window.colony_ids or (
        happened and not window.starts_ms <= happened_ms(happened) < window.ends_ms
    ):
        raise Refused("outside_pass")
