"""A private PostgreSQL server on a unix socket, made for one test run and removed after it."""

from __future__ import annotations

import fcntl
import itertools
import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

import psycopg
from tests.support.in_memory import in_memory
from tests.support.once_a_run import alone


def _binaries() -> Path:
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb")) or (
        [Path(which)] if (which := shutil.which("initdb")) else []
    )
    if not found:
        raise RuntimeError(
            "PostgreSQL is not installed; ./deploy/test installs it (Debian package postgresql)."
        )
    return found[-1].parent


class Cluster:
    """A running server in ``folder``; ``new_database()`` gives the URL of an empty database, or of a copy.

    ``templates`` is a folder in which processes say which of its databases are there to be copied.
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.templates = folder / "templates"
        self._numbers = itertools.count(1)

    def new_database(self, template_url: str | None = None) -> str:
        """Create a database that an ordinary role owns and return its SQLAlchemy URL.

        It is empty, or a copy of one that nobody is connected to.
        """
        name = f"shelf{os.getpid()}_{next(self._numbers)}"  # other processes make some here, too
        with psycopg.connect(
            host=str(self.folder), user="tests", dbname="postgres", autocommit=True
        ) as connection:
            template = template_url.partition("@/")[2].partition("?")[0] if template_url else "template1"
            # without fsync a copy of the files costs two thirds of one through the log, the default from 15 on
            strategy = "STRATEGY file_copy" if connection.info.server_version >= 150_000 else ""
            connection.execute(f"CREATE DATABASE {name} OWNER shelf TEMPLATE {template} {strategy}")
        return f"postgresql+psycopg://shelf@/{name}?host={self.folder}"


@contextmanager
def shared_cluster(run: Path) -> Iterator[Cluster]:
    """Start the server of the run that lies in ``run``, unless another of its processes did; the last one ends it.

    Who uses it holds a lock, which also a killed process lets go of.
    """
    with (run / "postgresql.users").open("a") as users:
        where = run / "postgresql.folder"
        with alone(run / "postgresql.lock"):
            if not where.exists():
                where.write_text(str(_start()))
            fcntl.flock(users, fcntl.LOCK_SH)
        folder = Path(where.read_text())
        try:
            yield Cluster(folder)
        finally:
            with alone(run / "postgresql.lock"):
                if _last(users.fileno()):
                    where.unlink()
                    _stop(folder)


def _last(users: int) -> bool:
    """Say whether nobody else holds the lock; let go of it."""
    fcntl.flock(users, fcntl.LOCK_UN)
    try:
        fcntl.flock(users, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    return True


@contextmanager
def durable_cluster(options: str = "") -> Iterator[Cluster]:
    """Start a server of its own that commits to the disk, as a keeper's does; most tests have no use for that.

    ``options``: settings besides, ``-c name=value``.
    """
    folder = _start("-c fsync=on", options)
    try:
        yield Cluster(folder)
    finally:
        _stop(folder)


HASTY: Final = "-c fsync=off -c synchronous_commit=off -c full_page_writes=off"


def _start(durability: str = HASTY, more: str = "") -> Path:
    """Make a server and start it; return its folder."""
    # the socket's path must be short and readable by the server's own user
    folder = Path(tempfile.mkdtemp(prefix="bs-pg-", dir=in_memory() if durability == HASTY else None))
    if os.geteuid() == 0:  # PostgreSQL refuses to run as root
        user = pwd.getpwnam("postgres")
        os.chown(folder, user.pw_uid, user.pw_gid)
    (folder / "templates").mkdir()
    binaries, data = _binaries(), str(folder / "data")
    _run(
        folder, str(binaries / "initdb"), "-D", data, "-U", "tests", "--auth=trust", "-E", "UTF8", "--no-sync"
    )
    options = (
        f"-k {folder} -c listen_addresses='' -c max_connections=200"
        f" {durability} -c autovacuum=off"
        f" -c jit=off {more}"  # compiling a statement costs more than running it over a test's few rows
    )
    _run(
        folder, str(binaries / "pg_ctl"), "-D", data, "-o", options, "-w", "-l", str(folder / "log"), "start"
    )
    with psycopg.connect(host=str(folder), user="tests", dbname="postgres", autocommit=True) as connection:
        connection.execute("CREATE ROLE shelf LOGIN")  # no superuser: row-level security holds it, too
    return folder


def _stop(folder: Path) -> None:
    _run(folder, str(_binaries() / "pg_ctl"), "-D", str(folder / "data"), "-m", "immediate", "stop")
    shutil.rmtree(folder, ignore_errors=True)


def _run(folder: Path, *command: str) -> None:
    """Run a command of the server as the user that it belongs to."""
    as_user: list[str] = []
    if os.geteuid() == 0:
        user = pwd.getpwnam("postgres")
        as_user = ["setpriv", f"--reuid={user.pw_uid}", f"--regid={user.pw_gid}", "--clear-groups"]
    starts = command[-1] == "start"  # the server would inherit a pipe and keep it open for ever
    done = subprocess.run(
        [*as_user, *command],
        cwd=folder,
        stdout=subprocess.DEVNULL if starts else subprocess.PIPE,
        stderr=subprocess.DEVNULL if starts else subprocess.STDOUT,
        text=True,
    )
    if done.returncode:
        raise RuntimeError(f"{command[0]} failed ({done.returncode}): {done.stdout}")
