"""What keepers can read of their doors, and what the others of them are told at once. On both databases."""

from __future__ import annotations

import sqlite3

import pytest
from tests.people.support import apply, let_in, listen, make_pass, open_pass
from tests.support.households import NOON_MS

from broodshelf.app import create_nudger
from broodshelf.cli import main
from broodshelf.people import journal
from broodshelf.people.households import make_claim_code
from broodshelf.records.database import writing


@pytest.fixture
def nudger(app):
    made = create_nudger(app)
    yield made
    made.close()


@pytest.fixture
def colony(keeper) -> str:
    return apply(keeper, "colony", {"name": "Amber"})


def read(keeper) -> list[tuple[str, str | None, dict]]:
    return [(e["what"], e["by"], e["args"]) for e in keeper.get("/api/journal").json["entries"]]


def told(nudger, clock, notebook) -> set[tuple[str, str, str, str]]:
    """Whom the nudger told: where, title, text, tag."""
    nudger.tick(clock.now_ms)
    nudger.finish()
    found = {
        (endpoint.rpartition("/")[2], *(payload["notification"][k] for k in ("title", "body", "tag")))
        for endpoint, payload, _ in notebook.sent
    }
    notebook.take()
    return found


def test_the_journal_tells_who_opened_which_door_newest_first(browser, keeper, colony, clock):
    clock.now_ms += 1000
    anton = let_in(keeper, browser(), person_name="Anton")
    clock.now_ms += 1000
    pass_id, link = make_pass(keeper, [colony])
    clock.now_ms += 1000
    guest = open_pass(browser(), link)
    clock.now_ms += 1000
    keeper.post(f"/api/devices/{guest.me['device_id']}/revoke")
    clock.now_ms += 1000
    anton.post(f"/api/passes/{pass_id}/revoke")
    mira = keeper.me["person_id"]

    assert read(keeper) == [
        ("pass_ended", anton.me["person_id"], {"pass": "Grandpa"}),
        ("phone_removed", mira, {"phone": "a phone 3"}),
        ("pass_opened", guest.me["person_id"], {"phone": "a phone", "pass": "Grandpa"}),
        ("link_made", mira, {"pass": "Grandpa"}),
        ("new_phone", anton.me["person_id"], {"phone": "a phone"}),
        ("new_phone", mira, {"phone": "a phone"}),
    ]


def test_the_other_keepers_are_told_at_once_of_a_phone_a_link_and_an_opened_pass(
    browser, keeper, colony, clock, nudger, notebook
):
    anton = let_in(keeper, browser(), person_name="Anton")
    listen(keeper, "http://127.0.0.1:9/mira")
    listen(anton, "http://127.0.0.1:9/anton")
    assert told(nudger, clock, notebook) == set()
    jon = let_in(anton, browser(), person_name="Jon")
    new = told(nudger, clock, notebook)
    _, link = make_pass(keeper, [colony])
    made = told(nudger, clock, notebook)
    open_pass(browser(), link)
    opened = told(nudger, clock, notebook)

    assert jon.me["role"] == "keeper"
    assert {(where, title) for where, title, _, _ in new} == {
        ("mira", "A new phone was let in"),
        ("anton", "A new phone was let in"),
    }
    assert all("a phone, for Jon." in text and tag == "house" for _, _, text, tag in new)
    assert {(where, title) for where, title, _, _ in made} == {("anton", "A link for Grandpa was made")}
    assert {(where, title) for where, title, _, _ in opened} == {
        ("mira", "Grandpa: the pass was opened"),
        ("anton", "Grandpa: the pass was opened"),
    }
    assert told(nudger, clock, notebook) == set()


def test_nobody_of_another_household_reads_or_hears_it(browser, keeper, colony, clock, nudger, notebook):
    stranger = browser().claim("Ada")
    listen(stranger, "http://127.0.0.1:9/ada")
    _, link = make_pass(keeper, [colony])
    guest = open_pass(browser(), link)

    assert [what for what, _, _ in read(stranger)] == ["new_phone"]
    assert guest.get("/api/journal").status_code == 403
    assert told(nudger, clock, notebook) == set()


def test_wrong_codes_are_one_entry_a_day_with_their_number(browser, keeper, colony, clock):
    make_pass(keeper, [colony])
    guesser = browser("127.0.0.66")
    for _ in range(3):
        guesser.post("/api/passes/open", {"code": "BBBB-BBBB", "device": guesser.device()})
    clock.now_ms += 1000
    keeper.post("/api/pairings/approve", {"code": "BBBB-BBBB", "person_name": "x"})
    clock.now_ms += 25 * 3_600_000
    guesser.post("/api/passes/open", {"code": "BBBB-BBBB", "device": guesser.device()})

    assert [entry for entry in read(keeper) if entry[0] == "wrong_codes"] == [
        ("wrong_codes", None, {"where": "pass", "count": 1}),
        ("wrong_codes", keeper.me["person_id"], {"where": "pairing", "count": 1}),
        ("wrong_codes", None, {"where": "pass", "count": 3}),
    ]


def test_a_wrong_claim_code_is_told_where_a_way_back_is_open_and_nowhere_else(app, browser, keeper):
    guesser = browser("127.0.0.66")
    wrong = {"code": "BBBB-BBBB"}
    guesser.post("/api/claim/look", wrong)
    before = [what for what, _, _ in read(keeper)]
    keeper.clock.now_ms += 1000
    with app.app_context(), writing() as connection:
        make_claim_code(connection, NOON_MS, keeper.me["household_id"], keeper.me["person_id"])
    guesser.post("/api/claim/look", wrong)

    assert before == ["new_phone"]
    assert read(keeper)[0] == ("wrong_codes", None, {"where": "claim", "count": 1})


def test_the_journal_keeps_the_newest_and_has_words_for_everything_in_it(app, keeper, monkeypatch):
    monkeypatch.setattr(journal, "MOST", 3)
    doer = journal.Doer(keeper.me["household_id"])
    with app.app_context(), writing() as connection:
        for n in range(5):
            journal.note(connection, doer, "export", NOON_MS + n)
        with pytest.raises(ValueError, match="no words"):
            journal.note(connection, doer, "nonsense", NOON_MS)  # type: ignore[arg-type]

    entries = keeper.get("/api/journal").json["entries"]
    assert [(e["what"], e["at_ms"]) for e in entries] == [("export", NOON_MS + n) for n in (4, 3, 2)]


def test_an_export_and_a_restore_stand_in_it(tmp_path, monkeypatch):
    kept = str(tmp_path / "kept.tar.gz")
    monkeypatch.delenv("BROODSHELF_DATABASE_URL", raising=False)
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "data"))
    assert [main(each) for each in (["demo"], ["export", str(tmp_path / "out.json")], ["backup", kept])] == [
        0
    ] * 3
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "anew"))
    assert main(["restore", kept]) == 0

    with sqlite3.connect(tmp_path / "anew/broodshelf.sqlite3") as connection:
        rows = connection.execute("SELECT what FROM journal ORDER BY at_ms").fetchall()
    assert [what for (what,) in rows] == ["way_back", "export", "restore"]
