"""Who may begin a household: whom an invitation lets in, once and for days, or everybody. On both databases."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sqlalchemy import select

from broodshelf.model.gauges import DAY_MS
from broodshelf.people.invitations import CODE_LENGTH, Tally, invite, take_back, tally
from broodshelf.people.tables import claim_codes
from broodshelf.records.database import reading, writing


@pytest.fixture
def open_to(app):
    """Change who may begin a household on this server."""
    parts = app.extensions["broodshelf"]

    def change(signup: str) -> None:
        app.extensions["broodshelf"] = replace(parts, settings=replace(parts.settings, signup=signup))

    change("invited")
    return change


def made(app, clock, count: int = 1, days: int = 14) -> list[str]:
    with app.app_context(), writing() as connection:
        return [each.code for each in invite(connection, count, days, clock.now_ms)]


def counted(app, clock) -> Tally:
    with app.app_context(), reading() as connection:
        return tally(connection, clock.now_ms)


def begin(phone, code: str | None, name: str = "Ada"):
    body = {"device": phone.device(), "person_name": name, "household_name": "Mine", "zone": "UTC"}
    return phone.post("/api/claim", body if code is None else {**body, "code": code})


def test_an_invitation_makes_one_household_of_its_own_once(app, browser, keeper, clock, open_to):
    first, second = made(app, clock, 2)
    guest = browser()
    begun = begin(guest, first)

    assert begun.status_code == 200
    assert begun.json["household_id"] != keeper.me["household_id"]
    assert begin(browser(), first).json["code"] == "claim_code_ended"
    assert begin(browser(), second.replace("-", " ").lower()).status_code == 200  # as people type
    assert counted(app, clock) == Tally(open=0, used=2, expired=0)


def test_invitations_are_good_for_their_days_and_counted_for_a_season(app, browser, clock, open_to):
    code = made(app, clock, 1, days=3)[0]
    clock.now_ms += 3 * DAY_MS
    assert browser().post("/api/claim/look", {"code": code}).status_code == 200
    clock.now_ms += 1

    assert begin(browser(), code).status_code == 410
    assert counted(app, clock) == Tally(open=0, used=0, expired=1)


def test_only_hashes_of_long_codes_are_kept(app, clock, open_to):
    codes = made(app, clock, 3)
    with app.app_context(), reading() as connection:
        kept = connection.execute(select(claim_codes)).all()

    assert [row.number for row in sorted(kept, key=lambda row: row.number)] == [1, 2, 3]
    assert not {value for row in kept for value in row} & {
        form for c in codes for form in (c, c.replace("-", ""))
    }
    assert {len(code.replace("-", "")) for code in codes} == {CODE_LENGTH}


def test_while_nobody_may_begin_an_invitation_opens_nothing_but_is_not_used_up(app, browser, clock, open_to):
    code = made(app, clock)[0]
    open_to("closed")
    assert begin(browser(), code).status_code == 410
    open_to("invited")

    assert begin(browser(), code).status_code == 200


def test_what_was_taken_back_stays_taken_back_in_a_database_from_before(app, browser, clock, open_to):
    code = made(app, clock)[0]
    with app.app_context():
        with reading() as connection:
            before = connection.execute(select(claim_codes)).mappings().one()
        with writing() as connection:
            assert take_back(connection, clock.now_ms) == 1
            connection.execute(claim_codes.delete())
            connection.execute(claim_codes.insert().values(**before))  # as an older backup has it
            app.extensions["broodshelf"].witness.end_again(connection)

    assert begin(browser(), code).status_code == 410


@pytest.mark.parametrize("signup", ["closed", "invited"])
def test_without_a_code_nobody_begins_unless_it_is_open(browser, open_to, signup):
    open_to(signup)
    refused = begin(browser(), None)

    assert (refused.status_code, refused.json["code"]) == (403, "signup_closed")
    assert browser().post("/api/claim/look", {"code": ""}).json == {"begin": None}


def test_where_it_is_open_an_address_begins_five_households_a_day(app, browser, clock, open_to):
    open_to("open")
    assert browser().post("/api/claim/look", {"code": ""}).json == {"begin": "Begin a shelf of your own"}
    answers = [begin(browser(), None) for _ in range(6)]
    elsewhere = begin(browser("127.0.0.9"), None)
    clock.now_ms += DAY_MS

    assert [answer.status_code for answer in answers] == [200] * 5 + [429]
    assert len({answer.json["household_id"] for answer in answers[:5]}) == 5
    assert elsewhere.status_code == 200
    assert begin(browser(), None).status_code == 200


def test_asking_whether_a_code_is_needed_uses_up_no_tries(browser, open_to):
    assert {browser().post("/api/claim/look", {"code": ""}).status_code for _ in range(40)} == {200}
