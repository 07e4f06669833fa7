"""https by an authority of one's own (docs/https.md, the fifth way): the shipped Caddyfile and a real browser."""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Error, Playwright, expect
from tests.support.caddy import Caddy, proxied
from tests.support.chromium import launched
from tests.support.kept_shelf import PHONE
from tests.support.server import Server
from tests.support.words import text

pytestmark = pytest.mark.browser
NAME = "shelf.test"  # .test is nobody's (RFC 6761), and unlike localhost no browser trusts it by its name
HERE = f"--host-resolver-rules=MAP {NAME} 127.0.0.1"


@pytest.fixture
def shelf(tmp_path: Path) -> Iterator[tuple[Server, Caddy]]:
    """A new server and a proxy with https for its name."""
    with proxied(tmp_path, NAME) as made:
        yield made


@pytest.fixture
def who_trusts(shelf: tuple[Server, Caddy], playwright: Playwright, tmp_path: Path) -> Iterator[Browser]:
    """A browser whose owner has installed the authority."""
    kept_in = tmp_path / "home/.pki/nssdb"
    kept_in.mkdir(parents=True)
    tool = shutil.which("certutil")
    assert tool, (
        "certutil is missing; deploy/test installs it (Debian and Ubuntu: apt-get install libnss3-tools)"
    )
    database = ["-d", f"sql:{kept_in}"]
    subprocess.run([tool, "-N", *database, "--empty-password"], check=True)
    added = ["-A", "-n", "shelf", "-t", "C,,", "-i", str(shelf[1].authority)]
    subprocess.run([tool, *added, *database], check=True)
    with launched(playwright, more=(HERE,), home=tmp_path / "home") as browser:
        yield browser


def test_a_phone_that_trusts_the_authority_claims_the_shelf_and_keeps_it_without_a_connection(
    shelf, who_trusts
):
    server, caddy = shelf
    phone = who_trusts.new_context(**PHONE)
    page = phone.new_page()
    page.goto(f"https://{NAME}:{caddy.port}/#/claim/{server.claim_code()}")
    page.get_by_label(text("start-your-name")).fill("Mira")
    page.get_by_role("button", name=text("start-claim-it")).click()
    expect(page.get_by_role("navigation")).to_be_visible()
    page.evaluate("navigator.serviceWorker.ready")

    assert page.evaluate("[isSecureContext, 'PushManager' in window]") == [True, True]
    session = next(each for each in phone.cookies() if "session" in each["name"])
    assert (session["secure"], session["httpOnly"], session["name"].startswith("__Host-")) == (
        True,
        True,
        True,
    )

    phone.set_offline(True)
    page.reload()
    expect(page.get_by_role("navigation")).to_be_visible()
    phone.close()


def test_a_phone_without_the_authority_opens_nothing(shelf, playwright, tmp_path):
    _, caddy = shelf
    with launched(playwright, more=(HERE,), home=tmp_path) as browser:
        page = browser.new_page()
        with pytest.raises(Error, match=re.escape("ERR_CERT_AUTHORITY_INVALID")):
            page.goto(f"https://{NAME}:{caddy.port}/")


def test_the_strict_transport_header_comes_through_the_proxy(shelf, who_trusts):
    _, caddy = shelf
    answer = who_trusts.new_page().goto(f"https://{NAME}:{caddy.port}/")

    assert answer is not None
    assert answer.headers["strict-transport-security"].startswith("max-age=31536000")
