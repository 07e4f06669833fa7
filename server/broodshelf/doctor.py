"""``broodshelf doctor``: look at a server without changing it, and say in words what would go wrong."""

from __future__ import annotations

import os
import shutil
import smtplib
from collections.abc import Iterator
from dataclasses import dataclass
from email.utils import parsedate_to_datetime
from pathlib import Path
from typing import Final, Literal

import requests
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from flask import Flask
from sqlalchemy import Connection, inspect, text
from sqlalchemy.exc import SQLAlchemyError

from . import __version__, migrations
from .errors import BadSetting
from .nudges.channels.mail.channel import MailChannel
from .nudges.channels.push import vapid
from .nudges.channels.push.subscriptions import anybody_listens, listen_with_other_key
from .nudges.health.nudger import nudger_health
from .people.households import count_households
from .records import database
from .records.data_folder import set_aside_before
from .records.ended import Revocations
from .records.epochs import Marks
from .records.trouble import trouble_of
from .settings import Settings

LOW_DISK_BYTES: Final = 200 * 1024 * 1024
MOST_SKEW_S: Final = 30
"""A clock that is off by more spoils the times of nudges; VAPID (RFC 8292) allows hours."""

Level = Literal["good", "look", "bad"]


@dataclass(frozen=True, slots=True)
class Finding:
    """What was looked at and how it stands; ``bad`` keeps the shelf from working, ``look`` may."""

    level: Level
    about: str
    words: str


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
        yield Finding("look", "data folder", f"{data} is not there yet; the first start makes it")
        return
    if os.access(data, os.W_OK):
        yield Finding("good", "data folder", f"{data} can be written")
    else:
        yield Finding("bad", "data folder", f"{data} cannot be written by this user; change its owner")
    free = shutil.disk_usage(data).free
    level: Level = "good" if free >= LOW_DISK_BYTES else "bad"
    yield Finding(level, "disk", f"{free // (1024 * 1024)} MiB are free; a full disk refuses logs")


def _damage(settings: Settings) -> Iterator[Finding]:
    """Name each file beside the database that is damaged now, or that a start set aside because it was."""
    data = settings.data
    lines = Revocations(data / "revoked.jsonl").unreadable()
    if lines:
        words = (
            f"{lines} lines of {data / 'revoked.jsonl'} cannot be read; the next start keeps a copy and all that can "
            "be read. Before you restore an older backup, put the file back from the newest one"
        )
        yield Finding("bad", "revoked phones and passes", words)
    marks = Marks(data / "marks")
    for path in sorted(marks.folder.glob("*.json")) if marks.folder.is_dir() else ():
        if marks.read(path.stem) is None:
            yield Finding(
                "look", "marks", f"{path} cannot be read; at the next start its phones get everything anew"
            )
    for path in set_aside_before(data) if data.is_dir() else ():
        words = f"{path} was damaged and set aside; look at it, keep it or take it away"
        yield Finding("look", "set aside", words)


def _database(settings: Settings, now_ms: int) -> Iterator[Finding]:
    if settings.database_url.startswith("sqlite:///") and not (
        settings.data.is_dir() and _file_is_there(settings)
    ):
        if Marks(settings.data / "marks").households():
            words = "it is missing, though a shelf was here; 'broodshelf restore FILE' puts a backup back"
            yield Finding("bad", "database", words)
        else:
            yield Finding("look", "database", "there is none yet; the first start makes it")
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
            words = f"it does not answer: {type(error).__name__}; is it running?"
            if trouble is not None and trouble.problem_code == "database_damaged":
                words = f"it is damaged ({settings.data}): keep the file, then restore a backup"
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
        words = "this role may pass row-level security; give the server one of its own (docs/self-hosting.md)"
        yield Finding("look", "database role", words)
    else:
        yield Finding("good", "database role", "row-level security holds it to one household at a time")


def _tables(settings: Settings, now_ms: int) -> Iterator[Finding]:
    with database.reading() as connection:
        at = MigrationContext.configure(connection).get_current_revision()
        head = ScriptDirectory.from_config(migrations.config(database.db.engine)).get_current_head()
        if at != head:
            words = (
                f"its schema is {at or 'empty'}, this version wants {head}; 'broodshelf migrate' mends that"
            )
            yield Finding("look" if at is None else "bad", "database", words)
            return
        sound = connection.exec_driver_sql("PRAGMA quick_check").scalar() if _is_sqlite(settings) else "ok"
        known = len(inspect(connection).get_table_names())
        yield Finding(
            "good" if sound == "ok" else "bad",
            "database",
            f"it answers, {known} tables at schema {at}"
            if sound == "ok"
            else f"it is damaged: {sound}; restore a backup",
        )
        yield Finding("good", "households", f"{count_households(connection)} on this server")
        in_use = anybody_listens(connection)
        health = nudger_health(connection, now_ms)
        yield _key(settings, connection, in_use=in_use)
    yield _nudger(health, now_ms)


