"""Firefox and WebKit go through every screen and sheet at phone size, with one real act on those that matter.

Whatever threw, a heading that is not there, and anything wider than the screen fails the visit by name.
Longer than 300 lines because one list of screens and acts serves both engines.
"""

from __future__ import annotations

import json
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from typing import Any, Protocol

import pytest
from tests.support.firefox import Firefox
from tests.support.server import Server
from tests.support.webkit import webkit
from tests.support.words import beginning, capital, text

pytestmark = [
    pytest.mark.browser,
    pytest.mark.long,
    # selenium's own WebKitGTK driver still calls itself the old way
    pytest.mark.filterwarnings("ignore:setting remote_server_addr:DeprecationWarning"),
]

LISTEN = """(() => {
  window.troubles = [];
  const note = (what) => window.troubles.push(String(what?.stack ?? what?.message ?? what));
  addEventListener('error', (event) => note(event.error ?? event.message));
  addEventListener('unhandledrejection', (event) => note(event.reason));
  console.error = (...all) => note(all.join(' '));
  return true;
})()"""
HELP = """
  const lines = (e) => [e.getAttribute('aria-label') ?? '', ...e.innerText.split('\\n')].map((each) => each.trim());
  const top = () => document.querySelector('dialog[open]') ?? document;
  const is = (name) => (each) => each === name || (name.endsWith(':') && each.startsWith(name));
  const find = (name) => [...top().querySelectorAll('button, a, summary')].find((e) => lines(e).some(is(name)));
"""


class Page(Protocol):
    """What both engines are asked: to go somewhere, and to evaluate an expression that may be a promise."""

    def goto(self, url: str) -> None: ...

    def js(self, expression: str) -> Any: ...


class WebKitPage:
    def __init__(self, driver: Any) -> None:
        self.driver = driver

    def goto(self, url: str) -> None:
        self.driver.get(url)

    def js(self, expression: str) -> Any:
        told = self.driver.execute_async_script(
            f"const done = arguments[0]; (async () => JSON.stringify(await ({expression})))()"
            ".then((value) => done({ value }), (error) => done({ error: String(error) }))"
        )
        assert "error" not in told, told["error"]
        return json.loads(told["value"]) if told.get("value") is not None else None


@contextmanager
def firefox_page(request: pytest.FixtureRequest) -> Iterator[Page]:
    firefox: Firefox = request.getfixturevalue("firefox")
    with firefox.phone() as phone:
        phone.command("browsingContext.setViewport", viewport={"width": 390, "height": 844})
        yield phone


@contextmanager
def webkit_page(_request: pytest.FixtureRequest) -> Iterator[Page]:
    with webkit() as driver:
        driver.set_window_size(390, 844)
        yield WebKitPage(driver)


class Walk:
    """One browser on its way through the app."""

    def __init__(self, page: Page, server: Server) -> None:
        self.page, self.url = page, server.url

    def until(self, expression: str, what: str) -> None:
        deadline = time.monotonic() + 20
        while time.monotonic() < deadline:
            if self.page.js(f"(() => {{ {HELP} return Boolean({expression}); }})()"):
                return
            time.sleep(0.05)
        raise AssertionError(f"{what}\n{self.page.js('document.body.innerText')}\n{self.troubles()}")

    def troubles(self) -> list[str]:
        return list(self.page.js("window.troubles ?? []"))

    def shows(self, text: str) -> None:
        self.until(f"document.body.innerText.includes({json.dumps(text)})", f"never shown: {text}")

    def press(self, name: str) -> None:
        self.until(
            f"find({json.dumps(name)}) && !find({json.dumps(name)}).disabled", f"nothing to press: {name}"
        )
        self.page.js(f"(() => {{ {HELP} find({json.dumps(name)}).click(); return true; }})()")

    def fill(self, field: str, text: str) -> None:
        box = f"top().querySelector('[name={field}]')"
        self.until(f"Boolean({box})", f"no field {field}")
        self.page.js(
            f"(() => {{ {HELP} const box = {box}; box.value = {json.dumps(text)};"
            " box.dispatchEvent(new Event('input', { bubbles: true })); return true; })()"
        )

    def visit(self, hash_: str, heading: str) -> None:
        """Go to a screen by its address and look at it once it is there."""
        self.page.js(f"(() => {{ location.hash = {json.dumps(hash_)}; return true; }})()")
        self.until(
            f"[...document.querySelectorAll('main h1')].some((each) => each.innerText === {json.dumps(heading)})",
            f"{hash_} has no heading {heading}",
        )
        if hash_ != "#/look":  # which shows the bones themselves
            self.until("!document.querySelector('main .skeleton[aria-busy]')", f"{hash_} stays bare")
        self.fits(hash_)

    def sheet(self, button: str, *acts: str) -> None:
        """Open a sheet, look at it, and press ``acts`` in it one after the other, or close it."""
        self.press(button)
        self.until("document.querySelector('dialog[open] h2, dialog[open] h1')", f"no sheet for {button}")
        self.fits(button)
        for act in acts or (text("frame-close"),):
            self.press(act)
        self.until("!document.querySelector('dialog[open]')", f"the sheet of {button} stays")

    def fits(self, where: str) -> None:
        over = self.page.js(
            "Math.max(document.documentElement.scrollWidth - innerWidth,"
            " ...[...document.querySelectorAll('dialog[open]')].map((each) => each.scrollWidth - each.clientWidth))"
        )
        assert over <= 0, f"{where} is {over} px wider than the screen"
        assert not self.troubles(), f"{where}: {self.troubles()}"


