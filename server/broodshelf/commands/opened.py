"""The server's app for the time of one command."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from flask import Flask

from ..app import create_app
from ..records.database import db
from ..settings import Settings


@contextmanager
def opened(settings: Settings) -> Iterator[Flask]:
    """Make the app, be inside it, and let go of its database at the end."""
    app = create_app(settings)
    with app.app_context():
        try:
            yield app
        finally:
            db.engine.dispose()
