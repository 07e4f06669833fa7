"""The shipped Caddyfiles in a real Caddy, on ports of this machine; https with an authority of its own."""

from __future__ import annotations

import os
import shutil
import ssl
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType

from tests.support.server import ROOT, Server, free_port
from tests.support.sockets import connect, get


class Caddy:
    """``with Caddy(folder, to_port) as caddy``: ``caddy.port`` answers when the block begins.

    With a ``name`` it speaks https for it, with a certificate of the authority whose own is the file ``authority``.
    """

    def __init__(
        self, folder: Path, to_port: int, *others: int, port: int | None = None, name: str = ""
    ) -> None:
        self.port = port or free_port()
        self._folder, self._name = folder, name
        self._config = "Caddyfile.machines" if others else "Caddyfile"
        places = " ".join(f"127.0.0.1:{each}" for each in (to_port, *others))
        # round robin: the harshest for servers that are replaced, each page comes from several of them
        self._where = (
            {"SHELF_SERVERS": places, "SHELF_POLICY": "round_robin"} if others else {"SHELF_SERVER": places}
        )

    @property
    def authority(self) -> Path:
        """The certificate of Caddy's own authority, as a keeper installs it on a phone."""
        return self._folder / "caddy/pki/authorities/local/root.crt"

    def __enter__(self) -> Caddy:
        found = shutil.which("caddy")
        assert found, "Caddy is missing; deploy/test installs it (Debian and Ubuntu: apt-get install caddy)"
        self._folder.mkdir(exist_ok=True)
        environment = {
            **os.environ,
            "SHELF_NAME": f"https://{self._name}:{self.port}"
            if self._name
            else f"http://127.0.0.1:{self.port}",
            "SHELF_TLS": "tls internal" if self._name else "",
            **self._where,
            "CADDY_ADMIN": f"127.0.0.1:{free_port()}",
            **dict.fromkeys(("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME"), str(self._folder)),
        }
        command = [found, "run", "--config", str(self._configuration()), "--adapter", "caddyfile"]
        self._log = (self._folder / "caddy.log").open("wb")
        self._process = subprocess.Popen(command, env=environment, stdout=self._log, stderr=self._log)
        self._wait_until_it_answers()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._process.kill()
        self._process.wait(10)
        self._log.close()

    def _ask(self) -> None:
        if not self._name:
            get(self.port)
            return
        trust = ssl.create_default_context(cafile=str(self.authority))  # raises until there is one
        with connect(self.port) as connection, trust.wrap_socket(connection, server_hostname=self._name):
            pass

    def _configuration(self) -> Path:
        """The shipped file; for https, too, but it leaves this machine's port 80 and its list of authorities alone."""
        shipped = ROOT / "deploy" / self._config
        if not self._name:
            return shipped
        harmless = self._folder / "Caddyfile"
        alone = "{\n\tauto_https disable_redirects\n\tskip_install_trust\n"
        harmless.write_text(shipped.read_text("utf-8").replace("{\n", alone, 1), "utf-8")
        return harmless

    def _wait_until_it_answers(self) -> None:
        deadline = time.monotonic() + 20
        while time.monotonic() < deadline and self._process.poll() is None:
            try:
                self._ask()
            except OSError:
                time.sleep(0.05)
            else:
                return
        self.__exit__(None, None, None)
        raise RuntimeError(f"Caddy did not start:\n{(self._folder / 'caddy.log').read_text()[-3000:]}")


@contextmanager
def proxied(folder: Path, name: str = "") -> Iterator[tuple[Server, Caddy]]:
    """A new server in ``folder`` that trusts one proxy, and the proxy; with a name it has https."""
    port = free_port()
    public_url = f"https://{name}:{port}" if name else f"http://127.0.0.1:{port}"
    server = Server(folder / "data", public_url=public_url)
    server.settings["BROODSHELF_TRUSTED_PROXY_HOPS"] = "1"
    server.start()
    try:
        with Caddy(folder / "caddy", server.port, port=port, name=name) as caddy:
            yield server, caddy
    finally:
        server.stop()
