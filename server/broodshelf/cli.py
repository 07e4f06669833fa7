"""The command line: ``broodshelf serve | nudger | pair | demo | doctor | migrate | reckon``, and for what is kept
``backup | restore | export | import``.
"""

from __future__ import annotations

import argparse
import gc
import os
import sqlite3
import sys
from pathlib import Path

import segno
from flask import Flask
from prometheus_client import start_http_server
from sqlalchemy import select
from sqlalchemy.exc import SQLAlchemyError

from . import __version__
from .app import create_app, create_nudger, system_clock
from .care.calculators import CALCULATORS
from .commands import portable, reckoning
from .demo.fill import fill
from .doctor import examine
from .errors import BroodshelfError
from .keeping.backup import backup, restore
from .keeping.verifying import verify
from .logs import say, start_logging
from .people.households import count_households, make_claim_code
from .people.journal import Doer, note, note_for_all
from .records.database import db, reading, writing
from .records.epochs import Marks, start_epoch
from .records.photo_files import PhotoFiles
from .records.store import read_kind
from .records.tables import households
from .records.trouble import trouble_of
from .sensing.mqtt import Listener
from .settings import Settings, from_environment
from .supervision import READY, tell_manager
from .web.listening import listen


def command_line() -> argparse.ArgumentParser:
    """Every command with its options."""
    parser = argparse.ArgumentParser(prog="broodshelf", description="Care for a shelf of ant colonies.")
    parser.add_argument("--version", action="version", version=__version__)
    commands = parser.add_subparsers(dest="command", required=True)
    served = commands.add_parser("serve", help="start the server")
    served.add_argument(
        "--anew", action="store_true", help="start with an empty shelf although another one was here"
    )
    commands.add_parser("nudger", help="send nudges from a process of their own")
    commands.add_parser("pair", help="print a one-time link back into a household")
    commands.add_parser("demo", help="add an invented shelf and print a link into it")
    parsers = {}
    for name, what in (("backup", "write everything into one archive"), ("restore", "put an archive back")):
        parsers[name] = commands.add_parser(name, help=what)
        parsers[name].add_argument("file", type=Path)
    parsers["backup"].add_argument(
        "--verify", action="store_true", help="write nothing; look whether this archive is whole"
    )
    portable.add_parsers(commands)
    commands.add_parser("doctor", help="say what is wrong with this server, changing nothing")
    commands.add_parser("migrate", help="bring the database to the present schema")
    calculators = commands.add_parser("reckon", help="sugar water, cooling, prey: calculators by themselves")
    reckoning.add_parsers(calculators.add_subparsers(dest="calculator", required=True))
    return parser


def main(arguments: list[str] | None = None) -> int:
    """Run a command; return the exit status."""
    os.umask(0o077)  # whatever this program writes is its owner's only, also where no unit says so
    chosen = command_line().parse_args(arguments)
    if chosen.command == "reckon":
        return reckoning.reckon(CALCULATORS[chosen.calculator.replace("-", "_")], vars(chosen))
    try:
        settings = from_environment(os.environ)
        if chosen.command == "backup" and chosen.verify:
            print(verify(chosen.file))
            return 0
        if chosen.command == "serve" and chosen.anew:
            Marks(settings.data / "marks").put_away(system_clock())
        if chosen.command in ("backup", "restore"):
            return {"backup": keep, "restore": put_back}[chosen.command](settings, chosen.file)
        if chosen.command in ("export", "import"):
            return {"export": portable.hand_out, "import": portable.take_in}[chosen.command](settings, chosen)
        return {
            "serve": serve,
            "nudger": nudger,
            "pair": pair,
            "demo": demo,
            "doctor": doctor,
            "migrate": migrate,
        }[chosen.command](settings)
    except BroodshelfError as error:
        print(f"broodshelf: {error}", file=sys.stderr)
        return 2
    except (SQLAlchemyError, sqlite3.Error, OSError) as error:
        print(f"broodshelf: {_said_plainly(error)}", file=sys.stderr)
        return 2


def _said_plainly(error: Exception) -> str:
    """Return a sentence for what a database or a disk cannot do."""
    trouble = trouble_of(error)
    if trouble is not None and trouble.problem_code == "database_damaged":
        return "The database is damaged. Keep its file, then put a backup in its place: 'broodshelf restore FILE'."
    if trouble is not None:
        return str(trouble)
    if isinstance(error, OSError):
        return f"{error.strerror or type(error).__name__}: {error.filename or 'a file or a port'}."
    return f"The database cannot be used ({type(error).__name__}); 'broodshelf doctor' looks at it."


