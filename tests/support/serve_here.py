"""Serve as ``broodshelf serve`` does, but let pushes go to this machine: ``python -m tests.support.serve_here``."""

from __future__ import annotations

import os

import waitress

from broodshelf.app import create_app, create_nudger, system_clock
from broodshelf.logs import start_logging
from broodshelf.nudges.push_hosts import PushHosts
from broodshelf.people.households import make_claim_code
from broodshelf.records.database import writing
from broodshelf.settings import from_environment

if __name__ == "__main__":
    settings = from_environment(os.environ)
    start_logging()
    app = create_app(settings, hosts=PushHosts(loopback=True))
    with app.app_context(), writing() as connection:
        print(f"code: {make_claim_code(connection, system_clock())}", flush=True)
    create_nudger(app).start()
    waitress.serve(app, host=settings.host, port=settings.port, threads=8)
