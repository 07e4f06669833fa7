"""Every screen and sheet in Chromium, Firefox and WebKit at phone size: nothing throws, all is words, all fits."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from tests.support.engines import ENGINES, Engine
from tests.support.server import ROOT, Server

pytestmark = [
    pytest.mark.browser,
    # selenium's own WebKitGTK driver still calls itself the old way
    pytest.mark.filterwarnings("ignore:setting remote_server_addr:DeprecationWarning"),
]
WALKER = (ROOT / "tests/support/walker.js").read_text()
KINDS = ("Water", "Check", "Count", "Note", "Nest move", "Brood added", "Something is wrong")
CALCULATORS = ("sugar_water", "dilute", "cooling", "prey", "tube_water", "brood")


def command(server: Server, name: str) -> str:
    """Run ``broodshelf name`` on the server's data and return what it printed."""
    done = subprocess.run(
        [sys.executable, "-m", "broodshelf.cli", name], env=server.environment(), cwd=ROOT,
        capture_output=True, text=True, check=True, timeout=60,
    )  # fmt: skip
    return done.stdout


@pytest.fixture(scope="module")
def shelf(tmp_path_factory) -> Server:
    """The invented shelf behind a server, shared by all engines."""
    server = Server(Path(tmp_path_factory.mktemp("engines")) / "data")
    server.settings = {"BROODSHELF_PUBLIC_URL": server.url}
    command(server, "demo")
    server.start()
    yield server
    server.stop()


class Walk:
    """The steps of ``walker.js`` as methods: ``walk.press('Add it')``."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine

    def __getattr__(self, step: str):
        return lambda *words: self.engine.js(
            f"window.walk.{step}({', '.join(json.dumps(word) for word in words)}).then(() => null)"
        )


def come_back_in(engine: Engine, server: Server) -> Walk:
    """Sign in by ``broodshelf pair``: the phone knows who comes back, and asks for no name."""
    link = re.search(r"http\S+", command(server, "pair"))
    assert link
    engine.goto(link[0])
    engine.js(f"(() => {{ {WALKER}; return null; }})()")
    walk = Walk(engine)
    walk.shows("You are Mira (invented)")
    assert engine.js("document.querySelector('[name=person]') === null")
    walk.press("Open the shelf")
    walk.visit("#/round", "The round")
    walk.synced()
    return walk


@pytest.mark.parametrize("name", ENGINES)
def test_every_screen_and_sheet_works_in(name, chromium, shelf):
    with ENGINES[name](chromium) as engine:
        walk = come_back_in(engine, shelf)
        colony = see_the_shelf(engine, walk)
        see_a_colony(engine, walk, colony, name)
        see_the_larder(walk, name)
        see_the_house(walk, name)
        hand_over(engine, walk, colony, name)
        walk.visit("#/round", "The round")
        walk.synced()

        assert engine.js("window.walk.faults") == []


def see_the_shelf(engine: Engine, walk: Walk) -> str:
    """See the round with its sheets and the shelf; return the id of the colony Amber."""
    walk.glance("Several at once")
    walk.glance("Later")
    walk.glance("Other")
    walk.visit("#/shelf", "The shelf")
    walk.shows("Amber")
    colony = engine.js(
        "[...document.querySelectorAll('a.board')].find((each) => each.innerText.includes('Amber')).hash.slice(9)"
    )
    for hash_, heading in (("#/gone", "What went"), ("#/labels", "Tube labels"), ("#/at", "Scan a label")):
        walk.visit(hash_, heading)
    walk.visit("#/colony/new", "A new colony")
    walk.visit("#/shelf", "The shelf")
    walk.press("The quiet queen")
    walk.shows("Nobody has counted yet")
    return str(colony)


def see_a_colony(engine: Engine, walk: Walk, colony: str, name: str) -> None:
    """See one colony with every sheet; log a feeding and a note; begin a tasting or see the one that runs."""
    here = f"#/colony/{colony}"
    walk.visit(here, "Amber")
    for kind in KINDS:
        walk.glance(kind)
    walk.sheet("Feeding")
    walk.press("Log the feeding")
    walk.shows("Saved on this phone")
    walk.sheet("Note")
    engine.js("(document.querySelector('dialog textarea').value = 'Seen', 0)")
    engine.js("document.querySelector('dialog textarea').dispatchEvent(new Event('input', {bubbles: true}))")
    walk.press("Keep the note")
    walk.unfold("Over the months")
    walk.shows("Share as a picture")
    for chart in (2, 3, 1):
        engine.js(f"document.querySelector('[aria-label=Chart] button:nth-child({chart})').click()")
    walk.synced()
    walk.glance("Its history")
    walk.glance("Seen")
    walk.unfold("What they like")
    walk.shows("the tasting")
    if not engine.js("document.querySelector('main').innerText.includes('End the tasting')"):
        walk.press("Cricket")
        walk.press("Mealworm")
        walk.press("Start the tasting")
    walk.shows("End the tasting")
    walk.visit(f"#/welcome/{colony}", "on the shelf")
    walk.visit(f"#/paper/{colony}", "Record of Amber")
    walk.visit(here, "Amber")
    walk.press("Change")
    walk.shows("Change Amber")


def see_the_larder(walk: Walk, name: str) -> None:
    """See the larder; add a food, and let every calculator answer."""
    walk.visit("#/larder", "The larder")
    walk.glance("Mix sugar water")
    walk.sheet("Add a food")
    walk.fill("name", f"From {name}")
    walk.fill("amount", "20")
    walk.press("Add it")
    walk.shows(f"From {name}")
    walk.visit("#/reckon", "Calculators")
    for code in CALCULATORS:
        walk.visit(f"#/reckon/{code}", "")
        walk.press("Work it out")
        walk.shows("Formula:")
        walk.engine.js(
            "new Promise((done, fail) => { const end = Date.now() + 10000; const look = () => {"
            " if (document.querySelector('main [role=status] .lead')) done(1);"
            " else if (Date.now() > end) fail(new Error('no result')); else setTimeout(look, 30); }; look(); })"
        )


def see_the_house(walk: Walk, name: str) -> None:
    """See the house; make a place, read it."""
    walk.visit("#/settings", "The house")
    walk.shows("Phones")
    walk.visit("#/places", "Places")
    walk.press("Add a place")
    walk.fill("name", f"Cabinet of {name}")
    walk.press("Save")
    walk.shows(f"Cabinet of {name}")
    walk.press("Log a reading")
    walk.fill("moist", "47")
    walk.press("Log the reading")
    walk.shows("Last read: 47 % humidity")
    walk.visit("#/look", "How it looks")
    walk.visit("#/attention", "For your attention")


def hand_over(engine: Engine, walk: Walk, colony: str, name: str) -> None:
    """Look ahead, make a pass, see it as the stand-in will, and its sheet of paper."""
    walk.visit("#/handover", "Hand over")
    walk.press("Look ahead")
    walk.shows("If a colony travels with you")
    walk.fill("name", f"Guest of {name}")
    walk.press("Amber")
    walk.press("Make the pass")
    walk.shows(f"Guest of {name}")
    walk.synced()
    walk.glance("See it as they will")
    made = engine.js(
        "[...document.querySelectorAll('main article')].find((each) => each.innerText.includes("
        f"{json.dumps(f'Guest of {name}')})).querySelector('a[href^=\"#/paper\"]').hash"
    )
    walk.visit(made, "Looking after the shelf")