def serve(settings: Settings) -> int:
    """Serve until stopped; print the claim link while nobody has claimed the server."""
    start_logging()
    app = create_app(settings)
    with app.app_context():
        _print_claim(settings)
    say("serving", url=settings.public_url, host=settings.host, port=settings.port, data=str(settings.data))
    stop = create_nudger(app).start()
    hang_up = Listener(app, settings.brokers, system_clock).start() if settings.brokers else None
    _settle()
    try:
        server = listen(app, settings.host, settings.port)
        tell_manager(READY)
        server.run()
    finally:
        stop()
        if hang_up is not None:
            hang_up()
    return 0


def nudger(settings: Settings) -> int:
    """Send nudges until stopped; any number of these may run beside the servers."""
    start_logging()
    app = create_app(settings)
    say("nudging", data=str(settings.data))
    if settings.metrics_port:
        measures = app.extensions["broodshelf"].pusher.measures
        start_http_server(settings.metrics_port, "127.0.0.1", measures.registry)
    nudging = create_nudger(app)
    _settle()
    tell_manager(READY)
    nudging.run()
    return 0


def _settle() -> None:
    """Keep what was made at the start out of every later search for garbage: each took 0.1 s of some request."""
    gc.collect()
    gc.freeze()


def pair(settings: Settings) -> int:
    """Print a link that signs a phone in as the first keeper of a household."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        found = connection.execute(households.select().order_by(households.c.created_ms)).all()
        if not found:
            print("There is no household yet; 'broodshelf serve' prints the link that makes one.")
            return 1
        for household in found:
            people = read_kind(connection, household.id, "person")
            keeper = next((person for person in people if person.values.get("role") == "keeper"), None)
            if keeper is None:
                print(f"The household {household.id} has no keeper; restore a backup from when it had one.")
                continue
            code = make_claim_code(connection, system_clock(), household.id, keeper.id)
            note(connection, Doer(household.id, keeper.id), "way_back", system_clock())
            print(f"For {keeper.values['name']}:")
            _print_link(settings, code)
    return 0


def demo(settings: Settings) -> int:
    """Add the invented shelf to an empty server and print a link into it; on a used one only the link."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        if not count_households(connection):
            print("Making an invented shelf: five colonies, four months of history. Nothing of it is real.")
            fill(connection, PhotoFiles(settings.data / "photos"), system_clock(), settings.public_url)
    return pair(settings)


def keep(settings: Settings, target: Path) -> int:
    """Write a backup while the server may be running."""
    size = backup(settings, target)
    print(f"Wrote {target} ({size / 1024:.0f} KiB). It holds keys: keep it where only you can read it.")
    return 0


def put_back(settings: Settings, source: Path) -> int:
    """Restore a backup and begin a new epoch for every household in it. What was there is kept in an archive."""
    settings.data.mkdir(parents=True, exist_ok=True)
    aside = _set_aside(settings)
    restore(settings, source)
    if aside is not None:
        print(f"What was here before is in {aside}.")
    app = create_app(settings)
    with app.app_context():
        marks = Marks(settings.data / "marks")
        with writing() as connection:
            for household_id in connection.execute(select(households.c.id)).scalars().all():
                start_epoch(connection, marks, household_id, system_clock())
            note_for_all(connection, "restore", system_clock())
        db.engine.dispose()
    print("Restored. Start the server; phones send what the backup lacks when they next connect.")
    return 0


def _set_aside(settings: Settings) -> Path | None:
    """Back up the present state before a restore replaces it; None where there is none, or none that can be read."""
    aside = settings.data / f"before-restore-{system_clock()}.tar.gz"
    try:
        backup(settings, aside)
    except (BroodshelfError, sqlite3.DatabaseError):
        return None
    return aside


def doctor(settings: Settings) -> int:
    """Print how the server stands; status 1 if something keeps it from working."""
    marks = {"good": "  good", "look": "  look", "bad": "  BAD "}
    found = examine(settings, system_clock())
    for finding in found:
        print(f"{marks[finding.level]}  {finding.about}: {finding.words}")
    return 1 if any(finding.level == "bad" for finding in found) else 0


def migrate(settings: Settings) -> int:
    """Bring the database to the present schema, which every start does too."""
    app: Flask = create_app(settings)
    print(f"The database is at the present schema: {app.config['SQLALCHEMY_DATABASE_URI'].split(':')[0]}")
    return 0


def _print_claim(settings: Settings) -> None:
    with reading() as connection:
        if count_households(connection) and not settings.signup_open:
            return
    with writing() as connection:
        code = make_claim_code(connection, system_clock())
    print("Nobody has claimed this shelf yet. Open this on your phone or here:")
    _print_link(settings, code)


def _print_link(settings: Settings, code: str) -> None:
    link = f"{settings.public_url}/#/claim/{code}"
    print(f"  {link}\n  code: {code} (works once, for 24 hours)", flush=True)
    segno.make(link, error="l").terminal(out=sys.stdout, compact=True)
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
