"""Something that is served from a thread with an event loop of its own."""

from __future__ import annotations

import asyncio
import threading
from abc import ABC, abstractmethod
from types import TracebackType
from typing import Self


class Looping(ABC):
    """``with`` starts the thread and waits until ``_run`` has set ``_ready``; leaving stops the loop."""

    def __init__(self) -> None:
        self.port = 0
        self._ready = threading.Event()
        self._loop = asyncio.new_event_loop()
        self._thread = threading.Thread(target=self._run)

    def __enter__(self) -> Self:
        self._thread.start()
        assert self._ready.wait(10), f"{type(self).__name__} did not start"
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join(10)

    @abstractmethod
    def _run(self) -> None:
        """Set the loop, serve, set ``port`` and ``_ready``, run for ever, clean up and close the loop."""


class LoopingServer(Looping):
    """One that takes connections of TCP at a port of this machine; those in ``_open`` are broken when it ends."""

    def __init__(self) -> None:
        super().__init__()
        self._open: set[asyncio.StreamWriter] = set()

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self.port}"

    def _run(self) -> None:
        asyncio.set_event_loop(self._loop)
        server = self._loop.run_until_complete(asyncio.start_server(self._serve, "127.0.0.1", 0))
        self.port = server.sockets[0].getsockname()[1]
        self._ready.set()
        self._loop.run_forever()
        server.close()
        for writer in list(self._open):
            writer.transport.abort()
        tasks = asyncio.all_tasks(self._loop)
        for task in tasks:
            task.cancel()
        self._loop.run_until_complete(asyncio.gather(*tasks, return_exceptions=True))
        self._loop.close()

    @abstractmethod
    async def _serve(self, phone_in: asyncio.StreamReader, phone_out: asyncio.StreamWriter) -> None:
        """Serve one connection."""
