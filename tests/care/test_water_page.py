"""docs/care-model/water.md says what the code says."""

from __future__ import annotations

import re
from pathlib import Path

from broodshelf.care.catalogue import vessels
from broodshelf.care.water.reservoir import reservoir
from broodshelf.model.facts import Place, Vessel

PAGE = (Path(__file__).parents[2] / "docs/care-model/water.md").read_text()


def test_the_table_of_water_days_is_what_the_code_expects():
    header = next(line for line in PAGE.splitlines() if line.startswith("| vessel |"))
    airs = [(float(t), float(h)) for t, h in re.findall(r"(\d+) °C, (\d+) %", header)]
    rows = {
        row[0]: row[2:]
        for row in (line.strip("| ").split(" | ") for line in PAGE.splitlines())
        if row[0] in vessels()
    }

    assert rows.keys() == {code for code, vessel in vessels().items() if vessel.kind != "outworld"}
    for code, cells in rows.items():
        for cell, (temp_c, humidity_pct) in zip(cells, airs, strict=True):
            days = reservoir(
                (), Vessel(code), Place(day_temp_c=temp_c, humidity_pct=humidity_pct), 0
            ).days_left
            assert cell == f"{days.best:.0f} ({days.low:.0f} to {days.high:.0f})"
