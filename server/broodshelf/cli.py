"""The command line: ``broodshelf serve | nudger | pair | demo | doctor | migrate | reckon``, and for what is kept
``backup | restore | export | import``.
"""

from __future__ import annotations

import argparse
import os
import sys
import zoneinfo
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import segno
import waitress
from flask import Flask
from sqlalchemy import Connection, select

from . import __version__
from .app import create_app, create_nudger, system_clock
from .care.calculators import CALCULATORS, Calculator
from .demo.fill import fill
from .doctor import examine
from .errors import BroodshelfError, CannotKeep
from .keeping import files
from .keeping.backup import backup, restore
from .keeping.bringing_in import Report, bring_in, make_household
from .keeping.entries import BadRow, Entry, gather
from .keeping.sheet import SheetMapping, names_on_shelf, read_mapping, read_sheet
from .logs import say, start_logging
from .people.households import count_households, make_claim_code
from .records.database import reading, writing
from .records.epochs import Marks, start_epoch
from .records.store import read_kind
from .records.tables import households
from .rounds.recompute import touched
from .settings import Settings, from_environment


def main(arguments: list[str] | None = None) -> int:
    """Run a command; return the exit status."""
    parser = argparse.ArgumentParser(prog="broodshelf", description="Care for a shelf of ant colonies.")
    parser.add_argument("--version", action="version", version=__version__)
    commands = parser.add_subparsers(dest="command", required=True)
    commands.add_parser("serve", help="start the server")
    commands.add_parser("nudger", help="send nudges from a process of their own")
    commands.add_parser("pair", help="print a one-time link back into a household")
    commands.add_parser("demo", help="add an invented shelf and print a link into it")
    for name, what in (("backup", "write everything into one archive"), ("restore", "put an archive back")):
        commands.add_parser(name, help=what).add_argument("file", type=Path)
    _portable_parsers(commands)
    commands.add_parser("doctor", help="say what is wrong with this server, changing nothing")
    commands.add_parser("migrate", help="bring the database to the present schema")
    reckoning = commands.add_parser("reckon", help="sugar water, cooling, prey: calculators by themselves")
    _add_calculators(reckoning.add_subparsers(dest="calculator", required=True))
    chosen = parser.parse_args(arguments)
    if chosen.command == "reckon":
        return reckon(CALCULATORS[chosen.calculator.replace("-", "_")], vars(chosen))
    try:
        settings = from_environment(os.environ)
        if chosen.command in ("backup", "restore"):
            return {"backup": keep, "restore": put_back}[chosen.command](settings, chosen.file)
        if chosen.command in ("export", "import"):
            return {"export": hand_out, "import": take_in}[chosen.command](settings, chosen)
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


def serve(settings: Settings) -> int:
    """Serve until stopped; print the claim link while nobody has claimed the server."""
    start_logging()
    app = create_app(settings)
    with app.app_context():
        _print_claim(settings)
    say("serving", url=settings.public_url, host=settings.host, port=settings.port, data=str(settings.data))
    stop = create_nudger(app).start()
    try:
        waitress.serve(
            app,
            host=settings.host,
            port=settings.port,
            threads=8,
            ident=None,
            max_request_body_size=2 * 1024 * 1024,
        )
    finally:
        stop()
    return 0


def nudger(settings: Settings) -> int:
    """Send nudges until stopped; any number of these may run beside the servers."""
    start_logging()
    app = create_app(settings)
    say("nudging", data=str(settings.data))
    create_nudger(app).run()
    return 0


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
            keeper = next(person for person in people if person.values.get("role") == "keeper")
            code = make_claim_code(connection, system_clock(), household.id, keeper.id)
            print(f"For {keeper.values['name']}:")
            _print_link(settings, code)
    return 0


def demo(settings: Settings) -> int:
    """Add the invented shelf to an empty server and print a link into it; on a used one only the link."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        if not count_households(connection):
            print("Making an invented shelf: five colonies, four months of history. Nothing of it is real.")
            fill(connection, system_clock())
    return pair(settings)


def keep(settings: Settings, target: Path) -> int:
    """Write a backup while the server may be running."""
    size = backup(settings, target)
    print(f"Wrote {target} ({size / 1024:.0f} KiB). It holds keys: keep it where only you can read it.")
    return 0


def put_back(settings: Settings, source: Path) -> int:
    """Restore a backup and begin a new epoch for every household in it."""
    settings.data.mkdir(parents=True, exist_ok=True)
    restore(settings, source)
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        marks = Marks(settings.data / "marks")
        for household_id in connection.execute(select(households.c.id)).scalars().all():
            start_epoch(connection, marks, household_id, system_clock())
    print("Restored. Start the server; phones send what the backup lacks when they next connect.")
    return 0


def hand_out(settings: Settings, chosen: argparse.Namespace) -> int:
    """Write everything that a household keeps as JSON or CSV, for reading or moving elsewhere."""
    app = create_app(settings)
    with app.app_context(), reading() as connection:
        export = gather(connection, _household(connection, chosen.household))
    files.write(export, chosen.file, system_clock())
    print(f"Wrote {len(export.entries)} records to {chosen.file}. Keys and signed-in phones are not in it.")
    return 0


def take_in(settings: Settings, chosen: argparse.Namespace) -> int:
    """Say what an import would do, naming each bad row; do it with ``--yes``."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        household_id, entries, bad = _read_import(connection, chosen)
        report = bring_in(connection, household_id, entries, system_clock(), touched)
        report.bad[:0] = bad
        doing = chosen.yes and (chosen.skip_bad or not report.bad)
        if not doing:
            connection.rollback()
    _print_report(report, chosen)
    return 1 if report.bad and not doing else 0


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


