"""Faults of the server."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
import sqlalchemy
from tests.sync.mutants.mutant import AWAY, BUSY, EARLIER_THAN_KNOWN, RESTORING, Mutant

from broodshelf.people import ledger as people_ledger
from broodshelf.records import epochs, purge, store
from broodshelf.records import merge as merging
from broodshelf.records.merge import Merged, merge
from broodshelf.sync import answering, exchange, offers, operations


def op_id_not_unique(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(answering, "_earlier_answers", lambda _ledger, _ids: {})

    def insert_or_ignore(connection: Any, table: Any, rows: list[Any]) -> None:
        if rows:
            connection.execute(sqlalchemy.insert(table).prefix_with("OR IGNORE"), rows)

    patch.setattr(answering, "insert_rows", insert_or_ignore)


def epoch_ignored(patch: pytest.MonkeyPatch) -> None:
    real = exchange.read_page

    def careless(ledger: Any, scope: Any, wanted: Any) -> Any:
        return real(ledger, scope, replace(wanted, start_over=False))

    patch.setattr(exchange, "read_page", careless)


def restore_unnoticed(patch: pytest.MonkeyPatch) -> None:
    import tests.support.world.server

    import broodshelf.people.settling

    patch.setattr(broodshelf.people.settling, "notice", lambda *_: [])
    patch.setattr(tests.support.world.server, "start_epoch", lambda *_: "")


def revisions_reused_after_a_restore(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(epochs, "GAP", 0)
    patch.setattr(epochs.Marks, "read", lambda _marks, _household: None)
    epoch_ignored(patch)


def revocations_forgotten_by_a_restore(patch: pytest.MonkeyPatch) -> None:
    import broodshelf.people.settling

    patch.setattr(broodshelf.people.settling, "apply_revocations", lambda *_: 0)


def purge_not_remembered(patch: pytest.MonkeyPatch) -> None:
    real = purge.update
    never = sqlalchemy.false()
    patch.setattr(purge, "update", lambda table: real(table).where(never))


def deletion_beats_an_edit_silently(patch: pytest.MonkeyPatch) -> None:
    def silent(*arguments: Any, **named: Any) -> Merged:
        merged = merge(*arguments, **named)
        merged.meetings = [met for met in merged.meetings if met.field != "gone"]
        return merged

    patch.setattr(operations, "merge", silent)


def last_writer_wins_silently(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(
        operations, "merge", lambda _present, _stamps, asked: Merged(asked.made_ms, wins=dict(asked.fields))
    )


def history_not_written(patch: pytest.MonkeyPatch) -> None:
    real = store.Ledger.write
    patch.setattr(store.Ledger, "write", lambda ledger, record, _revision=None: real(ledger, record))


def gone_rows_not_delivered(patch: pytest.MonkeyPatch) -> None:
    real = exchange.read_page

    def without_gone(*arguments: Any) -> Any:
        page = real(*arguments)
        page.gone.clear() if hasattr(page.gone, "clear") else None
        return page

    patch.setattr(exchange, "read_page", without_gone)


def cursor_ahead_of_its_page(patch: pytest.MonkeyPatch) -> None:
    """A page that is not the last gives out the cursor of the whole household."""
    real = exchange.read_page

    def ahead(ledger: Any, scope: Any, wanted: Any) -> Any:
        page = real(ledger, scope, wanted)
        if not page.more or page.reset:
            return page
        cursor = f"{ledger.rev}.{page.cursor.split('.')[1]}"
        return replace(page, cursor=cursor)

    patch.setattr(exchange, "read_page", ahead)


def offers_stamped_now(patch: pytest.MonkeyPatch) -> None:
    real = offers.past_of

    def past_of(ledger: Any, op: Any, now_ms: int) -> Any:
        past = real(ledger, op, now_ms)
        return past and replace(past, made_ms=now_ms, stamps={})

    patch.setattr(offers, "past_of", past_of)


def offers_take_over_authorship(patch: pytest.MonkeyPatch) -> None:
    real = offers.insert_past

    def insert_past(batch: Any, change: Any, past: Any) -> Any:
        return real(batch, change, replace(past, by=batch.actor.person_id))

    patch.setattr(offers, "insert_past", insert_past)


def own_later_value_gives_way(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(merging, "_own_is_later", lambda *_a, **_k: False)


def what_lies_ahead_is_all_now(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(
        operations,
        "merge",
        lambda present, stamps, asked: merge(present, stamps, replace(asked, said_ms=None)),
    )


def times_do_not_grow(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(merging, "_beaten_ms", lambda *_: [])


def purged_forgotten_by_a_restore(patch: pytest.MonkeyPatch) -> None:
    patch.setitem(people_ledger._APPLY, "record", lambda *_: 0)


MUTANTS = (
    Mutant("op_id not unique", op_id_not_unique, steps=BUSY),
    Mutant("epoch ignored", epoch_ignored, steps=RESTORING),
    Mutant("restore unnoticed", restore_unnoticed, steps=RESTORING),
    Mutant("revisions reused after a restore", revisions_reused_after_a_restore, steps=RESTORING),
    Mutant(
        "revocations forgotten by a restore",
        revocations_forgotten_by_a_restore,
        steps={**RESTORING, "revoke": 8},
    ),
    Mutant("purge not remembered", purge_not_remembered, steps=AWAY),
    Mutant("deletion beats an edit silently", deletion_beats_an_edit_silently, steps={**BUSY, "void": 12}),
    Mutant("last writer wins silently", last_writer_wins_silently, steps=BUSY),
    Mutant("history not written", history_not_written, steps=BUSY),
    Mutant("gone rows not delivered", gone_rows_not_delivered, steps={**BUSY, "void": 12}),
    Mutant(
        "cursor ahead of its page",
        cursor_ahead_of_its_page,
        run=(["sync", 1], ["page", 1, 3], ["burst", 0, 0], ["sync", 0], ["sync", 1]),
    ),
    Mutant(
        "offers are stamped as of now",
        offers_stamped_now,
        run=(
            *(["sync", 1], ["backup"], ["rename", 1, 0], ["sync", 1], ["sync", 0], ["rename", 0, 0]),
            *(["sync", 0], ["restore", 0, 0], ["sync", 1]),
        ),
    ),
    Mutant(
        "an offer takes over authorship",
        offers_take_over_authorship,
        run=(["backup"], ["sync", 1], ["log", 1, 0], ["sync", 1], ["sync", 0], ["restore", 0, 0]),
    ),
    Mutant(
        "an older entry of the journal beats what waits",
        own_later_value_gives_way,
        run=(["backup"], ["rename", 0, 0], ["sync", 0], ["rename", 0, 0], ["restore", 0, 0]),
    ),
    Mutant(
        "what a clock ahead says is all now",
        what_lies_ahead_is_all_now,
        run=(
            *(["skew", 0, 1], ["backup"], ["log", 0, 0], ["sync", 0], ["skew", 0, 2], ["amend", 0, 0]),
            *(["amend", 0, 0], ["amend", 0, 0], ["restore", 0, 1]),
        ),
    ),
    Mutant(
        "the times of a field do not grow",  # shown by phones that say times from before what they knew
        times_do_not_grow,
        changes=(EARLIER_THAN_KNOWN,),
        run=(
            *(["sync", 1], ["backup"], ["rename", 0, 0], ["sync", 0], ["sync", 1], ["skew", 1, -26]),
            *(["rename", 1, 0], ["sync", 1], ["restore", 0, 0]),
        ),
    ),
    Mutant(
        "what was purged is forgotten by a restore",
        purged_forgotten_by_a_restore,
        run=(
            ["log", 0, 0],
            ["sync", 0],
            ["backup"],
            ["void", 0, 1],
            ["sync", 0],
            ["days", 401],
            ["restore", 0, 0],
        ),
    ),
)
