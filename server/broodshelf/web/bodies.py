"""What each address takes as its JSON body: one table, read by the handlers and by the document of the API.

An address that is not here takes no JSON, or a body that its room parses itself: ``/api/sync`` (sync/envelope.py)
and ``/api/reckon/<code>`` (the inputs of that calculator). A push subscription is checked by its room, too.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from marshmallow import Schema, ValidationError, fields, validate

from ..nudges.subscriptions import BODY as SUBSCRIPTION
from ..records.types import Day, check_zone, is_uuid

LONGEST_SECRET: Final = 100


class Id(fields.String):
    """A UUID in lower case."""

    def _deserialize(self, value: Any, attr: str | None, data: Any, **kwargs: Any) -> str:
        if not is_uuid(value):
            raise ValidationError("Not a UUID in lower case.")
        return str(value)


def _text(most: int, *, least: int = 1, required: bool = True) -> fields.Field[Any]:
    """Return a text field of ``least`` to ``most`` characters, trimmed of nothing."""
    return fields.String(required=required, validate=validate.Length(min=least, max=most))


def _device() -> fields.Field[Any]:
    """Return the field with which a phone introduces itself: ``{id, name}``."""
    return fields.Nested(
        Schema.from_dict({"id": Id(required=True), "name": _text(80)}, name="Device"), required=True
    )


def _one(**given: fields.Field[Any]) -> type[Schema]:
    return Schema.from_dict(given)


NOTHING: Final = _one()
_CODE: Final = _one(code=_text(40))
_PASS: Final = _one(pass_id=Id(required=True, allow_none=True))

BODIES: Final[Mapping[str, type[Schema]]] = {
    "POST /api/claim": _one(
        code=_text(40),
        device=_device(),
        person_name=_text(60, required=False),
        household_name=_text(80, required=False),
        zone=fields.String(validate=check_zone),
    ),
    "POST /api/claim/look": _CODE,
    "POST /api/logout": NOTHING,
    "POST /api/pairings": _one(device=_device()),
    "POST /api/pairings/collect": _one(pairing_id=Id(required=True), collect_secret=_text(LONGEST_SECRET)),
    "POST /api/pairings/look": _CODE,
    "POST /api/pairings/approve": _one(code=_text(40), person_id=Id(), person_name=_text(60, required=False)),
    "POST /api/devices/<device_id>/revoke": NOTHING,
    "POST /api/passes/<pass_id>/link": NOTHING,
    "POST /api/passes/<pass_id>/revoke": NOTHING,
    "POST /api/passes/open": _one(
        secret=_text(LONGEST_SECRET, least=4, required=False),
        code=_text(LONGEST_SECRET, least=4, required=False),
        device=_device(),
    ),
    "POST /api/holiday": _one(leave_on=Day(required=True), return_on=Day(required=True)),
    "POST /api/qr": _one(
        texts=fields.List(_text(300), required=True, validate=validate.Length(min=1, max=60))
    ),
    "PUT /api/push/subscription": SUBSCRIPTION,
    "DELETE /api/push/subscription": NOTHING,
    "POST /api/push/test": NOTHING,
    "POST /api/push/ack": _one(delivery_id=_text(LONGEST_SECRET), shown=fields.Boolean(required=True)),
    "PUT /api/mail/<person_id>": _one(address=_text(300)),
    "POST /api/mail/<person_id>/confirm": _CODE,
    "DELETE /api/mail/<person_id>": NOTHING,
    "POST /api/feeds": _PASS,
    "POST /api/feeds/revoke": _PASS,
}
"""The schema of each body by method and rule; a field that is not named is refused."""
