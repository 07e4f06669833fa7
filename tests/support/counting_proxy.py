"""A TCP proxy that counts what goes through it: ``with CountingProxy(port) as proxy``.

It sees what a network carries: bodies as they are encoded, and the headers of both ways.
"""

from __future__ import annotations

import asyncio
import re
from collections import Counter
from contextlib import suppress
from typing import Final

from tests.support.looping import LoopingServer

CHUNK: Final = 65_536
_REQUEST: Final = re.compile(rb"^(?:GET|HEAD|POST) (\S+) HTTP/1\.1\r$", re.M)
_HEAD: Final = re.compile(rb"^HTTP/1\.1 [^\r]*\r\n(?:[^\r]+\r\n)*\r\n", re.M)


class CountingProxy(LoopingServer):
    """``asked``: how often each address was asked for. ``sent`` and ``received`` are bytes as the phone sees them,
    ``heads`` those of the answers' headers among them.
    """

    def __init__(self, server_port: int) -> None:
        super().__init__()
        self.server_port = server_port
        self.asked: Counter[str] = Counter()
        self.sent = self.received = self.heads = 0

    async def _serve(self, phone_in: asyncio.StreamReader, phone_out: asyncio.StreamWriter) -> None:
        server_in, server_out = await asyncio.open_connection("127.0.0.1", self.server_port)
        self._open |= {phone_out, server_out}
        try:
            await asyncio.gather(self._forth(phone_in, server_out), self._back(server_in, phone_out))
        finally:
            for writer in (phone_out, server_out):
                writer.transport.abort()
                self._open.discard(writer)

    async def _forth(self, phone_in: asyncio.StreamReader, server_out: asyncio.StreamWriter) -> None:
        with suppress(OSError):
            while data := await phone_in.read(CHUNK):
                self.sent += len(data)
                self.asked.update(address.decode() for address in _REQUEST.findall(data))
                server_out.write(data)
                await server_out.drain()
        server_out.transport.abort()

    async def _back(self, server_in: asyncio.StreamReader, phone_out: asyncio.StreamWriter) -> None:
        with suppress(OSError):
            while data := await server_in.read(CHUNK):
                self.received += len(data)
                self.heads += sum(len(head) for head in _HEAD.findall(data))
                phone_out.write(data)
                await phone_out.drain()
        phone_out.close()
