"""What the doctor looks at, one thing after the other."""

from __future__ import annotations

import os
import shutil
import smtplib
import ssl
from collections.abc import Iterator
from email.utils import parsedate_to_datetime
from pathlib import Path
from typing import Final

import requests
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from flask import Flask
from sqlalchemy import Connection, inspect, text
from sqlalchemy.exc import SQLAlchemyError

from .. import __version__, migrations
from ..errors import BadSetting
from ..languages import told
from ..nudges.channels.mail.channel import MailChannel
from ..nudges.channels.push import vapid
from ..nudges.channels.push.shared_key import NAME
from ..nudges.channels.push.subscriptions import anybody_listens, listen_with_other_key
from ..nudges.health.nudger import nudger_health
from ..people.households import count_households
from ..people.sizes import cost_of_a_year
from ..records import database
from ..records.data_folder import set_aside_before
from ..records.ended import Revocations
from ..records.epochs import Marks
from ..records.home.sealing import Seal
from ..records.home.shared import SharedNotes
from ..records.trouble import trouble_of
from ..settings import Settings
from . import certificate
from .findings import Finding, Level

LOW_DISK_BYTES: Final = 200 * 1024 * 1024
MOST_SKEW_S: Final = 30
"""A clock that is off by more spoils the times of nudges; VAPID (RFC 8292) allows hours."""


def examine(settings: Settings, now_ms: int) -> list[Finding]:
    """Return every finding. Reads only: no key, folder, table or row is made."""
    return [
        *_folder(settings),
        *_damage(settings),
        *_database(settings, now_ms),
        *_mail(settings),
        *_address(settings, now_ms),
    ]


