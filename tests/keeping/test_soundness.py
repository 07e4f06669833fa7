"""A damaged database and a backup that is too old are told to keepers, by what stands outside the database."""

from __future__ import annotations

import json
import logging

from tests.support.house import House

from broodshelf.app import create_nudger
from broodshelf.cli import main
from broodshelf.model.gauges import DAY_MS
from broodshelf.records import soundness
from broodshelf.records.database import writing
from broodshelf.records.soundness import Soundness, find_damage
from broodshelf.records.store import Ledger


def told(house):
    phone = house.phone()
    return json.loads(house.post(phone, json.dumps(phone.request()).encode())).get("told")


def test_a_sound_database_is_looked_through_once_a_day_and_nothing_is_told(house, monkeypatch):
    looks = []
    monkeypatch.setattr(soundness, "find_damage", lambda: looks.append(find_damage()))
    nudger = create_nudger(house.app)
    for ahead_ms in (0, 5_000, DAY_MS - 1, DAY_MS + 5_000):
        nudger.tick(house.now_ms + ahead_ms)
    nudger.close()

    assert looks == [None, None]
    assert told(house) is None


def test_a_damaged_database_is_told_until_a_look_finds_it_sound(house, monkeypatch):
    book = Soundness(house.app.extensions["broodshelf"].home.kept)
    monkeypatch.setattr(soundness, "find_damage", lambda: "row 7 missing from index")
    book.look(house.now_ms)
    before = told(house)
    monkeypatch.undo()
    book.look(house.now_ms + DAY_MS)

    assert before == {"code": "database_damaged"}
    assert told(house) is None


def test_an_old_backup_is_told_a_day_in_every_week_unless_the_household_wants_it_otherwise(house, tmp_path):
    assert told(house) is None  # none was ever made
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    backup_ms = house.app.extensions["broodshelf"].home.kept.read()["backup_ms"]
    seen = {}
    for day in (29, 30, 31, 36, 37, 38):
        house.now_ms = backup_ms + day * DAY_MS + 1
        seen[day] = told(house) is not None
    with writing() as connection:
        ledger = Ledger(connection, house.household_id)
        ledger.put(house.household_id, "household", {"backup_patience_days": 0}, now_ms=house.now_ms)
        ledger.flush()
    house.now_ms = backup_ms + 37 * DAY_MS + 1

    assert seen == {29: False, 30: True, 31: False, 36: False, 37: True, 38: False}
    assert told(house) is None


def test_a_file_whose_pages_were_written_over_is_found(tmp_path):
    logging.disable(logging.CRITICAL)
    with House(tmp_path / "data") as house:
        with writing() as connection:
            ledger = Ledger(connection, house.household_id)
            for number in range(200):
                ledger.put(house.new_id(), "colony", {"name": f"colony {number}"}, now_ms=house.now_ms)
            ledger.flush()
        house.stop()
        path = house.settings.sqlite_file
        content = bytearray(path.read_bytes())
        middle = len(content) // 2 // 4096 * 4096
        content[middle : middle + 4096 * 8] = b"\xa5" * 4096 * 8
        path.write_bytes(content)
        house.context.push()
        assert find_damage() is not None
    logging.disable(logging.NOTSET)
