"""The command line: ``broodshelf serve | nudger | pair | demo | doctor | migrate | reckon``, and for what is kept
``backup | restore | export | import``; ``household …`` for each of several shelves.
"""

from __future__ import annotations

import argparse
import os
import sys
from pathlib import Path

from sqlalchemy import make_url, select

from . import __version__
from .app import create_app, system_clock
from .care.calculators import CALCULATORS
from .commands import household, move_database, portable, reckoning
from .commands.serving import nudger, print_link, serve
from .commands.telling import telling_why_not
from .commands.workers import MOST, supervise
from .demo.fill import fill
from .doctor import examine
from .keeping.backup import backup, restore, set_aside
from .keeping.updating import update, update_before_a_start
from .keeping.verifying import verify
from .languages import ENGLISH, of_environment, say, say_code
from .people.households import count_households, make_claim_code
from .people.journal import Doer, note, note_for_all
from .records.data_folder import make_private
from .records.database import db, opened, reading, writing
from .records.epochs import Marks, start_epoch
from .records.loss import refuse_lost_file, refuse_lost_households
from .records.store import read_kind
from .records.tables import households
from .settings import Settings, from_environment
from .web.parts import Parts


def command_line(tag: str = ENGLISH) -> argparse.ArgumentParser:
    """Every command with its options; help in a language."""
    parser = argparse.ArgumentParser(prog="broodshelf", description=say(tag, "command-about"))
    parser.add_argument("--version", action="version", version=__version__)
    commands = parser.add_subparsers(dest="command", required=True)
    served = commands.add_parser("serve", help=say(tag, "command-serve"))
    served.add_argument("--anew", action="store_true", help=say(tag, "command-serve-anew"))
    served.add_argument("--workers", type=_workers, default=1, help=say(tag, "command-serve-workers"))
    commands.add_parser("nudger", help=say(tag, "command-nudger"))
    commands.add_parser("pair", help=say(tag, "command-pair"))
    commands.add_parser("demo", help=say(tag, "command-demo"))
    parsers = {}
    for name in ("backup", "restore"):
        parsers[name] = commands.add_parser(name, help=say(tag, f"command-{name}"))
        parsers[name].add_argument("file", type=Path)
    parsers["backup"].add_argument("--verify", action="store_true", help=say(tag, "command-backup-verify"))
    portable.add_parsers(commands, tag)
    household.add_parsers(commands, tag)
    move_database.add_parsers(commands, tag)
    commands.add_parser("doctor", help=say(tag, "command-doctor"))
    commands.add_parser("migrate", help=say(tag, "command-migrate"))
    calculators = commands.add_parser("reckon", help=say(tag, "command-reckon"))
    reckoning.add_parsers(calculators.add_subparsers(dest="calculator", required=True), tag)
    return parser


def main(arguments: list[str] | None = None) -> int:
    """Run a command; return the exit status."""
    os.umask(0o077)  # whatever this program writes is its owner's only, also where no unit says so
    tag = of_environment(os.environ)
    chosen = command_line(tag).parse_args(arguments)
    if chosen.command == "reckon":
        return reckoning.reckon(CALCULATORS[chosen.calculator.replace("-", "_")], vars(chosen), tag)
    return telling_why_not(tag, lambda: _run(chosen, tag))


def _run(chosen: argparse.Namespace, tag: str) -> int:
    settings = from_environment(os.environ)
    if chosen.command == "backup" and chosen.verify:
        print(verify(chosen.file).in_language(tag))
        return 0
    if chosen.command == "serve" and chosen.anew:
        Marks(settings.data / "marks").put_away(system_clock())
    if chosen.command in ("backup", "restore"):
        return {"backup": keep, "restore": put_back}[chosen.command](settings, chosen.file, tag)
    if chosen.command in ("export", "import"):
        return {"export": portable.hand_out, "import": portable.take_in}[chosen.command](
            settings, chosen, tag
        )
    if chosen.command == "household":
        return household.run(settings, chosen, tag)
    if chosen.command == "serve":
        return _serve(settings, chosen, tag)
    if chosen.command == "nudger":
        return nudger(settings, tag)
    if chosen.command == "move-database":
        return move_database.run(settings, chosen, tag)
    return {
        "pair": pair,
        "demo": demo,
        "doctor": doctor,
        "migrate": migrate,
    }[chosen.command](settings, tag)


