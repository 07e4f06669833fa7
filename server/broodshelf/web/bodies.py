"""What can be sent to an address, each by its name; which address takes which is said at its view (web/guard.py)."""

from __future__ import annotations

from typing import Any, Final

from marshmallow import Schema, ValidationError, fields, validate

from ..nudges.channels.push.subscriptions import BODY as SUBSCRIPTION_FIELDS
from ..records.photo_files import MOST_BYTES
from ..records.types import Day, check_zone, is_uuid
from ..sensing.sheet import MOST_BYTES as SHEET_BYTES
from .request_body import JsonBody, PictureBody

LONGEST_SECRET: Final = 100
LEAST_SECRET: Final = 43
"""Of a phone: a shorter one might be guessed."""
SYNC_BODY_BYTES: Final = 1024 * 1024


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
    """Return the field with which a phone introduces itself: ``{id, name}``, and by what it may ask again."""
    given = {
        "id": Id(required=True),
        "name": _text(80),
        "secret": _text(LONGEST_SECRET, least=LEAST_SECRET, required=False),
    }
    return fields.Nested(Schema.from_dict(given, name="Device"), required=True)


def _fields(**given: fields.Field[Any]) -> JsonBody:
    """Return the body with these fields; one that is not named is refused."""
    return JsonBody(Schema.from_dict(given))


NOTHING: Final = _fields()
CODE: Final = _fields(code=_text(40))
DEVICE: Final = _fields(device=_device())
LOOK: Final = _fields(code=_text(40, least=0))
CLAIM: Final = _fields(
    code=_text(40, required=False),
    device=_device(),
    person_name=_text(60, required=False),
    household_name=_text(80, required=False),
    zone=fields.String(validate=check_zone),
)
COLLECT: Final = _fields(pairing_id=Id(required=True), collect_secret=_text(LONGEST_SECRET))
APPROVE: Final = _fields(code=_text(40), person_id=Id(), person_name=_text(60, required=False))
OPEN_PASS: Final = _fields(
    secret=_text(LONGEST_SECRET, least=4, required=False),
    code=_text(LONGEST_SECRET, least=4, required=False),
    device=_device(),
)
HOLIDAY: Final = _fields(leave_on=Day(required=True), return_on=Day(required=True))
TEXTS: Final = _fields(texts=fields.List(_text(300), required=True, validate=validate.Length(min=1, max=60)))
SUBSCRIPTION: Final = JsonBody(SUBSCRIPTION_FIELDS)
ACKNOWLEDGED: Final = _fields(delivery_id=_text(LONGEST_SECRET), shown=fields.Boolean(required=True))
MAIL_ADDRESS: Final = _fields(address=_text(300))
FEED_OF: Final = _fields(pass_id=Id(required=True, allow_none=True))
SENSOR: Final = _fields(
    place_id=Id(required=True),
    name=_text(60),
    unit=fields.String(validate=validate.OneOf(("C", "F")), load_default="C"),
    broker=_text(30, required=False),
    topic=_text(250, required=False),
    temperature_path=_text(120, required=False),
    humidity_path=_text(120, required=False),
)
SENSOR_CHANGE: Final = _fields(place_id=Id(required=True), name=_text(60))


class Measured(Schema):
    """What a sensor measured at an instant; without one, now."""

    temperature = fields.Float(allow_none=True)
    humidity = fields.Float(allow_none=True)
    at_s = fields.Float(allow_none=True, validate=validate.Range(0, 4_102_444_800))


class Readings(Measured):
    """One reading by itself, or a list of them."""

    readings = fields.List(fields.Nested(Measured), validate=validate.Length(min=1, max=1000))


READINGS: Final = JsonBody(Readings)


class PlaceFile(Schema):
    """A sensor's table in CSV and what its columns are called."""

    text = _text(SHEET_BYTES)
    time = _text(120)
    temperature = _text(120, required=False)
    humidity = _text(120, required=False)
    unit = fields.String(validate=validate.OneOf(("C", "F")), load_default="C")
    dates = fields.String(validate=validate.OneOf(("iso", "dmy", "mdy", "unix")), load_default="iso")
    utc = fields.Boolean(load_default=False)
    preview = fields.Boolean(load_default=True)


PLACE_FILE: Final = JsonBody(PlaceFile, most_bytes=2 * SHEET_BYTES)
"""Twice as many bytes: a line break is two in JSON."""

SYNC: Final = JsonBody(says="docs/sync.md", most_bytes=SYNC_BODY_BYTES, whole_texts=False)
"""Parsed, and half characters in it mended, by sync/envelope.py."""
INPUTS: Final = JsonBody(says="the inputs by name; what is left out has its default")
"""Parsed by the inputs of the calculator that is asked."""
JPEG: Final = PictureBody(
    says=f"the JPEG (`image/jpeg`, at most {MOST_BYTES:,} bytes) whose SHA-256 the photo record holds",
    most_bytes=MOST_BYTES,
)
