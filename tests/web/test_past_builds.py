"""A page that stayed open over an update gets the files of its own build, for a month."""

from __future__ import annotations

import time

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.home.folder import FolderBuilds
from broodshelf.web.past_builds import PastBuilds
from broodshelf.web.shell import Shell, find_folder


def test_files_of_an_earlier_build_are_served_for_thirty_days(tmp_path, clock):
    builds = PastBuilds(FolderBuilds(tmp_path))
    old, new = (Shell(find_folder(), {"catalogue.json": words}) for words in (b"{}", b'{"more": 1}'))
    builds.keep(old, clock())

    builds.keep(new, clock() + 29 * DAY_MS)
    assert builds.find(old.build, "main.js") == old.files["main.js"]
    assert builds.find(old.build, "catalogue.json").body == b"{}"

    builds.keep(new, clock() + 31 * DAY_MS)
    assert builds.find(old.build, "main.js") is None
    assert builds.find(new.build, "catalogue.json").body == b'{"more": 1}'


def test_a_build_has_the_same_archive_whenever_and_in_whatever_order_it_is_made(tmp_path, monkeypatch):
    kept = []
    for seconds, order in ((1_777_636_800, 1), (1_787_636_800, -1)):
        monkeypatch.setattr(time, "time", lambda now=seconds: now)
        files = {"a.json": b"1", "b.json": b"2"}
        shell = Shell(find_folder(), dict([*files.items()][::order]))
        PastBuilds(FolderBuilds(tmp_path / str(order))).keep(shell, seconds * 1000)
        kept.append((tmp_path / str(order) / f"{shell.build}.zip").read_bytes())

    assert kept[0] == kept[1]


def test_an_earlier_build_is_answered_over_http(app, keeper, clock):
    old = Shell(find_folder(), {"catalogue.json": b"{}"})
    app.extensions["broodshelf"].past_builds.keep(old, clock())

    answer = keeper.get(f"/static/{old.build}/catalogue.json")

    assert (answer.status_code, answer.data) == (200, b"{}")
    assert "immutable" in answer.headers["Cache-Control"]


def test_names_that_leave_the_folder_or_a_damaged_archive_find_nothing(tmp_path, clock):
    builds = PastBuilds(FolderBuilds(tmp_path / "builds"))
    shell = Shell(find_folder(), {})
    builds.keep(shell, clock())
    (tmp_path / "secret").write_text("x")
    (tmp_path / "builds" / f"{'0' * 16}.zip").write_bytes(b"not a zip")

    assert builds.find("../secret", "x") is None
    assert builds.find(shell.build, "../../secret") is None
    assert builds.find("0" * 16, "main.js") is None
