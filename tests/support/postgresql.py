"""A private PostgreSQL server on a unix socket, made for one test run and removed after it."""

from __future__ import annotations

import itertools
import os
import pwd
import shutil
import subprocess
import tempfile
from pathlib import Path
from types import TracebackType

import psycopg


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
    """Start with ``with``; ``new_database()`` gives the URL of an empty database, or of a copy."""

    def __init__(self, _unused: Path) -> None:
        # the socket's path must be short and readable by the server's own user
        self.folder = Path(tempfile.mkdtemp(prefix="bs-pg-"))
        self.data = self.folder / "data"
        self._numbers = itertools.count(1)
        self._as: list[str] = []
        if os.geteuid() == 0:  # PostgreSQL refuses to run as root
            user = pwd.getpwnam("postgres")
            os.chown(self.folder, user.pw_uid, user.pw_gid)
            self._as = ["setpriv", f"--reuid={user.pw_uid}", f"--regid={user.pw_gid}", "--clear-groups"]

    def __enter__(self) -> Cluster:
        binaries = _binaries()
        self._run(str(binaries / "initdb"), "-D", str(self.data), "-U", "tests", "--auth=trust", "-E", "UTF8")
        options = (
            f"-k {self.folder} -c listen_addresses='' -c max_connections=50"
            " -c fsync=off -c synchronous_commit=off -c full_page_writes=off -c autovacuum=off"
            " -c jit=off"  # compiling a statement costs more than running it over a test's few rows
        )
        self._run(
            str(binaries / "pg_ctl"),
            "-D",
            str(self.data),
            "-o",
            options,
            "-w",
            "-l",
            str(self.folder / "log"),
            "start",
        )
        with psycopg.connect(
            host=str(self.folder), user="tests", dbname="postgres", autocommit=True
        ) as connection:
            connection.execute("CREATE ROLE shelf LOGIN")  # no superuser: row-level security holds it, too
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self._run(str(_binaries() / "pg_ctl"), "-D", str(self.data), "-m", "immediate", "stop")
        shutil.rmtree(self.folder, ignore_errors=True)

    def new_database(self, template_url: str | None = None) -> str:
        """Create a database that an ordinary role owns and return its SQLAlchemy URL.

        It is empty, or a copy of one that nobody is connected to.
        """
        name = f"shelf{next(self._numbers)}"
        with psycopg.connect(
            host=str(self.folder), user="tests", dbname="postgres", autocommit=True
        ) as connection:
            template = template_url.partition("@/")[2].partition("?")[0] if template_url else "template1"
            # without fsync a copy of the files costs two thirds of one through the log, the default from 15 on
            strategy = "STRATEGY file_copy" if connection.info.server_version >= 150_000 else ""
            connection.execute(f"CREATE DATABASE {name} OWNER shelf TEMPLATE {template} {strategy}")
        return f"postgresql+psycopg://shelf@/{name}?host={self.folder}"

    def _run(self, *command: str) -> None:
        done = (
            subprocess.run(
                [*self._as, *command],
                cwd=self.folder,
                stdout=subprocess.PIPE,
                stderr=subprocess.STDOUT,
                text=True,
            )
            if command[-1] != "start"
            else subprocess.run(
                # the server inherits the pipe and would keep it open for ever
                [*self._as, *command],
                cwd=self.folder,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                text=True,
            )
        )
        if done.returncode:
            raise RuntimeError(f"{command[0]} failed ({done.returncode}): {done.stdout}")
