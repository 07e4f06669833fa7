"""``broodshelf household``: the list, and invitations as links and as a sheet. On both databases."""

from __future__ import annotations

import json
import re

import pytest
from tests.support.house import House

from broodshelf.cli import main
from broodshelf.commands import household_list
from broodshelf.model.gauges import DAY_MS
from broodshelf.people.households import Founding, claim, found_household
from broodshelf.people.sizes import cost_of_a_year
from broodshelf.records.database import reading, writing


@pytest.fixture(autouse=True)
def settings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("BROODSHELF_SIGNUP", "invited")
    monkeypatch.setenv("BROODSHELF_PUBLIC_URL", "https://shelf.example.org")


def links_in(text: str) -> list[str]:
    return re.findall(r"https://shelf\.example\.org/#/claim/([A-Z0-9-]{19})\b", text)


def test_invitations_are_printed_once_and_each_opens_a_household(house: House, capsys):
    assert main(["household", "invite", "--count", "3", "--days", "5"]) == 0
    said = capsys.readouterr().out
    codes = links_in(said)

    assert len(set(codes)) == 3
    assert "within 5 days" in said
    with writing() as connection:
        claim(connection, codes[0], Founding("Ada", "Attic\x1b[2J", "UTC"), house.now_ms)
    assert main(["household", "list"]) == 0
    listed = capsys.readouterr().out
    assert "Invitations: 2 open, 1 used, 0 expired." in listed
    assert "\x1b" not in listed
    assert re.search(rf"^Shelf +{house.household_id} +1 +– +2 +0 ", listed, re.M)
    assert re.search(r"^Attic\[2J +[0-9a-f-]{36} +1 ", listed, re.M)
    assert not links_in(listed)

    assert main(["household", "invite", "--take-back"]) == 0
    assert "2 open invitations were taken back" in capsys.readouterr().out


def test_the_list_says_when_a_phone_was_last_heard_and_counts_no_plan_and_nothing_gone(house: House, capsys):
    phone = house.phone()
    house.now_ms += 3_600_000
    colony, gone = house.new_id(), house.new_id()
    for record_id in (colony, gone):
        phone.write("colony", {"name": "Amber"}, record_id)
    phone.write("colony", {"gone": True}, gone)
    answer = json.loads(house.post(phone, json.dumps(phone.request()).encode()))
    assert {each["verdict"] for each in answer["answers"]} == {"applied"}
    main(["household", "list"])

    # the household, its keeper and one colony; the plan of the colony is the server's
    assert re.search(r"2026-05-01 1[23]:00 +3 +0 +\d", capsys.readouterr().out)


def test_the_list_goes_by_counts_that_are_kept_and_counts_anew_what_is_older_than_a_month(
    house: House, monkeypatch, capsys
):
    counted: list[list[str]] = []
    really = household_list.recount

    def recount(connection, photos, household_ids, now_ms):
        counted.append(list(household_ids))
        return really(connection, photos, household_ids, now_ms)

    monkeypatch.setattr(household_list, "recount", recount)
    monkeypatch.setattr(household_list, "system_clock", lambda: house.now_ms)
    assert main(["household", "list"]) == 0
    assert main(["household", "list"]) == 0
    assert counted == [[house.household_id]]
    phone = house.phone()
    phone.write("colony", {"name": "Amber"})
    house.post(phone, json.dumps(phone.request()).encode())
    capsys.readouterr()
    assert main(["household", "list"]) == 0
    assert re.search(rf"^Shelf +{house.household_id} .* 3 +0 ", capsys.readouterr().out, re.M)
    assert len(counted) == 1

    house.now_ms += 32 * DAY_MS
    assert main(["household", "list"]) == 0
    assert counted == [[house.household_id]] * 2


def test_what_a_year_costs_is_reckoned_from_some_of_many_households(house: House):
    with writing() as connection:
        others = [
            found_household(connection, "Ada", f"Other {n}", "UTC", house.now_ms + n)[0] for n in range(1, 6)
        ]
    phone = house.phone()
    phone.write("colony", {"name": "Amber"})
    house.post(phone, json.dumps(phone.request()).encode())
    with reading() as connection:
        whole = cost_of_a_year(connection, house.now_ms)
        some = cost_of_a_year(connection, house.now_ms, most=2)

    assert (whole.operations, whole.households, whole.looked_at, whole.of) == (1, 1, 6, 6)
    # the first of each three: of six households two are looked at, and one of these has something
    assert (some.operations, some.households, some.looked_at, some.of) == (3, 3, 2, 6)
    assert some.kib_a_household <= whole.kib_a_household
    assert len(others) == 5


def test_a_sheet_holds_a_code_and_its_qr_code_for_each_and_is_its_owners_only(house: House, tmp_path, capsys):
    sheet = tmp_path / "sheets" / "invitations.html"
    assert main(["household", "invite", "--count", "9", "--sheet", str(sheet)]) == 0
    said, page = capsys.readouterr().out, sheet.read_text("utf-8")
    codes = re.findall(r'class="code">([A-Z0-9-]{19})<', page)

    assert "9 invitations are in" in said
    assert not links_in(said)
    assert len(set(codes)) == 9
    assert page.count("<svg") == 9
    assert "Good through Thu, May 14." in page
    assert sheet.stat().st_mode & 0o777 == 0o600
    with writing() as connection:
        household_id, _ = claim(connection, codes[-1], Founding("Ada", "Attic", "UTC"), house.now_ms)
    assert household_id != house.household_id


def test_where_nobody_may_begin_and_for_numbers_that_are_none_nothing_is_made(
    house: House, monkeypatch, capsys
):
    for more in (["--count", "0"], ["--count", "501"], ["--days", "366"]):
        assert main(["household", "invite", *more]) == 2
        assert "give a whole number from 1 to" in capsys.readouterr().err
    monkeypatch.setenv("BROODSHELF_SIGNUP", "closed")
    assert main(["household", "invite"]) == 2
    assert "set it to invited" in capsys.readouterr().err
    main(["household", "list"])
    assert "0 open" in capsys.readouterr().out
