"""The server's push key: made once, private, never replaced in silence."""

from __future__ import annotations

import threading
from base64 import urlsafe_b64decode

import pytest

from broodshelf.errors import BadSetting
from broodshelf.nudges.channels.push.vapid import FILE_NAME, load_or_make


def test_a_key_is_made_once_and_only_its_owner_can_read_it(tmp_path):
    first, second = load_or_make(tmp_path, in_use=False), load_or_make(tmp_path, in_use=True)

    assert first.public == second.public
    assert (tmp_path / FILE_NAME).stat().st_mode & 0o777 == 0o600
    assert [path.name for path in tmp_path.iterdir()] == [FILE_NAME]
    assert len(urlsafe_b64decode(first.public + "=")) == 65
    assert first.key_id == first.public[:16]


def test_processes_that_start_at_once_use_one_key(tmp_path):
    found: list[str] = []
    gate = threading.Barrier(8)

    def start() -> None:
        gate.wait()
        found.append(load_or_make(tmp_path, in_use=False).public)

    threads = [threading.Thread(target=start) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()

    assert len(found) == 8
    assert len(set(found)) == 1


def test_a_key_that_is_missing_while_phones_listen_stops_the_start(tmp_path):
    with pytest.raises(BadSetting, match="missing"):
        load_or_make(tmp_path, in_use=True)
    assert list(tmp_path.iterdir()) == []


def test_a_key_that_others_can_read_stops_the_start(tmp_path):
    load_or_make(tmp_path, in_use=False)
    (tmp_path / FILE_NAME).chmod(0o640)

    with pytest.raises(BadSetting, match="chmod 600"):
        load_or_make(tmp_path, in_use=True)


def test_a_file_that_holds_no_key_is_kept_aside_and_replaced_loudly(tmp_path, caplog):
    (tmp_path / FILE_NAME).write_text("not a key")
    (tmp_path / FILE_NAME).chmod(0o600)
    made = load_or_make(tmp_path, in_use=True)

    assert load_or_make(tmp_path, in_use=True).public == made.public
    assert (tmp_path / f"{FILE_NAME}.damaged-1").read_text() == "not a key"
    assert "phones hear nothing until the app is opened" in caplog.text
