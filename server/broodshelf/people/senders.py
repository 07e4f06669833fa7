"""How much was sent from an address within the hour, whoever is behind it.

Households behind one address, such as a school's, must not wait for each other's commit: a row that each of them
changes in its own transaction would make them. So each process counts by itself and tells the others every few
seconds, all addresses in one transaction, and hears then what all counted. So a flood may get some seconds more than
its share, and what a process had not told when it was killed is not counted.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from threading import Lock
from typing import Final

from sqlalchemy import Connection, func, select
from sqlalchemy.dialects import postgresql, sqlite

from ..records.quick.many_rows import is_among
from .limits import HOUR_WINDOWS, WINDOW_MS
from .tables import attempts

TELL_MS: Final = 5_000
KEPT_MS: Final = HOUR_WINDOWS * WINDOW_MS
"""For so long it is remembered what all processes together had counted of an address that sends nothing."""
_PURPOSE: Final = "sent"
Amounts = Mapping[tuple[str, int], int]
"""KiB by address and minute since 1970."""


class Senders:
    """What each address sent, in KiB: what all processes had told, and what this one counted since.

    Instants in ms since 1970 UTC; safe to use from several threads.
    """

    def __init__(self) -> None:
        self._lock = Lock()
        self._known: dict[str, tuple[int, int]] = {}
        self._untold: dict[tuple[str, int], int] = {}
        self._told_ms = 0

    def add(self, address: str, size_kib: int, now_ms: int, most_kib: int) -> bool:
        """Count what an address sends; say whether it stays within ``most_kib``. What does not is not counted."""
        with self._lock:
            so_far = self._known.get(address, (0, 0))[0]
            so_far += sum(kib for (whose, _), kib in self._untold.items() if whose == address)
            is_within = so_far + size_kib <= most_kib
            self._count(address, size_kib if is_within else 0, now_ms)
            return is_within

    def take_back(self, address: str, size_kib: int, now_ms: int) -> None:
        """Count no more what was not taken after all."""
        with self._lock:
            self._count(address, -size_kib, now_ms)

    def tell(self, now_ms: int, telling: Callable[[Amounts], Mapping[str, int]]) -> None:
        """Every few seconds have ``telling`` add what was counted to what all know; it returns their sums."""
        with self._lock:
            if abs(now_ms - self._told_ms) < TELL_MS:
                return
            self._told_ms, untold, self._untold = now_ms, self._untold, {}
            self._known = {a: known for a, known in self._known.items() if abs(now_ms - known[1]) < KEPT_MS}
        if not untold:
            return
        try:
            sums = telling(untold)
        except BaseException:
            with self._lock:
                for (address, window), size_kib in untold.items():
                    self._count(address, size_kib, window * WINDOW_MS)
            raise
        with self._lock:
            self._known.update({address: (total, now_ms) for address, total in sums.items()})

    def _count(self, address: str, size_kib: int, at_ms: int) -> None:
        key = (address, at_ms // WINDOW_MS)
        self._untold[key] = self._untold.get(key, 0) + size_kib


def tell_amounts(connection: Connection, amounts: Amounts, now_ms: int) -> dict[str, int]:
    """Add amounts to those of all processes; return the sums of the last hour by address.

    In the order of the addresses, so that two processes wait for each other's and never both for both.
    """
    made = (postgresql if connection.dialect.name == "postgresql" else sqlite).insert(attempts)
    rows = [
        {"bucket": _bucket(address), "window_ms": window, "count": size_kib}
        for (address, window), size_kib in sorted(amounts.items())
        if size_kib > 0
    ]
    if rows:
        more = {"count": attempts.c.count + made.excluded.count}
        connection.execute(
            made.on_conflict_do_update(index_elements=["bucket", "window_ms"], set_=more), rows
        )
    window, a = now_ms // WINDOW_MS, attempts.c
    address_of = {_bucket(address): address for address, _ in amounts}
    sums = connection.execute(
        select(a.bucket, func.sum(a.count))
        .where(is_among(connection, a.bucket, sorted(address_of)))
        .where(a.window_ms.between(window - HOUR_WINDOWS + 1, window))
        .group_by(a.bucket)
    )
    return dict.fromkeys(address_of.values(), 0) | {address_of[bucket]: int(total) for bucket, total in sums}


def _bucket(address: str) -> str:
    return f"{_PURPOSE}:{address}"[:100]
