"""A stand-in's first minute in every language: from the link to the first log, by keyboard and by names alone.

On 320 px and with text at 200 %, in Chromium, Firefox and WebKit. How long it takes: ``tests.bench.stand_in_minute``.
"""

from __future__ import annotations

import json
import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path
from typing import Protocol

import pytest
from playwright.sync_api import Browser, Page
from selenium.webdriver import ActionChains
from selenium.webdriver.common.keys import Keys
from tests.phone.test_helping import FULL, LOG, link_of_a_pass
from tests.support.firefox import Firefox, Phone
from tests.support.kept_shelf import KeptShelf, claim_by_hand, kept_shelf
from tests.support.server import Server
from tests.support.webkit import webkit

from broodshelf.languages import languages, say

pytestmark = [
    pytest.mark.browser,
    pytest.mark.long,
    # selenium's own WebKitGTK driver still calls itself the old way
    pytest.mark.filterwarnings("ignore:setting remote_server_addr:DeprecationWarning"),
]

NARROW = {"width": 320, "height": 568}
LARGE = "() => { document.documentElement.style.fontSize = '200%'; return true; }"
FOCUSED = """() => {
  const it = document.activeElement;
  return it?.getAttribute('aria-label') ?? it?.innerText?.trim() ?? '';
}"""
OVER = "() => document.documentElement.scrollWidth - innerWidth"
SPEAK = "(tag) => { localStorage.setItem('language', tag); return true; }"
MOST_TABS = 60
KEYS = {"tab": Keys.TAB, "enter": Keys.RETURN}
"""As WebDriver says them, with and without BiDi."""


class Hands(Protocol):
    """One browser with a keyboard: a function that is evaluated, and one key."""

    def goto(self, url: str) -> None: ...

    def evaluate(self, function: str, argument: object = None) -> object: ...

    def key(self, name: str) -> None: ...


class ChromiumHands:
    def __init__(self, page: Page) -> None:
        self.page = page
        self.goto = page.goto
        self.evaluate = page.evaluate

    def key(self, name: str) -> None:
        self.page.keyboard.press(name.capitalize())


class FirefoxHands:
    def __init__(self, phone: Phone) -> None:
        self.phone = phone
        self.goto = phone.goto

    def evaluate(self, function: str, argument: object = None) -> object:
        return self.phone.js(f"({function})({json.dumps(argument)})")

    def key(self, name: str) -> None:
        if name == "enter":  # keys that come over BiDi activate no button in Firefox 153 without a window
            self.evaluate("() => { document.activeElement.click(); return true; }")
            return
        presses = [{"type": kind, "value": KEYS[name]} for kind in ("keyDown", "keyUp")]
        self.phone.command(
            "input.performActions",
            actions=[{"type": "key", "id": "keyboard", "actions": presses}],
        )


class WebKitHands:
    def __init__(self, driver) -> None:  # type: ignore[no-untyped-def] # of selenium, which has no types
        self.driver = driver
        self.goto = driver.get

    def evaluate(self, function: str, argument: object = None) -> object:
        return self.driver.execute_script(f"return ({function})(arguments[0]);", argument)

    def key(self, name: str) -> None:
        ActionChains(self.driver).send_keys(KEYS[name]).perform()


Phones = Callable[[], AbstractContextManager[Hands]]
"""What makes phones: one at a time, each with nothing on it."""


@contextmanager
def chromium_phones(request: pytest.FixtureRequest) -> Iterator[Phones]:
    chromium: Browser = request.getfixturevalue("chromium")

    @contextmanager
    def phone() -> Iterator[Hands]:
        context = chromium.new_context(viewport=NARROW)
        yield ChromiumHands(context.new_page())
        context.close()

    yield phone


