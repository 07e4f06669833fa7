"""``broodshelf serve`` and ``broodshelf nudger``: one process each, until it is told to stop."""

from __future__ import annotations

import gc
import os
import signal
import socket
import sys
import threading
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from dataclasses import dataclass
from typing import Final

import segno
from flask import Flask
from prometheus_client import start_http_server

from ..app import create_app, create_nudger, system_clock
from ..languages import ENGLISH, say
from ..logs import say as log
from ..logs import start_logging
from ..people.households import count_households, make_claim_code
from ..people.settling import Watch
from ..records.database import reading, writing
from ..records.home.alone import BROKERS, OnlyOne
from ..sensing.mqtt import Listener
from ..settings import Settings
from ..supervision import READY, tell_manager
from ..web.departure import Departure
from ..web.listening import listen
from ..web.parts import Parts


@dataclass(frozen=True, slots=True)
class Share:
    """What one of several serving processes does, whom a supervisor forked (``workers``).

    ``sockets``: those that all of them listen on. ``supervisor_gone``: a pipe that ends with the supervisor.
    ``first``: it prints the claim link.
    """

    sockets: Sequence[socket.socket] = ()
    supervisor_gone: int | None = None
    first: bool = True


ALONE: Final = Share()


def serve(settings: Settings, tag: str = ENGLISH, share: Share = ALONE) -> int:
    """Serve until stopped; print the claim link while nobody has claimed the server."""
    start_logging()
    app = create_app(settings)
    parts: Parts = app.extensions["broodshelf"]
    if share.first:
        with app.app_context():
            _print_claim(settings, tag)
    log("serving", url=settings.public_url, host=settings.host, port=settings.port, data=str(settings.data))
    departure = Departure(lambda: parts.readiness.watched, lambda: parts.readiness.heard_s)

    def leave(*_: object) -> None:
        parts.readiness.stop()
        departure.begin()

    with ExitStack() as running:
        _watch(app, settings, running)
        if not share.sockets:  # else the supervisor has a process for it
            running.callback(create_nudger(app).start())
        if settings.brokers:
            ear = Listener(app, settings.brokers, system_clock)
            running.callback(OnlyOne(app, settings.data, BROKERS, ear.start).start())
        _settle()
        server = listen(app, settings.host, settings.port, departure=departure, sockets=share.sockets)
        signal.signal(signal.SIGTERM, leave)
        if share.supervisor_gone is not None:
            _leave_at_the_end_of(share.supervisor_gone, leave)
        tell_manager(READY)
        server.run()
        log("stopping")
    return 0


def nudger(settings: Settings, tag: str = ENGLISH, *, supervisor_gone: int | None = None) -> int:
    """Send nudges until stopped; any number of these may run beside the servers."""
    start_logging()
    app = create_app(settings)
    log("nudging", data=str(settings.data))
    if settings.metrics_port:
        measures = app.extensions["broodshelf"].pusher.measures
        start_http_server(settings.metrics_port, "127.0.0.1", measures.registry)
    nudging = create_nudger(app)
    with ExitStack() as running:
        _watch(app, settings, running)
        _settle()
        end_when_told()
        if supervisor_gone is not None:
            _leave_at_the_end_of(supervisor_gone, lambda: os.kill(os.getpid(), signal.SIGTERM))
        tell_manager(READY)
        nudging.run()
    return 0


def end_when_told() -> None:
    """End the wait of a nudger with ``SystemExit`` at the first signal to stop; claims are given back on the way out.

    Whatever comes after it would only cut that short: a service manager and a supervisor both tell the same process.
    """

    stops = signal.SIGTERM, signal.SIGINT

    def end(*_: object) -> None:
        for number in stops:
            signal.signal(number, signal.SIG_IGN)
        sys.exit(0)

    for number in stops:
        signal.signal(number, end)


def _watch(app: Flask, settings: Settings, running: ExitStack) -> None:
    if settings.shares:
        parts: Parts = app.extensions["broodshelf"]
        running.callback(Watch(app, parts.witness, system_clock).start())


def _leave_at_the_end_of(pipe: int, leave: Callable[[], None]) -> None:
    """Stop, too, when the supervisor is gone: nobody writes to the pipe, and its other end closes with it."""

    def wait() -> None:
        os.read(pipe, 1)
        leave()

    threading.Thread(target=wait, name="supervisor-there", daemon=True).start()


def _settle() -> None:
    """Keep what was made at the start out of every later search for garbage: each took 0.1 s of some request."""
    gc.collect()
    gc.freeze()


def _print_claim(settings: Settings, tag: str) -> None:
    with reading() as connection:
        if count_households(connection) and settings.signup != "open":
            return
    with writing() as connection:
        code = make_claim_code(connection, system_clock())
    print(say(tag, "command-unclaimed"))
    print_link(settings, code, tag)


def print_link(settings: Settings, code: str, tag: str) -> None:
    """Print a claim link, its code, and the link as a QR code."""
    link = f"{settings.public_url}/#/claim/{code}"
    print(f"  {link}\n  {say(tag, 'command-code', {'code': code})}", flush=True)
    segno.make(link, error="l").terminal(out=sys.stdout, compact=True)
    sys.stdout.flush()
