"""The app shell: one build id, a complete precache list, a hash that matches, caching that cannot get stuck.

Longer than 300 lines because what is served, how it is packed and what it weighs are one promise.
"""

from __future__ import annotations

import base64
import gzip
import hashlib
import importlib
import json
import re
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path

import brotli
import pytest
from tests.bench.phone_cost import bytes_shipped
from tests.support.phone_bytes import CODE, SPOKEN, count, served, sum_of

from broodshelf.web import compact
from broodshelf.web.join import join_start
from broodshelf.web.parcels import DECODER, ONLINE
from broodshelf.web.shell import LIBRARIES, START_PATH, STYLES, Shell

PWA = Path(__file__).parents[2] / "pwa"
TSC = Path(__file__).parents[1] / "support/node/node_modules/.bin/tsc"


def test_the_import_map_is_allowed_by_its_hash(keeper):
    page = keeper.get("/")
    inline = re.search(r'<script type="importmap">(.*?)</script>', page.text)[1]
    digest = base64.b64encode(hashlib.sha256(inline.encode()).digest()).decode()

    assert f"'sha256-{digest}'" in page.headers["Content-Security-Policy"]
    assert page.text.count("<script") == 2


def test_all_that_the_app_needs_without_a_connection_is_fetched_ahead_once_and_is_served(keeper):
    """The rest: what only people read who look at a server, and what browsers keep with the worker by themselves."""
    worker = keeper.get("/worker.js").text
    ahead = json.loads(re.search(r"\{\"files.*?}", worker)[0])
    here = ahead["decoder"].removesuffix(DECODER)
    answers = {path: keeper.get(path) for path in (*ahead["files"], *ahead["parcels"], ahead["decoder"])}
    unpacked = {
        here + name for path in ahead["parcels"] for name in unpacked_from(answers[path].data.decode())
    }

    assert {answer.status_code for answer in answers.values()} == {200}
    assert not unpacked & answers.keys()
    wanted = {
        f"{here}{path.relative_to(PWA).as_posix()}"
        for path in PWA.rglob("*")
        if path.suffix in {".js", ".mjs", ".svg", ".png"}
        and path.name not in {"worker.js", "tube-512.png"}
        and path.parent.name != "worker"
        and not path.as_posix().endswith(ONLINE)
    }
    joined = {here + module for members in Shell(PWA, {}).joined.values() for module in members}
    wanted = wanted - joined | {here + name for name in START_PATH}
    assert wanted | {f"{here}catalogue.json", f"{here}style.css"} == {
        path for path in unpacked | answers.keys() if path.startswith(here)
    } - set(ahead["parcels"])


def test_a_file_in_a_parcel_is_the_one_at_its_address(keeper):
    ahead = json.loads(re.search(r"\{\"files.*?}", keeper.get("/worker.js").text)[0])
    here = ahead["decoder"].removesuffix(DECODER)

    for address in ahead["parcels"]:
        files = unpacked_from(keeper.get(address).data.decode())
        for name in [*files][::9]:
            alone = keeper.get(here + name)
            assert (alone.text, alone.content_type) == (files[name], "text/javascript; charset=utf-8")


def unpacked_from(parcel: str) -> dict[str, str]:
    """The scripts of a parcel by name, as the worker takes them out."""
    parts = parcel.split("\0")
    return dict(zip(parts[::2], parts[1::2], strict=True))


def test_what_a_browser_holds_already_is_not_sent_again(keeper):
    for address in ("/", "/worker.js", f"/static/{keeper.get('/healthz').json['build']}/main.js"):
        first = keeper.get(address, **{"Accept-Encoding": "gzip"})
        again = keeper.get(address, **{"Accept-Encoding": "gzip", "If-None-Match": first.headers["ETag"]})
        plain = keeper.get(address, **{"If-None-Match": first.headers["ETag"]})

        assert (again.status_code, again.data) == (304, b"")
        assert plain.status_code == 200