def _folder(settings: Settings) -> Iterator[Finding]:
    data = settings.data
    if not data.is_dir():
        yield Finding("look", "data_folder", told("doctor-folder-missing", path=data))
        return
    if os.access(data, os.W_OK):
        yield Finding("good", "data_folder", told("doctor-folder-good", path=data))
    else:
        yield Finding("bad", "data_folder", told("doctor-folder-locked", path=data))
    free = shutil.disk_usage(data).free
    level: Level = "good" if free >= LOW_DISK_BYTES else "bad"
    yield Finding(level, "disk", told("doctor-disk", mib=free // (1024 * 1024)))


def _damage(settings: Settings) -> Iterator[Finding]:
    """Name each file beside the database that is damaged now, or that a start set aside because it was."""
    data = settings.data
    lines = Revocations(data / "revoked.jsonl").unreadable()
    if lines:
        words = told("doctor-revoked-unreadable", n=lines, path=data / "revoked.jsonl")
        yield Finding("bad", "revoked", words)
    marks = Marks(data / "marks")
    for path in sorted(marks.folder.glob("*.json")) if marks.folder.is_dir() else ():
        if marks.read(path.stem) is None:
            yield Finding("look", "marks", told("doctor-mark-unreadable", path=path))
    for path in set_aside_before(data) if data.is_dir() else ():
        words = told("doctor-was-set-aside", path=path)
        yield Finding("look", "set_aside", words)


def _database(settings: Settings, now_ms: int) -> Iterator[Finding]:
    if settings.database_url.startswith("sqlite:///") and not (
        settings.data.is_dir() and _file_is_there(settings)
    ):
        if Marks(settings.data / "marks").households():
            words = told("doctor-database-gone")
            yield Finding("bad", "database", words)
        else:
            yield Finding("look", "database", told("doctor-database-none"))
        return
    app = Flask("doctor")
    app.config["SQLALCHEMY_DATABASE_URI"] = settings.database_url
    database.prepare(app)
    with app.app_context():
        try:
            yield from _tables(settings, now_ms)
            yield from _role()
        except SQLAlchemyError as error:
            trouble = trouble_of(error)
            words = told("doctor-database-silent", error=type(error).__name__)
            if trouble is not None and trouble.problem_code == "database_damaged":
                words = told("doctor-database-damaged", path=settings.data)
            yield Finding("bad", "database", words)
        finally:
            database.db.engine.dispose()


def _file_is_there(settings: Settings) -> bool:
    return Path(settings.database_url.removeprefix("sqlite:///")).exists()


def _role() -> Iterator[Finding]:
    """PostgreSQL holds no superuser to row-level security, so the second lock between households would be open."""
    if database.db.engine.dialect.name != "postgresql":
        return
    with database.reading() as connection:
        free = connection.scalar(
            text("SELECT rolsuper OR rolbypassrls FROM pg_roles WHERE rolname = current_user")
        )
    if free:
        words = told("doctor-role-free")
        yield Finding("look", "database_role", words)
    else:
        yield Finding("good", "database_role", told("doctor-role-good"))


def _tables(settings: Settings, now_ms: int) -> Iterator[Finding]:
    with database.reading() as connection:
        at = MigrationContext.configure(connection).get_current_revision()
        head = ScriptDirectory.from_config(migrations.config(database.db.engine)).get_current_head()
        if at != head:
            words = told("doctor-database-schema" if at else "doctor-database-empty", at=at, head=head)
            yield Finding("look" if at is None else "bad", "database", words)
            return
        sound = connection.exec_driver_sql("PRAGMA quick_check").scalar() if _is_sqlite(settings) else "ok"
        known = len(inspect(connection).get_table_names())
        yield Finding(
            "good" if sound == "ok" else "bad",
            "database",
            told("doctor-database-good", n=known, at=at)
            if sound == "ok"
            else told("doctor-database-unsound", found=sound),
        )
        yield Finding("good", "households", told("doctor-households", n=count_households(connection)))
        yield _history(connection, now_ms)
        in_use = anybody_listens(connection)
        health = nudger_health(connection, now_ms)
        yield _key(settings, connection, in_use=in_use)
    yield _nudger(health, now_ms)


def _history(connection: Connection, now_ms: int) -> Finding:
    """Say what a year of a household costs in the database, by what came in the last one."""
    cost = cost_of_a_year(connection, now_ms)
    numbers = {"n": cost.operations, "households": cost.households, "kib": cost.kib_a_household}
    if cost.looked_at < cost.of:
        return Finding("good", "history", told("doctor-history-some", **numbers, looked=cost.looked_at))
    return Finding("good", "history", told("doctor-history", **numbers))


def _is_sqlite(settings: Settings) -> bool:
    return settings.database_url.startswith("sqlite")


def _key(settings: Settings, connection: Connection, *, in_use: bool) -> Finding:
    if settings.shares and settings.secrets:
        return _shared_key(settings, connection)
    if settings.shares and SharedNotes(NAME).read(connection).get("sealed") is not None:
        return Finding("bad", "push_key", told("setting-secret-missing"))
    if not in_use and not (settings.data / vapid.FILE_NAME).exists():
        return Finding("look", "push_key", told("doctor-key-none"))
    path = settings.data / vapid.FILE_NAME
    if path.exists() and vapid.read_key(path) is None:
        return Finding("bad", "push_key", told("doctor-key-wrong", file=vapid.FILE_NAME))
    try:
        key = vapid.load_or_make(settings.data, in_use=True)
    except BadSetting as error:
        return Finding("bad", "push_key", error.told)
    deaf = listen_with_other_key(connection, key.key_id)
    if deaf:
        return Finding("bad", "push_key", told("doctor-key-changed", n=deaf, file=vapid.FILE_NAME))
    return Finding("good", "push_key", told("doctor-key-good", key=key.key_id))


def _shared_key(settings: Settings, connection: Connection) -> Finding:
    """Open the key that all servers of the database share, and leave it as it is sealed."""
    sealed = SharedNotes(NAME).read(connection).get("sealed")
    if sealed is None:
        return Finding("look", "push_key", told("doctor-key-none"))
    pem = Seal(settings.secrets).open(sealed)
    key = vapid.key_in(pem.encode()) if pem is not None else None
    if key is None:
        return Finding("bad", "push_key", told("setting-secret-other"))
    deaf = listen_with_other_key(connection, key.key_id)
    if deaf:
        return Finding("bad", "push_key", told("doctor-key-changed", n=deaf, file=vapid.FILE_NAME))
    return Finding("good", "push_key", told("doctor-key-sealed", key=key.key_id))


def _nudger(health: dict[str, object], now_ms: int) -> Finding:
    last_ms = health["last_tick_ms"]
    if not isinstance(last_ms, int):
        return Finding("look", "nudger", told("doctor-nudger-never"))
    ago_s = (now_ms - last_ms) // 1000
    if ago_s < -MOST_SKEW_S:
        return Finding("bad", "nudger", told("doctor-nudger-ahead", s=-ago_s))
    if health["ok"]:
        return Finding("good", "nudger", told("doctor-nudger-good", s=ago_s))
    return Finding("bad", "nudger", told("doctor-nudger-late", s=ago_s))


def _mail(settings: Settings) -> Iterator[Finding]:
    """Log in to the mail server and leave; nothing is sent."""
    if settings.mail is None:
        return
    server = f"{settings.mail.host}:{settings.mail.port}"
    try:
        MailChannel(settings.mail).connect().quit()
    except (smtplib.SMTPException, OSError) as error:
        words = told("doctor-mail-refused", server=server, error=str(error))
        yield Finding("bad", "mail", words)
    else:
        yield Finding("good", "mail", told("doctor-mail-good", server=server))


def _proxies(settings: Settings) -> Finding:
    """The server speaks no https itself: with a public https address something stands in front of it."""
    hops = settings.trusted_proxy_hops
    if hops:
        return Finding("good", "proxy", told("doctor-proxy-good", n=hops))
    words = told("doctor-proxy-none")
    return Finding("look", "proxy", words)


def _address(settings: Settings, now_ms: int) -> Iterator[Finding]:
    url = settings.public_url
    if settings.secure:
        yield Finding("good", "public_address", told("doctor-address-good", url=url))
        yield _proxies(settings)
        yield certificate.look_at(url, now_ms)
    else:  # the settings refuse plain http to other machines
        words = told("doctor-address-local", url=url)
        yield Finding("look", "public_address", words)
    try:
        trusted = ssl.get_default_verify_paths().cafile or True  # the same authorities as for the certificate
        answer = requests.get(f"{url}/healthz", timeout=5, allow_redirects=False, verify=trusted)
        answered = answer.json()
    except (requests.RequestException, ValueError) as error:
        words = told("doctor-server-silent", url=url, error=type(error).__name__)
        yield Finding("look", "server", words)
        return
    version = answered.get("version") if isinstance(answered, dict) else None
    if version != __version__:
        words = told("doctor-server-other", url=url, version=version, here=__version__)
        yield Finding("bad", "server", words)
        return
    if answer.status_code == 200:
        yield Finding("good", "server", told("doctor-server-good", version=version, url=url))
    else:
        yield Finding("bad", "server", told("doctor-server-unwell", told=answer.text.strip()))
    date = answer.headers.get("Date")
    if date:
        skew_s = round(parsedate_to_datetime(date).timestamp() - now_ms / 1000)
        level: Level = "good" if abs(skew_s) <= MOST_SKEW_S else "bad"
        yield Finding(level, "clock", told("doctor-clock", s=abs(skew_s)))
