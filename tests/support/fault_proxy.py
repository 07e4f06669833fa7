"""A TCP proxy that does to a connection what bad networks do: ``with FaultProxy(port) as proxy``.

``proxy.fault`` holds for requests that begin from now on. The proxy reads no HTTP but the end of a request's head.
"""

from __future__ import annotations

import asyncio
from contextlib import suppress
from dataclasses import dataclass

from tests.support.looping import LoopingServer

CHUNK = 65_536


@dataclass(frozen=True)
class Fault:
    """What happens: wait before each answer; cut it after so many bytes; never answer; pass the request on and
    drop the answer once the server has given it (so that it has committed). ``of`` limits it to one address.
    """

    latency_ms: int = 0
    cut_after: int | None = None
    half_open: bool = False
    drop_answer: bool = False
    of: str = "/api/sync"


NONE = Fault()


class FaultProxy(LoopingServer):
    """The proxy, in a thread with its own event loop. ``hits`` counts the requests that a fault met."""

    def __init__(self, server_port: int) -> None:
        super().__init__()
        self.server_port = server_port
        self.fault = NONE
        self.hits = 0
        self.requests = 0

    async def _serve(self, phone_in: asyncio.StreamReader, phone_out: asyncio.StreamWriter) -> None:
        self._open.add(phone_out)
        try:
            server_in, server_out = await asyncio.open_connection("127.0.0.1", self.server_port)
        except OSError:
            phone_out.transport.abort()  # the server is down: so is the connection
            self._open.discard(phone_out)
            return
        self._open.add(server_out)
        state = _Connection()
        try:
            await asyncio.gather(
                self._forth(phone_in, server_out, state), self._back(server_in, phone_out, state)
            )
        finally:
            for writer in (phone_out, server_out):
                writer.transport.abort()
                self._open.discard(writer)

    async def _forth(
        self, phone_in: asyncio.StreamReader, server_out: asyncio.StreamWriter, state: _Connection
    ) -> None:
        with suppress(OSError):
            while data := await phone_in.read(CHUNK):
                line = data.split(b"\r\n", 1)[0]
                if line.endswith(b"HTTP/1.1"):
                    address = line.split(b" ")[1].decode()
                    hit = self.fault is not NONE and address.startswith(self.fault.of)
                    state.fault, state.sent = (self.fault if hit else NONE), 0
                    self.hits += hit
                    self.requests += address.startswith(self.fault.of)
                if state.fault.half_open:
                    continue  # taken, never passed on, never answered
                server_out.write(data)
                await server_out.drain()
        server_out.transport.abort()

    async def _back(
        self, server_in: asyncio.StreamReader, phone_out: asyncio.StreamWriter, state: _Connection
    ) -> None:
        with suppress(OSError):
            while data := await server_in.read(CHUNK):
                fault = state.fault
                if fault.drop_answer:
                    break
                if fault.latency_ms and not state.sent:
                    await asyncio.sleep(fault.latency_ms / 1000)
                if fault.cut_after is not None:
                    data = data[: max(0, fault.cut_after - state.sent)]
                phone_out.write(data)
                await phone_out.drain()
                state.sent += len(data)
                if fault.cut_after is not None and state.sent >= fault.cut_after:
                    break
        phone_out.close()


class _Connection:
    """What holds for the request that is on its way."""

    def __init__(self) -> None:
        self.fault = NONE
        self.sent = 0
