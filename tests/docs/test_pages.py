"""What the pages say is there: links, files, commands, modules and examples; and it is spelt as a dictionary has it."""

from __future__ import annotations

import re
import shlex
import subprocess
import sys
from pathlib import Path
from urllib.parse import unquote

import pytest
from tests.support.examples import ROOT, json_examples

from broodshelf.cli import command_line

PAGES = sorted(
    [
        *ROOT.glob("*.md"),
        *ROOT.glob(".github/*.md"),
        *ROOT.glob("docs/**/*.md"),
        *ROOT.glob("fixtures/**/*.md"),
    ],
    key=lambda page: page.relative_to(ROOT).as_posix(),
)
NAMES = [page.relative_to(ROOT).as_posix() for page in PAGES]
# a page of what came when names what was there then
PRESENT = [page for page in PAGES if "changes" not in page.parts]
FOLDERS = ("", "server/broodshelf", "pwa", "pwa/care", "docs", "server/broodshelf/care", "deploy")
FILE = re.compile(r"`((?:[\w.-]+/)*[\w.-]+\.(?:py|js|mjs|css|toml|md|json|html|service|txt))`")
MADE_BY_RUNNING = {
    "kept.json",
    "manifest.json",
    "config.json",
    "mapping.toml",
    "shelf.json",
    "revoked.jsonl",
    "colony.csv",
    "shared.js",
}


def anchors(page: Path) -> set[str]:
    """What the headings of a page can be linked by."""
    headings = re.findall(r"^#+ (.+)$", page.read_text(), re.MULTILINE)
    return {re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-") for heading in headings}


@pytest.mark.parametrize("page", PAGES, ids=NAMES)
def test_every_link_of_a_page_leads_somewhere(page: Path):
    dead = []
    for target in re.findall(r"(?:\]\(|src=\")([^)\"\s]+)", page.read_text()):
        if re.match(r"https?:|mailto:", target):
            continue
        path, _, anchor = unquote(target).partition("#")
        file = (page.parent / path).resolve() if path else page
        if not file.exists() or (anchor and file.suffix == ".md" and anchor not in anchors(file)):
            dead.append(target)

    assert not dead


@pytest.mark.parametrize("page", PRESENT, ids=lambda page: page.relative_to(ROOT).as_posix())
def test_every_file_that_a_page_names_is_there(page: Path):
    here = page.parent.relative_to(ROOT).as_posix()
    missing = [
        name
        for name in FILE.findall(page.read_text())
        if name not in MADE_BY_RUNNING
        and not name.startswith("data/")
        and not any((ROOT / folder / name).exists() for folder in (*FOLDERS, here))
        and not any(found.as_posix().endswith("/" + name) for found in known_files())
    ]

    assert not missing


def known_files(found: list[Path] = []) -> list[Path]:  # noqa: B006 - kept over calls on purpose
    """Every file of the project."""
    if not found:
        listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True)
        found.extend(ROOT / name for name in listed.stdout.split("\n") if name)
    return found


def test_every_module_that_a_page_runs_is_there():
    said = {module for page in PRESENT for module in re.findall(r"python -m ([\w.]+)", page.read_text())}

    assert "tests.bench.sync_cost" in said
    for module in said:
        home = ROOT / ("server" if module.startswith("broodshelf") else "")
        file = home / module.replace(".", "/")
        assert file.with_suffix(".py").exists() or (file / "__init__.py").exists(), module


def test_every_command_that_a_page_shows_is_understood():
    """Whole commands only: in backticks or on a line of their own, without a placeholder in capitals or dots."""
    shown = set()
    for page in PRESENT:
        text = page.read_text()
        shown |= set(re.findall(r"`(?:\.venv/bin/)?broodshelf ([^`]+)`", text))
        shown |= set(re.findall(r"^ {4,}broodshelf (.+?)(?: {3,}.*)?$", text, re.MULTILINE))
    whole = {command for command in shown if not re.search(r"…|\||\b[A-Z]{3,}\b", command)}

    assert {"doctor", "backup kept.tar.gz"} <= whole
    for command in sorted(whole):
        try:
            command_line().parse_args(shlex.split(command))
        except SystemExit as end:
            if end.code == 0:  # it only prints its help
                continue
            pytest.fail(f"a page shows 'broodshelf {command}', which is not understood")


@pytest.mark.parametrize("page", ["sync.md", "http-api.md", "export-format.md"])
def test_the_json_that_a_page_shows_is_json(page: str):
    assert json_examples(page)


def test_the_pages_and_the_texts_are_spelt_as_a_dictionary_has_it():
    """codespell (its dictionary of common slips); pyproject.toml says which words are ours."""
    run = subprocess.run(
        [sys.executable, "-m", "codespell_lib", *NAMES, "pwa", "server", "deploy", "tests"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )

    assert run.returncode == 0, run.stdout + run.stderr
