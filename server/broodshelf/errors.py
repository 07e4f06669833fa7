"""The error tree. Every error that a person or a phone can meet is one of these.

    BroodshelfError
    ├── BadSetting            the environment holds a value we cannot start with
    ├── CannotKeep            a backup, restore, export or import that could not be done
    │   └── NothingToKeep     no database is there, or none that can be read
    └── Problem               answered as application/problem+json (RFC 9457)
        ├── BadRequest        400  the body or a field is wrong; ``fields`` names it
        ├── SignedOut         401  no session, or one that has ended
        ├── NotAllowed        403  signed in, but not for this
        ├── NotFound          404  unknown, or not yours to know about
        ├── WrongDevice       409  the session belongs to another device
        ├── Gone              410  a pass or code that has ended or was revoked
        ├── TooLarge          413  the body exceeds its limit
        ├── WrongMediaType    415  not JSON
        ├── UpgradeRequired   426  the phone's build is too old
        ├── TooMany           429  slow down
        ├── Unavailable       503  busy, or the database is locked, away or damaged; ``code`` says which
        └── StoreFull         507  the disk or a household's share of it is full

Each tells a person what was wrong and what to do, as a message that can be said in any language
(``languages/en/problems.ftl``, ``command-line.ftl``); as text it is English, for logs.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, ClassVar

from .languages import ENGLISH, Told, told


class BroodshelfError(Exception):
    """Something went wrong."""

    def __init__(self, why: Told) -> None:
        super().__init__(str(why))
        self.told = why


class BadSetting(BroodshelfError):  # noqa: N818 - the tree above reads as plain words
    """A setting is wrong."""

    def __init__(self, name: str, value: str, advice: Told) -> None:
        super().__init__(told("setting-wrong", name=name, value=value, advice=advice))
        self.name = name


class CannotKeep(BroodshelfError):  # noqa: N818
    """The backup, restore, export or import could not be done; nothing was changed."""


class NothingToKeep(CannotKeep):
    """There is no database, or none that can be read."""


class DatabaseLost(BroodshelfError):  # noqa: N818
    """The database is not there any more, or holds nothing, while marks beside it know of households."""


class Problem(BroodshelfError):  # noqa: N818
    """The request could not be answered."""

    status: ClassVar[int] = 500
    code: ClassVar[str] = "failed"

    def __init__(
        self,
        why: Told | None = None,
        *,
        code: str | None = None,
        fields: Mapping[str, Any] | None = None,
        retry_after_s: int | None = None,
    ) -> None:
        super().__init__(why or told(self.title_id()))
        self.problem_code = code or self.code
        self.fields = dict(fields or {})
        self.retry_after_s = retry_after_s

    @classmethod
    def title_id(cls) -> str:
        """Return the id of the message that names problems of this kind."""
        return f"problem-title-{cls.code}".replace("_", "-")

    def body(self, language: str = ENGLISH) -> dict[str, Any]:
        """Return the problem+json body: type, title, status, detail, code and, if any, the fields."""
        body: dict[str, Any] = {
            "type": f"urn:broodshelf:problem:{self.problem_code}",
            "title": told(self.title_id()).in_language(language),
            "status": self.status,
            "detail": self.told.in_language(language),
            "code": self.problem_code,
        }
        if self.fields:
            body["fields"] = self.fields
        return body


class BadRequest(Problem):
    """The request is not one that this address understands."""

    status, code = 400, "bad_request"


class SignedOut(Problem):
    """This phone is not signed in."""

    status, code = 401, "signed_out"


class NotAllowed(Problem):
    """You may not do this here."""

    status, code = 403, "not_allowed"


class NotFound(Problem):
    """There is nothing at this address."""

    status, code = 404, "not_found"


class WrongDevice(Problem):
    """The session belongs to another device; nothing was stored."""

    status, code = 409, "wrong_device"


class Gone(Problem):
    """This has ended."""

    status, code = 410, "gone"


class TooLarge(Problem):
    """The request is too large."""

    status, code = 413, "too_large"


class WrongMediaType(Problem):
    """Send JSON (Content-Type: application/json)."""

    status, code = 415, "wrong_media_type"


class UpgradeRequired(Problem):
    """This copy of the app is too old for the server; reload it. Nothing on the phone is lost."""

    status, code = 426, "upgrade_required"


class StoreFull(Problem):
    """There is no room left on the server; nothing was stored."""

    status, code = 507, "store_full"


class Unavailable(Problem):
    """The server cannot do this just now; nothing was stored."""

    status, code = 503, "busy"


class TooMany(Problem):
    """Too many tries; wait a little."""

    status, code = 429, "too_many"