def _is_sqlite(settings: Settings) -> bool:
    return settings.database_url.startswith("sqlite")


def _key(settings: Settings, connection: Connection, *, in_use: bool) -> Finding:
    if not in_use and not (settings.data / vapid.FILE_NAME).exists():
        return Finding("look", "push key", "there is none yet; the first start makes it")
    path = settings.data / vapid.FILE_NAME
    if path.exists() and vapid.read_key(path) is None:
        words = f"{vapid.FILE_NAME} does not hold a P-256 key in PEM; put the old one back from the backup"
        return Finding(
            "bad", "push key", f"{words}, or the next start makes a new one, which no phone hears yet"
        )
    try:
        key = vapid.load_or_make(settings.data, in_use=True)
    except BadSetting as error:
        return Finding("bad", "push key", str(error))
    deaf = listen_with_other_key(connection, key.key_id)
    if deaf:
        words = f"it was changed: {deaf} phones hear nothing until the app is opened on them"
        return Finding(
            "bad", "push key", f"{words}; better put the old {vapid.FILE_NAME} back from the backup"
        )
    return Finding("good", "push key", f"{key.key_id}…, readable by its owner only")


def _nudger(health: dict[str, object], now_ms: int) -> Finding:
    last_ms = health["last_tick_ms"]
    if not isinstance(last_ms, int):
        return Finding("look", "nudger", "it has never run here; 'broodshelf serve' runs one")
    ago_s = (now_ms - last_ms) // 1000
    if ago_s < -MOST_SKEW_S:
        return Finding(
            "bad", "nudger", f"it last ran {-ago_s} s in the future: this machine's clock was set back"
        )
    if health["ok"]:
        return Finding("good", "nudger", f"it ran {ago_s} s ago and nothing waits")
    return Finding(
        "bad", "nudger", f"it last ran {ago_s} s ago, or nudges wait; is 'broodshelf serve' running?"
    )


def _mail(settings: Settings) -> Iterator[Finding]:
    """Log in to the mail server and leave; nothing is sent."""
    if settings.mail is None:
        return
    try:
        MailChannel(settings.mail).connect().quit()
    except (smtplib.SMTPException, OSError) as error:
        words = f"{settings.mail.host}:{settings.mail.port} does not take us: {error}; see BROODSHELF_SMTP_*"
        yield Finding("bad", "mail", words)
    else:
        yield Finding("good", "mail", f"{settings.mail.host}:{settings.mail.port} takes our mail")


def _proxies(settings: Settings) -> Finding:
    """The server speaks no https itself: with a public https address something stands in front of it."""
    hops = settings.trusted_proxy_hops
    if hops:
        return Finding("good", "proxy", f"the visitor's address is believed from {hops} in front")
    words = "BROODSHELF_TRUSTED_PROXY_HOPS is 0, so all visitors of the https address share one limit; set it to 1"
    return Finding("look", "proxy", words)


def _address(settings: Settings, now_ms: int) -> Iterator[Finding]:
    url = settings.public_url
    if settings.secure:
        yield Finding("good", "public address", f"{url} is https, as phones need")
        yield _proxies(settings)
    else:  # the settings refuse plain http to other machines
        words = f"{url} works on this machine only; phones need https (docs/self-hosting.md)"
        yield Finding("look", "public address", words)
    try:
        answer = requests.get(f"{url}/healthz", timeout=5, allow_redirects=False)
        told = answer.json()
    except (requests.RequestException, ValueError) as error:
        words = f"{url} does not answer as this server would from here ({type(error).__name__})"
        yield Finding("look", "server", words)
        return
    version = told.get("version") if isinstance(told, dict) else None
    if version != __version__:
        words = f"{url} is answered by something else (version {version}, here {__version__})"
        yield Finding("bad", "server", words)
        return
    if answer.status_code == 200:
        yield Finding("good", "server", f"version {version} answers at {url}")
    else:
        yield Finding("bad", "server", f"it says itself that it is not well: {answer.text.strip()}")
    date = answer.headers.get("Date")
    if date:
        skew_s = round(parsedate_to_datetime(date).timestamp() - now_ms / 1000)
        level: Level = "good" if abs(skew_s) <= MOST_SKEW_S else "bad"
        yield Finding(level, "clock", f"the server's clock and this one differ by {abs(skew_s)} s")
