"""What a request may carry: JSON of a fixed schema, or a picture; read strictly, up to a size of its own."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

from flask import request
from marshmallow import Schema, ValidationError

from ..errors import BadRequest, WrongMediaType
from ..languages import told
from ..records.json_text import read_json

SMALL_BODY_BYTES: Final = 64 * 1024
"""What Flask takes where an address says nothing else (``MAX_CONTENT_LENGTH``)."""
LONGEST_NAME: Final = 60
MOST_NAMES: Final = 20
"""Of the fields that a 400 names: whoever sends thousands need not get them back."""


@dataclass(frozen=True, slots=True)
class JsonBody:
    """A JSON object. Without a ``schema`` its room parses what is in it, and ``says`` tells what that is.

    ``whole_texts``: refuse texts with half characters, which the room would mend otherwise (records/json_text.py).
    """

    schema: type[Schema] | None = None
    says: str = ""
    most_bytes: int = SMALL_BODY_BYTES
    whole_texts: bool = True

    def read(self) -> dict[str, Any]:
        """Return the object that was sent. Raises for another type, size or shape; a 400 names what is wrong."""
        if request.mimetype != "application/json":
            raise WrongMediaType
        try:
            found = read_json(_bytes(self.most_bytes), whole_texts=self.whole_texts)
        except ValueError as error:
            raise BadRequest(told("problem-no-json", why=str(error))) from None
        if not isinstance(found, dict):
            raise BadRequest(told("problem-body-not-an-object"), fields={"": "not an object"})
        return found if self.schema is None else _loaded(self.schema, found)


@dataclass(frozen=True, slots=True)
class PictureBody:
    """A JPEG."""

    says: str
    most_bytes: int

    def read(self) -> bytes:
        """Return the picture that was sent. Raises for another type or size."""
        if request.mimetype != "image/jpeg":
            raise WrongMediaType(told("problem-picture-itself"))
        return _bytes(self.most_bytes)


Body = JsonBody | PictureBody


def _bytes(most: int) -> bytes:
    request.max_content_length = most
    return request.get_data(cache=False)


def _loaded(schema: type[Schema], found: dict[str, Any]) -> dict[str, Any]:
    try:
        return dict(schema().load(found))
    except ValidationError as error:
        wrong = {str(name)[:LONGEST_NAME]: why for name, why in error.messages_dict.items()}
        names = sorted(wrong)[:MOST_NAMES]
        raise BadRequest(
            told("problem-wrong-fields", names=", ".join(names)), fields={n: wrong[n] for n in names}
        ) from None
