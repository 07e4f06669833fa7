"""What holds for a whole household, whoever writes: one record of itself, people with a role, a keeper that stays.

Asked by the operations before anything is merged, so that neither a keeper's phone, an offer after a restore nor an
import can bring a household into a state in which nobody hears or nobody can sign in.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from ..records.store import Ledger, Record, read_kind
from .envelope import Operation


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why an operation is refused: a code, the field, and the reason, whose message is ``refused-…``."""

    code: str
    field: str
    reason: str
    args: Mapping[str, Any] | None = None


def house_refusal(
    ledger: Ledger, op: Operation, values: Mapping[str, Any], record: Record | None
) -> Refusal | None:
    """Return why this operation would break the household, or None."""
    if op.kind == "household":
        return _household(ledger.household_id, op, values)
    if op.kind == "person":
        return _new_person(op, values) if record is None else _known_person(ledger, record, values)
    return None


def _household(household_id: str, op: Operation, values: Mapping[str, Any]) -> Refusal | None:
    if op.id != household_id:
        return Refusal("not_allowed", "id", "one_household")
    if values.get("gone"):
        return Refusal("not_allowed", "gone", "household_stays")
    return None


def _new_person(op: Operation, values: Mapping[str, Any]) -> Refusal | None:
    """People come by a phone that is let in or by a pass; whole ones only from a restore or an import."""
    if op.base_rev > 0 and not op.adopt:
        return None  # seen before a restore: it waits for the phone that offers the person
    if not op.adopt:
        return Refusal("not_allowed", "role", "let_in")
    if values.get("role") is None:
        return Refusal("missing_field", "role", "no_role")
    return None


def _known_person(ledger: Ledger, record: Record, values: Mapping[str, Any]) -> Refusal | None:
    if not values.get("gone") or record.gone or record.values.get("role") != "keeper":
        return None
    people = read_kind(ledger.connection, ledger.household_id, "person")
    standing = (ledger.get(person.id) or person for person in people)
    others = [p for p in standing if p.id != record.id and not p.gone and p.values.get("role") == "keeper"]
    if others:
        return None
    return Refusal("last_keeper", "gone", "last_keeper")
