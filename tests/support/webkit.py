"""WebKitGTK's MiniBrowser under a virtual screen: the nearest thing to a phone's Safari on a Linux machine."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from selenium.webdriver import WebKitGTK
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

DRIVER = Path("/usr/bin/WebKitWebDriver")


def _browser() -> Path:
    found = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"))
    if not found or not DRIVER.exists():
        raise RuntimeError("WebKitGTK is not installed; ./deploy/test installs it (webkit2gtk-driver, xvfb).")
    return found[-1]


@contextmanager
def _virtual_screen() -> Iterator[str]:
    """Start Xvfb and give its display; the server picks a free number itself."""
    read, write = os.pipe()
    screen = subprocess.Popen(
        ["Xvfb", "-displayfd", str(write), "-screen", "0", "430x932x24", "-nolisten", "tcp"],
        pass_fds=[write],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    try:
        with os.fdopen(read) as pipe:
            yield f":{pipe.readline().strip()}"
    finally:
        screen.terminate()
        screen.wait(10)


@contextmanager
def webkit() -> Iterator[WebKitGTK]:
    """Start the browser with an empty profile; everything that was started is ended."""
    binary = _browser()
    with _virtual_screen() as display:
        environment = {
            **os.environ,
            "DISPLAY": display,
            "LANG": "en_US.UTF-8",
            "GDK_BACKEND": "x11",
            "LIBGL_ALWAYS_SOFTWARE": "1",
            "WEBKIT_DISABLE_COMPOSITING_MODE": "1",
            "NO_AT_BRIDGE": "1",
        }
        options = Options()
        options.binary_location = str(binary)
        options.add_argument("--automation")
        service = Service(executable_path=str(DRIVER), env=environment)
        driver = WebKitGTK(options=options, service=service)
        try:
            driver.set_script_timeout(30)
            yield driver
        finally:
            driver.quit()
