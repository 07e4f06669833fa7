"""A dumped database: is it whole, and how much is in it. The programs of PostgreSQL that read and write one."""

from __future__ import annotations

import hashlib
import os
import sqlite3
import subprocess
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Final

from sqlalchemy.engine import URL, make_url

from ..errors import CannotKeep, NothingToKeep
from ..languages import told
from ..records.apart import EVERY, SETTING
from ..records.home.taking_over import ASIDE


def check_database(dumped: Path, engine: str) -> dict[str, int]:
    """Return how many rows of ``households`` and ``records`` a dumped database holds, all of it having been read.

    Raises ``NothingToKeep`` for a damaged one.
    """
    try:
        return _count_dump(dumped) if engine == "postgresql" else _count_file(dumped)
    except sqlite3.DatabaseError as error:
        raise NothingToKeep(told("backup-database", why=str(error))) from error


def require_households(counts: Mapping[str, int]) -> None:
    """Raise ``CannotKeep`` for a dump without any household."""
    if not counts["households"]:
        raise CannotKeep(told("backup-empty"))


COUNTED: Final = ("households", "records")


def _count_file(dumped: Path) -> dict[str, int]:
    check = sqlite3.connect(dumped)
    try:
        found = check.execute("PRAGMA integrity_check").fetchone()
        if found != ("ok",):
            raise sqlite3.DatabaseError(found[0])
        return {name: check.execute(f"SELECT count(*) FROM {name}").fetchone()[0] for name in COUNTED}  # noqa: S608
    finally:
        check.close()


def _count_dump(dumped: Path) -> dict[str, int]:
    """Count the lines that ``pg_restore`` would copy; it reads and unpacks the whole archive for it."""
    counts = dict.fromkeys(COUNTED, 0)
    copying = ""
    with tempfile.TemporaryDirectory(dir=dumped.parent) as scratch:
        script = Path(scratch) / "script"
        run("pg_restore", "--data-only", f"--file={script}", str(dumped))
        with script.open(encoding="utf-8") as lines:
            for line in lines:
                if line == "\\.\n":
                    copying = ""
                elif copying:
                    counts[copying] = counts.get(copying, 0) + 1
                elif line.startswith("COPY public."):
                    copying = line.removeprefix("COPY public.").split()[0]
    return counts


_DROP_ALL: Final = f"""
DO $$ DECLARE name text; BEGIN
  FOR name IN SELECT tablename FROM pg_tables
    WHERE schemaname = 'public' AND tableowner = current_user AND tablename <> '{ASIDE}' LOOP
    EXECUTE format('DROP TABLE public.%I CASCADE', name);
  END LOOP;
END $$;
"""  # noqa: S608 - our own name
"""Also what a later version made, which a dump of an earlier one does not know and could not drop; but not the pictures
that a restore has set aside."""


def load_dump(dumped: Path, database: str) -> None:
    """Put a dump of PostgreSQL in the place of all tables of a database: all of it, or nothing where it fails.

    ``database``: its URL.
    """
    with tempfile.TemporaryDirectory(dir=dumped.parent) as scratch:
        drop, script = Path(scratch) / "drop", Path(scratch) / "script"
        drop.write_text(_DROP_ALL, "utf-8")
        run("pg_restore", "--no-owner", f"--file={script}", str(dumped))
        run(
            "psql", "--no-psqlrc", "--quiet", "--set=ON_ERROR_STOP=1", "--single-transaction",
            f"--file={drop}", f"--file={script}", database=database,
        )  # fmt: skip


def sha256_of(path: Path) -> str:
    """Return the hash of a file."""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _for_all_households() -> dict[str, str]:
    """Return the environment of PostgreSQL's own programs: row-level security shows them every household's rows."""
    options = f"{os.environ.get('PGOPTIONS', '')} -c {SETTING}={EVERY}".strip()
    return {**os.environ, "PGOPTIONS": options}


def _reaching(database: str) -> tuple[str, dict[str, str]]:
    """Return a database's URL for PostgreSQL's own programs, and what of it goes by their environment: the password.

    Everybody on a machine can read with what arguments a program was called.
    """
    url = make_url(database)
    password = url.password or url.query.get("password")
    bare = URL.create("postgresql", url.username, None, url.host, url.port, url.database, url.query)
    apart = {"PGPASSWORD": password} if isinstance(password, str) else {}
    return bare.difference_update_query(["password"]).render_as_string(), apart


def run(program: str, *words: str, database: str | None = None) -> None:
    """Run a program of PostgreSQL, with a database if its URL is given.

    Raises ``CannotKeep`` when the program is not there or fails.
    """
    environment = _for_all_households()
    if database is not None:
        reached, apart = _reaching(database)
        words, environment = (f"--dbname={reached}", *words), environment | apart
    try:
        done = subprocess.run((program, *words), capture_output=True, text=True, env=environment)  # noqa: S603 - our own words
    except FileNotFoundError:
        raise CannotKeep(told("backup-no-program", program=program)) from None
    if done.returncode:
        raise CannotKeep(told("backup-program-failed", program=program, why=done.stderr.strip()[-500:]))
