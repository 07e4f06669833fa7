"""The files for running it elsewhere name settings that exist, and put in everything that the server needs."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest

from broodshelf import __version__
from broodshelf.settings import KNOWN

ROOT = Path(__file__).parents[2]
FILES = ("Dockerfile", "compose.yaml", "broodshelf.service", "broodshelf-nudger.service")


@pytest.mark.parametrize("name", FILES)
def test_every_setting_in_a_deploy_file_exists(name):
    used = set(re.findall(r"\bBROODSHELF_([A-Z_]+)", (ROOT / "deploy" / name).read_text()))
    assert used and used <= KNOWN


def test_every_setting_is_in_the_guide_to_self_hosting():
    told = set(re.findall(r"`BROODSHELF_([A-Z_]+)`", (ROOT / "docs/self-hosting.md").read_text()))
    assert told == KNOWN


def test_the_version_is_one_and_has_its_page():
    told = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]["version"]
    assert told == __version__
    assert (ROOT / "docs/changes" / f"{told}.md").read_text().startswith(f"# {told}: ")


def test_the_image_is_given_what_it_copies():
    recipe = (ROOT / "deploy/Dockerfile").read_text()
    copied = {
        part
        for line in re.findall(r"^COPY (?!--from)(.+)$", recipe, re.MULTILINE)
        for part in line.split()[:-1]
    }
    let_in = {line[1:] for line in (ROOT / ".dockerignore").read_text().splitlines() if line.startswith("!")}
    assert copied == let_in
    assert all((ROOT / part).exists() for part in copied)
