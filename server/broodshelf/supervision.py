"""Telling the service manager how we are: systemd's notification protocol (sd_notify(3)), where it listens."""

from __future__ import annotations

import os
import socket
from contextlib import suppress
from typing import Final

READY: Final = "READY=1"
ALIVE: Final = "WATCHDOG=1"


def tell_manager(word: str) -> None:
    """Send a word to whoever started us, if it wants to hear any. Never fails: that would help nobody."""
    address = os.environ.get("NOTIFY_SOCKET", "")
    if not address:
        return
    if address.startswith("@"):  # an abstract name
        address = f"\0{address[1:]}"
    with suppress(OSError), socket.socket(socket.AF_UNIX, socket.SOCK_DGRAM) as speaker:
        speaker.setblocking(False)
        speaker.sendto(word.encode(), address)
