"""``broodshelf move-database --to URL``: from SQLite to PostgreSQL and back, the server stopped."""

from __future__ import annotations

import argparse

from ..errors import CannotKeep
from ..keeping.moving import Step, move
from ..languages import say, told
from ..settings import PREFIX, Settings, from_environment


def add_parsers(commands: argparse._SubParsersAction[argparse.ArgumentParser], tag: str) -> None:
    """Add the parser of ``move-database``."""
    parser = commands.add_parser("move-database", help=say(tag, "command-move"))
    parser.add_argument("--to", required=True, metavar="URL", help=say(tag, "command-move-to"))


def run(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Copy everything into the database of ``--to``, saying how far it is, and print what stands in each table."""
    name = f"{PREFIX}DATABASE_URL"
    target = from_environment({f"{PREFIX}DATA": str(settings.data), name: chosen.to})
    file = settings.sqlite_file
    if file is not None and not file.is_file():
        raise CannotKeep(told("backup-nothing", path=file))

    def tell(step: Step) -> None:
        args = {"number": step.number, "of": step.of, "id": step.household_id, "n": step.rows}
        print(say(tag, "move-there" if step.was_there else "move-step", args), flush=True)

    moved = move(settings, target.database_url, tell)
    width = max(len(each.table) for each in moved)
    for each in moved:
        print(f"  {each.table:{width}}  {each.here.count:>9}  = {each.there.count}")
    print(say(tag, "move-done", {"n": sum(each.there.count for each in moved), "setting": name}))
    return 0
