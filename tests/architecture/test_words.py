"""The phone's words: every message is said somewhere, and none that is not there.

A message that nobody says is fetched by every phone for nothing and translated for nobody. What is said by its id the
type checker looks up (pwa/messages.d.ts); here are the others: messages that no module names, and groups of codes.
"""

from __future__ import annotations

import json
import re
import subprocess
from functools import cache
from pathlib import Path

from tests.support.message_types import groups

from broodshelf.languages.entries import SOURCE, entries_of

ROOT = Path(__file__).parents[2]
PWA = ROOT / "pwa"
QUOTED = re.compile(r"""['"`]([a-z][a-z0-9-]*(?:\.[a-z]+)?)['"`]""")
SAID = re.compile(r"""\b(?:sayOf|sayIf|isSaid|choicesOf|inWords)\(\s*'([\w-]+)'""")
BY_SERVER = re.compile(r"""(?:\bsay_code\([^()]*?|section: str = )"(\w+)[\"]""")
TABLES = ("screens/field-words.js", "words/say.js")
"""Which group the codes of a field or of an argument belong to."""
ACORN = (ROOT / "tests/support/node/node_modules/acorn/dist/acorn.mjs").as_uri()
WALK = (ROOT / "tests/support/node/node_modules/acorn-walk/dist/walk.mjs").as_uri()
AT_THE_TOP = f"""
const {{ parse }} = await import('{ACORN}');
const {{ ancestor }} = await import('{WALK}');
const {{ readFileSync }} = await import('node:fs');
const SAYS = new Set(['say', 'sayOf', 'sayIf', 'isSaid', 'choicesOf', 'labelled', 'numeral', 'listed', 'together']);
const found = [];
for (const file of process.argv.slice(1)) {{
  const tree = parse(readFileSync(file, 'utf8'), {{ ecmaVersion: 2022, sourceType: 'module' }});
  ancestor(tree, {{
    CallExpression(node, around) {{
      const later = around.some(({{ type }}) => /Function|PropertyDefinition/.test(type));
      if (SAYS.has(node.callee.name) && !later) found.push(`${{file}}: ${{node.callee.name}}`);
    }},
  }});
}}
console.log(JSON.stringify(found));
"""


def test_every_message_of_the_phone_is_said_somewhere():
    quoted = {word for text in (*modules().values(), *server()) for word in QUOTED.findall(text)}
    by_server = {word for text in server() for word in BY_SERVER.findall(text)}
    tables = {word for name in TABLES for word in QUOTED.findall(modules()[PWA / name])}
    by_code = (
        {word for text in modules().values() for word in SAID.findall(text)}
        | (tables & {*groups()})
        | by_server
    )

    assert len(entries_of(SOURCE, for_phone=True)) > 1500
    assert [
        each
        for each in entries_of(SOURCE, for_phone=True)
        if each not in quoted
        and not any(each.startswith(f"{group}-") for group in by_code)
        and not any(word.partition(".")[0] == each for word in quoted)
    ] == []


def test_no_group_of_codes_is_said_that_has_no_messages():
    said = {word for text in modules().values() for word in SAID.findall(text)}

    assert len(said) > 40
    assert said - {*groups()} == set()


def test_nothing_is_said_before_the_messages_are_there():
    """At the top of a module they are not: the start reads them beside its modules."""
    command = ["node", "--input-type=module", "--eval", AT_THE_TOP, *(str(path) for path in modules())]
    listed = subprocess.run(command, check=True, capture_output=True, text=True, timeout=60).stdout

    assert json.loads(listed) == []


@cache
def modules() -> dict[Path, str]:
    """The phone's own modules, by path."""
    return {path: path.read_text() for path in PWA.rglob("*.js") if "vendor" not in path.parts}


@cache
def server() -> list[str]:
    """The server's modules, which say some of the phone's messages, too."""
    return [path.read_text() for path in (ROOT / "server").rglob("*.py")]
