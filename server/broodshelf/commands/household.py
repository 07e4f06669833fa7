"""``broodshelf household``: the operator's page of the households of a server, without a restart."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Final

from ..app import system_clock
from ..errors import CannotKeep
from ..keeping import files
from ..keeping.backup import set_aside
from ..keeping.entries import gather
from ..keeping.erasing import erase_household
from ..keeping.one_back import put_household_back
from ..languages import say, told
from ..people.invitations import LASTS_DAYS, MOST_AT_ONCE, MOST_DAYS, invite, take_back
from ..people.journal import Doer, note
from ..people.sizes import measure
from ..records.database import reading, writing
from ..settings import Settings
from ..web.parts import parts
from . import household_list, household_sheet
from .opened import opened
from .portable import which_household

Command = Callable[[Settings, argparse.Namespace, str], int]


def add_parsers(commands: argparse._SubParsersAction[argparse.ArgumentParser], tag: str) -> None:
    """Add the parser of ``household`` and of each thing that can be done with one."""
    parser = commands.add_parser("household", help=say(tag, "command-of-households"))
    things = parser.add_subparsers(dest="thing", required=True)
    things.add_parser("list", help=say(tag, "command-household-list"))
    made = things.add_parser("invite", help=say(tag, "command-household-invite"))
    made.add_argument("--count", type=int, default=1, metavar="N", help=say(tag, "command-invite-count"))
    made.add_argument(
        "--days", type=int, default=LASTS_DAYS, metavar="D", help=say(tag, "command-invite-days")
    )
    made.add_argument("--sheet", type=Path, metavar="HTML", help=say(tag, "command-invite-sheet"))
    made.add_argument("--take-back", action="store_true", help=say(tag, "command-invite-take-back"))
    for name in ("export", "delete", "restore"):
        one = things.add_parser(name, help=say(tag, f"command-household-{name}"))
        one.add_argument("id", metavar="ID", help=say(tag, "command-household-id"))
        if name == "delete":
            one.add_argument("--yes", action="store_true", help=say(tag, "command-yes"))
        else:
            one.add_argument("file", type=Path)


def run(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Do what was asked of ``household``; return the exit status."""
    return _THINGS[chosen.thing](settings, chosen, tag)


def _invite(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Make invitations and print their links, or end those that are open."""
    if chosen.take_back:
        with opened(settings), writing() as connection:
            ended = take_back(connection, system_clock())
        print(say(tag, "command-invite-taken-back", {"n": ended}))
        return 0
    if settings.signup == "closed":
        raise CannotKeep(told("command-invite-closed"))
    for name, given, most in (("--count", chosen.count, MOST_AT_ONCE), ("--days", chosen.days, MOST_DAYS)):
        if not 1 <= given <= most:
            raise CannotKeep(told("command-invite-range", name=name, most=most))
    with opened(settings), writing() as connection:
        made = invite(connection, chosen.count, chosen.days, system_clock())
    cards = household_sheet.cards(made, settings.public_url)
    if chosen.sheet:
        household_sheet.write(cards, chosen.sheet, tag)
        print(say(tag, "command-invite-sheet-done", {"n": len(cards), "path": chosen.sheet}))
    else:
        for card in cards:
            print(f"  {card.number}  {card.link}")
        print(say(tag, "command-invite-done", {"n": len(cards), "days": chosen.days}))
    return 0


def _export(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Write the records and pictures of one household."""
    if chosen.file.suffix == ".json":
        raise CannotKeep(told("household-export-no-json"))
    with opened(settings):
        photos = parts().photos
        with reading() as connection:
            household_id = which_household(connection, chosen.id)
            export = gather(connection, household_id)
        names = photos.names(household_id)
        pictures = ((name, body) for name in names if (body := photos.read(household_id, name)) is not None)
        files.write(export, chosen.file, system_clock(), pictures)
        with writing() as connection:
            note(connection, Doer(household_id), "export", system_clock())
    counted = {"n": len(export.entries), "pictures": len(names), "path": chosen.file}
    print(say(tag, "household-export-done", counted))
    return 0


def _delete(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Erase one household; without ``--yes`` only say what would go."""
    with opened(settings):
        photos, marks, endings = parts().photos, parts().witness.marks, parts().home.endings
        if chosen.yes:
            rows = erase_household(chosen.id, photos, marks, endings, system_clock())
            print(say(tag, "household-delete-done", {"n": rows}))
            return 0
        with reading() as connection:
            household_id = which_household(connection, chosen.id)
            size = measure(connection, photos, [household_id])[household_id]
            name = household_list.name_of(connection, household_id)
    going = {"name": name, "n": size.records, "pictures": size.pictures}
    print(say(tag, "household-delete-would", going))
    return 1


def _restore(settings: Settings, chosen: argparse.Namespace, tag: str) -> int:
    """Put one household back out of a backup; the present state of all is kept in an archive first."""
    with opened(settings):
        aside = set_aside(settings, system_clock())
        if aside is not None:
            print(say(tag, "command-restore-aside", {"path": aside}))
        rows = put_household_back(
            chosen.file, chosen.id, settings.data, parts().witness, parts().photos, system_clock()
        )
    print(say(tag, "household-restore-done", {"n": rows}))
    return 0


_THINGS: Final[Mapping[str, Command]] = {
    "list": household_list.show,
    "invite": _invite,
    "export": _export,
    "delete": _delete,
    "restore": _restore,
}