def test_a_file_of_a_page_comes_with_short_headers_and_may_do_nothing_alone(keeper):
    address = f"/static/{keeper.get('/healthz').json['build']}/icons/tube.svg"
    headers = keeper.get(address).headers

    assert headers["Content-Security-Policy"] == "default-src 'none'"
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Referrer-Policy"] == "no-referrer"
    assert headers["Cross-Origin-Resource-Policy"] == "same-origin"
    assert len(str(headers)) < 450


def test_the_app_without_charts_and_labels_stays_within_its_bytes():
    """With one language at most 100 kB with brotli, which is the goal; the others are what there is."""
    counted = count(served())

    assert sum_of(counted, CODE)["br"] <= 78_300
    assert sum_of(counted, CODE)["gzip"] <= 89_300
    assert sum_of(counted, SPOKEN)["br"] <= 100_000
    assert counted["messages of the start"]["br"] <= 8_700
    counting = counted["counting on pictures"]["br"]
    assert counting <= 16_500
    # with the drawings of brood and places, fetched with the charts
    assert sum_of(counted)["br"] - counting <= 149_200


def test_the_measurement_of_bytes_counts_the_same():
    measured = bytes_shipped()

    assert measured["the app without charts and labels, br"] == sum_of(count(served()), CODE)["br"]
    assert measured["number of scripts before the first control"] == 2


def test_static_files_are_immutable_and_page_and_worker_are_not(keeper):
    build = keeper.get("/healthz").json["build"]

    assert "immutable" in keeper.get(f"/static/{build}/main.js").headers["Cache-Control"]
    assert keeper.get("/").headers["Cache-Control"] == "no-cache"
    assert keeper.get("/worker.js").headers["Cache-Control"] == "no-cache"
    assert keeper.get(f"/static/{build}/main.js").content_type.startswith("text/javascript")


def test_another_build_is_never_answered_with_this_builds_files(keeper):
    assert keeper.get("/static/0000000000000000/main.js").status_code == 404


def test_the_page_asks_for_two_scripts_and_leads_the_modules_that_they_are_made_of_there(keeper):
    """Also a library that a library needs: ``signals`` imports ``signals-core`` in the middle of its only line."""
    page = keeper.get("/").text
    here = f"/static/{keeper.get('/healthz').json['build']}/"
    led = json.loads(re.search(r'<script type="importmap">(.*?)</script>', page)[1])["imports"]

    assert re.findall('rel="modulepreload" href="([^"]+)"', page) == [here + name for name in START_PATH]
    assert led[f"{here}screens/round.js"] == led["preact"] == f"{here}main.js"
    assert led[f"{here}database/store.js"] == f"{here}shared.js"
    assert f"{here}screens/settings.js" not in led  # loaded when it is first shown
    assert {f"{here}vendor/{path.name}" for path in (PWA / "vendor").glob("*js")} <= led.keys()
    assert {keeper.get(address).status_code for address in {*led, *led.values()} if address[0] == "/"} == {
        200
    }


def test_vendored_libraries_are_what_their_list_says():
    listed = json.loads((PWA / "vendor/vendor.json").read_text())["files"]

    for entry in listed:
        assert entry["sha256"] == hashlib.sha256((PWA / "vendor" / entry["file"]).read_bytes()).hexdigest()
        assert (PWA / "vendor" / entry["licence_text"]).is_file()
    assert {e["file"] for e in listed} == {
        p.relative_to(PWA / "vendor").as_posix() for p in (PWA / "vendor").rglob("*js")
    }


@pytest.fixture()
def without_packages(monkeypatch):
    """A machine that there are no wheels of the extra ``compact`` for."""
    for package in ("brotli", "minify"):
        monkeypatch.setitem(sys.modules, package, None)
    importlib.reload(compact)
    yield
    monkeypatch.undo()
    importlib.reload(compact)


def test_without_the_packages_comments_stay_at_home_and_no_code_or_line_moves(tmp_path, without_packages):
    """The referee is TypeScript, which prints both without comments."""
    served = scripts(Shell(PWA, {}))
    sources = source_of(served)
    printed = printed_by_typescript(tmp_path, {"source": sources, "served": served})

    assert len(served) > 60
    assert printed["source"] == printed["served"]
    assert [n for n, text in served.items() if text.count("\n") != sources[n].count("\n")] == []


