"""What a push service took just before a process died is not sent again."""

from __future__ import annotations

import os

import pytest
from tests.nudges.push_service import PushService
from tests.nudges.support import BrowserKeys, Shelf, real_channels

from broodshelf.nudges.outcomes import marks
from broodshelf.nudges.sending.queue import LEASE_MS
from broodshelf.records.home import taken_files
from broodshelf.records.home.taken_files import FOLDER, KEPT_MS, TakenFiles


def test_every_process_reads_what_any_of_them_noted(tmp_path):
    one, two = TakenFiles(tmp_path), TakenFiles(tmp_path)
    one.taken("a")
    two.taken("b")

    assert one.among(["a", "b", "c"]) == two.among(["a", "b", "c"]) == {"a", "b"}
    assert one.among([]) == set()
    assert all(path.stat().st_mode & 0o777 == 0o600 for path in (tmp_path / FOLDER).iterdir())


def test_files_that_nobody_wrote_to_for_a_day_are_forgotten(tmp_path):
    journal = TakenFiles(tmp_path)
    journal.taken("old")
    journal.close()
    [path] = (tmp_path / FOLDER).iterdir()
    os.utime(path, (1000, 1000))
    journal.taken("new")
    journal.tidy(1_000_000 + KEPT_MS + 1)

    assert journal.among(["old", "new"]) == {"new"}


def test_a_journal_that_could_not_begin_its_next_file_writes_into_nobody_elses(tmp_path, monkeypatch):
    monkeypatch.setattr(taken_files, "LINES_PER_FILE", 1)
    journal = TakenFiles(tmp_path / "data")
    journal.taken("first")
    (tmp_path / "data" / FOLDER).rename(tmp_path / "away")
    with pytest.raises(FileNotFoundError):
        journal.taken("lost")
    with (tmp_path / "database").open("wb"):  # gets the first number that is free
        (tmp_path / "away").rename(tmp_path / "data" / FOLDER)
        journal.taken("second")

    assert (tmp_path / "database").read_bytes() == b""
    assert journal.among(["first", "second"]) == {"first", "second"}


def test_a_message_that_was_taken_but_not_marked_is_marked_by_whoever_takes_it_over(
    shelf: Shelf, monkeypatch: pytest.MonkeyPatch, tmp_path
):
    """The database goes away between the service's answer and our mark."""
    with PushService() as service:
        mira = shelf.person("Mira", listens=False)
        shelf.listen(mira, service.url("/ok"), BrowserKeys())
        shelf.colony(mira)
        shelf.at("2026-05-04T18:30")
        nudger = shelf.new_nudger(real_channels(tmp_path))
        with monkeypatch.context() as patch:

            def away(*_args: object) -> bool:
                raise ConnectionError("the database is away")

            patch.setattr(marks, "mark_sent", away)
            nudger.tick(shelf.now_ms)
            nudger.finish()
        assert shelf.delivery_states() == ["waiting"]
        nudger.tick(shelf.now_ms + LEASE_MS + 30_000)
        nudger.finish()
        nudger.close()

        assert shelf.delivery_states() == ["sent"]
        assert len(service.taken) == 1
