"""The app shell: one build id, a complete precache list, a hash that matches, caching that cannot get stuck."""

from __future__ import annotations

import base64
import hashlib
import json
import re
from pathlib import Path

PWA = Path(__file__).parents[2] / "pwa"


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
        if p.suffix in {".js", ".mjs", ".css", ".svg", ".png"} and p.name != "worker.js"
    }
    assert wanted <= set(paths)
    assert f"/static/{build}/catalogue.json" in paths


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
