"""What a plan gets to know of the house and of a colony's record."""

from __future__ import annotations

import pytest
from tests.support.households import NOON_MS, Requester

from broodshelf.model.facts import ColonyState
from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import reading
from broodshelf.rounds.colony_state import colony_states, read_shelf
from broodshelf.rounds.latitude import latitude_deg

OLDER_NAMES = {
    "Africa/Asmera": "Africa/Asmara", "America/Buenos_Aires": "America/Argentina/Buenos_Aires",
    "America/Catamarca": "America/Argentina/Catamarca", "America/Coral_Harbour": "America/Atikokan",
    "America/Cordoba": "America/Argentina/Cordoba", "America/Godthab": "America/Nuuk",
    "America/Indianapolis": "America/Indiana/Indianapolis", "America/Jujuy": "America/Argentina/Jujuy",
    "America/Louisville": "America/Kentucky/Louisville", "America/Mendoza": "America/Argentina/Mendoza",
    "Asia/Calcutta": "Asia/Kolkata", "Asia/Katmandu": "Asia/Kathmandu", "Asia/Rangoon": "Asia/Yangon",
    "Asia/Saigon": "Asia/Ho_Chi_Minh", "Atlantic/Faeroe": "Atlantic/Faroe", "Europe/Kiev": "Europe/Kyiv",
    "Pacific/Enderbury": "Pacific/Kanton", "Pacific/Ponape": "Pacific/Pohnpei", "Pacific/Truk": "Pacific/Chuuk",
    "Australia/ACT": "Australia/Sydney", "Iceland": "Atlantic/Reykjavik",
}  # fmt: skip
"""Names that zone.tab lacks, all of ``Intl.supportedValuesOf`` and two more, and what the zone is called today."""


@pytest.mark.parametrize(("older", "zone"), OLDER_NAMES.items())
def test_the_older_name_of_a_zone_tells_the_same_latitude(older, zone):
    assert latitude_deg(older) == latitude_deg(zone) is not None


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


def state_of(phone: Requester, colony_id: str) -> ColonyState:
    phone.sync()
    assert {verdict["verdict"] for verdict in phone.verdicts.values()} == {"applied"}
    with reading() as connection:
        (state,) = colony_states(read_shelf(connection, phone.household_id, phone.now_ms), [colony_id]).told
    return state


@pytest.mark.parametrize(
    ("zone", "degrees"),
    [("Europe/Vienna", 48.2), ("Australia/Sydney", -33.9), ("America/Sao_Paulo", -23.5), ("UTC", None)],
)
def test_the_zone_tells_the_latitude(zone, degrees):
    # zone.tab of the IANA database: +4813, -3352, -2332
    found = latitude_deg(zone)

    assert found == degrees if degrees is None else found == pytest.approx(degrees, abs=0.1)


def test_a_colony_is_known_since_its_record_was_made_whatever_was_written_in_it_since(phone):
    colony_id = phone.write("colony", {"name": "Amber", "stage": "founding", "acquired_on": "2024-03-01"})[
        "id"
    ]
    assert state_of(phone, colony_id).entered_on == "2026-05-01"
    phone.now_ms = NOON_MS + 60 * DAY_MS
    phone.write("colony", {"name": "Amber the second"}, colony_id)

    assert state_of(phone, colony_id).entered_on == "2026-05-01"
