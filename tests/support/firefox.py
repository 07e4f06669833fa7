"""Firefox ESR over WebDriver BiDi, without a driver program."""

from __future__ import annotations

import itertools
import json
import re
import shutil
import subprocess
import tempfile
import threading
import time
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager
from pathlib import Path
from types import TracebackType
from typing import Any

from websockets.sync.client import connect

BINARY = Path("/usr/bin/firefox-esr")
QUIET: Mapping[str, Any] = {
    "remote.prefs.recommended": False,
    "permissions.default.desktop-notification": 1,
    "alerts.useSystemBackend": False,
    "browser.shell.checkDefaultBrowser": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "app.update.disabledForTesting": True,
    "browser.aboutwelcome.enabled": False,
    "services.settings.server": "data:,#remote-settings-dummy/v1",
    "browser.safebrowsing.malware.enabled": False,
    "browser.safebrowsing.phishing.enabled": False,
    "toolkit.telemetry.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "browser.region.network.url": "",
    "extensions.update.enabled": False,
    "network.disable-localhost-when-offline": True,
    # what no page sees and every start pays for: a process ahead of need, a start page, built-in extensions, plugins
    "dom.ipc.processPrelaunch.enabled": False,
    "browser.newtab.preload": False,
    "browser.newtabpage.enabled": False,
    "browser.startup.page": 0,
    "extensions.enabledScopes": 0,
    "media.gmp-manager.updateEnabled": False,
    "media.gmp-provider.enabled": False,
}


def push_preferences(port: int) -> dict[str, Any]:
    """Let Firefox use the push service on this port of the loopback."""
    return {
        "dom.push.enabled": True,
        "dom.push.connection.enabled": True,
        "dom.push.serverURL": f"ws://127.0.0.1:{port}/",
        "dom.push.testing.allowInsecureServerURL": True,
    }


class Phone:
    """A page of Firefox. ``js`` evaluates in it and waits for promises."""

    def __init__(self, browser: Firefox, context: str) -> None:
        self.browser, self.context = browser, context
        self.is_offline = False

    def command(self, method: str, **parameters: Any) -> Any:
        """Give the browser a command that is about this page."""
        return self.browser.ask(method, context=self.context, **parameters)

    def goto(self, url: str) -> None:
        self.command("browsingContext.navigate", url=url, wait="complete")

    def js(self, expression: str, context: str | None = None) -> Any:
        """Evaluate an expression (awaited) and return its JSON value."""
        answer = self.browser.ask(
            "script.evaluate",
            expression=f"(async () => JSON.stringify(await ({expression})))()",
            target={"context": context or self.context},
            awaitPromise=True,
            userActivation=True,
        )
        if answer["type"] == "exception":
            raise RuntimeError(answer["exceptionDetails"]["text"])
        value = answer["result"].get("value")
        return None if value is None else json.loads(value)

    def until(self, expression: str, timeout_s: float = 20) -> Any:
        """Evaluate again and again until the value is truthy; fail with the page's text otherwise."""
        deadline = time.monotonic() + timeout_s
        while time.monotonic() < deadline:
            value = self.js(expression)
            if value:
                return value
            time.sleep(0.1)
        raise AssertionError(f"never true: {expression}\n{self.js('document.body.innerText')}")

    def shows(self, text: str) -> None:
        self.until(f"document.body.innerText.includes({json.dumps(text)})")

    def press(self, name: str, within: str = "document") -> None:
        """Press the first button or link that has this text as one of its lines."""
        lines = "e.innerText.split('\\n').map((line) => line.trim())"
        find = (
            f"[...{within}.querySelectorAll('button, a')].find((e) => {lines}.includes({json.dumps(name)}))"
        )
        self.until(f"Boolean({find})")
        self.js(f"({find}).click()")

    def type(self, field: str, text: str) -> None:
        """Fill the form field with this ``name`` attribute."""
        self.until(f"Boolean(document.querySelector('[name={field}]'))")
        self.js(f"(document.querySelector('[name={field}]').value = {json.dumps(text)})")

    def offline(self, value: bool) -> None:
        """Cut page, worker and push service off, or let them back; all of the browser's phones.

        Being offline only keeps Firefox from new connections; those that it has kept would go on fetching.
        """
        cut = "Services.obs.notifyObservers(null, 'net:prune-all-connections')" if value else "true"
        script = f"(Services.io.offline = {json.dumps(value)}, {cut}, true)"
        assert self.js(script, self.browser.chrome("browser.xhtml"))
        self.is_offline = value


class Firefox:
    """``with Firefox(preferences) as browser, browser.phone() as phone``."""

    def __init__(self, preferences: Mapping[str, Any]) -> None:
        if not BINARY.exists():
            raise RuntimeError(
                "Firefox is not installed; ./deploy/test installs it (Debian package firefox-esr)."
            )
        self.profile = Path(tempfile.mkdtemp(prefix="bs-ff-"))
        lines = (f"user_pref({json.dumps(k)}, {json.dumps(v)});" for k, v in {**QUIET, **preferences}.items())
        (self.profile / "user.js").write_text("\n".join(lines))
        self.numbers = itertools.count(1)

    def __enter__(self) -> Firefox:
        self.process = subprocess.Popen(
            [
                BINARY, "--headless", "--no-remote", "--profile", self.profile, "--remote-debugging-port", "0",
                "--remote-allow-system-access", "about:blank",
            ],
            stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
        )  # fmt: skip
        assert self.process.stdout is not None
        found = None
        for line in self.process.stdout:
            found = re.search(r"WebDriver BiDi listening on (ws://\S+)", line)
            if found:
                break
        assert found, "Firefox did not start"
        self.drain = threading.Thread(target=lambda: [None for _ in self.process.stdout or ()], daemon=True)
        self.drain.start()
        self.stack = ExitStack()
        # no pings: they come from a thread that draws from the random numbers of the whole process, and a test that
        # draws its cases at that moment takes that for its own doing
        self.socket = self.stack.enter_context(
            connect(f"{found[1]}/session", max_size=None, ping_interval=None)
        )
        self.ask("session.new", capabilities={})
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self.process.kill()  # asked to close, it would tidy a profile first that nobody reads again
        self.process.wait(5)
        self.stack.close()
        self.drain.join(5)
        if self.process.stdout is not None:
            self.process.stdout.close()
        shutil.rmtree(self.profile, ignore_errors=True)

    @contextmanager
    def phone(self) -> Iterator[Phone]:
        """A new page with storage, cookies and workers of its own; all of it goes at the end.

        Many of them share a browser, whose start costs ten times as much.
        """
        keeping = self.ask("browser.createUserContext")["userContext"]
        made = Phone(self, self.ask("browsingContext.create", type="tab", userContext=keeping)["context"])
        try:
            yield made
        finally:
            if made.is_offline:  # the next one is not
                made.offline(False)
            self.ask("browser.removeUserContext", userContext=keeping)

    def ask(self, method: str, **parameters: Any) -> Any:
        """Give a command of WebDriver BiDi and return its result."""
        number = next(self.numbers)
        self.socket.send(json.dumps({"id": number, "method": method, "params": parameters}))
        while True:
            message = json.loads(self.socket.recv(timeout=60))
            if message.get("id") == number:
                if message["type"] == "error":
                    raise RuntimeError(f"{message['error']}: {message['message']}")
                return message["result"]

    def chrome(self, part: str) -> str:
        """Return the browser's own context whose address holds ``part``."""
        tree = self.ask("browsingContext.getTree", **{"moz:scope": "chrome"})["contexts"]
        return str(next(c["context"] for c in tree if part in c["url"]))
