"""What a template gives a component is held against the component's type: tests/support/node/types.mjs on examples."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]
COMPONENTS = """
import { html } from './html.js';

/** @param {{name: string, count: number, small?: boolean, children?: import('preact').ComponentChildren}} props */
export const Tag = ({ name, count, small = false, children }) => html`<p class=${small}>${name}${count}${children}</p>`;
/** @template {string} Code @param {{codes: Code[], onPick: (code: Code) => void}} props */
export const Pick = ({ codes, onPick }) => html`<button onClick=${() => codes.map(onPick)}></button>`;
/** @param {{open?: boolean}} props */
export const Door = ({ open }) => html`<i>${open}</i>`;
export const Rule = () => html`<hr />`;
"""
USED = """
import { html } from './components/html.js';
import { lazy } from './components/lazy.js';
import { Door, Pick, Rule, Tag } from './components/shown.js';
const Late = lazy(() => import('./components/shown.js'), 'Tag');
const all = { name: 'a', count: 1 };
/** @type {Array<'a' | 'b'>} */
const codes = ['a', 'b'];

export const page = html`
  <main class="any" misspelt="of an element">
    GIVEN
  </main>
`;
"""
RIGHT = {
    "all that it takes": '<${Tag} name="a" count=${1} small />',
    "without what may be left out": '<${Tag} name="a" count=${1} />',
    "a text of parts": '<${Tag} name="a ${1} b" count=${1} />',
    "what is Preact's own": '<${Tag} key="1" ref=${null} name="a" count=${1} />',
    "what stands within": '<${Tag} name="a" count=${1}>text <b>${1}</b><${Rule} /></${Tag}>',
    "several at once": "<${Tag} ...${all} small />",
    "one of several at once anew": '<${Tag} ...${all} name="b" />',
    "nothing where nothing is needed": "<${Door} /><${Rule} />",
    "one that is fetched later": '<${Late} name="a" count=${1} />',
    "a template in an expression": '${all && html`<${Tag} name="a" count=${1} />`}',
    "a choice of its codes": "<${Pick} codes=${codes} onPick=${(/** @type {'a' | 'b'} */ code) => code} />",
}
WRONG = {
    "misspelt": ('<${Tag} name="a" cuont=${1} />', "'cuont' does not exist"),
    "misspelt, may be left out": ('<${Tag} name="a" count=${1} smalls />', "'smalls' does not exist"),
    "missing": ('<${Tag} name="a" />', "'count' is missing"),
    "missing where none is given": ("<${Tag} />", "missing"),
    "missing among several at once": ("<${Tag} ...${{ name: 'a' }} />", "'count' is missing"),
    "of another type": ('<${Tag} name="a" count="1" />', "'string' is not assignable to type 'number'"),
    "something within what has nothing in it": ("<${Door}>text</${Door}>", "'children' does not exist"),
    "a prop where there are none": ("<${Rule} wide />", "Expected 0 arguments"),
    "misspelt, fetched later": ('<${Late} name="a" count=${1} smalls />', "'smalls' does not exist"),
    "misspelt, in an expression": (
        '${all && html`<${Tag} names="a" count=${1} />`}',
        "'names' does not exist",
    ),
    "misspelt, within another": (
        '<${Tag} name="a" count=${1}><${Door} opened /></${Tag}>',
        "'opened' does not exist",
    ),
    "a choice of other codes": (
        "<${Pick} codes=${codes} onPick=${(/** @type {'c'} */ code) => code} />",
        "not assignable",
    ),
}


AROUND = {
    "components/shown.js": COMPONENTS,
    "components/states.js": "/** @param {{words: string}} props */\nexport const Skeleton = ({ words }) => words;\n",
    "words/fetched.js": "/** @param {string} part */\nexport const hear = (part) => Promise.resolve(part);\n",
    "words/say.js": "/** @param {string} name */\nexport const say = (name) => name;\n",
}
"""Besides the phone's own html.js and lazy.js: what these two and the examples need."""


@pytest.fixture(scope="module")
def complaints(tmp_path_factory) -> dict[str, str]:
    """What is said of the examples, by file and line; each is a module with its number, all are checked at once."""
    pwa = tmp_path_factory.mktemp("pwa")
    for name in ("jsconfig.json", "vendor/types.d.ts", "components/html.js", "components/lazy.js"):
        (pwa / name).parent.mkdir(exist_ok=True)
        shutil.copy(TOP / "pwa" / name, pwa / name)
    for name, text in AROUND.items():
        (pwa / name).parent.mkdir(exist_ok=True)
        (pwa / name).write_text(text, "utf-8")
    for place, example in enumerate([*RIGHT.values(), *(example for example, _ in WRONG.values())]):
        (pwa / f"example-{place}.js").write_text(USED.replace("GIVEN", example), "utf-8")
    run = subprocess.run(
        ["node", "tests/support/node/types.mjs", pwa], cwd=TOP, capture_output=True, text=True, check=False
    )
    assert (run.returncode != 0, run.stderr) == (True, "")
    said: dict[str, str] = {}
    for each in run.stdout.split("\npwa/"):
        place, words = each.removeprefix("pwa/").split(": ", 1)
        said[place] = said.get(place, "") + words
    return said


def test_nothing_is_said_of_what_is_right_nor_of_the_components(complaints):
    assert set(complaints) == {module_and_line(case) for case in WRONG}


@pytest.mark.parametrize("case", WRONG)
def test_what_a_component_does_not_take_or_lacks_is_found_on_its_line(complaints, case):
    assert WRONG[case][1] in complaints[module_and_line(case)]


def module_and_line(case: str) -> str:
    """Where the checker has to find what is wrong."""
    line = USED[: USED.index("GIVEN")].count("\n") + 1
    return f"example-{len(RIGHT) + list(WRONG).index(case)}.js:{line}"
