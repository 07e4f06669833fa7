"""Random requests as everybody, on both databases: no answer of the server's own fault, none without end, no leak.

The long search is a command: ``python -m tests.bench.long_fuzz``. What a search found stands in ``FOUND`` as the
shortest run that showed it.
"""

from __future__ import annotations

import pytest
from tests.support.fuzz import MOST_GROWTH_MIB, Ask, Fuzz
from tests.support.odd import Raw, Thing
from tests.support.two_houses import TwoHouses

from broodshelf.people.tables import attempts, devices
from broodshelf.records.database import writing
from broodshelf.records.tables import households

pytestmark = pytest.mark.long

REQUESTS = 1_000
"""On each of the two databases."""
DEVICE = {"id": Thing("new_id"), "name": "a phone"}
FOUND = {
    "half a character as the name of a field": [
        Ask("keeper", "POST", ("/api/passes/open",), {"device": DEVICE, "\ud800": ""})
    ],
    "half a character as a value": [
        Ask("nobody", "POST", ("/api/push/ack",), {"delivery_id": Raw('"\\ud800"'), "shown": False})
    ],
}


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def fuzz(request, tmp_path_factory, templates):
    folder = tmp_path_factory.mktemp("fuzz") / "data"
    with TwoHouses(folder, templates.of_an_app(request.param, folder)) as houses:
        yield Fuzz(houses)


@pytest.mark.parametrize("name", FOUND)
def test_what_a_search_once_found_stays_mended(fuzz, name):
    fuzz.play(FOUND[name])


def test_each_run_begins_with_the_same_rows(fuzz):
    def sorted_rows():
        return {table: sorted(rows, key=repr) for table, rows in fuzz.houses.rows().items()}

    began = sorted_rows()
    with writing() as connection:
        connection.execute(devices.delete())
        connection.execute(households.update().values(purged_rev=7))
        connection.execute(attempts.insert().values(bucket="one more", window_ms=0, count=1))
    now = sorted_rows()
    fuzz.houses.reset()

    assert {table for table in now if now[table] != began[table]} == {"devices", "households", "attempts"}
    assert sorted_rows() == began


def test_no_request_breaks_the_server_hangs_it_or_makes_it_grow(fuzz):
    grown_mib = fuzz.search_until(REQUESTS, with_seed=1)

    assert fuzz.seen["operations applied"] > 20, "the search no longer gets through to the shelf"
    assert fuzz.seen["200"] > 100
    assert grown_mib < MOST_GROWTH_MIB


def test_the_search_finds_an_error_of_the_server(fuzz, monkeypatch):
    def broken(*_: object) -> None:
        raise RuntimeError("a fault put in")

    monkeypatch.setattr("broodshelf.records.store.Ledger.flush", broken)
    with pytest.raises(AssertionError, match="500 for POST /api/sync"):
        fuzz.search(REQUESTS, with_seed=1, shorten=False)


def test_the_search_finds_an_error_that_was_swallowed(fuzz, monkeypatch):
    def broken(*_: object, **__: object) -> None:
        raise ZeroDivisionError("a fault put in")

    monkeypatch.setattr("broodshelf.rounds.recompute.make_plan", broken)
    with pytest.raises(AssertionError, match="swallowed by"):
        fuzz.search(REQUESTS, with_seed=1, shorten=False)
