"""An update backs up, migrates and looks; what fails leaves the database as it was. On both databases."""

from __future__ import annotations

import os
import re
import stat
import subprocess
import textwrap
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest
from alembic import command
from sqlalchemy import text
from tests.support.filled import fill_every_table, read_tables
from tests.support.forked_server import forker
from tests.support.templates import SQLITE_FILE, engine_of

from broodshelf import cli, migrations
from broodshelf.cli import main
from broodshelf.keeping.verifying import verify
from broodshelf.records import database

ROOT = Path(__file__).parents[2]
OLD = "0009"
HOUSEHOLD = "00000000-0000-7000-8000-00000000000a"


@pytest.fixture(params=["sqlite", "postgresql"])
def old(request, tmp_path, monkeypatch):
    """The URL of a database of an earlier version with a row in every table."""
    data = tmp_path / "data"
    data.mkdir(mode=0o700)
    url = (
        f"sqlite:///{data / SQLITE_FILE}"
        if request.param == "sqlite"
        else request.getfixturevalue("postgresql_cluster").new_database()
    )
    with engine_of(url) as engine:
        command.upgrade(migrations.config(engine), OLD)
        with database.writing() as connection:
            fill_every_table(connection, read_tables(connection), HOUSEHOLD, "Yarrow")
            connection.execute(
                text("DELETE FROM push_subscriptions")
            )  # a start would want the key of its phones
    monkeypatch.setenv("BROODSHELF_DATA", str(data))
    monkeypatch.setenv("BROODSHELF_DATABASE_URL", url)
    return url


def schema(url: str) -> str:
    with engine_of(url), database.reading() as connection:
        return str(connection.scalar(text("SELECT version_num FROM alembic_version")))


def test_before_anything_is_migrated_a_backup_is_made_and_a_second_time_none(old, tmp_path, capsys):
    assert main(["migrate"]) == 0
    said = capsys.readouterr().out
    kept = Path(re.search(r"is in (\S+\.tar\.gz)\.", said)[1])

    assert schema(old) > OLD
    assert "1 households, 1 records" in str(verify(kept))
    assert main(["migrate"]) == 0
    assert list((tmp_path / "data").glob("before-update-*")) == [kept]


@pytest.mark.parametrize("how", ["fails", "loses a row"])
def test_a_migration_that_goes_wrong_leaves_the_database_as_it_was(old, monkeypatch, capsys, how):
    upgrade = migrations.upgrade

    def wrong(engine):
        upgrade(engine)
        with engine.connect().execution_options(writes=True) as connection, connection.begin():
            connection.execute(text("DELETE FROM devices"))
        if how == "fails":
            raise RuntimeError

    monkeypatch.setattr(migrations, "upgrade", wrong)
    assert main(["migrate"]) == 2
    assert "it is as it was, at 0009" in capsys.readouterr().err
    assert schema(old) == OLD
    with engine_of(old), database.reading() as connection:
        assert connection.scalar(text("SELECT count(*) FROM devices")) == 1


def test_a_start_on_sqlite_makes_a_backup_before_it_migrates_and_on_postgresql_leaves_it_to_the_operator(
    old, tmp_path, monkeypatch, capsys
):
    schemas: list[str] = []

    def serve(*_):
        schemas.append(schema(old))
        return 0

    monkeypatch.setattr(cli, "serve", serve)
    assert main(["serve"]) == 0
    said = capsys.readouterr().out
    kept = list((tmp_path / "data").glob("before-update-*"))

    if old.startswith("sqlite"):
        assert schemas[0] > OLD
        assert [str(path) in said for path in kept] == [True]
        assert "1 households, 1 records" in str(verify(kept[0]))
        assert main(["serve"]) == 0
        assert list((tmp_path / "data").glob("before-update-*")) == kept
    else:
        assert (schemas, kept) == ([OLD], [])


@pytest.mark.parametrize("old", ["sqlite"], indirect=True)
def test_a_start_whose_migration_goes_wrong_begins_nothing_and_leaves_the_database_as_it_was(
    old, monkeypatch, capsys
):
    def wrong(engine):
        command.upgrade(migrations.config(engine), "0012")
        raise RuntimeError

    monkeypatch.setattr(migrations, "upgrade", wrong)
    monkeypatch.setattr(cli, "serve", lambda *_: pytest.fail("it was served"))
    assert main(["serve"]) == 2
    assert "it is as it was, at 0009" in capsys.readouterr().err
    assert schema(old) == OLD


