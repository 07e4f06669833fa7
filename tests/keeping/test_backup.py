"""Backup and restore: consistent while running, a new epoch after, and phones give back what the backup lacked."""

from __future__ import annotations

import json
import shutil
import sqlite3
import stat
import tarfile

import pytest
from tests.support.households import HAPPENED, NOON_MS, Requester

from broodshelf.app import create_app
from broodshelf.cli import main
from broodshelf.errors import CannotKeep
from broodshelf.keeping.backup import backup, restore
from broodshelf.people.households import found_household
from broodshelf.records.database import db, writing
from broodshelf.records.store import Ledger, read_record
from broodshelf.settings import from_environment


@pytest.fixture
def settings(tmp_path):
    return from_environment({"BROODSHELF_DATA": str(tmp_path / "data")})


class Running:
    """A server's app over a data folder; ``stop`` lets go of the database as a stopped process does."""

    def __init__(self, settings) -> None:
        self.app = create_app(settings, lambda: NOON_MS)
        self.marks = self.app.extensions["broodshelf"].witness.marks
        self.context = self.app.app_context()
        self.context.push()

    def stop(self) -> None:
        db.engine.dispose()
        self.context.pop()


@pytest.fixture
def household(settings, templates):
    """A server with a household, and a phone of it."""
    templates.of_an_app("sqlite", settings.data)
    server = Running(settings)
    with writing() as connection:
        household_id, _person = found_household(connection, "Mira", "Shelf", "UTC", NOON_MS)
    return server, Requester(household_id)


def note(phone, colony_id, text):
    return phone.write("note", {"colony_id": colony_id, "happened_at": HAPPENED, "text": text})


def sync(server, phone):
    answer = phone.sync()
    with writing() as connection:
        ledger = Ledger(connection, phone.household_id)
    server.marks.note(phone.household_id, ledger.rev, ledger.epoch)
    return answer


def test_after_a_restore_phones_start_a_new_epoch_and_give_back_what_the_backup_lacked(
    settings, household, tmp_path
):
    server, phone = household
    colony = phone.write("colony", {"name": "Amber"})["id"]
    sync(server, phone)
    backup(settings, tmp_path / "kept.tar.gz")
    late = note(phone, colony, "after the backup")
    sync(server, phone)
    before = (phone.epoch, int(phone.cursor.split(".")[0]))
    server.stop()

    restore(settings, tmp_path / "kept.tar.gz")
    server = Running(settings)
    with writing() as connection:
        assert read_record(connection, phone.household_id, late["id"]) is None
    phone.waiting.append(late)  # the journal of the last 30 days, sent again (docs/sync.md)
    answer = sync(server, phone)

    assert answer["epoch"] != before[0]
    assert int(answer["cursor"].split(".")[0]) > before[1]
    assert phone.verdicts[late["op_id"]]["verdict"] == "applied"
    assert phone.values()[late["id"]]["text"] == "after the backup"
    server.stop()


def test_a_database_file_that_was_copied_back_by_hand_is_noticed_at_start(settings, household, tmp_path):
    server, phone = household
    colony = phone.write("colony", {"name": "Amber"})["id"]
    sync(server, phone)
    server.stop()
    path = settings.data / "broodshelf.sqlite3"
    shutil.copy(path, tmp_path / "copy")
    server = Running(settings)
    note(phone, colony, "later")
    sync(server, phone)
    epoch = phone.epoch
    server.stop()
    shutil.copy(tmp_path / "copy", path)

    server = Running(settings)
    assert sync(server, phone)["epoch"] != epoch
    again = phone.epoch
    server.stop()
    server = Running(settings)
    assert sync(server, phone)["epoch"] == again  # an ordinary start changes nothing
    server.stop()


