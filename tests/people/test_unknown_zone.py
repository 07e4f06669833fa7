"""A household whose time zone this machine does not know any more goes on in UTC. On both databases."""

from __future__ import annotations

import pytest
from tests.people.support import apply, make_pass, open_pass

from broodshelf.model.gauges import DAY_MS
from broodshelf.people.passes import ended_passes
from broodshelf.records.database import reading, writing
from broodshelf.records.store import Ledger


@pytest.fixture
def lost_zone(app, keeper):
    """Returns what puts the household into a zone that went with an update of the machine."""

    def lose() -> None:
        household_id = keeper.me["household_id"]
        with app.app_context(), writing() as connection:
            ledger = Ledger(connection, household_id)
            ledger.put(household_id, "household", {"zone": "Atlantis/Poseidonis"}, now_ms=keeper.clock.now_ms)
            ledger.flush()

    return lose


def test_a_stand_in_is_served_and_the_larder_is_known(app, browser, keeper, clock, lost_zone):
    colony = apply(keeper, "colony", {"name": "Amber"})
    pass_id, link = make_pass(keeper, [colony], ends="2026-05-03")
    guest = open_pass(browser(), link)
    lost_zone()

    assert guest.get("/api/me").json["pass"]["state"] == "active"
    assert guest.sync().status_code == 200
    assert keeper.get("/api/larder").status_code == 200
    clock.now_ms += 30 * DAY_MS
    household_id = keeper.me["household_id"]
    with app.app_context(), reading() as connection:
        assert ended_passes(connection, [household_id], clock.now_ms) == {household_id: [pass_id]}
