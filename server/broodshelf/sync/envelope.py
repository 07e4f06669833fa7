"""The request of ``/api/sync``, parsed strictly: what is wrong at this level is a 400 that names the field.

What is wrong inside one operation's ``set`` is that operation's own verdict, not a failure of the request.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from ..errors import BadRequest, TooLarge, UpgradeRequired
from ..languages import told
from ..records.json_text import mended
from ..records.merge import Made
from ..records.types import LAST_MS, is_uuid

SCHEMA: Final = 1
OLDEST_SCHEMA: Final = max(1, SCHEMA - 1)
MOST_OPERATIONS: Final = 500
MOST_ROWS: Final = 2000
USUAL_ROWS: Final = 1000
MOST_FIELDS: Final = 60
LAST_CLOCK_MS: Final = 8_640_000_000_000_000
"""As far as a phone's clock can go (ECMAScript, Time Values). However wrong it is, its skew makes it right again."""
_CURSOR: Final = re.compile(r"[!-~]{0,100}")


@dataclass(frozen=True, slots=True)
class Past:
    """What a phone knows of a record that it offers after a restore: who made it, when and on which device, and for
    each field that was set again since, when and by which device. Instants in ms since 1970 UTC, by the server's clock.
    """

    by: str | None
    made_ms: int
    device: str | None
    stamps: Mapping[str, Made]


@dataclass(frozen=True, slots=True)
class Operation:
    """One change as a phone made it (docs/sync.md, "Operations"). Instants in ms since 1970 UTC.

    ``adopt``: a whole record, offered after a restore; ``past`` is what is known of it, if the app knows such facts.
    """

    op_id: str
    kind: str
    id: str
    set: Mapping[str, Any]
    made_at: int
    skew_ms: int
    base_rev: int
    base_epoch: str | None
    n: int
    adopt: bool
    past: Past | None = None


@dataclass(frozen=True, slots=True)
class SyncRequest:
    """A parsed request."""

    device: str
    epoch: str | None
    cursor: str | None
    operations: tuple[Operation, ...]
    limit: int


def parse(body: Mapping[str, Any]) -> SyncRequest:
    """Parse the body; raise ``BadRequest`` naming the field, ``TooLarge`` or ``UpgradeRequired``."""
    schema = _whole(body, "schema", 1, 1_000_000)
    if schema < OLDEST_SCHEMA:
        raise UpgradeRequired
    if schema > SCHEMA:
        raise BadRequest(told("problem-app-newer"), fields={"schema": schema})
    ops = body.get("ops", [])
    if not isinstance(ops, list):
        raise BadRequest(told("problem-not-a-list", where="ops"), fields={"ops": "not a list"})
    if len(ops) > MOST_OPERATIONS:
        raise TooLarge(told("problem-too-many-operations", most=MOST_OPERATIONS))
    return SyncRequest(
        device=_id(body, "device"),
        epoch=_id(body, "epoch", optional=True),
        cursor=_cursor(body),
        operations=tuple(_operation(op, f"ops[{i}]") for i, op in enumerate(ops)),
        limit=_whole(body, "limit", 1, MOST_ROWS, default=USUAL_ROWS),
    )


def _operation(op: object, where: str) -> Operation:
    if not isinstance(op, Mapping):
        raise BadRequest(told("problem-not-an-object", where=where), fields={where: "not an object"})
    values = op.get("set")
    if not isinstance(values, Mapping) or not values:
        raise BadRequest(told("problem-empty-set", where=f"{where}.set"), fields={f"{where}.set": "empty"})
    if len(values) > MOST_FIELDS:
        raise BadRequest(
            told("problem-too-many-fields", where=f"{where}.set", most=MOST_FIELDS),
            fields={f"{where}.set": "too many"},
        )
    kind = op.get("kind")
    if not isinstance(kind, str) or len(kind) > 40:
        raise BadRequest(
            told("problem-not-a-short-text", where=f"{where}.kind"), fields={f"{where}.kind": "not a text"}
        )
    adopt = op.get("adopt", False)
    if not isinstance(adopt, bool):
        raise BadRequest(
            told("problem-not-a-flag", where=f"{where}.adopt"), fields={f"{where}.adopt": "not a flag"}
        )
    return Operation(
        op_id=_id(op, "op_id", where),
        kind=mended(kind),
        id=_id(op, "id", where),
        set=mended(values),
        made_at=_whole(op, "made_at", -LAST_CLOCK_MS, LAST_CLOCK_MS, where=where),
        skew_ms=_whole(op, "skew_ms", -LAST_CLOCK_MS, LAST_CLOCK_MS, default=0, where=where),
        base_rev=_whole(op, "base_rev", 0, 2**53, default=0, where=where),
        base_epoch=_id(op, "base_epoch", where, optional=True),
        n=_whole(op, "n", 0, 2**53, default=0, where=where),
        adopt=adopt,
        past=_past(op, where) if adopt and "made_ms" in op else None,
    )


def _past(op: Mapping[str, Any], where: str) -> Past:
    stamps = op.get("stamps", {})
    if not isinstance(stamps, Mapping) or len(stamps) > MOST_FIELDS:
        raise BadRequest(
            told("problem-not-an-object", where=f"{where}.stamps"),
            fields={f"{where}.stamps": "not an object"},
        )
    return Past(
        by=_id(op, "by", where, optional=True),
        made_ms=_whole(op, "made_ms", 0, LAST_MS, where=where),
        device=_id(op, "device", where, optional=True),
        stamps={str(name): _made(stamp, f"{where}.stamps") for name, stamp in stamps.items()},
    )


def _made(stamp: object, where: str) -> Made:
    if not isinstance(stamp, list) or len(stamp) != 2:
        raise BadRequest(told("problem-not-a-pair", where=where), fields={where: "not a pair"})
    pair = {"at_ms": stamp[0], "device": stamp[1]}
    return _whole(pair, "at_ms", 0, LAST_MS, where=where), _id(pair, "device", where, optional=True)


def _id(body: Mapping[str, Any], name: str, where: str = "", *, optional: bool = False) -> Any:
    value = body.get(name)
    if value is None and optional:
        return None
    if not is_uuid(value):
        full = f"{where}.{name}" if where else name
        raise BadRequest(told("problem-not-a-uuid", where=full), fields={full: "not a UUID"})
    return value


def _whole(
    body: Mapping[str, Any], name: str, low: int, high: int, *, default: int | None = None, where: str = ""
) -> int:
    value = body.get(name, default)
    full = f"{where}.{name}" if where else name
    number = isinstance(value, (int, float)) and not isinstance(value, bool)
    if not number or not math.isfinite(value) or value != int(value) or not low <= value <= high:
        raise BadRequest(
            told("problem-not-a-whole-number", where=full, low=str(low), high=str(high)),
            fields={full: "out of range or not a number"},
        )
    return int(value)


def _cursor(body: Mapping[str, Any]) -> str | None:
    value = body.get("cursor")
    if value is not None and (not isinstance(value, str) or _CURSOR.fullmatch(value) is None):
        raise BadRequest(told("problem-wrong-cursor"), fields={"cursor": "not a text"})
    return value