def test_what_was_revoked_after_the_backup_stays_revoked(settings, household, tmp_path):
    from broodshelf.errors import SignedOut
    from broodshelf.people.devices import Owner, Phone, actor_of, sign_in

    server, phone = household
    values = {"name": "G", "colony_ids": [], "starts_on": "2026-05-01", "ends_on": "2026-05-02"}
    given = phone.write("pass", values)["id"]
    sync(server, phone)
    with writing() as connection:
        owner = Owner(phone.household_id, phone.person_id)
        session = sign_in(connection, Phone(phone.device_id, "lost"), owner, NOON_MS)
    backup(settings, tmp_path / "kept.tar.gz")
    revocations = server.app.extensions["broodshelf"].witness.revocations
    revocations.add("device", phone.household_id, phone.device_id, NOON_MS)
    revocations.add("pass", phone.household_id, given, NOON_MS)
    server.stop()
    with (settings.data / "revoked.jsonl").open("a") as file:
        file.write('{"what": "dev')  # a crash while writing

    restore(settings, tmp_path / "kept.tar.gz")
    server = Running(settings)
    with writing() as connection:
        assert read_record(connection, phone.household_id, given).values["revoked_at_ms"] == NOON_MS
        with pytest.raises(SignedOut) as caught:
            actor_of(connection, session.token, NOON_MS)
    assert caught.value.problem_code == "device_revoked"
    server.stop()


def test_a_backup_taken_while_a_write_is_open_holds_the_committed_state_and_is_private(
    settings, household, tmp_path
):
    server, phone = household
    phone.write("colony", {"name": "Amber"})
    sync(server, phone)
    with writing() as connection:
        ledger = Ledger(connection, phone.household_id)
        ledger.put(phone.household_id, "household", {"name": "half"}, now_ms=NOON_MS)
        ledger.flush()
        backup(settings, tmp_path / "kept.tar.gz")
        connection.rollback()
    server.stop()
    with tarfile.open(tmp_path / "kept.tar.gz") as archive:
        (tmp_path / "database").write_bytes(archive.extractfile("database").read())
    copy = sqlite3.connect(tmp_path / "database")
    fields = {kind: json.loads(text) for kind, text in copy.execute("SELECT kind, fields FROM records")}
    copy.close()

    assert fields["household"]["name"] == "Shelf"
    assert fields["colony"]["name"] == "Amber"
    assert stat.S_IMODE((tmp_path / "kept.tar.gz").stat().st_mode) == 0o600


@pytest.mark.parametrize("content", [b"", b"not an archive", None], ids=["empty", "text", "cut off"])
def test_a_bad_archive_changes_nothing(settings, household, tmp_path, content):
    server, phone = household
    sync(server, phone)
    backup(settings, tmp_path / "kept.tar.gz")
    server.stop()
    whole = (tmp_path / "kept.tar.gz").read_bytes()
    (tmp_path / "bad").write_bytes(whole[: len(whole) // 2] if content is None else content)
    before = (settings.data / "broodshelf.sqlite3").read_bytes()

    with pytest.raises(CannotKeep):
        restore(settings, tmp_path / "bad")
    assert (settings.data / "broodshelf.sqlite3").read_bytes() == before


def test_a_restore_under_a_running_server_is_refused(settings, household, tmp_path):
    server, phone = household
    sync(server, phone)
    backup(settings, tmp_path / "kept.tar.gz")
    with pytest.raises(CannotKeep, match="running"):
        restore(settings, tmp_path / "kept.tar.gz")
    server.stop()


def test_the_two_commands_work_on_an_empty_server(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "one"))
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 2  # nothing there yet
    assert main(["demo"]) == 0
    assert main(["backup", str(tmp_path / "kept.tar.gz")]) == 0
    monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path / "two"))
    assert main(["restore", str(tmp_path / "kept.tar.gz")]) == 0
    assert "phones send what the backup lacks" in capsys.readouterr().out
    assert main(["pair"]) == 0
    assert "For Mira (invented):" in capsys.readouterr().out


def test_pictures_come_back_and_those_that_came_since_stay(settings, household, tmp_path):
    server, phone = household
    server.stop()
    folder = settings.data / "photos" / phone.household_id
    folder.mkdir(parents=True)
    (folder / "old.jpg").write_bytes(b"old")
    backup(settings, tmp_path / "kept.tar.gz")
    (folder / "old.jpg").unlink()
    (folder / "new.jpg").write_bytes(b"new")

    restore(settings, tmp_path / "kept.tar.gz")

    assert {file.name: file.read_bytes() for file in folder.iterdir()} == {
        "old.jpg": b"old",
        "new.jpg": b"new",
    }
