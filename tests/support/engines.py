"""Chromium, Firefox and WebKit behind one small handle: go to an address, evaluate in the page, phone size."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any, Final

from playwright.sync_api import Browser
from tests.support.firefox import Firefox
from tests.support.webkit import webkit

WIDTH: Final = 390
HEIGHT: Final = 844


@dataclass(frozen=True)
class Engine:
    """``goto(url)`` loads an address; ``js(expression)`` evaluates one, waits for its promise, returns its value."""

    goto: Callable[[str], Any]
    js: Callable[[str], Any]


@contextmanager
def chromium_engine(chromium: Browser) -> Iterator[Engine]:
    """A context of its own in the Chromium that runs already."""
    context = chromium.new_context(viewport={"width": WIDTH, "height": HEIGHT}, has_touch=True)
    page = context.new_page()
    yield Engine(page.goto, lambda expression: page.evaluate(f"async () => ({expression})"))
    context.close()


@contextmanager
def firefox_engine(_chromium: Browser) -> Iterator[Engine]:
    """Firefox over WebDriver BiDi."""
    with Firefox({}) as browser:
        size = {"width": WIDTH, "height": HEIGHT}
        browser.command("browsingContext.setViewport", context=browser.context, viewport=size)
        yield Engine(browser.goto, browser.js)


@contextmanager
def webkit_engine(_chromium: Browser) -> Iterator[Engine]:
    """WebKitGTK; its window is as wide as its screen lets it be."""
    with webkit() as browser:
        browser.set_window_size(WIDTH, HEIGHT)

        def js(expression: str) -> Any:
            answer = browser.execute_async_script(
                f"const done = arguments[0]; (async () => ({expression}))()"
                ".then((value) => done(JSON.stringify({ value })), (why) => done(JSON.stringify({ why: String(why) })))"
            )
            found = json.loads(answer)
            if "why" in found:
                raise RuntimeError(found["why"])
            return found.get("value")

        yield Engine(browser.get, js)


ENGINES: Final = {"chromium": chromium_engine, "firefox": firefox_engine, "webkit": webkit_engine}
