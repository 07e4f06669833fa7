"""``broodshelf household``: the operator's page of the households of a server, without a restart."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Final

from ..app import system_clock
from ..errors import CannotKeep
from ..languages import say, told
from ..people.invitations import LASTS_DAYS, MOST_AT_ONCE, MOST_DAYS, invite, take_back
from ..records.database import writing
from ..settings import Settings
from . import household_list, household_sheet
from .opened import opened

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


_THINGS: Final[Mapping[str, Command]] = {"list": household_list.show, "invite": _invite}