def _serve(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    kept = update_before_a_start(settings, system_clock())
    if kept is not None:
        print(say(tag, "command-migrate-kept", {"path": kept}), flush=True)
    return serve(settings, tag) if chosen.workers == 1 else supervise(settings, chosen.workers, tag)


def _workers(text: str) -> int:
    if not (text.isascii() and text.isdigit() and 1 <= int(text) <= MOST):
        raise argparse.ArgumentTypeError(f"1–{MOST}")
    return int(text)


def pair(settings: Settings, tag: str = ENGLISH) -> int:
    """Print a link that signs a phone in as the first keeper of a household."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        found = connection.execute(households.select().order_by(households.c.created_ms)).all()
        if not found:
            print(say(tag, "command-no-household"))
            return 1
        for household in found:
            people = read_kind(connection, household.id, "person")
            keeper = next((person for person in people if person.values.get("role") == "keeper"), None)
            if keeper is None:
                print(say(tag, "command-no-keeper", {"id": household.id}))
                continue
            code = make_claim_code(connection, system_clock(), household.id, keeper.id)
            note(connection, Doer(household.id, keeper.id), "way_back", system_clock())
            print(say(tag, "command-link-for", {"person": keeper.values["name"]}))
            print_link(settings, code, tag)
    return 0


def demo(settings: Settings, tag: str = ENGLISH) -> int:
    """Add the invented shelf to an empty server and print a link into it; on a used one only the link."""
    app = create_app(settings)
    made: Parts = app.extensions["broodshelf"]
    with app.app_context():
        with writing() as connection:
            filled = None
            if not count_households(connection):
                print(say(tag, "command-demo-made"))
                filled = fill(connection, system_clock(), settings.public_url)
        if filled is not None:
            filled.keep_pictures(made.photos)
    return pair(settings, tag)


def keep(settings: Settings, target: Path, tag: str = ENGLISH) -> int:
    """Write a backup while the server may be running."""
    size = backup(settings, target)
    print(say(tag, "command-backup-done", {"path": target, "kib": round(size / 1024)}))
    return 0


def put_back(settings: Settings, source: Path, tag: str = ENGLISH) -> int:
    """Restore a backup and begin a new epoch for every household in it. What was there is kept in an archive."""
    settings.data.mkdir(parents=True, exist_ok=True)
    aside = set_aside(settings, system_clock())
    restore(settings, source)
    if aside is not None:
        print(say(tag, "command-restore-aside", {"path": aside}))
    app = create_app(settings)
    with app.app_context():
        marks = Marks(settings.data / "marks")
        with writing() as connection:
            for household_id in connection.execute(select(households.c.id)).scalars().all():
                start_epoch(connection, marks, household_id, system_clock())
            note_for_all(connection, "restore", system_clock())
        db.engine.dispose()
    print(say(tag, "command-restore-done"))
    return 0


def doctor(settings: Settings, tag: str = ENGLISH) -> int:
    """Print how the server stands; status 1 if something keeps it from working."""
    found = examine(settings, system_clock())
    marks = {level: say(tag, f"doctor-{level}") for level in ("good", "look", "bad")}
    width = max(map(len, marks.values()))
    for finding in found:
        about = say_code(tag, "doctor-about", finding.about)
        print(f"  {marks[finding.level]:{width}}  {about}: {finding.words.in_language(tag)}")
    return 1 if any(finding.level == "bad" for finding in found) else 0


def migrate(settings: Settings, tag: str = ENGLISH) -> int:
    """Bring the database to the present schema with a backup first; where anything fails it is as it was."""
    make_private(settings.data)
    marks = Marks(settings.data / "marks")
    refuse_lost_file(settings.sqlite_file, marks)
    updated = update(settings, system_clock())
    with opened(settings.database_url), reading() as connection:
        refuse_lost_households(connection, marks)
    if updated.backup is not None:
        print(say(tag, "command-migrate-kept", {"path": updated.backup}))
    print(say(tag, "command-migrate-done", {"engine": make_url(settings.database_url).get_backend_name()}))
    return 0


if __name__ == "__main__":
    sys.exit(main())
