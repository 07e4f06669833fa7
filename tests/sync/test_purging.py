"""What was purged stays gone whoever offers it; an older cursor gets everything anew. On both engines."""

from __future__ import annotations

from tests.support.households import NOON_MS, Requester, by_id, colony

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import writing


def test_a_cursor_from_before_a_purge_gets_everything_anew(phone, household_id):
    from broodshelf.records.purge import KEPT_MS, purge_gone

    kept, lost = colony(phone), colony(phone, "Birch")
    phone.sync()
    reader = Requester(household_id)
    reader.sync()
    phone.write("colony", {"gone": True}, lost)
    phone.sync()
    with writing() as connection:
        purged = purge_gone(connection, household_id, NOON_MS + KEPT_MS + DAY_MS)
    answer = reader.sync()

    assert purged == 1
    assert answer["reset"] is True
    assert by_id(answer["rows"]).keys() == {kept}


def purge(household_id, now_ms):
    from broodshelf.records.purge import purge_gone

    with writing() as connection:
        return purge_gone(connection, household_id, now_ms)


def test_what_was_purged_stays_gone_whoever_edits_or_offers_it(phone, other, household_id):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"gone": True}, colony_id)
    phone.sync()
    later = NOON_MS + 401 * DAY_MS
    purged = purge(household_id, later)
    edit = other.write("colony", {"name": "Back from the dead"}, colony_id)
    offer = other.write("colony", {"name": "Amber"}, colony_id, adopt=True)
    phone.now_ms = other.now_ms = later
    other.sync()
    phone.sync()

    assert purged == 1
    assert other.verdicts[edit["op_id"]]["code"] == "purged"
    assert other.verdicts[offer["op_id"]]["verdict"] == "applied"
    assert colony_id not in phone.rows()


def test_a_purged_record_does_not_come_back_by_its_own_creation_sent_again(phone, household_id):
    colony_id = colony(phone)
    phone.write("colony", {"name": "Renamed before the first answer"}, colony_id)
    whole = list(phone.waiting)
    creation = [whole[0]]
    phone.waiting = creation
    phone.ask()  # its answer is lost
    remover = Requester(household_id)
    remover.sync()
    remover.write("colony", {"gone": True}, colony_id)
    remover.sync()
    purge(household_id, NOON_MS + 401 * DAY_MS)
    phone.waiting = whole
    phone.sync()

    assert phone.verdicts[whole[0]["op_id"]]["verdict"] == "applied"
    assert phone.verdicts[whole[1]["op_id"]]["code"] == "purged"
    assert colony_id not in phone.rows()
