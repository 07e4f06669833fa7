"""What the tests of looks share: every screen and sheet of the app, and ways to show and measure them."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from PIL import Image
from playwright.sync_api import Page, expect
from tests.support.words import beginning, capital, like, text

ROOT: Final = Path(__file__).parents[2]
AXE: Final = (ROOT / "tests/support/node/node_modules/axe-core/axe.min.js").read_text()
LOOKS: Final = ("light", "dark", "red")
WIDTHS: Final = (320, 390, 768)
TEXT: Final = ("100%", "200%")
SET_LOOK: Final = """async ([look, text]) => {
  document.documentElement.dataset.look = look;
  document.documentElement.style.fontSize = text;
  for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
}"""

TURN: Final = """async (hash) => {
  const turn = (to) => location.hash === to || new Promise((turned) => {
    addEventListener('hashchange', () => setTimeout(turned), { once: true });
    location.hash = to;
  });
  await turn(hash === '#/shelf' ? '#/attention' : '#/shelf'); // a screen that stays keeps what was opened there
  await turn(hash);
}"""
"""Its second turn ends after the app has drawn the screen, or what stands there until its module is fetched."""
WHOLE: Final = """(hash) => {
  const busy = document.querySelectorAll('main .skeleton[aria-busy]').length;
  return document.querySelector('main:not(.plain) h1') !== null && busy === (hash === '#/look' ? 1 : 0);
}"""


@dataclass(frozen=True)
class State:
    """A screen, and what is done there before it is looked at."""

    name: str
    hash: str
    then: Callable[[Page], None] = lambda page: None


def press(name: str, exact: bool = False) -> Callable[[Page], None]:
    """Return a step that presses the first button of that name and waits for its sheet."""

    def step(page: Page) -> None:
        page.get_by_role("button", name=name, exact=exact).first.click()
        expect(page.get_by_role("dialog")).to_be_visible()

    return step


def open_all(page: Page) -> None:
    """Open every part that is folded away."""
    page.wait_for_function(
        "() => { const shut = [...document.querySelectorAll('main details:not([open])')];"
        " for (const each of shut) each.open = true;"
        " return shut.length === 0 && !document.querySelector('main [aria-busy]'); }"
    )


def picture(page: Page) -> None:
    """Take a picture, if there is none yet, and open it large."""
    expect(
        page.get_by_role("region", name=text("colony-diary")).get_by_role("listitem").first
    ).to_be_visible()
    if not page.get_by_role("button", name=beginning("photo-large")).count():
        drawn = io.BytesIO()
        Image.new("RGB", (80, 60), "#7a4a12").save(drawn, "JPEG")
        taken = {"name": "shelf.jpg", "mimeType": "image/jpeg", "buffer": drawn.getvalue()}
        page.get_by_label(text("photo-take")).set_input_files(taken)
    press(beginning("photo-large"))(page)


def count_on(page: Page) -> None:
    """Open a picture large and count on it, with all that frame and size show."""
    picture(page)
    sheet = page.get_by_role("dialog")
    sheet.get_by_role("button", name=text("counting-open")).click()
    expect(sheet.locator(".dot-sum strong")).to_be_visible()
    sheet.get_by_role("button", name=text("counting-sets-size")).click()


def taste(page: Page) -> None:
    """Start a tasting, if none runs, and show it."""
    if not page.locator("details[open]", has_text=text("tasting-title")).count():
        page.get_by_text(text("tasting-title")).click()
    begin, end = (page.get_by_role("button", name=text(f"tasting-{each}")) for each in ("go", "end"))
    expect(begin.or_(end)).to_be_visible()
    if begin.count():
        for food in ("cricket", "mealworm"):
            page.get_by_role("button", name=capital(text(f"food-{food}")), exact=True).click()
        begin.click()
    expect(end).to_be_visible()
    open_all(page)


def refuse(page: Page) -> None:
    """Let the server refuse two logs: one with a bad value, and an old one whose colony never came."""
    page.evaluate("""async () => {
      const build = document.body.dataset.build;
      const { openStore } = await import(`/static/${build}/signals/session.js`);
      const { rowsOf } = await import(`/static/${build}/signals/rows.js`);
      const { syncNow } = await import(`/static/${build}/signals/sync.js`);
      const ids = [0, 1].map(() => crypto.randomUUID()).map((id) => `${id.slice(0, 14)}7${id.slice(15)}`);
      const note = { colony_id: ids[0], text: 'Moved', happened_at: '2026-09-01T12:00:00.000+02:00' };
      await Promise.all([
        openStore().setMeta({ last_made_ms: 0 }), // as if this phone had made and heard nothing since
        openStore().enqueue([{ kind: 'note', id: ids[1], set: note }], Date.now() - 31 * 86_400_000),
      ]);
      await syncNow(); // alone: only then is it said that its colony will not come
      await openStore().enqueue([{ kind: 'colony', id: rowsOf('colony')[0].id, set: { queens: -3 } }]);
      await syncNow();
    }""")
    expect(page.get_by_role("button", name=text("attention-again")).first).to_be_visible()
    expect(page.get_by_label(text("history-field-queens")).first).to_be_visible()


def work_out(page: Page) -> None:
    """Let the calculator that is open answer its own defaults."""
    page.get_by_role("button", name=text("calculator-go")).click()
    expect(page.get_by_role("region", name=text("calculator-result"))).to_be_visible()


def look_ahead(page: Page) -> None:
    """Look ahead over the usual two weeks and open what is folded away."""
    page.get_by_role("button", name=text("holiday-go")).click()
    expect(page.get_by_role("heading", name="Amber", level=3)).to_be_visible()
    open_all(page)


def outlook_there(page: Page) -> None:
    """Wait for what to get."""
    expect(page.get_by_role("region", name=text("larder-get-title"))).to_be_visible()


def house_with_mail(page: Page) -> None:
    """Show the house as it is where the server has mail, an address waits for its code and a phone is silent."""
    person = page.evaluate("() => fetch('/api/me').then((answer) => answer.json())")["person_id"]
    people = [{"person_id": person, "address": "mira@example.org", "confirmed": False, "asked_ms": 0}]
    silent = [{"id": "a", "name": "Android phone", "person": "Jo", "why": "unheard"}]
    answers = {
        "**/api/mail": {"available": True, "people": people},
        "**/api/push/health": {"devices": [], "silent_elsewhere": silent},
    }
    for address, body in answers.items():
        page.context.route(address, lambda route, _request, body=body: route.fulfill(json=body))
    page.reload()
    expect(page.get_by_role("button", name=text("house-mail-anew"))).to_be_visible()
    expect(page.get_by_text(like("phone-nudges-elsewhere-unheard", who="Jo"))).to_be_visible()
    for address in answers:
        page.context.unroute(address)


def states(colony_id: str) -> list[State]:
    """Every screen and sheet that a keeper can see; the colony must have a plan."""
    colony = f"#/colony/{colony_id}"
    return [
        State("round", "#/round", open_all),
        State("several at once", "#/round", press(text("round-many"))),
        State("later", "#/round", press(beginning("part-labelled", label=text("round-later")))),
        State("shelf", "#/shelf"),
        State("what went", "#/gone"),
        State("picture", colony, picture),
        State("picture, counted", colony, count_on),
        State("colony", colony, open_all),
        State("history", colony, press(text("colony-past"))),
        State("history of a log", colony, press(beginning("event-counted"))),
        State(
            "colony, changed",
            colony,
            lambda page: page.get_by_role("button", name=text("colony-change")).click(),
        ),
        *(
            State(f"log of a {kind}", colony, press(text(f"event-kind-{kind}"), exact=True))
            for kind in ("feeding", "water", "check", "fault", "count", "note", "move")
        ),
        State("a new colony", "#/colony/new", open_all),
        State("welcome", f"#/welcome/{colony_id}", open_all),
        State("larder", "#/larder", outlook_there),
        State("add a food", "#/larder", press(text("larder-add"))),
        State("mix sugar water", "#/larder", press(text("larder-mix"))),
        State("calculators", "#/reckon", lambda page: expect(page.locator("main li")).not_to_have_count(0)),
        *(State(f"calculator {code}", f"#/reckon/{code}", work_out) for code in ("prey", "dilute")),
        State("hand over", "#/handover", open_all),
        State("before you go away", "#/handover", look_ahead),
        State("house", "#/settings"),
        State("house, with mail and silent phones", "#/settings", house_with_mail),
        State(
            "a new place", "#/places", lambda page: page.get_by_role("button", name=text("place-add")).click()
        ),
        State("attention", "#/attention"),
        State("labels", "#/labels"),
        State("scan", "#/at"),
        State("record", f"#/paper/{colony_id}"),
        State("every part", "#/look"),
        State("tasting", colony, taste),
        State("attention, refused", "#/attention", refuse),
    ]


def turn_to(page: Page, hash_: str) -> None:
    """Let the app that is open make a screen anew, also the one that it shows, and wait until that is there whole."""
    page.evaluate(TURN, hash_)
    page.wait_for_function(WHOLE, arg=hash_)


def show(page: Page, state: State) -> None:
    """Show a state in the app that is open, without motion."""
    page.emulate_media(reduced_motion="reduce")
    turn_to(page, state.hash)
    state.then(page)


def dress(page: Page, width: int, look: str, text: str) -> None:
    """Show what is there at another width, in another look, at another text size, laid out and drawn anew."""
    page.set_viewport_size({"width": width, "height": 900})
    page.evaluate(SET_LOOK, [look, text])


def axe_findings(page: Page) -> list[Any]:
    """Run axe over the page and return each broken rule with its first element."""
    if not page.evaluate("() => 'axe' in window"):
        page.evaluate(AXE)
    return page.evaluate(
        "() => axe.run({ resultTypes: ['violations'] })"  # all rules; no list of every element that keeps one
        ".then((r) => r.violations.map((v) => [v.id, v.nodes[0].html]))"
    )


MEASURE: Final = """() => {
  const whole = new CSSStyleSheet(); // what is out of view has no places yet
  whole.replaceSync('* { content-visibility: visible !important; }');
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, whole];
  const top = document.querySelector('dialog[open]') ?? document;
  const found = [...top.querySelectorAll('a[href], button, input, select, textarea, summary, [role=slider]')]
    .filter((each) => !each.closest('[inert]') && each.checkVisibility())
    .map((each) => (each.type === 'checkbox' ? each.closest('label') : each))
    .map((each) => {
      const box = each.getBoundingClientRect();
      const fixed = Boolean(each.closest('nav.bottom, header.top, .toast, .sheet-head, .stick'));
      const words = (each.getAttribute('aria-label') ?? each.textContent ?? '').trim().slice(0, 40);
      return { what: `${each.tagName} ${words}`, fixed,
        x: box.left, y: box.top + (fixed ? 0 : scrollY), right: box.right, bottom: box.bottom + (fixed ? 0 : scrollY) };
    });
  const round = (n) => Math.round(n * 10) / 10;
  const small = found.filter((each) => round(each.right - each.x) < 48 || round(each.bottom - each.y) < 48)
    .map((each) => `${each.what}: ${round(each.right - each.x)} x ${round(each.bottom - each.y)}`);
  const close = [];
  for (let i = 0; i < found.length; i += 1) for (let j = i + 1; j < found.length; j += 1) {
    const [a, b] = [found[i], found[j]];
    if (a.fixed !== b.fixed) continue;
    const across = Math.max(a.x, b.x) - Math.min(a.right, b.right);
    const down = Math.max(a.y, b.y) - Math.min(a.bottom, b.bottom);
    const gap = Math.max(across, down);
    if (round(gap) < 8) close.push(`${a.what} and ${b.what}: ${round(gap)}`);
  }
  const pen = document.createElement('canvas').getContext('2d');
  const cut = [...top.querySelectorAll('select')].filter((each) => each.checkVisibility()).filter((each) => {
    const style = getComputedStyle(each);
    pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const room_px = each.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
    return pen.measureText(each.selectedOptions[0]?.text ?? '').width > room_px;
  }).map((each) => each.selectedOptions[0].text);
  const over = document.documentElement.scrollWidth - innerWidth;
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== whole);
  return { small, close, cut, over };
}"""