@contextmanager
def firefox_phones(request: pytest.FixtureRequest) -> Iterator[Phones]:
    firefox: Firefox = request.getfixturevalue("firefox")

    @contextmanager
    def phone() -> Iterator[Hands]:
        with firefox.phone() as made:
            made.command("browsingContext.setViewport", viewport=NARROW)
            yield FirefoxHands(made)

    yield phone


@contextmanager
def webkit_phones(_request: pytest.FixtureRequest) -> Iterator[Phones]:
    """One browser, as its start costs half of a phone: whatever it keeps is of one server, but for cookies."""
    with webkit() as driver:
        driver.set_window_size(NARROW["width"], NARROW["height"])

        @contextmanager
        def phone() -> Iterator[Hands]:
            yield WebKitHands(driver)
            driver.delete_all_cookies()

        yield phone


def until(hands: Hands, ready: Callable[[], object], what: str) -> None:
    deadline = time.monotonic() + 30
    while not ready():
        if time.monotonic() > deadline:
            raise AssertionError(f"{what}\n{hands.evaluate('() => document.body.innerText')}")
        time.sleep(0.05)


def press(hands: Hands, name: str) -> None:
    """Go to what begins with this name by Tab alone, and press Enter."""
    listed = f"() => document.body.textContent.includes({json.dumps(name)})"
    until(hands, lambda: hands.evaluate(listed), f"not on the page: {name}")
    hands.evaluate(LARGE)
    for _ in range(MOST_TABS):
        hands.key("tab")
        if str(hands.evaluate(FOCUSED)).startswith(name):
            hands.key("enter")
            return
    raise AssertionError(f"no way by Tab to {name}\n{hands.evaluate('() => document.body.innerText')}")


def first_log(hands: Hands, language: str) -> None:
    """Open the pass and say of the first task that it was done; fail where anything is wider than the screen."""
    press(hands, say(language, "start-open-pass"))
    done = say(language, "stand-in-gave")
    until(
        hands,
        lambda: hands.evaluate("() => document.querySelectorAll('.how-to svg').length > 2"),
        "no drawn steps",
    )
    hands.evaluate(LARGE)
    assert hands.evaluate("() => document.documentElement.lang") == language
    assert hands.evaluate(OVER) <= 0, f"{language}: wider than the screen"
    press(hands, done)
    saved = (say(language, "saving-saved"), say(language, "saving-synced"))
    until(
        hands,
        lambda: hands.evaluate(
            "(words) => words.some((each) => document.body.innerText.includes(each))", list(saved)
        ),
        "never said to be saved",
    )


@pytest.fixture(scope="module")
def handed(chromium: Browser, tmp_path_factory: pytest.TempPathFactory) -> tuple[KeptShelf, str]:
    """A shelf with one colony and a pass for it, and the pass's address without its host."""
    link: list[str] = []

    def make(page: Page, server: Server) -> None:
        claim_by_hand(page, server)
        page.evaluate(LOG, [FULL])
        link.append(link_of_a_pass(page, server).removeprefix(server.url))

    return kept_shelf(chromium, tmp_path_factory.mktemp("handed"), make), link[0]


@pytest.mark.parametrize(
    "engine", [chromium_phones, firefox_phones, webkit_phones], ids=["chromium", "firefox", "webkit"]
)
def test_a_stand_in_logs_in_every_language_by_keyboard_and_names_alone(
    engine, request, handed, tmp_path: Path
):
    shelf, address = handed
    with engine(request) as phone:
        for language in languages():
            server = Server(shelf.copy_to(tmp_path / language)).start()
            try:
                with phone() as hands:
                    # of our origin without the app; Firefox shows healthz in a page of its own, which stores nothing
                    hands.goto(f"{server.url}/static/{server.build()}/icons/tube.svg")
                    assert hands.evaluate("() => JSON.stringify(localStorage)") == "{}"
                    hands.evaluate(SPEAK, language)
                    hands.goto(f"{server.url}/{address.lstrip('/')}")
                    first_log(hands, language)
            finally:
                server.stop()