def begin(walk: Walk, server: Server) -> str:
    """Claim the household, add a colony and return its id."""
    walk.page.goto(f"{server.url}/#/claim/{server.claim_code()}")
    walk.page.js(LISTEN)
    walk.fill("person", "Mira")
    walk.press(text("start-claim-it"))
    walk.until("document.querySelector('main [name=species]')", "no form for a colony")
    walk.fill("name", "Amber")
    walk.fill("species", "Lasius niger")
    walk.fits("a new colony")
    walk.press(text("colony-form-add"))
    walk.shows(text("welcome-plan"))
    walk.shows(text("saving-synced"))
    walk.fits("welcome")
    return str(walk.page.js("location.hash.split('/')[2]"))


def the_round(walk: Walk, colony: str) -> None:
    walk.visit("#/round", text("round-title"))
    walk.sheet(text("round-many"))
    walk.sheet(beginning("part-labelled", label=text("round-later")))
    walk.press(text("round-done-short"))
    walk.shows(beginning("round-progress", part=1))
    walk.visit("#/shelf", text("shelf-title"))


def the_colony(walk: Walk, colony: str) -> None:
    walk.visit(f"#/colony/{colony}", "Amber")
    walk.sheet(text("event-kind-feeding"), text("log-go"))
    for kind in ("water", "check", "fault", "note", "move"):
        walk.sheet(text(f"event-kind-{kind}"))
    walk.sheet(text("event-kind-count"), text("event-coarse-some"), text("log-count"))
    walk.shows(text("saving-synced"))
    walk.sheet(text("colony-past"))
    walk.press(text("tasting-title"))
    for food in (capital(text("food-cricket")), capital(text("food-mealworm")), text("tasting-go")):
        walk.press(food)
    walk.shows(beginning("tasting-next"))
    walk.press(text("colony-charts"))
    walk.fits("charts and tasting")
    walk.press(text("colony-change"))
    walk.until("document.querySelector('main form [name=name]')", "no form to change the colony")
    walk.fits("the colony, changed")


DRAW = """
  const canvas = Object.assign(document.createElement('canvas'), { width: 480, height: 300 });
  const pen = canvas.getContext('2d');
  pen.fillStyle = '#c8c8c8';
  pen.fillRect(0, 0, 480, 300);
  pen.fillStyle = '#202020';
  for (let i = 0; i < 6; i += 1) {
    for (const [x, size] of [[-10, 9], [0, 6], [10, 7]]) {
      pen.beginPath();
      pen.ellipse(60 + 70 * i + x, 150 + 40 * (i % 3), size, 5, 0, 0, 7);
      pen.fill();
    }
  }
  const bytes = Uint8Array.from(atob(canvas.toDataURL('image/jpeg', 0.9).split(',')[1]), (c) => c.charCodeAt(0));
"""
TAKE = f"""(() => {{ {DRAW}
  const files = new DataTransfer();
  files.items.add(new File([bytes], 'tube.jpg', {{ type: 'image/jpeg' }}));
  const field = document.querySelector('main input[type=file]');
  field.files = files.files;
  field.dispatchEvent(new Event('change', {{ bubbles: true }}));
  return true;
}})()"""


LOOK = f"""(async () => {{ {DRAW}
  const {{ startLooker }} = await import(`/static/${{document.body.dataset.build}}/counting/looker.js`);
  const looker = startLooker();
  const {{ blob, sha256 }} = await looker.small(new Blob([bytes], {{ type: 'image/jpeg' }}));
  const {{ dots }} = await looker.look(blob, sha256, {{ body_px: 36, frame: null, pale: false }});
  looker.end();
  return dots.filter((dot) => dot.what === 'worker' && dot.score >= 0.5).length;
}})()"""


