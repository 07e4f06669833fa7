"""Who was removed and brought back stays, and who was removed after that stays away: by whatever the clock says."""

from __future__ import annotations

import json

import pytest
from tests.keeping.test_ended import change_person, second_keeper

from broodshelf.cli import main
from broodshelf.errors import SignedOut
from broodshelf.people.devices import actor_of
from broodshelf.records.database import reading
from broodshelf.records.home.ending import ended_ms
from broodshelf.records.store import read_record

HOUR_MS = 3_600_000


def is_away(house, person_id):
    """Say whether a person is gone, by their record and by the book of what was ended."""
    with reading() as connection:
        record = read_record(connection, house.household_id, person_id)
        noted_ms = ended_ms(connection, "person", house.household_id, person_id)
    return record.gone, noted_ms is not None


def start_again(house):
    house.stop()
    house.start()


def set_clock(house, phone, by_ms):
    house.now_ms += by_ms
    phone.now_ms = house.now_ms


@pytest.mark.parametrize("said", [[True, False], [False, True]], ids=["back", "away"])
def test_of_a_person_removed_and_brought_back_in_one_request_the_last_word_counts(house, said):
    phone = house.phone()
    person_id, token = second_keeper(house)
    phone.person_id = house.person_id
    for gone in said:
        phone.write("person", {"gone": gone}, person_id)
        phone.now_ms += 1
    house.now_ms = phone.now_ms
    house.post(phone, json.dumps(phone.request()).encode())
    start_again(house)

    assert is_away(house, person_id) == (said[-1], said[-1])
    with reading() as connection:
        if said[-1]:
            with pytest.raises(SignedOut):
                actor_of(connection, token, house.now_ms)
        else:
            assert actor_of(connection, token, house.now_ms).person_id == person_id


def test_who_came_back_stays_although_the_clock_was_set_back_in_between(house):
    phone = house.phone()
    person_id, _token = second_keeper(house)
    set_clock(house, phone, HOUR_MS)
    change_person(house, phone, person_id, {"gone": True})
    set_clock(house, phone, -HOUR_MS)
    change_person(house, phone, person_id, {"gone": False})
    start_again(house)

    assert is_away(house, person_id) == (False, False)


def test_who_was_removed_again_stays_away_after_a_restore_although_the_clock_was_set_back(house, tmp_path):
    phone = house.phone()
    person_id, _token = second_keeper(house)
    for gone in (True, False):
        set_clock(house, phone, HOUR_MS)
        change_person(house, phone, person_id, {"gone": gone})
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    set_clock(house, phone, -HOUR_MS)
    change_person(house, phone, person_id, {"gone": True})
    house.stop()
    assert main(["restore", str(tmp_path / "kept.tar.gz")]) == 0
    house.start()

    assert is_away(house, person_id) == (True, True)


def test_a_household_that_was_put_back_stays_although_the_clock_was_set_back_in_between(house, tmp_path):
    kept = tmp_path / "kept.tar.gz"
    assert main(["backup", str(kept)]) == 0
    house.now_ms += HOUR_MS
    assert main(["household", "delete", house.household_id, "--yes"]) == 0
    house.now_ms -= HOUR_MS
    assert main(["household", "restore", house.household_id, str(kept)]) == 0
    start_again(house)

    with reading() as connection:
        assert read_record(connection, house.household_id, house.person_id) is not None
