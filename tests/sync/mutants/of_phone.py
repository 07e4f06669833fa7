"""Faults of the phone."""

from __future__ import annotations

from collections.abc import Generator, Iterator
from typing import Any

from tests.support.stored_phone import Answer, Held, Network, StoredPhone
from tests.sync.mutants.mutant import BUSY, RESTORING, Mutant


class CursorMovedFirst(StoredPhone):
    def take(self, answer: Answer, refill: Any, held: Held, sent_ms: int) -> Generator[str, None, bool]:
        self.take_cursor(answer)
        yield "cursor stored"
        self.take_verdicts(answer)
        self.take_rows(answer, refill)
        yield "stored"
        return True


class OutboxClearedOnSending(StoredPhone):
    def drain(self, network: Network) -> Iterator[str]:
        def forgetful(body: bytes) -> Answer:
            for op in self.waiting():
                self.journal[op["op_id"]] = {"op": op, "at_ms": self.now_ms()}
            self.outbox = {k: e for k, e in self.outbox.items() if e["state"] != "waiting"}
            return network(body)

        return super().drain(forgetful)


class NothingOfferedAfterARestore(StoredPhone):
    def give_back(self, refill: Any) -> None:
        pass


class JournalQueuedAfterTheEpochIsStored(StoredPhone):
    """What the app itself once did: killed in between, it never sent its journal."""

    def give_back(self, refill: Any) -> None:
        pass

    def take(self, answer: Answer, refill: Any, held: Held, sent_ms: int) -> Generator[str, None, bool]:
        before = self.meta.get("epoch")
        following = yield from super().take(answer, refill, held, sent_ms)
        if before and self.meta["epoch"] != before:
            super().give_back(refill)
        return following


class LateAnswerTaken(StoredPhone):
    """What the app itself once did: an answer that another tab had overtaken put its older rows back."""

    def take(self, answer: Answer, refill: Any, held: Held, sent_ms: int) -> Generator[str, None, bool]:
        return super().take(answer, refill, self.held(), sent_ms)


class FrozenTabCountsAsContact(StoredPhone):
    """What the app itself once did: an answer stored weeks after it was asked for counted as the last contact."""

    def take(self, answer: Answer, refill: Any, held: Held, sent_ms: int) -> Generator[str, None, bool]:
        return super().take(answer, refill, held, self.now_ms())


class SecondResetKeepsTheFirst(StoredPhone):
    """What the app itself once did: a second reset in one sync brought back rows of the first."""

    def drain(self, network: Network) -> Iterator[str]:
        return super().drain(lambda body: {**network(body), "first": False})


class RefusedIsDropped(StoredPhone):
    def take_verdicts(self, answer: Answer) -> None:
        super().take_verdicts(answer)
        self.outbox = {op_id: entry for op_id, entry in self.outbox.items() if entry["state"] != "rejected"}


class ConflictsNotKept(StoredPhone):
    def take_verdicts(self, answer: Answer) -> None:
        super().take_verdicts(answer)
        self.conflicts.clear()


MUTANTS = (
    Mutant("cursor moved first", phone=CursorMovedFirst, steps=BUSY),
    Mutant("outbox cleared on sending", phone=OutboxClearedOnSending, steps=BUSY),
    Mutant("nothing offered after a restore", phone=NothingOfferedAfterARestore, steps=RESTORING),
    Mutant(
        "journal queued after the epoch is stored",
        phone=JournalQueuedAfterTheEpochIsStored,
        run=(["backup"], ["rename", 0, 0], ["sync", 0], ["restore", 0, 1], ["crash", 0, 3]),
    ),
    Mutant(
        "an overtaken answer is taken",
        phone=LateAnswerTaken,
        run=(
            ["sync", 2],
            ["rename", 2, 0],
            ["begin", 2, 1],
            ["advance", 2, 1, 2],
            ["rename", 2, 1],
            ["sync", 2],
            ["begin", 2, 0],
            ["advance", 2, 0, 2],
        ),
    ),
    Mutant(
        "a frozen tab counts as contact",
        phone=FrozenTabCountsAsContact,
        run=(
            ["found", 2],
            ["backup"],
            ["sync", 2],
            ["begin", 2, 1],
            ["advance", 2, 1, 2],
            ["restore", 0, 0],
            ["days", 40],
        ),
    ),
    Mutant(
        "a second reset keeps the first",
        phone=SecondResetKeepsTheFirst,
        run=(
            ["backup"],
            ["sync", 1],
            ["sync", 2],
            ["restore", 0, 0],
            ["begin", 1, 0],
            ["advance", 1, 0, 2],
            ["void", 2, 3],
            ["rename", 1, 2],
            ["sync", 2],
            ["days", 401],
        ),
    ),
    Mutant("refused is dropped", phone=RefusedIsDropped, steps={**BUSY, "bad": 10}),
    Mutant("conflicts not kept", phone=ConflictsNotKept, steps=BUSY),
)
