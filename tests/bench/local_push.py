"""The fast local push service of the measurements, and a policy that lets the sender reach it over https."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import urlsplit

from broodshelf.nudges.channels.push.hosts import Blocked, Endpoint, PushHosts

HERE = Path(__file__).parent


class LocalHosts(PushHosts):
    """Lets everything through to this machine, with the usual checks' cost left in."""

    def read(self, url: str) -> Endpoint:
        try:
            return super().read(url)
        except Blocked:
            parts = urlsplit(url)
            return Endpoint(url, parts.netloc, f"{parts.scheme}://{parts.netloc}", parts.path)

    def address_for(self, host: str, _port: int) -> str:
        return host


@contextmanager
def push_service(certificate: Path | None = None) -> Iterator[str]:
    """Start the service; give its address."""
    command = ["node", str(HERE / "push_service.mjs"), *([str(certificate)] if certificate else [])]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        port = int(process.stdout.readline())
        yield f"{'https' if certificate else 'http'}://127.0.0.1:{port}"
    finally:
        process.kill()
        process.wait(10)
        if process.stdout is not None:
            process.stdout.close()
