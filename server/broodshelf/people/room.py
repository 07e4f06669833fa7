"""How much a household may keep: records, pictures and bytes.

``household_sizes`` has an exact count and adds what came since, which errs on the full side; so from 80 % on it is
counted anew once a day, and before anybody is refused. A picture counts with its record, its bytes when they come. Only
what makes a new record or brings a picture needs room: what changes or deletes what is there is always taken, so that a
full household can make room by itself. What is refused stays on the phone and goes by itself when there is room.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any, Final

from sqlalchemy import Connection, bindparam, outerjoin, select, update
from sqlalchemy.dialects import postgresql, sqlite

from ..errors import TooMany
from ..languages import told
from ..model.gauges import DAY_MS
from ..records.photo_files import PhotoFiles
from ..records.tables import households
from ..settings import Room
from .sizes import Size, measure
from .tables import household_sizes

WAIT_S: Final = 3_600
BELIEVED_MS: Final = 31 * DAY_MS
"""How old a count the operator's list goes by: it may show too much by what was deleted since."""
RECOUNT_MS: Final = 60_000
"""A count so young is believed when somebody would be refused."""
WARN_PERCENT: Final = 80
ALWAYS_PERCENT: Final = 95
"""From here on the word is always there; before, on one day of every week."""
MIB: Final = 2**20


@dataclass(frozen=True, slots=True)
class Counted:
    """What a household keeps by its count and what came since; ``at_ms``: when it was counted, None for never."""

    size: Size = field(default_factory=Size)
    at_ms: int | None = None


@dataclass(frozen=True, slots=True)
class Coming:
    """What a request brings: new records less those that it deletes, those of them that are of pictures, bytes.

    ``is_picture``: the bytes are a picture's.
    """

    records: int = 0
    pictures: int = 0
    size_bytes: int = 0
    is_picture: bool = False

    @property
    def needs_room(self) -> bool:
        """Whether it is more than a change of what is there."""
        return self.records > 0 or self.pictures > 0 or self.is_picture


def coming_with(operations: Iterable[Any], size_bytes: int) -> Coming:
    """Return what a phone's operations bring, as far as they say: what they are new to was not on the phone before."""
    records = pictures = 0
    for operation in operations:
        if not isinstance(operation, dict):
            continue
        values = operation.get("set")
        is_gone = isinstance(values, dict) and values.get("gone") is True
        more = -1 if is_gone else 1 if not operation.get("base_rev") else 0
        records += more
        pictures += more if operation.get("kind") == "photo" else 0
    return Coming(records, pictures, size_bytes)


def take_room(
    connection: Connection, photos: PhotoFiles, household_id: str, room: Room, coming: Coming, now_ms: int
) -> Counted:
    """Add what comes to what is counted, and return that. Raises ``TooMany`` (code ``quota``) where there is no room
    for it; then the caller's transaction is rolled back, and what was added with it.
    """
    counted = _add(connection, household_id, coming)
    size = _before(counted.size, coming) if counted.at_ms is not None else Size()
    counted_ms = counted.at_ms
    full = coming.needs_room and _full(size, coming, room) is not None
    near = share_percent(size, room) >= WARN_PERCENT
    age_ms = None if counted_ms is None else abs(now_ms - counted_ms)
    if age_ms is None or (full and age_ms >= RECOUNT_MS) or (near and age_ms >= DAY_MS):
        size = recount(connection, photos, [household_id], now_ms)[household_id]
        counted = _add(connection, household_id, coming)
    if coming.needs_room and (lacking := _full(size, coming, room)) is not None:
        what, most = lacking
        raise TooMany(told(f"problem-room-{what}", most=most), code="quota", retry_after_s=WAIT_S)
    return counted


def _before(size: Size, coming: Coming) -> Size:
    records, pictures = max(coming.records, 0), max(coming.pictures, 0)
    return Size(size.records - records, size.pictures - pictures, size.size_bytes - coming.size_bytes)