def test_with_them_every_script_is_smaller_and_gives_what_its_source_gives(tmp_path):
    """The referee is TypeScript, which reads both and says what each gives to others."""
    served = scripts(Shell(PWA, {}))
    sources = source_of(served)
    given = {
        side: {name: gives(text) for name, text in files.items()}
        for side, files in printed_by_typescript(tmp_path, {"source": sources, "served": served}).items()
    }

    assert given["source"] == given["served"]
    assert {"Task", "taskTitle", "CompactTask"} <= given["source"]["components/task.js"] & given["source"][
        "main.js"
    ]
    assert [n for n in served if len(served[n]) >= len(sources[n]) and not n.startswith("vendor")] == []


SAID = "const said = []; const say = (word) => { said.push(word); return [word]; };\n"


@pytest.mark.parametrize(
    "script",
    [
        "const a = say('a');\nconst [b] = say('b');\nconst c = say('c');\nconst [d] = say(b + c);",
        "function f() { const a = say('a'); const { length } = say('b'); say(a + length); }\nf();",
        "async function f() {\n  const a = await say('a');\n  const [b] = await say(`${a}b`);\n  say(b);\n}\nf();",
    ],
)
def test_the_minifier_keeps_the_order_of_what_is_done(script):
    whole = f"{SAID}{script}\nconsole.log(JSON.stringify(said));"
    small = compact.compact({"a.js": whole.encode()})["a.js"].decode()

    assert len(small) < len(whole)
    assert run_by_node(small) == run_by_node(whole)


@pytest.mark.parametrize(
    "markup",
    [
        '<p class="a"\n    id="b">${1}\n  ${2}\n  <b>x</b>\n</p>',
        "<p>some words\nand more ${1}\n  <b>x</b> <i>y</i></p>\n  ${2}",
        '${[html`<i />\n  ${2}`]} \n <input value=${3}\n    ...${{ id: "x" }} />',
    ],
)
def test_markup_is_the_same_to_htm_without_its_line_breaks(markup):
    htm = base64.b64encode((PWA / "vendor/htm.module.js").read_bytes()).decode()
    whole = (
        f"import htm from 'data:text/javascript;base64,{htm}';\nconst html = htm.bind((...made) => made);\n"
        f"console.log(JSON.stringify(html`{markup}`));"
    )
    small = compact.compact({"a.js": whole.encode()})["a.js"].decode()

    assert small.count("\n") < markup.count("\n")
    assert run_by_node(small) == run_by_node(whole)


def run_by_node(script: str) -> str:
    command = ["node", "--input-type=module", "--eval", script]
    return subprocess.run(command, check=True, capture_output=True, text=True, timeout=60).stdout


def test_no_script_leans_on_an_order_that_the_minifier_may_change():
    """It moves what is taken apart before the declaration of the same sort that it follows: two ``let`` in a row."""
    moved = re.compile(r"^[ \t]*let \w[^\n]*\n[ \t]*(?:const|let) [\[{]", re.M)
    ours = [path for path in PWA.rglob("*.js") if path.name != "decode.js"]

    assert [path.name for path in ours if moved.search(path.read_text())] == []


def test_no_served_script_uses_a_name_before_it_is_declared(tmp_path):
    """The referee is TypeScript. The minifier moves ``const [a] = (b)`` before what ``b`` needs."""
    for name, text in scripts(Shell(PWA, {})).items():
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(text)
    options = {
        "allowJs": True, "checkJs": True, "noEmit": True, "noResolve": True, "types": [],
        "target": "esnext", "module": "esnext", "moduleResolution": "bundler", "lib": ["es5"],
    }  # fmt: skip
    (tmp_path / "tsconfig.json").write_text(json.dumps({"compilerOptions": options, "include": ["**/*.js"]}))
    (tmp_path / "moved.js").write_text("export function moved() { const a = [b], b = 1; return a; }")

    said = subprocess.run([TSC, "-p", tmp_path], capture_output=True, text=True, timeout=120).stdout

    early = {
        re.split(r"[(:]", line)[0] for line in said.splitlines() if re.search(r"TS24(48|49|50|54)\b", line)
    }
    assert {Path(each).name for each in early} == {"moved.js"}  # the one that shows that TypeScript looks


