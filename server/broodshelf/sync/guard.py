"""Who may write what: the registry's writers, the pass of a stand-in, the house's rules, how long what may wait."""

from __future__ import annotations

from typing import Any

from ..model.kinds import Kind
from ..people.actor import Actor, PassWindow
from ..records.store import Ledger, Record
from ..records.types import happened_ms
from .envelope import Operation
from .house_rules import house_refusal
from .put_off import put_off_refusal


class Refused(Exception):  # noqa: N818 - an answer, not a failure
    """An operation that is answered with ``rejected``: its code and arguments, as docs/sync.md lists them."""

    def __init__(self, code: str, **args: Any) -> None:
        self.code, self.args_ = code, args


def guard(
    ledger: Ledger,
    actor: Actor,
    kind: Kind,
    op: Operation,
    values: dict[str, Any],
    record: Record | None,
    now_ms: int,
) -> None:
    """Raise ``Refused`` for what this actor may not write, or what would break the household."""
    _keep_to_the_registry(actor, kind, op, values)
    whole = {**(record.values if record is not None else {}), **values}
    if actor.window is not None:
        _keep_to_the_pass(actor, actor.window, kind, whole, record)
    refusal = house_refusal(ledger, op, values, record)
    if refusal is None and op.kind == "later":
        refusal = put_off_refusal(ledger, actor, op.id, whole, now_ms)
    if refusal is not None:
        raise Refused(refusal.code, field=refusal.field, why=refusal.why)


def _keep_to_the_registry(actor: Actor, kind: Kind, op: Operation, values: dict[str, Any]) -> None:
    if op.adopt and actor.role != "keeper":
        raise Refused(
            "not_allowed"
        )  # only keepers give back what a restore took, with the names of others on it
    for name in values:
        writers = kind.fields[name].writers
        if actor.role not in writers and not (op.adopt and actor.role == "keeper"):
            raise Refused("not_allowed", field=name)


def _keep_to_the_pass(
    actor: Actor, window: PassWindow, kind: Kind, whole: dict[str, Any], record: Record | None
) -> None:
    """A stand-in logs for the colonies and in the dates of the pass, and changes what is their own."""
    if kind.group != "event" or (record is not None and record.person_id != actor.person_id):
        raise Refused("not_allowed")
    happened = whole.get("happened_at")
    if whole.get("colony_id") not in window.colony_ids or (
        happened and not window.starts_ms <= happened_ms(happened) < window.ends_ms
    ):
        raise Refused("outside_pass")
