"""What a plan gets to know of the house: its latitude and the climate of a colony's place."""

from __future__ import annotations

import pytest

from broodshelf.rounds.latitude import latitude_deg


@pytest.mark.parametrize(
    ("zone", "degrees"),
    [("Europe/Vienna", 48.2), ("Australia/Sydney", -33.9), ("America/Sao_Paulo", -23.5), ("UTC", None)],
)
def test_the_zone_tells_the_latitude(zone, degrees):
    # zone.tab of the IANA database: +4813, -3352, -2332
    found = latitude_deg(zone)

    assert found == degrees if degrees is None else found == pytest.approx(degrees, abs=0.1)
