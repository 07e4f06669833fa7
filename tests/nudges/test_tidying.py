"""What the daily tidying forgets, what it keeps, and that it takes a portion a tick."""

from __future__ import annotations

import pytest
from sqlalchemy import func, insert, select
from tests.nudges.support import Shelf

from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges import tidying
from broodshelf.nudges.tables import nudger_state, nudges
from broodshelf.nudges.tidying import tidy_some
from broodshelf.records.database import reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.purge import purge_gone
from broodshelf.records.store import Ledger
from broodshelf.records.tables import households, records


def places(shelf: Shelf) -> list[str]:
    with reading() as connection:
        return list(connection.scalars(select(records.c.id).where(records.c.kind == "place")))


def neighbours(shelf: Shelf, number: int) -> None:
    """Add households, later ones than the shelf's, each with a place that went at the shelf's present."""
    for n in range(number):
        house = uuid7(shelf.now_ms + 1 + n)
        with writing() as connection:
            connection.execute(insert(households).values(id=house, epoch=house, created_ms=shelf.now_ms))
            ledger = Ledger(connection, house)
            ledger.put(uuid7(shelf.now_ms), "place", {"name": "Attic", "gone": True}, now_ms=shelf.now_ms)
            ledger.flush()


def tidied_ms() -> int | None:
    with reading() as connection:
        return connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tidy"))


def test_rows_gone_for_over_400_days_are_purged_and_younger_ones_stay(shelf: Shelf):
    phone = shelf.person("Mira", listens=False)
    old, young = (shelf.log(phone, "place", {"name": name}) for name in ("Window", "Cellar"))
    shelf.log(phone, "place", {"gone": True}, old)
    shelf.now_ms += 300 * DAY_MS
    shelf.log(phone, "place", {"gone": True}, young)
    shelf.now_ms += 101 * DAY_MS

    assert tidy_some(shelf.now_ms)
    assert places(shelf) == [young]
    with reading() as connection:
        assert connection.scalar(select(households.c.purged_rev)) > 0


def test_it_is_done_once_a_day(shelf: Shelf):
    phone = shelf.person("Mira", listens=False)
    gone = shelf.log(phone, "place", {"name": "Window"})
    shelf.log(phone, "place", {"gone": True}, gone)
    nearly_ms = shelf.now_ms + 400 * DAY_MS

    assert tidy_some(nearly_ms)
    assert not tidy_some(nearly_ms + DAY_MS - 1)  # old enough by now, but today was tidied
    assert places(shelf) == [gone]
    assert tidy_some(nearly_ms + DAY_MS)
    assert places(shelf) == []


def test_some_households_a_tick_until_all_are_tidied(shelf: Shelf, monkeypatch):
    monkeypatch.setattr(tidying, "HOUSEHOLDS_A_TICK", 2)
    neighbours(shelf, 4)  # five with the shelf itself, which has nothing to purge
    shelf.now_ms += 401 * DAY_MS
    left = []
    while not tidy_some(shelf.now_ms):
        left.append(len(places(shelf)))
        shelf.now_ms += 5000

    assert left == [3, 1]
    assert places(shelf) == []


def test_households_that_fill_the_last_portion_are_followed_by_the_end(shelf: Shelf, monkeypatch):
    monkeypatch.setattr(tidying, "HOUSEHOLDS_A_TICK", 2)
    neighbours(shelf, 3)

    assert [tidy_some(shelf.now_ms) for _ in range(4)] == [False, False, True, False]


def test_old_nudges_go_a_portion_a_tick(shelf: Shelf, monkeypatch):
    monkeypatch.setattr(tidying, "ROWS_A_TICK", 2)
    same = {"household_id": shelf.id, "person_id": uuid7(1), "local_date": "2026-05-01", "slot": "08:00"}
    with writing() as connection:
        connection.execute(
            insert(nudges),
            [
                {**same, "id": uuid7(n), "step": n, "urgent": False, "made_ms": shelf.now_ms - n}
                for n in range(6)
            ],
        )
    shelf.now_ms += 90 * DAY_MS  # the one of step 0 is not older than that yet
    left = []
    ended = False
    while not ended:
        ended = tidy_some(shelf.now_ms)
        with reading() as connection:
            left.append(connection.scalar(select(func.count()).select_from(nudges)))

    assert left == [4, 2, 1]


def test_a_nudge_is_told_in_the_tick_in_which_tidying_has_only_begun(shelf: Shelf, monkeypatch):
    monkeypatch.setattr(tidying, "HOUSEHOLDS_A_TICK", 1)
    mira = shelf.person("Mira")
    shelf.colony(mira)
    neighbours(shelf, 3)
    shelf.at("2026-05-04T18:30")

    assert shelf.tick() != []
    assert tidied_ms() is None  # three households to go
    for _ in range(4):
        shelf.tick()
    assert tidied_ms() == shelf.now_ms


def test_a_household_that_fails_does_not_keep_those_after_it(shelf: Shelf, monkeypatch):
    monkeypatch.setattr(tidying, "HOUSEHOLDS_A_TICK", 1)
    neighbours(shelf, 3)
    shelf.now_ms += 401 * DAY_MS
    with reading() as connection:
        bad = connection.scalars(select(households.c.id).order_by(households.c.id)).all()[1]

    def purge(connection, household_id, now_ms):
        if household_id == bad:
            raise RuntimeError("a broken row")
        return purge_gone(connection, household_id, now_ms)

    monkeypatch.setattr(tidying, "purge_gone", purge)
    assert not tidy_some(shelf.now_ms)
    with pytest.raises(RuntimeError):
        tidy_some(shelf.now_ms)
    while not tidy_some(shelf.now_ms):
        pass

    with reading() as connection:
        owners = connection.scalars(select(records.c.household_id).where(records.c.kind == "place")).all()
    assert owners == [bad]


@pytest.mark.parametrize("bare_app", ["postgresql"], indirect=True)  # on SQLite no two write at a time
def test_a_household_in_use_is_left_for_another_day(shelf: Shelf):
    neighbours(shelf, 2)
    shelf.now_ms += 401 * DAY_MS
    with reading() as connection:
        busy = connection.scalars(select(households.c.id).order_by(households.c.id)).all()[1]
    with writing() as connection:
        Ledger(connection, busy)
        assert tidy_some(shelf.now_ms)

    with reading() as connection:
        owners = connection.scalars(select(records.c.household_id).where(records.c.kind == "place")).all()
    assert owners == [busy]
