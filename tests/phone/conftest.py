"""Real Chromium at phone size, and a real server behind it."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, BrowserContext, Page, expect
from tests.support.server import Server
from tests.support.words import text

NO_BACKGROUND_SYNC = "delete ServiceWorkerRegistration.prototype.sync;"


@pytest.fixture
def server(tmp_path: Path) -> Iterator[Server]:
    made = Server(tmp_path / "data").start()
    yield made
    made.stop()


@pytest.fixture
def phone(chromium: Browser, server: Server) -> Iterator[Callable[..., Page]]:
    """Make phones: each a context of its own, with its own storage.

    A phone makes no promise of background sync unless asked: Chromium takes a test's cut for a network, fires at
    once, and a worker that starts anew then sends what the test wants to see waiting.
    """
    contexts: list[BrowserContext] = []

    def make(*, background_sync: bool = False) -> Page:
        context = chromium.new_context(
            viewport={"width": 390, "height": 844},
            has_touch=True,
            timezone_id="Europe/Vienna",
            locale="en-GB",
        )
        contexts.append(context)
        if not background_sync:
            context.add_init_script(NO_BACKGROUND_SYNC)
        page = context.new_page()
        page.set_default_timeout(15_000)
        return page

    expect.set_options(timeout=15_000)
    yield make
    for context in contexts:
        context.close()


@pytest.fixture
def picture(tmp_path: Path) -> Path:
    """A picture as a camera makes it: large, on its side, with the place where it was taken."""
    chance = random.Random(5)
    tiles = Image.frombytes("RGB", (60, 40), chance.randbytes(60 * 40 * 3)).resize((3000, 2000))
    exif = Image.Exif()
    exif[0x0112] = 6
    exif.get_ifd(0x8825)[2] = (48.0, 12.0, 0.0)
    tiles.save(tmp_path / "shelf.jpg", "JPEG", quality=95, exif=exif)
    return tmp_path / "shelf.jpg"


def claim(page: Page, server: Server) -> None:
    """Claim the server's household as Mira and add a colony in a test tube."""
    page.goto(f"{server.url}/#/claim/{server.claim_code()}")
    page.get_by_label(text("start.your_name")).fill("Mira")
    page.get_by_role("button", name=text("start.claim_it")).click()
    add_colony(page, "Amber")


def add_colony(page: Page, name: str) -> None:
    page.get_by_role("textbox", name=text("colony-form.name"), exact=True).fill(name)
    page.get_by_role("combobox", name=text("colony-form.species")).fill("Lasius niger")
    page.get_by_role("button", name=text("colony-form.add")).click()
    expect(page.get_by_role("heading", name=text("welcome.plan"))).to_be_visible()
    expect(page.get_by_text(text("saving.synced"))).to_be_visible()


def open_colony(page: Page, server: Server, name: str = "Amber") -> None:
    page.goto(f"{server.url}/#/shelf")
    page.get_by_role("link", name=name).first.click()
    expect(page.get_by_role("region", name=text("colony.diary"))).to_be_visible()


def worker_ready(page: Page) -> None:
    """Wait until the worker controls the page, so that a reload works offline."""
    page.evaluate(
        "() => navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller ? null :"
        " new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, {once: true})))"
    )