def reckon(calculator: Calculator, given: dict[str, Any]) -> int:
    """Print what a calculator says, with its formula, source and limits; status 2 for input outside them."""
    inputs = {each.name: given[each.name] for each in calculator.inputs}
    try:
        lines = calculator.run(inputs)
    except ValueError as error:
        print(f"broodshelf: {error}", file=sys.stderr)
        return 2
    print(calculator.title, *(f"  {line}" for line in lines), sep="\n")
    for each in calculator.inputs:
        value = each.default if inputs[each.name] is None else inputs[each.name]
        if value not in (None, False):
            shown = (
                f"{value:g} {each.unit}" if isinstance(value, float) else "yes" if value is True else value
            )
            print(f"    with {each.what}: {shown}")
    for head, text in (
        ("how", calculator.formula),
        ("from", calculator.source),
        ("limits", calculator.limits),
    ):
        print(f"    {head}: {text}")
    return 0


def _add_calculators(commands: Any) -> None:
    for code, calculator in CALCULATORS.items():
        parser = commands.add_parser(code.replace("_", "-"), help=calculator.title)
        for each in calculator.inputs:
            flag = f"--{each.name.replace('_', '-')}"
            usual = each.left_out if each.default in (None, False) else each.default
            usual = f" (else {usual})" if usual else ""
            what = f"{each.what}{f', {each.unit}' if each.unit else ''}{usual}".replace("%", "%%")
            if each.kind == "yes_no":
                parser.add_argument(flag, action="store_true", default=None, help=what)
            elif each.kind == "choice":
                parser.add_argument(flag, choices=each.choices, help=what)
            else:
                parser.add_argument(flag, type=float, help=what, metavar=each.unit or "N")


def _portable_parsers(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the parsers of ``export`` and ``import``."""
    export = commands.add_parser("export", help="write all records as JSON (x.json) or CSV (x.zip, a folder)")
    import_ = commands.add_parser("import", help="add records from an export or from a table of your own")
    for parser in (export, import_):
        parser.add_argument("file", type=Path)
        parser.add_argument("--household", metavar="ID", help="which one, where the server has several")
    import_.add_argument("--yes", action="store_true", help="do it; without this nothing is changed")
    import_.add_argument("--skip-bad", action="store_true", help="with --yes: leave bad rows out")
    import_.add_argument("--mapping", type=Path, metavar="TOML", help="what a table's columns mean")
    import_.add_argument("--kind", help="with --map: what each row is, e.g. feeding")
    import_.add_argument("--map", action="append", metavar="FIELD=COLUMN", help="one column of a table")


def _read_import(
    connection: Connection, chosen: argparse.Namespace
) -> tuple[str, Sequence[Entry], list[BadRow]]:
    mapping = _mapping(chosen)
    if mapping is None:
        export, bad = files.read(chosen.file)
        if not count_households(connection):
            return make_household(connection, export, system_clock()), export.entries, bad
        return _household(connection, chosen.household), export.entries, bad
    household_id = _household(connection, chosen.household)
    zone = zoneinfo.ZoneInfo(read_kind(connection, household_id, "household")[0].values["zone"])
    names = names_on_shelf(connection, household_id)
    return household_id, *read_sheet(chosen.file, mapping, household_id, zone, names)


def _mapping(chosen: argparse.Namespace) -> SheetMapping | None:
    if chosen.mapping:
        return read_mapping(chosen.mapping)
    if not chosen.map and not chosen.kind:
        return None
    pairs = [pair.partition("=") for pair in chosen.map or ()]
    return SheetMapping(chosen.kind or "", {name: column for name, _, column in pairs})


def _household(connection: Connection, wanted: str | None) -> str:
    ids = connection.execute(select(households.c.id).order_by(households.c.created_ms)).scalars().all()
    if wanted in ids:
        return str(wanted)
    if not ids:
        raise CannotKeep("There is no household yet; claim the shelf first.")
    if wanted or len(ids) > 1:
        named = {i: read_kind(connection, i, "household")[0].values["name"] for i in ids}
        raise CannotKeep(
            "Say which with --household: " + ", ".join(f"{i} ({name})" for i, name in named.items())
        )
    return str(ids[0])


def _print_report(report: Report, chosen: argparse.Namespace) -> None:
    for row in report.bad:
        print(f"  bad: {row.where}: {row.why}")
    done = chosen.yes and (chosen.skip_bad or not report.bad)
    for kind, number in report.added.items():
        print(f"  {'added' if done else 'would add'} {kind}: {number}")
    if report.present:
        print(f"  {report.present.total()} are on this shelf already and stay as they are")
    if done:
        print("Imported. Phones get it when they next connect.")
    elif report.bad:
        print(
            f"Nothing was imported: {len(report.bad)} bad. Mend them, or leave them out with --yes --skip-bad."
        )
    else:
        print("Nothing was imported yet. Do it with --yes.")


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
