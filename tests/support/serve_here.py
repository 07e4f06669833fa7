"""Serve as ``broodshelf serve`` does, but let pushes go to this machine: ``python -m tests.support.serve_here``.

The server's clock runs ahead by the ms that stand in the file ``clock-ahead`` of its data folder; a file
``login-page`` puts a proxy in front, and what stands in a file ``another-build`` makes another build of the app.
The nudger ticks once a second and notes each tick, so that it soon sees a moved clock and /healthz tells so.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Any

from flask import Flask

from broodshelf.app import create_app, create_nudger, system_clock
from broodshelf.logs import start_logging
from broodshelf.nudges import nudger
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.people.households import make_claim_code
from broodshelf.records.database import writing
from broodshelf.settings import from_environment
from broodshelf.web.listening import listen
from broodshelf.web.parts import Parts
from broodshelf.web.shell import Shell, find_folder

TICK_S = 1.0


def clock_ahead(data: Path) -> int:
    """Return the time in ms since 1970 UTC, moved on by what the test wrote."""
    moved = data / "clock-ahead"
    return system_clock() + (int(moved.read_text()) if moved.exists() else 0)


def behind_a_login(app: Any, data: Path) -> Any:
    """Answer paths that begin with what stands in the file ``login-page`` as a proxy that wants a sign-in does."""

    def answer(environ: Any, start_response: Any) -> Any:
        page = data / "login-page"
        if not page.exists() or not environ["PATH_INFO"].startswith(page.read_text()):
            return app(environ, start_response)
        start_response("200 OK", [("Content-Type", "text/html")])
        return [b"<!doctype html><title>Sign in</title><h1>Sign in to the network</h1>"]

    return answer


def serve_another_build(app: Flask, data: Path) -> None:
    """Add the file ``another-build`` to the app's files, so that they get a build id of their own."""
    another = data / "another-build"
    if not another.exists():
        return
    made: Parts = app.extensions["broodshelf"]
    kept = {name: file.body for name, file in made.shell.files.items() if name.endswith((".json", ".ftl"))}
    files = {**kept, "another-build": another.read_bytes()}
    shell = Shell(find_folder(), files, worker_on=made.settings.worker_on)
    with app.app_context():
        made.past_builds.keep(shell, made.clock())
    app.extensions["broodshelf"] = replace(made, shell=shell)


def main(_arguments: Sequence[str] = ()) -> None:
    """Serve until killed, as the environment says."""
    settings = from_environment(os.environ)
    start_logging()
    nudger.Ticking = partial(nudger.Ticking, every_s=TICK_S)  # type: ignore[misc,assignment]
    nudger.NOTED_EVERY_MS = 0  # type: ignore[misc]
    app = create_app(settings, lambda: clock_ahead(settings.data), hosts=PushHosts(loopback=True))
    serve_another_build(app, settings.data)
    with app.app_context(), writing() as connection:
        print(f"code: {make_claim_code(connection, system_clock())}", flush=True)
    create_nudger(app).start()
    app.wsgi_app = behind_a_login(app.wsgi_app, settings.data)  # type: ignore[method-assign]
    listen(app, settings.host, settings.port).run()


if __name__ == "__main__":
    main()
