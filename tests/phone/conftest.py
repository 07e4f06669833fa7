"""Real Chromium at phone size, and a real server behind it."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from playwright.sync_api import Browser, BrowserContext, Page, expect
from tests.support.kept_shelf import (
    KEPT,
    PHONE,
    KeptShelf,
    add_colony,
    claim_by_hand,
    kept_shelf,
    move_in,
    was_claimed,
)
from tests.support.once_a_run import made_once
from tests.support.server import Server
from tests.support.templates import Templates
from tests.support.words import text

__all__ = ["add_colony"]
NO_BACKGROUND_SYNC = "delete ServiceWorkerRegistration.prototype.sync;"


@pytest.fixture(scope="session")
def claimed_shelf(chromium: Browser, run_folder: Path) -> KeptShelf:
    """Mira's shelf with one colony, claimed by hand once a run."""

    def claim_in(folder: Path) -> None:
        folder.mkdir()
        kept_shelf(chromium, folder, claim_by_hand)

    return KeptShelf(made_once(run_folder / "claimed", claim_in) / KEPT)


@pytest.fixture
def server(tmp_path: Path, claimed_shelf: KeptShelf) -> Iterator[Server]:
    """A server with Mira's shelf."""
    made = Server(claimed_shelf.copy_to(tmp_path / "data")).start()
    yield made
    made.stop()


@pytest.fixture
def new_server(tmp_path: Path, templates: Templates) -> Iterator[Server]:
    """A server that nobody has claimed yet."""
    templates.of_an_app("sqlite", tmp_path / "new")
    made = Server(tmp_path / "new").start()
    yield made
    made.stop()


@contextmanager
def opening(chromium: Browser, **usual: Any) -> Iterator[Callable[..., Page]]:
    """Open pages, each in a context of its own that is a phone but for ``usual`` and what is said; close them all."""
    contexts: list[BrowserContext] = []

    def opened(begin: str | None = None, **more: Any) -> Page:
        context = chromium.new_context(**{**PHONE, **usual, **more})
        contexts.append(context)
        if begin:
            context.add_init_script(begin)
        page = context.new_page()
        page.set_default_timeout(15_000)
        return page

    yield opened
    for context in contexts:
        context.close()


@pytest.fixture
def phone(chromium: Browser, server: Server, request: pytest.FixtureRequest) -> Iterator[Callable[..., Page]]:
    """Make phones: each a context of its own, with its own storage.

    A test ``without_worker`` is about what a screen shows and does: each context would fetch and keep the whole app
    once more, which costs half of a phone. Whatever goes offline, is updated or is pushed to has its worker.

    A phone makes no promise of background sync unless asked: Chromium takes a test's cut for a network, fires at
    once, and a worker that starts anew then sends what the test wants to see waiting.
    """
    workers = "block" if request.node.get_closest_marker("without_worker") else "allow"
    with opening(chromium, service_workers=workers) as opened:

        def make(*, background_sync: bool = False) -> Page:
            return opened(None if background_sync else NO_BACKGROUND_SYNC)

        yield make


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
    """Make a new page the phone of Mira, who has claimed the household and added Amber; by hand if nobody has yet."""
    if was_claimed(server):
        move_in(page, server)
    else:
        claim_by_hand(page, server)


def open_colony(page: Page, server: Server, name: str = "Amber") -> None:
    page.goto(f"{server.url}/#/shelf")
    page.get_by_role("link", name=name).first.click()
    expect(page.get_by_role("region", name=text("colony-diary"))).to_be_visible()


def worker_ready(page: Page) -> None:
    """Wait until the worker controls the page, so that a reload works offline.

    What comes between it and the server then is ``tests.phone.between``, not Playwright's ``route``.
    """
    page.evaluate(
        "() => navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller ? null :"
        " new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, {once: true})))"
    )
