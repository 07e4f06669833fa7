"""One process of a machine: ``serve`` or ``nudger``, as the real commands run them.

Its push services are on this machine, claims run out after some seconds instead of a minute, and a file
``another-build`` in the data folder makes it another version of the app.
"""

from __future__ import annotations

from collections.abc import Sequence

from flask import Flask
from tests.support.serve_here import serve_another_build

from broodshelf import cli
from broodshelf.app import create_app
from broodshelf.commands import serving
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.sending import lanes, queue
from broodshelf.settings import Settings

LEASE_MS = 6_000


def _create_app(settings: Settings) -> Flask:
    app = create_app(settings, hosts=PushHosts(loopback=True))
    serve_another_build(app, settings.data)
    return app


def main(arguments: Sequence[str]) -> int:
    """Run ``serve`` or ``nudger`` until told to stop."""
    serving.create_app = _create_app  # type: ignore[assignment]
    queue.LEASE_MS = LEASE_MS  # type: ignore[misc]
    lanes.GIVE_BACK_AFTER_S = LEASE_MS // 3000  # type: ignore[misc]
    return cli.main([*arguments])
