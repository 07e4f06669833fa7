"""``broodshelf export`` and ``import``: everything as JSON or CSV, and a keeper's own table."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from sqlalchemy import Connection, select

from ..app import create_app, system_clock
from ..errors import CannotKeep, Problem
from ..keeping import files
from ..keeping.bringing_in import Report, bring_in, make_household
from ..keeping.entries import BadRow, Entry, gather
from ..keeping.sheet import SheetMapping, names_on_shelf, read_mapping, read_sheet
from ..languages import say, told
from ..people.households import count_households
from ..people.journal import Doer, note
from ..records.database import reading, writing
from ..records.photo_files import PhotoFiles
from ..records.store import read_kind
from ..records.tables import households
from ..records.zones import read_zone
from ..rounds.recompute import touched
from ..settings import Settings
from ..web.parts import parts


def add_parsers(commands: argparse._SubParsersAction[argparse.ArgumentParser], tag: str) -> None:
    """Add the parsers of ``export`` and ``import``."""
    export = commands.add_parser("export", help=say(tag, "command-export"))
    import_ = commands.add_parser("import", help=say(tag, "command-import"))
    for parser in (export, import_):
        parser.add_argument("file", type=Path)
        parser.add_argument("--household", metavar="ID", help=say(tag, "command-household"))
    import_.add_argument("--yes", action="store_true", help=say(tag, "command-yes"))
    import_.add_argument("--skip-bad", action="store_true", help=say(tag, "command-skip-bad"))
    import_.add_argument("--mapping", type=Path, metavar="TOML", help=say(tag, "command-mapping"))
    import_.add_argument("--kind", help=say(tag, "command-kind"))
    import_.add_argument("--map", action="append", metavar="FIELD=COLUMN", help=say(tag, "command-map"))


def hand_out(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Write everything that a household keeps as JSON or CSV, for reading or moving elsewhere."""
    app = create_app(settings)
    with app.app_context(), reading() as connection:
        export = gather(connection, which_household(connection, chosen.household))
    files.write(export, chosen.file, system_clock())
    with app.app_context(), writing() as connection:
        note(connection, Doer(export.household_id), "export", system_clock())
    print(say(tag, "command-export-done", {"n": len(export.entries), "path": chosen.file}))
    return 0


def take_in(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Say what an import would do, naming each bad row; do it with ``--yes``."""
    app = create_app(settings)
    with app.app_context(), writing() as connection:
        household_id, entries, bad = _read_import(connection, chosen)
        report = bring_in(connection, household_id, entries, system_clock(), touched)
        report.bad[:0] = bad
        doing = chosen.yes and (chosen.skip_bad or not report.bad)
        if doing:
            note(connection, Doer(household_id), "import", system_clock())
            pictures = _named_pictures(connection, household_id)
        else:
            connection.rollback()
    if doing and not (chosen.mapping or chosen.map or chosen.kind):
        with app.app_context():
            added = _take_pictures(parts().photos, chosen.file, household_id, pictures)
        if added:
            print(say(tag, "command-import-pictures", {"n": added}))
    _print_report(report, chosen, tag)
    return 1 if report.bad and not doing else 0


def _named_pictures(connection: Connection, household_id: str) -> frozenset[str]:
    rows = read_kind(connection, household_id, "photo", gone=True)
    return frozenset(str(row.values.get("sha256")) for row in rows)


def _take_pictures(photos: PhotoFiles, source: Path, household_id: str, named: frozenset[str]) -> int:
    """Put the export's pictures where records of the household name them; return how many were missing."""
    added = 0
    for sha256, body in files.pictures_in(source):
        if sha256 in named:
            try:
                added += photos.put_back(household_id, sha256, body)
            except Problem as problem:
                raise CannotKeep(problem.told) from problem
    return added


def _read_import(
    connection: Connection, chosen: argparse.Namespace
) -> tuple[str, Sequence[Entry], list[BadRow]]:
    mapping = _mapping(chosen)
    if mapping is None:
        export, bad = files.read(chosen.file)
        if not count_households(connection):
            return make_household(connection, export, system_clock()), export.entries, bad
        return which_household(connection, chosen.household), export.entries, bad
    household_id = which_household(connection, chosen.household)
    zone = read_zone(connection, household_id)
    names = names_on_shelf(connection, household_id)
    return household_id, *read_sheet(chosen.file, mapping, household_id, zone, names)


def _mapping(chosen: argparse.Namespace) -> SheetMapping | None:
    if chosen.mapping:
        return read_mapping(chosen.mapping)
    if not chosen.map and not chosen.kind:
        return None
    pairs = [pair.partition("=") for pair in chosen.map or ()]
    return SheetMapping(chosen.kind or "", {name: column for name, _, column in pairs})


def which_household(connection: Connection, wanted: str | None) -> str:
    """Return the id of the wanted household, or of the only one. Raises ``CannotKeep`` naming those that are."""
    ids = connection.execute(select(households.c.id).order_by(households.c.created_ms)).scalars().all()
    if wanted in ids:
        return str(wanted)
    if not ids:
        raise CannotKeep(told("command-claim-first"))
    if wanted or len(ids) > 1:
        named = {i: read_kind(connection, i, "household")[0].values["name"] for i in ids}
        listed = ", ".join(f"{i} ({name})" for i, name in named.items())
        raise CannotKeep(told("command-which-household", households=listed))
    return str(ids[0])


def _print_report(report: Report, chosen: argparse.Namespace, tag: str) -> None:
    for row in report.bad:
        print(f"  {say(tag, 'command-import-bad', {'where': row.where, 'why': row.why})}")
    done = chosen.yes and (chosen.skip_bad or not report.bad)
    added = "command-import-added" if done else "command-import-would-add"
    for kind, number in report.added.items():
        print(f"  {say(tag, added, {'kind': kind, 'n': number})}")
    if report.present:
        print(f"  {say(tag, 'command-import-present', {'n': report.present.total()})}")
    if done:
        print(say(tag, "command-import-done"))
    elif report.bad:
        print(say(tag, "command-import-not-bad", {"n": len(report.bad)}))
    else:
        print(say(tag, "command-import-not-yet"))
