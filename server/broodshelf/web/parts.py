"""What the blueprints get from ``create_app`` and from the request: settings, clock, shell, actor."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import dataclass
from typing import cast

from flask import current_app, g, request
from sqlalchemy import Connection

from ..errors import NotAllowed, SignedOut, TooMany
from ..languages import best_of_accepted, told
from ..nudges.channels.channel import Channels
from ..nudges.channels.push.hosts import PushHosts
from ..nudges.channels.push.vapid import VapidKey
from ..nudges.outcomes.measures import Measures
from ..people import quotas, room
from ..people.actor import Actor
from ..people.devices import mark_seen, visit_of
from ..people.limits import (
    DAY_WINDOWS,
    MOST_A_MINUTE,
    Allowance,
    Purpose,
    count_within,
    phone_caller,
    refuse_beyond,
)
from ..people.limits import count_try as counted
from ..people.quotas import Share
from ..people.room import Coming, Counted
from ..people.senders import Senders
from ..people.settling import Witness
from ..records.apart import enter, every_household
from ..records.database import reading, writing, writing_lightly
from ..records.home.port import Home
from ..records.photo_files import PhotoFiles
from ..settings import Settings
from .callers import network_of
from .past_builds import PastBuilds
from .probe import Probe
from .readiness import Readiness
from .shell import Shell

NEWCOMERS = Allowance(5, DAY_WINDOWS)
"""Households that one address may begin in a day where everybody may."""


@dataclass(frozen=True, slots=True)
class Pusher:
    """What sends nudges: the server's key, the hosts it may send to, the channels, and what they count."""

    key: VapidKey
    hosts: PushHosts
    channels: Channels
    measures: Measures


@dataclass(frozen=True, slots=True)
class Parts:
    """The parts that ``create_app`` joined; kept in ``app.extensions``."""

    settings: Settings
    clock: Callable[[], int]
    shell: Shell
    past_builds: PastBuilds
    photos: PhotoFiles
    home: Home
    witness: Witness
    pusher: Pusher
    probe: Probe
    readiness: Readiness
    senders: Senders


def parts() -> Parts:
    """Return the joined parts of the running app."""
    return cast(Parts, current_app.extensions["broodshelf"])


def now_ms() -> int:
    """Return the server's time in ms since 1970 UTC, the same for the whole request."""
    if "now_ms" not in g:
        g.now_ms = parts().clock()
    return int(g.now_ms)


def asked_language() -> str | None:
    """Return the best language that the request asks for and that there is; None where it asks for none of them."""
    return best_of_accepted(request.headers.get("Accept-Language"))


def cookie_name() -> str:
    """Return the session cookie's name; browsers drop the host prefix without https."""
    return "__Host-session" if parts().settings.secure else "broodshelf_session"


def actor(*, after_the_pass: bool = False) -> Actor:
    """Return who is asking, or raise ``SignedOut``.

    A pass that has ended lets its phones do nothing more, except at the few addresses that say ``after_the_pass``:
    those that take what was logged in its dates without a signal, and that let the phone leave.
    """
    if "actor" not in g:
        with every_household(), reading() as connection:
            visit = visit_of(connection, request.cookies.get(cookie_name()), now_ms())
        found = visit.actor
        enter(found.household_id)
        if not visit.seen_lately:
            with writing_lightly() as connection:
                mark_seen(connection, found.household_id, found.device_id, now_ms())
        g.actor = found
    found = cast(Actor, g.actor)
    enter(found.household_id)
    if found.window is not None and found.window.state == "ended" and not after_the_pass:
        raise NotAllowed(
            told("problem-pass-ended-still-taken", on=found.window.ends_on),
            code="pass_ended",
        )
    return found


def actor_or_none() -> Actor | None:
    """Return who is asking, or None for nobody."""
    try:
        return actor(after_the_pass=True)
    except SignedOut:
        return None


def count_try(purpose: Purpose, most: int = MOST_A_MINUTE) -> None:
    """Count a try at guessing; raise ``TooMany`` beyond ``most`` a minute.

    A signed-in phone is counted by itself, whoever else comes from its address; everybody else by address.
    """
    known = actor_or_none()
    caller = network_of(request.remote_addr) if known is None else phone_caller(known.device_id)
    with reading() as connection:
        refuse_beyond(connection, purpose, caller, now_ms(), most)
    with writing() as connection:
        counted(connection, purpose, caller, now_ms(), most)


def count_newcomer(connection: Connection) -> None:
    """Count somebody who begins a household without a code; raise where that is not open, or too many came.

    Raises ``NotAllowed`` (``signup_closed``) or ``TooMany``; then, or if nothing is begun, it does not count.
    """
    if parts().settings.signup != "open":
        raise NotAllowed(told("problem-signup-code-needed"), code="signup_closed")
    here = network_of(request.remote_addr)
    if not count_within(connection, "newcomer", here, now_ms(), NEWCOMERS):
        raise TooMany(told("problem-signup-address"), retry_after_s=3_600)


def sent_from_here(size_bytes: int) -> AbstractContextManager[None]:
    """Count what the block is about to store against the address that it came from; opened before a transaction."""
    return quotas.sent_from(parts().senders, network_of(request.remote_addr), size_bytes, now_ms())


def spend(connection: Connection, sent: Share) -> None:
    """Count what a signed-in phone is about to store against its pass and household."""
    quotas.spend(connection, actor(after_the_pass=True), sent, now_ms())


def take_room(connection: Connection, coming: Coming) -> Counted:
    """Count what a signed-in phone brings against the room of its household; return what is counted now."""
    household_id = actor(after_the_pass=True).household_id
    return room.take_room(connection, parts().photos, household_id, parts().settings.room, coming, now_ms())


def keeper() -> Actor:
    """Return the keeper who is asking; a stand-in is refused."""
    found = actor()
    if found.role != "keeper":
        raise NotAllowed(told("problem-keepers-only"))
    return found