_S: Final = household_sizes.c
_ADDED: Final = (
    update(household_sizes)
    .where(_S.household_id == bindparam("household"))
    .values(
        records=_S.records + bindparam("more_records"),
        pictures=_S.pictures + bindparam("more_pictures"),
        bytes=_S.bytes + bindparam("more_bytes"),
    )
    .returning(_S.records, _S.pictures, _S.bytes, _S.counted_ms)
)


def _add(connection: Connection, household_id: str, coming: Coming) -> Counted:
    """Add to a household's count where it has one."""
    added = {
        "household": household_id,
        "more_records": max(coming.records, 0),
        "more_pictures": max(coming.pictures, 0),
        "more_bytes": coming.size_bytes,
    }
    row = connection.execute(_ADDED, added).one_or_none()
    return Counted() if row is None else Counted(Size(row.records, row.pictures, row.bytes), row.counted_ms)


def recount(
    connection: Connection, photos: PhotoFiles, household_ids: Iterable[str], now_ms: int
) -> Mapping[str, Size]:
    """Count what these households keep, put it on record and return it."""
    sizes = measure(connection, photos, household_ids)
    if not sizes:
        return sizes
    made = (postgresql if connection.dialect.name == "postgresql" else sqlite).insert(household_sizes)
    counted = {name: made.excluded[name] for name in ("records", "pictures", "bytes", "counted_ms")}
    rows = [
        {
            "household_id": household_id,
            "records": size.records,
            "pictures": size.pictures,
            "bytes": size.size_bytes,
            "counted_ms": now_ms,
        }
        for household_id, size in sizes.items()
    ]
    connection.execute(made.on_conflict_do_update(index_elements=["household_id"], set_=counted), rows)
    return sizes


def not_counted_lately(connection: Connection, now_ms: int) -> list[str]:
    """Return the households that were never counted, or not within a month."""
    young = (_S.counted_ms > now_ms - BELIEVED_MS) & (_S.counted_ms <= now_ms)
    counted = outerjoin(households, household_sizes, (_S.household_id == households.c.id) & young)
    query = select(households.c.id).select_from(counted).where(_S.household_id.is_(None))
    return list(connection.scalars(query.order_by(households.c.id)))


def all_counted(connection: Connection) -> dict[str, Size]:
    """Return what every household keeps by its count and what came since."""
    return {
        row.household_id: Size(row.records, row.pictures, row.bytes)
        for row in connection.execute(select(household_sizes))
    }


def share_percent(size: Size, room: Room) -> int:
    """Return how much of its room a household takes, in percent of what is fullest."""
    return max(
        100 * size.records // room.records,
        100 * size.pictures // room.pictures,
        100 * size.size_bytes // (room.mib * MIB),
    )


def word_of_room(counted: Counted, room: Room, now_ms: int, language: str) -> dict[str, Any] | None:
    """Return what keepers are told of a household that is nearly full, in words; None while there is room."""
    size = counted.size
    percent = share_percent(size, room)
    if counted.at_ms is None or percent < WARN_PERCENT:
        return None
    if percent < ALWAYS_PERCENT and now_ms // DAY_MS % 7:
        return None
    numbers = {
        "percent": percent,
        "records": size.records,
        "most_records": room.records,
        "pictures": size.pictures,
        "most_pictures": room.pictures,
        "mib": size.size_bytes // MIB,
        "most_mib": room.mib,
    }
    words = told("room-nearly-full", **numbers).in_language(language)
    return {"code": "household_nearly_full", "words": words}


_KNOWN: Final = select(household_sizes).where(_S.household_id == bindparam("household"))


def counted_of(connection: Connection, household_id: str) -> Counted:
    """Return what is counted of a household."""
    row = connection.execute(_KNOWN, {"household": household_id}).one_or_none()
    return Counted() if row is None else Counted(Size(row.records, row.pictures, row.bytes), row.counted_ms)


def _full(size: Size, coming: Coming, room: Room) -> tuple[str, int] | None:
    """Return what there is no room for, and how much there may be of it."""
    if coming.records > 0 and size.records + coming.records > room.records:
        return "records", room.records
    if coming.pictures > 0 and size.pictures + coming.pictures > room.pictures:
        return "pictures", room.pictures
    if size.size_bytes + coming.size_bytes > room.mib * MIB:
        return "mib", room.mib
    return None
