"""The server's own sockets in a thread of the test."""

from __future__ import annotations

import threading
from typing import Any

from tests.support.sockets import PATIENCE_S

from broodshelf.web.listening import Channel, Listener, Patience, listen


class Serving:
    """``with Serving(app) as serving``: ``serving.port`` listens on this machine until the block ends."""

    def __init__(self, app: Any, patience: Patience | None = None) -> None:
        self._server = listen(app, "127.0.0.1", 0, patience)
        self.port = int(self._server.effective_listen[0][1])
        self._listener = next(found for found in self._server.map.values() if isinstance(found, Listener))
        self._thread = threading.Thread(target=self._server.run)

    def __enter__(self) -> Serving:
        self._thread.start()
        return self

    def __exit__(self, *_why: object) -> None:
        def leave() -> bool:
            raise SystemExit  # what ends waitress's loop

        self._listener.readable = leave
        self._thread.join(PATIENCE_S)

    def connections(self) -> int:
        """Return how many connections are open."""
        return sum(isinstance(found, Channel) for found in list(self._server.map.values()))
