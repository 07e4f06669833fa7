"""``broodshelf export`` and ``import``: everything as JSON or CSV, and a keeper's own table."""

from __future__ import annotations

import argparse
import zoneinfo
from collections.abc import Sequence
from pathlib import Path

from sqlalchemy import Connection, select

from ..app import create_app, system_clock
from ..errors import CannotKeep
from ..keeping import files
from ..keeping.bringing_in import Report, bring_in, make_household
from ..keeping.entries import BadRow, Entry, gather
from ..keeping.sheet import SheetMapping, names_on_shelf, read_mapping, read_sheet
from ..people.households import count_households
from ..people.journal import Doer, note
from ..records.database import reading, writing
from ..records.store import read_kind
from ..records.tables import households
from ..rounds.recompute import touched
from ..settings import Settings


def add_parsers(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
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


def hand_out(settings: Settings, chosen: argparse.Namespace) -> int:
    """Write everything that a household keeps as JSON or CSV, for reading or moving elsewhere."""
    app = create_app(settings)
    with app.app_context(), reading() as connection:
        export = gather(connection, _household(connection, chosen.household))
    files.write(export, chosen.file, system_clock())
    with app.app_context(), writing() as connection:
        note(connection, Doer(export.household_id), "export", system_clock())
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
        if doing:
            note(connection, Doer(household_id), "import", system_clock())
        else:
            connection.rollback()
    _print_report(report, chosen)
    return 1 if report.bad and not doing else 0


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
