"""The sockets that a server listens on: its own, or ones that several processes share."""

from __future__ import annotations

import socket
from typing import Final

from waitress.adjustments import Adjustments

BACKLOG: Final = 1024


def bind(host: str, port: int) -> list[socket.socket]:
    """Return sockets that listen at every address of a host, to be handed to other processes."""
    made = []
    for family, kind, protocol, address in Adjustments(host=host, port=port).listen:
        one = socket.socket(family, kind, protocol)
        if family == socket.AF_INET6:
            one.setsockopt(socket.IPPROTO_IPV6, socket.IPV6_V6ONLY, 1)
        one.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        one.bind(address)
        one.listen(BACKLOG)
        made.append(one)
    return made
