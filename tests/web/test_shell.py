"""The app shell: one build id, a complete precache list, a hash that matches, caching that cannot get stuck."""

from __future__ import annotations

import base64
import hashlib
import json
import re
import subprocess
from pathlib import Path

from broodshelf.web.shell import STYLES, Shell

PWA = Path(__file__).parents[2] / "pwa"
TSC = Path(__file__).parents[1] / "support/node/node_modules/.bin/tsc"


def test_the_import_map_is_allowed_by_its_hash(keeper):
    page = keeper.get("/")
    inline = re.search(r'<script type="importmap">(.*?)</script>', page.text)[1]
    digest = base64.b64encode(hashlib.sha256(inline.encode()).digest()).decode()

    assert f"'sha256-{digest}'" in page.headers["Content-Security-Policy"]
    assert page.text.count("<script") == 2


def test_everything_in_the_precache_list_is_served_and_nothing_is_forgotten(keeper):
    worker = keeper.get("/worker.js").text
    paths = json.loads(re.search(r"\((\[.*?\])\)", worker)[1])
    build = re.search(r"BUILD = '(\w+)'", worker)[1]

    assert {keeper.get(path).status_code for path in paths} == {200}
    wanted = {
        f"/static/{build}/{p.relative_to(PWA).as_posix()}"
        for p in PWA.rglob("*")
        if p.suffix in {".js", ".mjs", ".svg", ".png"} and p.name != "worker.js"
    }
    assert wanted <= set(paths)
    assert {f"/static/{build}/catalogue.json", f"/static/{build}/style.css"} <= set(paths)


def test_static_files_are_immutable_and_page_and_worker_are_not(keeper):
    build = keeper.get("/healthz").json["build"]

    assert "immutable" in keeper.get(f"/static/{build}/main.js").headers["Cache-Control"]
    assert keeper.get("/").headers["Cache-Control"] == "no-cache"
    assert keeper.get("/worker.js").headers["Cache-Control"] == "no-cache"
    assert keeper.get(f"/static/{build}/main.js").content_type.startswith("text/javascript")


def test_another_build_is_never_answered_with_this_builds_files(keeper):
    assert keeper.get("/static/0000000000000000/main.js").status_code == 404


def test_modules_of_the_start_path_are_preloaded(keeper):
    page = keeper.get("/").text

    assert 'rel="modulepreload"' in page
    assert "screens/round.js" in page
    assert "screens/settings.js" not in page  # loaded when it is first shown


def test_vendored_libraries_are_what_their_list_says():
    listed = json.loads((PWA / "vendor/vendor.json").read_text())["files"]

    for entry in listed:
        assert entry["sha256"] == hashlib.sha256((PWA / "vendor" / entry["file"]).read_bytes()).hexdigest()
        assert (PWA / "vendor" / entry["licence_text"]).is_file()
    assert {e["file"] for e in listed} == {
        p.relative_to(PWA / "vendor").as_posix() for p in (PWA / "vendor").rglob("*js")
    }


def test_leaving_out_comments_changes_no_code_and_moves_no_line(tmp_path):
    """The referee is TypeScript, which prints both without comments."""
    shell = Shell(PWA, {})
    served = {name: file.body.decode() for name, file in shell.files.items() if name.endswith(".js")}
    printed: dict[str, dict[str, str]] = {}
    for side in ("source", "served"):
        for name, text in served.items():
            path = tmp_path / side / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text((PWA / name).read_text() if side == "source" else text)
        printed[side] = print_without_comments(tmp_path / side, tmp_path / f"{side}-printed")

    assert len(served) > 60
    assert printed["source"] == printed["served"]
    assert [n for n, text in served.items() if text.count("\n") != (PWA / n).read_text().count("\n")] == []


def print_without_comments(folder: Path, out: Path) -> dict[str, str]:
    """Let TypeScript print every script of ``folder`` without comments and spaces of its own."""
    (folder / "tsconfig.json").write_text(
        json.dumps(
            {
                "compilerOptions": {
                    "allowJs": True, "noCheck": True, "noResolve": True, "removeComments": True, "target": "esnext",
                    "module": "esnext", "moduleResolution": "bundler", "rootDir": ".", "outDir": str(out), "types": [],
                },
                "include": ["**/*.js"],
            }
        )
    )  # fmt: skip
    subprocess.run([TSC, "-p", folder], check=True, capture_output=True, timeout=120)
    return {path.relative_to(out).as_posix(): path.read_text() for path in out.rglob("*.js")}


def test_the_one_style_sheet_holds_every_style_file():
    assert {PWA / name for name in STYLES} == set((PWA / "style").glob("*.css"))