VERSION = """#!/bin/sh
# stands for a version of the server: {name}
[ "$1" = --version ] && {{ echo "{name}"; exit; }}
echo "{name} $1" >> "{log}"
{fails}
echo "$@" > "{asked}"
exit "$(cat "{ended}")"
"""
"""The command itself runs in a fork, which starts ten times as fast as another Python."""


class Machine:
    """A machine with an installed server, for ``deploy/update``: what was called, in order, is in ``log``."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.log = folder / "opt", folder / "log"
        self._asked, self._ended = folder / "asked", folder / "ended"
        self._said = folder / "said"

    def __enter__(self) -> Machine:
        for pipe in (self._asked, self._ended):
            os.mkfifo(pipe)
        self.install(self.folder, "old")
        self._running = threading.Thread(target=self._run, daemon=True)
        self._running.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._asked.write_text("")
        self._running.join()

    def _run(self) -> None:
        """Run each command that a version is given; until none is."""
        while asked := self._asked.read_text().split():
            command = forker().fork("broodshelf.cli", asked, os.environ, self._said)
            self._ended.write_text(str(command.wait(300)))

    def _version(self, name: str, fails: str) -> str:
        return VERSION.format(name=name, log=self.log, fails=fails, asked=self._asked, ended=self._ended)

    def install(self, folder: Path, name: str, fails: str = "") -> None:
        program = folder / "bin" / "broodshelf"
        program.parent.mkdir(parents=True)
        program.write_text(self._version(name, fails))
        program.chmod(0o755)

    def update(self, *arguments: str, fails: str = "") -> subprocess.CompletedProcess[str]:
        installer = self.folder.parent / "installer"
        new = self._version("new", fails)
        installer.write_text(
            f"#!/bin/sh\nmkdir -p $1/bin\ncat > $1/bin/broodshelf <<'END'\n{new}END\nchmod +x $1/bin/broodshelf\n"
        )
        installer.chmod(installer.stat().st_mode | stat.S_IXUSR)
        environment = {
            **os.environ, "INSTALL": str(installer), "SETTINGS": "/dev/null/none",
            "STOP": f"echo stop >> {self.log}", "START": f"echo start >> {self.log}",
        }  # fmt: skip
        return subprocess.run(
            [str(ROOT / "deploy/update"), *arguments, str(self.folder)],
            env=environment, capture_output=True, text=True, timeout=300, check=False,
        )  # fmt: skip

    def told(self, done: subprocess.CompletedProcess[str]) -> str:
        """What was said, by the command and by the versions."""
        return done.stderr + (self._said.read_text() if self._said.exists() else "")

    def calls(self) -> list[str]:
        return self.log.read_text().split("\n")[:-1]

    @property
    def version(self) -> str:
        done = subprocess.run(
            [str(self.folder / "bin/broodshelf"), "--version"], capture_output=True, text=True, check=True
        )
        return done.stdout.strip()


@pytest.fixture
def machine(tmp_path) -> Iterator[Machine]:
    with Machine(tmp_path) as made:
        yield made


def test_the_command_that_updates_backs_up_migrates_and_can_go_back(old, machine):
    done = machine.update()
    assert done.returncode == 0, machine.told(done)
    assert machine.calls() == ["stop", "old backup", "old backup", "new migrate", "start"]
    assert machine.version == "new"
    assert schema(old) > OLD
    with engine_of(old), database.writing() as connection:
        connection.execute(text("DELETE FROM records"))  # what a later version may have done
    back = machine.update("--back")

    assert back.returncode == 0, machine.told(back)
    assert machine.calls()[5:] == ["new backup", "stop", "old restore", "start"]
    assert machine.version == "old"
    with engine_of(old), database.reading() as connection:
        assert connection.scalar(text("SELECT count(*) FROM records")) == 1


def test_an_update_whose_migration_fails_has_changed_nothing_and_starts_the_old_version(old, machine):
    done = machine.update(fails=textwrap.dedent('[ "$1" = migrate ] && exit 2'))

    assert done.returncode == 1
    assert "are back" in done.stderr
    assert machine.calls()[-2:] == ["new migrate", "start"]
    assert machine.version == "old"
    assert schema(old) == OLD