def test_without_the_packages_the_app_is_served_all_the_same(without_packages, keeper):
    page = keeper.get("/", **{"Accept-Encoding": "br, gzip"})
    address = re.search(r"/static/\w+/main\.js", gzip.decompress(page.data).decode())[0]
    plain = keeper.get(address)

    assert page.headers["Content-Encoding"] == "gzip"
    assert "// whatever wrote" not in plain.text
    assert "async function loadCatalogue" in plain.text


@pytest.mark.parametrize(
    ("accepted", "encoding"),
    [
        ("gzip, deflate, br, zstd", "br"),
        ("gzip, deflate", "gzip"),
        ("br;q=0.5, gzip", "gzip"),
        ("br;q=0, *", "gzip"),
        ("*", "br"),
        ("identity, br;q=0.5", None),
        ("br;q=0, gzip;q=0", None),
        ("deflate", None),
        (None, None),
    ],
)
def test_a_script_comes_as_the_browser_likes_it_best(keeper, accepted, encoding):
    """The qualities of RFC 9110, section 12.5.3; of what is liked alike, the smallest."""
    address = f"/static/{keeper.get('/healthz').json['build']}/main.js"
    unpack = {"br": brotli.decompress, "gzip": gzip.decompress, None: bytes}[encoding]

    answer = keeper.get(address, **({"Accept-Encoding": accepted} if accepted else {}))

    assert answer.headers.get("Content-Encoding") == encoding
    assert answer.headers["Vary"] == "Accept-Encoding"
    assert unpack(answer.data) == keeper.get(address).data


def scripts(shell: Shell) -> dict[str, str]:
    return {name: file.body.decode() for name, file in shell.files.items() if name.endswith(".js")}


def source_of(names: Iterable[str]) -> dict[str, str]:
    """Return the scripts as they are before anything is left out: files, or what the server joins of files."""
    files = {
        path.relative_to(PWA).as_posix(): path.read_text()
        for path in PWA.rglob("*")
        if path.suffix in {".js", ".mjs"}
    }
    files |= {name: joined.text() for name, joined in join_start(files, LIBRARIES).items()}
    return {name: files[name] for name in names}


def gives(text: str) -> set[str]:
    """Return the names that a module exports."""
    taken = re.findall(r"^export const \{([^}]*)\} =", text, re.M)
    named = re.findall(r"^export (?:async )?(?:function\*?|class|const|let|var) ([\w$]+)", text, re.M)
    listed = re.findall(r"^export \{([^}]*)\}", text, re.M)
    parts = [part for each in (*listed, *taken) for part in each.split(",") if part]
    return {*named, *(part.split(" as ")[-1].strip() for part in parts)}


def printed_by_typescript(folder: Path, sides: dict[str, dict[str, str]]) -> dict[str, dict[str, str]]:
    """Let TypeScript print every script without comments and spaces of its own. It fails on what it cannot read."""
    for side, files in sides.items():
        for name, text in files.items():
            (folder / side / name).parent.mkdir(parents=True, exist_ok=True)
            (folder / side / name).write_text(text)
    out = folder / "printed"
    (folder / "tsconfig.json").write_text(
        json.dumps(
            {
                "compilerOptions": {
                    "allowJs": True, "noCheck": True, "noResolve": True, "removeComments": True, "target": "esnext",
                    "module": "esnext", "moduleResolution": "bundler", "rootDir": ".", "outDir": str(out), "types": [],
                    "lib": ["es5"],
                },
                "include": [f"{side}/**/*.js" for side in sides],
            }
        )
    )  # fmt: skip
    subprocess.run([TSC, "-p", folder], check=True, capture_output=True, timeout=120)
    return {
        side: {
            path.relative_to(out / side).as_posix(): path.read_text() for path in (out / side).rglob("*.js")
        }
        for side in sides
    }


def test_the_one_style_sheet_holds_every_style_file():
    assert {PWA / name for name in STYLES} == set((PWA / "style").glob("*.css"))