def a_picture(walk: Walk, colony: str) -> None:
    """Have six ants proposed by the worker; take a picture of them and keep the count.

    WebKitGTK keeps no blobs in the database of an automated session, so no pictures: there the worker alone is asked.
    """
    assert walk.page.js(LOOK) == 6
    if isinstance(walk.page, WebKitPage):
        return
    walk.visit(f"#/colony/{colony}", "Amber")
    walk.until("document.querySelector('main input[type=file]')", "no way to take a picture")
    walk.page.js(TAKE)
    walk.until("document.querySelector('.photo-button img')", "no picture was taken")
    walk.page.js("(() => { document.querySelector('.photo-button').click(); return true; })()")
    walk.press(text("counting-open"))
    walk.until("top().querySelector('.dot-sum strong')", "nothing was looked for")
    assert walk.page.js("document.querySelector('.dot-sum').innerText") == text("event-workers", count=6)
    walk.fits("counting on a picture")
    walk.press(text("counting-keep"))
    walk.shows(text("counting-kept"))
    walk.press(text("frame-close"))


def the_larder(walk: Walk, colony: str) -> None:
    walk.visit("#/larder", text("larder-title"))
    walk.sheet(text("larder-add"), text("larder-go"))
    walk.shows(text("larder-used"))
    walk.sheet(text("larder-mix"))
    walk.visit("#/reckon", text("calculator-title"))
    walk.visit("#/reckon/prey", text("reckon-prey"))
    walk.press(text("calculator-go"))
    walk.until(f"document.querySelector('section[aria-label=\"{text('calculator-result')}\"]')", "no result")
    walk.fits("what comes out")


def handing_over(walk: Walk, colony: str) -> None:
    walk.visit("#/handover", text("handover-title"))
    walk.press(text("holiday-go"))
    walk.shows(text("holiday-travel"))
    walk.fill("name", "Grandpa")
    walk.press("Amber")
    walk.press(text("handover-go"))
    walk.shows("Grandpa")
    walk.press(text("handover-make-link"))
    walk.shows(text("handover-link-once"))
    walk.fits("a pass with its link")


def the_house(walk: Walk, colony: str) -> None:
    walk.visit("#/settings", text("house-title"))
    walk.shows(text("phone-nudges-title"))
    walk.visit("#/places", text("place-title"))
    walk.press(text("place-add"))
    walk.fill("name", "Bookcase")
    walk.press(text("colony-form-save"))
    walk.press(text("place-reading"))
    walk.fill("temperature", "24")
    walk.press(text("place-log"))
    walk.shows(text("saving-synced"))
    walk.visit("#/gone", text("history-gone-title"))
    walk.visit("#/look", text("look-title"))
    walk.visit("#/attention", text("attention-title"))


def paper_and_labels(walk: Walk, colony: str) -> None:
    walk.visit("#/labels", text("label-title"))
    walk.until("document.querySelector('.labels svg')", "no label is drawn")
    walk.visit("#/at", text("label-scan-title"))
    walk.visit(f"#/paper/{colony}", text("paper-record", name="Amber"))


def the_stand_in(walk: Walk, link: str) -> None:
    """The same browser with the pass instead of the keeper: the one screen of the stand-in."""
    walk.page.js(
        "fetch('/api/logout', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: '{}' })"
        ".then((answer) => answer.status)"
    )
    walk.page.goto(link.replace("/#", "/?#"))  # another address than that of the page, so that the app starts
    walk.page.js(LISTEN)
    walk.press(text("start-open-pass"))
    walk.shows(text("stand-in-yours"))
    walk.until("document.querySelector('main h1')", "no heading")
    walk.fits("stand-in")


@pytest.mark.parametrize("engine", [firefox_page, webkit_page], ids=["firefox", "webkit"])
def test_every_screen_and_sheet_works_in(
    engine: Callable[[pytest.FixtureRequest], Any], request: pytest.FixtureRequest, new_server: Server
):
    with ExitStack() as stack:
        walk = Walk(stack.enter_context(engine(request)), new_server)
        colony = begin(walk, new_server)
        for part in (the_round, a_picture, the_colony, the_larder, the_house, paper_and_labels, handing_over):
            part(walk, colony)
        the_stand_in(walk, walk.page.js("document.querySelector('a.address').href"))
