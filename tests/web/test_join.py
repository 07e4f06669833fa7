"""Modules that are joined do what they do apart. The referee is Node, which runs both."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path

import pytest

from broodshelf.web.compact import compact
from broodshelf.web.join import PAGE, SHARED, Joined, JoinError, Modules, join_start
from broodshelf.web.shell import LIBRARIES, START_PATH, find_folder

GLOBALS = Path(__file__).parents[1] / "support/node/node_modules/globals/globals.json"
WAYS = {
    "a/first.js": "console.log('first');\nexport const one = 1;\nconst hidden = 'of the first';\n"
    "export function told() { return hidden; }\n",
    "a/second.js": "import { one as uno, told } from './first.js';\nconsole.log('second', uno, told());\n"
    "const hidden = 'of the second';\nexport class Two { say() { return hidden; } }\n"
    "export async function* counted() { yield uno; }\n",
    "library.mjs": "var t=3;console.log('library');export{t as three};",
    "passing.mjs": "import{three as n}from'lib';import{one as o}from'./a/first.js';export{three}from'lib';"
    "const e=n+o;export{e as four};",
    "whole.mjs": "const a = () => 'whole';\nexport default a;\n",
    "b/late.js": "export const late = 'later';\n",
    "b/third.js": "import whole from 'all';\nimport {\n  three,\n  four,\n} from '../passing.mjs';\n"
    "import { Two } from '../a/second.js';\n"
    "console.log('third', three, four, whole(), new Two().say());\n"
    "export const load = () => import('./late.js');\n",
    "main.js": "import { load } from './b/third.js';\nimport { counted } from './a/second.js';\n"
    "const hidden = 'of main';\nasync function open() {\n"
    "  for await (const each of counted()) console.log(each);\n  console.log((await load()).late, hidden);\n}\n"
    "void open();\n",
}
NAMES = {"lib": "library.mjs", "all": "whole.mjs"}


def joined(sources: dict[str, str], entry: str = "main.js", libraries: dict[str, str] | None = None) -> str:
    modules = Modules(sources, libraries or {})
    file = Joined(modules)
    for module in modules.in_order(entry):
        file.add(module)
    return file.text()


def said(folder: Path, files: dict[str, str]) -> str:
    for name, text in files.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text)
    (folder / "package.json").write_text('{"type": "module"}')
    command = ["node", folder / "main.js"]
    return subprocess.run(command, check=True, capture_output=True, text=True, timeout=60).stdout


def test_joined_modules_say_the_same_in_the_same_order_small_or_not(tmp_path):
    apart = {
        name: text.replace("'lib'", "'./library.mjs'").replace("'all'", "'../whole.mjs'")
        for name, text in WAYS.items()
    }
    one = {"main.js": joined(WAYS, libraries=NAMES), "b/late.js": WAYS["b/late.js"]}
    small = {name: body.decode() for name, body in compact({n: t.encode() for n, t in one.items()}).items()}

    expected = said(tmp_path / "apart", apart)

    assert [line.split()[0] for line in expected.splitlines()] == [
        "library", "first", "second", "third", "1", "later",
    ]  # fmt: skip
    assert said(tmp_path / "one", one) == expected
    assert said(tmp_path / "small", small) == expected
    assert len(small["main.js"]) < len(one["main.js"])


@pytest.mark.parametrize(
    ("files", "why"),
    [
        (
            {"main.js": "import { a } from './a.js';\n", "a.js": "import { b } from './main.js';\n"},
            "main.js → a.js → main.js: these import each other in a circle",
        ),
        (
            {
                "main.js": "import { a } from './a.js';\nimport { b } from './b.js';\n",
                "a.js": "export const a = 1;\n",
                "b.js": "export const a = 2, b = 3;\n",
            },
            "a.js and b.js both export a; rename one",
        ),
        (
            {"main.js": "import { a } from './a.js';\n", "a.js": "export let a = 1;\n"},
            "a.js: 'export let a = 1;' at the top of a module cannot be joined",
        ),
        (
            {"main.js": "import * as all from './a.js';\n", "a.js": "export const a = 1;\n"},
            "main.js: \"import * as all from './a.js';\" at the top of a module cannot be joined",
        ),
        (
            {"main.js": "const words = await fetch('/words');\n"},
            "main.js: \"const words = await fetch('/words');\" at the top of a module cannot be joined",
        ),
        (
            {"main.js": "import { b } from './a.js';\n", "a.js": "export const a = 1;\n"},
            "main.js imports b, which is not there",
        ),
        (
            {
                "main.js": "import { b } from './b.js';\n",
                "a.js": "export const a = 1;\n",
                "b.js": "export { a as b } from './a.js';\n",
            },
            "passes on under another name",
        ),
    ],
)
def test_what_would_do_something_else_in_one_file_is_refused_by_name(files, why):
    with pytest.raises(JoinError, match=re.escape(why)):
        joined(files)


def sources() -> dict[str, str]:
    folder = find_folder()
    return {
        path.relative_to(folder).as_posix(): path.read_text()
        for path in folder.rglob("*")
        if path.suffix in {".js", ".mjs"}
    }


def exported(text: str) -> set[str]:
    """Return the names that a module exports, found in another way than the joiner finds them."""
    listed = re.findall(r"\bexport ?(?:const )?\{([^}]*)\}", text)
    declared = re.findall(r"^export (?:async )?(?:function\*?|class|const) ([\w$]+)", text, re.M)
    return {
        *declared,
        *(each.split(" as ")[-1].strip() for part in listed for each in part.split(",") if each),
    }


def test_the_files_of_the_start_export_all_that_their_modules_export():
    """Screens that are loaded later find each name there, whichever module they name."""
    found = sources()
    files = join_start(found, LIBRARIES)

    for name in START_PATH:
        members = [module for module in files[name].members if module != PAGE]
        wholes = {"whole_htm"} & set(files[name].exported)
        wanted = set().union(*(exported(found[module]) for module in members)) - {""}
        assert set(files[name].exported) - wholes == wanted


def test_page_and_worker_share_one_file_and_the_worker_gets_nothing_of_the_page():
    files = join_start(sources(), LIBRARIES)

    assert {"database/store.js", "sync/drain.js"} <= set(files[SHARED].members)
    assert set(files["worker.js"].members) == {"worker/shell.js", "worker/events.js", "worker.js"}
    assert "from '/static/{{build}}/shared.js'" in files["worker.js"].text()
    assert "from './shared.js'" in files[PAGE].text()


def test_no_joined_module_exports_a_name_that_browsers_have():
    """A module that means the browser's own would get the other one. The browser's own: the list of ``globals``."""
    known = json.loads(GLOBALS.read_text())
    browsers = {name for where in ("builtin", "browser", "serviceworker") for name in known[where]}

    assert {"fetch", "caches", "name", "Map"} <= browsers
    for file in join_start(sources(), LIBRARIES).values():
        assert set(file.exported) & browsers == set()
